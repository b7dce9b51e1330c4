namespace Lampwright.Heat;

/// <summary>Rise over heat from a few points at which the heat was explicit: conductance as a monotone cubic of the heat's fourth root.</summary>
/// <remarks>
/// Natural convection goes with ΔT^¼, so that conductance is nearly a straight line there. Held outside the points, which keeps the
/// rise growing with heat. Accuracy: 1e-3 with the rises used here.
/// </remarks>
internal sealed class RiseCurve
{
    /// <summary>Rises that curves are laid through, K.</summary>
    internal static readonly double[] NodeRisesK = [1, 5, 15, 40, 80, 150];

    private static readonly double MostRiseK = 3000;

    private readonly double[] roots;
    private readonly double[] conductances;
    private readonly double[] slopes;

    /// <summary>A curve through heats and rises, both growing.</summary>
    internal RiseCurve(ReadOnlySpan<double> heatsW, ReadOnlySpan<double> risesK)
    {
        roots = new double[heatsW.Length];
        conductances = new double[heatsW.Length];
        slopes = new double[heatsW.Length];
        for (var i = 0; i < heatsW.Length; i++)
        {
            var heat = Math.Max(heatsW[i], 1e-9 * (i + 1));
            roots[i] = Fourth(heat);
            if (i > 0 && roots[i] <= roots[i - 1])
            {
                roots[i] = roots[i - 1] * (1 + 1e-9);
            }

            conductances[i] = heat / risesK[i];
        }

        MonotoneCubic.Slopes(roots, conductances, slopes);
    }

    /// <summary>Fourth roots of the heats of the points.</summary>
    internal ReadOnlySpan<double> Roots => roots;

    /// <summary>Rise at a heat, K; at most 3000.</summary>
    internal double RiseK(double heatW) =>
        heatW > 0 ? Math.Min(heatW / MonotoneCubic.At(roots, conductances, slopes, Fourth(heatW)), MostRiseK) : 0;

    /// <summary>Fourth root.</summary>
    internal static double Fourth(double x) => Math.Sqrt(Math.Sqrt(x));
}
