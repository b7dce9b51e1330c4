namespace Lampwright.Heat;

/// <summary>Where an emitter's back touches the base of a sink, from the corner of the base.</summary>
/// <param name="CentreAcrossM">Centre across the fins, m.</param>
/// <param name="CentreAlongM">Centre along the fins, m.</param>
/// <param name="WidthM">Size across the fins, m, above 0.</param>
/// <param name="DepthM">Size along the fins, m, above 0.</param>
/// <param name="Share">Share of the sink's heat that enters here, above 0; only the ratio to the other shares counts.</param>
/// <param name="OtherW">
/// Heat of another emitter that gives the same at every step, W, 0 or above; its share then counts for nothing. 0 for the emitter itself.
/// </param>
public sealed record Footprint(
    double CentreAcrossM,
    double CentreAlongM,
    double WidthM,
    double DepthM,
    double Share = 1,
    double OtherW = 0
);
