using System.Globalization;

namespace Lampwright.Quantities;

/// <summary>Writes values with their units; invariant culture, a point for the decimals.</summary>
public static class QuantityFormat
{
    /// <summary>A difference of two units in the last binary place is no reason to write 60.00000000000001.</summary>
    private static readonly double LastBits = 4.5e-16;

    /// <summary>A value in a unit with a number of significant digits, for example <c>140 mohm</c>.</summary>
    /// <param name="si">The value in SI units.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="symbol">How the unit is written.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    public static string Show(double si, UnitValue unit, string symbol, int digits)
    {
        var number = Number((si - unit.Offset) / unit.Factor, digits);
        return symbol.Length == 0 ? number : $"{number} {symbol}";
    }

    /// <summary>A value in a unit with all its digits, for the design file: reading it again gives the same value.</summary>
    /// <param name="si">The value in SI units.</param>
    /// <param name="unit">The unit's text, for example <c>mm</c>; empty for a bare number.</param>
    /// <exception cref="ArgumentException">The text is no unit.</exception>
    /// <remarks>Accuracy: the last two bits; 15 significant digits are written unless the sixteenth or seventeenth is needed.</remarks>
    public static string Exact(double si, string unit)
    {
        if (!UnitText.TryParse(unit, out var value, out var error))
        {
            throw new ArgumentException(error!.Message, nameof(unit));
        }

        var number = (si - value.Offset) / value.Factor;
        var written = Plain(number.ToString("G15", CultureInfo.InvariantCulture));
        foreach (var format in new[] { "G15", "G16", "G17" })
        {
            written = Plain(number.ToString(format, CultureInfo.InvariantCulture));
            var again = (double.Parse(written, CultureInfo.InvariantCulture) * value.Factor) + value.Offset;
            if (Math.Abs(again - si) <= LastBits * Math.Abs(si))
            {
                break;
            }
        }

        return unit.Trim().Length == 0 ? written : $"{written} {unit.Trim()}";
    }

    /// <summary>A number with significant digits, without an exponent from 1e-4 to 1e9.</summary>
    /// <param name="number">The number; "?" is written for one that is not finite.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    public static string Number(double number, int digits)
    {
        if (!double.IsFinite(number))
        {
            return "?";
        }

        digits = Math.Clamp(digits, 1, 15);
        return number == 0
            ? "0"
            : Plain(number.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
    }

    private static string Plain(string text)
    {
        if (!text.Contains('E', StringComparison.Ordinal))
        {
            return text == "-0" ? "0" : text;
        }

        // decimal keeps the digits as written; what it cannot hold stays with its exponent.
        var number = double.Parse(text, CultureInfo.InvariantCulture);
        var size = Math.Abs(number);
        return
            size is >= 1e-4 and < 1e9
            && decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var plain)
            ? plain.ToString("0.#############################", CultureInfo.InvariantCulture)
            : text.Replace("E+0", "e", StringComparison.Ordinal)
                .Replace("E-0", "e-", StringComparison.Ordinal)
                .Replace("E+", "e", StringComparison.Ordinal)
                .Replace("E", "e", StringComparison.Ordinal);
    }
}
