using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

/// <summary>Each limit of each way from both sides, on a light that is in order.</summary>
public class WaysComparisonTests
{
    private static readonly WaysSpec Good = WaysLight.Good;

    private static WaysSpec Over(OverVoltage over) => Good.Driver(d => d with { Over = over });

    [Fact]
    public void Every_way_is_judged_once_in_its_order() =>
        Assert.Equal(Enum.GetValues<WayKind>(), WaysComparison.Of(Good).Ways.Select(w => w.Kind));

    [Fact]
    public void A_resistor_in_the_supply_line_never_dims()
    {
        var way = Good.Of(WayKind.SupplyResistor);
        Assert.Equal((Verdict.DoesNotWork, Told.Yes), (way.Verdict, way.Hiccups));
        Assert.Equal(1, way.LightShare!.Value.Least, 1e-12);
        Assert.Empty(way.Picture.Crossings);

        // A little less than Vs²/(4·P) in the same circuit has both crossings, the upper one stable; a little more has none.
        var load = (ConverterLine)way.Circuit.Load;
        foreach (var (share, count) in new[] { (0.999, 2), (1.001, 0) })
        {
            var ohm = share * ConstantPowerInput.MostOhm(230, load.PowerW);
            var found = Crossings.Of(
                way.Circuit with
                {
                    Source = new SupplyBehindResistance(230, ohm),
                    Load = load with { OffV = 10, OnV = 20 },
                }
            );
            Assert.Equal(count, found.Count);
        }
    }

    [Theory]
    [InlineData(OverVoltage.Clamps, Verdict.WithDrawback, Told.Yes, Told.No)]
    [InlineData(OverVoltage.Trips, Verdict.DoesNotWork, Told.No, Told.Yes)]
    [InlineData(OverVoltage.Unknown, Verdict.AskFirst, Told.Unknown, Told.Unknown)]
    public void A_converter_behind_hangs_on_the_limit(OverVoltage over, Verdict verdict, Told regulates, Told hiccups)
    {
        var way = Over(over).Of(WayKind.ConverterBehind);
        Assert.Equal((verdict, regulates, hiccups), (way.Verdict, way.Regulates, way.Hiccups));
        Assert.Equal(over == OverVoltage.Trips, way.LightShare is null);
        Assert.Equal(over == OverVoltage.Trips, way.HiccupHz is not null);
        Assert.Single(way.Picture.Crossings);
    }

    [Fact]
    public void A_step_down_converter_needs_room_under_the_limit()
    {
        var volts = Good.Model.VoltageV(
            ((ConverterLine)Good.Of(WayKind.ConverterBehind).Circuit.Load).EmitterRegulatedA,
            Good.WarmJunctionK
        );
        Way At(double limit) =>
            Good.Driver(d => d with { WindowMostV = null, OverVoltageV = limit }).Of(WayKind.ConverterBehind);
        Assert.Equal(Verdict.DoesNotWork, At(volts - 0.01).Verdict);
        Assert.Null(At(volts - 0.01).EfficiencyAtHalf);
        Assert.Equal(Verdict.WithDrawback, At(volts + 0.01).Verdict);
    }

    [Fact]
    public void A_trip_whose_next_try_is_not_known_has_no_rate()
    {
        var spec = Over(OverVoltage.Trips).Around(a => a with { RestartS = null });
        foreach (var kind in new[] { WayKind.ConverterBehind, WayKind.SeriesResistor, WayKind.ChoppedWithoutCapacitor })
        {
            var way = spec.Of(kind);
            Assert.Equal((Told.Unknown, null), (way.Hiccups, way.HiccupHz));
            Assert.Equal(Told.No, way.Regulates);
        }
    }

    [Fact]
    public void A_series_resistor_dims_only_at_a_clamp()
    {
        Assert.Equal(1, Over(OverVoltage.Trips).Of(WayKind.SeriesResistor).LightShare!.Value.Least, 1e-12);
        Assert.True(Over(OverVoltage.Clamps).Of(WayKind.SeriesResistor).LightShare!.Value.Least < 0.2);
        Assert.Equal(Verdict.AskFirst, Over(OverVoltage.Unknown).Of(WayKind.SeriesResistor).Verdict);
    }

