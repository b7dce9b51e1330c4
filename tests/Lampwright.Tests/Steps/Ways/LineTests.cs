using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

public class LineTests
{
    internal static EmitterModel Straight(double volts, double ohm, double logV = 0) =>
        new(logV, volts, ohm, 0, 298.15, 1000, 1, FluxForm.Saturating, 0.2, 0.001, 0.1, 2);

    private static EmitterLine Led(double series = 0, double shunt = double.PositiveInfinity) =>
        new(Straight(28.8, 7.2), 298.15, series, shunt);

    [Fact]
    public void Current_of_a_voltage_is_the_one_that_gives_the_voltage()
    {
        var random = new Random(3);
        for (var i = 0; i < 20_000; i++)
        {
            double Log(double a, double b) => a * Math.Pow(b / a, random.NextDouble());
            var logV = i % 7 == 0 ? 0 : Log(1e-3, 5);
            var model = Straight(Log(1, 300), Log(1e-4, 50), logV) with { SlopeVPerK = -0.03 * random.NextDouble() };
            var tj = 250 + (180 * random.NextDouble());
            var (series, shunt) = (i % 3 == 0 ? 0 : Log(1e-3, 100), i % 2 == 0 ? double.PositiveInfinity : Log(1, 1e4));
            var amps = Log(1e-5, 50);
            var across = model.VoltageV(amps, tj);
            if (across < 0.06)
            {
                continue;
            }

            var total = amps + (across / shunt);
            var volts = across + (series * total);
            var line = new EmitterLine(model, tj, series, shunt);

            // What is lost in subtracting voltages comes back divided by the slope.
            var slack = 1e-9 + (1e-13 * volts / (model.DynamicResistanceOhm(amps) + series) / amps);
            Assert.Equal(amps, line.EmitterA(volts), amps * slack);
            Assert.Equal(total, line.CurrentA(volts), total * slack);
        }
    }

    [Fact]
    public void No_current_flows_backwards_or_falls_as_the_voltage_rises()
    {
        foreach (
            var model in new[] { Straight(28.8, 7.2), Straight(30, 0.4, 1.2), Straight(0.5, 0, 0.2), Straight(3, 0) }
        )
        {
            var line = new EmitterLine(model, 298.15, 0.5, 200);
            var last = (Emitter: 0.0, Total: 0.0);
            for (var v = -5.0; v < 60; v += 0.003)
            {
                var now = (Emitter: line.EmitterA(v), Total: line.CurrentA(v));
                Assert.True(now.Emitter >= last.Emitter && now.Total >= last.Total && now.Emitter <= now.Total, $"{v}");
                Assert.True(v > 0 || now == (0, 0));
                last = now;
            }
        }
    }

    [Fact]
    public void Shunt_without_emitter_current_is_a_resistor() =>
        Assert.Equal(10.0 / 40, Led(4, 36).CurrentA(10), 1e-12);

    [Fact]
    public void Converter_takes_constant_power_and_in_drop_out_what_the_emitter_takes()
    {
        var c = new ConverterLine(16.2, 9, 8, 0.5, Led());
        Assert.Equal(16.2 / 40, c.CurrentA(40), 1e-12);
        Assert.Equal(0.5, c.EmitterA(40), 1e-12);
        Assert.Equal((31 - 28.8) / 7.2, c.CurrentA(31), 1e-12);
        Assert.Equal((31 - 28.8) / 7.2, c.EmitterA(31), 1e-12);
        Assert.Equal(0, c.CurrentA(28));
    }

    [Fact]
    public void Closed_switch_adds_its_resistance() =>
        Assert.Equal((36 - 28.8) / 8, new ChoppedLine(Led(), 200, 0.5, 0.8).CurrentA(36), 1e-12);

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(57)]
    [InlineData(200)]
    public void Lines_have_the_points_that_were_asked_for(int points)
    {
        var driver = new DriverOutput(1, 20, 40, OverVoltage.Clamps, UnderVoltage.Hiccups, 0.5);
        foreach (
            var load in new LoadLine[]
            {
                Led(),
                new ConverterLine(16, 14, 10, 0.5, Led()),
                new ConverterLine(16, 0, 0, 1),
            }
        )
        {
            foreach (
                var source in new SourceLine[]
                {
                    driver,
                    driver with
                    {
                        LimitV = double.PositiveInfinity,
                    },
                    new SupplyBehindResistance(24, 2),
                }
            )
            {
                foreach (var line in new WayCircuit(source, load, 1e-4).Lines(points))
                {
                    Assert.Equal(points, line.VoltageV.Count);
                    Assert.Equal(points, line.CurrentA.Count);
                    Assert.Equal(line.VoltageV.Order(), line.VoltageV);
                    Assert.All(line.CurrentA, a => Assert.True(a >= 0 && double.IsFinite(a)));
                }
            }
        }
    }
}
