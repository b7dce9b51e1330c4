using Lampwright.Design;
using Lampwright.Evaluation.Metalwork;

namespace Lampwright.Evaluation.Maps;

/// <summary>Finds the openings of folded parts that a fan's air passes, with their open areas.</summary>
internal static class AirOpenings
{
    /// <summary>One opening for each id in a fan's way that names a hole of a part.</summary>
    public static IReadOnlyList<AirOpening> Of(LightDesign design, IReadOnlyList<MadePart> parts)
    {
        var openings = new List<AirOpening>();
        foreach (var id in design.Fans.SelectMany(f => f.Air).Distinct(StringComparer.Ordinal))
        {
            var dot = id.IndexOf('.', StringComparison.Ordinal);
            if (
                dot < 0
                || parts.FirstOrDefault(p => p.Name == id[..dot]) is not { } part
                || design.Parts.First(p => p.Name == part.Name).Holes.FirstOrDefault(h => h.Id == id[(dot + 1)..])
                    is not { } hole
            )
            {
                continue;
            }

            var members = part.Blank.Holes.Where(h => h.Hole == hole.Id).ToList();
            var open = members.Sum(h => h.Outline.Area);
            var field = hole.Layout as FieldLayout;
            openings.Add(
                new(
                    id,
                    $"part.{part.Name}.hole.{hole.Id}",
                    open,
                    field is null ? 0 : field.Within.Width.Nominal * field.Within.Height.Nominal,
                    members.Count == 0 ? 0 : members[0].DiameterM
                )
            );
        }

        return openings;
    }
}
