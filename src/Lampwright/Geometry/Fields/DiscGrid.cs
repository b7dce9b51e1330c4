namespace Lampwright.Geometry.Fields;

/// <summary>Two discs that lie near each other: their places in the list, the first the smaller number.</summary>
/// <param name="First">Place of one.</param>
/// <param name="Second">Place of the other.</param>
/// <param name="Gap">Distance of their rims; negative where they overlap.</param>
public readonly record struct DiscPair(int First, int Second, double Gap);

/// <summary>Finds all pairs of discs whose rims lie nearer than a gap. Any one unit of length.</summary>
/// <remarks>
/// Discs of like size share a square grid whose cells are as wide as two of them and the gap, so that a cell and half of its neighbours hold
/// every partner; a large disc looks through the grids of the smaller ones round it. Cost in proportion to the discs as long as they do not
/// lie on each other by the dozen.
/// <para><b>Checked by</b>: all pairs of random fields, tried one by one.</para>
/// </remarks>
public static class DiscGrid
{
    /// <summary>Every pair with a gap below <paramref name="within"/>, in no order that means anything.</summary>
    /// <param name="x">Centres.</param>
    /// <param name="y">Centres.</param>
    /// <param name="radius">Radii, 0 or more.</param>
    /// <param name="within">Gap below which a pair counts, 0 or more.</param>
    public static List<DiscPair> Near(double[] x, double[] y, double[] radius, double within)
    {
        var found = new List<DiscPair>();
        if (x.Length < 2)
        {
            return found;
        }

        var least = double.PositiveInfinity;
        foreach (var r in radius)
        {
            least = Math.Min(least, r);
        }

        // Levels of doubling width; the least width only keeps the logarithm finite.
        var unit = Math.Max((2 * least) + within, 1e-12);
        var levels = new List<Level>();
        var levelOf = new byte[x.Length];
        for (var i = 0; i < x.Length; i++)
        {
            var level = radius[i] == least ? 0 : Math.ILogB(((2 * radius[i]) + within) / unit);
            levelOf[i] = (byte)Math.Clamp(level, 0, 63);
        }

        Span<int> counts = stackalloc int[64];
        foreach (var level in levelOf)
        {
            counts[level]++;
        }

        for (var level = 0; level < counts.Length; level++)
        {
            if (counts[level] > 0)
            {
                var made = new Level(x, y, radius, levelOf, (byte)level, counts[level], within);
                made.Own(within, found);
                foreach (var smaller in levels)
                {
                    smaller.Of(made, within, found);
                }

                levels.Add(made);
            }
        }

        return found;
    }

    /// <summary>Discs of like size, sorted by the cells of their grid.</summary>
    private sealed class Level
    {
        private readonly int[] _starts;
        private readonly int[] _index;
        private readonly double[] _x;
        private readonly double[] _y;
        private readonly double[] _r;
        private readonly double _x0 = double.PositiveInfinity;
        private readonly double _y0 = double.PositiveInfinity;
        private readonly double _perCell;
        private readonly double _largest;
        private readonly int _columns;
        private readonly int _rows;

