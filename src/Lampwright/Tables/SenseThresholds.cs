namespace Lampwright.Tables;

/// <summary>Voltages that constant-current controllers hold across their sense resistance: published ones, and what is taken for one.</summary>
/// <remarks>
/// <b>Source</b>: data sheets, one a row of sense-thresholds.csv; the two ranges of sense-ranges.csv: common practice, no source.
/// <b>Checked by</b>: printed (every published threshold lies in the possible range, those of a sense path in the usual one).
/// </remarks>
public static class SenseThresholds
{
    /// <summary>A published controller and its threshold.</summary>
    /// <param name="Controller">Type and kind of sensing.</param>
    /// <param name="VoltageV">Threshold in volts.</param>
    public readonly record struct Published(string Controller, double VoltageV);

    /// <summary>All published thresholds of the table.</summary>
    public static IReadOnlyList<Published> All { get; } = ReadAll();

    /// <summary>Range that controllers of the average current are usually built in, in volts.</summary>
    public static (double LeastV, double MostV) Usual { get; } = Range("usual");

    /// <summary>Range in which a threshold is still possible, in volts.</summary>
    public static (double LeastV, double MostV) Possible { get; } = Range("possible");

    /// <summary>The published threshold nearest in ratio.</summary>
    /// <param name="voltageV">Threshold in volts; what is not above zero counts as a nanovolt.</param>
    public static Published Nearest(double voltageV) =>
        All.MinBy(t => Math.Abs(Math.Log(t.VoltageV / (voltageV > 1e-9 ? voltageV : 1e-9))));

    private static Published[] ReadAll()
    {
        var table = TableResource.Read("sense-thresholds.csv");
        return
        [
            .. Enumerable
                .Range(0, table.RowCount)
                .Select(i => new Published(table.Text(i, "controller"), table.Number(i, "threshold_v"))),
        ];
    }

    private static (double, double) Range(string name)
    {
        var table = TableResource.Read("sense-ranges.csv");
        var row = Enumerable.Range(0, table.RowCount).First(i => table.Text(i, "name") == name);
        return (table.Number(row, "least_v"), table.Number(row, "most_v"));
    }
}
