using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

public class CrossingsTests
{
    /// <summary>Both roots of a constant-power input, however near the limit, and none beyond it.</summary>
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.999)]
    [InlineData(0.9999999)]
    [InlineData(1.0000001)]
    [InlineData(2)]
    public void Constant_power_input_against_its_closed_form(double ofLimit)
    {
        const double Watts = 72;
        var ohm = ofLimit * 230 * 230 / (4 * Watts);
        var circuit = new WayCircuit(new SupplyBehindResistance(230, ohm), new ConverterLine(Watts, 0.2, 0.1, 1), 1e-4);
        var found = Crossings.Of(circuit);
        if (ConstantPowerInput.Voltages(230, ohm, Watts) is var (upper, lower))
        {
            Assert.Equal([false, true], found.Select(c => c.Stable));
            Assert.Equal(lower, found[0].VoltageV, 1e-5 * 230);
            Assert.Equal(upper, found[1].VoltageV, 1e-5 * 230);
        }
        else
        {
            Assert.Empty(found);
        }
    }

    /// <summary>At every crossing the two lines agree, and between two stable ones lies one that is not.</summary>
    [Fact]
    public void Crossings_of_random_lights_lie_on_both_lines()
    {
        var random = new Random(23);
        var count = 0;
        for (var round = 0; round < 200; round++)
        {
            foreach (var way in WaysComparison.Of(WaysLight.Random(random)).Ways)
            {
                foreach (var c in way.Picture.Crossings)
                {
                    var (source, load) = (way.Circuit.Source, way.Circuit.Load);
                    var step = 1e-7 * c.VoltageV;
                    var before = source.CurrentA(c.VoltageV - step) - load.CurrentA(c.VoltageV - step);
                    var after = source.CurrentA(c.VoltageV + step) - load.CurrentA(c.VoltageV + step);
                    Assert.True(before * after <= 0, $"{way.Kind} {c}: {before} {after} {way.Circuit}");
                    Assert.True(!c.Stable || before >= after, $"{way.Kind} {c}");
                    count++;
                }
            }
        }

        Assert.True(count > 2000, $"{count}");
    }

    [Fact]
    public void Period_of_an_input_that_collapses_is_that_of_its_integral()
    {
        foreach (
            var (ohm, on, off) in new[] { (20.0, 20.0, 12.0), (14.0, 21.0, 18.0), (40.0, 10.0, 4.0), (7.5, 16.0, 11.0) }
        )
        {
            const double Open = 24;
            const double Watts = 20;
            const double Farad = 1e-4;
            var sum = 0.0;
            const int Count = 200_000;
            for (var k = 0; k < Count; k++)
            {
                var v = off + ((on - off) * (k + 0.5) / Count);
                var dv = (on - off) / Count;
                var charge = (Open - v) / ohm;
                sum += (Farad * dv / charge) + (Farad * dv / ((Watts / v) - charge));
            }

            var got = ConstantPowerInput.HiccupPeriodS(Open, ohm, Watts, Farad, on, off);
            Assert.Equal(sum, got, 1e-6 * sum);
        }

        // Where a stable voltage lies between, it does not come down again.
        Assert.Equal(double.PositiveInfinity, ConstantPowerInput.HiccupPeriodS(24, 1, 20, 1e-4, 20, 12));
    }
}
