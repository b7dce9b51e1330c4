namespace Lampwright.Geometry.Fields;

/// <summary>The outline of several faces laid together: adjoining along pieces of their edges, apart, or over each other. Any one unit of length.</summary>
/// <remarks>
/// Every edge is cut where others touch or cross it; pieces that are run both ways cancel, of the rest those count that have faces on one side only
/// (winding number). Corners nearer than 1e-9 of the size are one. Cost about n log n in the edges; for faces that all lie over each other it grows with
/// their crossings. <b>Checked by</b>: areas, lengths and corners of an independent library on random faces.
/// </remarks>
public static class FaceUnion
{
    /// <summary>Closed rims round the faces, material to the left: outer ones counter-clockwise, openings clockwise; straight runs in one piece.</summary>
    /// <param name="faces">Corners of each face, either way round; faces with fewer than three are left out.</param>
    public static List<Vec2[]> Of(IReadOnlyList<IReadOnlyList<Vec2>> faces)
    {
        var edges = Edges(faces, out var tolerance);
        var corners = new CornerTable(tolerance);
        var pieces = Net(Pieces(edges, corners, tolerance));
        return Rims(Kept(pieces, corners), corners, tolerance);
    }

    /// <summary>Signed area of a rim: positive counter-clockwise.</summary>
    public static double SignedArea(ReadOnlySpan<Vec2> rim)
    {
        if (rim.Length == 0)
        {
            return 0;
        }

        // Counted from a corner of its own, so that a far origin takes no digits.
        var (sum, zero) = (0.0, rim[0]);
        for (var i = 1; i + 1 < rim.Length; i++)
        {
            sum += (rim[i] - zero).Cross(rim[i + 1] - zero);
        }

        return sum / 2;
    }

    private static List<Edge> Edges(IReadOnlyList<IReadOnlyList<Vec2>> faces, out double tolerance)
    {
        var edges = new List<Edge>(faces.Count * 4);
        var size = 0.0;
        foreach (var face in faces)
        {
            Vec2[] rim = [.. face];
            if (rim.Length < 3)
            {
                continue;
            }

            var clockwise = SignedArea(rim) < 0;
            for (var i = 0; i < rim.Length; i++)
            {
                var (a, b) = (rim[i], rim[(i + 1) % rim.Length]);
                size = Math.Max(size, Math.Max(Math.Abs(a.X), Math.Abs(a.Y)));
                edges.Add(clockwise ? new(b, a) : new(a, b));
            }
        }

        tolerance = Math.Max(1e-9 * size, 1e-15);
        edges.Sort((a, b) => a.Left.CompareTo(b.Left));
        return edges;
    }

    /// <summary>Pieces of the edges between the places where others touch or cross them, as corners.</summary>
    private static List<(int From, int To)> Pieces(List<Edge> edges, CornerTable corners, double tolerance)
    {
        for (var i = 0; i < edges.Count; i++)
        {
            var a = edges[i];
            for (var j = i + 1; j < edges.Count && edges[j].Left <= a.Right + tolerance; j++)
            {
                var b = edges[j];
                if (b.Low <= a.High + tolerance && b.High >= a.Low - tolerance)
                {
                    a.Meet(b, tolerance);
                }
            }
        }

        var pieces = new List<(int, int)>(edges.Count * 2);
        foreach (var edge in edges)
        {
            var from = corners.Of(edge.A);
            foreach (var (_, at) in edge.Cuts())
            {
                var to = corners.Of(at);
                if (to != from)
                {
                    pieces.Add((from, to));
                    from = to;
                }
            }

            var end = corners.Of(edge.B);
            if (end != from)
            {
                pieces.Add((from, end));
            }
        }

        return pieces;
    }

    /// <summary>Equal pieces added up: one way less the other way; what cancels is left out.</summary>
    private static List<(int From, int To, int Times)> Net(List<(int From, int To)> pieces)
    {
        pieces.Sort(
            (p, q) =>
                Math.Min(p.From, p.To).CompareTo(Math.Min(q.From, q.To)) is var c && c != 0
                    ? c
                    : Math.Max(p.From, p.To).CompareTo(Math.Max(q.From, q.To))
        );
        var net = new List<(int, int, int)>(pieces.Count);
        for (var i = 0; i < pieces.Count; )
        {
            var (low, high) = (Math.Min(pieces[i].From, pieces[i].To), Math.Max(pieces[i].From, pieces[i].To));
            var times = 0;
            for (
                ;
                i < pieces.Count
                    && Math.Min(pieces[i].From, pieces[i].To) == low
                    && Math.Max(pieces[i].From, pieces[i].To) == high;
                i++
            )
            {
                times += pieces[i].From == low ? 1 : -1;
            }

            if (times != 0)
            {
                net.Add(times > 0 ? (low, high, times) : (high, low, -times));
            }
        }

        return net;
    }

