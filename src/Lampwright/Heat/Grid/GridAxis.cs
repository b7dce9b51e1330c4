namespace Lampwright.Heat.Grid;

/// <summary>Cells along one direction, in stretches between faces of the shape; within a stretch all are of one size.</summary>
internal sealed class GridAxis
{
    private readonly double[] lengths;
    private readonly int[] counts;

    private GridAxis(double[] lengths, int[] counts)
    {
        (this.lengths, this.counts) = (lengths, counts);
        Count = counts.Sum();
        Sizes = new double[Count];
        Centres = new double[Count];
        Stretch = new int[Count];
        var (cell, from) = (0, 0.0);
        for (var s = 0; s < counts.Length; s++)
        {
            var size = lengths[s] / counts[s];
            for (var i = 0; i < counts[s]; i++, cell++)
            {
                (Sizes[cell], Centres[cell], Stretch[cell]) = (size, from + (i + 0.5) * size, s);
            }

            from += lengths[s];
        }
    }

    /// <summary>Number of cells.</summary>
    internal int Count { get; }

    /// <summary>Size of each cell, m.</summary>
    internal double[] Sizes { get; }

    /// <summary>Middle of each cell, m from the start.</summary>
    internal double[] Centres { get; }

    /// <summary>Which stretch each cell lies in.</summary>
    internal int[] Stretch { get; }

    /// <summary>Whether any stretch has cells to join.</summary>
    internal bool CanJoin => counts.Any(c => c > 1);

    /// <summary>Size of the smallest cells that could be joined, m.</summary>
    internal double LeastJoinable =>
        Enumerable.Range(0, counts.Length).Where(s => counts[s] > 1).Min(s => lengths[s] / counts[s]);

    /// <summary>Cells of about the size asked for; stretches of no length are left out by the caller.</summary>
    internal static GridAxis Of(IReadOnlyList<double> lengths, double cellM) =>
        new([.. lengths], [.. lengths.Select(l => (int)Math.Max(1, Math.Round(l / cellM)))]);

    /// <summary>One stretch in a number of cells that halves well.</summary>
    internal static GridAxis Even(double length, double cellM)
    {
        var count = (int)Math.Max(1, Math.Round(length / cellM));
        return new([length], [count >= 16 ? (count + 3) / 4 * 4 : count]);
    }

    /// <summary>Half as many cells, no stretch joined with its neighbour.</summary>
    internal GridAxis Joined() => new(lengths, [.. counts.Select(c => (c + 1) / 2)]);

    /// <summary>Where the middle of a cell lies between the middles of a coarser axis: lower cell, upper cell, weight of the upper.</summary>
    internal (int Lower, int Upper, double Weight) Between(int cell, GridAxis coarse)
    {
        var x = Centres[cell];
        var upper = Array.BinarySearch(coarse.Centres, x);
        if (upper >= 0)
        {
            return (upper, upper, 0);
        }

        upper = ~upper;
        return upper == 0 ? (0, 0, 0)
            : upper == coarse.Count ? (upper - 1, upper - 1, 0)
            : (upper - 1, upper, (x - coarse.Centres[upper - 1]) / (coarse.Centres[upper] - coarse.Centres[upper - 1]));
    }

    /// <summary>Length of a stretch from <paramref name="from"/> to <paramref name="to"/> that lies in a cell, m.</summary>
    internal double Overlap(int cell, double from, double to) =>
        Math.Max(0, Math.Min(to, Centres[cell] + Sizes[cell] / 2) - Math.Max(from, Centres[cell] - Sizes[cell] / 2));
}
