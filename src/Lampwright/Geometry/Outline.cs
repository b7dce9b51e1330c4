namespace Lampwright.Geometry;

/// <summary>One corner of an outline and how the edge that leaves it runs to the next.</summary>
/// <param name="Point">The corner, in metres.</param>
/// <param name="Bulge">Tangent of a quarter of the arc's included angle; 0 for a straight edge, positive counter-clockwise.</param>
/// <param name="EdgeId">Permanent id of the edge that starts here, or empty.</param>
public readonly record struct Corner(Vec2 Point, double Bulge = 0, string EdgeId = "");

/// <summary>A closed outline of lines and arcs, counter-clockwise for material and clockwise-or-either for holes.</summary>
/// <remarks>The truth for DXF, SVG and PDF: arcs stay arcs. Polygons made from it are approximations.</remarks>
public sealed record Outline(IReadOnlyList<Corner> Corners)
{
    /// <summary>Its corners.</summary>
    public override string ToString() =>
        "Outline " + string.Join(" ", Corners.Select(c => $"{c.Point}~{c.Bulge}{c.EdgeId}"));

    /// <summary>A circle as two half arcs, counter-clockwise.</summary>
    public static Outline Circle(Vec2 centre, double radius) =>
        new([new(centre + new Vec2(radius, 0), 1), new(centre - new Vec2(radius, 0), 1)]);

    /// <summary>An axis-parallel rectangle with corners rounded by <paramref name="radius"/>, counter-clockwise.</summary>
    public static Outline Rectangle(Vec2 centre, double width, double height, double radius = 0)
    {
        var (w, h, r) = (width / 2, height / 2, Math.Min(radius, Math.Min(width, height) / 2));
        if (r <= 0)
        {
            return new([
                new(centre + new Vec2(-w, -h)),
                new(centre + new Vec2(w, -h)),
                new(centre + new Vec2(w, h)),
                new(centre + new Vec2(-w, h)),
            ]);
        }

        var quarter = Math.Tan(Math.PI / 8);
        return new([
            new(centre + new Vec2(-w + r, -h)),
            new(centre + new Vec2(w - r, -h), quarter),
            new(centre + new Vec2(w, -h + r)),
            new(centre + new Vec2(w, h - r), quarter),
            new(centre + new Vec2(w - r, h)),
            new(centre + new Vec2(-w + r, h), quarter),
            new(centre + new Vec2(-w, h - r)),
            new(centre + new Vec2(-w, -h + r), quarter),
        ]);
    }

    /// <summary>A slot (two parallel lines closed by half circles); <paramref name="length"/> is over all, along x.</summary>
    public static Outline Slot(Vec2 centre, double length, double width)
    {
        var (l, r) = ((length - width) / 2, width / 2);
        return new([
            new(centre + new Vec2(-l, -r)),
            new(centre + new Vec2(l, -r), 1),
            new(centre + new Vec2(l, r)),
            new(centre + new Vec2(-l, r), 1),
        ]);
    }

