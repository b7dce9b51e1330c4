using Lampwright.Geometry.Fields;

namespace Lampwright.Metal.Fields;

/// <summary>Finds thin webs between the holes of one flat: discs round the holes first, the shapes of those that come near after.</summary>
internal static class HoleWebs
{
    public static void Take(List<HoleCore> holes, double near, Dictionary<HoleSpec, HoleDistances> worst)
    {
        var (x, y, around) = (new double[holes.Count], new double[holes.Count], new double[holes.Count]);
        for (var i = 0; i < holes.Count; i++)
        {
            (x[i], y[i], around[i]) = (holes[i].Middle.X, holes[i].Middle.Y, holes[i].Around);
        }

        var pairs = DiscGrid.Near(x, y, around, near);
        pairs.Sort((p, q) => p.First != q.First ? p.First.CompareTo(q.First) : p.Second.CompareTo(q.Second));
        foreach (var pair in pairs)
        {
            var (a, b) = (holes[pair.First], holes[pair.Second]);
            var web = a.From(b);
            if (web >= near)
            {
                continue;
            }

            worst[a.Hole.Spec].TakeWeb(web, a.Hole, b.Hole);
            if (a.Hole.Spec != b.Hole.Spec)
            {
                worst[b.Hole.Spec].TakeWeb(web, b.Hole, a.Hole);
            }
        }
    }
}
