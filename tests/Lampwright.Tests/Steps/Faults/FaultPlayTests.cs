using CsCheck;
using Lampwright.Steps;
using Lampwright.Steps.Faults;

namespace Lampwright.Tests.Steps.Faults;

public class FaultPlayTests
{
    private static readonly Gen<ChainSpec> AnyChain =
        from kind in Gen.Enum<Arrangement>()
        from n in Gen.Int[0, 5]
        from ohms in Gen.Double[-2, 1].Select(x => Math.Pow(10, x)).Array[6]
        from taps in Gen.Enum<SenseTaps>()
        from extra in Gen.Int[0, 7]
        from contact in Gen.Double[0, 0.05]
        select FaultChains.Series with
        {
            Arrangement = kind,
            Fixed = FaultChains.Part(ohms[0]),
            Switched = [.. ohms.Skip(1).Take(n).Select(FaultChains.Part)],
            ContactOhm = contact < 0.01 ? 0 : contact,
            Taps = taps,
            BleedOhm = (extra & 1) == 1 ? ohms[5] * 3 : null,
            FallbackOhm = (extra & 2) == 2 ? 100 : null,
            FloorOhm = (extra & 4) == 4 ? ohms[1] : null,
        };

    [Fact]
    public void Every_fault_of_any_chain_gives_numbers_and_words() =>
        AnyChain.Sample(
            chain =>
            {
                foreach (var f in FaultPlay.All(FaultChains.Spec(chain)))
                {
                    Assert.True(double.IsFinite(f.CurrentA) && f.CurrentA >= 0, $"{f}");
                    Assert.True(f.CurrentMostA is null || f.CurrentMostA >= f.CurrentA * (1 - 1e-9), $"{f}");
                    Assert.True(f.SenseV is null || double.IsFinite(f.SenseV.Value), $"{f}");
                    Assert.NotEmpty(f.Words);
                    Assert.NotEmpty(f.See);
                    Assert.DoesNotContain("NaN", f.Words, StringComparison.Ordinal);
                    Assert.DoesNotContain("∞", f.Words, StringComparison.Ordinal);
                }
            },
            seed: "0000lampft01",
            iter: 300
        );

    [Fact]
    public void A_circuit_without_a_fault_is_the_network() =>
        AnyChain.Sample(
            chain =>
            {
                var spec = FaultChains.Spec(chain) with
                {
                    Driver = FaultChains.Driver with { RatedA = 1e4, OverVoltageV = null },
                };
                var (network, circuit) = (new ChainNetwork(chain), new SenseCircuit(chain, spec.AirK));
                var ohms = chain.Switched.Prepend(chain.Fixed).Select(p => p.Ohm).ToArray();
                for (var i = 0; i < network.CombinationCount; i++)
                {
                    var ohm = network.TotalOhm(i, ohms, [chain.ContactOhm], network.LeadOhm(spec.AirK));
                    var point = FaultPoints.At(
                        circuit,
                        spec,
                        default,
                        SenseCircuit.Closed(network.Switches(i)),
                        chain.ContactOhm,
                        [],
                        []
                    );

                    // With a fallback of 100 ohm beside the tap lead a little of the lead that falls out comes back.
                    var off = Math.Abs((point.EmitterA * ohm / 0.339) - 1);
                    Assert.True(off < 5e-4, $"{chain.Arrangement} {network.Switches(i)}: {point.EmitterA * ohm} V");
                }
            },
            seed: "0000lampft02",
            iter: 200
        );

    // In the series arrangement with the fixed resistor on the board, a broken lead never gives more than that resistor lets through.
    [Fact]
    public void A_broken_lead_of_a_series_chain_never_raises_the_current() =>
        AnyChain
            .Where(c => c.Arrangement == Arrangement.SeriesChain && c.Taps == SenseTaps.OnTheBoard)
            .Sample(
                chain =>
                {
                    var (spec, circuit) = (FaultChains.Spec(chain), new SenseCircuit(chain, 313.15));
                    for (var closed = 0; closed < 1 << chain.Switched.Count; closed++)
                    {
                        var sound = FaultPoints.At(circuit, spec, default, closed, chain.ContactOhm, [], []);
                        for (var lead = 0; lead < circuit.Leads.Count; lead++)
                        {
                            var fault = new Fault(FaultKind.LeadBroken, lead);
                            var point = FaultPoints.At(circuit, spec, fault, closed, chain.ContactOhm, [], []);
                            Assert.True(
                                point.EmitterMostA <= sound.EmitterMostA * (1 + 1e-9) + 1e-6,
                                $"{lead}: {point}"
                            );
                        }
                    }
                },
                seed: "0000lampft03",
                iter: 100
            );

