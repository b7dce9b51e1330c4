namespace Lampwright.Steps;

/// <summary>What the steps station is told: plain numbers, mapped from the design by Evaluation.</summary>
/// <param name="Emitter">What is known of the emitter.</param>
/// <param name="Driver">What is known of the driver.</param>
/// <param name="Chain">The chain to be built, null where none is chosen yet: then the driver runs as it is.</param>
/// <param name="AirK">Temperature of the air round the chain's resistors, in kelvin.</param>
/// <param name="ColdJunctionK">Coldest junction the light starts from, in kelvin.</param>
/// <param name="HotJunctionK">Hottest junction it runs at, in kelvin.</param>
/// <param name="Limits">Rules of thumb, null for the house's own.</param>
public sealed record StepsSpec(
    EmitterSpec Emitter,
    DriverSpec Driver,
    ChainSpec? Chain,
    double AirK = 313.15,
    double ColdJunctionK = 283.15,
    double HotJunctionK = 373.15,
    StepsLimits? Limits = null
);

/// <summary>Rules of thumb that the maker may override; none of them lifts a stop that protects people.</summary>
/// <param name="OverRated">Share over the driver's rated current that is a stop instead of a warning (common practice, no source).</param>
/// <param name="ResistorLoad">Share of the derated rating above which a warning is given (common practice, no source).</param>
/// <param name="ContactShare">Share of the sense resistance that contacts may take (common practice, no source).</param>
/// <param name="Contradiction">Relative difference between two ways to the sense threshold (common practice, no source).</param>
/// <param name="Extrapolation">Natural logarithm of the current beyond the emitter's points that is let pass; ln 1.25 (common practice, no source).</param>
/// <param name="LawError">Error of the law from resistance to current, relative, that is let pass (common practice, no source).</param>
/// <param name="OffsetShare">Share of the sense threshold that an amplifier's offset may take (common practice, no source).</param>
/// <param name="MarkRatio">Ratio of the greatest to the least of parallel sense parts that is usual (common practice, no source).</param>
public sealed record StepsLimits(
    double OverRated = 0.10,
    double ResistorLoad = 0.7,
    double ContactShare = 0.10,
    double Contradiction = 0.10,
    double Extrapolation = 0.2231,
    double LawError = 0.10,
    double OffsetShare = 0.05,
    double MarkRatio = 10
);
