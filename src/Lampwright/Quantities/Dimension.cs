using System.Text;

namespace Lampwright.Quantities;

/// <summary>What kind of quantity a number is: whole exponents of the base units, and whether a temperature is a point or a step.</summary>
/// <remarks>
/// Base units in this order: metre, kilogram, second, ampere, kelvin, candela, radian, stop. The radian counts, so that a
/// lumen (cd·rad²) is not a candela and an angle is not a bare number. The stop (a factor of two of light) counts, so that it
/// is not taken for a ratio. Exponents lie in -60 to 60; a product that leaves the range throws, which no text of a design
/// file can reach because powers are limited while reading.
/// </remarks>
public readonly record struct Dimension
{
    private static readonly string[] Symbols = ["m", "kg", "s", "A", "K", "cd", "rad", "stop"];
    private readonly ulong _lanes;

    private Dimension(ulong lanes, bool absolute)
    {
        _lanes = lanes;
        IsAbsoluteTemperature = absolute;
    }

    /// <summary>True for a temperature on the absolute scale (22 degC), false for a difference (3 K) and all else.</summary>
    public bool IsAbsoluteTemperature { get; }

    /// <summary>A bare number.</summary>
    public static Dimension None => default;

    /// <summary>Length, metre.</summary>
    public static Dimension Length { get; } = Base(0);

    /// <summary>Mass, kilogram.</summary>
    public static Dimension Mass { get; } = Base(1);

    /// <summary>Time, second.</summary>
    public static Dimension Time { get; } = Base(2);

    /// <summary>Electric current, ampere.</summary>
    public static Dimension Current { get; } = Base(3);

    /// <summary>Difference of two temperatures, kelvin.</summary>
    public static Dimension TemperatureDifference { get; } = Base(4);

    /// <summary>Temperature on the absolute scale, kelvin.</summary>
    public static Dimension Temperature { get; } = new(Base(4)._lanes, true);

    /// <summary>Luminous intensity, candela.</summary>
    public static Dimension LuminousIntensity { get; } = Base(5);

    /// <summary>Angle, radian.</summary>
    public static Dimension Angle { get; } = Base(6);

    /// <summary>Stops of light: the logarithm of a ratio to the base of two.</summary>
    public static Dimension Stops { get; } = Base(7);

    /// <summary>Area, m².</summary>
    public static Dimension Area { get; } = Length.ToPower(2);

    /// <summary>Volume, m³.</summary>
    public static Dimension Volume { get; } = Length.ToPower(3);

    /// <summary>Frequency, 1/s.</summary>
    public static Dimension Frequency { get; } = Time.ToPower(-1);

    /// <summary>Force, newton.</summary>
    public static Dimension Force { get; } = Mass * Length / Time.ToPower(2);

    /// <summary>Torque, N·m; the same exponents as an energy.</summary>
    public static Dimension Torque { get; } = Force * Length;

    /// <summary>Pressure and stress, pascal.</summary>
    public static Dimension Pressure { get; } = Force / Area;

    /// <summary>Power, watt.</summary>
    public static Dimension Power { get; } = Torque / Time;

    /// <summary>Electric charge, ampere second.</summary>
    public static Dimension Charge { get; } = Current * Time;

    /// <summary>Voltage, volt.</summary>
    public static Dimension Voltage { get; } = Power / Current;

    /// <summary>Electric resistance, ohm.</summary>
    public static Dimension Resistance { get; } = Voltage / Current;

    /// <summary>Capacitance, farad.</summary>
    public static Dimension Capacitance { get; } = Charge / Voltage;

    /// <summary>Inductance, henry.</summary>
    public static Dimension Inductance { get; } = Voltage * Time / Current;

    /// <summary>Luminous flux, lumen.</summary>
    public static Dimension LuminousFlux { get; } = LuminousIntensity * Angle.ToPower(2);

    /// <summary>Illuminance, lux.</summary>
    public static Dimension Illuminance { get; } = LuminousFlux / Area;

    /// <summary>Volume flow, m³/s.</summary>
    public static Dimension VolumeFlow { get; } = Volume / Time;

    /// <summary>Thermal resistance, K/W.</summary>
    public static Dimension ThermalResistance { get; } = TemperatureDifference / Power;

    /// <summary>Heat capacity, J/K.</summary>
    public static Dimension HeatCapacity { get; } = Torque / TemperatureDifference;

    /// <summary>Thermal conductivity, W/(m·K).</summary>
    public static Dimension ThermalConductivity { get; } = Power / (Length * TemperatureDifference);

    /// <summary>Coefficient of temperature of a ratio, 1/K.</summary>
    public static Dimension PerTemperature { get; } = TemperatureDifference.ToPower(-1);

    /// <summary>Slope of a voltage over temperature, V/K.</summary>
    public static Dimension VoltagePerTemperature { get; } = Voltage / TemperatureDifference;

    /// <summary>Density, kg/m³.</summary>
    public static Dimension Density { get; } = Mass / Volume;

    /// <summary>Speed, m/s.</summary>
    public static Dimension Speed { get; } = Length / Time;

    /// <summary>True for a bare number.</summary>
    public bool IsNone => _lanes == 0;

    /// <summary>The same dimension as a difference; only a temperature changes.</summary>
    public Dimension AsDifference => new(_lanes, false);

    /// <summary>Exponent of a base unit, 0 to 7 in the order of the remarks.</summary>
    public int Exponent(int unit) => (sbyte)(_lanes >> (8 * unit));

    /// <summary>The dimension of a product. An absolute temperature counts as its kelvins.</summary>
    public static Dimension operator *(Dimension a, Dimension b) => Combine(a, b, 1);

    /// <summary>The dimension of a quotient. An absolute temperature counts as its kelvins.</summary>
    public static Dimension operator /(Dimension a, Dimension b) => Combine(a, b, -1);

    /// <summary>The dimension of a whole power.</summary>
    public Dimension ToPower(int power) =>
        TryToPower(power, out var result)
            ? result
            : throw new ArgumentOutOfRangeException(nameof(power), power, "The exponents leave the range -60 to 60.");

    /// <summary>The dimension of a whole power, false where an exponent would leave -60 to 60.</summary>
    public bool TryToPower(int power, out Dimension result)
    {
        result = None;
        var lanes = 0UL;
        for (var i = 0; i < 8; i++)
        {
            var e = (long)Exponent(i) * power;
            if (e is < -60 or > 60)
            {
                return false;
            }

            lanes |= (ulong)(byte)(sbyte)e << (8 * i);
        }

        result = new Dimension(lanes, false);
        return true;
    }

    /// <summary>The dimension of a product or quotient, false where an exponent would leave -60 to 60.</summary>
    public static bool TryCombine(Dimension a, Dimension b, int sign, out Dimension result)
    {
        result = None;
        var lanes = 0UL;
        for (var i = 0; i < 8; i++)
        {
            var e = a.Exponent(i) + (sign * b.Exponent(i));
            if (e is < -60 or > 60)
            {
                return false;
            }

            lanes |= (ulong)(byte)(sbyte)e << (8 * i);
        }

        result = new Dimension(lanes, false);
        return true;
    }

    /// <summary>The dimension of a square root, or null where an exponent is odd.</summary>
    public Dimension? SquareRoot()
    {
        var lanes = 0UL;
        for (var i = 0; i < 8; i++)
        {
            var e = Exponent(i);
            if (e % 2 != 0)
            {
                return null;
            }

            lanes |= (ulong)(byte)(sbyte)(e / 2) << (8 * i);
        }

        return new Dimension(lanes, false);
    }

    /// <summary>The base units with their exponents, for example <c>kg*m/s^2</c>; <c>1</c> for a bare number.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        Append(text, 1);
        var divided = 0;
        for (var i = 0; i < 8; i++)
        {
            divided += Exponent(i) < 0 ? 1 : 0;
        }

        if (divided > 0)
        {
            text.Append(text.Length == 0 ? "1/" : "/").Append(divided > 1 ? "(" : "");
            Append(text, -1);
            text.Append(divided > 1 ? ")" : "");
        }

        return text.Length == 0 ? "1" : text.ToString();
    }

    private void Append(StringBuilder text, int sign)
    {
        var first = true;
        for (var i = 0; i < 8; i++)
        {
            var e = Exponent(i) * sign;
            if (e <= 0)
            {
                continue;
            }

            text.Append(first ? "" : "*").Append(Symbols[i]);
            first = false;
            if (e > 1)
            {
                text.Append('^').Append(e);
            }
        }
    }

    private static Dimension Combine(Dimension a, Dimension b, int sign) =>
        TryCombine(a, b, sign, out var result)
            ? result
            : throw new OverflowException("The exponents of a product leave the range -60 to 60.");

    private static Dimension Base(int unit) => new(1UL << (8 * unit), false);
}
