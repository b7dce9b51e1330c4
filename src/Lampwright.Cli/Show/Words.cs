using System.Globalization;
using System.Text;
using Lampwright.Evaluation;
using Lampwright.Web.Show;

namespace Lampwright.Cli.Show;

/// <summary>Texts as a terminal may show them.</summary>
internal static class Words
{
    /// <summary>A text from a file without what would steer the terminal: control and direction signs become a visible mark.</summary>
    public static string Plain(string text)
    {
        if (!text.Any(Steers))
        {
            return text;
        }

        var plain = new StringBuilder(text.Length);
        foreach (var sign in text)
        {
            plain.Append(
                sign is '\n' or '\r' or '\t' ? ' '
                : Steers(sign) ? '\u00B7'
                : sign
            );
        }

        return plain.ToString();
    }

    /// <summary>A count with its noun: <c>1 warning</c>, <c>3 warnings</c>.</summary>
    public static string Count(int count, string noun, string? many = null) =>
        count.ToString(CultureInfo.InvariantCulture) + " " + (count == 1 ? noun : many ?? noun + "s");

    /// <summary>A number with its band behind: <c>1.74 A (1.69–1.79)</c>.</summary>
    public static string WithBand(Predicted p, Func<double, string> write, string unit = "")
    {
        var value = write(p.Value) + (unit.Length > 0 ? " " + unit : "");
        return HasBand(p) ? $"{value} ({Numbers.Band(p, write)})" : value;
    }

    /// <summary>Whether a band has any width.</summary>
    public static bool HasBand(Predicted p) => p.Low != p.Value || p.High != p.Value;

    private static bool Steers(char sign) =>
        char.IsControl(sign)
        || char.GetUnicodeCategory(sign) is UnicodeCategory.Format or UnicodeCategory.LineSeparator
        || char.GetUnicodeCategory(sign) is UnicodeCategory.ParagraphSeparator;
}
