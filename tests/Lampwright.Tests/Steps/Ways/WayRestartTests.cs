using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

public sealed class WayRestartTests
{
    [Theory]
    [InlineData(0.1)]
    [InlineData(2)]
    public void A_driver_that_waits_for_its_next_try_has_not_settled_however_short_it_is_watched(double seconds)
    {
        // The load takes 0.5 A of 1.75 A: the voltage runs to 46 V, the driver trips and waits half a second, most of it in the dark.
        var trace = WaySimulation.Of(
            new(
                new DriverOutput(1.75, 24, 46, OverVoltage.Trips, UnderVoltage.Hiccups, 0.5),
                new ConverterLine(20, 40, 10, 0.5),
                470e-6
            ),
            seconds
        );
        Assert.False(trace.Settled);
        Assert.NotNull(trace.HiccupHz);
        Assert.InRange(trace.HiccupHz.Value, 1.5, 2);
    }
}
