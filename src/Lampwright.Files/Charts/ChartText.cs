using System.Globalization;
using Lampwright.Evaluation;

namespace Lampwright.Files.Charts;

/// <summary>Numbers as text, the same on paper and on the page.</summary>
public static class ChartText
{
    /// <summary>A number with a fixed count of decimals and a true minus sign.</summary>
    public static string Fixed(double value, int decimals)
    {
        var text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.StartsWith('-') ? (text.AsSpan(1).Trim("0.").IsEmpty ? text[1..] : "−" + text[1..]) : text;
    }

    /// <summary>Decimals that show a number to three or four figures.</summary>
    public static int DecimalsFor(double value, int figures = 3)
    {
        var size = Math.Abs(value);
        return size < 1e-9 || !double.IsFinite(size)
            ? 0
            : Math.Clamp(figures - 1 - (int)Math.Floor(Math.Log10(size) + 1e-9), 0, 6);
    }

    /// <summary>A number to about so many figures.</summary>
    public static string Number(double value, int figures = 3) => Fixed(value, DecimalsFor(value, figures));

    /// <summary>A predicted number with no figure finer than half of its band, at least two of them: 4481 (3890–5050) gives <c>4500</c>. For labels, which show no band.</summary>
    public static string Rounded(Predicted p)
    {
        if (!double.IsFinite(p.Value) || p.Value == 0)
        {
            return Number(p.Value, 2);
        }

        var figures = Math.Floor(Math.Log10(Math.Abs(p.Value))) - 1;
        var half = (p.High - p.Low) / 2;
        var step = half > 0 ? Math.Min(figures, Math.Floor(Math.Log10(half))) : figures;
        var unit = Math.Pow(10, step);
        return Fixed(Math.Round(p.Value / unit) * unit, (int)Math.Clamp(-step, 0, 6));
    }

    /// <summary>The band as text, <c>1.62–1.78</c>; empty when it has no width.</summary>
    public static string Band(Predicted p, int decimals)
    {
        var (low, high) = (Fixed(p.Low, decimals), Fixed(p.High, decimals));
        return low == high ? ""
            : low.StartsWith('−') || high.StartsWith('−') ? $"{low} to {high}"
            : $"{low}–{high}";
    }

    /// <summary>A predicted number with unit and band: <c>1.70 A (1.62–1.78)</c>.</summary>
    public static string WithBand(Predicted p, string unit, int figures = 3)
    {
        var decimals = DecimalsFor(p.Value, figures);
        var band = Band(p, decimals);
        return $"{Fixed(p.Value, decimals)}{(unit.Length == 0 ? "" : " " + unit)}{(band.Length == 0 ? "" : $" ({band})")}";
    }
}
