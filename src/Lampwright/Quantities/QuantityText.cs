namespace Lampwright.Quantities;

/// <summary>Reads what a maker writes for a value: a number, its unit, and a spread if there is one.</summary>
/// <remarks>
/// <c>1.2 mm ± 0.05 mm</c>, <c>0.165 ohm ± 5 %</c>, <c>0.15 ± 0.03</c>, <c>1.2 ± 0.05 mm</c>; <c>+-</c> and <c>+/-</c> stand for ±.
/// A percentage is a share of the nominal value. The spread of a temperature is a difference (<c>22 degC ± 3 K</c>).
/// Nothing depends on culture; the decimal comma is an error that says so. Reading a usual text allocates nothing.
/// </remarks>
public static class QuantityText
{
    private static readonly int Longest = 400;
    private static readonly double Largest = 1e40;

    /// <summary>Reads a text of any dimension.</summary>
    /// <param name="text">The text.</param>
    /// <param name="stated">Value and spread in SI units.</param>
    /// <param name="error">Why it is none; null where it was read.</param>
    public static bool TryParse(ReadOnlySpan<char> text, out Stated stated, out QuantityError? error) =>
        TryParse(text, null, out stated, out error);

    /// <summary>Reads a text that must have a dimension.</summary>
    /// <param name="text">The text.</param>
    /// <param name="wanted">The dimension; kelvins written for an absolute temperature are taken as such.</param>
    /// <param name="stated">Value and spread in SI units.</param>
    /// <param name="error">Why it is none; null where it was read.</param>
    public static bool TryParse(ReadOnlySpan<char> text, Dimension? wanted, out Stated stated, out QuantityError? error)
    {
        stated = default;
        if (text.Length > Longest)
        {
            error = QuantityError.At(0, text, $"a text of at most {Longest} characters", "is too long");
            return false;
        }

        var (mark, markLength) = FindMark(text);
        var body = mark < 0 ? text : text[..mark];
        if (!One(body, 0, out var nominal, out var unitless, out error))
        {
            return false;
        }

        if (mark < 0)
        {
            return Settle(text, nominal, 0, wanted, out stated, out error);
        }

        return WithSpread(text, mark, mark + markLength, nominal, unitless, wanted, out stated, out error);
    }

    /// <summary>The unit as the maker wrote it, for example <c>mm</c> in <c>1.2 mm ± 0.05 mm</c>; empty where none stands there.</summary>
    public static string UnitOf(string text)
    {
        var (mark, _) = FindMark(text);
        var body = (mark < 0 ? text.AsSpan() : text.AsSpan(0, mark)).Trim();
        return NumberText.TryRead(body, 0, out _, out var length, out _) ? body[length..].Trim().ToString() : "";
    }

    /// <summary>Place and length of the sign that parts value and spread; -1 where there is none.</summary>
    internal static (int At, int Length) FindMark(ReadOnlySpan<char> text)
    {
        var sign = text.IndexOf('±');
        if (sign >= 0)
        {
            return (sign, 1);
        }

        var plus = text.IndexOf('+');
        while (plus >= 0)
        {
            if (text[plus..].StartsWith("+-"))
            {
                return (plus, 2);
            }

            if (text[plus..].StartsWith("+/-"))
            {
                return (plus, 3);
            }

            var next = text[(plus + 1)..].IndexOf('+');
            plus = next < 0 ? -1 : plus + 1 + next;
        }

        return (-1, 0);
    }

    /// <summary>The half-width that a text after the ± states for a nominal value of this dimension.</summary>
    internal static bool TrySpread(
        ReadOnlySpan<char> text,
        int origin,
        Quantity nominal,
        bool nominalIsPercent,
        out double halfWidth,
        out QuantityError? error
    )
    {
        halfWidth = 0;
        var trimmed = text.Trim();
        var at = origin + text.IndexOf(trimmed, StringComparison.Ordinal);
        if (!One(text, origin, out var spread, out var unitless, out error))
        {
            return false;
        }

        var percent = trimmed.EndsWith("%") || trimmed.EndsWith("percent") || trimmed.EndsWith("ppm");
        if (spread.Si < 0)
        {
            error = QuantityError.At(at, trimmed, "a spread above zero", "is negative");
            return false;
        }

        if (percent)
        {
            if (nominal.Dimension.IsAbsoluteTemperature)
            {
                error = QuantityError.At(at, trimmed, "a difference such as ± 3 K", "has no meaning for a temperature");
                return false;
            }

            if (nominalIsPercent)
            {
                error = QuantityError.At(
                    at,
                    trimmed,
                    "plain numbers, as in 0.62 ± 0.03 for points or 0.62 ± 5 % for a share",
                    "can be read two ways after a percentage"
                );
                return false;
            }

            halfWidth = Math.Abs(nominal.Si) * spread.Si;
            return true;
        }

        if (spread.Dimension.IsAbsoluteTemperature)
        {
            error = QuantityError.At(at, trimmed, "a difference such as ± 3 K", "is a temperature, not a difference");
            return false;
        }

        if (spread.Dimension != nominal.Dimension.AsDifference)
        {
            var wanted = DimensionNames.Examples(nominal.Dimension.AsDifference);
            error = QuantityError.At(
                at,
                trimmed,
                $"a spread in the unit of the value ({wanted}) or in percent",
                unitless ? "has no unit" : $"is {DimensionNames.Name(spread.Dimension)}"
            );
            return false;
        }

        halfWidth = spread.Si;
        return true;
    }

