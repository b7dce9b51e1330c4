using Lampwright.Heat;
using Lampwright.Heat.Network;

namespace Lampwright.Evaluation.Coupling;

/// <summary>What one switch position in one scene sets free, and where; nominal.</summary>
/// <param name="Sink">Rise of the sink over its heat; null without one.</param>
/// <param name="Spec">The sink; null where only its resistance was measured.</param>
/// <param name="Working">The sink at the brightest position's heat; null where it is not computed.</param>
/// <param name="IsMeasured">True where the sink's curve was measured, with whatever it stood on.</param>
/// <param name="AmbientK">The room, K.</param>
/// <param name="HeatW">Heat through the emitter's back, W.</param>
/// <param name="HeatWPerK">How that grows with the junction's temperature, W/K.</param>
/// <param name="JunctionK">Junction at which it holds, K.</param>
/// <param name="CaseK">Case of the emitter, K.</param>
/// <param name="BaseK">Base of the sink, mean, K.</param>
/// <param name="DriverW">Loss of the driver, W.</param>
/// <param name="Resistors">The chain's resistors with their losses.</param>
/// <param name="ReflectorW">Light absorbed in the reflector, W.</param>
/// <param name="DiffuserW">Light absorbed in the diffuser, W.</param>
/// <param name="FluxLm">Flux of the bare emitter, lm.</param>
/// <param name="Emitter">Its curves at this current.</param>
internal sealed record CoupledHeat(
    SinkCurve? Sink,
    SinkSpec? Spec,
    SinkResult? Working,
    bool IsMeasured,
    double AmbientK,
    double HeatW,
    double HeatWPerK,
    double JunctionK,
    double CaseK,
    double BaseK,
    double DriverW,
    IReadOnlyList<NetworkResistor> Resistors,
    double ReflectorW,
    double DiffuserW,
    double FluxLm,
    EmitterAtCurrent Emitter
)
{
    /// <summary>The heats, by where they are set free.</summary>
    public HousingHeat Heats => new(HeatW, DriverW, Resistors.Sum(r => r.HeatW), ReflectorW, DiffuserW);
}
