using Lampwright.Geometry;
using Lampwright.Geometry.Fields;

namespace Lampwright.Metal.Fields;

/// <summary>
/// A placed hole as all points nearer than a radius to a core: the centre of a round hole, the middle line of a slot, a rectangle within its corner radius,
/// the outline itself of any other. Distances of all but outlines with arcs of their own are exact.
/// </summary>
internal sealed class HoleCore
{
    private static readonly double Sag = 1e-5;

    private HoleCore(PlacedHole hole, IReadOnlyList<Vec2> points, double radius)
    {
        (Hole, Points, Radius) = (hole, points, radius);
        var (x0, y0, x1, y1) = (points[0].X, points[0].Y, points[0].X, points[0].Y);
        foreach (var p in points)
        {
            (x0, x1) = (Math.Min(x0, p.X), Math.Max(x1, p.X));
            (y0, y1) = (Math.Min(y0, p.Y), Math.Max(y1, p.Y));
        }

        (Least, Most) = (new(x0 - radius, y0 - radius), new(x1 + radius, y1 + radius));
        Middle = new((x0 + x1) / 2, (y0 + y1) / 2);
        foreach (var p in points)
        {
            Around = Math.Max(Around, (p - Middle).Length);
        }

        Around += radius;
    }

    public PlacedHole Hole { get; }

    public IReadOnlyList<Vec2> Points { get; }

    public double Radius { get; }

    public Vec2 Least { get; }

    public Vec2 Most { get; }

    /// <summary>Middle of its box and radius of a disc round it.</summary>
    public Vec2 Middle { get; }

    public double Around { get; }

    public static HoleCore Of(PlacedHole hole)
    {
        var c = hole.Outline.Corners;
        return hole.Spec.Shape.Kind switch
        {
            HoleShapeKind.Round => new(hole, [hole.Centre], hole.DiameterM / 2),
            HoleShapeKind.Slot when c.Count == 4 => new(
                hole,
                [(c[0].Point + c[3].Point) / 2, (c[1].Point + c[2].Point) / 2],
                (c[3].Point - c[0].Point).Length / 2
            ),
            HoleShapeKind.Rectangle when c.Count == 8 => Rounded(hole),
            _ => new(hole, hole.Outline.Points(Sag), 0),
        };
    }

    private static HoleCore Rounded(PlacedHole hole)
    {
        var centres = new Vec2[4];
        for (var i = 0; i < 4; i++)
        {
            centres[i] = hole.Outline.Arc((2 * i) + 1).Centre;
        }

        return new(hole, centres, hole.Outline.Arc(1).Radius);
    }

    /// <summary>Metal between the hole and a piece of edge whose metal lies to the left; negative by how far the hole reaches over it.</summary>
    public double From(in Segment2 piece)
    {
        if (Points.Count == 1)
        {
            return piece.From(Points[0]) - Radius;
        }

        var way = (piece.B - piece.A).Unit;
        var length = (piece.B - piece.A).Length;
        var (least, deepest) = (double.PositiveInfinity, 0.0);
        var crosses = false;
        var sides = Points.Count == 2 ? 1 : Points.Count;
        for (var i = 0; i < sides; i++)
        {
            var (p, q) = (Points[i], Points[(i + 1) % Points.Count]);
            crosses |= Polygon2.Cross(p, q, piece.A, piece.B);
            var side = Segment2.Of(p, q);
            least = Math.Min(least, Math.Min(piece.From(p), piece.From(q)));
            least = Math.Min(least, Math.Min(side.From(piece.A), side.From(piece.B)));
        }

        if (!crosses)
        {
            return least - Radius;
        }

        foreach (var p in Points)
        {
            if ((p - piece.A).Dot(way) is var along && along >= 0 && along <= length)
            {
                deepest = Math.Max(deepest, -way.Cross(p - piece.A));
            }
        }

        return -deepest - Radius;
    }

    /// <summary>Metal between two holes; negative where they overlap.</summary>
    public double From(HoleCore other)
    {
        var radii = Radius + other.Radius;
        if (Points.Count == 1 && other.Points.Count == 1)
        {
            return (Points[0] - other.Points[0]).Length - radii;
        }

        if (Holds(other.Points[0]) || other.Holds(Points[0]))
        {
            return -radii - 1e-3;
        }

        var least = double.PositiveInfinity;
        for (var i = 0; i < Points.Count; i++)
        {
            var (a, b) = (Points[i], Points[(i + 1) % Points.Count]);
            var side = Segment2.Of(a, b);
            for (var j = 0; j < other.Points.Count; j++)
            {
                var (c, d) = (other.Points[j], other.Points[(j + 1) % other.Points.Count]);
                if (Polygon2.Cross(a, b, c, d))
                {
                    return -radii - 1e-3;
                }

                least = Math.Min(least, Math.Min(side.From(c), Segment2.Of(c, d).From(a)));
            }
        }

        return least - radii;
    }

    /// <summary>Whether a point lies in the core, where the core has an inside.</summary>
    private bool Holds(Vec2 p) => Points.Count > 2 && Polygon2.Contains(Points, p);
}
