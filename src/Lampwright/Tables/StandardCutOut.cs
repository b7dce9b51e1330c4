namespace Lampwright.Tables;

/// <summary>The opening in a panel that a common bought thing needs, with the holes of its screws.</summary>
/// <remarks>
/// <b>Source</b>: each row its own (Tables/cut-outs.csv); <see cref="IsPublished"/> says whether a maker's print was read. <b>Validity</b>: the usual part of that
/// name; makers differ by some tenths of a millimetre, so the part in hand decides. <b>Checked by</b>: <i>printed</i> where published,
/// the others by nothing but use.
/// </remarks>
/// <param name="Name">Name, for example <c>appliance inlet C14</c>.</param>
/// <param name="IsRound">True for a round opening, else a rectangle.</param>
/// <param name="WidthM">Width or diameter of the opening, metres.</param>
/// <param name="HeightM">Height or diameter, metres.</param>
/// <param name="CornerM">Corner radius of a rectangle, metres; 0 for sharp.</param>
/// <param name="Screws">Places of the screws from the middle of the opening, metres; empty where it holds itself.</param>
/// <param name="ScrewHoleM">Diameter of the screws' holes, metres; 0 without screws.</param>
/// <param name="SheetLeastM">Thinnest panel that it holds in, metres; null where unknown.</param>
/// <param name="SheetMostM">Thickest panel, metres; null where unknown.</param>
/// <param name="SourceId">Its source, as registered.</param>
public sealed record StandardCutOut(
    string Name,
    bool IsRound,
    double WidthM,
    double HeightM,
    double CornerM,
    IReadOnlyList<(double X, double Y)> Screws,
    double ScrewHoleM,
    double? SheetLeastM,
    double? SheetMostM,
    string SourceId
)
{
    private static readonly string[] Looked = ["rocker-20", "bushing-hardware", "gland-holes"];

    /// <summary>All rows of the table.</summary>
    public static IReadOnlyList<StandardCutOut> All { get; } = Load();

    /// <summary>True where the sizes were read in what a maker or seller prints; else they come second-hand, from practice or memory.</summary>
    public bool IsPublished => Looked.Contains(SourceId, StringComparer.Ordinal);

    /// <summary>The cut-out of a name; null where the table has none.</summary>
    public static StandardCutOut? Named(string name) =>
        All.FirstOrDefault(c => string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase));

    private static StandardCutOut[] Load()
    {
        var table = TableResource.Read("cut-outs.csv");
        return [.. Enumerable.Range(0, table.RowCount).Select(i => Row(table, i))];
    }

    private static StandardCutOut Row(TableResource table, int row)
    {
        double? Known(string column) => table.Number(row, column) is var mm && double.IsFinite(mm) ? mm / 1000 : null;
        double Mm(string column) => Known(column) ?? 0;
        return new(
            table.Text(row, "name"),
            table.Text(row, "shape") == "round",
            Mm("width_mm"),
            Mm("height_mm"),
            Mm("corner_mm"),
            Places((int)Math.Round(Mm("screws") * 1000), Mm("pitch_x_mm") / 2, Mm("pitch_y_mm") / 2),
            Mm("screw_mm"),
            Known("sheet_least_mm"),
            Known("sheet_most_mm"),
            table.Text(row, "source")
        );
    }

    private static (double X, double Y)[] Places(int count, double x, double y) =>
        count switch
        {
            4 => [(-x, -y), (x, -y), (-x, y), (x, y)],
            2 => [(-x, -y), (x, y)],
            _ => [],
        };
}
