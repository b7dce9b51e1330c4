using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Files.Charts;

/// <summary>Lines and courses made by hand, whose look is known beforehand.</summary>
internal static class WayPictures
{
    /// <summary>A source of constant current that ends at a limit, and a load of constant power.</summary>
    public static IReadOnlyList<OperatingLine> ConstantPower(
        double amps = 1.75,
        double limitV = 46,
        double watts = 30
    ) => [Line("driver", 60, v => v < limitV ? amps : 0), Line("converter", 60, v => watts / v)];

    /// <summary>The crossings of those lines.</summary>
    public static IReadOnlyList<Crossing> Crossings { get; } =
    [new(17.14, 1.75, false, "runs away"), new(46, 0.652, true, "held by the clamp")];

    /// <summary>A light that is on for some of each period and dark for the rest.</summary>
    /// <param name="hz">How often a second.</param>
    /// <param name="on">Share of the period that it is on.</param>
    /// <param name="seconds">Time shown.</param>
    /// <param name="steps">Points of a period.</param>
    public static WayTrace Blinking(double hz, double on, double seconds = 0.1, int steps = 40)
    {
        var count = (int)(hz * seconds * steps);
        var time = Enumerable.Range(0, count + 1).Select(i => i / (hz * steps)).ToList();
        var light = Enumerable.Range(0, count + 1).Select(i => i % steps < on * steps ? 1.0 : 0).ToList();
        return Of(time, light, hz) with
        {
            Events =
            [
                .. Enumerable
                    .Range(0, (int)(hz * seconds))
                    .SelectMany(n =>
                        new[]
                        {
                            new TraceEvent(n / hz, "starts"),
                            new TraceEvent((n + on) / hz, "stops for want of voltage"),
                        }
                    )
                    .Take(100),
            ],
        };
    }

    /// <summary>A dark light with one flash of one point.</summary>
    public static WayTrace OneFlash(int points, int at) =>
        Of(
            [.. Enumerable.Range(0, points).Select(i => 0.1 * i / (points - 1))],
            [.. Enumerable.Range(0, points).Select(i => i == at ? 1.0 : 0)],
            null
        );

    /// <summary>A course of light with the current that goes with it.</summary>
    public static WayTrace Of(IReadOnlyList<double> time, IReadOnlyList<double> light, double? hiccupHz) =>
        new(
            time,
            [.. light.Select(l => 30 + (7 * l))],
            [.. light.Select(l => 1.7 * l)],
            light,
            [],
            hiccupHz is null,
            1.7 * light[^1],
            1.7 * light.Max(),
            hiccupHz
        );

    private static OperatingLine Line(string name, int points, Func<double, double> amps)
    {
        var volts = Enumerable.Range(1, points).Select(i => (double)i).ToList();
        return new(name, volts, [.. volts.Select(amps)]);
    }
}
