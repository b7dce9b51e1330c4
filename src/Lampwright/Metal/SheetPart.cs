using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal.Fields;

namespace Lampwright.Metal;

/// <summary>The metal station: a part in, its blank, its fold and what there is to say about it out.</summary>
/// <remarks>
/// Exact geometry in closed form: nothing is iterated and nothing is rounded. Run once per design at nominal values; the draws of Evaluation
/// use the coefficients of <c>PartSensitivities</c>.
/// <para><b>Validity</b>: straight bends with a cylindrical inside; one thickness; holes in flats only.</para>
/// <para><b>Source</b>: <see cref="BendAllowance"/> for the lengths; the rest is geometry.</para>
/// <para><b>Checked by</b>: printed (M.B10, M.B11), derived (M.E1), invariants (the blank's area is that of its flats and bends; a hole
/// carried through the bends lands where the fold has it).</para>
/// </remarks>
public static class SheetPart
{
    /// <summary>Blank, fold and findings of a part.</summary>
    /// <param name="spec">The part. Any numbers: absurd ones become findings.</param>
    public static PartResult Of(PartSpec spec) => Of(spec, check: true);

    /// <summary>Blank and fold without holding them against the rules: for influence coefficients, about half the cost.</summary>
    /// <param name="spec">The part.</param>
    public static PartResult Unchecked(PartSpec spec) => Of(spec, check: false);

    private static PartResult Of(PartSpec told, bool check)
    {
        if (told.Tube is not null)
        {
            return TubePart.Of(told, check);
        }

        var findings = new List<Finding>();
        if (Joggle.Expand(told, findings) is not { } spec)
        {
            return new(told, null, null, findings);
        }

        if (!SpecCheck.Passes(spec, findings))
        {
            // Numbers that no shop can make give no picture; an outline that only crosses itself does.
            return findings.TrueForAll(f => f.Rule == MetalRules.OutlineCrosses)
                ? Stopped(told, spec, findings, check)
                : new(told, null, null, findings);
        }

        var panels = PanelTree.Build(spec, findings);
        if (panels is null)
        {
            return Stopped(told, spec, findings, check);
        }

        var joins = new CornerJoins(spec);
        foreach (var panel in panels)
        {
            if (joins.Join(panel) is { } bad)
            {
                findings.Add(
                    MetalRules
                        .BendUsesUpEdge.At(
                            PathOf(spec, panel),
                            $"The bends round {panel.Id} use up its edge {bad} and meet what lies beyond it."
                        )
                        .OnEdge(spec, panels, $"{panel.Id}.{bad}")
                );
                return Stopped(told, spec, findings, check);
            }
        }

        var walk = new BlankWalk(joins.NotchWidthM);
        var outer = walk.Outline(panels[0]);
        if (walk.Backward.Count > 0)
        {
            findings.Add(
                MetalRules
                    .BendUsesUpEdge.At(
                        $"part.{spec.Name}",
                        $"Bends and their reliefs take more than there is of {string.Join(", ", walk.Backward)}."
                    )
                    .OnEdge(spec, panels, walk.Backward[0])
            );
            return Stopped(told, spec, findings, check);
        }

        var holes = FieldEdges.Keep(spec, HolePlaces.Of(spec, panels, findings), findings);
        var (blank, shift) = BlankOf(spec, panels, outer, holes);
        var folded = FoldOf(spec, panels, walk, holes, blank);
        if (check)
        {
            BendChecks.Check(spec, panels, blank, findings);
            HoleChecks.Check(spec, holes, findings);
            CutOutChecks.Check(spec, holes, findings);
            HemCover.Check(spec, panels, holes, findings);
            FoldChecks.Check(spec, panels, holes, blank, shift, folded, findings);
            HandChecks.Check(spec, panels, holes, folded, findings);
            NoseChecks.Check(spec, panels, holes, blank, findings);
        }

        return PartResult.Made(told, blank, folded, findings, shift);
    }

    /// <summary>A part without blank, with what can be drawn of it.</summary>
    private static PartResult Stopped(PartSpec told, PartSpec spec, List<Finding> findings, bool draw)
    {
        if (!draw || BlankSketch.Of(spec) is not var (sketch, shift))
        {
            return new(told, null, null, findings.ConvertAll(f => f with { Place = null }));
        }

        Places.Settle(findings, shift, spec.Mirrored ? sketch.WidthM : null);
        return new(told, null, null, findings) { Sketch = spec.Mirrored ? sketch.Mirrored : sketch };
    }

    internal static string PathOf(PartSpec spec, Panel panel) =>
        panel.Spec is { } flange ? PathOf(spec, flange) : $"part.{spec.Name}.face";

    /// <summary>The table of a flange in the design file: that of a hem or joggle where it is one.</summary>
    internal static string PathOf(PartSpec spec, FlangeSpec flange) =>
        flange.Making switch
        {
            FlangeMaking.Hem => $"part.{spec.Name}.hem.{flange.Id}",
            FlangeMaking.Joggle => $"part.{spec.Name}.joggle.{flange.TableId ?? flange.Id}",
            _ => $"part.{spec.Name}.flange.{flange.Id}",
        };

