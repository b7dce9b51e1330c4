using Lampwright.Findings;

namespace Lampwright.Steps.Ways;

/// <summary>Every way of dimming, judged for one supply, driver and emitter.</summary>
/// <param name="Ways">One of each <see cref="WayKind"/>, in that order.</param>
/// <param name="Findings">What is wrong with what was told: a supply too low, thresholds that contradict, a power factor out of range.</param>
public sealed record WaysResult(IReadOnlyList<Way> Ways, IReadOnlyList<Finding> Findings);
