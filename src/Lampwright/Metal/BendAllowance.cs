namespace Lampwright.Metal;

/// <summary>Lengths that a bend uses up: allowances, setbacks, deductions. Metres (or any one unit of length) and radians.</summary>
/// <remarks>
/// The angle is always the one turned from flat, above 0 and at most π; <c>opening = π - angle</c>.
/// <para><b>Validity</b>: air bends and hand-brake bends of ductile sheet, radius and thickness measured on the bent part.</para>
/// <para><b>Source</b>: DIN 6935; Machinery's Handbook, 31st ed., equations 32 to 34; FAA-H-8083-31, chapter 4 (empirical rule).</para>
/// <para><b>Accuracy</b>: DIN 6935 rounds to a tenth of a millimetre and leaves a trial bend to the shop; K scatters by about ±0.05.</para>
/// <para><b>Checked by</b>: printed (rows M.B1 to M.B14 of the references).</para>
/// </remarks>
public static class BendAllowance
{
    /// <summary>Above this opening angle (165°) DIN 6935 deducts nothing.</summary>
    public static double DinFlatOpeningRad { get; } = 165 * Math.PI / 180;

    /// <summary>Bend allowance with the neutral fibre at K thicknesses from the inside: angle · (R + K T).</summary>
    public static double FromK(double angleRad, double radius, double thickness, double k) =>
        angleRad * (radius + (k * thickness));

    /// <summary>K that belongs to an allowance: (BA / angle - R) / T.</summary>
    public static double KOf(double allowance, double angleRad, double radius, double thickness) =>
        ((allowance / angleRad) - radius) / thickness;

    /// <summary>Factor k of DIN 6935, on <i>half</i> the thickness: 0.65 + 0.5 log10(r/s), between 0 and 1.</summary>
    /// <remarks>The standard gives 1 above r/s = 5; the limit 0 (r/s below 0.05) is ours, since a negative k has no meaning.</remarks>
    public static double DinFactor(double radius, double thickness)
    {
        var ratio = radius / thickness;
        return ratio > 5 ? 1
            : ratio <= 0 ? 0
            : Math.Clamp(0.65 + (0.5 * Math.Log10(ratio)), 0, 1);
    }

    /// <summary>Deduction v of DIN 6935 for one bend, in its three branches by opening angle.</summary>
    public static double DinDeduction(double angleRad, double radius, double thickness)
    {
        var opening = Math.PI - angleRad;
        if (opening > DinFlatOpeningRad)
        {
            return 0;
        }

        var neutral = angleRad * (radius + (DinFactor(radius, thickness) * thickness / 2));
        return (2 * Setback(angleRad, radius, thickness)) - neutral;
    }

    /// <summary>Bend allowance of Machinery's Handbook, equations 32 to 34, other angles in proportion to 90°.</summary>
    public static double Handbook(HandbookMetal metal, double angleRad, double radius, double thickness)
    {
        var share = metal switch
        {
            HandbookMetal.Soft => 0.55,
            HandbookMetal.Medium => 0.64,
            _ => 0.71,
        };
        return ((share * thickness) + (1.57 * radius)) * angleRad / (Math.PI / 2);
    }

    /// <summary>Empirical aircraft rule: (0.01743 R + 0.0078 T) per degree (FAA-H-8083-31, chapter 4).</summary>
    public static double Empirical(double angleRad, double radius, double thickness) =>
        ((0.01743 * radius) + (0.0078 * thickness)) * angleRad * 180 / Math.PI;

    /// <summary>
    /// Outside mould line to bend tangent: (R + T) tan(angle/2) up to 90°; beyond, the outside tangent plane is meant and it is R + T.
    /// </summary>
    public static double Setback(double angleRad, double radius, double thickness) =>
        (radius + thickness) * Reach(angleRad);

    /// <summary>Inside mould line (or tangent plane) to bend tangent: the same with R alone.</summary>
    public static double InsideSetback(double angleRad, double radius) => radius * Reach(angleRad);

    private static double Reach(double angleRad) => angleRad <= Math.PI / 2 ? Math.Tan(angleRad / 2) : 1;
}