    /// <summary>Holds what was read against what is wanted.</summary>
    internal static bool Settle(
        ReadOnlySpan<char> text,
        Quantity nominal,
        double halfWidth,
        Dimension? wanted,
        out Stated stated,
        out QuantityError? error
    )
    {
        error = null;
        stated = default;
        if (!(Math.Abs(nominal.Si) <= Largest) || !(halfWidth <= Largest))
        {
            error = QuantityError.At(0, text, "a value within reason", "is out of all measure");
            return false;
        }

        if (wanted is { } dimension && dimension != nominal.Dimension)
        {
            if (dimension.IsAbsoluteTemperature && nominal.Dimension == Dimension.TemperatureDifference)
            {
                nominal = nominal with { Dimension = dimension };
            }
            else
            {
                error = WrongDimension(text, nominal.Dimension, dimension);
                return false;
            }
        }

        if (nominal.Dimension.IsAbsoluteTemperature && nominal.Si < 0)
        {
            error = QuantityError.At(0, text.Trim(), "a temperature above -273.15 degC", "lies below absolute zero");
            return false;
        }

        stated = new Stated(nominal, halfWidth);
        return true;
    }

    /// <summary>The error for a value of another dimension than the wanted one.</summary>
    public static QuantityError WrongDimension(ReadOnlySpan<char> text, Dimension found, Dimension wanted)
    {
        var trimmed = text.Trim();
        if (found.IsAbsoluteTemperature && wanted == Dimension.TemperatureDifference)
        {
            return QuantityError.At(0, trimmed, "a difference is written in kelvin, such as 3 K", "is a temperature");
        }

        var why = found.IsNone ? "has no unit" : $"is {DimensionNames.Name(found)}";
        return QuantityError.At(0, trimmed, DimensionNames.Wanted(wanted) + " is wanted", why);
    }

    private static bool WithSpread(
        ReadOnlySpan<char> text,
        int mark,
        int after,
        Quantity nominal,
        bool unitless,
        Dimension? wanted,
        out Stated stated,
        out QuantityError? error
    )
    {
        stated = default;
        var spreadText = text[after..];
        if (FindMark(spreadText).At >= 0)
        {
            error = QuantityError.At(after, spreadText, "one spread", "has a second ±");
            return false;
        }

        // 1.2 ± 0.05 mm: the unit after both belongs to both.
        if (unitless && wanted is not { IsNone: true } && TrailingUnit(spreadText, out var shared))
        {
            nominal = new Quantity((nominal.Si * shared.Factor) + shared.Offset, shared.Dimension);
            if (shared.Offset != 0)
            {
                error = QuantityError.At(
                    after,
                    spreadText.Trim(),
                    "22 degC ± 3 K",
                    "mixes a temperature and a difference"
                );
                return false;
            }
        }

        var body = text[..mark].TrimEnd();
        var isPercent = body.EndsWith("%") || body.EndsWith("percent") || body.EndsWith("ppm");
        return TrySpread(spreadText, after, nominal, isPercent, out var halfWidth, out error)
            && Settle(text, nominal, halfWidth, wanted, out stated, out error);
    }

    private static bool TrailingUnit(ReadOnlySpan<char> text, out UnitValue unit)
    {
        unit = default;
        var trimmed = text.Trim();
        return NumberText.TryRead(trimmed, 0, out _, out var length, out _)
            && UnitText.TryParse(trimmed[length..], out unit, out _)
            && !unit.Dimension.IsNone;
    }

    private static bool One(
        ReadOnlySpan<char> text,
        int origin,
        out Quantity quantity,
        out bool unitless,
        out QuantityError? error
    )
    {
        quantity = default;
        unitless = false;
        var start = 0;
        while (start < text.Length && char.IsWhiteSpace(text[start]))
        {
            start++;
        }

        var body = text[start..].TrimEnd();
        if (body.IsEmpty)
        {
            error = QuantityError.At(origin + start, body, "a number and its unit, such as 12 mm", "");
            return false;
        }

        if (!NumberText.TryRead(body, origin + start, out var number, out var length, out error))
        {
            return false;
        }

        var rest = body[length..];
        unitless = rest.Trim().IsEmpty;
        if (!UnitText.TryParse(rest, origin + start + length, out var unit, out error))
        {
            return false;
        }

        quantity = new Quantity((number * unit.Factor) + unit.Offset, unit.Dimension);
        return true;
    }
}
