using System.Collections.Frozen;

namespace Lampwright.Quantities;

/// <summary>Plain words for dimensions, with an example of how each is written.</summary>
public static class DimensionNames
{
    private static readonly FrozenDictionary<Dimension, (string Name, string Examples)> Known = new Dictionary<
        Dimension,
        (string, string)
    >
    {
        [Dimension.None] = ("a plain number", "0.62 or 62 %"),
        [Dimension.Length] = ("a length", "12 mm or 1/2 in"),
        [Dimension.Area] = ("an area", "0.75 mm2"),
        [Dimension.Volume] = ("a volume", "0.5 L"),
        [Dimension.Mass] = ("a mass", "310 g or 0.7 lb"),
        [Dimension.Time] = ("a time", "20 min or 1/60 s"),
        [Dimension.Frequency] = ("a frequency", "50 Hz"),
        [Dimension.Temperature] = ("a temperature", "22 degC or 72 degF"),
        [Dimension.TemperatureDifference] = ("a temperature difference", "3 K"),
        [Dimension.PerTemperature] = ("a coefficient of temperature", "100 ppm/K"),
        [Dimension.Angle] = ("an angle", "90 deg"),
        [Dimension.Angle / Dimension.Time] = ("a speed of turning", "1800 rpm"),
        [Dimension.Stops] = ("stops of light", "0.5 stops"),
        [Dimension.Current] = ("a current", "1.75 A"),
        [Dimension.Voltage] = ("a voltage", "36 V"),
        [Dimension.Resistance] = ("a resistance", "0.14 ohm"),
        [Dimension.Power] = ("a power", "3 W"),
        [Dimension.Capacitance] = ("a capacitance", "470 uF"),
        [Dimension.Inductance] = ("an inductance", "10 uH"),
        [Dimension.Charge] = ("a charge", "12 Ah"),
        [Dimension.VoltagePerTemperature] = ("a slope of voltage", "-18 mV/K"),
        [Dimension.LuminousFlux] = ("a luminous flux", "4350 lm"),
        [Dimension.LuminousIntensity] = ("a luminous intensity", "900 cd"),
        [Dimension.Illuminance] = ("an illuminance", "5000 lx"),
        [Dimension.LuminousIntensity / Dimension.Area] = ("a luminance", "2000 cd/m2"),
        [Dimension.VolumeFlow] = ("an air flow", "35 m3/h or 20 cfm"),
        [Dimension.Pressure] = ("a pressure", "22 Pa or 0.09 inH2O"),
        [Dimension.Force] = ("a force", "15 N"),
        [Dimension.Torque] = ("a torque or an energy", "1.5 N*m or 20 J"),
        [Dimension.ThermalResistance] = ("a thermal resistance", "0.3 K/W"),
        [Dimension.ThermalResistance * Dimension.Area] = ("a thermal resistance by area", "20 mm2*K/W"),
        [Dimension.ThermalConductivity] = ("a thermal conductivity", "3 W/(m*K)"),
        [Dimension.Power / Dimension.Area / Dimension.TemperatureDifference] = ("a film coefficient", "8 W/(m2*K)"),
        [Dimension.HeatCapacity] = ("a heat capacity", "250 J/K"),
        [Dimension.HeatCapacity / Dimension.Mass] = ("a specific heat", "900 J/(kg*K)"),
        [Dimension.Density] = ("a density", "7850 kg/m3"),
        [Dimension.Speed] = ("a speed", "2 m/s"),
        [Dimension.Torque / Dimension.Angle] = ("a stiffness of turning", "20 N*m/rad"),
    }.ToFrozenDictionary();

    /// <summary>All dimensions that have a name.</summary>
    public static IEnumerable<Dimension> All => Known.Keys;

    /// <summary>The name with its article, for example <c>a length</c>; the base units where there is no name.</summary>
    public static string Name(Dimension dimension) =>
        Known.TryGetValue(dimension, out var known) ? known.Name : $"a quantity in {dimension}";

    /// <summary>How the dimension is written, for example <c>12 mm or 1/2 in</c>.</summary>
    public static string Examples(Dimension dimension) =>
        Known.TryGetValue(dimension, out var known) ? known.Examples : $"1 {dimension}";

    /// <summary>Name and example, for example <c>a length such as 12 mm or 1/2 in</c>.</summary>
    public static string Wanted(Dimension dimension) => $"{Name(dimension)} such as {Examples(dimension)}";
}
