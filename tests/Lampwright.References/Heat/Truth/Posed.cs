using Lampwright.Heat;

namespace Lampwright.References.Heat.Truth;

/// <summary>A light as Lampwright is told of it, by whichever model it was made.</summary>
internal sealed record Posed(
    SinkSpec Spec,
    Given Emissivity,
    Given LayerM,
    Given LayerWPerMK,
    Given JunctionKPerW,
    Given AmbientK,
    Given RunV,
    double BodyM,
    bool FanRuns
);
