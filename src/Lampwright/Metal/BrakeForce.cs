namespace Lampwright.Metal;

/// <summary>What bending asks of the brake.</summary>
/// <remarks><b>Source</b>: moment per width S T²/4; die force Kbf Rm w T²/D: Groover (memory). <b>Checked by</b>: printed (M.B15), derived (M.H5a).</remarks>
public static class BrakeForce
{
    /// <summary>Share of its mild-steel thickness that a brake bends of a stronger sheet: √(S1/S2).</summary>
    /// <param name="rated">Tensile strength that the rating speaks of.</param>
    /// <param name="strength">Tensile strength of the sheet, the same unit.</param>
    public static double Derating(double rated, double strength) => Math.Sqrt(rated / Guard.Positive(strength));

    /// <summary>Force on a die: factor · Rm · width · T² / opening; newtons with MPa and mm.</summary>
    public static double DieForce(double factor, double strength, double width, double thickness, double opening) =>
        factor * strength * width * thickness * thickness / Guard.Positive(opening);
}