    [Fact]
    public void A_shunt_works_while_the_window_reaches_down_to_half()
    {
        var half = Good.Of(WayKind.FixedSense).Circuit.Source is DriverOutput d ? d.SetA : 0;
        var hot = Good.Model.VoltageV(half, Good.HotJunctionK);
        Way At(double least) => Good.Driver(x => x with { WindowLeastV = least }).Of(WayKind.ShuntResistor);
        Assert.Equal(Verdict.DoesNotWork, At(hot + 0.01).Verdict);
        Assert.Equal(Verdict.WithDrawback, At(hot - 0.01).Verdict);
    }

    [Fact]
    public void A_shunt_splits_the_current_as_the_straight_line_says()
    {
        var line = new EmitterModel(0, 28.8, 7.2, 0, 298.15, 1000, 1, FluxForm.Saturating, 0, 0, 0.1, 2);
        var way = (
            Good with
            {
                Model = line,
                Driver = Good.Driver with
                {
                    Sense = Good.Driver.Sense with { MeasuredA = null },
                    RatedA = 1,
                    LeastA = 0.1,
                },
            }
        ).Of(WayKind.ShuntResistor);
        var ohm = ((EmitterLine)way.Circuit.Load).ShuntOhm;
        Assert.Equal(0.5, (1 - (28.8 / ohm)) / (1 + (7.2 / ohm)), 1e-12);
        Assert.Equal(0.5 * 0.89, way.EfficiencyAtHalf!.Value, 1e-12);
        Assert.Equal(16.2, way.AddedHeatAtHalfW!.Value, 1e-9);
    }

    [Fact]
    public void Each_stop_stands_against_the_ways_that_it_is_about()
    {
        WayKind[] sense =
        [
            WayKind.FixedSense,
            WayKind.SteppedChain,
            WayKind.ParallelBranches,
            WayKind.SelectorShorting,
            WayKind.SelectorOpening,
        ];
        var side = Good.Driver(d => d with { Sense = d.Sense with { Side = SenseSide.Unknown } });
        var pulsed = Good.Driver(d => d with { Sense = d.Sense with { Carries = SenseCarries.Unknown } });
        var open = Good.Driver(d => d with { Isolated = Isolation.Unknown });
        foreach (var way in WaysComparison.Of(side).Ways)
        {
            Assert.Equal(sense.Contains(way.Kind), way.Stops.Contains("STP001"));
        }

        foreach (var way in WaysComparison.Of(pulsed).Ways)
        {
            Assert.Equal(sense.Contains(way.Kind), way.Stops.Contains("STP003"));
        }

        foreach (var way in WaysComparison.Of(open).Ways)
        {
            var apart = way.Kind is WayKind.SupplyResistor or WayKind.OtherDriver;
            Assert.Equal(!apart, way.Stops.Contains("STP002"));
        }

        // A way that only a stop stands against shows no value that would lead around it.
        var reason = side.Of(WayKind.SteppedChain).Reason;
        Assert.DoesNotContain("ohm", reason, StringComparison.Ordinal);
        Assert.Equal(["STP019"], Good.Of(WayKind.SelectorOpening).Stops);
        Assert.Empty(Good.Of(WayKind.SelectorShorting).Stops);
        Assert.Equal(Verdict.Works, Good.Of(WayKind.SteppedChain).Verdict);
    }

    [Fact]
    public void A_changed_sense_reaches_from_label_and_window_to_emitter_and_rating()
    {
        Extent Of(WaysSpec spec) => spec.Of(WayKind.SteppedChain).CurrentA!.Value;
        Assert.Equal(0.25, Of(Good).Least, 1e-12);
        Assert.Equal(1.75, Of(Good).Most, 1e-12);
        Assert.Equal(1.6, Of(Good with { EmitterMostA = 1.6 }).Most, 1e-12);
        var window = Good.Model.VoltageV(0.6, Good.HotJunctionK);
        Assert.Equal(0.6, Of(Good.Driver(d => d with { WindowLeastV = window })).Least, 1e-9);
        var top = Good.Model.VoltageV(1.2, Good.ColdJunctionK);
        Assert.Equal(1.2, Of(Good.Driver(d => d with { WindowMostV = top })).Most, 1e-9);

        // A protection that acts inside of the window ends it: no way gives a current at which the driver would trip.
        Assert.Equal(1.2, Of(Good.Driver(d => d with { OverVoltageV = top, Over = OverVoltage.Trips })).Most, 1e-9);
        Assert.Equal(1.75, Of(Good.Driver(d => d with { OverVoltageV = 46, Over = OverVoltage.Trips })).Most, 1e-12);
        Assert.Null(Good.Driver(d => d with { LeastA = 1.7 }).Of(WayKind.SteppedChain).EfficiencyAtHalf);
        Assert.Equal(
            Verdict.DoesNotWork,
            (Good.Driver(d => d with { LeastA = 1.7 }) with { EmitterMostA = 1.6 }).Of(WayKind.SteppedChain).Verdict
        );
    }