    /// <summary>Pieces with faces on one side only, run so that the faces lie to the left.</summary>
    private static List<(int From, int To)> Kept(List<(int From, int To, int Times)> pieces, CornerTable corners)
    {
        // Seen from a slant nothing lies level, and a ray meets each piece at its inside or not at all.
        var (s, c) = Math.SinCos(0.7313);
        var turned = new (double Ax, double Ay, double Bx, double By)[pieces.Count];
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < turned.Length; i++)
        {
            var (a, b) = (corners[pieces[i].From], corners[pieces[i].To]);
            turned[i] = ((c * a.X) - (s * a.Y), (s * a.X) + (c * a.Y), (c * b.X) - (s * b.Y), (s * b.X) + (c * b.Y));
            low = Math.Min(low, Math.Min(turned[i].Ay, turned[i].By));
            high = Math.Max(high, Math.Max(turned[i].Ay, turned[i].By));
        }

        var bands = new List<int>[Math.Clamp(turned.Length / 4, 1, 4096)];
        var perBand = bands.Length / Math.Max(high - low, 1e-300);
        int Band(double y) => Math.Clamp((int)((y - low) * perBand), 0, bands.Length - 1);
        for (var i = 0; i < turned.Length; i++)
        {
            var (_, ay, _, by) = turned[i];
            for (var band = Band(Math.Min(ay, by)); band <= Band(Math.Max(ay, by)); band++)
            {
                (bands[band] ??= []).Add(i);
            }
        }

        var kept = new List<(int, int)>(pieces.Count);
        for (var i = 0; i < turned.Length; i++)
        {
            var (ax, ay, bx, by) = turned[i];
            var (x, y) = ((ax + bx) / 2, (ay + by) / 2);
            var beyond = 0;
            foreach (var k in bands[Band(y)])
            {
                var (px, py, qx, qy) = turned[k];
                if (k != i && py > y != qy > y && x < px + ((y - py) / (qy - py) * (qx - px)))
                {
                    beyond += qy > py ? pieces[k].Times : -pieces[k].Times;
                }
            }

            var (left, right) = by > ay ? (beyond + pieces[i].Times, beyond) : (beyond, beyond - pieces[i].Times);
            if (left > 0 != right > 0)
            {
                kept.Add(left > 0 ? (pieces[i].From, pieces[i].To) : (pieces[i].To, pieces[i].From));
            }
        }

