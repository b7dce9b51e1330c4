using System.Globalization;

namespace Lampwright.Quantities;

/// <summary>Reads the number at the start of a text: decimals, fractions (<c>3/64</c>), mixed fractions (<c>1 1/2</c>, <c>1-1/2</c>, <c>1½</c>).</summary>
internal static class NumberText
{
    /// <summary>Numbers beyond this are refused; nothing in a workshop is near it in any unit.</summary>
    private static readonly double Largest = 1e30;

    private static readonly string Wanted = "a number such as 12, 0.14, 1e-3, 3/64 or 1 1/2";

    /// <summary>Reads the number; <paramref name="length"/> is how many characters it took.</summary>
    public static bool TryRead(
        ReadOnlySpan<char> text,
        int origin,
        out double number,
        out int length,
        out QuantityError? error
    )
    {
        error = null;
        number = 0;
        var position = SignLength(text, out var negative);
        if (!Decimal(text, ref position, out number, out var whole))
        {
            length = 0;
            error = NotANumber(text, origin, position);
            return false;
        }

        if (position < text.Length && text[position] == ',')
        {
            length = 0;
            error = Comma(text, origin, position);
            return false;
        }

        if (position < text.Length && text[position] == '.')
        {
            length = 0;
            error = QuantityError.At(
                origin,
                text[..Math.Min(text.Length, position + 4)],
                Wanted,
                "has a point too many"
            );
            return false;
        }

        if (whole && !Fractions(text, origin, ref position, ref number, out error))
        {
            length = 0;
            return false;
        }

        if (!double.IsFinite(number) || Math.Abs(number) > Largest)
        {
            length = 0;
            error = QuantityError.At(origin, text[..position], "a number below 1e30", "is out of all measure");
            return false;
        }

        number = negative ? -number : number;
        length = position;
        return true;
    }

    /// <summary>Reads plain decimals only; for expressions, where signs and strokes calculate.</summary>
    internal static bool TryDecimal(
        ReadOnlySpan<char> text,
        int origin,
        out double number,
        out int length,
        out QuantityError? error
    )
    {
        error = null;
        length = 0;
        if (!Decimal(text, ref length, out number, out _))
        {
            error = NotANumber(text, origin, 0);
            return false;
        }

        if (number <= Largest)
        {
            return true;
        }

        error = QuantityError.At(origin, text[..length], "a number below 1e30", "is out of all measure");
        return false;
    }

    /// <summary>True for one of the fractions that have a character of their own.</summary>
    internal static double? Vulgar(char c) =>
        c switch
        {
            '½' => 1.0 / 2,
            '¼' => 1.0 / 4,
            '¾' => 3.0 / 4,
            '⅛' => 1.0 / 8,
            '⅜' => 3.0 / 8,
            '⅝' => 5.0 / 8,
            '⅞' => 7.0 / 8,
            '⅓' => 1.0 / 3,
            '⅔' => 2.0 / 3,
            _ => null,
        };

    private static int SignLength(ReadOnlySpan<char> text, out bool negative)
    {
        negative = text.Length > 0 && text[0] is '-' or '\u2212';
        return negative || (text.Length > 0 && text[0] == '+') ? 1 : 0;
    }

    private static bool Decimal(ReadOnlySpan<char> text, ref int position, out double number, out bool whole)
    {
        var start = position;
        whole = true;
        if (position < text.Length && Vulgar(text[position]) is { } vulgar)
        {
            position++;
            whole = false;
            number = vulgar;
            return true;
        }

        Digits(text, ref position);
        if (position < text.Length && text[position] == '.')
        {
            position++;
            Digits(text, ref position);
            whole = false;
        }

        if (position > start && position < text.Length && text[position] is 'e' or 'E')
        {
            var mark = position++;
            if (position < text.Length && text[position] is '-' or '+')
            {
                position++;
            }

            var digits = position;
            Digits(text, ref position);
            if (position == digits)
            {
                position = mark;
            }
            else
            {
                whole = false;
            }
        }

        return double.TryParse(
            text[start..position],
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out number
        );
    }

