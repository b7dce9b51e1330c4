namespace Lampwright.Heat;

/// <summary>Rise over heat from a few points at which the heat was explicit: a monotone cubic between the logarithms of both.</summary>
/// <remarks>
/// Every film here is nearly a power of the rise, so that the curve is nearly straight. Beyond the points it goes on as a power.
/// Accuracy: 0.3 % and 0.1 K with the rises used here.
/// </remarks>
internal sealed class RiseCurve
{
    /// <summary>Rises that curves are laid through, K.</summary>
    internal static readonly double[] NodeRisesK = [1, 5, 15, 40, 80, 150];

    private static readonly double MostRiseK = 3000;
    private static readonly double LeastRiseK = 1e-3;

    private readonly double[] logHeats;
    private readonly double[] logRises;
    private readonly double[] slopes;

    /// <summary>A curve through heats and rises, both growing.</summary>
    internal RiseCurve(ReadOnlySpan<double> heatsW, ReadOnlySpan<double> risesK)
    {
        logHeats = new double[heatsW.Length];
        logRises = new double[heatsW.Length];
        slopes = new double[heatsW.Length];
        for (var i = 0; i < heatsW.Length; i++)
        {
            // Nothing at all that carries heat away would be minus infinity here; a nanowatt per kelvin stands for it.
            logHeats[i] = Math.Log(Math.Max(heatsW[i], 1e-9 * risesK[i]));
            if (i > 0 && logHeats[i] <= logHeats[i - 1])
            {
                logHeats[i] = logHeats[i - 1] + 1e-9;
            }

            logRises[i] = Math.Log(risesK[i]);
        }

        MonotoneCubic.Slopes(logHeats, logRises, slopes);
    }

    /// <summary>Logarithms of the heats of the points, W.</summary>
    internal ReadOnlySpan<double> LogHeats => logHeats;

    /// <summary>Rise at a heat, K; at most 3000.</summary>
    internal double RiseK(double heatW) => heatW > 0 ? RiseAtLogK(Math.Log(heatW)) : 0;

    /// <summary>Rise at the logarithm of a heat, K; at most 3000.</summary>
    internal double RiseAtLogK(double logHeat)
    {
        var last = logHeats.Length - 1;
        var log =
            logHeat < logHeats[0] ? logRises[0] + slopes[0] * (logHeat - logHeats[0])
            : logHeat > logHeats[last] ? logRises[last] + slopes[last] * (logHeat - logHeats[last])
            : MonotoneCubic.At(logHeats, logRises, slopes, logHeat);
        return Math.Min(Math.Exp(log), MostRiseK);
    }

    /// <summary>Heat at a rise, W, and its slope, W/K: the same curve read the other way, to its last bits.</summary>
    internal (double HeatW, double WPerK) HeatAtRise(double riseK)
    {
        if (riseK < LeastRiseK)
        {
            // Straight through zero, so that a sink colder than the room takes heat in and nothing jumps.
            var steep = HeatAtRise(LeastRiseK).HeatW / LeastRiseK;
            return (steep * riseK, steep);
        }

        var log = Math.Log(riseK);
        var last = logHeats.Length - 1;
        if (log <= logRises[0])
        {
            var heat = Math.Exp(logHeats[0] + ((log - logRises[0]) / slopes[0]));
            return (heat, heat / (riseK * slopes[0]));
        }

        if (log >= logRises[last])
        {
            var heat = Math.Exp(logHeats[last] + ((log - logRises[last]) / slopes[last]));
            return (heat, heat / (riseK * slopes[last]));
        }

        var i = 1;
        while (log > logRises[i])
        {
            i++;
        }

        // The curve rises between its points, so that a bracketed Newton cannot miss.
        var (low, high) = (logHeats[i - 1], logHeats[i]);
        var width = high - low;
        var (x, slope) = (low + (width * (log - logRises[i - 1]) / (logRises[i] - logRises[i - 1])), 0.0);
        for (var pass = 0; pass < 60; pass++)
        {
            var t = (x - logHeats[i - 1]) / width;
            var (a, b, m, n) = (logRises[i - 1], logRises[i], width * slopes[i - 1], width * slopes[i]);
            var (c2, c3) = ((3 * (b - a)) - (2 * m) - n, (2 * (a - b)) + m + n);
            var miss = a + (t * (m + (t * (c2 + (t * c3))))) - log;
            slope = (m + (t * ((2 * c2) + (3 * t * c3)))) / width;
            (low, high) = miss > 0 ? (low, x) : (x, high);
            var next = x - (miss / slope);
            next = next > low && next < high ? next : 0.5 * (low + high);
            if (Math.Abs(next - x) <= 1e-14 * (1 + Math.Abs(x)))
            {
                x = next;
                break;
            }

            x = next;
        }

        var found = Math.Exp(x);
        return (found, found / (riseK * Math.Max(slope, 1e-9)));
    }
}
