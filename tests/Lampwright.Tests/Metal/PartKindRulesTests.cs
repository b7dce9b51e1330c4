using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class PartKindRulesTests
{
    private static PartSpec Strip(SheetSpec sheet, params FlangeSpec[] flanges) =>
        new("strip", sheet, FaceSpec.Rectangle(0.1, 0.05)) { Flanges = flanges };

    private static bool Says(PartSpec spec, Lampwright.Findings.Rule rule, string path) =>
        SheetPart.Of(spec).Findings.Any(f => f.Rule == rule && f.Path == path);

    [Theory]
    [InlineData(0.0059, true)]
    [InlineData(0.006, false)]
    public void A_hem_narrower_than_four_thicknesses_is_told(double width, bool told) =>
        Assert.Equal(
            told,
            Says(
                Strip(Parts.Mild, Hem.Of("safe", "face.top", width)),
                MetalRules.HemCracks,
                "part.strip.hem.safe.width"
            )
        );

    [Theory]
    [InlineData(310, true)]
    [InlineData(300, false)]
    public void A_hem_in_sheet_that_hardly_stretches_is_told(double yieldMPa, bool told) =>
        Assert.Equal(
            told,
            Says(
                Strip(
                    Parts.Mild with
                    {
                        YieldPa = yieldMPa * 1e6,
                        TensileStrengthPa = 400e6,
                    },
                    Hem.Of("safe", "face.top", 0.01)
                ),
                MetalRules.HemCracks,
                "part.strip.hem.safe"
            )
        );

    [Fact]
    public void A_hem_is_not_held_against_the_closing_of_the_brake_and_a_flange_is()
    {
        var brake = new BrakeSpec { ClosingAngleRad = 2 };
        Assert.DoesNotContain(
            SheetPart.Of(Strip(Parts.Mild, Hem.Of("safe", "face.top", 0.01)) with { Brake = brake }).Findings,
            f => f.Rule == MetalRules.BeyondBrake
        );
        Assert.True(
            Says(
                Strip(Parts.Mild, new FlangeSpec("w", "face.top", 0.02, 2.1)) with
                {
                    Brake = brake,
                },
                MetalRules.BeyondBrake,
                "part.strip.flange.w.angle"
            )
        );
    }

    [Fact]
    public void A_joggle_says_once_that_it_is_pressed_and_a_flange_does_not()
    {
        var spec = Strip(Parts.Mild) with { Joggles = [new("lap", "face.top", 0.012)] };
        Assert.Single(
            SheetPart.Of(spec).Findings,
            f => f.Rule == MetalRules.JoggleTool && f.Path == "part.strip.joggle.lap"
        );
        Assert.DoesNotContain(
            SheetPart.Of(Strip(Parts.Mild, new FlangeSpec("w", "face.top", 0.02))).Findings,
            f => f.Rule == MetalRules.JoggleTool
        );
    }

    [Theory]
    [InlineData(1.0001, true)]
    [InlineData(0.9999, false)]
    public void A_joggle_too_steep_for_its_step_is_told(double share, bool told)
    {
        var angle = share * Joggle.SteepestRad(0.0015, 0.0015, 0.0015);
        var spec = Strip(Parts.Mild) with { Joggles = [new("lap", "face.top", 0.012) { AngleRad = angle }] };
        Assert.Equal(told, Says(spec, MetalRules.JoggleTooSteep, "part.strip.joggle.lap.angle"));
        Assert.Equal(told, SheetPart.Of(spec).Blank is null);
    }

    [Theory]
    [InlineData(0, 0.01)]
    [InlineData(-0.001, 0.01)]
    [InlineData(0.001, 0)]
    [InlineData(double.NaN, 0.01)]
    public void A_joggle_of_no_size_is_told(double offset, double lap) =>
        Assert.True(
            Says(
                Strip(Parts.Mild) with
                {
                    Joggles = [new("lap", "face.top", lap) { OffsetM = offset }],
                },
                MetalRules.AbsurdSize,
                "part.strip.joggle.lap"
            )
        );

    [Theory]
    [InlineData(0.05, true)]
    [InlineData(-0.05, false)]
    public void An_outline_that_crosses_itself_is_told(double swap, bool told)
    {
        var b = swap > 0 ? new Vec2(0.1, 0.06) : new Vec2(0.1, 0);
        var c = swap > 0 ? new Vec2(0.1, 0) : new Vec2(0.1, 0.06);
        var face = new FaceSpec(new Outline([new(new(0, 0)), new(b), new(c), new(new(0, 0.09))]));
        Assert.Equal(told, Says(new PartSpec("strip", Parts.Mild, face), MetalRules.OutlineCrosses, "part.strip.face"));
    }

    [Theory]
    [InlineData(0.0014, 0.004, true, "width")]
    [InlineData(0.0015, 0.004, false, "width")]
    [InlineData(0.002, 0.0029, true, "depth")]
    [InlineData(0.002, 0.003, false, "depth")]
    public void A_relief_that_is_too_small_is_told(double width, double depth, bool told, string key) =>
        Assert.Equal(
            told,
            Says(
                Strip(Parts.Mild, new FlangeSpec("w", "face.top", 0.02)) with
                {
                    Relief = new() { NotchWidthM = width, NotchDepthM = depth },
                },
                MetalRules.SmallRelief,
                "part.strip.relief." + key
            )
        );

    [Theory]
    [InlineData(0)]
    [InlineData(-0.01)]
    public void A_hem_of_no_width_and_a_flange_without_angle_have_a_place(double width)
    {
        Assert.True(
            Says(
                Strip(Parts.Mild, Hem.Of("safe", "face.top", width)),
                MetalRules.AbsurdSize,
                "part.strip.hem.safe.width"
            )
        );
        Assert.True(
            Says(
                Strip(Parts.Mild, new FlangeSpec("w", "face.top", 0.02, 0)),
                MetalRules.AngleOutOfRange,
                "part.strip.flange.w.angle"
            )
        );
    }

    [Fact]
    public void A_hem_on_an_edge_that_carries_a_flange_already_is_told() =>
        Assert.True(
            Says(
                Strip(Parts.Mild, new FlangeSpec("w", "face.top", 0.02), Hem.Of("safe", "face.top", 0.01)),
                MetalRules.EdgeUsedUp,
                "part.strip.hem.safe.on"
            )
        );

    [Theory]
    [InlineData(0.0379, 0.05, false)]
    [InlineData(0.0381, 0.05, true)]
    [InlineData(0.0381, 0.005, false)]
    public void A_hole_that_a_hem_folds_over_is_told(double y, double x, bool told) =>
        Assert.Equal(
            told,
            Says(
                Strip(
                    Parts.Mild,
                    Hem.Of("safe", "face.top", 0.010) with
                    {
                        StartOffsetM = 0.01,
                        EndOffsetM = 0.01,
                    }
                ) with
                {
                    Holes = [new HoleSpec("h", "face", new(x, y), HoleShape.Round(0.004))],
                },
                MetalRules.HoleUnderHem,
                "part.strip.hole.h"
            )
        );
}
