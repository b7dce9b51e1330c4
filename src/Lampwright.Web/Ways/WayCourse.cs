using Lampwright.Steps.Ways;

namespace Lampwright.Web.Ways;

/// <summary>How long a way is watched, so that a start that comes again is seen to come again.</summary>
internal static class WayCourse
{
    private const double UsualS = 0.1;
    private const double MostS = 3;

    /// <summary>The course of a way over the first 100 ms, and over a longer time where it starts and stops more slowly; null otherwise.</summary>
    public static (WayTrace First, WayTrace? Longer) Of(Way way)
    {
        var first = WaySimulation.Of(way.Circuit, UsualS);
        var seconds = Seconds(first.HiccupHz ?? way.HiccupHz?.Least);
        return (first, seconds > UsualS ? WaySimulation.Of(way.Circuit, seconds) : null);
    }

    /// <summary>Time that is watched, in seconds: three starts and a bit, 3 s at most.</summary>
    /// <param name="hiccupHz">How often it starts and stops, in hertz; null where it does not.</param>
    public static double Seconds(double? hiccupHz) =>
        hiccupHz is { } hz and > 0 ? Math.Clamp(3.2 / hz, UsualS, MostS) : UsualS;
}
