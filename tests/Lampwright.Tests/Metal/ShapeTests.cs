using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

/// <summary>Shapes beyond the plain box: their blanks by hand, their folds by hand.</summary>
public sealed class ShapeTests
{
    private static readonly double Right = Math.PI / 2;
    private static readonly SheetSpec Sheet = new("s", 0.001, 0.001, BendRule.WithK(0.4));

    private static PartResult Make(FaceSpec face, params FlangeSpec[] flanges) =>
        SheetPart.Of(new PartSpec("p", Sheet, face) { Flanges = flanges });

    private static void Near(Vec3 expected, Vec3 got) =>
        Assert.True((expected - got).Length < 1e-9, $"expected {expected}, got {got}");

    private static void Partition(PartResult result)
    {
        var regions =
            result.Folded!.Faces.Sum(f => f.Flat.SignedArea) + result.Folded.Bends.Sum(b => b.Zone.SignedArea);
        Assert.Equal(result.Blank!.Outline.SignedArea, regions, 1e-10);
        Assert.DoesNotContain(result.Findings, f => f.Rule == MetalRules.BlankOverlaps);
    }

    [Fact]
    public void Frames_of_the_walls_stand_as_the_design_says()
    {
        var folded = Make(
            FaceSpec.Rectangle(0.1, 0.06),
            new("b", "face.bottom", 0.03),
            new("l", "face.left", 0.03)
        ).Folded!;
        var (bottom, left) = (folded.Faces[1].Frame, folded.Faces[2].Frame);

        // y from the outside of the bend away from the face, z outward, x so that the frame is right-handed.
        Near(new(0.1, 0, 0), bottom.Origin);
        Near(new(0, 0, -1), bottom.Y);
        Near(new(0, -1, 0), bottom.Z);
        Near(new(-1, 0, 0), bottom.X);
        Near(new(0, 0, 0), left.Origin);
        Near(new(0, 1, 0), left.X);
        Near(new(-1, 0, 0), left.Z);
    }

    [Fact]
    public void A_step_bent_back_lies_parallel_to_the_face()
    {
        var folded = Make(
            FaceSpec.Rectangle(0.1, 0.06),
            new("wall", "face.right", 0.02),
            new("foot", "wall.far", 0.015, -Right)
        ).Folded!;
        var foot = folded.Faces[2].Frame;

        Near(new(0, 0, 1), foot.Z);
        Near(new(1, 0, 0), foot.Y);

        // Outside height of the step is 20 mm to the underside of the foot; its upper skin lies a thickness higher.
        Assert.Equal(-0.020 + 0.001, foot.Origin.Z, 1e-9);
        Assert.Equal(-0.020, folded.BoxLeast.Z, 1e-9);
    }

    [Fact]
    public void Sharp_bends_are_measured_to_the_tangent_plane()
    {
        var folded = Make(
            FaceSpec.Rectangle(0.1, 0.06),
            new FlangeSpec("a", "face.right", 0.03, 120 * Math.PI / 180)
        ).Folded!;

        // R + T beyond the tangent: the fold reaches exactly the outside dimension of the face.
        Assert.Equal(0.1, folded.BoxMost.X, 1e-9);
    }

    [Fact]
    public void Inside_dimensions_leave_that_room_inside()
    {
        var box = SheetPart
            .Of(
                new PartSpec("p", Sheet, FaceSpec.Rectangle(0.1, 0.06, DimensionSide.Inside))
                {
                    Flanges =
                    [
                        new("l", "face.left", 0.03, Side: DimensionSide.Inside),
                        new("r", "face.right", 0.03, Side: DimensionSide.Inside),
                    ],
                }
            )
            .Folded!;

        Assert.Equal(0.102, box.BoxMost.X - box.BoxLeast.X, 1e-9);
        Assert.Equal(0, box.BoxLeast.X, 1e-9);
        Assert.Equal(0.06, box.BoxMost.Y - box.BoxLeast.Y, 1e-9);
        Assert.Equal(-0.031, box.BoxLeast.Z, 1e-9);
    }

    [Fact]
    public void A_flange_short_of_its_edge_gets_notches_beside_it()
    {
        var result = Make(
            FaceSpec.Rectangle(0.1, 0.06),
            new FlangeSpec("a", "face.right", 0.02) { StartOffsetM = 0.01, EndOffsetM = 0.02 }
        );
        Partition(result);
        var bend = result.Blank!.Bends[0];

        Assert.Equal(0.03, bend.CentreLine.LengthM, 1e-12);

        // Two notches 1.5 mm wide from the edge to R + T beyond the tangent: 4 mm deep; beside the flange's own strip.
        var allowance = bend.AllowanceM;
        var area = (0.1 * 0.06) - (2 * 0.0015 * 0.004) + (0.03 * (0.02 - 0.004 + allowance));
        Assert.Equal(area, result.Blank.AreaM2, 1e-12);
    }

    [Fact]
    public void Two_flanges_share_an_edge_side_by_side()
    {
        var result = Make(
            FaceSpec.Rectangle(0.1, 0.06),
            new FlangeSpec("a", "face.right", 0.02) { EndOffsetM = 0.04 },
            new FlangeSpec("b", "face.right", 0.02, -Right) { StartOffsetM = 0.04 }
        );
        Partition(result);
        Assert.DoesNotContain(result.Findings, f => f.Severity == Severity.Stop);
    }

