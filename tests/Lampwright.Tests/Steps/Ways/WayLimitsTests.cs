using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

/// <summary>What the top of the window, the protection and the start of the input leave of a way.</summary>
public class WayLimitsTests
{
    private static readonly WaysSpec Good = WaysLight.Good;

    private static WaysSpec Limits(double? top, double? over, OverVoltage then) =>
        Good.Driver(d => d with { WindowMostV = top, OverVoltageV = over, Over = then });

    private static double Warm(double amps) => Good.Model.VoltageV(amps, Good.WarmJunctionK);

    private static double Cold(double amps) => Good.Model.VoltageV(amps, Good.ColdJunctionK);

    [Theory]
    [InlineData(WayKind.SeriesResistor)]
    [InlineData(WayKind.ShuntResistor)]
    [InlineData(WayKind.DimmingInput)]
    public void A_way_counts_only_to_what_the_driver_gives_and_says_so(WayKind kind)
    {
        foreach (
            var spec in new[] { Limits(null, Warm(1.2), OverVoltage.Clamps), Limits(Warm(1.2), 60, OverVoltage.Clamps) }
        )
        {
            var way = spec.Of(kind);
            Assert.Equal(1.2, way.CurrentA!.Value.Most, 1e-6);
            var share = Good.Model.FluxLm(1.2, Good.WarmJunctionK) / Good.Model.FluxLm(1.74, Good.WarmJunctionK);
            Assert.Equal(share, way.LightShare!.Value.Most, 1e-6);
            Assert.Contains("% of that light, is to be had", way.Reason, StringComparison.Ordinal);
        }

        var room = Good.Of(kind);
        Assert.Equal(1.74, room.CurrentA!.Value.Most, 1e-9);
        Assert.DoesNotContain("is to be had", room.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void At_a_clamp_under_the_emitter_the_circuit_settles_at_what_is_counted()
    {
        var way = Limits(null, Warm(1.2), OverVoltage.Clamps).Of(WayKind.SeriesResistor);
        var bare = way.Circuit with { Load = ((EmitterLine)way.Circuit.Load) with { SeriesOhm = 0 } };
        var trace = WaySimulation.Of(bare, 0.3);
        Assert.True(trace.Settled);
        Assert.InRange(trace.MeanA / way.CurrentA!.Value.Most, 0.95, 1.01);
    }

    [Fact]
    public void A_trip_under_the_cold_emitter_leaves_a_series_resistor_no_light_and_a_shunt_what_fits()
    {
        var fits = Limits(null, Cold(1.74) + 0.01, OverVoltage.Trips);
        Assert.Equal(1.74, fits.Of(WayKind.SeriesResistor).CurrentA!.Value.Most, 1e-9);
        var trips = Limits(null, Cold(1.5), OverVoltage.Trips);
        var series = trips.Of(WayKind.SeriesResistor);
        Assert.Null(series.LightShare);
        Assert.Equal(Verdict.DoesNotWork, series.Verdict);
        Assert.Contains("never comes to that current", series.Reason, StringComparison.Ordinal);
        Assert.Equal(1.5, trips.Of(WayKind.ShuntResistor).CurrentA!.Value.Most, 1e-6);
    }

    [Fact]
    public void Half_of_the_light_that_is_not_to_be_had_has_no_efficiency()
    {
        var half = ((DriverOutput)Good.Of(WayKind.FixedSense).Circuit.Source).SetA;
        Assert.Null(Limits(Warm(half - 0.01), 60, OverVoltage.Clamps).Of(WayKind.ShuntResistor).EfficiencyAtHalf);
        Assert.NotNull(Limits(Warm(half + 0.01), 60, OverVoltage.Clamps).Of(WayKind.ShuntResistor).EfficiencyAtHalf);
    }

    [Fact]
    public void A_limit_that_is_not_told_is_a_range_that_is_said_to_be_assumed_and_peaks_take_its_top()
    {
        var untold = Limits(42, null, OverVoltage.Unknown);
        var way = untold.Of(WayKind.ChoppedWithoutCapacitor);
        Assert.Contains("42 V to 58.8 V (assumed, not told)", way.Reason, StringComparison.Ordinal);
        Assert.Equal(58.8, ((DriverOutput)way.Circuit.Source).LimitV, 1e-9);
        Assert.Contains(
            untold.Of(WayKind.ConverterBehind).Stresses,
            s => s.Contains("must stand up to 58.8 V (assumed)", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(
            "assumed",
            Limits(42, 46, OverVoltage.Unknown).Of(way.Kind).Reason,
            StringComparison.Ordinal
        );

        // The peak that is told is that of the circuit at the top of the range, followed over time.
        var chopped = untold.Of(WayKind.ChoppedBehindCapacitor);
        var clamped = chopped.Circuit with
        {
            Source = ((DriverOutput)chopped.Circuit.Source) with { Over = OverVoltage.Clamps },
        };
        var peak = WaySimulation.Of(clamped, 0.3).PeakA;
        var words = chopped.Stresses[0];
        var told = double.Parse(
            words.Split("peaks of ")[1].Split(' ')[0],
            System.Globalization.CultureInfo.InvariantCulture
        );
        Assert.InRange(told / peak, 0.97, 1.1);
    }

    [Fact]
    public void Draws_go_through_the_assumed_limit_and_keep_a_told_one()
    {
        var numbers = new WayNumbers(Limits(42, null, OverVoltage.Clamps));
        Assert.Equal(
            new Extent(42, 58.8),
            new(numbers.AssumedLimitV!.Value.Least, Math.Round(numbers.AssumedLimitV.Value.Most, 9))
        );
        Assert.Null(new WayNumbers(Good).AssumedLimitV);
        var (low, high) = (new WayNumber[WayNumbers.Count], new WayNumber[WayNumbers.Count]);
        numbers.Of(numbers.Nominal with { LimitV = 42 }, low);
        numbers.Of(numbers.Nominal with { LimitV = 58.8 }, high);
        const int Series = (int)WayKind.SeriesResistor;
        Assert.Equal(42 / 58.8, high[Series].EfficiencyAtHalf!.Value / low[Series].EfficiencyAtHalf!.Value, 1e-9);
    }

    [Fact]
    public void The_spread_of_the_next_try_is_in_the_rate()
    {
        var spec = Good.Driver(d => d with { Over = OverVoltage.Trips });
        var sharp = spec.Of(WayKind.ChoppedWithoutCapacitor).HiccupHz!.Value;
        var way = spec.Around(a => a with { RestartHalfS = 0.02 }).Of(WayKind.ChoppedWithoutCapacitor);
        var wide = way.HiccupHz!.Value;
        Assert.Equal(20, sharp.Most, 1e-9);
        Assert.Equal(1 / 0.03, wide.Most, 1e-9);
        Assert.Equal(1 / ((1 / sharp.Least) + 0.02), wide.Least, 1e-9);

        // Drivers at both ends of the wait, followed over time, keep within what is said.
        foreach (var wait in new[] { 0.03, 0.07 })
        {
            var circuit = way.Circuit with { Source = ((DriverOutput)way.Circuit.Source) with { RestartS = wait } };
            Assert.InRange(WaySimulation.Of(circuit, 0.6).HiccupHz!.Value, 0.97 * wide.Least, 1.03 * wide.Most);
        }
    }

    [Fact]
    public void An_input_starts_and_stays_on_up_to_the_resistance_and_not_beyond()
    {
        var random = new Random(23);
        var seen = new int[3];
        for (var n = 0; n < 90; n++)
        {
            double Pick(double a, double b) => a + ((b - a) * random.NextDouble());
            var (volts, watts) = (Pick(18, 60), Pick(5, 100));
            var on = Pick(0.25, 0.9) * volts;
            var off = Pick(0.5, 0.95) * on;
            seen[
                on < volts / 2 ? 0
                : off > volts / 2 ? 1
                : 2
            ]++;
            var most = ConstantPowerInput.MostOhm(volts, watts, off, on);
            WayTrace With(double ohm) =>
                WaySimulation.Of(
                    new(
                        new SupplyBehindResistance(volts, ohm),
                        new ConverterLine(watts, on, off, 1),
                        1e-3 / ohm,
                        0,
                        EmitterOnNode: false
                    ),
                    0.2
                );
            var who = $"{volts:0.00} V {watts:0.0} W on {on:0.00} V off {off:0.00} V: {most:0.000} ohm";
            var under = With(0.97 * most);
            Assert.True(under.Settled && under.HiccupHz is null, who);
            Assert.True(With(1.03 * most).HiccupHz is not null, who);
        }

        Assert.All(seen, s => Assert.True(s > 10));
    }

    [Fact]
    public void An_input_whose_start_the_supply_never_reaches_bears_no_resistance()
    {
        Assert.Equal(0, ConstantPowerInput.MostOhm(12, 10, 8, 12));
        Assert.Equal(12.0 * 12 / 40, ConstantPowerInput.MostOhm(12, 10), 1e-12);
    }

    [Fact]
    public void A_start_under_half_of_the_supply_is_told_as_what_ends_the_resistor()
    {
        var low = Good.Around(a => a with { InputOnV = 80, InputOffV = 60 }).Of(WayKind.SupplyResistor);
        Assert.Contains("no longer starts", low.Reason, StringComparison.Ordinal);
        var high = Good.Around(a => a with { InputOnV = 180, InputOffV = 60 }).Of(WayKind.SupplyResistor);
        Assert.DoesNotContain("no longer starts", high.Reason, StringComparison.Ordinal);
    }
}
