using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Builds the tree of flats with their nominal outlines, frames and places on the blank.</summary>
internal static class PanelTree
{
    /// <summary>The flats, parents before children; null when a stop finding was raised.</summary>
    /// <param name="spec">The part.</param>
    /// <param name="findings">Takes what there is to say.</param>
    /// <param name="made">Takes the flats that could be made, also where the whole could not; may be null.</param>
    public static List<Panel>? Build(PartSpec spec, List<Finding> findings, List<Panel>? made = null)
    {
        var order = Ordered(spec, findings);
        if (order is null)
        {
            return null;
        }

        var bends = new Dictionary<string, BendFigures>(StringComparer.Ordinal);
        foreach (var flange in order)
        {
            var radius = flange.InsideRadiusM ?? spec.Sheet.InsideRadiusM;
            bends[flange.Id] =
                flange.Making == FlangeMaking.Hem
                    ? Hem.Figures(spec.Sheet.ThicknessM, spec.Factors.Allowance)
                    : BendFigures.Of(
                        spec.Sheet.Rule,
                        Math.Abs(flange.AngleRad),
                        radius,
                        spec.Sheet.ThicknessM,
                        spec.Factors.Allowance
                    );
            if (!(bends[flange.Id].AllowanceM > 0))
            {
                findings.Add(
                    MetalRules.FlangeWithoutFlat.At(
                        SheetPart.PathOf(spec, flange),
                        $"The bend of {flange.Id} would take {Mm.Of(bends[flange.Id].AllowanceM)} of sheet; the strip or the radius is wrong."
                    )
                );
                return null;
            }
        }

        var face = new Panel { Id = "face", Nominal = OutsideFace(spec, order, bends) };
        face.Edges = EdgesOf(face.Nominal);
        var panels = made ?? [];
        panels.Add(face);
        var byId = new Dictionary<string, Panel>(StringComparer.Ordinal) { ["face"] = face };
        foreach (var flange in order)
        {
            var (on, edgeId) = EdgeName.Split(flange.OnEdge);
            var parent = byId[on];
            var edge = Array.Find(parent.Edges, e => string.Equals(e.Id, edgeId, StringComparison.Ordinal));
            if (edge is null || (parent.IsFlange && edge == parent.Edges[0]) || !edge.IsStraight)
            {
                findings.Add(
                    MetalRules.UnknownEdge.At(
                        SheetPart.PathOf(spec, flange) + ".on",
                        $"Flange {flange.Id} stands on {flange.OnEdge}, which is not a straight free edge of {on}; "
                            + $"there are {string.Join(", ", parent.Edges.Where((e, i) => e.IsStraight && (i > 0 || !parent.IsFlange)).Select(e => $"{on}.{e.Id}"))}."
                    )
                );
                return null;
            }

            var panel = Flange(spec, flange, parent, edge, bends, order, findings, panels.Count);
            if (panel is null)
            {
                return null;
            }

            panels.Add(panel);
            byId.Add(flange.Id, panel);
        }

        return Sort(spec, panels, findings) ? panels : null;
    }

    private static List<FlangeSpec>? Ordered(PartSpec spec, List<Finding> findings)
    {
        var known = new HashSet<string>(StringComparer.Ordinal) { "face" };
        var order = new List<FlangeSpec>(spec.Flanges.Count);
        var waiting = spec.Flanges.ToList();
        while (waiting.Count > 0)
        {
            var ready = waiting.Where(f => known.Contains(EdgeName.Split(f.OnEdge).On)).ToList();
            if (ready.Count == 0)
            {
                foreach (var lost in waiting)
                {
                    findings.Add(
                        MetalRules.UnknownEdge.At(
                            SheetPart.PathOf(spec, lost) + ".on",
                            $"Flange {lost.Id} stands on {lost.OnEdge}, but there is no face or flange of that name that leads back to the face."
                        )
                    );
                }

                return null;
            }

            foreach (var flange in ready)
            {
                if (!known.Add(flange.Id))
                {
                    findings.Add(
                        MetalRules.UnknownEdge.At(
                            SheetPart.PathOf(spec, flange),
                            $"There are two flanges called {flange.Id}."
                        )
                    );
                    return null;
                }

                order.Add(flange);
            }

            waiting.RemoveAll(f => order.Contains(f));
        }

        return order;
    }

