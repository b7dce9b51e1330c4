namespace Lampwright.Metal;

/// <summary>The figures of one bend. Metres, radians.</summary>
/// <param name="AngleRad">Angle turned from flat, always positive.</param>
/// <param name="InsideRadiusM">Inside radius.</param>
/// <param name="SetbackM">Outside mould line (or tangent plane) to tangent.</param>
/// <param name="InsideSetbackM">Inside mould line (or tangent plane) to tangent.</param>
/// <param name="AllowanceM">Width of the bend zone on the blank.</param>
/// <param name="DeductionM">What the outside legs together exceed their length on the blank by.</param>
/// <param name="K">Neutral fibre that the allowance amounts to, as a share of the thickness.</param>
public sealed record BendFigures(
    double AngleRad,
    double InsideRadiusM,
    double SetbackM,
    double InsideSetbackM,
    double AllowanceM,
    double DeductionM,
    double K
)
{
    /// <summary>The figures of a bend by the maker's rule.</summary>
    /// <param name="rule">The method.</param>
    /// <param name="angleRad">Angle turned from flat, 0 &lt; angle ≤ π.</param>
    /// <param name="radiusM">Inside radius, 0 or more.</param>
    /// <param name="thicknessM">Thickness, above 0.</param>
    /// <param name="allowanceFactor">Factor of the method's error, nominally 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    /// <remarks>
    /// A strip's deduction holds as measured for its own angle; for other angles the K that it gives is carried over. Of several strips the
    /// nearest angle counts, equal angles averaged. Closed form, no allocation but the result: cheap enough for every draw.
    /// </remarks>
    public static BendFigures Of(
        BendRule rule,
        double angleRad,
        double radiusM,
        double thicknessM,
        double allowanceFactor = 1
    )
    {
        Guard.InRange(angleRad, double.Epsilon, Math.PI + 1e-12);
        Guard.InRange(radiusM, 0, 1e3);
        Guard.Positive(thicknessM);
        Guard.Positive(allowanceFactor);
        var setback = BendAllowance.Setback(angleRad, radiusM, thicknessM);
        var allowance =
            allowanceFactor
            * rule.Method switch
            {
                BendMethod.Din6935 => (2 * setback) - BendAllowance.DinDeduction(angleRad, radiusM, thicknessM),
                BendMethod.Handbook => BendAllowance.Handbook(rule.Metal, angleRad, radiusM, thicknessM),
                BendMethod.Strips => FromStrips(rule.Strips ?? [], angleRad, radiusM, thicknessM),
                _ => BendAllowance.FromK(angleRad, radiusM, thicknessM, rule.K),
            };
        return new(
            angleRad,
            radiusM,
            setback,
            BendAllowance.InsideSetback(angleRad, radiusM),
            allowance,
            (2 * setback) - allowance,
            BendAllowance.KOf(allowance, angleRad, radiusM, thicknessM)
        );
    }

    /// <summary>What an inside dimension grows by to become an outside one at this bend.</summary>
    public double InsideToOutsideM => SetbackM - InsideSetbackM;

    private static double FromStrips(IReadOnlyList<BendStrip> strips, double angleRad, double radius, double thickness)
    {
        if (strips.Count == 0)
        {
            throw new ArgumentException("The rule of strips has no strip.", nameof(strips));
        }

        var nearest = strips.Min(s => Math.Abs(s.AngleRad - angleRad));
        var chosen = strips.Where(s => Math.Abs(Math.Abs(s.AngleRad - angleRad) - nearest) < 1e-9).ToList();
        return chosen.Average(s =>
            Math.Abs(s.AngleRad - angleRad) < 1e-9
                ? (2 * BendAllowance.Setback(angleRad, radius, thickness)) - s.DeductionM
                : BendAllowance.FromK(angleRad, radius, thickness, StripK.Of(s, radius, thickness))
        );
    }
}
