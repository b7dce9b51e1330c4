namespace Lampwright.Steps;

/// <summary>The power factor of a driver on alternating current whose label does not say one: the one place for all who need it.</summary>
/// <remarks>
/// Above 25 W lighting equipment has to hold its harmonics (class C: the third at most 30 % of the power factor, the fifth 10 %), which a rectifier with a
/// capacitor behind it cannot: such drivers correct and come to 0.9 or more. Up to 25 W they need not, and 0.5 to 0.65 is met.
/// Taken too high, a fuse comes out too small and blows; it never comes out too great for its leads.
/// <b>Validity</b>: full load; at part load it falls. <b>Source</b>: IEC 61000-3-2 class C (memory) for the border and the reason; the values: common practice,
/// no source. <b>Accuracy</b>: ± 0.1 above the border, ± 0.15 below. <b>Checked by</b>: invariant.
/// </remarks>
public static class MainsPowerFactor
{
    private static readonly double CorrectedFromW = 25;
    private static readonly double Corrected = 0.9;
    private static readonly double Bare = 0.6;

    /// <summary>What is taken, 0 to 1.</summary>
    /// <param name="inputW">Input power at full load, in watts; ≥ 0.</param>
    public static double Of(double inputW) => inputW > CorrectedFromW ? Corrected : Bare;
}