    private static bool Fractions(
        ReadOnlySpan<char> text,
        int origin,
        ref int position,
        ref double number,
        out QuantityError? error
    )
    {
        error = null;
        if (position >= text.Length)
        {
            return true;
        }

        if (Vulgar(text[position]) is { } vulgar)
        {
            number += vulgar;
            position++;
            return true;
        }

        if (text[position] == '/' && position + 1 < text.Length && char.IsAsciiDigit(text[position + 1]))
        {
            return Divide(text, origin, 0, number, ref position, ref number, out error);
        }

        // A second number after blanks or a dash is only the upper part of a fraction; anything else is left for the caller.
        var next = position;
        while (next < text.Length && text[next] == ' ')
        {
            next++;
        }

        if (next == position && text[next] == '-')
        {
            next++;
        }

        var upperStart = next;
        if (next < text.Length && next > position && Vulgar(text[next]) is { } part)
        {
            number += part;
            position = next + 1;
            return true;
        }

        Digits(text, ref next);
        if (
            next == upperStart
            || upperStart == position
            || next + 1 >= text.Length
            || text[next] != '/'
            || !char.IsAsciiDigit(text[next + 1])
        )
        {
            return true;
        }

        var upper = double.Parse(text[upperStart..next], NumberStyles.None, CultureInfo.InvariantCulture);
        position = next;
        return Divide(text, origin, number, upper, ref position, ref number, out error);
    }

    private static bool Divide(
        ReadOnlySpan<char> text,
        int origin,
        double whole,
        double upper,
        ref int position,
        ref double number,
        out QuantityError? error
    )
    {
        error = null;
        var slash = position++;
        Digits(text, ref position);
        var lower = double.Parse(text[(slash + 1)..position], NumberStyles.None, CultureInfo.InvariantCulture);
        if (lower == 0)
        {
            error = QuantityError.At(
                origin,
                text[..position],
                "a fraction with something under the line",
                "divides by zero"
            );
            return false;
        }

        number = whole + (upper / lower);
        return true;
    }

    private static void Digits(ReadOnlySpan<char> text, ref int position)
    {
        while (position < text.Length && char.IsAsciiDigit(text[position]))
        {
            position++;
        }
    }

    private static QuantityError NotANumber(ReadOnlySpan<char> text, int origin, int position)
    {
        var rest = text[position..];
        var end = rest.IndexOf(' ');
        var word = end < 0 ? rest : rest[..end];
        if (word.StartsWith(","))
        {
            return Comma(text, origin, position);
        }

        var why =
            word.StartsWith("nan", StringComparison.OrdinalIgnoreCase)
            || word.StartsWith("inf", StringComparison.OrdinalIgnoreCase)
            || word.StartsWith("∞")
                ? "is not a number that can be built"
                : "is not a number";
        return QuantityError.At(origin, word.IsEmpty ? text : text[..(position + word.Length)], Wanted, why);
    }

    private static QuantityError Comma(ReadOnlySpan<char> text, int origin, int comma)
    {
        var end = comma + 1;
        Digits(text, ref end);
        var before = text[..comma];
        var after = text[(comma + 1)..end];
        var rest = text[end..];
        var unit = QuantityError.Shown(rest.TrimEnd());
        if (after.Length == 3 && before.TrimStart("+-\u2212").Length > 0 && before.TrimStart("+-\u2212") is not "0")
        {
            return QuantityError.At(
                origin,
                text[..end],
                $"write {before}{after}{unit}, or {before}.{after}{unit} where the comma marks the decimals",
                "has a comma"
            );
        }

        return QuantityError.At(origin, text[..end], $"write {before}.{after}{unit}", "has a decimal comma");
    }
}
