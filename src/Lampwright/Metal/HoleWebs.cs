using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Finds thin webs between the holes of one flat by sweeping along x; cost grows with the holes, not with their pairs.</summary>
internal static class HoleWebs
{
    public static void Take(List<PlacedHole> holes, double near, Dictionary<HoleSpec, HoleDistances> worst)
    {
        var boxes = holes.ConvertAll(h => (Hole: h, h.Outline.Box));
        boxes.Sort((a, b) => a.Box.Least.X.CompareTo(b.Box.Least.X));
        var open = new List<(PlacedHole Hole, (Vec2 Least, Vec2 Most) Box)>();
        foreach (var box in boxes)
        {
            open.RemoveAll(o => o.Box.Most.X + near < box.Box.Least.X);
            foreach (var other in open)
            {
                if (other.Box.Least.Y - near > box.Box.Most.Y || other.Box.Most.Y + near < box.Box.Least.Y)
                {
                    continue;
                }

                var web = Web(box.Hole, other.Hole);
                worst[box.Hole.Spec].TakeWeb(web, box.Hole, other.Hole);
                if (box.Hole.Spec != other.Hole.Spec)
                {
                    worst[other.Hole.Spec].TakeWeb(web, other.Hole, box.Hole);
                }
            }

            open.Add(box);
        }
    }

    /// <summary>Metal between two holes; negative where they overlap.</summary>
    private static double Web(PlacedHole a, PlacedHole b)
    {
        if (a.DiameterM > 0 && b.DiameterM > 0)
        {
            return (a.Centre - b.Centre).Length - ((a.DiameterM + b.DiameterM) / 2);
        }

        var (p, q) = (a.Outline.Points(1e-5), b.Outline.Points(1e-5));
        if (Contains(p, q[0]) || Contains(q, p[0]))
        {
            return -1;
        }

        var least = double.PositiveInfinity;
        for (var i = 0; i < p.Count; i++)
        {
            var (a0, a1) = (p[i], p[(i + 1) % p.Count]);
            for (var j = 0; j < q.Count; j++)
            {
                var (b0, b1) = (q[j], q[(j + 1) % q.Count]);
                if (Polygon2.Cross(a0, a1, b0, b1))
                {
                    return -1;
                }

                least = Math.Min(least, Math.Min(FlatRim.Apart(a0, b0, b1), FlatRim.Apart(b0, a0, a1)));
            }
        }

        return least;
    }

    private static bool Contains(IReadOnlyList<Vec2> polygon, Vec2 p) => Polygon2.Contains(polygon, p);
}
