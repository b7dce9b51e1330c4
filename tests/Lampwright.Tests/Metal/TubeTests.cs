using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class TubeTests
{
    private static readonly SheetSpec Stock = new("tube 30 × 20 × 2", 0.002, 0.002, BendRule.Din6935);

    private static PartSpec Tube(TubeCut? start = null, TubeCut? end = null, params HoleSpec[] holes) =>
        new("arm", Stock, FaceSpec.Rectangle(1, 1))
        {
            Tube = new(0.030, 0.020, 0.400) { Start = start ?? TubeCut.Square, End = end ?? TubeCut.Square },
            Holes = holes,
        };

    private static TubeCut At(double degrees, TubeSlant on = TubeSlant.Face) => new(degrees * Math.PI / 180, on);

    [Fact]
    public void The_wrap_is_as_long_as_the_tube_and_as_high_as_it_is_round()
    {
        var part = SheetPart.Of(Tube());
        Assert.Empty(part.Findings);
        Assert.Equal(0.400, part.Blank!.WidthM, 12);

        // Four flats of 22 and 12 mm and four quarter arcs of 4 mm.
        Assert.Equal((2 * (0.022 + 0.012)) + (2 * Math.PI * 0.004), part.Blank.HeightM, 12);
        Assert.Equal(4, part.Blank.Outline.Corners.Count);
        Assert.Equal(7, part.Blank.Marks.Count);
    }

    [Fact]
    public void Mass_is_that_of_the_section_summed_strip_by_strip()
    {
        var part = SheetPart.Of(Tube(At(30), At(-20, TubeSlant.Top)));
        var (volume, x, y, z) = (0.0, 0.0, 0.0, 0.0);
        const int n = 800;
        var (tanS, tanE) = (Math.Tan(Math.PI / 6), Math.Tan(Math.PI / 9));
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                var (a, d) = ((i + 0.5) * 0.030 / n, (j + 0.5) * 0.020 / n);
                if (!Inside(a, d, 0.030, 0.020, 0.004) || Inside(a - 0.002, d - 0.002, 0.026, 0.016, 0.002))
                {
                    continue;
                }

                // The start leans over the face and shortens its far side; the end leans over the top and shortens its near side.
                var (from, to) = (tanS * a, 0.400 - (tanE * (0.020 - d)));
                var piece = (to - from) * 0.030 * 0.020 / n / n;
                (volume, x, y, z) = (volume + piece, x + (piece * (from + to) / 2), y + (piece * a), z - (piece * d));
            }
        }

        Assert.Equal(1, volume / part.Folded!.VolumeM3, 3e-3);
        Assert.Equal(part.Folded.VolumeM3 * 7850, part.Folded.MassKg, 12);
        Assert.Equal(x / volume, part.Folded.CentreOfMass.X, 1e-5);
        Assert.Equal(y / volume, part.Folded.CentreOfMass.Y, 1e-5);
        Assert.Equal(z / volume, part.Folded.CentreOfMass.Z, 1e-5);
    }

    private static bool Inside(double a, double d, double w, double h, double r)
    {
        if (a < 0 || d < 0 || a > w || d > h)
        {
            return false;
        }

        var (p, q) = (Math.Max(Math.Max(r - a, a - w + r), 0), Math.Max(Math.Max(r - d, d - h + r), 0));
        return (p * p) + (q * q) <= r * r;
    }

    [Theory]
    [InlineData("face", 0.1, 0.012, 0.1, 0.012, 0)]
    [InlineData("top", 0.1, 0.008, 0.1, 0.030, -0.008)]
    [InlineData("back", 0.1, 0.012, 0.1, 0.018, -0.020)]
    [InlineData("bottom", 0.1, 0.008, 0.1, 0, -0.012)]
    public void A_hole_is_placed_from_the_start_and_from_the_side_before(
        string side,
        double x,
        double y,
        double px,
        double py,
        double pz
    )
    {
        var part = SheetPart.Of(Tube(holes: new HoleSpec("h", side, new(x, y), HoleShape.Round(0.004))));
        Assert.DoesNotContain(part.Findings, f => f.Rule != MetalRules.NotByHand);
        var hole = part.Folded!.Holes.Single();
        Assert.True((hole.Centre - new Vec3(px, py, pz)).Length < 1e-12, $"{hole.Centre}");
        var onWrap = part.Blank!.Holes.Single().Centre;
        var of = part.Blank.Wrap!.Sides.Single(s => s.Side == side);
        Assert.True((of.OnSide(onWrap) - new Vec2(x, y)).Length < 1e-12);
    }

    /// <summary>The wrap rolled round the tube by arc length alone lies on its outside, and its ends on the planes of the saw.</summary>
    [Theory]
    [InlineData(45, TubeSlant.Face)]
    [InlineData(-30, TubeSlant.Top)]
    public void The_wrap_taped_round_the_tube_ends_where_the_saw_cuts(double degrees, TubeSlant on)
    {
        var part = SheetPart.Of(Tube(At(degrees, on)));
        var tan = Math.Tan(Math.Abs(degrees) * Math.PI / 180);
        var seen = 0;
        foreach (var corner in part.Blank!.Outline.Corners.Where(c => c.Point.X < 0.2))
        {
            var at = Rolled(corner.Point);
            var across = on == TubeSlant.Face ? at.Y : 0.020 + at.Z;
            Assert.Equal(tan * across, at.X, 1e-12);
            seen++;
        }

        Assert.True(seen > 30);
    }

    private static Vec3 Rolled(Vec2 p)
    {
        var s = p.Y;
        double[] flats = [0.022, 0.012, 0.022, 0.012];
        var at = new Vec2(0.004, 0);
        var way = new Vec2(1, 0);
        foreach (var flat in flats)
        {
            if (s <= flat)
            {
                at += way * s;
                break;
            }

            at += way * flat;
            s -= flat;
            var centre = at + (way.Left * 0.004);
            var turn = Math.Min(s / 0.004, Math.PI / 2);
            at = centre + (at - centre).Turned(turn);
            way = way.Turned(turn);
            if (s <= Math.PI / 2 * 0.004)
            {
                break;
            }

            s -= Math.PI / 2 * 0.004;
        }

        return new(p.X, at.X, -at.Y);
    }

    [Fact]
    public void Two_ends_cut_at_45_degrees_meet_at_a_right_angle()
    {
        var part = SheetPart.Of(Tube(At(45), At(45)));
        var (start, end) = (
            part.Folded!.Edges.Single(e => e.Id == "arm.face.start"),
            part.Folded.Edges.Single(e => e.Id == "arm.face.end")
        );
        Assert.Equal(0, (start.A - start.B).Unit.Dot((end.A - end.B).Unit), 1e-12);

        // The short side is the length less the width twice.
        var back = part.Folded.Faces[0].Nominal;
        Assert.Equal(0.340, back.Corners[2].Point.X - back.Corners[3].Point.X, 1e-12);
    }

    [Theory]
    [InlineData(0.004, 0.0, null)]
    [InlineData(0.004, 0.0059, "MET009")]
    [InlineData(0.004, 0.0061, null)]
    public void A_hole_keeps_out_of_the_round_corner(double diameter, double y, string? code)
    {
        var at = y > 0 ? y : 0.015;
        var part = SheetPart.Of(Tube(holes: new HoleSpec("h", "face", new(0.2, at), HoleShape.Round(diameter))));
        Assert.Equal(code, part.Findings.FirstOrDefault(f => f.Code == "MET009")?.Code);
    }

    [Fact]
    public void A_hole_beyond_a_mitred_end_is_told() =>
        Assert.Contains(
            SheetPart
                .Of(Tube(At(60), holes: new HoleSpec("h", "face", new(0.010, 0.020), HoleShape.Round(0.004))))
                .Findings,
            f => f.Rule == MetalRules.HoleOutside
        );

    [Theory]
    [InlineData(0.030, 0.020, 0.400, 0.0099, 0.0, 0, true)]
    [InlineData(0.030, 0.020, 0.400, 0.0100, 0.0, 0, false)]
    [InlineData(0.030, 0.020, 0.400, 0.002, 0.0079, 0, true)]
    [InlineData(0.030, 0.020, 0.400, 0.002, 0.0080, 0, false)]
    [InlineData(0.030, 0.020, 0.400, 0.002, 0.002, 81, false)]
    [InlineData(0.030, 0.020, 0.059, 0.002, 0.002, 45, false)]
    [InlineData(0.030, 0.020, 0.061, 0.002, 0.002, 45, true)]
    [InlineData(0.030, 0.020, double.NaN, 0.002, 0.002, 0, false)]
    public void A_tube_that_cannot_be_is_told(
        double w,
        double h,
        double l,
        double wall,
        double ri,
        double deg,
        bool can
    )
    {
        var part = SheetPart.Of(
            Tube() with
            {
                Sheet = Stock with { ThicknessM = wall, InsideRadiusM = ri },
                Tube = new(w, h, l) { Start = At(deg), End = At(deg) },
            }
        );
        Assert.Equal(can, part.Blank is not null);
        Assert.Equal(!can, part.Findings.Any(f => f.Rule == MetalRules.TubeCannotBe));
    }

    [Theory]
    [InlineData(0.00119, true)]
    [InlineData(0.0012, false)]
    [InlineData(0.0028, false)]
    [InlineData(0.00281, true)]
    public void Corners_that_the_standard_does_not_have_are_told(double insideRadius, bool told) =>
        Assert.Equal(
            told,
            SheetPart
                .Of(Tube() with { Sheet = Stock with { InsideRadiusM = insideRadius } })
                .Findings.Any(f => f.Rule == MetalRules.TubeCorner)
        );

    [Fact]
    public void The_body_is_closed_all_round()
    {
        var part = SheetPart.Of(Tube(At(45), At(10, TubeSlant.Top)));
        var body = FoldScene.Of(part.Folded!);
        var volume = 0.0;
        foreach (var face in body.Faces)
        {
            for (var i = 0; i < face.Triangles.Count; i += 3)
            {
                var (a, b, c) = (
                    face.Points[face.Triangles[i]],
                    face.Points[face.Triangles[i + 1]],
                    face.Points[face.Triangles[i + 2]]
                );
                volume += a.Dot(b.Cross(c)) / 6;
            }
        }

        // Only a closed body has a volume by its skin; arcs are chords in the picture.
        Assert.Equal(1, volume / part.Folded!.VolumeM3, 5e-3);
    }

    [Fact]
    public void A_mirrored_tube_keeps_its_mass_and_its_ids()
    {
        var spec = Tube(At(45), holes: new HoleSpec("h", "top", new(0.1, 0.008), HoleShape.Round(0.004)));
        var (one, other) = (SheetPart.Of(spec), SheetPart.Of(spec with { Mirrored = true }));
        Assert.Equal(one.Folded!.MassKg, other.Folded!.MassKg, 12);
        Assert.Equal(one.Blank!.Holes[0].Id, other.Blank!.Holes[0].Id);
        Assert.Equal(0.300, other.Folded.Holes[0].Centre.X, 12);
    }

    [Fact]
    public void A_thicker_wall_weighs_more_by_the_influence_coefficients()
    {
        var spec = Tube(At(45));
        var slopes = PartSensitivities.Of(spec)!;
        var thicker = SheetPart.Of(spec with { Sheet = Stock with { ThicknessM = 0.00205 } });
        var change = thicker.Blank!.MassKg - SheetPart.Of(spec).Blank!.MassKg;
        Assert.Equal(1, slopes.Mass.Change(0.00005, 0, 0) / change, 0.02);
    }
}
