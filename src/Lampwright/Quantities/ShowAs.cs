using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Lampwright.Quantities;

/// <summary>In which unit each kind of quantity is shown: the maker's choice, else a usual one that keeps the number handy.</summary>
public sealed class ShowAs
{
    private static readonly FrozenDictionary<Dimension, string[]> Usual = new Dictionary<Dimension, string[]>
    {
        [Dimension.Length] = ["mm"],
        [Dimension.Area] = ["mm2"],
        [Dimension.Volume] = ["mL", "L"],
        [Dimension.Mass] = ["g", "kg"],
        [Dimension.Time] = ["us", "ms", "s", "min", "h"],
        [Dimension.Frequency] = ["Hz", "kHz", "MHz"],
        [Dimension.Temperature] = ["degC"],
        [Dimension.TemperatureDifference] = ["K"],
        [Dimension.PerTemperature] = ["ppm/K"],
        [Dimension.Angle] = ["deg"],
        [Dimension.Angle / Dimension.Time] = ["rpm"],
        [Dimension.Stops] = ["stops"],
        [Dimension.Current] = ["uA", "mA", "A"],
        [Dimension.Voltage] = ["mV", "V"],
        [Dimension.Resistance] = ["mohm", "ohm", "kohm", "Mohm"],
        [Dimension.Power] = ["mW", "W"],
        [Dimension.Capacitance] = ["pF", "nF", "uF"],
        [Dimension.Inductance] = ["uH", "mH"],
        [Dimension.Charge] = ["mAh", "Ah"],
        [Dimension.VoltagePerTemperature] = ["mV/K"],
        [Dimension.LuminousFlux] = ["lm"],
        [Dimension.LuminousIntensity] = ["cd"],
        [Dimension.Illuminance] = ["lx"],
        [Dimension.LuminousIntensity / Dimension.Area] = ["cd/m2"],
        [Dimension.VolumeFlow] = ["m3/h"],
        [Dimension.Pressure] = ["Pa", "kPa", "MPa", "GPa"],
        [Dimension.Force] = ["N", "kN"],
        [Dimension.Torque] = ["N*m"],
        [Dimension.ThermalResistance] = ["K/W"],
        [Dimension.ThermalConductivity] = ["W/(m*K)"],
        [Dimension.HeatCapacity] = ["J/K"],
        [Dimension.Density] = ["kg/m3"],
        [Dimension.Speed] = ["m/s"],
    }.ToFrozenDictionary();

    private readonly ImmutableDictionary<Dimension, (string Symbol, UnitValue Unit)> _chosen;

    private ShowAs(ImmutableDictionary<Dimension, (string, UnitValue)> chosen) => _chosen = chosen;

    /// <summary>Metric units throughout: what is shown where the maker chose nothing.</summary>
    public static ShowAs Metric { get; } = new(ImmutableDictionary<Dimension, (string, UnitValue)>.Empty);

    /// <summary>The same choice with one kind of quantity shown in another unit.</summary>
    /// <param name="unit">The unit, which says for which dimension it is, for example <c>in</c>.</param>
    /// <returns>The new choice, or null where the text is no unit.</returns>
    public ShowAs? With(string unit) =>
        UnitText.TryParse(unit, out var value, out _) && !value.Dimension.IsNone
            ? new ShowAs(_chosen.SetItem(value.Dimension, (unit.Trim(), value)))
            : null;

    /// <summary>The unit a value is shown in: its symbol and what it comes to.</summary>
    /// <param name="si">The value, which decides between mohm and ohm.</param>
    /// <param name="dimension">Its dimension.</param>
    public (string Symbol, UnitValue Unit) UnitFor(double si, Dimension dimension)
    {
        if (_chosen.TryGetValue(dimension, out var chosen))
        {
            return chosen;
        }

        if (!Usual.TryGetValue(dimension, out var usual))
        {
            var symbol = dimension.IsNone ? "" : dimension.ToString();
            return (symbol, new UnitValue(1, 0, dimension));
        }

        // The largest unit in which the number does not start with a zero; of a value of zero, the middle one.
        var pick = si == 0 ? usual[usual.Length / 2] : usual[0];
        foreach (var candidate in usual)
        {
            if (UnitText.TryParse(candidate, out var value, out _) && Math.Abs(si / value.Factor) >= 0.9995)
            {
                pick = candidate;
            }
        }

        _ = UnitText.TryParse(pick, out var unit, out _);
        return (pick, unit);
    }

    /// <summary>A value as it is shown, for example <c>140 mohm</c>.</summary>
    /// <param name="si">The value in SI units.</param>
    /// <param name="dimension">Its dimension.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    public string Show(double si, Dimension dimension, int digits = 3)
    {
        var (symbol, unit) = UnitFor(si, dimension);
        return QuantityFormat.Show(si, unit, symbol, digits);
    }

    /// <summary>A value with its spread as it is shown, for example <c>1.2 mm ± 0.05 mm</c>.</summary>
    /// <param name="stated">Value and spread.</param>
    /// <param name="digits">Significant digits of the value, 1 to 15; the spread has two.</param>
    public string Show(Stated stated, int digits = 3)
    {
        var shown = Show(stated.Si, stated.Dimension, digits);
        return stated.HalfWidth == 0 ? shown : $"{shown} ± {Show(stated.HalfWidth, stated.Dimension.AsDifference, 2)}";
    }
}
