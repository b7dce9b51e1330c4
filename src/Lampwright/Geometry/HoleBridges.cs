namespace Lampwright.Geometry;

/// <summary>Joins the holes of a polygon to its outline by bridges, so that one ring is left for ear clipping.</summary>
/// <remarks>
/// Source: D. Eberly, Triangulation by Ear Clipping, section 5: from the left most hole on, a ray to the left finds the ring, and of the
/// ring's points that stand before the point found the one nearest to the ray in angle is visible.
/// </remarks>
internal static class HoleBridges
{
    /// <summary>The joined ring, counter-clockwise; null where a hole sees no ring.</summary>
    public static List<Vec2>? Join(IReadOnlyList<Vec2> outline, IReadOnlyList<IReadOnlyList<Vec2>> holes)
    {
        var ring = Turned(outline, left: true);
        var loops = holes.Where(h => h.Count >= 3).Select(h => FromLeftmost(Turned(h, left: false))).ToList();
        loops.Sort((a, b) => a[0].X.CompareTo(b[0].X) is var c && c != 0 ? c : a[0].Y.CompareTo(b[0].Y));
        foreach (var loop in loops)
        {
            var at = Visible(ring, loop[0]);
            if (at < 0)
            {
                return null;
            }

            loop.Add(loop[0]);
            loop.Add(ring[at]);
            ring.InsertRange(at + 1, loop);
        }

        return ring;
    }

    /// <summary>Twice the signed area.</summary>
    public static double Area2(IReadOnlyList<Vec2> points)
    {
        var sum = 0.0;
        for (var (i, j) = (0, points.Count - 1); i < points.Count; j = i++)
        {
            sum += points[j].Cross(points[i]);
        }

        return sum;
    }

    private static List<Vec2> Turned(IReadOnlyList<Vec2> points, bool left)
    {
        List<Vec2> turned = [.. points];
        if (Area2(points) > 0 != left)
        {
            turned.Reverse();
        }

        return turned;
    }

    private static List<Vec2> FromLeftmost(List<Vec2> loop)
    {
        var first = 0;
        for (var i = 1; i < loop.Count; i++)
        {
            if (loop[i].X < loop[first].X || (loop[i].X == loop[first].X && loop[i].Y < loop[first].Y))
            {
                first = i;
            }
        }

        return [.. loop[first..], .. loop[..first]];
    }

    private static int Visible(List<Vec2> ring, Vec2 h)
    {
        var (found, hit) = (-1, double.NegativeInfinity);
        for (var (i, j) = (0, ring.Count - 1); i < ring.Count; j = i++)
        {
            // Metal lies to the left of the ring: an edge that bounds it on the left of a point runs down.
            var (p, q) = (ring[j], ring[i]);
            if (h.Y > p.Y || h.Y < q.Y || p.Y == q.Y)
            {
                continue;
            }

            var x = p.X + ((h.Y - p.Y) * (q.X - p.X) / (q.Y - p.Y));
            if (x <= h.X && x > hit)
            {
                (hit, found) = (x, p.X < q.X ? j : i);
            }
        }

        if (found < 0)
        {
            return -1;
        }

        var m = ring[found];
        var meet = new Vec2(hit, h.Y);
        var least = double.PositiveInfinity;
        for (var i = 0; i < ring.Count; i++)
        {
            var p = ring[i];
            if (p.X > h.X || p.X < m.X || p.X == h.X || !InTriangle(h, meet, m, p) || !Faces(ring, i, h))
            {
                continue;
            }

            var angle = Math.Abs(h.Y - p.Y) / (h.X - p.X);
            if (angle < least || (angle == least && p.X > ring[found].X))
            {
                (least, found) = (angle, i);
            }
        }

        return found;
    }

    private static bool InTriangle(Vec2 a, Vec2 b, Vec2 c, Vec2 p)
    {
        var (u, v, w) = ((b - a).Cross(p - a), (c - b).Cross(p - b), (a - c).Cross(p - c));
        return (u >= 0 && v >= 0 && w >= 0) || (u <= 0 && v <= 0 && w <= 0);
    }

    /// <summary>Whether a point is seen from a corner of the ring through the metal beside that corner.</summary>
    private static bool Faces(List<Vec2> ring, int at, Vec2 to)
    {
        var (before, here, after) = (ring[(at + ring.Count - 1) % ring.Count], ring[at], ring[(at + 1) % ring.Count]);
        var leftOfIn = (here - before).Cross(to - here) > 0;
        var leftOfOut = (after - here).Cross(to - here) > 0;
        return (here - before).Cross(after - here) > 0 ? leftOfIn && leftOfOut : leftOfIn || leftOfOut;
    }
}
