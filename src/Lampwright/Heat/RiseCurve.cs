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
}
