namespace Lampwright.Steps.Ways;

/// <summary>The points of a run: everything for the figures, thinned for the picture.</summary>
internal sealed class WayRecord
{
    /// <summary>A picture tells nothing more beyond this many points.</summary>
    private static readonly int PicturePoints = 3000;

    public List<double> Time { get; } = new(512);

    public List<double> Volts { get; } = new(512);

    public List<double> Amps { get; } = new(512);

    public void Add(double t, double v, double a)
    {
        Time.Add(t);
        Volts.Add(v);
        Amps.Add(a);
    }

    /// <summary>Mean emitter current from a time to the end, in amperes.</summary>
    public double MeanA(double from, double to)
    {
        var sum = 0.0;
        for (var k = 1; k < Time.Count; k++)
        {
            var (a, b) = (Math.Max(Time[k - 1], from), Math.Min(Time[k], to));
            if (b > a)
            {
                sum += 0.5 * (At(k, a) + At(k, b)) * (b - a);
            }
        }

        return to > from ? sum / (to - from) : Amps[^1];
    }

    /// <summary>Least and greatest voltage and greatest current over a span of time.</summary>
    public (double LeastV, double MostV, double PeakA, double LeastA) Over(double from, double to)
    {
        var (low, high, peak, least) = (double.PositiveInfinity, double.NegativeInfinity, 0.0, double.PositiveInfinity);
        for (var k = Time.Count - 1; k >= 0; k--)
        {
            if (Time[k] > to)
            {
                continue;
            }

            low = Math.Min(low, Volts[k]);
            high = Math.Max(high, Volts[k]);
            peak = Math.Max(peak, Amps[k]);
            least = Math.Min(least, Amps[k]);
            if (Time[k] < from)
            {
                break;
            }
        }

        return (low, high, peak, least);
    }

    /// <summary>Voltage at a time, in volts.</summary>
    public double VoltsAt(double t)
    {
        var k = Time.BinarySearch(t);
        k = Math.Clamp(k < 0 ? ~k : k, 1, Math.Max(1, Time.Count - 1));
        if (k >= Time.Count)
        {
            return Volts[^1];
        }

        var span = Time[k] - Time[k - 1];
        return span > 0 ? Volts[k - 1] + ((Volts[k] - Volts[k - 1]) * (t - Time[k - 1]) / span) : Volts[k];
    }

    /// <summary>Which points a picture needs: all, or of each run of points the first and the extremes.</summary>
    public int[] Picture()
    {
        if (Time.Count <= PicturePoints)
        {
            return [.. Enumerable.Range(0, Time.Count)];
        }

        var kept = new SortedSet<int> { 0, Time.Count - 1 };
        var runs = PicturePoints / 4;
        for (var r = 0; r < runs; r++)
        {
            var (from, to) = ((int)((long)r * Time.Count / runs), (int)((long)(r + 1) * Time.Count / runs));
            var (low, high, dark, bright) = (from, from, from, from);
            for (var k = from; k < to; k++)
            {
                low = Volts[k] < Volts[low] ? k : low;
                high = Volts[k] > Volts[high] ? k : high;
                dark = Amps[k] < Amps[dark] ? k : dark;
                bright = Amps[k] > Amps[bright] ? k : bright;
            }

            kept.UnionWith([low, high, dark, bright]);
        }

        return [.. kept];
    }

    private double At(int k, double t)
    {
        var span = Time[k] - Time[k - 1];
        return span > 0 ? Amps[k - 1] + ((Amps[k] - Amps[k - 1]) * (t - Time[k - 1]) / span) : Amps[k];
    }
}
