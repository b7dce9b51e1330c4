using Lampwright.Steps.Ways;

namespace Lampwright.Evaluation.Answers;

/// <summary>One way of dimming as it would do with this supply, driver and emitter.</summary>
/// <remarks>Words, verdict and pictures are those of the nominal values; numbers carry the band that all predictions share.</remarks>
public sealed record WayAnswer
{
    /// <summary>The way as it was judged at nominal values: words, verdict, operating-point picture, circuit of the time simulation.</summary>
    public required Way Way { get; init; }

    /// <summary>True for the way that the design file has chosen.</summary>
    public required bool IsChosen { get; init; }

    /// <summary>Least light it reaches, as a share of the light at the rated current; null where it gives no steady light.</summary>
    public Predicted? LeastShare { get; init; }

    /// <summary>Most light it reaches, as a share of the light at the rated current; null where it gives no steady light.</summary>
    public Predicted? MostShare { get; init; }

    /// <summary>Least emitter current it reaches (the mean where it is chopped), A; null where it gives no steady light.</summary>
    public Predicted? LeastA { get; init; }

    /// <summary>Greatest emitter current it reaches, the same, A; null where it gives no steady light.</summary>
    public Predicted? MostA { get; init; }

    /// <summary>Power in the emitter over power from the supply at half of the light; null where it never gets there.</summary>
    public Predicted? EfficiencyAtHalf { get; init; }

    /// <summary>All heat at half of the light but the emitter's, W; null where it never gets there.</summary>
    public Predicted? HeatAtHalfW { get; init; }

    /// <summary>Part of that heat in what was added (resistor, converter, switch), W; null where it never gets there.</summary>
    public Predicted? AddedHeatAtHalfW { get; init; }

    /// <summary>Usual time that a course is watched, s.</summary>
    private static readonly double UsualS = 0.1;

    /// <summary>Longest time that a course is watched, s.</summary>
    private static readonly double LongestS = 3;

    /// <summary>
    /// Its course over the first 100 ms, and over a longer time where it starts and stops too slowly to be seen in that; simulated when it is asked for.
    /// </summary>
    public (WayTrace First, WayTrace? Longer) Course()
    {
        var first = Trace(UsualS);
        var seconds = WatchedS(first.HiccupHz ?? Way.HiccupHz?.Least);
        return (first, seconds > UsualS ? Trace(seconds) : null);
    }

    /// <summary>Time that is watched, s: three starts and a bit, 3 s at most.</summary>
    /// <param name="hiccupHz">How often it starts and stops, Hz; null where it does not.</param>
    public static double WatchedS(double? hiccupHz) =>
        hiccupHz is { } hz and > 0 ? Math.Clamp(3.2 / hz, UsualS, LongestS) : UsualS;

    /// <summary>Current and light from switching on, simulated when it is asked for.</summary>
    /// <param name="seconds">How long, in seconds; above 0.</param>
    public WayTrace Trace(double seconds = 0.1) => WaySimulation.Of(Way.Circuit, seconds);
}
