namespace Lampwright.Metal;

/// <summary>K of the neutral fibre out of a test strip, with its uncertainty. Metres, radians.</summary>
/// <remarks>
/// <b>Source</b>: K = (BA / angle - R) / T with BA = 2 · setback - BD; first-order propagation (JCGM 100:2008, 5.1.2).
/// The deduction itself does not hang on the radius that is assumed; K does. Angles up to 90° for the sensitivities.
/// <b>Checked by</b>: hand case M.B17 of the references.
/// </remarks>
/// <param name="K">Neutral fibre as a share of the thickness.</param>
/// <param name="FromDeduction">Standard uncertainty that comes from the lengths.</param>
/// <param name="FromRadius">Standard uncertainty that comes from the radius.</param>
/// <param name="FromThickness">Standard uncertainty that comes from the thickness.</param>
public sealed record StripK(double K, double FromDeduction, double FromRadius, double FromThickness)
{
    /// <summary>All contributions in quadrature.</summary>
    public double Uncertainty =>
        Math.Sqrt((FromDeduction * FromDeduction) + (FromRadius * FromRadius) + (FromThickness * FromThickness));

    /// <summary>K of a strip.</summary>
    public static double Of(BendStrip strip, double radius, double thickness) =>
        BendAllowance.KOf(
            (2 * BendAllowance.Setback(strip.AngleRad, radius, thickness)) - strip.DeductionM,
            strip.AngleRad,
            radius,
            thickness
        );

    /// <summary>K and its uncertainty out of the readings of equal strips.</summary>
    /// <param name="strip">Mean strip.</param>
    /// <param name="radius">Inside radius.</param>
    /// <param name="thickness">Thickness.</param>
    /// <param name="uLength">Standard uncertainty of one reading of a length.</param>
    /// <param name="uRadius">Standard uncertainty of the radius.</param>
    /// <param name="uThickness">Standard uncertainty of the thickness.</param>
    /// <param name="strips">How many strips were averaged.</param>
    public static StripK With(
        BendStrip strip,
        double radius,
        double thickness,
        double uLength,
        double uRadius,
        double uThickness,
        int strips = 1
    )
    {
        var k = Of(strip, radius, thickness);
        var uDeduction = Math.Sqrt(3.0 / Math.Max(1, strips)) * uLength;
        var reach = 2 * BendAllowance.Setback(strip.AngleRad, 1, 0) / strip.AngleRad;
        return new(
            k,
            uDeduction / (strip.AngleRad * thickness),
            Math.Abs(reach - 1) / thickness * uRadius,
            Math.Abs(reach - k) / thickness * uThickness
        );
    }
}
