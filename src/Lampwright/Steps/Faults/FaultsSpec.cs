using Lampwright.Steps.Ways;

namespace Lampwright.Steps.Faults;

/// <summary>The emitter as a straight line, nothing below the knee, then volts that rise with the current, and the curve that it begins from where that is known.</summary>
/// <param name="KneeV">Voltage at which it begins to conduct, in volts; ≥ 0.</param>
/// <param name="SlopeOhm">Rise of the voltage with the current, in ohm; above 0.</param>
/// <param name="MostA">Greatest current it bears, in amperes; null where it is not known.</param>
/// <param name="DarkV">Voltage that is left at <see cref="LeakA"/>, in volts; null where only the line is known, then it is the knee.</param>
/// <param name="Curve">The curve that the line stands for; null where only the line is known.</param>
public sealed record EmitterStraight(
    double KneeV,
    double SlopeOhm,
    double? MostA,
    double? DarkV = null,
    EmitterLine? Curve = null
)
{
    /// <summary>Current at a voltage with a resistance in series, in amperes: by the curve where it is known, which lets more through than the line far above it.</summary>
    /// <param name="volts">Voltage over both, in volts.</param>
    /// <param name="seriesOhm">Resistance in series, in ohm; ≥ 0.</param>
    public double CurrentA(double volts, double seriesOhm) =>
        Math.Max(
            Math.Max(0, (volts - KneeV) / (SlopeOhm + seriesOhm)),
            Curve is null ? 0 : (Curve with { SeriesOhm = seriesOhm }).CurrentA(volts)
        );

    /// <summary>What a sense input draws, in amperes: all that flows through the emitter where nothing else leads on.</summary>
    /// <remarks><b>Source</b>: bias current of 1 µA, TI AN-1954 (SNVA391D) p. 8.</remarks>
    public static double LeakA => 1e-6;

    /// <summary>The chord of an emitter's curve from one current to twice of it: between them it gives too much current, beyond them too little.</summary>
    /// <remarks>
    /// Where a solution begins; it ends on the curve itself. The chord alone would be on the unsafe side beyond (a voltage limit lets through 3 % to 17 % more
    /// at four times the current) and below (the curve conducts where the chord does not). <b>Source</b>: diode equation. <b>Checked by</b>: invariant.
    /// </remarks>
    /// <param name="model">The emitter.</param>
    /// <param name="currentA">Working current in amperes; above 0.</param>
    /// <param name="junctionK">Hottest junction, in kelvin: there the voltage is least and the current at a voltage limit greatest.</param>
    /// <param name="mostA">Greatest current it bears, in amperes.</param>
    public static EmitterStraight Of(in EmitterModel model, double currentA, double junctionK, double? mostA)
    {
        var i = Guard.Positive(currentA);
        var (low, high) = (model.VoltageV(i, junctionK), model.VoltageV(2 * i, junctionK));
        var slope = Math.Max((high - low) / i, 1e-3);
        var knee = Math.Max(0, low - (slope * i));
        return new(knee, slope, mostA, Math.Min(knee, model.VoltageV(LeakA, junctionK)), new(model, junctionK));
    }
}

/// <summary>What the faults of a chain are played with.</summary>
/// <param name="Chain">The chain as it is to be built.</param>
/// <param name="Law">The law from sense resistance to current.</param>
/// <param name="Driver">What is known of the driver.</param>
/// <param name="Emitter">The emitter as a straight line.</param>
/// <param name="AirK">Temperature of the air round the resistors, in kelvin.</param>
/// <param name="Limits">Rules of thumb, null for the house's own.</param>
/// <param name="Corners">How far parts and driver may be off; null plays at nominal only.</param>
public sealed record FaultsSpec(
    ChainSpec Chain,
    DriverModel Law,
    DriverSpec Driver,
    EmitterStraight Emitter,
    double AirK = 313.15,
    FaultLimits? Limits = null,
    CornerSpec? Corners = null
)
{
    /// <summary>Sense threshold in volts.</summary>
    public double ThresholdV => Law.ThresholdV;

    /// <summary>Greatest value of the driver's own limit, in amperes; null where it is not known.</summary>
    public double? LimitMostA => Driver.LimitA is { } a ? Math.Max(a, Corners?.LimitMostA ?? a) : null;

    /// <summary>Least nominal resistance on the board that keeps the current at what the emitter bears, at the worst corner, in ohm; null where that is not known.</summary>
    public double? FloorOhm =>
        Emitter.MostA is not { } most ? null
        : Corners is not { } off ? Law.SenseOhm(most)
        : Math.Max(HoldsOhm(HighLaw(off, -1), most), HoldsOhm(HighLaw(off, +1), most))
            / (1 - Math.Min(0.9, off.Tolerance + off.AgeShare + Chain.Fixed.DriftShare));

    /// <summary>The law with the threshold at its greatest and the law's own error at one end.</summary>
    /// <param name="off">How far it may be off.</param>
    /// <param name="end">−1 or +1: which end.</param>
    internal DriverModel HighLaw(CornerSpec off, int end) =>
        Law.With(
            1 + Guard.InRange(off.ThresholdShare, 0, 0.5),
            Law.LawFactor * (1 + (end * Math.Min(off.LawPerE, 0.5))),
            1
        );

    // The least resistance that holds the current; the law's error moves with the resistance, so it is halved for.
    private static double HoldsOhm(DriverModel law, double mostA)
    {
        var (low, high) = (0.0, law.SenseOhm(mostA));
        while (law.CurrentA(high) > mostA)
        {
            (low, high) = (high, 2 * high);
        }

        for (var k = 0; low > 0 && k < 60; k++)
        {
            var middle = (low + high) / 2;
            (low, high) = law.CurrentA(middle) > mostA ? (middle, high) : (low, middle);
        }

        return high;
    }
}

/// <summary>Rules of thumb for what survives.</summary>
/// <param name="OverRated">Share over its rated current that a driver is taken to reach although its limit is not known (common practice, no source).</param>
/// <param name="SensePinV">Voltage that a sense input is taken to bear (common practice, no source: inputs of controllers of 5 V).</param>
/// <param name="ResistorOverload">Multiple of the rated power that a resistor is taken to bear until the fault is seen (common practice, no source).</param>
/// <param name="Dark">Current in amperes below which the light counts as dark.</param>
public sealed record FaultLimits(
    double OverRated = 0.10,
    double SensePinV = 5,
    double ResistorOverload = 1.5,
    double Dark = 1e-4
);

/// <summary>Whether a part survives a fault.</summary>
public enum Survival
{
    /// <summary>It does.</summary>
    Yes,

    /// <summary>Not to be said from what is known; never counted as yes.</summary>
    Unknown,

    /// <summary>It does not.</summary>
    No,
}
