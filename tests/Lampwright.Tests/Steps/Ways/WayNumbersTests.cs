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

    [Fact]
    public void Nominal_numbers_are_those_of_the_ways()
    {
        var numbers = new WayNumbers(WaysLight.Good);
        var nominal = Of(numbers, numbers.Nominal);
        Assert.Equal(Enum.GetValues<WayKind>().Length, WayNumbers.Count);
        Assert.All(
            WaysComparison.Of(WaysLight.Good).Ways,
            w =>
                Assert.Equal(
                    nominal[(int)w.Kind],
                    new(w.LightShare, w.CurrentA, w.EfficiencyAtHalf, w.HeatAtHalfW, w.AddedHeatAtHalfW)
                )
        );
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
