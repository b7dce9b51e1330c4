using Lampwright.Findings;
using Lampwright.FitUp;

namespace Lampwright.Tests.FitUp;

public sealed class FitUpFindingsTests
{
    [Fact]
    public void A_clean_joint_has_no_findings() => Assert.Empty(Fit.Of(Bodies.FanOnTray()).Findings);

    [Theory]
    [InlineData(0.08303, false)] // corners miss by 0.375 mm; (4.3 - 4)/2 + (4.5 - 4)/2 = 0.4 mm is allowed
    [InlineData(0.08308, true)] // 0.410 mm
    public void Holes_that_miss_by_more_than_their_clearance_stop(double pitch, bool stops)
    {
        var result = Fit.Of(Bodies.FanOnTray(fan: Bodies.Fan(pitch)));
        Assert.Equal(stops, Has(result, FitUpRules.HolesMiss));
        var miss = Math.Abs(pitch - 0.0825) / Math.Sqrt(2);
        Assert.All(result.Joints[0].Holes, h => Assert.Equal(miss, h.DrawnMissM, 1e-9));
        Assert.All(result.Joints[0].Holes, h => Assert.Equal(0.0004, h.AllowsM, 1e-12));
    }

    [Fact]
    public void Hand_work_that_may_miss_warns_and_larger_holes_do_not()
    {
        Assert.True(
            Has(Fit.Of(Bodies.FanOnTray(Bodies.FanJoint(marking: HoleMarking.ByHand))), FitUpRules.HandMayMiss)
        );
        var roomy = Bodies.Fan(diameter: 0.0050);
        Assert.False(
            Has(Fit.Of(Bodies.FanOnTray(Bodies.FanJoint(marking: HoleMarking.ByHand), roomy)), FitUpRules.HandMayMiss)
        );
    }

    [Fact]
    public void The_hand_scatter_of_hole_limits_is_met_from_both_sides()
    {
        // Template against a bought fan: √(0.15² + 0.05²) mm, √(5/8) of it left after shifting, 2.448 of that.
        var usual = Math.Sqrt((0.15 * 0.15) + (0.05 * 0.05)) * Math.Sqrt(5.0 / 8) * Math.Sqrt(-2 * Math.Log(0.05));
        bool Warns(double allowedMm)
        {
            var fan = Bodies.Fan(diameter: 0.004 + ((allowedMm - 0.25) * 2e-3));
            return Has(
                Fit.Of(Bodies.FanOnTray(Bodies.FanJoint(marking: HoleMarking.ByTemplate), fan)),
                FitUpRules.HandMayMiss
            );
        }

        Assert.True(Warns(usual - 0.001));
        Assert.False(Warns(usual + 0.001));
    }

    [Theory]
    [InlineData(0.0301, true)] // 25 + 1.2 + 0.8 mm of layers and washer, 3.2 mm of nut: 30.2 mm
    [InlineData(0.0303, false)]
    public void A_screw_that_does_not_fill_its_nut_stops(double length, bool stops) =>
        Assert.Equal(stops, Has(WithScrew(new("M4", length, true, 1)), FitUpRules.ScrewShort));

    [Theory]
    [InlineData(0.0401, false)] // stands out 9.9 mm, 2.5 diameters are 10 mm
    [InlineData(0.0403, true)]
    public void A_screw_that_stands_out_far_warns(double length, bool warns) =>
        Assert.Equal(warns, Has(WithScrew(new("M4", length, true, 1)), FitUpRules.ScrewLong));

    [Theory]
    [InlineData("M4", false)]
    [InlineData("M7", true)]
    [InlineData("", true)]
    public void A_screw_outside_the_table_warns(string size, bool warns) =>
        Assert.Equal(warns, Has(WithScrew(new(size, 0.035, true, 1)), FitUpRules.ScrewUnknown));

    [Fact]
    public void A_screw_without_nut_or_thread_stops()
    {
        Assert.True(Has(WithScrew(new("M4", 0.035, false, 1)), FitUpRules.NothingHolds));
        Assert.False(Has(WithScrew(new("M4", 0.035, true, 1)), FitUpRules.NothingHolds));
    }

    [Theory]
    [InlineData(0.0020, true)] // 2.86 turns of 0.7 mm
    [InlineData(0.0022, false)]
    public void Fewer_than_three_threads_in_sheet_warn(double thickness, bool warns) =>
        Assert.Equal(warns, Has(Tapped(thickness, 0.030, isBlind: false), FitUpRules.FewThreads));

    [Theory]
    [InlineData(0.0270, true)] // 25 mm of fan, three turns are 2.1 mm
    [InlineData(0.0272, false)]
    public void A_screw_with_fewer_than_three_turns_in_a_deep_thread_is_short(double length, bool stops) =>
        Assert.Equal(stops, Has(Tapped(0.006, length, isBlind: false), FitUpRules.ScrewShort));

    [Theory]
    [InlineData(0.0310, false)]
    [InlineData(0.0311, true)]
    public void A_screw_longer_than_its_blind_hole_stops(double length, bool stops) =>
        Assert.Equal(stops, Has(Tapped(0.006, length, isBlind: true), FitUpRules.ScrewBottoms));

    [Theory]
    [InlineData(0.0039, true)]
    [InlineData(0.0040, false)]
    public void A_screw_that_does_not_pass_its_hole_stops(double diameter, bool stops) =>
        Assert.Equal(
            stops,
            Has(Fit.Of(Bodies.FanOnTray(fan: Bodies.Fan(diameter: diameter))), FitUpRules.ScrewDoesNotPass)
        );

