namespace Lampwright.Metal.Bending;

/// <summary>Which fingers of a set stand side by side for a width, little gaps between them allowed.</summary>
/// <remarks>All choices of the set are made once, by how many fingers and how wide; of equal width only one is kept.</remarks>
internal sealed class FingerRow
{
    private static readonly double AlikeM = 1e-5;
    private static readonly int MostChoices = 200_000;

    private readonly double gapM;

    // For each number of fingers its sums, ascending, with the fingers that make them.
    private readonly List<(double Sum, double[] Widths)>[] byCount;

    /// <summary>The rows that a set can make.</summary>
    /// <param name="widthsM">Widths of the fingers, metres.</param>
    /// <param name="gapM">What may stay open between two fingers, metres.</param>
    public FingerRow(IReadOnlyList<double> widthsM, double gapM)
    {
        this.gapM = gapM;
        double[] widths = [.. widthsM.Where(w => w > 0).OrderDescending()];
        byCount = [.. Enumerable.Range(0, widths.Length + 1).Select(_ => new List<(double, double[])>())];
        var seen = new HashSet<(int, long)>();
        List<double[]> choices =
        [
            [],
        ];
        foreach (var width in widths)
        {
            // A choice of equal width and number opens nothing that its twin does not.
            foreach (var choice in choices.ToArray())
            {
                double[] longer = [.. choice, width];
                if (choices.Count < MostChoices && seen.Add((longer.Length, (long)Math.Round(longer.Sum() / AlikeM))))
                {
                    choices.Add(longer);
                    byCount[longer.Length].Add((longer.Sum(), longer));
                }
            }
        }

        foreach (var sums in byCount)
        {
            sums.Sort((a, b) => a.Sum.CompareTo(b.Sum));
        }
    }

    /// <summary>The fewest fingers that fill a width, of these the narrowest row; null where no set does.</summary>
    /// <param name="leastM">Least width that the row spans with its gaps, metres.</param>
    /// <param name="mostM">Most width of the fingers side by side, metres.</param>
    public IReadOnlyList<double>? Between(double leastM, double mostM)
    {
        for (var count = 1; count < byCount.Length; count++)
        {
            var sums = byCount[count];
            var least = leastM - ((count - 1) * gapM) - AlikeM;
            var (low, high) = (0, sums.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                (low, high) = sums[middle].Sum < least ? (middle + 1, high) : (low, middle);
            }

            if (low < sums.Count && sums[low].Sum <= mostM + AlikeM)
            {
                return sums[low].Widths;
            }
        }

        return null;
    }
}
