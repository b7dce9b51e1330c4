namespace Lampwright.References.Heat.Truth;

/// <summary>Dry air of the true lights: ideal gas, Sutherland's laws.</summary>
/// <remarks>Source: White, Viscous Fluid Flow, 2nd ed., tables 1-2 and 1-3 (constants from memory): µ within 2 %, k within 2 % from 200 to 1000 K.</remarks>
internal readonly record struct TrueAir(double TemperatureK, double PressurePa)
{
    public double Density => PressurePa / (287.05 * TemperatureK);

    public double Viscosity => 1.716e-5 * Math.Pow(TemperatureK / 273, 1.5) * (273 + 111) / (TemperatureK + 111);

    public double Conductivity => 0.0241 * Math.Pow(TemperatureK / 273, 1.5) * (273 + 194) / (TemperatureK + 194);

    public static double SpecificHeat => 1006;

    public double Prandtl => Viscosity * SpecificHeat / Conductivity;

    public double Kinematic => Viscosity / Density;

    /// <summary>Rayleigh number for a rise over air of <paramref name="ambientK"/> on a length.</summary>
    public double Rayleigh(double riseK, double lengthM, double ambientK) =>
        9.81 * riseK / ambientK * Math.Pow(lengthM, 3) / (Kinematic * Kinematic) * Prandtl;
}
