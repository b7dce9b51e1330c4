using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>A section of the brake drawn out along its length, cut into triangles, and what of a flat plate lies in it.</summary>
/// <remarks>Plates are cut by the three sides of each triangle (Sutherland and Hodgman, Communications of the ACM 17, 1974), exact for convex cutters.</remarks>
internal sealed class SectionSolid
{
    // What is left of a plate below this area is a touch.
    private static readonly double TouchM2 = 1e-8;

    private readonly (Vec2 A, Vec2 B, Vec2 C)[] triangles;
    private readonly Vec2 least;
    private readonly Vec2 most;

    /// <summary>The solid of a section.</summary>
    /// <param name="outline">Its corners, either way round.</param>
    public SectionSolid(IReadOnlyList<Vec2> outline)
    {
        Outline = outline;
        var cut = Triangulation.Of(outline, []);
        triangles = new (Vec2, Vec2, Vec2)[cut.Triangles.Count / 3];
        for (var i = 0; i < triangles.Length; i++)
        {
            var (a, b, c) = (
                cut.Points[cut.Triangles[3 * i]],
                cut.Points[cut.Triangles[(3 * i) + 1]],
                cut.Points[cut.Triangles[(3 * i) + 2]]
            );
            triangles[i] = (b - a).Cross(c - a) > 0 ? (a, b, c) : (a, c, b);
        }

        (least, most) = new Outline([.. outline.Select(p => new Corner(p))]).Box;
    }

    /// <summary>The section.</summary>
    public IReadOnlyList<Vec2> Outline { get; }

    /// <summary>False where the outline crosses itself or has no area.</summary>
    public bool IsSound => triangles.Length > 0;

    /// <summary>Whether a plate reaches into the solid, and from where to where along the brake.</summary>
    /// <param name="plate">Corners of the plate: X out of the brake, Y along it, Z up.</param>
    /// <param name="at">Where the section's zero stands: x out, y up.</param>
    /// <param name="turned">Angle that the section is turned up by about its zero, radians.</param>
    /// <param name="from">Least place along the brake.</param>
    /// <param name="to">Most place along the brake.</param>
    public bool Holds(ReadOnlySpan<Vec3> plate, Vec2 at, double turned, out double from, out double to)
    {
        (from, to) = (double.PositiveInfinity, double.NegativeInfinity);
        var (sin, cos) = Math.SinCos(turned);
        Span<Vec3> local = stackalloc Vec3[plate.Length];
        var (x0, x1, z0, z1) = (
            double.PositiveInfinity,
            double.NegativeInfinity,
            double.PositiveInfinity,
            double.NegativeInfinity
        );
        for (var i = 0; i < plate.Length; i++)
        {
            var (x, z) = (plate[i].X - at.X, plate[i].Z - at.Y);
            local[i] = new((x * cos) + (z * sin), plate[i].Y, (z * cos) - (x * sin));
            (x0, x1) = (Math.Min(x0, local[i].X), Math.Max(x1, local[i].X));
            (z0, z1) = (Math.Min(z0, local[i].Z), Math.Max(z1, local[i].Z));
        }

        if (x0 >= most.X || x1 <= least.X || z0 >= most.Y || z1 <= least.Y)
        {
            return false;
        }

        Span<Vec3> one = stackalloc Vec3[plate.Length + 8];
        Span<Vec3> two = stackalloc Vec3[plate.Length + 8];
        foreach (var (a, b, c) in triangles)
        {
            local.CopyTo(one);
            var count = Cut(one, local.Length, two, a, b);
            count = Cut(two, count, one, b, c);
            count = Cut(one, count, two, c, a);
            if (count < 3 || Area(two[..count]) < TouchM2)
            {
                continue;
            }

            foreach (var p in two[..count])
            {
                (from, to) = (Math.Min(from, p.Y), Math.Max(to, p.Y));
            }
        }

        return to >= from;
    }

    private static int Cut(ReadOnlySpan<Vec3> points, int count, Span<Vec3> left, Vec2 a, Vec2 b)
    {
        var (side, n) = (b - a, 0);
        double Off(Vec3 p) => (side.X * (p.Z - a.Y)) - (side.Y * (p.X - a.X));
        for (var i = 0; i < count; i++)
        {
            var (p, q) = (points[i], points[(i + 1) % count]);
            var (d, e) = (Off(p), Off(q));
            if (d >= 0 && n < left.Length)
            {
                left[n++] = p;
            }

            if (d >= 0 != e >= 0 && n < left.Length)
            {
                left[n++] = p + ((q - p) * (d / (d - e)));
            }
        }

        return n;
    }

    private static double Area(ReadOnlySpan<Vec3> points)
    {
        var sum = default(Vec3);
        for (var i = 2; i < points.Length; i++)
        {
            sum += (points[i - 1] - points[0]).Cross(points[i] - points[0]);
        }

        return sum.Length / 2;
    }
}
