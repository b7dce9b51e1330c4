using System.Runtime.InteropServices;

namespace Lampwright.Geometry.Fields;

/// <summary>Straight pieces of closed rims in a grid: which lie near, and what lies inside. Any one unit of length.</summary>
/// <remarks>
/// A cell holds the pieces that pass through it; a cell without any lies wholly inside or outside, so most points are placed by one look. Cost of a
/// question in proportion to the pieces near it. <b>Checked by</b>: all pieces tried one by one, on random rims.
/// </remarks>
public sealed class RimGrid
{
    private readonly Segment2[] _pieces;
    private readonly int[] _cellStarts;
    private readonly int[] _cellPieces;
    private readonly int[] _rowStarts;
    private readonly int[] _rowPieces;
    private readonly bool[] _inside;
    private readonly int[] _seen;
    private readonly double _x0;
    private readonly double _y0;
    private readonly double _x1;
    private readonly double _y1;
    private readonly double _perX;
    private readonly double _perY;
    private readonly int _columns;
    private readonly int _rows;
    private int _ask;

    /// <summary>Lays the grid.</summary>
    /// <param name="pieces">The pieces of one or more closed rims, in any order; none is longer than what a double can hold.</param>
    /// <param name="questions">About how many questions will be asked: few do not pay for a fine grid.</param>
    public RimGrid(IReadOnlyList<Segment2> pieces, int questions)
    {
        _pieces = [.. pieces];
        _seen = new int[_pieces.Length];
        (_x0, _y0, _x1, _y1) = Box(_pieces);
        var cells = Math.Clamp(Math.Min(questions, 16 * _pieces.Length), 1, 1 << 14);
        var (w, h) = (Math.Max(_x1 - _x0, 1e-12), Math.Max(_y1 - _y0, 1e-12));
        _columns = Math.Clamp((int)Math.Sqrt(cells * w / h), 1, cells);
        _rows = Math.Clamp(cells / _columns, 1, cells);
        (_perX, _perY) = (_columns / w, _rows / h);

        var rows = new Buckets(_rows);
        var inCells = new Buckets(_columns * _rows);
        for (var pass = 0; pass < 2; pass++)
        {
            for (var i = 0; i < _pieces.Length; i++)
            {
                Enter(i, rows, inCells);
            }

            rows.Next();
            inCells.Next();
        }

        (_rowStarts, _rowPieces) = (rows.Starts, rows.Items);
        (_cellStarts, _cellPieces) = (inCells.Starts, inCells.Items);
        _inside = new bool[_columns * _rows];
        Fill();
    }

    /// <summary>The pieces.</summary>
    public ReadOnlySpan<Segment2> Pieces => _pieces;

    /// <summary>Whether a point lies inside the rims, by the even-odd rule.</summary>
    public bool Contains(double x, double y)
    {
        if (!(x >= _x0 && x <= _x1 && y >= _y0 && y <= _y1))
        {
            return false;
        }

        var (column, row) = (Column(x), Row(y));
        var cell = (row * _columns) + column;
        return _cellStarts[cell] == _cellStarts[cell + 1] ? _inside[cell] : Crossings(row, x, y);
    }

    /// <summary>Distance of a point from the nearest piece, or infinity where none is nearer than <paramref name="within"/>.</summary>
    public double Distance(double x, double y, double within)
    {
        if (x + within < _x0 || x - within > _x1 || y + within < _y0 || y - within > _y1)
        {
            return double.PositiveInfinity;
        }

        var best = within * within;
        var any = false;
        var (c0, c1, r0, r1) = (Column(x - within), Column(x + within), Row(y - within), Row(y + within));
        for (var row = r0; row <= r1; row++)
        {
            var (from, to) = (_cellStarts[(row * _columns) + c0], _cellStarts[(row * _columns) + c1 + 1]);
            for (var k = from; k < to; k++)
            {
                var square = _pieces[_cellPieces[k]].SquareFrom(x, y);
                if (square < best)
                {
                    (best, any) = (square, true);
                }
            }
        }

        return any ? Math.Sqrt(best) : double.PositiveInfinity;
    }

    /// <summary>Places of the pieces that pass through the cells of a box: all that reach into it and some beside it, each once.</summary>
    /// <param name="least">Least corner of the box.</param>
    /// <param name="most">Greatest corner.</param>
    /// <param name="found">Cleared and filled.</param>
    public void Near(Vec2 least, Vec2 most, List<int> found)
    {
        found.Clear();
        if (most.X < _x0 || least.X > _x1 || most.Y < _y0 || least.Y > _y1)
        {
            return;
        }

        _ask++;
        var (c0, c1, r0, r1) = (Column(least.X), Column(most.X), Row(least.Y), Row(most.Y));
        for (var row = r0; row <= r1; row++)
        {
            var (from, to) = (_cellStarts[(row * _columns) + c0], _cellStarts[(row * _columns) + c1 + 1]);
            for (var k = from; k < to; k++)
            {
                var piece = _cellPieces[k];
                if (_seen[piece] != _ask)
                {
                    _seen[piece] = _ask;
                    found.Add(piece);
                }
            }
        }
    }

    private int Column(double x) => Math.Clamp((int)((x - _x0) * _perX), 0, _columns - 1);

    private int Row(double y) => Math.Clamp((int)((y - _y0) * _perY), 0, _rows - 1);

