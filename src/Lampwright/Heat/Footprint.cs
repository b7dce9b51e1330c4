namespace Lampwright.Heat;

/// <summary>Where an emitter's back touches the base of a sink, from the corner of the base.</summary>
/// <param name="CentreAcrossM">Centre across the fins, m.</param>
/// <param name="CentreAlongM">Centre along the fins, m.</param>
/// <param name="WidthM">Size across the fins, m, above 0.</param>
/// <param name="DepthM">Size along the fins, m, above 0.</param>
/// <param name="Share">Share of the sink's heat that enters here, 0 to 1; the shares of a sink sum to 1.</param>
public sealed record Footprint(
    double CentreAcrossM,
    double CentreAlongM,
    double WidthM,
    double DepthM,
    double Share = 1
);
