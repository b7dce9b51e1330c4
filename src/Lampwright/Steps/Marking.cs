using System.Globalization;
using Lampwright.Tables;

namespace Lampwright.Steps;

/// <summary>What is printed on a resistor, and what it means.</summary>
/// <param name="Text">The marking as given.</param>
/// <param name="Ohm">Resistance in ohm, null where the marking cannot be read.</param>
/// <param name="How">The notation it was read in, and what else it could be.</param>
/// <param name="Problem">Empty, or why it cannot be read and what would be accepted.</param>
/// <param name="OtherOhm">What else it could mean, in ohm; null where there is one meaning.</param>
/// <param name="Tolerance">Tolerance from the letter behind, relative; null where there is none.</param>
/// <remarks>
/// <b>Validity</b>: three and four digits; R as the decimal point in ohm, L in milliohm, K in kilohm, with or without a
/// tolerance letter behind; EIA-96; a plain decimal number in ohm.
/// <b>Source</b>: IEC 60062 (second-hand; tolerance letters from memory); LMP25 and Bourns CSS2H-2512 data sheets (R and L); EIA-96 (letters from memory).
/// <b>Checked by</b>: printed.
/// </remarks>
public sealed record Marking(
    string Text,
    double? Ohm,
    string How,
    string Problem,
    double? OtherOhm = null,
    double? Tolerance = null
)
{
    /// <summary>Tolerance of the letter, else what such a code usually has: 5 % for three digits, 1 % for all others (common practice, no source).</summary>
    public double ToleranceOrUsual => Tolerance ?? (How.StartsWith("3-digit", StringComparison.Ordinal) ? 0.05 : 0.01);

    private static readonly double[] E96 = [.. ESeries.Decade("E96")];

    /// <summary>What a marking means; a marking that cannot be read is a described problem, never an exception.</summary>
    public static Marking Read(string text)
    {
        var shown = Shortened(text ?? "");
        var mark = shown.Trim().ToUpperInvariant().Replace('\u03A9', ' ').Replace('\u2126', ' ').Trim();
        if (mark.Length == 0)
        {
            return Unread(shown, "The marking is empty.");
        }

        if (mark.Contains(',', StringComparison.Ordinal))
        {
            return Unread(shown, $"'{shown}' has a decimal comma; write it as R, for example 0R18.");
        }

        if (mark.All(char.IsAsciiDigit))
        {
            return Digits(shown, mark);
        }

        if (mark.All(c => char.IsAsciiDigit(c) || c == '.') && mark.Count(c => c == '.') == 1 && mark.Length <= 8)
        {
            return double.TryParse(mark, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var plain)
                ? Known(shown, plain, "decimal number in ohm")
                : Unread(shown, $"'{shown}' is no number.");
        }

        var letterAt = mark.AsSpan().IndexOfAnyExceptInRange('0', '9');
        var letter = mark[letterAt];
        var eia = Eia96(mark);
        if (letter is 'R' or 'L' or 'K')
        {
            var read = Point(shown, mark, letterAt);
            return read.Ohm is null || eia is null || eia == read.Ohm
                ? read
                : read with
                {
                    How = string.Create(CultureInfo.InvariantCulture, $"{read.How}; as EIA-96 it would be {eia} ohm"),
                    OtherOhm = eia,
                };
        }

        if (eia is { } value)
        {
            return Known(shown, value, "EIA-96");
        }

        return letter == 'M'
            ? Unread(shown, $"'{shown}': M may mean milliohm or megohm; measure it, or write it with R or L.")
            : Unread(shown, $"'{shown}' is no marking known here; accepted are 472, 4531, R15, 2R4, L500, 65A.");
    }

    /// <summary>Resistance of parts in parallel, in ohm; null when there is none or one is not above zero.</summary>
    public static double? Parallel(IEnumerable<double> ohms)
    {
        ArgumentNullException.ThrowIfNull(ohms);
        var siemens = 0.0;
        foreach (var ohm in ohms)
        {
            if (!(ohm > 0) || !double.IsFinite(ohm))
            {
                return null;
            }

            siemens += 1 / ohm;
        }

        return siemens > 0 ? 1 / siemens : null;
    }

    private static Marking Digits(string shown, string mark)
    {
        if (mark.All(c => c == '0'))
        {
            return Unread(shown, $"'{shown}' is a zero-ohm link, which holds no threshold.");
        }

        if (mark.Length is not (3 or 4))
        {
            return Unread(shown, $"'{shown}' has {mark.Length} digits; a digit code has three or four.");
        }

        var significant = int.Parse(mark[..^1], CultureInfo.InvariantCulture);
        var zeros = mark[^1] - '0';
        return Known(
            shown,
            significant * Math.Pow(10, zeros),
            $"{mark.Length}-digit code, last digit counts the zeros"
        );
    }

    private static Marking Point(string shown, string mark, int at)
    {
        var before = mark[..at];
        var after = mark[(at + 1)..];
        double? tolerance = null;
        if (after.Length > 0 && Letter(after[^1]) is { } limit)
        {
            (after, tolerance) = (after[..^1], limit);
        }

        var digits = before + after;
        if (digits.Length is 0 or > 6 || !digits.All(char.IsAsciiDigit))
        {
            return Unread(shown, $"'{shown}' has more than one letter or no digits; accepted are R15, 2R4, L500, 4K7.");
        }

        // As one decimal division, so that R33 is 0.33 to the last bit.
        var value = double.Parse(digits, CultureInfo.InvariantCulture) / Math.Pow(10, after.Length);
        var (ohm, how) = mark[at] switch
        {
            'L' => (value / 1000, "L is the decimal point in milliohm"),
            'K' => (value * 1000, "K is the decimal point in kilohm"),
            _ => (value, "R is the decimal point in ohm"),
        };
        return Known(shown, ohm, how) with { Tolerance = ohm > 0 ? tolerance : null };
    }

    // IEC 60062, from memory.
    private static double? Letter(char letter) =>
        letter switch
        {
            'B' => 0.001,
            'C' => 0.0025,
            'D' => 0.005,
            'F' => 0.01,
            'G' => 0.02,
            'J' => 0.05,
            'K' => 0.10,
            'M' => 0.20,
            _ => null,
        };

    private static double? Eia96(string mark)
    {
        if (mark.Length != 3 || !char.IsAsciiDigit(mark[0]) || !char.IsAsciiDigit(mark[1]))
        {
            return null;
        }

        var n = ((mark[0] - '0') * 10) + (mark[1] - '0');
        int? zeros = mark[2] switch
        {
            'Z' => -3,
            'Y' or 'R' => -2,
            'X' or 'S' => -1,
            'A' => 0,
            'B' or 'H' => 1,
            'C' => 2,
            'D' => 3,
            'E' => 4,
            'F' => 5,
            _ => null,
        };
        if (n is < 1 or > 96 || zeros is not { } z)
        {
            return null;
        }

        // One product or division of whole numbers, so that 22R is 1.65 to the last bit.
        var whole = Math.Round(E96[n - 1] * 100);
        return z < 0 ? whole / Math.Pow(10, -z) : whole * Math.Pow(10, z);
    }

    private static Marking Known(string shown, double ohm, string how) =>
        ohm > 0 ? new(shown, ohm, how, "") : Unread(shown, $"'{shown}' is zero ohm, which holds no threshold.");

    private static Marking Unread(string shown, string problem) => new(shown, null, "", problem);

    private static string Shortened(string text) => text.Length <= 20 ? text : text[..20] + "…";
}
