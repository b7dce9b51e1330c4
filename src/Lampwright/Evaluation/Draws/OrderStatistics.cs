namespace Lampwright.Evaluation.Draws;

/// <summary>Percentiles without sorting everything.</summary>
/// <remarks>
/// Hazen's plotting position, (i - 0.5)/n, which is where a Latin hypercube puts its points. Selection by Hoare (Algorithm 65,
/// Communications of the ACM 4, 1961), since of hundreds of numbers only four are wanted.
/// </remarks>
internal static class OrderStatistics
{
    /// <summary>Two percentiles; reorders the values.</summary>
    /// <param name="values">At least one value.</param>
    /// <param name="lowShare">Share below the first, 0 to 1.</param>
    /// <param name="highShare">Share below the second, at least the first.</param>
    public static (double Low, double High) Between(Span<double> values, double lowShare, double highShare)
    {
        var low = Percentile(values, 0, lowShare, out var from);
        return (low, Percentile(values, from, highShare, out _));
    }

    // All values before `from` are known to be no larger than those behind.
    private static double Percentile(Span<double> values, int from, double share, out int below)
    {
        var at = Math.Clamp((share * values.Length) - 0.5, 0, values.Length - 1);
        below = (int)at;
        Select(values, Math.Min(from, below), below);
        var value = values[below];
        if (at == below)
        {
            return value;
        }

        var next = double.PositiveInfinity;
        foreach (var v in values[(below + 1)..])
        {
            next = Math.Min(next, v);
        }

        return value + ((at - below) * (next - value));
    }

    private static void Select(Span<double> values, int left, int wanted)
    {
        var right = values.Length - 1;
        while (left < right)
        {
            var pivot = values[(left + right) / 2];
            var (i, j) = (left, right);
            while (i <= j)
            {
                while (values[i] < pivot)
                {
                    i++;
                }

                while (values[j] > pivot)
                {
                    j--;
                }

                if (i <= j)
                {
                    (values[i], values[j]) = (values[j], values[i]);
                    i++;
                    j--;
                }
            }

            if (wanted <= j)
            {
                right = j;
            }
            else if (wanted >= i)
            {
                left = i;
            }
            else
            {
                return;
            }
        }
    }
}
