using MathNet.Numerics.Distributions;

namespace Lampwright.Readings;

/// <summary>Does one value not belong to the others? A hint only: nothing is ever left out.</summary>
/// <remarks>
/// <b>Source</b>: Grubbs; NIST/SEMATECH e-Handbook 1.3.5.17; Iglewicz and Hoaglin for the modified z. <b>Validity</b>: about normal values, used once.
/// <b>Checked by</b>: S.N-7a to S.N-9b.
/// </remarks>
public static class Outliers
{
    /// <summary>Modified z above which a value is suspect: 3.5 (Iglewicz and Hoaglin).</summary>
    public static double SuspectModifiedZ { get; } = 3.5;

    /// <summary>Grubbs statistic G = max|x − mean|/s and the index it belongs to; 0 when all values are equal.</summary>
    /// <param name="values">Three or more values.</param>
    public static (double G, int Index) Grubbs(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var n = Guard.InRange(values.Count, 3, int.MaxValue);
        var mean = values.Average();
        var (squares, most, index) = (0.0, -1.0, 0);
        for (var i = 0; i < values.Count; i++)
        {
            var off = Math.Abs(Guard.Finite(values[i]) - mean);
            squares += off * off;
            if (off > most)
            {
                (most, index) = (off, i);
            }
        }

        var deviation = Math.Sqrt(squares / (n - 1));
        return (deviation > 0 ? most / deviation : 0, index);
    }

    /// <summary>Critical value of Grubbs' test: (n − 1)/√n·√(t²/(n − 2 + t²)).</summary>
    /// <param name="count">Count of values, 3 or more.</param>
    /// <param name="significance">Significance α, above 0 and below 0.5.</param>
    /// <param name="twoSided">True when either end may be the outlier (t at α/(2n)), false for one end (α/n).</param>
    public static double GrubbsLimit(int count, double significance, bool twoSided = true)
    {
        var n = Guard.InRange(count, 3, int.MaxValue);
        var tail = Guard.InRange(significance, 1e-9, 0.5) / (twoSided ? 2 * n : n);
        var t = StudentT.InvCDF(0, 1, n - 2, 1 - tail);
        return (n - 1) / Math.Sqrt(n) * Math.Sqrt(t * t / (n - 2 + (t * t)));
    }

    /// <summary>Modified z of a value: 0.6745·(x − median)/MAD; 0 when more than half of the values are equal.</summary>
    /// <param name="values">Three or more values.</param>
    /// <param name="index">Which value.</param>
    public static double ModifiedZ(IReadOnlyList<double> values, int index)
    {
        ArgumentNullException.ThrowIfNull(values);
        Guard.InRange(values.Count, 3, int.MaxValue);
        Guard.InRange(index, 0, values.Count - 1);
        var median = Median(values);
        var mad = Median([.. values.Select(v => Math.Abs(v - median))]);
        return mad > 0 ? 0.6745 * (values[index] - median) / mad : 0;
    }

    private static double Median(IReadOnlyList<double> values)
    {
        var sorted = values.Order().ToArray();
        var half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
