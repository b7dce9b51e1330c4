using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Where the nose of the brake's clamp sits for a bend. Metres, radians.</summary>
/// <param name="Line">The line on the blank that lies under the foremost edge of the nose when the parent of the bend is clamped.</param>
/// <param name="NoseRadiusM">Radius of the nose it was computed with.</param>
/// <param name="NoseBackM">
/// How far the foremost edge of the nose stands behind the apron's axis so that the flange lies on the apron at the end, never under the
/// thickness (less hurts the edge); null above 150°.
/// </param>
/// <param name="OnInside">True when the inside of the part is up as it is clamped: the line is scribed there.</param>
/// <remarks>
/// The clamped flat ends where the round of the nose begins: there the bend begins, on the side of its parent. The foremost edge of the nose
/// stands its radius further out, and that edge is what one sees from above:
/// <code>set line = inner tangent + Rn                     (into the bend zone, towards the flange)
/// from the far edge = height - S + BA - Rn            (height outside, S the setback at the angle, BA the allowance)
/// nose behind the axis = (R + T) tan(angle / 2) - Rn  (the outer mould line lies on the apron's axis when the flange lies on the apron)</code>
/// At 90° with R = Rn the last is the thickness, the setting that brakes are delivered with.
/// <para><b>Validity</b>: brakes with an apron that turns about the surface of the bed; a nose whose round runs through at least 90° (the
/// front of the clamp leans back); the parent clamped, the flange on the apron, bent towards the clamp. An inside radius larger than the
/// nose's begins at the same tangent, since the moment is greatest at the clamp.</para>
/// <para><b>Source</b>: the sight line one radius from the bend tangent that lies under the nose: FAA-H-8083-31, chapter 4 (memory), where
/// R = Rn; its use for a radius larger than the nose's, and the place of the nose: derived.</para>
/// <para><b>Accuracy</b>: that of the allowance and of the eye over the nose, about ±0.3 mm (common practice, no source).</para>
/// <para><b>Checked by</b>: printed (sight line of the aircraft rule), derived (docs/metal-blanks.md), invariant (nose and flange of a made radius).</para>
/// </remarks>
public sealed record SetLine(Segment Line, double NoseRadiusM, double? NoseBackM, bool OnInside)
{
    /// <summary>Above this angle a bend is closed between plates and no longer lies on the apron.</summary>
    public static double FurthestRad { get; } = 150 * Math.PI / 180;

    /// <summary>How far the nose stands behind the apron's axis: (R + T) tan(angle/2) − Rn; null above 150°.</summary>
    /// <param name="angleRad">Angle turned from flat.</param>
    /// <param name="radiusM">Inside radius of the bend.</param>
    /// <param name="thicknessM">Thickness.</param>
    /// <param name="noseRadiusM">Radius of the nose.</param>
    public static double? NoseBack(double angleRad, double radiusM, double thicknessM, double noseRadiusM) =>
        Guard.InRange(angleRad, double.Epsilon, Math.PI + 1e-9) > FurthestRad
            ? null
            : ((radiusM + thicknessM) * Math.Tan(angleRad / 2)) - noseRadiusM;

    /// <summary>Inside radius that a nose makes which stands that far behind the axis: (back + Rn) / tan(angle/2) − T, not under Rn.</summary>
    /// <param name="angleRad">Angle turned from flat, up to 150°.</param>
    /// <param name="noseBackM">Foremost edge of the nose behind the apron's axis.</param>
    /// <param name="thicknessM">Thickness.</param>
    /// <param name="noseRadiusM">Radius of the nose.</param>
    public static double RadiusMade(double angleRad, double noseBackM, double thicknessM, double noseRadiusM) =>
        Math.Max(
            noseRadiusM,
            ((noseBackM + noseRadiusM) / Math.Tan(Guard.InRange(angleRad, double.Epsilon, FurthestRad + 1e-9) / 2))
                - thicknessM
        );

    /// <summary>The set line of a bend on the blank.</summary>
    /// <param name="bend">The bend.</param>
    /// <param name="thicknessM">Thickness.</param>
    /// <param name="noseRadiusM">Radius of the nose; null takes the inside radius of the bend.</param>
    internal static SetLine Of(BlankBend bend, double thicknessM, double? noseRadiusM)
    {
        var nose = noseRadiusM ?? bend.InsideRadiusM;
        var outward = bend.OuterTangent.A + bend.OuterTangent.B - bend.InnerTangent.A - bend.InnerTangent.B;
        var along = (bend.CentreLine.B - bend.CentreLine.A).Unit;
        var across = along.Left.Dot(outward) >= 0 ? along.Left : -along.Left;
        var middle = bend.AllowanceM / 2;

        // As long as the bend is at its middle; moved across, so that it stays parallel also where the ends of the zone slant.
        Vec2 At(Vec2 p) => p + (across * (nose - middle));
        return new(
            new(At(bend.CentreLine.A), At(bend.CentreLine.B)),
            nose,
            NoseBack(bend.AngleRad, bend.InsideRadiusM, thicknessM, nose) is { } back
                ? Math.Max(back, thicknessM)
                : null,
            bend.Direction == BendDirection.Down
        );
    }
}
