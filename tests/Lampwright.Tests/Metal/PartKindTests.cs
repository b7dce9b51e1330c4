using CsCheck;
using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

/// <summary>Laws that hold for hems, joggles, reliefs of every kind and cut corners, tried on random parts with a fixed seed.</summary>
public sealed class PartKindTests
{
    private static readonly Gen<SheetSpec> Sheets = Gen.Select(
        Gen.Double[0.0005, 0.002],
        Gen.Double[0.0004, 0.003],
        Gen.Double[0.3, 0.5],
        (t, r, k) => new SheetSpec("any", t, r, BendRule.WithK(k))
    );

    private static readonly Gen<FlangeSpec> Hems = Gen.Select(
        Gen.Double[0.008, 0.02],
        Gen.Bool,
        Gen.Double[0.004, 0.02],
        (w, out_, s) => Hem.Of("hem", "wall_b.far", w, out_) with { StartOffsetM = s, EndOffsetM = s / 2 }
    );

    private static readonly Gen<JoggleSpec> Joggles = Gen.Select(
        Gen.Double[0.008, 0.03],
        Gen.Double[0.0005, 0.01],
        Gen.Bool,
        Gen.Double[0, 0.02],
        (lap, step, outwards, start) =>
            new JoggleSpec("lap", "face.top", lap)
            {
                OffsetM = step,
                Outwards = outwards,
                StartOffsetM = start,
            }
    );

    private static readonly Gen<PartSpec> AnyPart = Gen.Select(
        Sheets,
        Gen.Select(Gen.Double[0.08, 0.3], Gen.Double[0.08, 0.3], Gen.Double[0.03, 0.05]),
        Hems,
        Joggles,
        Gen.Enum<CornerRelief>(),
        Gen.Double[-0.2, 0.3],
        (sheet, size, hem, joggle, relief, slant) =>
            new PartSpec("any", sheet, FaceSpec.Rectangle(size.Item1, size.Item2))
            {
                Relief = new(relief),
                Flanges =
                [
                    new("wall_b", "face.bottom", size.Item3),
                    new("wall_r", "face.right", size.Item3) { StartAngleRad = slant },
                    hem,
                ],
                Joggles = [joggle],
                Holes =
                [
                    .. ((string[])["face", "wall_b", "wall_r", "lap"]).Select(on => new HoleSpec(
                        "h_" + on,
                        on,
                        new(0.001, 0.0005),
                        HoleShape.Slot(0.004, 0.002),
                        HoleAnchor.Centre
                    )
                    {
                        RotationRad = 0.3,
                    }),
                ],
            }
    );

    [Fact]
    public void Blank_is_flats_and_bends_and_holes_land_where_the_fold_has_them_and_all_is_a_number() =>
        AnyPart.Sample(
            spec =>
            {
                var result = SheetPart.Of(spec);
                if (result.Blank is not { } blank || result.Folded is not { } folded)
                {
                    return result.Findings.Any(f => f.Severity == Severity.Stop);
                }

                var regions = folded.Faces.Sum(f => f.Flat.SignedArea) + folded.Bends.Sum(b => b.Zone.SignedArea);
                return Math.Abs(regions - blank.Outline.SignedArea) < 1e-9
                    && double.IsFinite(folded.CentreOfMass.Length + folded.BoxMost.Length)
                    && result.Findings.All(f => !f.Message.Contains("NaN", StringComparison.Ordinal))
                    && blank
                        .Holes.Zip(folded.Holes)
                        .All(pair =>
                        {
                            var frame = FoldInvariantTests.Carried(spec, result, pair.First.On);
                            var centre = frame.Out(new(pair.First.Centre.X, pair.First.Centre.Y, 0));
                            return (centre - pair.Second.Centre).Length < 1e-9;
                        });
            },
            seed: "0000KOIKFUr2",
            iter: 400,
            print: s => $"{s.Sheet} {s.Face} {s.Relief} {string.Join("; ", s.Flanges)} {s.Joggles[0]}"
        );

    [Fact]
    public void The_strip_of_a_joggle_lies_off_by_its_step_and_parallel() =>
        AnyPart.Sample(
            spec =>
            {
                var result = SheetPart.Of(spec);
                if (result.Folded is not { } folded)
                {
                    return true;
                }

                var lap = folded.Faces.First(f => f.Face == "lap").Frame;
                var step = spec.Joggles[0].OffsetM!.Value * (spec.Joggles[0].Outwards ? 1 : -1);
                return Math.Abs(lap.Origin.Z - step) < 1e-12 && (lap.Z - new Vec3(0, 0, 1)).Length < 1e-12;
            },
            seed: "0000KOIKFUr2",
            iter: 200
        );

