using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

/// <summary>What is said of a way is held against its circuit over time.</summary>
public class WaysOverTimeTests
{
    [Fact]
    public void What_is_said_to_regulate_settles_and_what_is_said_to_hiccup_does()
    {
        var random = new Random(17);
        var (regulates, hiccups, rates) = (0, 0, 0);
        var wrong = new List<string>();
        for (var round = 0; round < 80; round++)
        {
            foreach (var way in WaysComparison.Of(WaysLight.Random(random)).Ways)
            {
                if (way.Regulates != Told.Yes && way.Hiccups == Told.Unknown)
                {
                    continue;
                }

                var trace = WaySimulation.Of(way.Circuit, Seconds(way.Circuit));
                var who =
                    $"round {round} {way.Kind}: {way.Reason} | {trace.Settled} {trace.MeanA} A {trace.HiccupHz} Hz of {way.HiccupHz} | {string.Join("; ", trace.Events.Take(6).Select(e => $"{e.AtS:0.0000} {e.Words}"))} | {way.Circuit}";
                if (way.Regulates == Told.Yes)
                {
                    regulates++;
                    if (!trace.Settled || trace.HiccupHz is not null || !(trace.MeanA > 0))
                    {
                        wrong.Add("does not settle: " + who);
                    }
                }

                if (way.Hiccups == Told.Yes)
                {
                    hiccups++;
                    if (trace.HiccupHz is not { } hz)
                    {
                        wrong.Add("does not hiccup: " + who);
                    }
                    else if (way.HiccupHz is { } said)
                    {
                        rates++;
                        if (hz < 0.97 * said.Least || hz > 1.03 * said.Most)
                        {
                            wrong.Add("other rate: " + who);
                        }
                    }
                }
                else if (way.Hiccups == Told.No && trace.HiccupHz is not null)
                {
                    wrong.Add("hiccups: " + who);
                }
            }
        }

        Assert.True(
            wrong.Count == 0,
            $"{wrong.Count} of {regulates}/{hiccups}\n" + string.Join("\n\n", wrong.Take(12))
        );
        Assert.True(regulates > 250 && hiccups > 80 && rates > 30, $"{regulates} {hiccups} {rates}");
    }

    // Long enough for the capacitor to fill many times over, and for six tries of a driver that trips.
    private static double Seconds(WayCircuit circuit) =>
        circuit.Source is DriverOutput d
            ? Math.Max(
                0.2,
                (30 * circuit.CapacitorF * d.LimitV / d.SetA) + (6 * (d.Over == OverVoltage.Clamps ? 0 : d.RestartS))
            )
            : 0.5;
}
