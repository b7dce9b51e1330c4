using Lampwright.Findings;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

/// <summary>Rules of nose, grain, hands and rows of holes: raised once, and not just inside the limit.</summary>
public sealed class BenchRulesTests
{
    private static PartSpec Plate(HoleShape shape, double? live = null, SheetSpec? sheet = null) =>
        new("p", sheet ?? Parts.Mild, FaceSpec.Rectangle(0.2, 0.2))
        {
            Holes = [new("h", "face", new(0.1, 0.1), shape)],
            LiveBehindM = live,
        };

    private static PartSpec Angle(SheetSpec? sheet = null) =>
        new("p", sheet ?? Parts.Mild, FaceSpec.Rectangle(0.1, 0.08)) { Flanges = [new("a", "face.left", 0.03)] };

    private static void Raises(Rule rule, PartSpec spec, PartSpec inside)
    {
        var found = SheetPart.Of(spec).Findings;
        Assert.Contains(found, f => f.Rule == rule);
        var near = SheetPart.Of(inside).Findings;
        Assert.True(near.All(f => f.Rule != rule), string.Join(" | ", near.Select(f => f.Code + " " + f.Message)));
    }

    [Fact]
    public void Words_alone_keep_no_finger_out_and_a_screw_does()
    {
        var open = Plate(HoleShape.Round(0.02), live: 0.01);
        PartSpec With(string purpose, bool filled) =>
            open with
            {
                Holes = [open.Holes[0] with { Purpose = purpose, IsFilled = filled }],
            };
        Raises(MetalRules.FingerReachesLive, With("cable way", false), With("M20 gland", true));
    }

    [Fact]
    public void A_nose_makes_no_smaller_radius_than_its_own() =>
        Raises(
            MetalRules.NoseMakesAnotherRadius,
            Angle() with
            {
                Brake = new() { NoseRadiusM = 0.0016 },
            },
            Angle() with
            {
                Brake = new() { NoseRadiusM = 0.0015 },
            }
        );

    [Fact]
    public void A_nose_set_too_far_back_makes_a_larger_radius() =>
        Raises(
            MetalRules.NoseMakesAnotherRadius,
            Angle() with
            {
                // 2.5 + 1 - 1.5 = 2.0 mm, 0.5 mm more than the 1.5 mm of the sheet; 30 % are 0.45 mm.
                Brake = new() { NoseRadiusM = 0.001, NoseBackM = 0.0025 },
            },
            Angle() with
            {
                Brake = new() { NoseRadiusM = 0.001, NoseBackM = 0.0024 },
            }
        );

    [Fact]
    public void A_tight_radius_asks_for_the_grain()
    {
        // 1.5 mm of Rm 370: 1.6 mm across, 2.5 mm along.
        var sheet = Parts.Mild with
        {
            InsideRadiusM = 0.0016,
            TensileStrengthPa = 370e6,
        };
        Raises(MetalRules.BendAcrossGrain, Angle(sheet), Angle(sheet with { InsideRadiusM = 0.0025 }));
        var along = SheetPart.Of(Angle(sheet) with { GrainAlongX = false }).Findings;
        Assert.Contains(along, f => f.Rule == MetalRules.SmallRadius);
        var across = SheetPart.Of(Angle(sheet) with { GrainAlongX = true }).Findings;
        Assert.DoesNotContain(across, f => f.Rule == MetalRules.SmallRadius || f.Rule == MetalRules.BendAcrossGrain);
    }

    [Fact]
    public void A_finger_does_not_reach_live_parts()
    {
        Raises(
            MetalRules.FingerReachesLive,
            Plate(HoleShape.Round(0.010), 0.019),
            Plate(HoleShape.Round(0.010), 0.020)
        );
        Raises(
            MetalRules.FingerReachesLive,
            Plate(HoleShape.Slot(0.060, 0.020), 0.119),
            Plate(HoleShape.Round(0.012), 0.080)
        );
        Assert.True(MetalRules.FingerReachesLive.ProtectsPeople);
    }

    [Fact]
    public void An_opening_for_a_screw_counts_as_filled()
    {
        var spec = Plate(HoleShape.Round(0.010), 0.001);
        spec = spec with { Holes = [spec.Holes[0] with { Purpose = "M8 clearance", IsFilled = true }] };
        Assert.DoesNotContain(SheetPart.Of(spec).Findings, f => f.Rule == MetalRules.FingerReachesLive);
    }

    [Fact]
    public void A_wire_does_not_reach_live_parts() =>
        Raises(MetalRules.WireReachesLive, Plate(HoleShape.Round(0.004), 0.099), Plate(HoleShape.Round(0.004), 0.100));

    [Fact]
    public void Hands_do_not_go_to_a_cut_edge() =>
        Raises(
            MetalRules.SharpEdge,
            Angle() with
            {
                HandEdges = ["face.right"],
            },
            Angle() with
            {
                HandEdges = ["face.left"],
            }
        );

    [Fact]
    public void Hands_need_an_edge_that_exists() =>
        Raises(
            MetalRules.UnknownEdge,
            Angle() with
            {
                HandEdges = ["a.middle"],
            },
            Angle() with
            {
                HandEdges = ["a.far"],
            }
        );

    [Theory]
    [InlineData(0.0014, 0.0015)]
    [InlineData(0.0139, 0.0130)]
    public void A_round_hole_is_made_by_a_drill_or_a_step_drill(double bad, double good)
    {
        var thick = Parts.Mild with { ThicknessM = 0.005, InsideRadiusM = 0.005 };
        Raises(
            MetalRules.NotByHand,
            Plate(HoleShape.Round(bad), sheet: thick),
            Plate(HoleShape.Round(good), sheet: thick)
        );
    }

    [Fact]
    public void A_slot_is_wide_enough_for_a_file() =>
        Raises(MetalRules.NotByHand, Plate(HoleShape.Slot(0.02, 0.0029)), Plate(HoleShape.Slot(0.02, 0.003)));

    [Fact]
    public void A_flange_bends_at_its_bend()
    {
        // Setback 3 mm, so 27 mm of flange; a row 9 mm from the tangent is asked for 2/3 of the metal of 80 mm.
        PartSpec With(double diameterMm) =>
            Angle() with
            {
                Holes =
                [
                    new("v", "a", new(0.040, 0.012), HoleShape.Round(diameterMm / 1000))
                    {
                        Pattern = HolePattern.Grid(3, 1, 0.020, 0),
                    },
                ],
            };
        Raises(MetalRules.WeakRowOfHoles, With(8.95), With(8.85));
    }
}
