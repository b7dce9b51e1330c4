using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>A hand brake with an apron in cross-section: what bends are planned against. Metres, radians.</summary>
/// <remarks>
/// Section: x from the apron's axis towards the maker, y up from the surface of the bed. Bed and clamp lie at x below 0; the apron lies level at x
/// above 0 and turns up about the axis. <see cref="Finger"/> is given from the foremost edge of the nose: x = 0 there, y = 0 its foot; it stands on the
/// sheet. <see cref="Clamp"/> is what holds the fingers, in the same coordinates, and runs over the whole length.
/// <para><b>Validity</b>: an apron that turns about the surface of the bed; end frames farther apart than every part is wide.</para>
/// </remarks>
public sealed record BrakeMachine
{
    /// <summary>Longest bend, metres.</summary>
    public required double LengthM { get; init; }

    /// <summary>Largest angle turned from flat, radians.</summary>
    public required double ClosingRad { get; init; }

    /// <summary>Widths of the fingers; one as long as the brake for a brake without fingers. Metres.</summary>
    public required IReadOnlyList<double> FingerWidthsM { get; init; }

    /// <summary>Section of a finger, from its nose.</summary>
    public required IReadOnlyList<Vec2> Finger { get; init; }

    /// <summary>Section of the clamp's beam over the fingers, from their nose.</summary>
    public required IReadOnlyList<Vec2> Clamp { get; init; }

    /// <summary>Section of the bed, from the apron's axis.</summary>
    public required IReadOnlyList<Vec2> Bed { get; init; }

    /// <summary>Section of the apron as it lies level, from its axis.</summary>
    public required IReadOnlyList<Vec2> Apron { get; init; }

    /// <summary>How far the clamp lifts off the bed, metres: a wall that is higher must come out sideways.</summary>
    public required double OpeningM { get; init; }

    /// <summary>Least metal that the clamp must hold behind the bend, metres.</summary>
    public required double LeastHoldM { get; init; }

    /// <summary>What may stay without a finger at each end of a bend, metres.</summary>
    public double EndGapM { get; init; } = 0.005;

    /// <summary>What may stay open between two fingers, metres.</summary>
    public double FingerGapM { get; init; } = 0.003;

    /// <summary>How far the foremost edge of the nose stands behind the apron's axis; null sets it for each bend.</summary>
    public double? NoseBackM { get; init; }

    /// <summary>Radius of the nose; null is the inside radius of each bend.</summary>
    public double? NoseRadiusM { get; init; }

    /// <summary>Sections made from the few heights that one measures on a brake.</summary>
    /// <param name="closingRad">Largest angle: the front of the fingers leans back by what lies above 90°, and by a degree more.</param>
    /// <param name="fingerHeightM">From the foot of the fingers to the clamp's beam.</param>
    /// <param name="fingerDepthM">From the nose back.</param>
    /// <param name="beamHeightM">Height of the clamp's beam; it is level underneath, as deep as a finger beyond its lean.</param>
    /// <param name="bedDepthM">From the axis back.</param>
    /// <param name="apronDepthM">Depth of the apron.</param>
    /// <param name="apronThicknessM">Its thickness.</param>
    public static (Vec2[] Finger, Vec2[] Clamp, Vec2[] Bed, Vec2[] Apron) Sections(
        double closingRad,
        double fingerHeightM,
        double fingerDepthM,
        double beamHeightM,
        double bedDepthM,
        double apronDepthM,
        double apronThicknessM
    )
    {
        var lean = Math.Clamp(closingRad - (Math.PI / 2), 0, Math.PI / 3) + (Math.PI / 180);
        var back = Math.Min(fingerHeightM * Math.Tan(lean), 0.9 * fingerDepthM);
        return (
            [new(0, 0), new(-back, fingerHeightM), new(-fingerDepthM, fingerHeightM), new(-fingerDepthM, 0)],
            [
                new(-back, fingerHeightM),
                new(-back - (beamHeightM * Math.Tan(lean)), fingerHeightM + beamHeightM),
                new(-back - (beamHeightM * Math.Tan(lean)) - fingerDepthM, fingerHeightM + beamHeightM),
                new(-back - (beamHeightM * Math.Tan(lean)) - fingerDepthM, fingerHeightM),
            ],
            [new(0, 0), new(-bedDepthM, 0), new(-bedDepthM, -0.1), new(-0.02, -0.1)],
            [new(0, 0), new(0, -apronThicknessM), new(apronDepthM, -apronThicknessM), new(apronDepthM, 0)]
        );
    }
}
