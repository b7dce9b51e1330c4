namespace Lampwright.Heat.Grid;

/// <summary>The way from a grid to the next coarser one and back: linear between middles of cells, never through air.</summary>
/// <remarks>
/// Across and down, a row takes from up to four coarse rows of metal; weights of rows that are not there go to those that are. Along, each cell takes
/// from two. The way down is the transpose of the way up, so that the preconditioner stays symmetric.
/// </remarks>
internal sealed class GridTransfer
{
    internal GridTransfer(GridLevel fine, GridLevel coarse)
    {
        List<int> rows = [];
        List<float> weights = [];
        UpStart = new int[fine.Rows + 1];
        Span<(int Row, double Weight)> corners = stackalloc (int, double)[4];
        for (var row = 0; row < fine.Rows; row++)
        {
            var (i, k) = fine.Places[row];
            var x = fine.Across.Between(i, coarse.Across);
            var z = fine.Down.Between(k, coarse.Down);
            corners[0] = (coarse.RowAt(x.Lower, z.Lower), (1 - x.Weight) * (1 - z.Weight));
            corners[1] = (coarse.RowAt(x.Upper, z.Lower), x.Weight * (1 - z.Weight));
            corners[2] = (coarse.RowAt(x.Lower, z.Upper), (1 - x.Weight) * z.Weight);
            corners[3] = (coarse.RowAt(x.Upper, z.Upper), x.Weight * z.Weight);
            var sum = 0.0;
            foreach (var (at, weight) in corners)
            {
                sum += at >= 0 ? weight : 0;
            }

            foreach (var (at, weight) in corners)
            {
                if (at >= 0 && weight > 0)
                {
                    rows.Add(at);
                    weights.Add((float)(weight / sum));
                }
            }

            UpStart[row + 1] = rows.Count;
        }

        (UpRow, UpWeight) = ([.. rows], [.. weights]);
        (DownStart, DownRow, DownWeight) = Transposed(coarse.Rows);

        Along =
            fine.Along.Count == coarse.Along.Count ? AlongWay.Same
            : fine.Along.Count == 2 * coarse.Along.Count ? AlongWay.Halved
            : AlongWay.Between;
        Lower = new int[fine.Along.Count];
        Upper = new int[fine.Along.Count];
        UpperWeight = new float[fine.Along.Count];
        for (var j = 0; j < Lower.Length; j++)
        {
            var (lower, upper, weight) = fine.Along.Between(j, coarse.Along);
            (Lower[j], Upper[j], UpperWeight[j]) = (lower, upper, (float)weight);
        }
    }

    internal enum AlongWay
    {
        Same,
        Halved,
        Between,
    }

    /// <summary>Where the coarse rows of each fine row begin.</summary>
    internal int[] UpStart { get; }

    internal int[] UpRow { get; }

    internal float[] UpWeight { get; }

    /// <summary>Where the fine rows of each coarse row begin.</summary>
    internal int[] DownStart { get; }

    internal int[] DownRow { get; }

    internal float[] DownWeight { get; }

    internal AlongWay Along { get; }

    internal int[] Lower { get; }

    internal int[] Upper { get; }

    internal float[] UpperWeight { get; }

    private (int[] Start, int[] Row, float[] Weight) Transposed(int coarseRows)
    {
        var start = new int[coarseRows + 1];
        foreach (var row in UpRow)
        {
            start[row + 1]++;
        }

        for (var row = 0; row < coarseRows; row++)
        {
            start[row + 1] += start[row];
        }

        var next = start[..^1];
        var (rows, weights) = (new int[UpRow.Length], new float[UpRow.Length]);
        for (var fine = 0; fine + 1 < UpStart.Length; fine++)
        {
            for (var e = UpStart[fine]; e < UpStart[fine + 1]; e++)
            {
                var at = next[UpRow[e]]++;
                (rows[at], weights[at]) = (fine, UpWeight[e]);
            }
        }

        return (start, rows, weights);
    }
}
