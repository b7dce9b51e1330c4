using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Where the tangent of a bend leaves the flat through the free edges beside it.</summary>
internal static class EdgeCrossing
{
    /// <summary>
    /// The first crossing of a line with the edges from a corner on, forward or backward; the edges before it are marked as consumed and
    /// the edge found is cut there. Null when a bent edge or nothing is met.
    /// </summary>
    public static Vec2? Along(Panel panel, int first, bool forward, Line2 line)
    {
        var n = panel.Edges.Length;
        for (var step = 0; step < n - 1; step++)
        {
            var at = forward ? (first + step) % n : (first - step + n) % n;
            var edge = panel.Edges[at];
            if (panel.IsFlange && at == 0)
            {
                return null;
            }

            if (Crossing(edge, line, forward) is { } point && !Blocked(edge, point, forward))
            {
                for (var used = 0; used < step; used++)
                {
                    panel.Edges[forward ? (first + used) % n : (first - used + n) % n].Consumed = true;
                }

                if (forward)
                {
                    edge.Begin = point;
                }
                else
                {
                    edge.End = point;
                }

                return point;
            }

            if (edge.Flanges.Count > 0)
            {
                return null;
            }
        }

        return null;
    }

    /// <summary>A flange that stands between the corner and the crossing.</summary>
    private static bool Blocked(PanelEdge edge, Vec2 point, bool forward)
    {
        if (edge.Flanges.Count == 0)
        {
            return false;
        }

        var s = (point - edge.From).Dot(edge.Along);
        return forward ? edge.Flanges[0].EdgeFrom < s - 1e-9 : edge.Flanges[^1].EdgeTo > s + 1e-9;
    }

    private static Vec2? Crossing(PanelEdge edge, Line2 line, bool forward)
    {
        var (a, b) = (edge.FreeFrom, edge.FreeTo);
        if (edge.IsStraight)
        {
            var (da, db) = (line.LeftOf(a), line.LeftOf(b));
            var goesIn = forward ? da <= 1e-12 && db > 1e-9 : db <= 1e-12 && da > 1e-9;
            return goesIn ? a + ((b - a) * (da / (da - db))) : null;
        }

        var outline = new Outline([new(a, edge.Bulge), new(b)]);
        var (centre, radius) = outline.Arc(0);
        var off = line.LeftOf(centre);
        if (Math.Abs(off) >= radius)
        {
            return null;
        }

        var foot = centre - (line.Direction.Left * off);
        var half = line.Direction * Math.Sqrt((radius * radius) - (off * off));
        Vec2? best = null;
        var bestAt = double.PositiveInfinity;
        foreach (var point in new[] { foot + half, foot - half })
        {
            var share = ArcTrim.Share(edge, point);
            var along = forward ? share : 1 - share;
            if (share is >= 0 and <= 1 && along < bestAt)
            {
                (best, bestAt) = (point, along);
            }
        }

        return best;
    }
}
