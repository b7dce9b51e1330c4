using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Holds a part against hands: those that make it with drill and file, those that touch it, and those that reach into it.</summary>
internal static class HandChecks
{
    public static void Check(
        PartSpec spec,
        List<Panel> panels,
        List<PlacedHole> holes,
        FoldedPart folded,
        List<Finding> findings
    )
    {
        foreach (var first in holes.DistinctBy(h => h.Spec, ReferenceEqualityComparer.Instance))
        {
            Make(spec, first, findings);
            Reach(spec, first, findings);
        }

        Edges(spec, panels, folded, findings);
    }

    private static void Make(PartSpec spec, PlacedHole first, List<Finding> findings)
    {
        var hole = first.Spec;
        var (path, limits, t) = ($"part.{spec.Name}.hole.{hole.Id}", spec.Limits, spec.Sheet.ThicknessM);
        var least = Math.Min(hole.Shape.LengthM, hole.Shape.WidthM);
        var round = hole.Shape.Kind == HoleShapeKind.Round;
        var (limit, tool) = round ? (limits.LeastDrillM, "a drill held by hand") : (limits.LeastFileM, "a file");
        if (least < limit - 1e-9)
        {
            findings.Add(
                MetalRules
                    .NotByHand.At(
                        path,
                        $"Hole {hole.Id} is {Mm.Of(least)} {(round ? "across" : "wide")}; {tool} wants {Mm.Of(limit)}.",
                        Mm.Of(least),
                        Mm.Of(limit)
                    )
                    .On(spec, first)
            );
        }
        else if (
            round
            && least > limits.TwistDrillM + 1e-9
            && least <= limits.StepDrillM + 1e-9
            && t > limits.StepM + 1e-9
        )
        {
            findings.Add(
                MetalRules
                    .NotByHand.At(
                        path,
                        $"Hole {hole.Id} of {Mm.Of(least)} asks for a step drill, whose steps are {Mm.Of(limits.StepM)} high; the sheet is {Mm.Of(t)} thick.",
                        Mm.Of(t),
                        Mm.Of(limits.StepM)
                    )
                    .On(spec, first)
            );
        }
    }

    private static void Reach(PartSpec spec, PlacedHole first, List<Finding> findings)
    {
        var hole = first.Spec;

        // What stands in an opening closes it, unless the maker says at the hole itself what lies behind.
        if ((hole.LiveBehindM ?? (hole.IsFilled ? null : spec.LiveBehindM)) is not { } live)
        {
            return;
        }

        var path = $"part.{spec.Name}.hole.{hole.Id}";
        var (finger, wire) = (ProbeReach.Finger(hole.Shape), ProbeReach.Wire(hole.Shape));
        if (finger > live + 1e-9)
        {
            findings.Add(
                MetalRules
                    .FingerReachesLive.At(
                        path,
                        $"Through {hole.Id} a finger reaches {Mm.Of(finger)}; live parts are {Mm.Of(live)} behind it.",
                        Mm.Of(live),
                        Mm.Of(finger)
                    )
                    .On(spec, first)
            );
        }
        else if (wire > live + 1e-9)
        {
            findings.Add(
                MetalRules
                    .WireReachesLive.At(
                        path,
                        $"Through {hole.Id} a wire of 1 mm reaches {Mm.Of(wire)}; live parts are {Mm.Of(live)} behind it.",
                        Mm.Of(live),
                        Mm.Of(wire)
                    )
                    .On(spec, first)
            );
        }
    }

    /// <summary>Edges where hands go are folded over, or said to be sharp.</summary>
    private static void Edges(PartSpec spec, List<Panel> panels, FoldedPart folded, List<Finding> findings)
    {
        foreach (var edge in spec.HandEdges)
        {
            var dot = edge.IndexOf('.', StringComparison.Ordinal);
            var (flat, name) = (edge[..Math.Max(0, dot)], edge[(dot + 1)..]);
            var bent =
                panels
                    .Find(p => string.Equals(p.Id, flat, StringComparison.Ordinal))
                    ?.Edges.FirstOrDefault(e => string.Equals(e.Id, name, StringComparison.Ordinal))
                    ?.Flanges.Count > 0;
            if (bent == true)
            {
                continue;
            }

            var free = folded
                .Edges.Where(e => string.Equals(e.Id.Split('/')[0], $"{spec.Name}.{edge}", StringComparison.Ordinal))
                .ToList();
            findings.Add(
                free.Count == 0
                    ? MetalRules.UnknownEdge.At($"part.{spec.Name}.hands", $"The part has no edge {edge}.")
                    : MetalRules
                        .SharpEdge.At(
                            $"part.{spec.Name}.hands",
                            string.Create(
                                CultureInfo.InvariantCulture,
                                $"Hands go to {edge}, a cut edge of {Mm.Of(spec.Sheet.ThicknessM)} sheet and {Mm.Of(free.Sum(e => (e.B - e.A).Length))} long."
                            )
                        )
                        .OnEdge(spec, panels, edge)
            );
        }
    }
}
