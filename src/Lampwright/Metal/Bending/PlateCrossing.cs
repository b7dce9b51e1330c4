using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>Whether two flat plates without thickness pass through each other.</summary>
/// <remarks>An edge of one that crosses the plane of the other inside it by more than a touch. Plates of one plane do not cross.</remarks>
internal static class PlateCrossing
{
    private static readonly double TouchM = 2e-4;

    public static bool Cross(ReadOnlySpan<Vec3> a, ReadOnlySpan<Vec3> b) =>
        Apart(a, b) is false && (Pierces(a, b) || Pierces(b, a));

    private static bool Apart(ReadOnlySpan<Vec3> a, ReadOnlySpan<Vec3> b)
    {
        var (a0, a1) = Box(a);
        var (b0, b1) = Box(b);
        return a0.X > b1.X || b0.X > a1.X || a0.Y > b1.Y || b0.Y > a1.Y || a0.Z > b1.Z || b0.Z > a1.Z;
    }

    private static (Vec3 Least, Vec3 Most) Box(ReadOnlySpan<Vec3> points)
    {
        var (least, most) = (points[0], points[0]);
        foreach (var p in points)
        {
            least = new(Math.Min(least.X, p.X), Math.Min(least.Y, p.Y), Math.Min(least.Z, p.Z));
            most = new(Math.Max(most.X, p.X), Math.Max(most.Y, p.Y), Math.Max(most.Z, p.Z));
        }

        return (least, most);
    }

    /// <summary>True when an edge of the first goes through the second, both its ends and the place clear of the second's plane and rim.</summary>
    private static bool Pierces(ReadOnlySpan<Vec3> edges, ReadOnlySpan<Vec3> plate)
    {
        var normal = default(Vec3);
        for (var i = 2; i < plate.Length; i++)
        {
            normal += (plate[i - 1] - plate[0]).Cross(plate[i] - plate[0]);
        }

        if (normal.Length < 1e-12)
        {
            return false;
        }

        normal = normal.Unit;
        for (var i = 0; i < edges.Length; i++)
        {
            var (p, q) = (edges[i], edges[(i + 1) % edges.Length]);
            var (d, e) = ((p - plate[0]).Dot(normal), (q - plate[0]).Dot(normal));
            if (
                Math.Min(d, e) < -TouchM
                && Math.Max(d, e) > TouchM
                && Inside(p + ((q - p) * (d / (d - e))), plate, normal)
            )
            {
                return true;
            }
        }

        return false;
    }

    private static bool Inside(Vec3 point, ReadOnlySpan<Vec3> plate, Vec3 normal)
    {
        var turns = 0.0;
        for (var i = 0; i < plate.Length; i++)
        {
            var (p, q) = (plate[i], plate[(i + 1) % plate.Length]);
            var (a, b) = (p - point, q - point);
            var along = q - p;
            var length = along.Length;
            if (length > 0)
            {
                var foot = Math.Clamp(-a.Dot(along) / (length * length), 0, 1);
                if ((a + (along * foot)).Length < TouchM)
                {
                    return false;
                }
            }

            turns += Math.Atan2(a.Cross(b).Dot(normal), a.Dot(b));
        }

        return Math.Abs(turns) > Math.PI;
    }
}
