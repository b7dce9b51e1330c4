namespace Lampwright.Balance;

/// <summary>A stand that carries a light beside its column.</summary>
/// <param name="LightMassKg">Mass of the light, kilograms, above 0.</param>
/// <param name="LightHeightM">Height of the light's balance point in its highest position, metres, above 0.</param>
/// <param name="LightOffsetM">Largest horizontal distance of the light's balance point from the column towards the edge, metres.</param>
/// <param name="StandMassKg">Mass of the stand, kilograms, 0 or more.</param>
/// <param name="StandHeightM">Height of the stand's own balance point, metres, 0 or more.</param>
/// <param name="FootM">Distance from the column to the nearest tipping edge, metres, above 0.</param>
public sealed record StandSpec(
    double LightMassKg,
    double LightHeightM,
    double LightOffsetM,
    double StandMassKg,
    double StandHeightM,
    double FootM
);

/// <summary>How steadily a stand stands.</summary>
/// <param name="BalanceHeightM">Height of the common balance point, metres.</param>
/// <param name="BalanceOffsetM">Its horizontal distance from the column towards the edge, metres.</param>
/// <param name="TipsAtRad">Slope at which it tips, radians; negative when it falls on level ground.</param>
/// <param name="FootNeededM">Distance from column to edge that stands on the test slope, metres.</param>
public readonly record struct StandResult(
    double BalanceHeightM,
    double BalanceOffsetM,
    double TipsAtRad,
    double FootNeededM
);

/// <summary>Will the stand tip? Closed form; runs per draw.</summary>
/// <remarks>
/// b ≥ h·tan(angle), b from the foot of the balance point to the tipping edge. <b>Validity</b>: rigid stand, no push, no pull on the cable.
/// <b>Source</b>: IEC 60598-2-4, cl. 4.6.3 (6°; second-hand). <b>Checked by</b>: K.ST1a, K.ST2, K.ST3.
/// </remarks>
public static class Stability
{
    /// <summary>Slope of the test for portable lights: 6° (IEC 60598-2-4, cl. 4.6.3, second-hand).</summary>
    public static double TestSlopeRad { get; } = 6 * Math.PI / 180;

    /// <summary>Share of a stand's height at which its own balance point lies when not known: 0.3 (heavy foot, slim column; common practice, no source).</summary>
    public static double DefaultStandHeightShare { get; } = 0.3;

    /// <summary>How steadily the stand stands.</summary>
    public static StandResult Result(StandSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var mass = Guard.Positive(spec.LightMassKg) + Guard.InRange(spec.StandMassKg, 0, 1e5);
        var height =
            (
                (spec.LightMassKg * Guard.Positive(spec.LightHeightM))
                + (spec.StandMassKg * Guard.InRange(spec.StandHeightM, 0, 1e3))
            ) / mass;
        var offset = spec.LightMassKg * Guard.Finite(spec.LightOffsetM) / mass;
        return new(
            height,
            offset,
            TippingSlopeRad(Guard.Positive(spec.FootM) - offset, height),
            offset + LeastEdgeDistanceM(height, TestSlopeRad)
        );
    }

    /// <summary>Slope at which a thing tips, radians; negative when its balance point hangs over the edge.</summary>
    /// <param name="edgeM">Horizontal distance from the balance point's foot to the tipping edge, metres.</param>
    /// <param name="heightM">Height of the balance point, metres, above 0.</param>
    public static double TippingSlopeRad(double edgeM, double heightM) =>
        Math.Atan2(Guard.Finite(edgeM), Guard.Positive(heightM));

    /// <summary>Least distance from the balance point's foot to the tipping edge for a slope: h·tan(slope), metres.</summary>
    /// <param name="heightM">Height of the balance point, metres, above 0.</param>
    /// <param name="slopeRad">Slope, radians, 0 or more and below a right angle.</param>
    public static double LeastEdgeDistanceM(double heightM, double slopeRad) =>
        Guard.Positive(heightM) * Math.Tan(Guard.InRange(slopeRad, 0, 1.5));

    /// <summary>Distance from the middle to the tipping edge of feet on a circle: R·cos(π/n), metres; R/2 with three.</summary>
    /// <param name="radiusM">Radius of the foot circle, metres, above 0.</param>
    /// <param name="legs">Count of legs, 3 or more.</param>
    public static double EdgeDistanceOfLegsM(double radiusM, int legs) =>
        Guard.Positive(radiusM) * Math.Cos(Math.PI / Guard.InRange(legs, 3, 1000));
}
