namespace Lampwright.Heat;

/// <summary>Constants of nature that this station uses.</summary>
internal static class Physics
{
    /// <summary>Standard acceleration of free fall, m/s² (ISO 80000-3).</summary>
    internal static readonly double Gravity = 9.80665;

    /// <summary>Stefan-Boltzmann constant, W/(m²·K⁴) (CODATA 2018).</summary>
    internal static readonly double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Zero of the Celsius scale, K.</summary>
    internal static readonly double ZeroCelsius = 273.15;
}