    [Fact]
    public void A_pattern_that_does_not_exist_stops()
    {
        var result = Fit.Of(Bodies.FanOnTray(Bodies.FanJoint() with { Stack = ["fan.main.mount", "tray.fam"] }));
        var finding = Assert.Single(result.Findings, f => f.Rule == FitUpRules.PatternMissing);
        Assert.Equal("joint.fan.stack", finding.Path);
        Assert.Empty(result.Joints);
        Assert.Equal(["fan.main"], result.Unplaced);
    }

    [Fact]
    public void Different_counts_warn_and_the_common_holes_are_matched()
    {
        var fan = Bodies.Fan();
        fan = fan with { Patterns = [fan.Patterns[0] with { Holes = [.. fan.Patterns[0].Holes.Skip(1)] }] };
        var result = Fit.Of(Bodies.FanOnTray(Bodies.FanJoint(), fan));
        Assert.True(Has(result, FitUpRules.CountsDiffer));
        Assert.Equal(3, result.Joints[0].Holes.Count);
        Assert.All(result.Joints[0].Holes, h => Assert.Equal(0, h.DrawnMissM, 1e-9));
    }

    [Fact]
    public void A_field_of_too_many_holes_is_no_joint()
    {
        var a = new BodySpec("a", 1, default, [Bodies.Grid("a.p", 13, 5, 0.01, 0.01)]);
        var b = new BodySpec("b", 1, default, [Bodies.Grid("b.p", 13, 5, 0.01, 0.01)]);
        var result = Fit.Of(
            new("a", [a, b], [new("j", ["a.p", "b.p"], ["near", "near"], 0, null, HoleMarking.ByHand)])
        );
        Assert.True(Has(result, FitUpRules.CountsDiffer));
        Assert.Equal(["b"], result.Unplaced);
    }

    [Fact]
    public void A_mass_that_nobody_knows_is_a_note()
    {
        Assert.True(Has(Fit.Of(Bodies.FanOnTray(fan: Bodies.Fan() with { MassKg = null })), FitUpRules.MassUnknown));
        Assert.False(Has(Fit.Of(Bodies.FanOnTray()), FitUpRules.MassUnknown));
    }

    [Fact]
    public void A_side_that_is_not_told_is_a_note_and_one_that_is_not_known_a_warning()
    {
        Assert.True(Has(Fit.Of(Bodies.FanOnTray(Bodies.FanJoint() with { Sides = [] })), FitUpRules.TakenByDefault));
        Assert.True(
            Has(
                Fit.Of(Bodies.FanOnTray(Bodies.FanJoint() with { Sides = ["bottom", "outside"] })),
                FitUpRules.SideUnknown
            )
        );
    }

    [Fact]
    public void A_turn_that_the_holes_do_not_allow_warns()
    {
        Assert.True(Has(Fit.Of(Bodies.FanOnTray(Bodies.FanJoint(0.5))), FitUpRules.TurnUnfit));
        Assert.False(Has(Fit.Of(Bodies.FanOnTray(Bodies.FanJoint(0.05))), FitUpRules.TurnUnfit));
    }

    [Fact]
    public void A_fixed_part_that_does_not_exist_warns()
    {
        var spec = Bodies.FanOnTray();
        Assert.True(Has(Fit.Of(spec with { Fixed = "yoke" }), FitUpRules.FixedMissing));
        Assert.False(Has(Fit.Of(spec), FitUpRules.FixedMissing));
    }

    [Fact]
    public void A_joint_of_one_pattern_warns()
    {
        var result = Fit.Of(Bodies.FanOnTray(Bodies.FanJoint() with { Stack = ["tray.fan"], Sides = ["outside"] }));
        Assert.True(Has(result, FitUpRules.JointOfOne));
        Assert.False(Has(Fit.Of(Bodies.FanOnTray()), FitUpRules.JointOfOne));
    }

    [Fact]
    public void An_empty_assembly_is_no_bug() => Assert.Empty(Fit.Of(new("", [], [])).Placed);

    [Fact]
    public void Codes_are_unique_and_well_formed()
    {
        Assert.Equal(FitUpRules.All.Count, FitUpRules.All.Select(r => r.Code).Distinct(StringComparer.Ordinal).Count());
        Assert.All(FitUpRules.All, r => Assert.Matches("^FIT[0-9]{3}$", r.Code));
    }

    private static FitUpResult WithScrew(ScrewSpec screw) =>
        Fit.Of(Bodies.FanOnTray(Bodies.FanJoint() with { Screw = screw }));

    private static FitUpResult Tapped(double thickness, double length, bool isBlind)
    {
        var tray = Bodies.Tray();
        tray = tray with
        {
            Patterns =
            [
                tray.Patterns[0] with
                {
                    IsTapped = true,
                    IsBlind = isBlind,
                    ThicknessM = thickness,
                    DiameterM = 0.004,
                },
            ],
        };
        var joint = Bodies.FanJoint() with { Screw = new("M4", length, false, 0) };
        return Fit.Of(new("part.tray", [tray, Bodies.Fan()], [joint]));
    }

    private static bool Has(FitUpResult result, Rule rule) => result.Findings.Any(f => f.Rule == rule);
}
