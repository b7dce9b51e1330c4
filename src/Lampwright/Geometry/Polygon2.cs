namespace Lampwright.Geometry;

/// <summary>Questions to polygons given by their points.</summary>
public static class Polygon2
{
    /// <summary>Whether a point lies inside, by the even-odd rule.</summary>
    public static bool Contains(IReadOnlyList<Vec2> polygon, Vec2 p)
    {
        var inside = false;
        for (var (i, j) = (0, polygon.Count - 1); i < polygon.Count; j = i++)
        {
            var (a, b) = (polygon[i], polygon[j]);
            if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + ((p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Whether two pieces of line cut through each other; touching does not count (tolerance 1 nm).</summary>
    public static bool Cross(Vec2 a, Vec2 b, Vec2 c, Vec2 d)
    {
        var (ab, cd) = (b - a, d - c);
        var (slackAb, slackCd) = (1e-9 * ab.Length, 1e-9 * cd.Length);
        var (c1, d1) = (ab.Cross(c - a), ab.Cross(d - a));
        var (a2, b2) = (cd.Cross(a - c), cd.Cross(b - c));
        return ((c1 > slackAb && d1 < -slackAb) || (c1 < -slackAb && d1 > slackAb))
            && ((a2 > slackCd && b2 < -slackCd) || (a2 < -slackCd && b2 > slackCd));
    }

    /// <summary>Whether a polygon's edges cut through each other; touching does not count.</summary>
    /// <remarks>All pairs, those apart by their boxes dismissed at once: for outlines of some hundred points.</remarks>
    public static bool CrossesItself(IReadOnlyList<Vec2> polygon)
    {
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            var (x0, x1, y0, y1) = (Math.Min(a.X, b.X), Math.Max(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.Y, b.Y));
            for (var j = i + 2; j < polygon.Count; j++)
            {
                var (c, d) = (polygon[j], polygon[(j + 1) % polygon.Count]);
                if (
                    Math.Max(c.X, d.X) >= x0
                    && Math.Min(c.X, d.X) <= x1
                    && Math.Max(c.Y, d.Y) >= y0
                    && Math.Min(c.Y, d.Y) <= y1
                    && Cross(a, b, c, d)
                )
                {
                    return true;
                }
            }
        }

        return false;
    }
}
