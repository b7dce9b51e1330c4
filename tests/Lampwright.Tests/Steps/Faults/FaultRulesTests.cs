using Lampwright.Findings;
using Lampwright.Steps;
using Lampwright.Steps.Faults;

namespace Lampwright.Tests.Steps.Faults;

public class FaultRulesTests
{
    private static bool Raises(Rule rule, FaultsSpec spec)
    {
        var network = new ChainNetwork(spec.Chain);
        var amps = new double[network.CombinationCount];
        network.Currents(new ChainDraw { Driver = spec.Law, AirK = spec.AirK }, amps);
        var findings = FaultFindings.Judge(spec, FaultPlay.All(spec), amps.Max(), amps.Min()).ToList();
        Assert.All(findings, f => Assert.False(string.IsNullOrWhiteSpace(f.Message)));
        return findings.Any(f => f.Rule == rule);
    }

    private static bool Raises(Rule rule, ChainSpec chain) => Raises(rule, FaultChains.Spec(chain));

    [Fact]
    public void All_rules_are_listed() =>
        Assert.Equal(["STP045", "STP046", "STP047", "STP048", "STP049"], FaultRules.All.Select(r => r.Code));

    // The worst that is left in the series chain is the fixed resistor alone: 2.0 A at 0.39 V over 0.195 ohm.
    [Theory]
    [InlineData(0.389, false)]
    [InlineData(0.391, true)]
    public void A_fixed_resistor_that_does_not_hold_the_emitter_s_limit_is_a_stop(double thresholdV, bool raised) =>
        Assert.Equal(
            raised,
            Raises(
                FaultRules.FaultOverEmitter,
                FaultChains.Spec(FaultChains.Series, thresholdV, FaultChains.Driver with { RatedA = 2.2 })
            )
        );

    [Fact]
    public void A_tap_lead_needs_something_to_fall_back_to()
    {
        Assert.True(Raises(FaultRules.FaultOverEmitter, FaultChains.Taps with { FallbackOhm = null }));
        Assert.False(Raises(FaultRules.FaultOverEmitter, FaultChains.Taps));
    }

    [Fact]
    public void A_part_that_may_fail_short_is_a_stop_and_an_unknown_one_a_warning()
    {
        var chain = FaultChains.Series with { Fails = FailureKind.ShortOrOpen };
        Assert.True(Raises(FaultRules.FaultOverEmitter, chain));
        chain = FaultChains.Series with { Fails = FailureKind.Unknown };
        Assert.False(Raises(FaultRules.FaultOverEmitter, chain));
        Assert.True(Raises(FaultRules.FaultByConstruction, chain));
        Assert.False(Raises(FaultRules.FaultByConstruction, FaultChains.Series));
        Assert.True(Raises(FaultRules.FaultByConstruction, FaultChains.Series with { LeadsApart = false }));
    }

    [Fact]
    public void Branches_need_a_floor_unless_the_driver_s_own_limit_holds()
    {
        var bare = FaultChains.Branches with { FloorOhm = null };
        Assert.True(Raises(FaultRules.NoFloor, bare));
        Assert.True(Raises(FaultRules.FaultOverEmitter, bare));
        Assert.False(Raises(FaultRules.NoFloor, FaultChains.Branches));
        Assert.False(Raises(FaultRules.FaultOverEmitter, FaultChains.Branches));
        var held = FaultChains.Spec(bare, driver: FaultChains.Driver with { LimitA = 2.0 });
        Assert.False(Raises(FaultRules.NoFloor, held));
        Assert.False(Raises(FaultRules.FaultOverEmitter, held));
        var over = FaultChains.Spec(bare, driver: FaultChains.Driver with { LimitA = 2.01 });
        Assert.True(Raises(FaultRules.NoFloor, over));
    }

    // R0 + B at a loose lead beside the dimmest position with the bleed in it.
    [Fact]
    public void A_bleed_brings_a_loose_lead_to_the_dimmest_step()
    {
        Assert.True(Raises(FaultRules.LooseLead, FaultChains.Series));
        Assert.False(Raises(FaultRules.LooseLead, FaultChains.Series with { BleedOhm = 2.7 }));
        Assert.True(Raises(FaultRules.LooseLead, FaultChains.Series with { BleedOhm = 50 }));
    }

    [Theory]
    [InlineData(1.6, false)]
    [InlineData(1.5, true)]
    public void A_contact_bears_the_brightest_position(double ratedA, bool raised) =>
        Assert.Equal(raised, Raises(FaultRules.ContactOverRating, FaultChains.Series with { ContactMostA = ratedA }));
}
