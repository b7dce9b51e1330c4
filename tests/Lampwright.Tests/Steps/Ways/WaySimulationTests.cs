using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

public class WaySimulationTests
{
    private static EmitterLine Led => new(LineTests.Straight(28.8, 7.2), 298.15);

    private static DriverOutput Driver(double amps, double limit, OverVoltage over = OverVoltage.Clamps) =>
        new(amps, null, limit, over, UnderVoltage.Hiccups, 0.02);

    // References, electrical.md section 4: the period in closed form.
    [Fact]
    public void Period_of_the_hiccup_is_the_closed_form()
    {
        var random = new Random(11);
        for (var n = 0; n < 40; n++)
        {
            double Pick(double a, double b) => a + ((b - a) * random.NextDouble());
            var (amps, farad, watts) = (Pick(0.2, 3), Pick(10e-6, 900e-6), Pick(5, 80));
            var cross = watts / amps;
            var on = Pick(0.2, 0.95) * cross;
            var off = Pick(0.3, 0.9) * on;
            var charging = farad * (on - off) / amps;
            var running =
                farad
                * (
                    -((on - off) / amps)
                    - (watts / (amps * amps) * Math.Log((watts - (amps * on)) / (watts - (amps * off))))
                );
            var circuit = new WayCircuit(
                Driver(amps, 3 * cross),
                new ConverterLine(watts, on, Math.Max(off, 2.1), 1),
                farad
            );
            if (off < 2.1)
            {
                continue;
            }

            var got = 1 / WaySimulation.Of(circuit).HiccupHz!.Value;
            Assert.Equal(charging + running, got, 1e-3 * got);
        }
    }

    [Fact]
    public void Charge_that_comes_in_and_does_not_go_out_stays()
    {
        var random = new Random(5);
        for (var n = 0; n < 150; n++)
        {
            var circuit = RandomCircuits.Sound(random);
            var run = new WayRun(circuit, 1e-7);
            run.Until(0.02, record: true);
            var trace = run.Record;
            var (kept, moved) = (0.0, 0.0);
            for (var k = 1; k < trace.Time.Count; k++)
            {
                var dt = trace.Time[k] - trace.Time[k - 1];
                var (a, b) = (Rates(circuit, trace, k - 1), Rates(circuit, trace, k));
                kept += 0.5 * dt * (a.Source - a.Load + b.Source - b.Load);
                moved += 0.5 * dt * (a.Source + a.Load + b.Source + b.Load);
            }

            var expected = circuit.CapacitorF * (trace.Volts[^1] - trace.Volts[0]);
            Assert.True(
                Math.Abs(kept - expected) <= 2e-3 * (moved + Math.Abs(expected)),
                $"{n}: {circuit}: {kept} {expected} {moved}"
            );
        }
    }

    private static (double Source, double Load) Rates(WayCircuit circuit, WayRecord trace, int k)
    {
        var v = trace.Volts[k];
        var runs = circuit.Load is EmitterLine || trace.Amps[k] > 0;
        return (circuit.Source.CurrentA(v), runs ? circuit.Load.CurrentA(v) : 0);
    }

    [Fact]
    public void Half_the_tolerance_changes_nothing_that_is_settled()
    {
        var random = new Random(7);
        for (var n = 0; n < 150; n++)
        {
            var circuit = RandomCircuits.Any(random);
            var (one, half) = (WaySimulation.Of(circuit), WaySimulation.Of(circuit, 0.1, 0.5e-5));
            Assert.Equal(one.HiccupHz is null, half.HiccupHz is null);
            if (one.HiccupHz is { } hertz)
            {
                Assert.True(
                    Math.Abs(hertz - half.HiccupHz!.Value) <= 1e-3 * hertz,
                    $"{hertz} {half.HiccupHz} {circuit} {string.Join("; ", one.Events)}"
                );
            }

            if (one.Settled && half.Settled && one.TimeS[^1] == half.TimeS[^1])
            {
                Assert.Equal(one.VoltageV[^1], half.VoltageV[^1], 1e-3 * Math.Max(1, one.VoltageV[^1]));
                Assert.Equal(one.MeanA, half.MeanA, 2e-3 * Math.Max(1e-3, one.MeanA));
            }
        }
    }

