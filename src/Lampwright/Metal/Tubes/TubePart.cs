using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal.Fields;

namespace Lampwright.Metal;

/// <summary>A tube cut to length: its wrap (the outside laid flat), its body, its findings.</summary>
/// <remarks>
/// The wrap is what is taped round the tube to scribe its ends and punch its holes. Ends that are mitred run through a corner as a sine; it is
/// drawn by <see cref="CornerPieces"/> chords, whose sag at R = 6 mm and 45° is 3 µm. Mass and balance are exact: section times length at its middle,
/// holes taken out through one wall.
/// <para><b>Source</b>: geometry. <b>Checked by</b>: <i>printed</i> (mass per metre, EN 10219-2, from memory), <i>invariant</i> (wrap carried round the
/// corners is the body; a mitred pair makes a right angle).</para>
/// </remarks>
internal static class TubePart
{
    private static int CornerPieces => 16;

    public static PartResult Of(PartSpec told, bool check)
    {
        var findings = new List<Finding>();
        var tube = told.Tube!;
        var spec = told with
        {
            Face = FaceSpec.Rectangle(Math.Max(tube.LengthM, 1e-9), Math.Max(tube.WidthM, 1e-9)),
            Limits = told.Limits with { HoleToBendM = 0, LargeHoleToBendM = 0 },
        };
        if (!TubeChecks.Passes(told, findings) || !SpecCheck.Passes(spec, findings))
        {
            return new(told, null, null, findings);
        }

        var shape = new TubeShape(tube, spec.Sheet.ThicknessM, spec.Sheet.InsideRadiusM);
        var panels = Enumerable.Range(0, 4).Select(i => SideOf(shape, i)).ToList();
        var holes = FieldEdges.Keep(spec, HolePlaces.Of(spec, panels, findings), findings);
        var blank = Wrap(spec, shape, panels, holes);
        var folded = Body(spec, shape, panels, holes, blank);
        if (check)
        {
            HoleChecks.Check(spec, holes, findings);
            CutOutChecks.Check(spec, holes, findings);
            HandChecks.Check(spec, panels, holes, folded, findings);
        }

        return PartResult.Made(told, blank, folded, findings, default);
    }

    private static Panel SideOf(TubeShape shape, int side)
    {
        var (width, corner) = (shape.Widths[side], shape.CornerM);
        var nominal = shape.Side(side, 0, width);
        var panel = new Panel
        {
            Id = TubeSpec.Sides[side],
            Nominal = [.. nominal.Corners],
            Frame = shape.Frames[side],
            InBlank = new(new(0, shape.FlatFrom(side) - corner), new(1, 0)),
            Rounded = new HashSet<string>(["root", TubeSpec.Sides[(side + 1) % 4]], StringComparer.Ordinal),
        };
        panel.Flat.AddRange(shape.Side(side, corner, width - corner).Corners);
        return panel;
    }

    private static Blank Wrap(PartSpec spec, TubeShape shape, List<Panel> panels, List<PlacedHole> holes)
    {
        var (from, to) = Profiles(shape);
        List<Corner> corners = [new(from[0], 0, "wrap.first")];
        corners.AddRange(to.Select(p => new Corner(p, 0, "wrap.end")));
        corners[^1] = corners[^1] with { EdgeId = "wrap.last" };
        corners.AddRange(from.Skip(1).Reverse().Select(p => new Corner(p, 0, "wrap.start")));
        var outline = Straightened(corners);
        var placed = new BlankHole[holes.Count];
        var (removed, cuts) = (0.0, Length(from) + Length(to));
        for (var i = 0; i < placed.Length; i++)
        {
            var hole = holes[i];
            var own = hole.Panel.InBlank.Out(hole.Outline);
            removed += own.Area;
            cuts += own.Perimeter;
            placed[i] = new(
                $"{spec.Name}.{hole.Panel.Id}.{hole.Spec.Id}{hole.Member}",
                hole.Spec.Id,
                hole.Panel.Id,
                own,
                hole.Panel.InBlank.Out(hole.Centre),
                hole.DiameterM,
                hole.Spec.Purpose
            )
            {
                IsOutline = hole.Spec.Shape.Kind == HoleShapeKind.Outline,
            };
        }

        var density = spec.Sheet.DensityKgPerM3 * spec.Factors.Density;
        var volume = TubeMass.Volume(shape, spec.Tube!) - (removed * shape.WallM);
        return new(
            spec.Name,
            spec.Sheet.Name,
            shape.WallM,
            outline,
            placed,
            [],
            spec.Tube!.LengthM,
            shape.Section.RoundM,
            outline.Area - removed,
            volume * density,
            cuts,
            "outside of the tube"
        )
        {
            Wrap = new(spec.Tube.LengthM, [.. panels.Select((p, i) => Side(shape, p, i))]),
            Marks = [.. CornerLines(spec, shape)],
        };
    }

    private static WrapSide Side(TubeShape shape, Panel panel, int side)
    {
        var c = panel.Nominal;
        return new(
            panel.Id,
            panel.InBlank.Origin.Y,
            shape.Widths[side],
            shape.CornerM,
            new(c[0].Point, c[3].Point),
            new(c[1].Point, c[2].Point)
        );
    }

