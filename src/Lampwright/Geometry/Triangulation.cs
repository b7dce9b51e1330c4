using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate.Polygon;

namespace Lampwright.Geometry;

/// <summary>A polygon with holes cut into triangles.</summary>
/// <param name="Points">All its points: the outline's first, then each hole's.</param>
/// <param name="Triangles">Indices into the points, three to a triangle, counter-clockwise.</param>
public sealed record Triangulation(IReadOnlyList<Vec2> Points, IReadOnlyList<int> Triangles)
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>Cuts a polygon; holes that do not lie inside it are left out, and a polygon that crosses itself has no triangles.</summary>
    /// <param name="outline">Points of the outline, metres.</param>
    /// <param name="holes">Points of each hole.</param>
    /// <remarks>Ear clipping of NetTopologySuite over its spatial index. For pictures: not run in a nominal evaluation.</remarks>
    public static Triangulation Of(IReadOnlyList<Vec2> outline, IReadOnlyList<IReadOnlyList<Vec2>> holes)
    {
        var points = new List<Vec2>(outline);
        foreach (var hole in holes)
        {
            points.AddRange(hole);
        }

        var shell = Ring(outline);
        if (shell is null)
        {
            return new(points, []);
        }

        var polygon = Factory.CreatePolygon(shell, [.. holes.Select(Ring).OfType<LinearRing>()]);
        if (!polygon.IsValid)
        {
            polygon = Factory.CreatePolygon(shell);
            if (!polygon.IsValid)
            {
                return new(points, []);
            }
        }

        var index = new Dictionary<Vec2, int>(points.Count);
        for (var i = 0; i < points.Count; i++)
        {
            index.TryAdd(points[i], i);
        }

        return new(points, Joined(polygon, points, index) ?? Cut(polygon, points, index));
    }

    /// <summary>
    /// With our own bridges to the holes, since the library's took most of the time on perforated sheet; null where the triangles do
    /// not add up to the polygon.
    /// </summary>
    private static List<int>? Joined(Polygon polygon, List<Vec2> points, Dictionary<Vec2, int> index)
    {
        if (polygon.NumInteriorRings == 0)
        {
            return null;
        }

        static List<Vec2> Points(LineString ring) =>
            [.. ring.Coordinates.Take(ring.NumPoints - 1).Select(c => new Vec2(c.X, c.Y))];
        var ring = HoleBridges.Join(
            Points(polygon.ExteriorRing),
            [.. polygon.InteriorRings.Select(r => (IReadOnlyList<Vec2>)Points(r))]
        );
        if (ring is null)
        {
            return null;
        }

        var triangles = Cut(Factory.CreatePolygon(Ring(ring)), points, index);
        var area = 0.0;
        for (var i = 0; i < triangles.Count; i += 3)
        {
            var a = points[triangles[i]];
            area += (points[triangles[i + 1]] - a).Cross(points[triangles[i + 2]] - a) / 2;
        }

        return Math.Abs(area - polygon.Area) <= 1e-9 * polygon.Area ? triangles : null;
    }

    private static List<int> Cut(Polygon polygon, List<Vec2> points, Dictionary<Vec2, int> index)
    {
        var triangles = new List<int>(3 * points.Count);
        foreach (var triangle in ((GeometryCollection)PolygonTriangulator.Triangulate(polygon)).Geometries)
        {
            var corners = triangle.Coordinates;
            var (a, b, c) = (At(corners[0]), At(corners[1]), At(corners[2]));
            var left = (points[b] - points[a]).Cross(points[c] - points[a]) > 0;
            triangles.Add(a);
            triangles.Add(left ? b : c);
            triangles.Add(left ? c : b);
        }

        return triangles;

        int At(Coordinate c) => index[new(c.X, c.Y)];
    }

    private static LinearRing? Ring(IReadOnlyList<Vec2> points)
    {
        if (points.Count < 3)
        {
            return null;
        }

        var ring = new Coordinate[points.Count + 1];
        for (var i = 0; i < ring.Length; i++)
        {
            var p = points[i % points.Count];
            ring[i] = new(p.X, p.Y);
        }

        return Factory.CreateLinearRing(ring);
    }
}
