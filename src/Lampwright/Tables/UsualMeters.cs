namespace Lampwright.Tables;

/// <summary>What meters of a workshop may be off by when nothing else is told (Tables/meters.csv; common practice, no source).</summary>
public static class UsualMeters
{
    private static readonly Dictionary<(string, string), (double Relative, double Absolute)> Rows = Load();

    /// <summary>Limit to either side of a reading, as a share of it: share of the reading plus the fixed part.</summary>
    /// <param name="kind">Kind of meter, for example <c>multimeter</c>.</param>
    /// <param name="what">What it reads, for example <c>current</c>.</param>
    /// <param name="reading">The reading in SI; above 0.</param>
    /// <exception cref="KeyNotFoundException">The table has no such meter.</exception>
    public static double RelativeLimit(string kind, string what, double reading)
    {
        var (relative, absolute) = Rows[(kind, what)];
        return relative + (absolute / Guard.Positive(reading));
    }

    private static Dictionary<(string, string), (double, double)> Load()
    {
        var table = TableResource.Read("meters.csv");
        return Enumerable
            .Range(0, table.RowCount)
            .ToDictionary(
                i => (table.Text(i, "kind"), table.Text(i, "what")),
                i => (table.Number(i, "relative"), table.Number(i, "absolute_si"))
            );
    }
}
