using Lampwright.Findings;
using Lampwright.Metal.Fields;

namespace Lampwright.Metal;

/// <summary>Holds holes against bends, edges and each other; one finding per hole of the design, for its worst member.</summary>
internal static class HoleChecks
{
    public static void Check(PartSpec spec, List<PlacedHole> holes, List<Finding> findings)
    {
        var worst = new Dictionary<HoleSpec, HoleDistances>(ReferenceEqualityComparer.Instance);
        foreach (var group in holes.GroupBy(h => h.Panel))
        {
            List<HoleCore> cores = [.. group.Select(HoleCore.Of)];
            var rim = new FlatRim(group.Key, cores.Count);
            var within = Reach(spec, rim.LargestRadius);
            foreach (var core in cores)
            {
                if (!worst.TryGetValue(core.Hole.Spec, out var distances))
                {
                    worst[core.Hole.Spec] = distances = new();
                }

                distances.Take(core.Hole, rim.Distances(core, within));
            }

            HoleWebs.Take(cores, spec.Limits.WebM ?? spec.Sheet.ThicknessM, worst);
        }

        foreach (var (hole, distances) in worst)
        {
            Report(spec, hole, distances, findings);
        }
    }

    /// <summary>Beyond this no rule asks how far an edge or a bend is.</summary>
    private static double Reach(PartSpec spec, double bendRadius)
    {
        var (t, limits) = (spec.Sheet.ThicknessM, spec.Limits);
        var toBend = Math.Max(
            limits.HoleToBendM ?? ((2 * t) + bendRadius),
            limits.LargeHoleToBendM ?? ((2.5 * t) + bendRadius)
        );
        return Math.Max(toBend, Math.Max(limits.HoleToEdgeLeastM ?? t, limits.HoleToEdgeM ?? (2 * t)));
    }

    private static void Report(PartSpec spec, HoleSpec hole, HoleDistances seen, List<Finding> findings)
    {
        var (path, t, limits) = ($"part.{spec.Name}.hole.{hole.Id}", spec.Sheet.ThicknessM, spec.Limits);
        Finding Said(Rule rule, string at, string what, double observed, double limit) =>
            rule.At(
                path,
                $"Hole {hole.Id}{at} in {hole.On} {what} {Mm.Of(observed)}; {Mm.Of(limit)} is wanted.",
                Mm.Of(observed),
                Mm.Of(limit)
            );

        if (seen.Bend.Distance < -1e-9 && seen.Edge.Distance >= -1e-9)
        {
            findings.Add(
                MetalRules
                    .HoleInBend.At(
                        path + ".at",
                        $"Hole {hole.Id}{seen.Bend.Member} reaches {Mm.Of(-seen.Bend.Distance)} into {(seen.AtBend?.Panel.Rounded.Count > 0 ? "a round corner" : "a bend")} of {hole.On}{Place(seen.AtBend)}."
                    )
                    .On(spec, seen.AtBend)
            );
            return;
        }

        if (seen.Outside is { } outside && InBendOf(outside) is { } flange)
        {
            findings.Add(
                MetalRules
                    .HoleInBend.At(
                        path + ".at",
                        $"Hole {hole.Id}{outside.Member} lies in the bend of {flange}{Place(outside)}."
                    )
                    .On(spec, outside)
            );
            return;
        }

        if (seen.Outside is not null || seen.Edge.Distance < -1e-9)
        {
            findings.Add(
                MetalRules
                    .HoleOutside.At(
                        path + ".at",
                        seen.Outside is { } lost
                            ? $"Hole {hole.Id}{lost.Member} does not lie inside {hole.On}{Place(lost)}."
                            : $"Hole {hole.Id}{seen.Edge.Member} does not lie inside {hole.On}: it reaches {Mm.Of(-seen.Edge.Distance)} past an edge{Place(seen.AtEdge)}."
                    )
                    .On(spec, seen.Outside ?? seen.AtEdge)
            );
            return;
        }

        var large = hole.Shape.Kind != HoleShapeKind.Round || hole.Shape.DiameterM > limits.LargeHoleThicknesses * t;
        var toBend =
            (large ? limits.LargeHoleToBendM : limits.HoleToBendM) ?? (((large ? 2.5 : 2) * t) + seen.BendRadius);
        if (seen.Bend.Distance < toBend - 1e-9)
        {
            findings.Add(
                Said(
                        MetalRules.HoleNearBend,
                        seen.Bend.Member,
                        "lies beside a bend's tangent by",
                        seen.Bend.Distance,
                        toBend
                    )
                    .Beside(spec, seen.AtBend, bend: true)
            );
        }

        var (least, good) = (limits.HoleToEdgeLeastM ?? t, limits.HoleToEdgeM ?? (2 * t));
        if (seen.Edge.Distance < least - 1e-9)
        {
            findings.Add(
                Said(MetalRules.HoleAtEdge, seen.Edge.Member, "leaves metal to an edge of", seen.Edge.Distance, least)
                    .Beside(spec, seen.AtEdge, bend: false)
            );
        }
        else if (seen.Edge.Distance < good - 1e-9)
        {
            findings.Add(
                Said(MetalRules.HoleNearEdge, seen.Edge.Member, "leaves metal to an edge of", seen.Edge.Distance, good)
                    .Beside(spec, seen.AtEdge, bend: false)
            );
        }

        if (seen.Web.Distance < 0)
        {
            findings.Add(
                MetalRules
                    .HolesOverlap.At(path, $"Hole {hole.Id}{seen.Web.Member} runs into {seen.WebWith}.")
                    .On(spec, seen.WebHoles.Own)
            );
        }
        else if (seen.Web.Distance < (limits.WebM ?? t) - 1e-9)
        {
            findings.Add(
                Said(
                        MetalRules.ThinWeb,
                        seen.Web.Member,
                        $"leaves a web to {seen.WebWith} of",
                        seen.Web.Distance,
                        limits.WebM ?? t
                    )
                    .Between(spec, seen.WebHoles.Own, seen.WebHoles.Other)
            );
        }

        var smallest = Math.Min(hole.Shape.LengthM, hole.Shape.WidthM);
        if (smallest < (limits.LeastHoleM ?? t) - 1e-9)
        {
            findings.Add(
                Said(MetalRules.SmallHole, "", "measures", smallest, limits.LeastHoleM ?? t).On(spec, seen.First)
            );
        }
    }

    /// <summary>Where a hole lies, in words for a finding.</summary>
    private static string Place(PlacedHole? hole) =>
        hole is null ? "" : $" (centre at {Mm.Of(hole.Centre.X)}, {Mm.Of(hole.Centre.Y)})";

    /// <summary>The flange in whose bend the centre of a hole lies, on either side of its flat; null where in none.</summary>
    private static string? InBendOf(PlacedHole hole)
    {
        var (panel, p) = (hole.Panel, hole.Centre);
        foreach (var edge in panel.Edges)
        {
            foreach (var child in edge.Flanges)
            {
                var beside = p - child.RootStart;
                var (x, v) = (-beside.Dot(edge.Along), beside.Dot(edge.Outward) + child.Bend!.SetbackM);
                if (x >= 0 && x <= child.RootLength && v >= 0 && v <= child.Bend.AllowanceM)
                {
                    return child.Id;
                }
            }
        }

        if (!panel.IsFlange)
        {
            return null;
        }

        var before = panel.Bend!.SetbackM - p.Y;
        return p.X >= 0 && p.X <= panel.RootLength && before >= 0 && before <= panel.Bend.AllowanceM ? panel.Id : null;
    }
}
