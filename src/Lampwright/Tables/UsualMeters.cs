namespace Lampwright.Tables;

/// <summary>What meters of a workshop may be off by when nothing else is told.</summary>
/// <remarks><b>Source</b>: Tables/meters.csv; common practice, no source.</remarks>
public static class UsualMeters
{
    /// <summary>A kind of meter at one kind of reading.</summary>
    /// <param name="Kind">Kind of meter, for example <c>multimeter</c>.</param>
    /// <param name="What">What it reads, for example <c>current</c>.</param>
    /// <param name="Relative">Limit to either side as a share of the reading.</param>
    /// <param name="Absolute">Fixed part of the limit, in SI units.</param>
    public readonly record struct Row(string Kind, string What, double Relative, double Absolute);

    /// <summary>All rows of the table.</summary>
    public static IReadOnlyList<Row> Rows { get; } = Load();

    /// <summary>Limit to either side of a reading, as a share of it: share of the reading plus the fixed part.</summary>
    /// <param name="kind">Kind of meter.</param>
    /// <param name="what">What it reads.</param>
    /// <param name="reading">The reading in SI; above 0.</param>
    /// <exception cref="InvalidOperationException">The table has no such meter.</exception>
    public static double RelativeLimit(string kind, string what, double reading)
    {
        var row = Rows.First(r => r.Kind == kind && r.What == what);
        return row.Relative + (row.Absolute / Guard.Positive(reading));
    }

    private static Row[] Load()
    {
        var table = TableResource.Read("meters.csv");
        return
        [
            .. Enumerable
                .Range(0, table.RowCount)
                .Select(i => new Row(
                    table.Text(i, "kind"),
                    table.Text(i, "what"),
                    table.Number(i, "relative"),
                    table.Number(i, "absolute_si")
                )),
        ];
    }
}