        public Level(double[] x, double[] y, double[] r, byte[] levelOf, byte level, int count, double within)
        {
            var (x1, y1) = (double.NegativeInfinity, double.NegativeInfinity);
            var mine = new int[count];
            var n = 0;
            for (var i = 0; i < x.Length; i++)
            {
                if (levelOf[i] != level)
                {
                    continue;
                }

                mine[n++] = i;
                _largest = Math.Max(_largest, r[i]);
                (_x0, x1) = (Math.Min(_x0, x[i]), Math.Max(x1, x[i]));
                (_y0, y1) = (Math.Min(_y0, y[i]), Math.Max(y1, y[i]));
            }

            var (w, h) = (x1 - _x0, y1 - _y0);
            var cell = Math.Max((2 * _largest) + within, 1e-12);

            // Not more cells than some for each disc, however far apart they lie.
            var most = (4.0 * count) + 16;
            cell = Math.Max(cell, Math.Max(Math.Sqrt(w * h / most), Math.Max(w, h) / most));
            _perCell = 1 / cell;
            _columns = (int)(w * _perCell) + 1;
            _rows = (int)(h * _perCell) + 1;
            _starts = new int[(_columns * _rows) + 1];
            (_index, _x, _y, _r) = (new int[count], new double[count], new double[count], new double[count]);
            var cells = new int[count];
            for (var k = 0; k < count; k++)
            {
                cells[k] = (Row(y[mine[k]]) * _columns) + Column(x[mine[k]]);
                _starts[cells[k] + 1]++;
            }

            for (var c = 1; c < _starts.Length; c++)
            {
                _starts[c] += _starts[c - 1];
            }

            for (var k = count - 1; k >= 0; k--)
            {
                // Filled from the back of each cell; afterwards its start has come down to where it belongs.
                var at = --_starts[cells[k] + 1];
                var i = mine[k];
                (_index[at], _x[at], _y[at], _r[at]) = (i, x[i], y[i], r[i]);
            }

            // The starts have moved one place up: cell c begins at _starts[c + 1].
            Array.Copy(_starts, 1, _starts, 0, _starts.Length - 1);
            _starts[^1] = count;
        }

        private int Column(double x) => Math.Clamp((int)((x - _x0) * _perCell), 0, _columns - 1);

        private int Row(double y) => Math.Clamp((int)((y - _y0) * _perCell), 0, _rows - 1);

        /// <summary>Pairs within the level: each cell with itself, the next in its row and the three above.</summary>
        public void Own(double within, List<DiscPair> found)
        {
            for (var row = 0; row < _rows; row++)
            {
                for (var column = 0; column < _columns; column++)
                {
                    var cell = (row * _columns) + column;
                    var (from, to) = (_starts[cell], _starts[cell + 1]);
                    if (from == to)
                    {
                        continue;
                    }

                    // The next cell of the row follows at once in the list.
                    var next = column + 1 < _columns ? _starts[cell + 2] : to;
                    var (above, aboveEnd) = (0, 0);
                    if (row + 1 < _rows)
                    {
                        var first = ((row + 1) * _columns) + Math.Max(column - 1, 0);
                        var last = ((row + 1) * _columns) + Math.Min(column + 1, _columns - 1);
                        (above, aboveEnd) = (_starts[first], _starts[last + 1]);
                    }

                    for (var a = from; a < to; a++)
                    {
                        Against(a, a + 1, next, within, found);
                        Against(a, above, aboveEnd, within, found);
                    }
                }
            }
        }

        /// <summary>Pairs of a larger level's discs with this one's.</summary>
        public void Of(Level larger, double within, List<DiscPair> found)
        {
            for (var k = 0; k < larger._index.Length; k++)
            {
                var (x, y, r) = (larger._x[k], larger._y[k], larger._r[k]);
                var reach = r + _largest + within;
                var (c0, c1) = (Column(x - reach), Column(x + reach));
                var (r0, r1) = (Row(y - reach), Row(y + reach));
                for (var row = r0; row <= r1; row++)
                {
                    var (from, to) = (_starts[(row * _columns) + c0], _starts[(row * _columns) + c1 + 1]);
                    for (var b = from; b < to; b++)
                    {
                        Pair(larger._index[k], x, y, r, b, within, found);
                    }
                }
            }
        }

        private void Against(int a, int from, int to, double within, List<DiscPair> found)
        {
            var (x, y, r) = (_x[a], _y[a], _r[a]);
            for (var b = from; b < to; b++)
            {
                Pair(_index[a], x, y, r, b, within, found);
            }
        }

        private void Pair(int index, double x, double y, double r, int b, double within, List<DiscPair> found)
        {
            var (dx, dy, near) = (_x[b] - x, _y[b] - y, r + _r[b] + within);
            var square = (dx * dx) + (dy * dy);
            if (square < near * near)
            {
                var other = _index[b];
                found.Add(new(Math.Min(index, other), Math.Max(index, other), Math.Sqrt(square) - r - _r[b]));
            }
        }
    }
}
