using Lampwright.Heat;

namespace Lampwright.Evaluation.Coupling;

/// <summary>What one switch position in one scene sets free, and where; nominal.</summary>
/// <param name="Sink">Rise of the sink over its heat; null without one.</param>
/// <param name="Spec">The sink; null where only its resistance was measured.</param>
/// <param name="AmbientK">The room, K.</param>
/// <param name="HeatW">Heat through the emitter's back, W.</param>
/// <param name="HeatWPerK">How that grows with the junction's temperature, W/K.</param>
/// <param name="JunctionK">Junction at which it holds, K.</param>
/// <param name="CaseK">Case of the emitter, K.</param>
/// <param name="BaseK">Base of the sink, mean, K.</param>
/// <param name="DriverW">Loss of the driver, W.</param>
/// <param name="ChainW">Loss of the chain's resistors, W.</param>
/// <param name="ReflectorW">Light absorbed in the reflector, W.</param>
/// <param name="DiffuserW">Light absorbed in the diffuser, W.</param>
/// <param name="FluxLm">Flux of the bare emitter, lm.</param>
/// <param name="Emitter">Its curves at this current.</param>
internal sealed record CoupledHeat(
    SinkCurve? Sink,
    SinkSpec? Spec,
    double AmbientK,
    double HeatW,
    double HeatWPerK,
    double JunctionK,
    double CaseK,
    double BaseK,
    double DriverW,
    double ChainW,
    double ReflectorW,
    double DiffuserW,
    double FluxLm,
    EmitterAtCurrent Emitter
);
