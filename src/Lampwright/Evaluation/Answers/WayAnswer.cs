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

    /// <summary>Current and light from switching on, simulated when it is asked for.</summary>
    /// <param name="seconds">How long, in seconds; above 0.</param>
    public WayTrace Trace(double seconds = 0.1) => WaySimulation.Of(Way.Circuit, seconds);
}
