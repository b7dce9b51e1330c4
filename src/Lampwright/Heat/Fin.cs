namespace Lampwright.Heat;

/// <summary>Straight fins of constant section with an adiabatic tip.</summary>
/// <remarks>
/// Validity: h·t/k much below 1. Source: Gardner 1945, Murray 1938; Mechanical Engineers' Handbook, 3rd ed., vol. 4, p. 402.
/// Accuracy: exact for uniform h. Checked by: printed (Incropera, Cengel). Closed form: cheap enough for every draw.
/// </remarks>
public static class Fin
{
    /// <summary>Efficiency tanh(mL)/(mL), between 0 and 1.</summary>
    /// <param name="mL">Fin parameter m times length, 0 or above.</param>
    public static double Efficiency(double mL) => mL < 1e-3 ? 1 - mL * mL / 3 : Math.Tanh(mL) / mL;

    /// <summary>Efficiency of a plate fin that loses heat on both sides.</summary>
    /// <param name="filmWPerM2K">Film coefficient, W/(m²·K), 0 or above.</param>
    /// <param name="conductivityWPerMK">Conductivity of the fin, W/(m·K).</param>
    /// <param name="thicknessM">Thickness, m.</param>
    /// <param name="heightM">Height from the base, m.</param>
    public static double PlateEfficiency(
        double filmWPerM2K,
        double conductivityWPerMK,
        double thicknessM,
        double heightM
    ) => Efficiency(Math.Sqrt(2 * filmWPerM2K / (conductivityWPerMK * thicknessM)) * heightM);

    /// <summary>Heat that a fin of constant section takes from its root, W.</summary>
    /// <param name="filmWPerM2K">Film coefficient, W/(m²·K), above 0.</param>
    /// <param name="conductivityWPerMK">Conductivity, W/(m·K).</param>
    /// <param name="perimeterM">Perimeter of the section, m.</param>
    /// <param name="areaM2">Area of the section, m².</param>
    /// <param name="lengthM">Length, m; infinite is allowed.</param>
    /// <param name="riseK">Root over the air, K.</param>
    public static double HeatW(
        double filmWPerM2K,
        double conductivityWPerMK,
        double perimeterM,
        double areaM2,
        double lengthM,
        double riseK
    )
    {
        var m = Math.Sqrt(filmWPerM2K * perimeterM / (conductivityWPerMK * areaM2));
        return Math.Sqrt(filmWPerM2K * perimeterM * conductivityWPerMK * areaM2) * riseK * Math.Tanh(m * lengthM);
    }
}
