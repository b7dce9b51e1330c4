using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Metal.Fields;

/// <summary>Leaves out the holes of perforated fields that come nearer to an edge or bend than the field says.</summary>
/// <remarks>The rest keeps its places and names, so that rows stay straight across flats of any outline; cost in proportion to the holes.</remarks>
internal static class FieldEdges
{
    /// <summary>The holes that stay; a field that lost some is told once with their number.</summary>
    public static List<PlacedHole> Keep(PartSpec spec, List<PlacedHole> holes, List<Finding> findings)
    {
        if (!holes.Exists(h => h.Spec.Pattern?.EdgeM is not null))
        {
            return holes;
        }

        var rims = new Dictionary<Panel, FlatRim>(ReferenceEqualityComparer.Instance);
        var kept = new List<PlacedHole>(holes.Count);
        var fields = new Dictionary<HoleSpec, (int All, int Left)>(ReferenceEqualityComparer.Instance);
        foreach (var hole in holes)
        {
            if (hole.Spec.Pattern is not { EdgeM: { } edge } pattern)
            {
                kept.Add(hole);
                continue;
            }

            var stays = pattern.Kept?.Contains(hole.Member) ?? Clears(rims, hole, edge, holes.Count);
            var (all, left) = fields.GetValueOrDefault(hole.Spec);
            fields[hole.Spec] = (all + 1, left + (stays ? 0 : 1));
            if (stays)
            {
                kept.Add(hole);
            }
        }

        foreach (var (field, (all, left)) in fields.Where(f => f.Value.Left > 0))
        {
            var edge = Mm.Of(field.Pattern!.EdgeM!.Value);
            findings.Add(
                MetalRules.FieldLosesHoles.At(
                    $"part.{spec.Name}.hole.{field.Id}.field",
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{left} of {all} holes of field {field.Id} in {field.On} come nearer than {edge} to an edge or bend and are left out; {all - left} stay."
                    ),
                    string.Create(CultureInfo.InvariantCulture, $"{all - left}"),
                    string.Create(CultureInfo.InvariantCulture, $"{all}")
                )
            );
        }

        return kept;
    }

    /// <summary>
    /// The part with its fields fixed to the holes that they keep now: a slope across a thickness at which a row comes or goes would say nothing.
    /// </summary>
    public static PartSpec Settled(PartSpec spec)
    {
        if (spec.Holes.All(h => h.Pattern?.EdgeM is null) || SheetPart.Unchecked(spec).Blank is not { } blank)
        {
            return spec;
        }

        var members = blank
            .Holes.Where(h => h.Id.EndsWith(']'))
            .ToLookup(h => h.Hole, h => h.Id[h.Id.LastIndexOf('[')..], StringComparer.Ordinal);
        return spec with
        {
            Holes =
            [
                .. spec.Holes.Select(h =>
                    h.Pattern is { EdgeM: not null } field
                        ? h with
                        {
                            Pattern = field with { Kept = members[h.Id].ToHashSet(StringComparer.Ordinal) },
                        }
                        : h
                ),
            ],
        };
    }

    private static bool Clears(Dictionary<Panel, FlatRim> rims, PlacedHole hole, double edge, int count)
    {
        if (!rims.TryGetValue(hole.Panel, out var rim))
        {
            rims[hole.Panel] = rim = new(hole.Panel, count);
        }

        var (toEdge, toBend, _, inside) = rim.Distances(HoleCore.Of(hole), edge);
        return inside && Math.Min(toEdge, toBend) >= edge - 1e-9;
    }
}
