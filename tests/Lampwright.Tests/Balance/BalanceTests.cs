using CsCheck;
using Lampwright.Balance;
using Lampwright.Findings;
using Lampwright.Tables;

namespace Lampwright.Tests.Balance;

public class BalanceTests
{
    private static readonly TiltSpec Wing = new(2, 0.006, 1.5, 0.2, 2, 0.0066, 0.030, 0.135, 2.4, 0.05, 0.02);

    private static IReadOnlyList<Finding> Tilt(TiltSpec spec, bool wing = true, double proof = 6230) =>
        BalanceFindings.OfTilt("tilt.main", spec, TiltJoint.Result(spec), wing, proof);

    private static bool Raises(IEnumerable<Finding> findings, Rule rule) => findings.Any(f => f.Rule == rule);

    [Fact]
    public void Moment_at_balance_is_zero()
    {
        var result = TiltJoint.Result(Wing with { ForwardM = 0, UpM = 0 });
        Assert.Equal(0, result.WorstMomentNm);
        Assert.Equal(TiltJoint.LargestSafetyFactor, result.SafetyFactor);
    }

    [Fact]
    public void Worst_moment_is_no_less_than_at_any_tilt() =>
        Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[-0.3, 0.3], Gen.Double[-Math.PI, Math.PI], Gen.Double[0, 3])
            .Sample(
                (forward, up, least, span) =>
                {
                    var spec = Wing with
                    {
                        ForwardM = forward,
                        UpM = up,
                        LeastTiltRad = least,
                        MostTiltRad = Math.Min(least + span, Math.PI),
                    };
                    var worst = TiltJoint.Result(spec);
                    for (var i = 0; i <= 50; i++)
                    {
                        var tilt = spec.LeastTiltRad + ((spec.MostTiltRad - spec.LeastTiltRad) * i / 50);
                        Assert.True(
                            Math.Abs(TiltJoint.MomentNm(spec, tilt)) <= worst.WorstMomentNm + 1e-9,
                            spec.ToString()
                        );
                    }

                    Assert.Equal(worst.WorstMomentNm, Math.Abs(TiltJoint.MomentNm(spec, worst.WorstTiltRad)), 1e-9);
                },
                seed: "0N0XIzNsQ0O2",
                iter: 200
            );

    [Fact]
    public void Worst_over_all_tilts_is_weight_times_offset()
    {
        var result = TiltJoint.Result(Wing);
        Assert.Equal(2.4 * TiltJoint.Gravity * Math.Sqrt((0.05 * 0.05) + (0.02 * 0.02)), result.WorstMomentNm, 1e-9);
    }

    [Fact]
    public void Holding_doubles_with_the_torque() =>
        Assert.Equal(
            2 * TiltJoint.Result(Wing).HoldingNm,
            TiltJoint.Result(Wing with { TorqueNm = 3 }).HoldingNm,
            1e-12
        );

    [Fact]
    public void Wear_form_is_the_lower_one() =>
        Assert.True(
            RubbingFaces.WornMomentNm(2, 0.15, 1000, 0.01, 0.03) < RubbingFaces.NewMomentNm(2, 0.15, 1000, 0.01, 0.03)
        );

    [Fact]
    public void A_face_without_width_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TiltJoint.Result(Wing with { InnerM = 0.04 }));

    [Fact]
    public void Tilt_rules_speak_at_their_limits()
    {
        var at = TiltJoint.Result(Wing);
        TiltSpec WithSafety(double safety) => Wing with { MassKg = Wing.MassKg * at.SafetyFactor / safety };
        Assert.True(Raises(Tilt(WithSafety(1.49)), BalanceRules.TiltSlips));
        Assert.False(Raises(Tilt(WithSafety(1.51)), BalanceRules.TiltSlips));
        Assert.True(Raises(Tilt(WithSafety(2.49)), BalanceRules.TiltMarginSmall));
        Assert.False(Raises(Tilt(WithSafety(2.51)), BalanceRules.TiltMarginSmall));
        Assert.True(Raises(Tilt(Wing with { TorqueNm = 2.01 }), BalanceRules.HandTorque));
        Assert.False(Raises(Tilt(Wing with { TorqueNm = 1.99 }), BalanceRules.HandTorque));
        Assert.False(Raises(Tilt(Wing with { TorqueNm = 2.01 }, wing: false), BalanceRules.HandTorque));
        Assert.True(Raises(Tilt(Wing with { MassKg = 0.51 }), BalanceRules.FallingLoad));
        Assert.False(Raises(Tilt(Wing with { MassKg = 0.49 }), BalanceRules.FallingLoad));
        Assert.True(Raises(Tilt(Wing with { Friction = 0.21 }), BalanceRules.FrictionHopeful));
        Assert.False(Raises(Tilt(Wing with { Friction = 0.19 }), BalanceRules.FrictionHopeful));
        Assert.True(Raises(Tilt(Wing, proof: at.ClampForceN / 0.76), BalanceRules.ScrewOverloaded));
        Assert.False(Raises(Tilt(Wing, proof: at.ClampForceN / 0.74), BalanceRules.ScrewOverloaded));
        Assert.Equal(BalanceRules.FacesImpossible, BalanceFindings.OfFaces("tilt.main", 0.03, 0.03)?.Rule);
        Assert.Null(BalanceFindings.OfFaces("tilt.main", 0.0299, 0.03));
    }

    [Fact]
    public void No_override_lowers_the_stop_below_the_moment_itself()
    {
        var at = TiltJoint.Result(Wing);
        var slipping = Wing with { MassKg = Wing.MassKg * at.SafetyFactor / 0.9 };
        var findings = BalanceFindings.OfTilt(
            "tilt.main",
            slipping,
            TiltJoint.Result(slipping),
            true,
            0,
            new BalanceLimits(SafetyLeast: 0.1)
        );
        Assert.True(Raises(findings, BalanceRules.TiltSlips));
    }

    [Fact]
    public void A_stand_without_offset_tips_at_foot_over_height()
    {
        var stand = new StandSpec(2, 1, 0, 0, 0, 0.2);
        var result = Stability.Result(stand);
        Assert.Equal(Math.Atan(0.2), result.TipsAtRad, 1e-12);
        Assert.Equal(Math.Tan(Stability.TestSlopeRad), result.FootNeededM, 1e-12);
    }

    [Fact]
    public void Stand_rule_speaks_just_below_its_slope()
    {
        var need = Stability.LeastEdgeDistanceM(1, Stability.TestSlopeRad);
        bool Tips(double foot)
        {
            var stand = new StandSpec(2, 1, 0.05, 2, 1, foot);
            return Raises(
                BalanceFindings.OfStand("stand.main", stand, Stability.Result(stand)),
                BalanceRules.StandTips
            );
        }

        Assert.True(Tips(need + 0.025 - 1e-4));
        Assert.False(Tips(need + 0.025 + 1e-4));
    }

    [Fact]
    public void Arm_rules_speak_at_their_limits()
    {
        var arm = new ArmSpec(0.5, Section.Tube(0.03, 0.03, 0.002), 210e9, 7850, 3);
        var result = Arm.Result(arm);
        var limits = new BalanceLimits(DroopShare: result.DroopM / 0.5);
        bool Droops(double factor) =>
            Raises(
                BalanceFindings.OfArm("arm.main", arm, result with { DroopM = result.DroopM * factor }, 0, limits),
                BalanceRules.ArmDroops
            );
        Assert.True(Droops(1.001));
        Assert.False(Droops(0.999));
        bool Yields(double factor) =>
            Raises(
                BalanceFindings.OfArm("arm.main", arm, result, result.StressPa * 1.5 * factor),
                BalanceRules.ArmYields
            );
        Assert.True(Yields(0.999));
        Assert.False(Yields(1.001));
    }

    [Fact]
    public void An_arm_on_a_post_goes_down_more()
    {
        var arm = new ArmSpec(0.5, Section.Bar(0.02, 0.02), 210e9, 7850, 3);
        Assert.True(Arm.Result(arm with { PostM = 0.5 }).DroopM > Arm.Result(arm).DroopM);
        Assert.Equal(0, Arm.Result(arm).SidewaysM);
    }

    [Fact]
    public void A_tube_with_a_wall_of_half_is_a_bar()
    {
        Assert.Equal(Section.Bar(0.02, 0.03), Section.Tube(0.02, 0.03, 0.01));
        Assert.Equal(Math.PI / 64 * Math.Pow(0.02, 4), Section.RoundTube(0.02, 0.01).SecondMomentM4, 1e-18);
    }

    [Fact]
    public void A_leg_upright_is_a_bar_and_a_ring_is_a_tube()
    {
        var bar = new FoldedSection(0.003, 0.003).Leg(1e-9).Bend(Math.PI / 2).Leg(0.5).Bending;
        Assert.Equal(1, bar.SecondMomentM4 / Section.Bar(0.003, 0.5).SecondMomentM4, 0.05);
        var ring = new FoldedSection(0.002, 0.008).Bend(Math.PI).Bend(Math.PI).Bending;
        var tube = Section.RoundTube(0.020, 0.002);
        Assert.Equal(tube.AreaM2, ring.AreaM2, 1e-12);
        Assert.Equal(tube.SecondMomentM4, ring.SecondMomentM4, 1e-15);
        Assert.Equal(tube.ModulusM3, ring.ModulusM3, 1e-12);
    }

    [Theory]
    [InlineData("M6 wing", "M6")]
    [InlineData("m4", "M4")]
    [InlineData("M2.5x12", "M2.5")]
    public void A_thread_is_found_by_its_text(string text, string size) =>
        Assert.Equal(size, MetricThread.Named(text)?.Size);

    [Theory]
    [InlineData("")]
    [InlineData("M7")]
    [InlineData("1/4-20")]
    public void A_thread_that_the_table_lacks_is_none(string text) => Assert.Null(MetricThread.Named(text));

    [Fact]
    public void Every_rule_is_numbered_once() =>
        Assert.Equal(
            Enumerable.Range(1, BalanceRules.All.Count).Select(i => $"BAL{i:000}"),
            BalanceRules.All.Select(r => r.Code)
        );
}
