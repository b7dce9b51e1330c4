using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md sections 3 to 5 by the closed forms and the crossings; the same circuits over time are in <see cref="WaySimulationRows"/>.</summary>
public class WayRows
{
    // E.L-7, published: ITECH IT8731 manual p. 58: 28.8 V + 7.2 ohm.
    private static readonly EmitterModel StandIn = new(
        0,
        28.8,
        7.2,
        0,
        298.15,
        1,
        1,
        FluxForm.Saturating,
        0,
        0,
        0.1,
        3
    );

    private static DriverOutput Source(double amps, double limit) =>
        new(amps, null, limit, OverVoltage.Clamps, UnderVoltage.Unknown, 0.5);

    private static void Near(double got, double expected, double tolerance, string what) =>
        Assert.True(Math.Abs(got - expected) <= tolerance, $"{what}: {got}, expected {expected} ± {tolerance}");

    [Theory]
    [InlineData(24, 1, 100, 18.633, 5.367, 1e-3)] // E.D-13a, derived
    [InlineData(48, 10, 40, 37.27, 10.73, 0.01)] // E.D-13c, derived (the lower one from the sum of both)
    [InlineData(48, 14.4, 40, 24, 24, 0.01)] // E.D-13c, the limit
    public void Voltages_of_a_constant_power_input(
        double open,
        double ohm,
        double watts,
        double upper,
        double lower,
        double tolerance
    )
    {
        var got = ConstantPowerInput.Voltages(open, ohm, watts)!.Value;
        Near(got.UpperV, upper, tolerance, "upper");
        Near(got.LowerV, lower, tolerance, "lower");
    }

    [Fact] // E.D-13a, derived: 28.80 W in the resistor, at most 144 W; E.D-13c: none at 15 ohm
    public void Limits_of_a_constant_power_input()
    {
        var upper = ConstantPowerInput.Voltages(24, 1, 100)!.Value.UpperV;
        Near((24 - upper) * (24 - upper), 28.80, 0.005, "lost");
        Near(ConstantPowerInput.MostW(24, 1), 144, 1e-9, "most");
        Assert.Null(ConstantPowerInput.Voltages(48, 15, 40));
        Near(ConstantPowerInput.MostOhm(48, 40), 14.4, 1e-9, "most ohm");
    }

    [Theory]
    [InlineData(24, 1, 100, 18.633, 5.367)] // E.D-13a, derived
    [InlineData(48, 10, 40, 37.27, 10.73)] // E.D-13c, derived
    public void Crossings_of_supply_and_constant_power(
        double open,
        double ohm,
        double watts,
        double upper,
        double lower
    )
    {
        var found = Crossings.Of(new(new SupplyBehindResistance(open, ohm), new ConverterLine(watts, 3, 0, 1), 1e-4));
        Assert.Equal([false, true], found.Where(c => c.VoltageV > 2.1).Select(c => c.Stable));
        Near(found[^1].VoltageV, upper, 0.005, "upper");
        Near(found[^2].VoltageV, lower, 0.005, "lower");
    }

    [Fact] // E.C-1, derived: V* 20.0 V, 6.267 ms
    public void Crossing_of_constant_current_and_constant_power()
    {
        Near(ConverterOnCurrent.CrossingV(30, 1.5), 20, 1e-12, "V*");
        Near(ConverterOnCurrent.GrowthS(30, 1.5, 470e-6), 6.267e-3, 0.5e-6, "time constant");
        var found = Crossings.Of(new(Source(1.5, 36), new ConverterLine(30, 14, 10, 1), 470e-6));
        Assert.Equal([false, true], found.Select(c => c.Stable));
        Near(found[0].VoltageV, 20, 1e-6, "unstable crossing");
    }

    [Fact] // E.C-2, derived: 3.201 ms, 1.253 ms charging + 1.948 ms on, on 60.8 %; transient solution 3.188 ms; tolerance 1 %
    public void Hiccup_of_a_converter()
    {
        var (charging, on) = (
            ConverterOnCurrent.ChargingS(1.5, 470e-6, 14, 10),
            ConverterOnCurrent.OnS(30, 1.5, 470e-6, 14, 10)
        );
        Near(charging, 1.253e-3, 0.5e-6, "charging");
        Near(on, 1.948e-3, 0.5e-6, "on");
        var period = ConverterOnCurrent.HiccupPeriodS(30, 1.5, 470e-6, 14, 10);
        Near(period, 3.201e-3, 0.6e-6, "period");
        Near(period, 3.188e-3, 0.01 * 3.188e-3, "transient solution");
        Near(on / period, 0.608, 5e-4, "share");
        Assert.Equal(double.PositiveInfinity, ConverterOnCurrent.HiccupPeriodS(30, 1.5, 470e-6, 24, 22));
    }