    /// <summary>Notes a piece in the rows it spans and in the cells it passes through, a hair to either side.</summary>
    private void Enter(int index, Buckets rows, Buckets cells)
    {
        var p = _pieces[index];
        var hair = 1e-9 * (_x1 - _x0 + (_y1 - _y0));
        var (low, high) = p.Ay < p.By ? (p.Ay, p.By) : (p.By, p.Ay);
        var (left, right) = p.Ax < p.Bx ? (p.Ax, p.Bx) : (p.Bx, p.Ax);
        var (r0, r1) = (Row(low - hair), Row(high + hair));
        var slope = high > low ? (p.Bx - p.Ax) / (p.By - p.Ay) : 0;
        for (var row = r0; row <= r1; row++)
        {
            rows.Add(row, index);
            var (from, to) = (left, right);
            if (r1 > r0)
            {
                // What of the piece lies in this row.
                var a = p.Ax + ((Math.Clamp(_y0 + (row / _perY) - hair, low, high) - p.Ay) * slope);
                var b = p.Ax + ((Math.Clamp(_y0 + ((row + 1) / _perY) + hair, low, high) - p.Ay) * slope);
                (from, to) = a < b ? (a, b) : (b, a);
            }

            var (c0, c1) = (Column(from - hair), Column(to + hair));
            for (var column = c0; column <= c1; column++)
            {
                cells.Add((row * _columns) + column, index);
            }
        }
    }

    /// <summary>Marks the cells that no piece passes through as inside or outside, by their middles.</summary>
    private void Fill()
    {
        var places = new List<double>();
        for (var row = 0; row < _rows; row++)
        {
            var y = _y0 + ((row + 0.5) / _perY);
            places.Clear();
            for (var k = _rowStarts[row]; k < _rowStarts[row + 1]; k++)
            {
                ref readonly var p = ref _pieces[_rowPieces[k]];
                if (p.Ay > y != p.By > y)
                {
                    places.Add(p.XAt(y));
                }
            }

            places.Sort();
            var passed = 0;
            for (var column = 0; column < _columns; column++)
            {
                var x = _x0 + ((column + 0.5) / _perX);
                while (passed < places.Count && places[passed] < x)
                {
                    passed++;
                }

                _inside[(row * _columns) + column] = (passed & 1) == 1;
            }
        }
    }

    private bool Crossings(int row, double x, double y)
    {
        var inside = false;
        for (var k = _rowStarts[row]; k < _rowStarts[row + 1]; k++)
        {
            ref readonly var p = ref _pieces[_rowPieces[k]];
            if (p.Ay > y != p.By > y && x < p.XAt(y))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static (double X0, double Y0, double X1, double Y1) Box(ReadOnlySpan<Segment2> pieces)
    {
        var (x0, y0, x1, y1) = (
            double.PositiveInfinity,
            double.PositiveInfinity,
            double.NegativeInfinity,
            double.NegativeInfinity
        );
        foreach (ref readonly var p in pieces)
        {
            (x0, x1) = (Math.Min(x0, Math.Min(p.Ax, p.Bx)), Math.Max(x1, Math.Max(p.Ax, p.Bx)));
            (y0, y1) = (Math.Min(y0, Math.Min(p.Ay, p.By)), Math.Max(y1, Math.Max(p.Ay, p.By)));
        }

        return pieces.Length == 0 ? (0, 0, 0, 0) : (x0, y0, x1, y1);
    }

    /// <summary>Lists of numbers, one beside the other in one array: counted in the first pass, filled in the second.</summary>
    private sealed class Buckets(int count)
    {
        private bool _counted;

        public int[] Starts { get; } = new int[count + 2];

        public int[] Items { get; private set; } = [];

        public void Add(int bucket, int item)
        {
            if (_counted)
            {
                Items[Starts[bucket + 1]++] = item;
            }
            else
            {
                Starts[bucket + 2]++;
            }
        }

        public void Next()
        {
            if (_counted)
            {
                return;
            }

            _counted = true;
            for (var i = 1; i < Starts.Length; i++)
            {
                Starts[i] += Starts[i - 1];
            }

            Items = new int[Starts[^1]];
        }
    }
}

/// <summary>A straight piece of a rim.</summary>
/// <param name="Ax">Beginning.</param>
/// <param name="Ay">Beginning.</param>
/// <param name="Bx">End.</param>
/// <param name="By">End.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Segment2(double Ax, double Ay, double Bx, double By)
{
    private readonly double _perSquare = 1 / Math.Max(((Bx - Ax) * (Bx - Ax)) + ((By - Ay) * (By - Ay)), 1e-300);

    /// <summary>The piece between two points.</summary>
    public static Segment2 Of(Vec2 a, Vec2 b) => new(a.X, a.Y, b.X, b.Y);

    /// <summary>Its beginning.</summary>
    public Vec2 A => new(Ax, Ay);

    /// <summary>Its end.</summary>
    public Vec2 B => new(Bx, By);

    /// <summary>Square of the distance of a point.</summary>
    public double SquareFrom(double x, double y)
    {
        var (dx, dy, px, py) = (Bx - Ax, By - Ay, x - Ax, y - Ay);
        var share = ((px * dx) + (py * dy)) * _perSquare;
        share = share > 0 ? share : 0;
        share = share < 1 ? share : 1;
        (px, py) = (px - (share * dx), py - (share * dy));
        return (px * px) + (py * py);
    }

    /// <summary>Distance of a point.</summary>
    public double From(Vec2 p) => Math.Sqrt(SquareFrom(p.X, p.Y));

    /// <summary>Where it crosses a height that it spans.</summary>
    public double XAt(double y) => Ax + ((y - Ay) / (By - Ay) * (Bx - Ax));
}