    [Fact]
    public void A_hem_lies_flat_on_its_wall_and_uses_up_what_the_rule_of_thumb_says()
    {
        var sheet = Parts.Mild;
        var spec = new PartSpec("strip", sheet, FaceSpec.Rectangle(0.1, 0.05))
        {
            Flanges = [Hem.Of("safe", "face.top", 0.010)],
        };
        var result = SheetPart.Of(spec);
        var hem = result.Folded!.Faces.First(f => f.Face == "safe").Frame;
        Assert.Equal(-2 * sheet.ThicknessM, hem.Origin.Z, 12);
        Assert.Equal(-1, hem.Z.Z, 12);
        Assert.Equal(0.050 + 0.010 - (0.4292 * sheet.ThicknessM), result.Blank!.HeightM, 6);
        Assert.DoesNotContain(result.Findings, f => f.Severity == Severity.Stop);
    }

    [Theory]
    [InlineData(0.001, 0.0015, 0.0015, 0, 38.94)]
    [InlineData(0.0045, 0.001, 0.001, 0, 90)]
    public void The_steepest_joggle_is_the_one_whose_bends_touch(double d, double r, double t, double f, double degrees)
    {
        var angle = Joggle.SteepestRad(d, r, t, f);
        Assert.Equal(degrees, angle * 180 / Math.PI, 1);
        var a = (2 * r) + t;
        Assert.True((a * (1 - Math.Cos(angle))) + (f * Math.Sin(angle)) <= d + 1e-15);
    }

    [Fact]
    public void Corners_are_rounded_and_cut_off_by_the_areas_that_geometry_says()
    {
        var plate = FaceSpec.Rectangle(0.1, 0.06).Outline;
        var none = new HashSet<string>(StringComparer.Ordinal);
        var round = FaceCornerCut.Of(plate, 0.005, true, none);
        var mitred = FaceCornerCut.Of(plate, 0.005, false, none);
        Assert.Equal(0.006 - ((4 - Math.PI) * 25e-6), round.SignedArea, 12);
        Assert.Equal(0.006 - (4 * 12.5e-6), mitred.SignedArea, 12);
        var one = FaceCornerCut.Of(plate, 0.005, false, new HashSet<string>(["top"], StringComparer.Ordinal));
        Assert.Equal(0.006 - (2 * 12.5e-6), one.SignedArea, 12);
        Assert.Equal(
            ["bottom", "bottom_right", "left", "left_bottom", "right", "top"],
            one.Corners.Select(c => c.EdgeId).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData(CornerRelief.Overlap)]
    [InlineData(CornerRelief.Clear)]
    public void Flanges_that_overlap_or_clear_do_not_cut_through_one_another(CornerRelief relief)
    {
        var result = SheetPart.Of(Parts.Box(120, 80, 30) with { Relief = new(relief) });
        Assert.DoesNotContain(
            result.Findings,
            f =>
                f.Rule == MetalRules.FoldCollides
                || f.Rule == MetalRules.CornerTouches
                || f.Rule == MetalRules.BlankOverlaps
        );
        var covered = result.Folded!.Edges.Where(e =>
            e.Id.Contains(".wall_", StringComparison.Ordinal) && e.Id.EndsWith(".far", StringComparison.Ordinal)
        );
        var longest = covered.Where(e => e.Id.Contains("wall_b", StringComparison.Ordinal)).Max(e => e.LengthM);
        Assert.Equal(relief == CornerRelief.Overlap ? 0.120 : 0.120 - (2 * 0.0017), longest, 9);
    }

    [Fact]
    public void A_slit_is_narrower_than_a_notch()
    {
        double Area(CornerRelief relief) =>
            SheetPart
                .Of(
                    new PartSpec("tab", Parts.Mild, FaceSpec.Rectangle(0.1, 0.05))
                    {
                        Flanges = [new("tab", "face.top", 0.02) { StartOffsetM = 0.03, EndOffsetM = 0.03 }],
                        Relief = new(relief),
                    }
                )
                .Blank!.AreaM2;
        var deep = 0.0015 + 0.0015 + 0.003;
        Assert.Equal(2 * 0.0005 * deep, Area(CornerRelief.Slit) - Area(CornerRelief.Notch), 9);
    }
}