        return kept;
    }

    /// <summary>Strings the pieces together; where rims touch in a corner, each keeps to its own left.</summary>
    private static List<Vec2[]> Rims(List<(int From, int To)> pieces, CornerTable corners, double tolerance)
    {
        pieces.Sort((p, q) => p.From.CompareTo(q.From));
        var starts = new int[corners.Count + 1];
        foreach (var (from, _) in pieces)
        {
            starts[from + 1]++;
        }

        for (var i = 1; i < starts.Length; i++)
        {
            starts[i] += starts[i - 1];
        }

        var used = new bool[pieces.Count];
        var rims = new List<Vec2[]>();
        var rim = new List<Vec2>();
        for (var first = 0; first < pieces.Count; first++)
        {
            if (used[first])
            {
                continue;
            }

            rim.Clear();
            for (var at = first; at >= 0 && !used[at]; at = Next(pieces, corners, starts, used, at))
            {
                used[at] = true;
                rim.Add(corners[pieces[at].From]);
            }

            if (Straightened(rim, tolerance) is { Length: > 2 } clean)
            {
                rims.Add(clean);
            }
        }

        return rims;
    }

    private static int Next(List<(int From, int To)> pieces, CornerTable corners, int[] starts, bool[] used, int at)
    {
        var (from, corner) = pieces[at];
        var (best, sharpest) = (-1, double.NegativeInfinity);
        for (var k = starts[corner]; k < starts[corner + 1]; k++)
        {
            if (used[k])
            {
                continue;
            }

            if (starts[corner + 1] - starts[corner] == 1)
            {
                return k;
            }

            var (arrives, leaves) = (corners[corner] - corners[from], corners[pieces[k].To] - corners[corner]);
            var turn = Math.Atan2(arrives.Cross(leaves), arrives.Dot(leaves));
            if (turn > sharpest)
            {
                (best, sharpest) = (k, turn);
            }
        }

        return best;
    }

    private static Vec2[] Straightened(List<Vec2> rim, double tolerance)
    {
        var clean = new List<Vec2>(rim.Count);
        for (var i = 0; i < rim.Count; i++)
        {
            var before = clean.Count > 0 ? clean[^1] : rim[^1];
            var (a, b) = (rim[i] - before, rim[(i + 1) % rim.Count] - rim[i]);
            var straight = Math.Abs(a.Cross(b)) <= 4 * tolerance * (a.Length + b.Length) && a.Dot(b) > 0;
            if (!straight)
            {
                clean.Add(rim[i]);
            }
        }

        return [.. clean];
    }

    /// <summary>An edge of a face with the places where it is cut.</summary>
    private sealed class Edge(Vec2 a, Vec2 b)
    {
        private List<(double Along, Vec2 At)>? _cuts;

        public Vec2 A { get; } = a;

        public Vec2 B { get; } = b;

        public double Left { get; } = Math.Min(a.X, b.X);

        public double Right { get; } = Math.Max(a.X, b.X);

        public double Low { get; } = Math.Min(a.Y, b.Y);

        public double High { get; } = Math.Max(a.Y, b.Y);

        private Vec2 Way { get; } = b - a;

        private double Length { get; } = (b - a).Length;

        public List<(double Along, Vec2 At)> Cuts()
        {
            _cuts?.Sort((p, q) => p.Along.CompareTo(q.Along));
            return _cuts ?? None;
        }

        private static List<(double Along, Vec2 At)> None { get; } = [];

        /// <summary>Cuts both where an end of one lies on the other, or where they cross.</summary>
        public void Meet(Edge other, double tolerance)
        {
            var (c, d) = (Off(other.A), Off(other.B));
            var (e, f) = (other.Off(A), other.Off(B));
            if ((c > tolerance && d > tolerance) || (c < -tolerance && d < -tolerance))
            {
                return;
            }

            if ((e > tolerance && f > tolerance) || (e < -tolerance && f < -tolerance))
            {
                return;
            }

            var touched = false;
            touched |= Math.Abs(c) <= tolerance && Cut(other.A, tolerance);
            touched |= Math.Abs(d) <= tolerance && Cut(other.B, tolerance);
            touched |= Math.Abs(e) <= tolerance && other.Cut(A, tolerance);
            touched |= Math.Abs(f) <= tolerance && other.Cut(B, tolerance);
            if (!touched && ((c > 0 && d < 0) || (c < 0 && d > 0)) && ((e > 0 && f < 0) || (e < 0 && f > 0)))
            {
                var at = other.A + (other.Way * (c / (c - d)));
                Cut(at, tolerance);
                other.Cut(at, tolerance);
            }
        }

        /// <summary>How far a point lies to the left of the line.</summary>
        private double Off(Vec2 p) => Way.Cross(p - A) / Length;

        /// <summary>Cuts at a point of the line; true where it lies on the edge, ends included.</summary>
        private bool Cut(Vec2 at, double tolerance)
        {
            var along = Way.Dot(at - A) / Length;
            if (along > tolerance && along < Length - tolerance)
            {
                (_cuts ??= []).Add((along, at));
            }

            return along >= -tolerance && along <= Length + tolerance;
        }
    }

    /// <summary>Corners by number; those nearer than the tolerance are one.</summary>
    private sealed class CornerTable(double tolerance)
    {
        private readonly Dictionary<(long, long), int> _cells = [];
        private readonly List<(Vec2 At, int Next)> _corners = [];
        private readonly double _per = 1 / (16 * tolerance);

        public int Count => _corners.Count;

        public Vec2 this[int corner] => _corners[corner].At;

        public int Of(Vec2 p)
        {
            var (x0, x1) = ((long)Math.Floor((p.X - tolerance) * _per), (long)Math.Floor((p.X + tolerance) * _per));
            var (y0, y1) = ((long)Math.Floor((p.Y - tolerance) * _per), (long)Math.Floor((p.Y + tolerance) * _per));
            for (var x = x0; x <= x1; x++)
            {
                for (var y = y0; y <= y1; y++)
                {
                    var at = _cells.GetValueOrDefault((x, y), -1);
                    while (at >= 0)
                    {
                        var (known, next) = _corners[at];
                        if (Math.Abs(known.X - p.X) <= tolerance && Math.Abs(known.Y - p.Y) <= tolerance)
                        {
                            return at;
                        }

                        at = next;
                    }
                }
            }

            var cell = ((long)Math.Floor(p.X * _per), (long)Math.Floor(p.Y * _per));
            _corners.Add((p, _cells.GetValueOrDefault(cell, -1)));
            _cells[cell] = _corners.Count - 1;
            return _corners.Count - 1;
        }
    }
}
