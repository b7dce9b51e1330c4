namespace Lampwright.Steps;

/// <summary>One row of an emitter's data sheet, or one measurement at the reference temperature.</summary>
/// <param name="CurrentA">Current in amperes.</param>
/// <param name="VoltageV">Forward voltage in volts.</param>
/// <param name="FluxLm">Flux in lumens, null where it is not known.</param>
public sealed record EmitterPoint(double CurrentA, double VoltageV, double? FluxLm = null);

/// <summary>As little as a seller's listing says: a voltage range, a current, lumens.</summary>
/// <param name="LeastV">Lower end of the voltage range at the rated current, in volts.</param>
/// <param name="MostV">Upper end of the voltage range at the rated current, in volts.</param>
/// <param name="CurrentA">Rated current in amperes.</param>
/// <param name="FluxLm">Flux at the rated current in lumens, null where it is not known.</param>
public sealed record EmitterRated(double LeastV, double MostV, double CurrentA, double? FluxLm = null);

/// <summary>Flux at another junction temperature, as a share of the flux at the reference temperature.</summary>
/// <param name="AtK">That junction temperature in kelvin.</param>
/// <param name="Factor">Flux there over flux at the reference temperature.</param>
public sealed record FluxHot(double AtK, double Factor);

/// <summary>What is known of an emitter.</summary>
/// <param name="Points">Points at the reference temperature; may be empty when <paramref name="Rated"/> is given.</param>
/// <param name="ReferenceK">Junction temperature of the points, in kelvin.</param>
/// <param name="Rated">Rated values, used where there are no points.</param>
/// <param name="VoltageSlopePerK">Voltage slope of the whole emitter in V/K, null for the default of its voltage.</param>
/// <param name="FluxHot">Flux when hot, null for the default.</param>
/// <param name="MostA">Greatest current the emitter takes, in amperes; null where it is not known.</param>
/// <param name="Path">Path in the design file that findings lead to.</param>
public sealed record EmitterSpec(
    IReadOnlyList<EmitterPoint> Points,
    double ReferenceK = 298.15,
    EmitterRated? Rated = null,
    double? VoltageSlopePerK = null,
    FluxHot? FluxHot = null,
    double? MostA = null,
    string Path = "emitter"
);
