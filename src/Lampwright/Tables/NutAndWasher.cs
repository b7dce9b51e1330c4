namespace Lampwright.Tables;

/// <summary>Height of a hexagon nut and thickness of a plain washer for a metric screw.</summary>
/// <remarks>ISO 4032 (greatest height m of style 1) and ISO 7089 (normal series), both from memory. <b>Validity</b>: M2 to M10.</remarks>
/// <param name="Size">Name, for example <c>M4</c>.</param>
/// <param name="NutM">Height of the nut, metres.</param>
/// <param name="WasherM">Thickness of the washer, metres.</param>
public sealed record NutAndWasher(string Size, double NutM, double WasherM)
{
    /// <summary>All rows of the table, small to large.</summary>
    public static IReadOnlyList<NutAndWasher> All { get; } = Read();

    /// <summary>The row of a thread; null where the table has none.</summary>
    /// <param name="thread">The thread.</param>
    public static NutAndWasher? Of(MetricThread thread) =>
        All.FirstOrDefault(row => string.Equals(row.Size, thread.Size, StringComparison.Ordinal));

    private static NutAndWasher[] Read()
    {
        var table = TableResource.Read("nuts-and-washers.csv");
        var rows = new NutAndWasher[table.RowCount];
        for (var i = 0; i < rows.Length; i++)
        {
            rows[i] = new(table.Text(i, "size"), table.Number(i, "nut_mm") / 1000, table.Number(i, "washer_mm") / 1000);
        }

        return rows;
    }
}