    /// <summary>Signed area in square metres, positive counter-clockwise, arcs exact.</summary>
    public double SignedArea
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Corners.Count; i++)
            {
                var (a, b) = (Corners[i], Corners[(i + 1) % Corners.Count]);
                sum += a.Point.Cross(b.Point) / 2;
                if (a.Bulge != 0)
                {
                    var angle = 4 * Math.Atan(a.Bulge);
                    var radius = (b.Point - a.Point).Length / 2 / Math.Sin(angle / 2);
                    sum += radius * radius / 2 * (angle - Math.Sin(angle));
                }
            }

            return sum;
        }
    }

    /// <summary>Centre of the area, arcs exact.</summary>
    public Vec2 Centroid
    {
        get
        {
            var (area, moment) = (0.0, default(Vec2));
            for (var i = 0; i < Corners.Count; i++)
            {
                var (a, b) = (Corners[i], Corners[(i + 1) % Corners.Count]);
                var triangle = a.Point.Cross(b.Point) / 2;
                area += triangle;
                moment += (a.Point + b.Point) * (triangle / 3);
                if (a.Bulge == 0)
                {
                    continue;
                }

                // The segment between chord and arc: area r²/2 (θ - sin θ), centre 4 r sin³(θ/2) / (3 (θ - sin θ)) from the arc's centre.
                var angle = 4 * Math.Atan(a.Bulge);
                var (centre, radius) = Arc(i);
                var lens = angle - Math.Sin(angle);
                var segment = radius * radius / 2 * lens;
                var outward = -(b.Point - a.Point).Unit.Left * Math.Sign(angle);
                var reach = 4 * radius * Math.Pow(Math.Sin(angle / 2), 3) / (3 * lens);
                area += segment;
                moment += (centre + (outward * reach)) * segment;
            }

            return moment / area;
        }
    }

    /// <summary>Area in square metres.</summary>
    public double Area => Math.Abs(SignedArea);

    /// <summary>Length of the outline in metres, arcs exact.</summary>
    public double Perimeter
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Corners.Count; i++)
            {
                var (a, b) = (Corners[i], Corners[(i + 1) % Corners.Count]);
                var chord = (b.Point - a.Point).Length;
                var angle = 4 * Math.Atan(Math.Abs(a.Bulge));
                sum += a.Bulge == 0 ? chord : chord / 2 / Math.Sin(angle / 2) * angle;
            }

            return sum;
        }
    }

    /// <summary>Centre and radius of the arc that leaves a corner; radius 0 for a straight edge.</summary>
    public (Vec2 Centre, double Radius) Arc(int index)
    {
        var (a, b) = (Corners[index], Corners[(index + 1) % Corners.Count]);
        if (a.Bulge == 0)
        {
            return (default, 0);
        }

        var chord = b.Point - a.Point;
        var offset = (1 - (a.Bulge * a.Bulge)) / (4 * a.Bulge);
        var centre = ((a.Point + b.Point) / 2) + (chord.Left * offset);
        return (centre, (a.Point - centre).Length);
    }

    /// <summary>The outline as points, each arc cut so that the chord leaves it by at most <paramref name="sag"/> metres.</summary>
    public IReadOnlyList<Vec2> Points(double sag)
    {
        var points = new List<Vec2>(Corners.Count);
        for (var i = 0; i < Corners.Count; i++)
        {
            points.Add(Corners[i].Point);
            if (Corners[i].Bulge == 0)
            {
                continue;
            }

            var (centre, radius) = Arc(i);
            var angle = 4 * Math.Atan(Corners[i].Bulge);
            var most = 2 * Math.Acos(Math.Max(0, 1 - (sag / radius)));
            var pieces = Math.Max(2, (int)Math.Ceiling(Math.Abs(angle) / Math.Max(most, 1e-3)));
            for (var k = 1; k < pieces; k++)
            {
                points.Add(centre + (Corners[i].Point - centre).Turned(angle * k / pieces));
            }
        }

        return points;
    }

    /// <summary>The outline carried by a mapping that keeps lengths and handedness (a move or a turn).</summary>
    public Outline Moved(Func<Vec2, Vec2> map) => new([.. Corners.Select(c => c with { Point = map(c.Point) })]);

    /// <summary>The same outline run the other way; each edge keeps its id.</summary>
    public Outline Reversed
    {
        get
        {
            var n = Corners.Count;
            var corners = new Corner[n];
            for (var i = 0; i < n; i++)
            {
                // The edge that arrives at a corner is the one that leaves it when run backwards.
                var arriving = Corners[(n - i + n - 1) % n];
                corners[i] = new(Corners[(n - i) % n].Point, -arriving.Bulge, arriving.EdgeId);
            }

            return new(corners);
        }
    }

    /// <summary>The mirror image under x → <paramref name="sum"/> - x, run so that its sense of turning stays.</summary>
    public Outline MirroredX(double sum) =>
        new Outline([
            .. Corners.Select(c => c with { Point = new(sum - c.Point.X, c.Point.Y), Bulge = -c.Bulge }),
        ]).Reversed;

    /// <summary>Smallest and largest corner of the box round the outline, arcs included.</summary>
    public (Vec2 Least, Vec2 Most) Box
    {
        get
        {
            var (x0, y0, x1, y1) = (
                double.PositiveInfinity,
                double.PositiveInfinity,
                double.NegativeInfinity,
                double.NegativeInfinity
            );
            void Take(Vec2 p)
            {
                x0 = Math.Min(x0, p.X);
                y0 = Math.Min(y0, p.Y);
                x1 = Math.Max(x1, p.X);
                y1 = Math.Max(y1, p.Y);
            }

            for (var i = 0; i < Corners.Count; i++)
            {
                Take(Corners[i].Point);
                if (Corners[i].Bulge == 0)
                {
                    continue;
                }

                // The arc is the part of its circle to the right of its chord when it turns left, and the other way round.
                var (centre, radius) = Arc(i);
                var (a, chord) = (Corners[i].Point, Corners[(i + 1) % Corners.Count].Point - Corners[i].Point);
                foreach (
                    var p in (ReadOnlySpan<Vec2>)
                        [
                            centre + new Vec2(radius, 0),
                            centre + new Vec2(0, radius),
                            centre - new Vec2(radius, 0),
                            centre - new Vec2(0, radius),
                        ]
                )
                {
                    if (chord.Cross(p - a) * Corners[i].Bulge < 0)
                    {
                        Take(p);
                    }
                }
            }

            return (new(x0, y0), new(x1, y1));
        }
    }
}
