namespace Lampwright.Heat;

/// <summary>Pressure of the air at an altitude.</summary>
/// <remarks>
/// Validity: -500 to 11,000 m. Source: US Standard Atmosphere 1976, troposphere.
/// Accuracy: the weather moves the pressure by 3 % either way. Checked by: printed (its table).
/// </remarks>
public static class Atmosphere
{
    /// <summary>Pressure at sea level, Pa.</summary>
    public static readonly double SeaLevelPa = 101325;

    /// <summary>Pressure of the standard atmosphere, Pa.</summary>
    /// <param name="altitudeM">Geometric altitude, m, -500 to 11,000.</param>
    public static double PressurePa(double altitudeM) =>
        SeaLevelPa * Math.Pow(TemperatureK(altitudeM) / 288.15, 5.25588);

    /// <summary>Temperature of the standard atmosphere, K. The room has its own.</summary>
    /// <param name="altitudeM">Geometric altitude, m, -500 to 11,000.</param>
    public static double TemperatureK(double altitudeM)
    {
        var z = Guard.InRange(altitudeM, -500, 11000) / 1000;
        return 288.15 - 6.5 * (6356.766 * z / (6356.766 + z));
    }

    /// <summary>Density of the standard atmosphere, kg/m³.</summary>
    /// <param name="altitudeM">Geometric altitude, m, -500 to 11,000.</param>
    public static double Density(double altitudeM) => PressurePa(altitudeM) / (287.053 * TemperatureK(altitudeM));
}