    /// <summary>The outline of the face with every bent edge on its outside mould line.</summary>
    private static Corner[] OutsideFace(PartSpec spec, List<FlangeSpec> flanges, Dictionary<string, BendFigures> bends)
    {
        var corners = EdgeName.Named(spec.Face.Outline);
        if (spec.Face.Side == DimensionSide.Outside)
        {
            return corners;
        }

        var edges = EdgesOf(corners);
        var grow = new double[edges.Length];
        foreach (var flange in flanges)
        {
            var (on, id) = EdgeName.Split(flange.OnEdge);
            var at = string.Equals(on, "face", StringComparison.Ordinal)
                ? Array.FindIndex(edges, e => string.Equals(e.Id, id, StringComparison.Ordinal))
                : -1;
            if (at >= 0)
            {
                grow[at] = Math.Max(grow[at], bends[flange.Id].InsideToOutsideM);
            }
        }

        var moved = new Corner[corners.Length];
        for (var i = 0; i < corners.Length; i++)
        {
            var before = (i + corners.Length - 1) % corners.Length;
            var a = new Line2(edges[before].From, edges[before].Along).MovedLeft(-grow[before]);
            var b = new Line2(edges[i].From, edges[i].Along).MovedLeft(-grow[i]);
            var straight = edges[before].IsStraight && edges[i].IsStraight;
            var point =
                (straight ? a.Crossing(b) : null)
                ?? corners[i].Point
                    + (edges[before].Outward * (edges[before].IsStraight ? grow[before] : 0))
                    + (edges[i].Outward * (edges[i].IsStraight ? grow[i] : 0));
            moved[i] = corners[i] with { Point = point };
        }

        // The datum corner stays the zero of the frame: it is a corner of the outside.
        var shift = new Outline(corners).Box.Least - new Outline(moved).Box.Least;
        return [.. moved.Select(c => c with { Point = c.Point + shift })];
    }

    private static PanelEdge[] EdgesOf(Corner[] corners)
    {
        var edges = new PanelEdge[corners.Length];
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            edges[i] = new PanelEdge(a.Point, b.Point, a.Bulge, a.EdgeId);
        }

