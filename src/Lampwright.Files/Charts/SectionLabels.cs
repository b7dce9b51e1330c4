using Lampwright.Evaluation.Answers;
using Lampwright.Geometry;

namespace Lampwright.Files.Charts;

/// <summary>One temperature that is written beside a section.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Node">Its node; null for a thing without a temperature, such as the fan.</param>
/// <param name="Text">The temperature, with its unit; empty without one.</param>
/// <param name="Over">Its limit, where it is passed; else empty.</param>
/// <param name="At">Where in the section, mm.</param>
/// <param name="Number">Its number in the picture and in the list.</param>
internal sealed record SectionLabel(string Name, BoxNode? Node, string Text, string Over, Vec2 At, int Number)
{
    /// <summary>All labels of a cut, from above downwards; each temperature once, at the largest piece that has it.</summary>
    public static IReadOnlyList<SectionLabel> Of(SectionCut cut, BoxScene scene, TemperatureUnit unit)
    {
        var nodes = scene.Nodes.ToDictionary(n => n.Name, StringComparer.Ordinal);
        var places = cut
            .Pieces.Where(p => p.Node is not null || p.Id.StartsWith("fan.", StringComparison.Ordinal))
            .Where(p => p.Kind != SectionKind.LightWay)
            .GroupBy(p => p.Node ?? p.Id, StringComparer.Ordinal)
            .Select(g => (Key: g.Key, Piece: g.OrderBy(p => p.IsBeside).ThenByDescending(Largest).First()))
            .Select(g => (g.Key, At: Anchor(g.Piece, cut)))
            .OrderByDescending(g => g.At.Y)
            .ThenBy(g => g.At.X);
        return
        [
            .. places.Select(
                (g, i) =>
                {
                    var node = nodes.GetValueOrDefault(g.Key);
                    var over =
                        node is { LimitC: { } limit } && node.TemperatureC.Value > limit
                            ? $"over {ChartText.Fixed(unit.From(limit), 0)}"
                            : "";
                    var text = node is null
                        ? ""
                        : $"{ChartText.Fixed(unit.From(node.TemperatureC.Value), 0)} {unit.Sign}";
                    return new SectionLabel(HeatText.PlaceName(g.Key), node, text, over, g.At, i + 1);
                }
            ),
        ];
    }

    private static double Largest(SectionPiece piece) => piece.Outlines.Max(Size);

    // Area first; among sheets of one thickness that is length.
    private static double Size(IReadOnlyList<Vec2> outline) => Area(outline) + (1e-3 * Reach(outline));

    // In air the label points beside what stands in it: a corner of the room, not its middle.
    private static Vec2 Anchor(SectionPiece piece, SectionCut cut)
    {
        var outline = piece.Outlines.MaxBy(Size)!;
        var middle = outline.Aggregate(default(Vec2), (sum, p) => sum + p) / outline.Count;
        if (piece.Kind != SectionKind.Air)
        {
            return middle;
        }

        var others = cut
            .Pieces.Where(p => p.Kind is SectionKind.Body or SectionKind.LightWay)
            .SelectMany(p => p.Outlines)
            .ToList();
        return outline
                .SelectMany(p => new[] { 0.2, 0.35, 0.5, 0.65, 0.8 }.Select(t => middle + ((p - middle) * t)))
                .Append(middle)
                .OrderBy(p => (p - middle).Length)
                .Select(p => (Vec2?)p)
                .FirstOrDefault(p => others.All(o => !Polygon2.Contains(o, p!.Value)))
            ?? middle;
    }

    private static double Area(IReadOnlyList<Vec2> o) =>
        Math.Abs(Enumerable.Range(0, o.Count).Sum(i => o[i].Cross(o[(i + 1) % o.Count]))) / 2;

    private static double Reach(IReadOnlyList<Vec2> o) => o.Max(p => (p - o[0]).Length);
}