    [Fact]
    public void A_chosen_chain_bounds_its_own_way_only()
    {
        ResistorPart Part(double ohm) => new(ohm, 0, 3, 343, 428);
        var spec = Good with { Chain = new(Arrangement.SeriesChain, Part(0.3), [Part(0.2), Part(0.4)], 0) };
        var law = 1.74 * 0.195;
        Assert.Equal(law / 0.9, spec.Of(WayKind.SteppedChain).CurrentA!.Value.Least, 1e-9);
        Assert.Equal(law / 0.3, spec.Of(WayKind.SteppedChain).CurrentA!.Value.Most, 1e-9);
        Assert.Equal(0.25, spec.Of(WayKind.ParallelBranches).CurrentA!.Value.Least, 1e-12);
    }

    [Theory]
    [InlineData(60, OverVoltage.Trips, Told.No)]
    [InlineData(46, OverVoltage.Trips, Told.Yes)]
    [InlineData(46, OverVoltage.Clamps, Told.No)]
    [InlineData(48, OverVoltage.Trips, Told.Unknown)]
    public void Chopping_behind_the_capacitor_keeps_the_mean_unless_the_limit_cuts_in(
        double limit,
        OverVoltage over,
        Told hiccups
    )
    {
        var way = Good.Driver(d => d with { OverVoltageV = limit, Over = over }).Of(WayKind.ChoppedBehindCapacitor);
        Assert.Equal((Verdict.DoesNotWork, hiccups, Told.No), (way.Verdict, way.Hiccups, way.Regulates));
        Assert.Equal(Told.Yes, way.Blinks);
    }

    [Fact]
    public void A_dimming_input_serves_where_it_is_and_reaches_down()
    {
        Way Kind(DimmingInput kind, double least = 0.1) =>
            Good.Around(a => a with { Dimming = kind, DimmingLeast = least }).Of(WayKind.DimmingInput);
        Assert.Equal(Verdict.DoesNotWork, Kind(DimmingInput.None).Verdict);
        Assert.Equal(Verdict.AskFirst, Kind(DimmingInput.Unknown).Verdict);
        Assert.Equal(Verdict.Works, Kind(DimmingInput.Voltage).Verdict);
        var half = ((DriverOutput)Kind(DimmingInput.Chopped).Circuit.Source).SetA / 1.74;
        Assert.Equal(Verdict.Works, Kind(DimmingInput.Chopped, half - 1e-6).Verdict);
        Assert.Equal(Verdict.WithDrawback, Kind(DimmingInput.Chopped, half + 1e-6).Verdict);
    }

    [Fact]
    public void A_rated_current_of_nothing_is_a_bug_of_the_caller() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            WaysComparison.Of(Good.Driver(d => d with { RatedA = double.NaN }))
        );

    [Theory]
    [InlineData(WayKind.ShuntResistor)]
    [InlineData(WayKind.SeriesResistor)]
    [InlineData(WayKind.DimmingInput)]
    public void A_way_that_leaves_the_driver_over_the_emitters_limit_does_not_work(WayKind kind)
    {
        var over = (Good with { EmitterMostA = 1.0 }).Of(kind);
        Assert.Equal(Verdict.DoesNotWork, over.Verdict);
        Assert.Contains("over the 1 A the emitter takes", over.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "the emitter takes, and",
            (Good with { EmitterMostA = 1.75 }).Of(kind).Reason,
            StringComparison.Ordinal
        );
    }
}
