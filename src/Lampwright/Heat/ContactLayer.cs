namespace Lampwright.Heat;

/// <summary>The layer between an emitter and its sink.</summary>
public static class ContactLayer
{
    /// <summary>Resistance of a layer with its two boundaries, K/W.</summary>
    /// <remarks>
    /// R = BLT/(k·A) + 2·R_boundary. Source: common form; HTH ch. 4. Checked by: printed (Cengel Ex. 3-4, 3-5). Closed form.
    /// </remarks>
    /// <param name="thicknessM">Bond-line thickness, m, 0 or above.</param>
    /// <param name="conductivityWPerMK">Conductivity of the layer, W/(m·K), above 0.</param>
    /// <param name="areaM2">Area that touches, m², above 0.</param>
    /// <param name="boundaryM2KPerW">Resistance of each boundary, m²K/W, 0 or above.</param>
    /// <param name="factors">Errors of the methods.</param>
    public static double ResistanceKPerW(
        double thicknessM,
        double conductivityWPerMK,
        double areaM2,
        double boundaryM2KPerW = 0,
        HeatFactors? factors = null
    )
    {
        Guard.InRange(thicknessM, 0, 1);
        Guard.InRange(boundaryM2KPerW, 0, 1);
        return (factors?.Interface ?? 1)
            * (thicknessM / Guard.Positive(conductivityWPerMK) + 2 * boundaryM2KPerW)
            / Guard.Positive(areaM2);
    }
}
