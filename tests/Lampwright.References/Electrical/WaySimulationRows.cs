using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md sections 3 (ripple, constant power), 4 (converter behind a constant current) and 5 (chopping), in the time simulation.</summary>
public class WaySimulationRows
{
    // E.L-7, published: stand-in for 36 V and 1 A, Vd 28.8 V, Rd 7.2 ohm (ITECH IT8731 manual p. 58).
    internal static EmitterLine Led { get; } =
        new(new(0, 28.8, 7.2, 0, 298.15, 3000, 1, FluxForm.Saturating, 0.15, 0.001, 0.1, 2), 298.15);

    internal static DriverOutput Clamping(double amps, double limit) =>
        new(amps, null, limit, OverVoltage.Clamps, UnderVoltage.Hiccups, 0.5);

    private static void Near(string what, double got, double expected, double tolerance) =>
        Assert.True(Math.Abs(got - expected) <= tolerance, $"{what}: {got}, expected {expected} ± {tolerance}");

    // All rows of section 4: 1.5 A, 470 uF, clamp 36 V. P 30 W, so V* = 20 V.
    private static WayCircuit Constant(double on, double off, double start = 0) =>
        new(Clamping(1.5, 36), new ConverterLine(30, on, off, 1), 470e-6, start);

    // E.C-1, derived: V* 20.0 V, time constant C·P/I0² = 6.267 ms. A start a little off V* grows by e in one time constant.
    [Theory]
    [InlineData(20.001)]
    [InlineData(19.999)]
    public void Crossing_on_the_flat_part_is_left_with_its_time_constant(double start)
    {
        var trace = WaySimulation.Of(Constant(14, 10, start), 6.267e-3, 1e-7);
        Near("grown to", (trace.VoltageV[^1] - 20) / (start - 20), Math.E, 0.003);
    }

    // E.C-2, derived: hiccup 10-14 V, period 3.201 ms (1.253 charging + 1.948 on), on 60.8 %; tolerance 1 %.
    [Fact]
    public void Lockout_below_the_crossing_hiccups()
    {
        var trace = WaySimulation.Of(Constant(14, 10));
        Near("period, ms", 1e3 / trace.HiccupHz!.Value, 3.201, 0.03201);
        Near("on", trace.MeanA, 0.608, 0.00608);
        var late = trace.TimeS.Zip(trace.VoltageV).Where(p => p.First > 0.05).Select(p => p.Second).ToArray();
        Near("least", late.Min(), 10, 0.1);
        Near("most", late.Max(), 14, 0.1);
        Assert.False(trace.Settled);
    }

    // E.C-3, derived: settles at 36.0 V, 0.833 A (transient solution 35.994 V); tolerance 0.1 V.
    [Fact]
    public void Lockout_above_the_crossing_settles_at_the_clamp()
    {
        var trace = WaySimulation.Of(Constant(24, 22));
        Near("V", trace.VoltageV[^1], 35.994, 0.1);
        Near("A", 30 / trace.VoltageV[^1], 0.833, 0.003);
        Assert.True(trace.Settled);
        Assert.Null(trace.HiccupHz);
    }

    // E.C-4, derived: enabled at 20.2 V it settles at 36 V, at 19.8 V it hiccups between 10 V and 14 V; tolerance 0.1 V.
    [Theory]
    [InlineData(20.2, true)]
    [InlineData(19.8, false)]
    public void Side_of_the_crossing_decides(double start, bool settles)
    {
        var trace = WaySimulation.Of(Constant(14, 10, start));
        Assert.Equal(settles, trace.Settled);
        Assert.Equal(settles, trace.HiccupHz is null);
        if (settles)
        {
            Near("V", trace.VoltageV[^1], 36, 0.1);
        }
        else
        {
            Near("period, ms", 1e3 / trace.HiccupHz!.Value, 3.201, 0.03201);
        }
    }