    [Fact]
    public void No_circuit_breaks_it()
    {
        var random = new Random(1);
        for (var n = 0; n < 600; n++)
        {
            var circuit = RandomCircuits.Any(random);
            var trace = WaySimulation.Of(circuit, n % 10 == 0 ? 1 : 0.1);
            Assert.Equal(trace.TimeS.Order(), trace.TimeS);
            double[] all = [.. trace.VoltageV, .. trace.EmitterA, .. trace.LightShare];
            Assert.True(all.All(double.IsFinite), $"{circuit}");
            Assert.True(trace.EmitterA.Concat(trace.LightShare).All(x => x >= 0), $"{circuit}");
            Assert.Equal(trace.TimeS.Count, trace.VoltageV.Count);
            Assert.Equal(trace.TimeS.Count, trace.LightShare.Count);
            Assert.True(trace.TimeS.Count <= 3100 && trace.Events.Count <= 101);
            Assert.True(trace is { MeanA: >= 0, PeakA: >= 0 } && trace.MeanA <= trace.PeakA * (1 + 1e-9));
            Assert.True(trace.HiccupHz is null or (> 0 and < 1e12));
            Assert.False(trace.Settled && trace.HiccupHz is not null);
            Assert.Equal(trace.Events.Select(e => e.AtS).Order(), trace.Events.Select(e => e.AtS));
        }
    }

    // Closed form: from the trip the emitter empties the capacitor for the restart time, then the driver fills it again at a constant current less the emitter's.
    [Fact]
    public void Trip_waits_and_tries_again()
    {
        var load = new ConverterLine(0, 0, 0, 0);
        var trace = WaySimulation.Of(new(Driver(1, 40, OverVoltage.Trips), load with { PowerW = 4 }, 1e-3, 30), 0.5);
        Assert.NotNull(trace.HiccupHz);

        // Constant power while off: ½C(40² − V²) = P·t; then C·dV/dt = I − P/V up to 40 V again.
        var low = Math.Sqrt(1600 - (2 * 4 * 0.02 / 1e-3));
        var up = 1e-3 * ((40 - low) + (4 * Math.Log((40 - 4) / (low - 4))));
        Assert.Equal(1 / (0.02 + up), trace.HiccupHz.Value, 1e-3 * trace.HiccupHz.Value);
        Assert.Contains(trace.Events, e => e.Words == "driver switches off at its limit of 40.0 V");
    }

    [Fact]
    public void Slow_restart_is_found_beyond_the_trace()
    {
        var trace = WaySimulation.Of(
            new(Driver(1, 40, OverVoltage.Trips) with { RestartS = 0.6 }, Led with { SeriesOhm = 20 }, 1e-4)
        );
        Assert.InRange(trace.HiccupHz!.Value, 1 / 0.62, 1 / 0.6);
        Assert.Equal(0.1, trace.TimeS[^1], 1e-12);
    }

    [Fact]
    public void Slow_restart_is_found_behind_a_switch_that_chops()
    {
        var driver = Driver(1, 40, OverVoltage.Trips) with { RestartS = 0.5 };
        var trace = WaySimulation.Of(new(driver, new ChoppedLine(Led, 200, 0.5, 0.01), 1e-5));
        Assert.InRange(trace.HiccupHz!.Value, 1 / 0.52, 1 / 0.5);
    }

