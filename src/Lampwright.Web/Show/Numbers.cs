using System.Globalization;
using Lampwright.Evaluation;

namespace Lampwright.Web.Show;

/// <summary>How the board writes numbers: the same everywhere, in no culture, with a true minus.</summary>
public static class Numbers
{
    /// <summary>A number with a fixed count of decimals.</summary>
    public static string Fixed(double value, int decimals)
    {
        if (!double.IsFinite(value))
        {
            return "–";
        }

        var text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return IsZero(text) ? text.TrimStart('-') : text.Replace('-', '−');
    }

    /// <summary>A number rounded to significant digits, with as many decimals as they need and thin spaces between thousands.</summary>
    public static string Significant(double value, int digits = 3)
    {
        if (!double.IsFinite(value))
        {
            return "–";
        }

        if (value == 0)
        {
            return "0";
        }

        var magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        var decimals = Math.Max(0, digits - 1 - magnitude);
        if (decimals > 0)
        {
            return Fixed(value, Math.Min(decimals, 9));
        }

        var step = Math.Pow(10, magnitude - digits + 1);
        var rounded = Math.Round(value / step) * step;
        return rounded.ToString("#,##0", Thousands).Replace('-', '−');
    }

    /// <summary>A number that is exact: as many decimals as it has, three at most.</summary>
    public static string Exact(double value) => value.ToString("0.###", CultureInfo.InvariantCulture).Replace('-', '−');

    /// <summary>A share as a percentage with the sign of percent.</summary>
    public static string Percent(double share, int decimals = 0) => Fixed(share * 100, decimals) + " %";

    /// <summary>A difference with its sign.</summary>
    public static string Signed(double value, int decimals) => (value > 0 ? "+" : "") + Fixed(value, decimals);

    /// <summary>The band of a prediction in the form of its value: <c>1.62–1.78</c>, with a word between where a sign would confuse.</summary>
    public static string Band(Predicted p, Func<double, string> write)
    {
        var (low, high) = (write(p.Low), write(p.High));
        return low.Contains('−', StringComparison.Ordinal) || high.Contains('−', StringComparison.Ordinal)
            ? $"{low} to {high}"
            : $"{low}–{high}";
    }

    /// <summary>A number for an attribute of a drawing.</summary>
    public static string Svg(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static bool IsZero(string text) => text.AsSpan().IndexOfAnyInRange('1', '9') < 0;

    private static readonly NumberFormatInfo Thousands = new() { NumberGroupSeparator = "\u2009" };
}