        return edges;
    }

    private static Panel? Flange(
        PartSpec spec,
        FlangeSpec flange,
        Panel parent,
        PanelEdge edge,
        Dictionary<string, BendFigures> bends,
        List<FlangeSpec> all,
        List<Finding> findings,
        int index
    )
    {
        var bend = bends[flange.Id];
        var (start, end) = (flange.StartOffsetM ?? 0, flange.EndOffsetM ?? 0);
        var length = edge.Length - start - end;
        var height = flange.HeightM;
        if (flange.Side == DimensionSide.Inside)
        {
            var far = flange.Id + ".far";
            height += bend.InsideToOutsideM;
            height += all.Where(f => string.Equals(f.OnEdge, far, StringComparison.Ordinal))
                .Select(f => bends[f.Id].InsideToOutsideM)
                .DefaultIfEmpty(0)
                .Max();
        }

        var (slopeStart, slopeEnd) = (Math.Tan(flange.StartAngleRad ?? 0), Math.Tan(flange.EndAngleRad ?? 0));
        var farLength = length - (height * (slopeStart + slopeEnd));
        if (!(height > bend.SetbackM) || !(length > 0) || !(farLength > 0))
        {
            findings.Add(
                MetalRules
                    .FlangeWithoutFlat.At(
                        SheetPart.PathOf(spec, flange),
                        $"Flange {flange.Id} is {Mm.Of(height)} high outside and {Mm.Of(length)} long, {Mm.Of(farLength)} at its far edge; "
                            + $"its bend alone takes {Mm.Of(bend.SetbackM)}.",
                        Mm.Of(Math.Min(height, Math.Min(length, farLength))),
                        Mm.Of(bend.SetbackM)
                    )
                    .On(spec, parent, edge.From, edge.To)
            );
            return null;
        }

        Corner[] nominal =
        [
            new(new(0, 0), 0, "root"),
            new(new(length, 0), 0, "end"),
            new(new(length - (height * slopeEnd), height), 0, "far"),
            new(new(height * slopeStart, height), 0, "start"),
        ];
        var panel = new Panel
        {
            Id = flange.Id,
            Spec = flange,
            Parent = parent,
            OnEdge = edge,
            Bend = bend,
            Nominal = nominal,
            Index = index,
            Height = height,
            RootLength = length,
            RootStart = edge.To - (edge.Along * start),
            Edges = EdgesOf(nominal),
        };
        Place(panel, spec.Sheet.ThicknessM);
        edge.Flanges.Add(panel);
        return panel;
    }

    /// <summary>Frames of the fold and of the blank: exact, from the nominal dimensions alone.</summary>
    private static void Place(Panel panel, double thickness)
    {
        var (edge, bend, parent) = (panel.OnEdge!, panel.Bend!, panel.Parent!);
        panel.InParent = new(panel.RootStart - (edge.Outward * bend.DeductionM), -edge.Along);
        panel.InBlank = parent.InBlank.Then(panel.InParent);

        var (sin, cos) = Math.SinCos(panel.SignedAngle);
        var n = new Vec3(edge.Outward.X, edge.Outward.Y, 0);
        var z = new Vec3(0, 0, 1);
        var x = new Vec3(-edge.Along.X, -edge.Along.Y, 0);
        var (yOut, zOut) = ((n * cos) - (z * sin), (z * cos) + (n * sin));

        // The outer skin lies R + T from the axis when the bend turns away from it, R when it turns towards it.
        var reach = panel.SignedAngle > 0 ? bend.InsideRadiusM + thickness : -bend.InsideRadiusM;
        var axis = new Vec3(panel.RootStart.X, panel.RootStart.Y, 0) - (n * bend.SetbackM) - (z * reach);
        var origin = axis + (zOut * reach) - (yOut * bend.SetbackM);
        panel.Frame = parent.Frame.Then(new Frame(origin, x, yOut, zOut));
        panel.AxisFrame = parent.Frame.Then(new Frame(axis, x, n, z));
    }

    private static bool Sort(PartSpec spec, List<Panel> panels, List<Finding> findings)
    {
        var good = true;
        foreach (var edge in panels.SelectMany(p => p.Edges).Where(e => e.Flanges.Count > 0))
        {
            edge.Flanges.Sort((a, b) => a.EdgeFrom.CompareTo(b.EdgeFrom));
            for (var i = 1; i < edge.Flanges.Count; i++)
            {
                var (a, b) = (edge.Flanges[i - 1], edge.Flanges[i]);
                if (b.EdgeFrom > a.EdgeTo - 1e-9)
                {
                    continue;
                }

                good = false;
                findings.Add(
                    MetalRules
                        .EdgeUsedUp.At(
                            SheetPart.PathOf(spec, b) + ".on",
                            $"Flanges {a.Id} and {b.Id} both claim {Mm.Of(a.EdgeTo - b.EdgeFrom)} of the same edge {b.Spec!.OnEdge}."
                        )
                        .On(
                            spec,
                            b.Parent!,
                            edge.From + (edge.Along * b.EdgeFrom),
                            edge.From + (edge.Along * Math.Min(a.EdgeTo, b.EdgeTo))
                        )
                );
            }
        }

        return good;
    }
}
