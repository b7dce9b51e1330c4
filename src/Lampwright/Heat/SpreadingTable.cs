namespace Lampwright.Heat;

/// <summary>The exact spreading series of one probe, tabled over film per conductivity, for the draws.</summary>
/// <remarks>
/// k·R of a fixed plate and sources hangs on h/k alone, so that a drawn conductivity and film are exact up to the interpolation;
/// thickness and places stay at nominal. Accuracy: 3e-4 of the series from h/k 0.005 to 500 1/m; held outside.
/// </remarks>
internal sealed class SpreadingTable
{
    private const int Nodes = 23;
    private static readonly double LeastLog = Math.Log(5e-3);
    private static readonly double MostLog = Math.Log(5e2);

    private readonly double[] values = new double[Nodes];
    private readonly double[] slopes = new double[Nodes];
    private readonly double step = (MostLog - LeastLog) / (Nodes - 1);

    internal SpreadingTable(Spreading series)
    {
        var logs = new double[Nodes];
        for (var i = 0; i < Nodes; i++)
        {
            logs[i] = LeastLog + i * step;
            values[i] = series.SpreadPerM(Math.Exp(logs[i]));
        }

        MonotoneCubic.Slopes(logs, values, slopes);
    }

    /// <summary>Spreading part, times conductivity, 1/m.</summary>
    internal double SpreadPerM(double filmPerConductivity)
    {
        var log = Math.Clamp(Math.Log(filmPerConductivity), LeastLog, MostLog);
        var i = Math.Min((int)((log - LeastLog) / step), Nodes - 2);
        double t = (log - LeastLog) / step - i,
            u = 1 - t;
        return u * u * (values[i] * (1 + 2 * t) + slopes[i] * step * t)
            + t * t * (values[i + 1] * (1 + 2 * u) - slopes[i + 1] * step * u);
    }
}
