using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

public class WayNumbersTests
{
    private static WayNumber[] Of(WayNumbers numbers, WayDraw draw)
    {
        var into = new WayNumber[WayNumbers.Count];
        numbers.Of(draw, into);
        return into;
    }

    /// <summary>A straight line of 28.8 V + 7.2 ohm whose light goes with its current, 1 A, limit 46 V, driver 89 %, converter 92 %: by hand.</summary>
    [Theory]
    [InlineData(WayKind.ConverterBehind, 0.8188, 1.40870, 0.1)]
    [InlineData(WayKind.SeriesResistor, 0.626870, 6.8, 0.1)]
    [InlineData(WayKind.ShuntResistor, 0.445, 16.2, 0.1)]
    [InlineData(WayKind.DimmingInput, 0.89, 0, 0.1)]
    [InlineData(WayKind.OtherDriver, 0.89, 0, 0.1)]
    public void Numbers_of_a_straight_line_are_those_reckoned_by_hand(
        WayKind kind,
        double efficiency,
        double addedW,
        double least
    )
    {
        var spec = (
            WaysLight.Good with
            {
                Model = new(0, 28.8, 7.2, 0, 298.15, 1000, 1, FluxForm.Saturating, 0, 0, 0.1, 2),
            }
        ).Driver(d =>
            d with
            {
                RatedA = 1,
                LeastA = 0.1,
                WindowMostV = null,
                Sense = d.Sense with { MeasuredA = null },
            }
        );
        var n = Of(new(spec), new WayNumbers(spec).Nominal)[(int)kind];
        Assert.Equal(efficiency, n.EfficiencyAtHalf!.Value, 1e-6);
        Assert.Equal(addedW, n.AddedHeatAtHalfW!.Value, 1e-5);
        Assert.Equal(16.2 * ((1 / efficiency) - 1), n.HeatAtHalfW!.Value, 1e-4);
        Assert.Equal(least, n.LightShare!.Value.Least, 1e-9);
    }

    /// <summary>What goes in comes out as power in the emitter or as heat, whatever the way.</summary>
    [Fact]
    public void Heat_and_efficiency_belong_together_and_half_is_half()
    {
        var numbers = new WayNumbers(WaysLight.Good);
        var half = Of(numbers, numbers.Nominal);
        var model = WaysLight.Good.Model;
        var warm = WaysLight.Good.WarmJunctionK;
        var full = model.FluxLm(numbers.Nominal.SetA, warm);
        var amps = model.CurrentForFlux(0.5 * full, warm)!.Value;
        var watts = amps * model.VoltageV(amps, warm);
        WayKind[] plain =
        [
            WayKind.ConverterBehind,
            WayKind.SeriesResistor,
            WayKind.ShuntResistor,
            WayKind.FixedSense,
            WayKind.DimmingInput,
            WayKind.OtherDriver,
        ];
        Assert.All(
            plain,
            k =>
            {
                var n = half[(int)k];
                Assert.Equal(watts, n.EfficiencyAtHalf!.Value * (watts + n.HeatAtHalfW!.Value), 1e-9);

                // What is added and what the driver loses on all that it gives.
                var given = watts + n.AddedHeatAtHalfW!.Value;
                Assert.Equal(n.HeatAtHalfW.Value, n.AddedHeatAtHalfW.Value + (given * ((1 / 0.89) - 1)), 1e-9);
            }
        );
    }

    [Fact]
    public void Draws_move_the_numbers_and_do_not_allocate()
    {
        var numbers = new WayNumbers(WaysLight.Good);
        var into = new WayNumber[WayNumbers.Count];
        var draw = numbers.Nominal with { Efficiency = 0.85, SetA = 1.8, JunctionK = 350 };
        numbers.Of(draw, into);
        Assert.Equal(0.85, into[(int)WayKind.FixedSense].EfficiencyAtHalf!.Value, 1e-12);
        Assert.Equal(1.8, into[(int)WayKind.SeriesResistor].CurrentA!.Value.Most, 1e-12);
        numbers.Of(draw, into);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var k = 0; k < 100; k++)
        {
            numbers.Of(draw, into);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