    [Fact] // E.C-3, derived: 36.0 V, 0.833 A (transient solution 35.994 V); tolerance 0.1 V
    public void Converter_at_the_clamp()
    {
        var rest = Crossings.Of(new(Source(1.5, 36), new ConverterLine(30, 24, 22, 1), 470e-6)).Single();
        Assert.True(rest.Stable);
        Near(rest.VoltageV, 35.994, 0.1, "V");
        Near(rest.CurrentA, 0.833, 0.003, "A");
    }

    [Fact] // E.C-4, derived: from 20.2 V up to 36 V, from 19.8 V down: the crossing between them is the unstable one
    public void Crossing_parts_those_that_rise_from_those_that_collapse()
    {
        var circuit = new WayCircuit(Source(1.5, 36), new ConverterLine(30, 14, 10, 1), 470e-6);
        var parting = Crossings.Of(circuit)[0].VoltageV;
        Assert.InRange(parting, 19.8, 20.2);
        Assert.True(circuit.Source.CurrentA(20.2) > circuit.Load.CurrentA(20.2));
        Assert.True(circuit.Source.CurrentA(19.8) < circuit.Load.CurrentA(19.8));
    }

    [Fact] // E.C-7, derived: buck stage 0.5 A into 28.8 V + 7.2 ohm, I0 1 A, clamp 40 V: 32.4 V, 16.2 W, 0.405 A at the clamp
    public void Buck_stage_under_the_current()
    {
        var led = new EmitterLine(StandIn, 298.15);
        var volts = StandIn.VoltageV(0.5, 298.15);
        Near(volts, 32.4, 1e-9, "V");
        Near(0.5 * volts, 16.2, 1e-9, "W");
        var rest = Crossings.Of(new(Source(1, 40), new ConverterLine(0.5 * volts, 9, 8, 0.5, led), 470e-6)).Single();
        Assert.True(rest.Stable);
        Near(rest.CurrentA, 0.405, 1e-3, "A at the clamp");
    }

    [Fact] // section 4: a buck stage set above I0 rests in drop-out, and the emitter simply gets I0
    public void Buck_stage_over_the_current_rests_in_drop_out()
    {
        var led = new EmitterLine(StandIn, 298.15);
        var watts = 1.3 * StandIn.VoltageV(1.3, 298.15);
        var found = Crossings.Of(new(Source(1, 40), new ConverterLine(watts, 9, 8, 1.3, led), 470e-6));
        var rest = found.First(c => c.Stable);
        Near(rest.VoltageV, 36, 1e-6, "V");
        Near(rest.CurrentA, 1, 1e-9, "A");
    }

    [Theory]
    [InlineData(1, 37, 1)] // E.M-1a, derived
    [InlineData(6, 42, 6)] // E.M-1a
    [InlineData(3, 39, 3)] // E.M-1b
    public void Series_resistor_dims_nothing(double ohm, double volts, double watts)
    {
        var rest = Crossings.Of(new(Source(1, 60), new EmitterLine(StandIn, 298.15, ohm), 470e-6)).Single();
        Near(rest.VoltageV, volts, 1e-9, "V");
        Near(rest.CurrentA, 1, 1e-9, "A");
        Near(rest.CurrentA * rest.CurrentA * ohm, watts, 1e-9, "W");
    }

    [Theory]
    [InlineData(144, 0.7619, 8.16, 34.29)] // E.M-2a, derived
    [InlineData(36, 0.1667, 25.0, 30.0)] // E.M-2a
    public void Shunt(double ohm, double amps, double watts, double volts)
    {
        var led = new EmitterLine(StandIn, 298.15, 0, ohm);
        var rest = Crossings.Of(new(Source(1, 60), led, 470e-6)).Single();
        Near(led.EmitterA(rest.VoltageV), amps, 1e-4, "A");
        Near(rest.VoltageV * rest.VoltageV / ohm, watts, 0.006, "W");
        Near(rest.VoltageV, volts, 0.005, "V");
    }

    [Theory]
    [InlineData(60, 1.000, 2.41, 40.9, 46.2)] // E.M-3, transient solution; tolerance 1 %
    [InlineData(42, 0.795, 1.84, double.NaN, 42)] // E.M-4a
    [InlineData(38, 0.597, 1.29, double.NaN, 38)] // E.M-4a
    public void Chopped_behind_the_capacitor(double limit, double mean, double peak, double least, double most)
    {
        var cycle = ChoppedCycle.Of(1, 28.8, 7.2, 470e-6, limit, 200, 0.5);
        Near(cycle.MeanA, mean, 0.01 * mean, "mean");
        Near(cycle.PeakA, peak, 0.01 * peak, "peak");
        Near(cycle.MostV, most, 0.01 * most, "most");
        if (double.IsFinite(least))
        {
            Near(cycle.LeastV, least, 0.01 * least, "least");
        }

        // The emitter's own curve, here a straight line, gives the same.
        var own = ChoppedCycle.Of(StandIn, 298.15, 1, 470e-6, limit, 200, 0.5);
        Near(own.MeanA, cycle.MeanA, 1e-9, "own curve");
    }
}
