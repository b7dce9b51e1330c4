using System.Globalization;

namespace Lampwright.Metal;

/// <summary>The free straight edges of the folded part.</summary>
internal static class FoldEdges
{
    public static List<FoldedEdge> Of(PartSpec spec, BlankWalk walk)
    {
        var edges = new List<FoldedEdge>(walk.FreeRuns.Count);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (panel, edge, from, to) in walk.FreeRuns)
        {
            var id = $"{spec.Name}.{panel.Id}.{edge.Id}";
            var n = seen[id] = seen.GetValueOrDefault(id) + 1;
            var outward = -(to - from).Unit.Left;
            edges.Add(
                new(
                    n == 1 ? id : string.Create(CultureInfo.InvariantCulture, $"{id}/{n}"),
                    panel.Frame.Out(new(from.X, from.Y, 0)),
                    panel.Frame.Out(new(to.X, to.Y, 0)),
                    panel.Frame.Direction(new(outward.X, outward.Y, 0)),
                    panel.Frame.Z
                )
            );
        }

        return edges;
    }
}
