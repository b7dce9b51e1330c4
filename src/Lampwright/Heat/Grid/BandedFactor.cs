namespace Lampwright.Heat.Grid;

/// <summary>The coarsest grid, solved directly: Cholesky's factor of a symmetric band.</summary>
internal sealed class BandedFactor
{
    private readonly int band;
    private readonly int size;
    private readonly int along;

    // Row by row: band numbers left of the diagonal, then the inverse of the diagonal.
    private readonly double[] factor;
    private readonly double[] work;

    internal BandedFactor(GridLevel grid)
    {
        along = grid.Along.Count;
        band = Band(grid);
        size = grid.Rows * along;
        factor = new double[size * (band + 1)];
        work = new double[size];
        for (var row = 0; row < grid.Rows; row++)
        {
            var r = grid.Balances[row];
            for (var j = 0; j < along; j++)
            {
                var at = row * along + j;
                var ends = (j == 0 ? 1 : 0) + (j == along - 1 ? 1 : 0);
                this[at, at] = r.Diagonal - ends * r.Along + ends * r.End;
                Link(at, r.LeftRow * along + j, r.Left);
                Link(at, r.UpRow * along + j, r.Up);
                if (j > 0)
                {
                    Link(at, at - 1, r.Along);
                }
            }
        }

        Factor();
    }

    private ref double this[int row, int column] => ref factor[row * (band + 1) + band - (row - column)];

    /// <summary>Numbers left of the diagonal.</summary>
    internal static int Band(GridLevel grid)
    {
        var rows = 0;
        for (var row = 0; row < grid.Rows; row++)
        {
            var r = grid.Balances[row];
            rows = Math.Max(rows, Math.Max(r.Right > 0 ? r.RightRow - row : 0, r.Down > 0 ? r.DownRow - row : 0));
        }

        return Math.Max(rows * grid.Along.Count, 1);
    }

    /// <summary>Solves from B into X of the level.</summary>
    internal void Solve(CycleLevel level)
    {
        for (var row = 0; row < level.Grid.Rows; row++)
        {
            var from = (int)level.Start(row);
            for (var j = 0; j < along; j++)
            {
                work[row * along + j] = level.B[from + j];
            }
        }

        for (var i = 0; i < size; i++)
        {
            var first = Math.Max(0, i - band);
            var line = factor.AsSpan(i * (band + 1) + band - (i - first), i - first + 1);
            var known = work.AsSpan(first, i - first);
            var sum = work[i];
            for (var e = 0; e < known.Length; e++)
            {
                sum -= line[e] * known[e];
            }

            work[i] = sum * line[known.Length];
        }

        for (var i = size - 1; i >= 0; i--)
        {
            var first = Math.Max(0, i - band);
            var line = factor.AsSpan(i * (band + 1) + band - (i - first), i - first + 1);
            var open = work.AsSpan(first, i - first);
            var x = work[i] *= line[open.Length];
            for (var e = 0; e < open.Length; e++)
            {
                open[e] -= line[e] * x;
            }
        }

        for (var row = 0; row < level.Grid.Rows; row++)
        {
            var from = level.Start(row);
            for (var j = 0; j < along; j++)
            {
                level.X[(int)from + j] = (float)work[row * along + j];
            }

            level.Close(ref level.X[0], from, level.Links[row].Beyond);
        }
    }

    private void Link(int at, int other, double link)
    {
        if (link > 0)
        {
            this[at, other] = -link;
        }
    }

    private void Factor()
    {
        for (var i = 0; i < size; i++)
        {
            for (var j = Math.Max(0, i - band); j <= i; j++)
            {
                var first = Math.Max(Math.Max(0, i - band), Math.Max(0, j - band));
                var sum = this[i, j];
                for (var e = first; e < j; e++)
                {
                    sum -= this[i, e] * this[j, e];
                }

                // A film anywhere makes the balance positive; the spec is checked for one before.
                this[i, j] = j < i ? sum * this[j, j] : 1 / Math.Sqrt(sum);
            }
        }
    }
}