    /// <summary>The lines between the flats and the round corners, and the names of the sides.</summary>
    private static IEnumerable<BlankMark> CornerLines(PartSpec spec, TubeShape shape)
    {
        for (var side = 0; side < 4; side++)
        {
            var (width, corner) = (shape.Widths[side], shape.CornerM);
            foreach (var y in (double[])[corner, width - corner])
            {
                var (a, b) = shape.Reach(shape.Frames[side].Out(new(0, y, 0)));
                var s = shape.FlatFrom(side) + y - corner;
                if (side > 0 || y > corner)
                {
                    yield return new(
                        $"{spec.Name}.{TubeSpec.Sides[side]}",
                        BlankMarkKind.Corner,
                        [
                            [new(a, s), new(b, s)],
                        ]
                    );
                }
            }
        }
    }

    /// <summary>Both ends on the wrap, from its first line to its last.</summary>
    private static (List<Vec2> From, List<Vec2> To) Profiles(TubeShape shape)
    {
        var (from, to) = (new List<Vec2>(), new List<Vec2>());
        void Take(Vec3 at, double s)
        {
            var (a, b) = shape.Reach(at);
            from.Add(new(a, s));
            to.Add(new(b, s));
        }

        for (var side = 0; side < 4; side++)
        {
            var s = shape.FlatFrom(side);
            var flat = shape.Widths[side] - (2 * shape.CornerM);
            Take(shape.Frames[side].Out(new(0, shape.CornerM, 0)), s);
            for (var k = 0; k <= CornerPieces; k++)
            {
                var share = (double)k / CornerPieces;
                if (k < CornerPieces || side == 3)
                {
                    Take(shape.OnCorner(side, share * Math.PI / 2), s + flat + (share * shape.ArcM));
                }
            }
        }

        return (from, to);
    }

    private static double Length(List<Vec2> points) => points.Zip(points.Skip(1), (a, b) => (b - a).Length).Sum();

    private static Outline Straightened(List<Corner> corners)
    {
        for (var i = corners.Count - 1; i >= 0; i--)
        {
            var (before, here) = (corners[(i + corners.Count - 1) % corners.Count], corners[i]);
            var after = corners[(i + 1) % corners.Count];
            var (a, b) = (here.Point - before.Point, after.Point - here.Point);
            if (b.Length < 1e-12 || (Math.Abs(a.Unit.Cross(b.Unit)) < 1e-9 && a.Dot(b) > 0))
            {
                corners.RemoveAt(i);
            }
        }

        return new(corners);
    }

    private static FoldedPart Body(
        PartSpec spec,
        TubeShape shape,
        List<Panel> panels,
        List<PlacedHole> holes,
        Blank blank
    )
    {
        var tube = spec.Tube!;
        var faces = panels.ConvertAll(p => new FoldedFace(
            $"{spec.Name}.{p.Id}",
            p.Id,
            p.Frame,
            new(p.Nominal),
            new([.. p.Flat])
        ));
        var made = holes
            .Select(
                (hole, i) =>
                    new FoldedHole(
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
                    )
            )
            .ToList();
        var volume = TubeMass.Volume(shape, tube) - holes.Sum(h => h.Outline.Area * shape.WallM);
        return new(
            spec.Name,
            shape.WallM,
            faces,
            [.. Enumerable.Range(0, 4).Select(i => Corner(spec, shape, i))],
            made,
            [.. panels.SelectMany(p => Ends(spec, p))],
            blank.MassKg,
            TubeMass.Centre(shape, tube, holes),
            new(0, 0, -tube.HeightM),
            new(tube.LengthM, tube.WidthM, 0),
            volume
        )
        {
            IsTube = true,
        };
    }

    private static FoldedBend Corner(PartSpec spec, TubeShape shape, int side)
    {
        var next = TubeSpec.Sides[(side + 1) % 4];
        var (low, high) = (new List<Corner>(), new List<Corner>());
        for (var k = 0; k <= CornerPieces; k++)
        {
            var share = (double)k / CornerPieces;
            var (from, to) = shape.Reach(shape.OnCorner(side, share * Math.PI / 2));
            low.Add(new(new(to, share * shape.ArcM)));
            high.Add(new(new(from, share * shape.ArcM)));
        }

        high.Reverse();
        return new(
            $"{spec.Name}.{TubeSpec.Sides[side]}_{next}",
            next,
            TubeSpec.Sides[side],
            shape.Axis(side),
            Math.PI / 2,
            shape.InsideRadiusM,
            new([.. low, .. high]),
            shape.ArcM
        );
    }

    private static IEnumerable<FoldedEdge> Ends(PartSpec spec, Panel panel)
    {
        for (var i = 1; i < 4; i += 2)
        {
            var (a, b) = (panel.Flat[i], panel.Flat[(i + 1) % 4]);
            var outward = -(b.Point - a.Point).Unit.Left;
            yield return new(
                $"{spec.Name}.{panel.Id}.{a.EdgeId}",
                panel.Frame.Out(new(a.Point.X, a.Point.Y, 0)),
                panel.Frame.Out(new(b.Point.X, b.Point.Y, 0)),
                panel.Frame.Direction(new(outward.X, outward.Y, 0)),
                panel.Frame.Z
            );
        }
    }
}
