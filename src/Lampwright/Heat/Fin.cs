using MathNet.Numerics;

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

    /// <summary>Efficiency of a round pin that loses heat all round.</summary>
    /// <remarks>Its tip counts where the caller gives the corrected height, L + d/4; at the height alone it is taken as insulated.</remarks>
    /// <param name="filmWPerM2K">Film coefficient, W/(m²·K), 0 or above.</param>
    /// <param name="conductivityWPerMK">Conductivity of the pin, W/(m·K).</param>
    /// <param name="diameterM">Diameter, m.</param>
    /// <param name="heightM">Height from the base, corrected for the tip or not, m.</param>
    public static double PinEfficiency(
        double filmWPerM2K,
        double conductivityWPerMK,
        double diameterM,
        double heightM
    ) => Efficiency(Math.Sqrt(4 * filmWPerM2K / (conductivityWPerMK * diameterM)) * heightM);

    /// <summary>Efficiency of a round fin about a pipe, exact, by Bessel functions; adiabatic at its corrected rim.</summary>
    /// <remarks>Source: Gardner 1945; Incropera eq. 3.91. Checked by: printed (Incropera Ex. 3.10).</remarks>
    /// <param name="filmWPerM2K">Film coefficient, W/(m²·K), above 0.</param>
    /// <param name="conductivityWPerMK">Conductivity, W/(m·K).</param>
    /// <param name="thicknessM">Thickness, m.</param>
    /// <param name="innerM">Radius of the pipe, m.</param>
    /// <param name="outerM">Radius of the rim with half a thickness added, m, above the pipe's.</param>
    public static double AnnularEfficiency(
        double filmWPerM2K,
        double conductivityWPerMK,
        double thicknessM,
        double innerM,
        double outerM
    )
    {
        double m = Math.Sqrt(2 * filmWPerM2K / (conductivityWPerMK * thicknessM)),
            a = m * innerM,
            b = m * outerM;
        double above =
                (SpecialFunctions.BesselK1(a) * SpecialFunctions.BesselI1(b))
                - (SpecialFunctions.BesselI1(a) * SpecialFunctions.BesselK1(b)),
            below =
                (SpecialFunctions.BesselI0(a) * SpecialFunctions.BesselK1(b))
                + (SpecialFunctions.BesselK0(a) * SpecialFunctions.BesselI1(b));
        return 2 * innerM / (m * ((outerM * outerM) - (innerM * innerM))) * above / below;
    }

    /// <summary>Efficiency of a round fin about a pipe in closed form: tanh(m·r·φ)/(m·r·φ), φ = (R/r - 1)(1 + 0.35·ln(R/r)).</summary>
    /// <remarks>
    /// Source: Schmidt 1949, Refrigerating Engineering 57:351. Accuracy: 1 % of the exact one by Bessel functions (Gardner 1945) above an
    /// efficiency of one half. Checked by: printed (Incropera Ex. 3.10), the exact one.
    /// </remarks>
    /// <param name="filmWPerM2K">Film coefficient, W/(m²·K), 0 or above.</param>
    /// <param name="conductivityWPerMK">Conductivity, W/(m·K).</param>
    /// <param name="thicknessM">Thickness, m.</param>
    /// <param name="innerM">Radius of the pipe, m.</param>
    /// <param name="outerM">Radius of the rim, m, above the pipe's.</param>
    public static double AroundPipe(
        double filmWPerM2K,
        double conductivityWPerMK,
        double thicknessM,
        double innerM,
        double outerM
    )
    {
        var ratio = outerM / innerM;
        var phi = (ratio - 1) * (1 + (0.35 * Math.Log(ratio)));
        return Efficiency(Math.Sqrt(2 * filmWPerM2K / (conductivityWPerMK * thicknessM)) * innerM * phi);
    }

    /// <summary>Efficiency on side and tip of a fin of constant section whose tip has the same film.</summary>
    /// <remarks>Source: the exact solution with a convecting tip; EES function reference, eta_fin_constantCS_convtip.</remarks>
    /// <param name="mL">Fin parameter m times length, above 0.</param>
    /// <param name="tipOverSide">Area of the tip over that of the sides, 0 or above.</param>
    public static double EfficiencyWithTip(double mL, double tipOverSide)
    {
        double tanh = Math.Tanh(mL),
            tip = tipOverSide * mL;
        return (tanh + tip) / (mL * (1 + (tip * tanh)) * (1 + tipOverSide));
    }

    /// <summary>Rise of the tip over that of the root, of a fin of constant section whose tip has the same film.</summary>
    /// <param name="mL">Fin parameter m times length, 0 or above.</param>
    /// <param name="tipOverSide">Area of the tip over that of the sides, 0 or above; 0 insulates it.</param>
    public static double TipOverRoot(double mL, double tipOverSide) =>
        1 / (Math.Cosh(mL) + (tipOverSide * mL * Math.Sinh(mL)));
}
