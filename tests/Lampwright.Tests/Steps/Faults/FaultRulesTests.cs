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
        Assert.Equal(
            ["STP045", "STP046", "STP047", "STP048", "STP049", "STP055", "STP056"],
            FaultRules.All.Select(r => r.Code)
        );

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
        Assert.True(Raises(FaultRules.NoFloor, held with { Corners = new(0, 0, 0, LimitMostA: 2.01) }));
        Assert.False(Raises(FaultRules.NoFloor, held with { Corners = new(0, 0, 0, LimitMostA: 2.0) }));
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

    [Fact]
    public void What_is_taken_on_the_maker_s_word_stands_where_the_stop_would()
    {
        var chain = FaultChains.Series with { Fails = FailureKind.ShortOrOpen, LeadsApart = false };
        Assert.False(Raises(FaultRules.TakenOnWord, chain));
        Assert.True(Raises(FaultRules.TakenOnWord, chain with { LeadsApart = true }));
        Assert.True(Raises(FaultRules.TakenOnWord, chain with { Fails = FailureKind.Open }));

        var spec = FaultChains.Spec(FaultChains.Series);
        var faults = FaultPlay.All(spec);
        var said = FaultFindings.Judge(spec, faults, 1.5, 0.3).Where(f => f.Rule == FaultRules.TakenOnWord).ToList();
        Assert.Equal(["steps.part.fails", "steps.lead.apart"], said.Select(f => f.Path));
        Assert.Contains("R0 short", said[0].Message, StringComparison.Ordinal);
        Assert.Contains("the emitter bears 2.00 A", said[0].Message, StringComparison.Ordinal);
        Assert.Contains("leads LED − and back touch", said[1].Message, StringComparison.Ordinal);
        Assert.All(
            faults.Where(f => f.Standing == FaultStanding.Excluded),
            f => Assert.Contains("on your word", f.Words, StringComparison.Ordinal)
        );
    }

    // A driver whose own limit holds needs nobody's word.
    [Fact]
    public void No_word_is_asked_for_where_nothing_would_stop() =>
        Assert.False(
            Raises(
                FaultRules.TakenOnWord,
                FaultChains.Spec(FaultChains.Series, driver: FaultChains.Driver with { LimitA = 1.9 })
            )
        );

    [Theory]
    [InlineData(24 * 23.9, 24.0, true)]
    [InlineData(24 * 24.1, 24.0, false)]
    public void A_fuse_is_named_as_far_as_the_list_goes(double watts, double volts, bool named)
    {
        var fuse = SupplyFuse.Of(watts, volts, null, false);
        Assert.Equal(named ? 32 : null, fuse.RatingA);
        var said = FaultFindings.Judge(fuse, "place.supply").ToList();
        Assert.Equal(named ? 0 : 1, said.Count);
        Assert.Equal(named, fuse.Words.Contains("next rating 32 A", StringComparison.Ordinal));
        Assert.Equal(!named, fuse.Words.Contains("No fuse is named", StringComparison.Ordinal));
    }

    [Fact]
    public void The_inrush_of_an_example_is_called_one() =>
        Assert.Contains(
            "as an example, half a sine of 30 A and 1 ms has 0.45 A²s",
            SupplyFuse.Of(69, 230, 0.95, true).Words,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_power_factor_that_nobody_gave_is_taken_in_one_place_and_said()
    {
        var taken = SupplyFuse.Of(69, 230, null, true);
        Assert.Equal(69 / (230 * 0.9), taken.WorkingA, 9);
        Assert.Contains("power factor taken as 0.9", taken.Words, StringComparison.Ordinal);
        Assert.Equal(20 / (230 * 0.6), SupplyFuse.Of(20, 230, null, true).WorkingA, 9);
        Assert.DoesNotContain("taken as", SupplyFuse.Of(69, 230, 0.95, true).Words, StringComparison.Ordinal);
        Assert.Equal(69.0 / 24, SupplyFuse.Of(69, 24, null, false).WorkingA, 9);
    }
}
