namespace Lampwright.Evaluation.Draws;

/// <summary>What the draws made of every predicted number.</summary>
internal sealed class Bands
{
    private readonly double[] _nominal;
    private readonly double[]? _low;
    private readonly double[]? _high;

    private Bands(double[] nominal, double[]? low, double[]? high, int draws)
    {
        (_nominal, _low, _high, Draws) = (nominal, low, high, draws);
    }

    /// <summary>Count of draws; 0 when only the nominal row is known.</summary>
    public int Draws { get; }

    /// <summary>The nominal row alone.</summary>
    public static Bands OfNominal(double[] nominal) => new(nominal, null, null, 0);

    /// <summary>The nominal row with the 5th and 95th percentile of each number over the draws.</summary>
    /// <param name="nominal">The nominal row.</param>
    /// <param name="rows">One row for each draw.</param>
    /// <param name="cancel">Stops the work.</param>
    public static Bands Of(double[] nominal, double[][] rows, CancellationToken cancel)
    {
        var (low, high) = (new double[nominal.Length], new double[nominal.Length]);
        Parallel.For(
            0,
            nominal.Length,
            new ParallelOptions { CancellationToken = cancel },
            () => new double[rows.Length],
            (place, _, column) =>
            {
                var count = 0;
                foreach (var row in rows)
                {
                    // A draw that has no such number says nothing of its band.
                    if (!double.IsNaN(row[place]))
                    {
                        column[count++] = row[place];
                    }
                }

                (low[place], high[place]) =
                    count > 0
                        ? OrderStatistics.Between(column.AsSpan(0, count), 0.05, 0.95)
                        : (nominal[place], nominal[place]);
                return column;
            },
            _ => { }
        );
        return new(nominal, low, high, rows.Length);
    }

    /// <summary>The predicted number at a place.</summary>
    /// <remarks>A nominal result may lie outside of its own percentiles where a spread is lopsided; the band then reaches to it.</remarks>
    public Predicted At(int place)
    {
        var value = _nominal[place];
        return _low is null || _high is null
            ? Predicted.Sharp(value)
            : new(value, Math.Min(value, _low[place]), Math.Max(value, _high[place]));
    }
}