    // Section 4, derived: P > I0·Vmax always collapses.
    [Fact]
    public void More_power_than_the_source_has_always_collapses() =>
        Assert.NotNull(WaySimulation.Of(new(Clamping(1.5, 36), new ConverterLine(60, 34, 22, 1), 470e-6)).HiccupHz);

    // E.C-7, derived: buck stage 0.5 A into 28.8 V + 7.2 ohm, I0 1 A, clamp 40 V: input 0.405 A at the clamp; tolerance 1e-3.
    [Fact]
    public void Stage_set_below_the_source_runs_at_the_clamp()
    {
        var load = new ConverterLine(16.2, 9, 8, 0.5, Led);
        var trace = WaySimulation.Of(new(Clamping(1, 40), load, 470e-6));
        Assert.True(trace.Settled);
        Near("emitter", trace.MeanA, 0.5, 1e-6);
        Near("input", load.CurrentA(trace.VoltageV[^1]), 0.405, 1e-3);
    }

    // Section 4, derived: a stage set above I0 drops out and the emitter simply gets I0 (28.8 V + 7.2 ohm at 1 A: 36 V).
    [Fact]
    public void Stage_set_above_the_source_drops_out()
    {
        var trace = WaySimulation.Of(new(Clamping(1, 60), new ConverterLine(1.3 * 38.16, 9, 8, 1.3, Led), 470e-6));
        Assert.True(trace.Settled);
        Near("emitter", trace.MeanA, 1, 1e-4);
        Near("V", trace.VoltageV[^1], 36, 1e-3);
    }

    // E.D-13a, derived: 24 V, 1 ohm, 100 W: 18.633 V, and 5.367 V is not stable; E.D-13c: 48 V, 40 W, R 10 and 15 ohm.
    [Theory]
    [InlineData(24, 1, 100, 18.633, 0.001)]
    [InlineData(48, 10, 40, 37.27, 0.01)]
    public void Supply_behind_a_resistor_feeds_constant_power(
        double open,
        double ohm,
        double watts,
        double volts,
        double tolerance
    )
    {
        var trace = WaySimulation.Of(
            new(new SupplyBehindResistance(open, ohm), new ConverterLine(watts, 0.6 * open, 4, 1), 470e-6, open, false)
        );
        Assert.True(trace.Settled);
        Near("V", trace.VoltageV[^1], volts, tolerance);
    }

    // E.D-13a, derived: from just above the lower crossing up, from just below it down.
    [Theory]
    [InlineData(5.40, true)]
    [InlineData(5.33, false)]
    public void Lower_crossing_of_a_supply_is_not_stable(double start, bool up)
    {
        var trace = WaySimulation.Of(
            new(new SupplyBehindResistance(24, 1), new ConverterLine(100, 5, 3, 1), 470e-6, start, false)
        );
        Assert.Equal(up, trace.Settled);
        Assert.Equal(up, trace.VoltageV[^1] > 18);
    }

    // E.D-13c, derived: at 15 ohm there is no solution, so it cannot settle.
    [Fact]
    public void Too_much_resistance_leaves_no_operating_point() =>
        Assert.NotNull(
            WaySimulation
                .Of(new(new SupplyBehindResistance(48, 15), new ConverterLine(40, 36, 20, 1), 470e-6, 0, false))
                .HiccupHz
        );

    // E.D-14b, c, derived: 24 V, 100 uH, 100 uF, 60 W, 0.100 ohm, started at 2.5265 A and 24.2 V; peak to peak of vC; tolerance 2 %.
    [Theory]
    [InlineData(0, 2, 0.96)]
    [InlineData(18, 20, 1.71)]
    [InlineData(38, 40, 3.31)]
    public void Inductance_before_constant_power_grows(double fromMs, double toMs, double ripple)
    {
        var trace = Inductive(0.100, 0.04);
        var volts = trace
            .TimeS.Zip(trace.VoltageV)
            .Where(p => p.First >= 1e-3 * fromMs && p.First <= 1e-3 * toMs)
            .ToArray();
        Near("peak to peak", volts.Max(p => p.Second) - volts.Min(p => p.Second), ripple, 0.02 * ripple);
    }

