using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Looks whether the blank lies flat without overlapping and the folded flats keep out of each other.</summary>
internal static class FoldChecks
{
    public static void Check(
        PartSpec spec,
        List<Panel> panels,
        List<PlacedHole> holes,
        Blank blank,
        Vec2 shift,
        FoldedPart folded,
        List<Finding> findings
    )
    {
        Flat(spec, panels, blank, shift, findings);
        var plates = panels.ConvertAll(p => new Plate(p, spec.Sheet.ThicknessM, holes));
        for (var i = 0; i < plates.Count; i++)
        {
            for (var j = i + 1; j < plates.Count; j++)
            {
                if (panels[j].Parent == panels[i] || panels[i].Parent == panels[j])
                {
                    continue;
                }

                if (plates[i].Depth(plates[j], spec.Sheet.ThicknessM) is var depth and > 0)
                {
                    findings.Add(
                        MetalRules
                            .FoldCollides.At(
                                SheetPart.PathOf(spec, panels[j]),
                                $"When folded, {panels[j].Id} and {panels[i].Id} cut through each other over {Mm.Of(depth)}.",
                                Mm.Of(depth)
                            )
                            .Through(spec, panels[j], panels[i])
                    );
                }
            }
        }

        Corners(spec, panels, findings);
        Seams(spec, panels, folded, findings);
    }

    private static void Flat(PartSpec spec, List<Panel> panels, Blank blank, Vec2 shift, List<Finding> findings)
    {
        var crossing = Polygon2.SelfCrossing(blank.Outline.Points(1e-5));
        var overlaps = crossing is not null;

        // The blank is finished already, places are not yet: they are carried into it together later on.
        var place = crossing is { } cross ? cross - shift : default;
        if (!overlaps)
        {
            var flats = panels.ConvertAll(p => p.InBlank.Out(new Outline(p.Flat)));
            var polygons = flats.ConvertAll(f => f.Points(1e-4));
            for (var i = 0; i < panels.Count && !overlaps; i++)
            {
                var middle = flats[i].Centroid;
                overlaps = polygons
                    .Where(
                        (polygon, j) =>
                            j != i && Polygon2.Contains(polygons[i], middle) && Polygon2.Contains(polygon, middle)
                    )
                    .Any();
                place = overlaps ? middle : place;
            }
        }

        if (overlaps)
        {
            findings.Add(
                MetalRules
                    .BlankOverlaps.At(
                        $"part.{spec.Name}",
                        $"Laid flat, the flanges of {spec.Name} overlap each other"
                            + (
                                crossing is { } at
                                    ? $"; outlines cross at {Mm.Of(at.X)}, {Mm.Of(at.Y)} of the blank."
                                    : "."
                            )
                    )
                    .On(spec, panels[0], place)
            );
        }
    }

    /// <summary>Square-notched neighbours of small radius or high K press on each other at the corner.</summary>
    private static void Corners(PartSpec spec, List<Panel> panels, List<Finding> findings)
    {
        var worst = 0.0;
        Panel? at = null;
        foreach (var panel in panels.Where(p => p.IsFlange && p.Start.Kind == SideKind.Shared))
        {
            var edges = panel.Parent!.Edges;
            var next = edges[(Array.IndexOf(edges, panel.OnEdge) + 1) % edges.Length];
            if (next.Flanges.Count == 0)
            {
                continue;
            }

            var other = next.Flanges[0];
            var upright =
                Math.Abs(panel.Bend!.AngleRad - (Math.PI / 2)) < 0.1
                && Math.Abs(other.Bend!.AngleRad - (Math.PI / 2)) < 0.1;
            var room = Math.Max(
                panel.Start.FlatU + (panel.Spec!.StartOffsetM ?? 0),
                other.End.FlatU + (other.Spec!.EndOffsetM ?? 0)
            );
            var overlap = spec.Sheet.ThicknessM - room;
            if (upright && panel.SignedAngle * other.SignedAngle > 0 && overlap > worst)
            {
                (worst, at) = (overlap, panel);
            }
        }

        if (at is not null && worst > CornerSlackM)
        {
            findings.Add(
                MetalRules
                    .CornerTouches.At(
                        SheetPart.PathOf(spec, at),
                        $"At the start of {at.Id} the corner edges of the flanges press on each other by {Mm.Of(worst)}.",
                        Mm.Of(worst),
                        Mm.Of(CornerSlackM)
                    )
                    .On(spec, at.Parent!, at.RootStart)
            );
        }
    }

    /// <summary>What a hand brake's scatter hides (common practice, no source).</summary>
    private static double CornerSlackM => 0.0001;

    private static void Seams(PartSpec spec, List<Panel> panels, FoldedPart folded, List<Finding> findings)
    {
        foreach (var seam in spec.Seams)
        {
            var (a, b) = (Find(folded, seam.EdgeA), Find(folded, seam.EdgeB));
            var path = $"part.{spec.Name}.seam.{seam.Id}";
            if (a is null || b is null)
            {
                findings.Add(
                    MetalRules.SeamOpen.At(
                        path,
                        $"Seam {seam.Id} names {(a is null ? seam.EdgeA : seam.EdgeB)}, which is not a free edge."
                    )
                );
                continue;
            }

            // Outside skins of a closed corner lie up to a bend's width apart; what is farther apart does not meet.
            var shorter = a.LengthM < b.LengthM ? a : b;
            var longer = shorter == a ? b : a;
            var apart = Math.Max(Apart(shorter.A, longer), Apart(shorter.B, longer));
            var limit = (2 * (spec.Sheet.ThicknessM + spec.Sheet.InsideRadiusM)) + seam.GapM;
            if (apart > limit)
            {
                findings.Add(
                    MetalRules
                        .SeamOpen.At(
                            path,
                            $"Edges {seam.EdgeA} and {seam.EdgeB} stand {Mm.Of(apart)} apart when folded.",
                            Mm.Of(apart),
                            Mm.Of(limit)
                        )
                        .OnEdge(spec, panels, seam.EdgeA)
                );
            }
        }
    }

    private static FoldedEdge? Find(FoldedPart folded, string edge) =>
        folded.Edges.FirstOrDefault(e => string.Equals(e.Id, $"{folded.Name}.{edge}", StringComparison.Ordinal));

    private static double Apart(Vec3 p, FoldedEdge edge)
    {
        var d = edge.B - edge.A;
        var share = Math.Clamp((p - edge.A).Dot(d) / d.Dot(d), 0, 1);
        return (p - (edge.A + (d * share))).Length;
    }
}
