using Lampwright.Heat;
using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>What all switch positions of a scene share of <see cref="CoupledHeat"/>; nominal.</summary>
/// <param name="Sink">Rise of the sink over its heat; null without one.</param>
/// <param name="Spec">The sink; null where only its resistance was measured.</param>
/// <param name="Working">The sink at the brightest position's heat; null where it is not computed.</param>
/// <param name="IsMeasured">True where the sink's curve was measured.</param>
/// <param name="AmbientK">The room, K.</param>
/// <param name="Emitter">The emitter.</param>
/// <param name="RadiationLmPerW">Efficacy of its light, lm/W.</param>
/// <param name="BackLmPerW">Lumens for each watt that leaves it and does not come back, lm/W.</param>
/// <param name="LightShare">Share of its power that leaves as light, where it is given.</param>
internal sealed record SceneHeat(
    SinkCurve? Sink,
    SinkSpec? Spec,
    SinkResult? Working,
    bool IsMeasured,
    double AmbientK,
    EmitterModel Emitter,
    double RadiationLmPerW,
    double BackLmPerW,
    double? LightShare
);
