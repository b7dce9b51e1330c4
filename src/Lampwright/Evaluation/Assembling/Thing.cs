using Lampwright.FitUp;
using Lampwright.Geometry;
using Lampwright.Quantities;

namespace Lampwright.Evaluation.Assembling;

/// <summary>A part or bought thing of the light, as fit-up and balance are told of it.</summary>
/// <param name="Body">What fit-up is told.</param>
/// <param name="Count">How many of it.</param>
/// <param name="BoxM">Box that stands for it in pictures; null for folded parts.</param>
/// <param name="GivenMass">Its mass as the file gives it; null when it is computed or not known.</param>
/// <param name="MetalParts">Places in the list of made parts whose masses add up to it; empty for bought things.</param>
/// <param name="ComputedMassKg">Mass computed from its sizes (a sink, a diffuser); null otherwise.</param>
internal sealed record Thing(
    BodySpec Body,
    int Count,
    Vec3? BoxM,
    Value? GivenMass,
    IReadOnlyList<int> MetalParts,
    double? ComputedMassKg
);