    [Fact]
    public void Rounded_and_slanted_neighbours_are_cut_where_the_bend_begins()
    {
        var q = Math.Tan(Math.PI / 8);
        var rounded = new FaceSpec(
            new Outline([
                new(new(0.01, 0), 0, "bottom"),
                new(new(0.09, 0), q, "c1"),
                new(new(0.1, 0.01), 0, "right"),
                new(new(0.1, 0.06), 0, "top"),
                new(new(0, 0.06), 0, "left"),
                new(new(0, 0.01), q, "c2"),
            ])
        );
        Partition(Make(rounded, new FlangeSpec("a", "face.bottom", 0.02)));
        var trapezoid = new FaceSpec(
            new Outline([new(new(0.02, 0)), new(new(0.08, 0)), new(new(0.1, 0.06)), new(new(0, 0.06))])
        );
        Partition(Make(trapezoid, new FlangeSpec("a", "face.e1", 0.02), new FlangeSpec("c", "face.e3", 0.02)));
        Partition(Make(trapezoid, new FlangeSpec("a", "face.e1", 0.02), new FlangeSpec("b", "face.e2", 0.02)));
        Partition(
            Make(
                trapezoid,
                new FlangeSpec("a", "face.e1", 0.02),
                new FlangeSpec("b", "face.e2", 0.02),
                new FlangeSpec("c", "face.e3", 0.02),
                new FlangeSpec("d", "face.e4", 0.02)
            )
        );
    }

    [Fact]
    public void Relief_holes_open_the_corners()
    {
        var spec = Parts.Box(120, 80, 30) with { Relief = new(CornerRelief.Hole) { HoleDiameterM = 0.006 } };
        var result = SheetPart.Of(spec);
        var plain = SheetPart.Of(Parts.Box(120, 80, 30));

        Assert.Equal(4, result.Blank!.Outline.Corners.Count(c => c.Bulge != 0));
        Assert.True(result.Blank.AreaM2 < plain.Blank!.AreaM2);
        Assert.True(result.Blank.AreaM2 > plain.Blank.AreaM2 - (4 * Math.PI * 0.003 * 0.003));
        Assert.DoesNotContain(result.Findings, f => f.Severity == Severity.Stop);
    }

    [Fact]
    public void Lips_are_mitred_where_they_meet()
    {
        var result = SheetPart.Of(Parts.Tray());
        var lip = result.Folded!.Faces.Single(f => f.Face == "lip_b").Flat;
        var (least, most) = lip.Box;
        var far = lip.Corners.Where(c => c.Point.Y > most.Y - 1e-9).Select(c => c.Point.X).ToList();

        // 45° and half the gap of 0.2 mm across it.
        Assert.Equal(0.014 + (0.0001 * Math.Sqrt(2)), far.Min(), 1e-9);
        Assert.Equal(0.120 - far.Min(), far.Max(), 1e-9);
        Assert.DoesNotContain(result.Findings, f => f.Severity == Severity.Stop);
    }

    [Fact]
    public void A_mirrored_part_swaps_geometry_and_keeps_its_ids()
    {
        var spec = new PartSpec("p", Sheet, FaceSpec.Rectangle(0.1, 0.06))
        {
            Flanges = [new("a", "face.right", 0.02), new("b", "a.far", 0.012)],
            Holes =
            [
                new("h", "face", new(0.02, 0.03), HoleShape.Round(0.004)) { Pattern = HolePattern.Line(2, 0.01) },
                new("g", "a", new(0.01, 0.012), HoleShape.Slot(0.008, 0.004)),
            ],
        };
        var (plain, mirror) = (SheetPart.Of(spec), SheetPart.Of(spec with { Mirrored = true }));

        Assert.Equal(plain.Blank!.AreaM2, mirror.Blank!.AreaM2, 1e-15);
        Assert.Equal(plain.Blank.Outline.SignedArea, mirror.Blank.Outline.SignedArea, 1e-12);
        foreach (var (a, b) in plain.Folded!.Holes.Zip(mirror.Folded!.Holes))
        {
            Assert.Equal(a.Id, b.Id);
            Near(new(0.1 - a.Centre.X, a.Centre.Y, a.Centre.Z), b.Centre);
            var face = mirror.Folded.Faces.Single(f => f.Face == b.Face);
            Near(b.Centre, face.Frame.Out(new(b.CentreOnFace.X, b.CentreOnFace.Y, 0)));
            Near(face.Frame.Z, face.Frame.X.Cross(face.Frame.Y));
        }

        Assert.Equal(
            plain.Folded.Edges.Select(e => e.Id).Order(StringComparer.Ordinal),
            mirror.Folded.Edges.Select(e => e.Id).Order(StringComparer.Ordinal)
        );
        var bodies = (FoldScene.Of(plain.Folded), FoldScene.Of(mirror.Folded));
        Assert.Equal(bodies.Item1.Faces.Sum(f => f.Triangles.Count), bodies.Item2.Faces.Sum(f => f.Triangles.Count));
    }

    [Fact]
    public void Ids_of_a_pattern_survive_edits_elsewhere()
    {
        HoleSpec Vents(double x) =>
            new("vents", "l", new(x, 0.015), HoleShape.Round(0.003)) { Pattern = HolePattern.Grid(3, 2, 0.005, 0.005) };
        PartSpec Spec(params HoleSpec[] holes) =>
            new("tray", Sheet, FaceSpec.Rectangle(0.1, 0.06))
            {
                Flanges = [new("l", "face.left", 0.03)],
                Holes = holes,
            };
        var before = SheetPart.Of(Spec(Vents(0.03))).Blank!.Holes.Select(h => h.Id).ToList();
        var after = SheetPart
            .Of(Spec(new("new", "face", new(0.05, 0.03), HoleShape.Round(0.01)), Vents(0.035)))
            .Blank!.Holes.Select(h => h.Id)
            .ToList();

        Assert.Contains("tray.l.vents[3,2]", before);
        Assert.Equal(before, after.Where(id => id.Contains("vents", StringComparison.Ordinal)));
    }
}
