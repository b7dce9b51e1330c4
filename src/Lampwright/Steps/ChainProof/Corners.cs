namespace Lampwright.Steps.ChainProof;

/// <summary>Resistance of one position at nominal and at both ends of its range, and how its own heat moves it.</summary>
/// <remarks>
/// Warm resistance = cold + heat·I², where I is the current through the position. For one part of resistance x and rise θ (K/W):
/// cold = x·(1 ± tolerance)·(1 + α·(Tair − 25 °C)), heat = α·θ·x·cold, to first order in α. Two in series add up; side by side each
/// carries its share s of the current, a change dR of one changes the pair by s²·dR, so heat = s1⁴·h1 + s2⁴·h2.
/// <b>Validity</b>: |α·ΔT| below 2 %; what is left out, (α·ΔT)², is below 4e-4 there and 6e-5 for 100 ppm/K and 80 K.
/// <b>Source</b>: derived. <b>Checked by</b>: invariant (the network with its resistors warm).
/// </remarks>
/// <param name="Nominal">Nominal resistance in the nominal air, ohm.</param>
/// <param name="NominalHeat">Nominal heat, ohm/A².</param>
/// <param name="Low">Least resistance of the cold part, ohm.</param>
/// <param name="LowHeat">Heat that goes with the least resistance, ohm/A².</param>
/// <param name="High">Greatest resistance of the cold part, ohm.</param>
/// <param name="HighHeat">Heat that goes with the greatest resistance, ohm/A².</param>
internal readonly record struct Corners(
    double Nominal,
    double NominalHeat,
    double Low,
    double LowHeat,
    double High,
    double HighHeat
)
{
    public static Corners Of(ChainSearchSpec spec, PositionParts parts)
    {
        var a = Of(spec, parts.First);
        if (parts.Second is null)
        {
            return a;
        }

        var b = Of(spec, parts.Second);
        return parts.Joint == Joint.Series
            ? new(
                a.Nominal + b.Nominal,
                a.NominalHeat + b.NominalHeat,
                a.Low + b.Low,
                a.LowHeat + b.LowHeat,
                a.High + b.High,
                a.HighHeat + b.HighHeat
            )
            : new(
                Beside(a.Nominal, b.Nominal),
                Beside(a.Nominal, b.Nominal, a.NominalHeat, b.NominalHeat),
                Beside(a.Low, b.Low),
                Beside(a.Low, b.Low, a.LowHeat, b.LowHeat),
                Beside(a.High, b.High),
                Beside(a.High, b.High, a.HighHeat, b.HighHeat)
            );
    }

    /// <summary>The same with the heat of a known current taken up into the resistance.</summary>
    public Corners Settled(double nominalA, double lowA, double highA) =>
        new(
            Nominal + (NominalHeat * nominalA * nominalA),
            0,
            Low + (LowHeat * lowA * lowA),
            0,
            High + (HighHeat * highA * highA),
            0
        );

    private static Corners Of(ChainSearchSpec spec, StockPart part)
    {
        var (x, alpha, rise) = (part.Ohm, part.TempcoPerK, part.RisePerWattK);
        var known = spec.TempcoIsLimit ? 0 : alpha;
        var nominal = x * (1 + (known * (spec.AirK - ResistorPart.ReferenceK)));
        var nominalHeat = known * rise * x * nominal;
        if (spec.Objective == ChainObjective.Nominal)
        {
            return new(nominal, nominalHeat, nominal, nominalHeat, nominal, nominalHeat);
        }

        var (cool, hot) = (
            (spec.AirLeastK ?? spec.AirK) - ResistorPart.ReferenceK,
            (spec.AirMostK ?? spec.AirK) - ResistorPart.ReferenceK
        );
        var most = spec.TempcoIsLimit
            ? Math.Abs(alpha) * Math.Max(Math.Abs(cool), Math.Abs(hot))
            : Math.Max(alpha * cool, alpha * hot);
        var least = spec.TempcoIsLimit ? -most : Math.Min(alpha * cool, alpha * hot);
        var (down, up) = spec.TempcoIsLimit ? (-Math.Abs(alpha), Math.Abs(alpha)) : (alpha, alpha);
        var (low, high) = (x * (1 - part.Tolerance), x * (1 + part.Tolerance));
        var (lowCold, highCold) = (low * (1 + least), high * (1 + most));
        return new(nominal, nominalHeat, lowCold, down * rise * low * lowCold, highCold, up * rise * high * highCold);
    }

    private static double Beside(double a, double b) => a * b / (a + b);

    private static double Beside(double a, double b, double heatA, double heatB)
    {
        var (sa, sb) = (b / (a + b), a / (a + b));
        return (sa * sa * sa * sa * heatA) + (sb * sb * sb * sb * heatB);
    }
}