    // E.D-14b, derived: 1583 Hz; E.D-14a, derived: smallest R 0.1064 ohm, ignoring its voltage drop; tolerance 1 %.
    [Theory]
    [InlineData(0.100, true)]
    [InlineData(0.112, false)]
    public void Inductance_oscillates_below_the_least_resistance(double ohm, bool grows)
    {
        var trace = Inductive(ohm, 0.04);
        var late = trace.TimeS.Zip(trace.VoltageV).Where(p => p.First >= 0.03).ToArray();
        var middle = late.Average(p => p.Second);
        var rising = late.Skip(1)
            .Zip(late)
            .Where(p => p.First.Second > middle && p.Second.Second <= middle)
            .Select(p => p.First.First)
            .ToArray();
        Near("Hz", (rising.Length - 1) / (rising[^1] - rising[0]), 1583, 16);
        var early = trace.TimeS.Zip(trace.VoltageV).Where(p => p.First <= 0.01).ToArray();
        Assert.Equal(
            grows,
            late.Max(p => p.Second) - late.Min(p => p.Second) > early.Max(p => p.Second) - early.Min(p => p.Second)
        );
    }

    private static WayTrace Inductive(double ohm, double seconds) =>
        WaySimulation.Of(
            new(
                new SupplyBehindResistance(24, ohm) { Henry = 100e-6, StartA = 2.5265 },
                new ConverterLine(60, 10, 5, 1),
                100e-6,
                24.2,
                false
            ),
            seconds
        );

    // E.D-11a, derived: I0 1 A, Rd 7.2 ohm, 50 Hz mains: current 0.7842-1.2158 A and 0.9000-1.1000 A; Vpp 3.108 and 1.440 V; tolerance 1e-3.
    [Theory]
    [InlineData(1000e-6, 0.7842, 1.2158, 3.108)]
    [InlineData(2200e-6, 0.9000, 1.1000, 1.440)]
    public void Ripple_of_a_single_stage(double farad, double least, double most, double volts)
    {
        var source = Clamping(1, double.PositiveInfinity) with { RippleShare = 1, RippleHz = 100 };
        var trace = WaySimulation.Of(new(source, Led, farad, 36), 0.4);
        Assert.True(trace.Settled);
        var late = Enumerable.Range(0, trace.TimeS.Count).Where(k => trace.TimeS[k] > 0.3).ToArray();
        Near("least", late.Min(k => trace.EmitterA[k]), least, 1e-3);
        Near("most", trace.PeakA, most, 1e-3);
        Near("mean", trace.MeanA, 1, 1e-3);
        Near("Vpp", late.Max(k => trace.VoltageV[k]) - late.Min(k => trace.VoltageV[k]), volts, 2e-3);
    }

    // E.M-3 and E.M-4a, derived (transient solution): duty 0.5, 200 Hz, 470 uF, switch 1 mohm; mean, peak, V; tolerance 1 %.
    [Theory]
    [InlineData(60, 1.000, 2.41, 40.9, 46.2)]
    [InlineData(42, 0.795, 1.84, 0, 0)]
    [InlineData(38, 0.597, 1.29, 0, 0)]
    public void Chopping_behind_the_capacitor(double limit, double mean, double peak, double least, double most)
    {
        var trace = WaySimulation.Of(new(Clamping(1, limit), new ChoppedLine(Led, 200, 0.5, 1e-3), 470e-6), 0.2);
        Assert.True(trace.Settled);
        Near("mean", trace.MeanA, mean, 0.01 * mean);
        Near("peak", trace.PeakA, peak, 0.01 * peak);
        if (least > 0)
        {
            var late = trace.TimeS.Zip(trace.VoltageV).Where(p => p.First > 0.15).Select(p => p.Second).ToArray();
            Near("least V", late.Min(), least, 0.01 * least);
            Near("most V", late.Max(), most, 0.01 * most);
        }
    }
}