    [Fact]
    public void What_is_not_known_is_shown_as_the_worse()
    {
        var beyond = WaySimulation.Of(new(Driver(1, 32, OverVoltage.Unknown), Led, 1e-4));
        Assert.NotNull(beyond.HiccupHz);
        Assert.Contains(beyond.Events, e => e.Words.Contains("not known", StringComparison.Ordinal));
        var under = Driver(1, 60) with { LeastV = 37, Under = UnderVoltage.Unknown };
        var below = WaySimulation.Of(new(under, Led, 1e-4));
        Assert.NotNull(below.HiccupHz);
        Assert.Contains(below.Events, e => e.Words.Contains("not known", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(35.9, true)]
    [InlineData(36.1, false)]
    public void Window_holds_the_emitter_or_does_not(double least, bool holds)
    {
        var driver = Driver(1, 60) with { LeastV = least, Under = UnderVoltage.Stops };
        var trace = WaySimulation.Of(new(driver, Led, 1e-4));
        Assert.True(trace.Settled);
        Assert.Null(trace.HiccupHz);
        Assert.Equal(holds ? 1 : 0, trace.MeanA, 1e-3);
    }

    [Fact]
    public void Wide_capacitor_is_given_time_to_charge()
    {
        var driver = Driver(1, 60) with { LeastV = 30, Under = UnderVoltage.Stops };
        Assert.Equal(1, WaySimulation.Of(new(driver, Led, 10e-3), 3).MeanA, 1e-3);
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e-12)]
    public void Endless_events_are_bounded_and_told(double farad)
    {
        var trace = WaySimulation.Of(new(Driver(1.5, 36), new ConverterLine(30, 14, 10, 1), farad));
        Assert.StartsWith("followed for", trace.Events[^1].Words, StringComparison.Ordinal);
        Assert.Equal(470e-6 / 3.201e-3 / farad, trace.HiccupHz!.Value, 0.01 * trace.HiccupHz.Value);
    }

    [Fact]
    public void Very_fast_chopping_is_bounded_and_told() =>
        Assert.StartsWith(
            "followed for",
            WaySimulation.Of(new(Driver(1, 60), new ChoppedLine(Led, 1e6, 0.5, 0.01), 470e-6)).Events[^1].Words,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    public void Switch_that_never_moves_is_open_or_closed(double duty, double amps)
    {
        var trace = WaySimulation.Of(new(Driver(1, 40), new ChoppedLine(Led, 200, duty, 1e-3), 47e-6));
        Assert.Equal(amps, trace.MeanA, 1e-3);
    }

    [Fact]
    public void Light_is_a_share_of_that_at_the_set_current()
    {
        var trace = WaySimulation.Of(new(Driver(1, 60), Led with { ShuntOhm = 144 }, 47e-6));
        var model = Led.Model;
        Assert.Equal(model.FluxLm(trace.EmitterA[^1], 298.15) / model.FluxLm(1, 298.15), trace.LightShare[^1], 1e-9);
    }

    [Fact]
    public void Step_is_of_third_order()
    {
        // C·dV/dt = I − P/V has t = C/I·(V − V0 + P/I·ln((V − P/I)/(V0 − P/I))).
        var d = new WayDynamics(new(Driver(1, 1e4), new ConverterLine(20, 10, 5, 1), 1e-3, 25));
        double After(int steps)
        {
            var (v, h) = (25.0, 8e-3 / steps);
            for (var n = 0; n < steps; n++)
            {
                v = new WayStep(d, n * h, v, 0).After(h).V;
            }

            return 1e-3 * (v - 25 + (20 * Math.Log((v - 20) / 5)));
        }

        var (coarse, fine) = (After(4) - 8e-3, After(8) - 8e-3);
        Assert.InRange(coarse / fine, 6, 11);
    }

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(double.NaN, 0.1)]
    [InlineData(1e-4, 0)]
    [InlineData(1e-4, double.PositiveInfinity)]
    public void Bad_arguments_are_refused(double farad, double seconds) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaySimulation.Of(new(Driver(1, 40), Led, farad), seconds));
}