    private static string HoleId(PartSpec spec, PlacedHole hole) =>
        $"{spec.Name}.{hole.Panel.Id}.{hole.Spec.Id}{hole.Member}";

    private static (Blank Blank, Vec2 Shift) BlankOf(
        PartSpec spec,
        List<Panel> panels,
        Outline outer,
        List<PlacedHole> holes
    )
    {
        var (least, most) = outer.Box;
        var place = new Placement2(-least, new(1, 0));
        var placed = new BlankHole[holes.Count];
        var (removed, cuts) = (0.0, outer.Perimeter);
        for (var i = 0; i < placed.Length; i++)
        {
            var hole = holes[i];
            var inBlank = place.Then(hole.Panel.InBlank);
            var outline = inBlank.Out(hole.Outline);
            removed += outline.Area;
            cuts += outline.Perimeter;
            placed[i] = new(
                HoleId(spec, hole),
                hole.Spec.Id,
                hole.Panel.Id,
                outline,
                inBlank.Out(hole.Centre),
                hole.DiameterM,
                hole.Spec.Purpose
            )
            {
                IsOutline = hole.Spec.Shape.Kind == HoleShapeKind.Outline,
            };
        }

        var bends = new List<BlankBend>(panels.Count - 1);
        foreach (var panel in panels)
        {
            if (panel.IsFlange)
            {
                bends.Add(BendOf(spec, panel, place.Then(panel.Parent!.InBlank)));
            }
        }

        var net = outer.Area - removed;
        var mass = net * spec.Sheet.ThicknessM * spec.Sheet.DensityKgPerM3 * spec.Factors.Density;
        var blank = new Blank(
            spec.Name,
            spec.Sheet.Name,
            spec.Sheet.ThicknessM,
            place.Out(outer),
            placed,
            bends,
            most.X - least.X,
            most.Y - least.Y,
            net,
            mass,
            cuts,
            BendMethodName.Of(spec.Sheet.Rule)
        )
        {
            GrainAlongX = spec.GrainAlongX,
        };
        return (blank, -least);
    }

    private static BlankBend BendOf(PartSpec spec, Panel panel, Placement2 parent)
    {
        var bend = panel.Bend!;
        Segment At(double v)
        {
            var (from, to) = BendZone.Range(panel, v);
            return new(parent.Out(panel.ZonePoint(from, v)), parent.Out(panel.ZonePoint(to, v)));
        }

        var flat = new BlankBend(
            $"{spec.Name}.{panel.Id}",
            panel.Id,
            At(bend.AllowanceM / 2),
            At(0),
            At(bend.AllowanceM),
            bend.AngleRad,
            panel.SignedAngle > 0 ? BendDirection.Down : BendDirection.Up,
            bend.InsideRadiusM,
            bend.AllowanceM,
            bend.DeductionM,
            bend.SetbackM
        );
        return flat with
        {
            Set =
                panel.Spec!.Making == FlangeMaking.Brake
                    ? SetLine.Of(flat, spec.Sheet.ThicknessM, spec.Brake.NoseRadiusM)
                    : null,
            BendToRad = Springback.Advice(
                spec.Sheet.Material,
                bend.AngleRad,
                bend.InsideRadiusM,
                spec.Sheet.ThicknessM
            ),
        };
    }

    private static FoldedPart FoldOf(
        PartSpec spec,
        List<Panel> panels,
        BlankWalk walk,
        List<PlacedHole> holes,
        Blank blank
    )
    {
        var t = spec.Sheet.ThicknessM;
        var faces = panels.ConvertAll(p => new FoldedFace(
            $"{spec.Name}.{p.Id}",
            p.Id,
            p.Frame,
            new(p.Nominal),
            new(p.Flat)
        ));
        var bends = panels
            .Where(p => p.IsFlange)
            .Select(p => new FoldedBend(
                $"{spec.Name}.{p.Id}",
                p.Id,
                p.Parent!.Id,
                p.AxisFrame,
                p.SignedAngle,
                p.Bend!.InsideRadiusM,
                new(p.Zone),
                p.Bend.AllowanceM
            ))
            .ToList();
        var made = new FoldedHole[holes.Count];
        for (var i = 0; i < made.Length; i++)
        {
            var hole = holes[i];
            made[i] = new(
                blank.Holes[i].Id,
                hole.Spec.Id,
                hole.Member,
                hole.Panel.Id,
                hole.Panel.Frame.Out(new(hole.Centre.X, hole.Centre.Y, 0)),
                hole.Panel.Frame.Z,
                hole.Outline,
                hole.Centre,
                hole.DiameterM,
                hole.Spec.Purpose
            );
        }

        var (least, most) = FoldBox.Of(panels, t);
        return new(
            spec.Name,
            t,
            faces,
            bends,
            made,
            FoldEdges.Of(spec, walk),
            blank.MassKg,
            FoldMass.Centre(panels, holes, t),
            least,
            most,
            blank.AreaM2 * t
        );
    }
}