    // The positions that are played hold the greatest current of all positions.
    [Fact]
    public void No_position_is_worse_than_those_that_are_played() =>
        AnyChain.Sample(
            chain =>
            {
                var (spec, circuit) = (FaultChains.Spec(chain), new SenseCircuit(chain, 313.15));
                var n = chain.Switched.Count;
                foreach (var result in FaultPlay.All(spec))
                {
                    double At(int closed) =>
                        FaultPoints.At(circuit, spec, result.Fault, closed, chain.ContactOhm, [], []).EmitterMostA;
                    var all =
                        chain.Arrangement == Arrangement.Selector
                            ? Enumerable.Range(0, n).Select(k => 1 << k).Append(n == 0 ? 0 : 1)
                            : Enumerable.Range(0, 1 << n);
                    var most = all.Max(At);
                    var told = result.CurrentMostA ?? double.PositiveInfinity;
                    Assert.True(told <= most * (1 + 1e-6) + 1e-5, $"{result.What}: {told}, all {most}");
                    Assert.True(most <= 2 || told >= most * (1 - 1e-6), $"{result.What}: {told}, all {most}");
                }
            },
            seed: "0000lampft04",
            iter: 60
        );

    [Fact]
    public void Touching_chain_leads_leave_the_fixed_resistor()
    {
        var f = FaultChains.Of(FaultChains.Spec(FaultChains.Series), "leads out and back touch");
        Assert.Equal(0.339 / 0.195, f.CurrentA, 6);
        Assert.Equal(Survival.Yes, f.Emitter);
        Assert.Equal(0.339, f.SenseV!.Value, 6);
    }

    [Fact]
    public void A_loose_lead_with_a_bleed_leaves_both_in_the_loop()
    {
        var f = FaultChains.Of(FaultChains.Spec(FaultChains.Series with { BleedOhm = 1 }), "lead out broken");
        Assert.Equal(0.339 / 1.195, f.CurrentA, 6);
        Assert.Equal("dimmer than the plate says", f.See);
    }

    [Fact]
    public void An_open_sense_path_jumps_by_what_the_emitter_gives_up()
    {
        var f = FaultChains.Of(FaultChains.Spec(FaultChains.Series), "lead back broken");
        Assert.Equal(0, f.CurrentA, 3);
        Assert.Equal(0.339 + (2.5 * f.SoundA), f.SenseV!.Value, 6);
    }

    [Fact]
    public void The_jump_counts_the_whole_fall_of_the_emitter_down_to_what_a_sense_input_draws()
    {
        var spec = FaultChains.Spec(FaultChains.Series);
        var model = new EmitterModel(
            0.577,
            33.7,
            2.86,
            -0.018,
            298.15,
            6600,
            1.4,
            FluxForm.Saturating,
            0.1,
            0,
            0.35,
            1.8
        );
        spec = spec with { Emitter = EmitterStraight.Of(model, 1.53, 298.15, 2.0) };
        var f = FaultChains.Of(spec, "lead back broken");

        // Thirteen volts and not the four of the straight line: 0.577 V for each of the ln(1.53 A/1 µA) = 14.24, and 2.86 Ω times 1.53 A.
        Assert.Equal(0.339 + model.VoltageV(f.SoundA, 298.15) - model.VoltageV(1e-6, 298.15), f.SenseV!.Value, 0.05);
        Assert.InRange(f.SenseV!.Value, 12.5, 13.5);
        Assert.Equal(Survival.Unknown, f.Driver);
        Assert.Equal(Survival.Yes, f.Emitter);
        Assert.Contains("sure to bear", f.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lead LED + broken", null)]
    [InlineData("emitter pulled off while powered, and put back", null)]
    [InlineData("emitter pulled off while powered, and put back", 1.9)]
    public void An_emitter_that_comes_back_to_an_output_of_unknown_voltage_is_not_said_to_survive(
        string what,
        double? limitA
    )
    {
        var driver = FaultChains.Driver with { OverVoltageV = null, Over = OverVoltage.Unknown, LimitA = limitA };
        var f = FaultChains.Of(FaultChains.Spec(FaultChains.Series, driver: driver), what);
        Assert.Equal(Survival.Unknown, f.Emitter);
        Assert.Equal(Survival.Unknown, f.Driver);
        Assert.Null(f.CurrentMostA);
        Assert.Contains("not known", f.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("by-passes", f.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_driver_s_own_limit_holds_what_nothing_else_does()
    {
        var driver = FaultChains.Driver with { LimitA = 1.9 };
        var f = FaultChains.Of(FaultChains.Spec(FaultChains.Series, driver: driver), "leads LED − and back touch");
        Assert.Equal(1.9, f.CurrentMostA!.Value, 6);
        Assert.Equal(Survival.Yes, f.Emitter);
        var unknown = FaultChains.Driver with { OverVoltageV = null };
        f = FaultChains.Of(FaultChains.Spec(FaultChains.Series, driver: unknown), "leads LED − and back touch");
        Assert.Null(f.CurrentMostA);
        Assert.Equal(Survival.Unknown, f.Emitter);
    }

    [Fact]
    public void A_reconnected_emitter_sees_the_output_s_voltage_limit()
    {
        var f = FaultChains.Of(FaultChains.Spec(FaultChains.Series), "emitter pulled off while powered, and put back");
        Assert.InRange(f.PeakA!.Value, 5.4, 6); // (46 − 31)/(2.5 + 0.22)
        Assert.Equal(FaultStanding.AnyLight, f.Standing);
    }
}
