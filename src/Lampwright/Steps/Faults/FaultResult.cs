namespace Lampwright.Steps.Faults;

/// <summary>How a fault stands among those a design is judged by.</summary>
public enum FaultStanding
{
    /// <summary>It can happen in the chain and is judged.</summary>
    Counts,

    /// <summary>Only how the light is built keeps it away, and the design does not say that it is built so.</summary>
    ByConstruction,

    /// <summary>Left out of the stops on the word of the design that it is built so that it cannot happen.</summary>
    Excluded,

    /// <summary>Any light has it, with a chain or without.</summary>
    AnyLight,
}

/// <summary>What follows from one single fault, at the position where it is worst.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="What">The same in words.</param>
/// <param name="Position">Position of the switches at which it is worst, 1 = closed; empty where there are no switches.</param>
/// <param name="CurrentA">Emitter current in amperes; the least it can be where the driver's own limit is not known.</param>
/// <param name="CurrentMostA">The greatest it can be, in amperes; null where nothing that is known holds it.</param>
/// <param name="SoundA">Emitter current of the same position without the fault, in amperes.</param>
/// <param name="SenseV">Voltage at the sense input in volts; null where the input hangs free.</param>
/// <param name="OutputV">Output voltage of the driver in volts; null where nothing that is known holds it.</param>
/// <param name="PeakA">Current peak when a broken connection comes back while powered, in amperes; null where there is none or it is not known.</param>
/// <param name="WorstA">The greatest current at the worst corner of all parts and the driver, in amperes, by which the emitter is judged; null where nothing that is known holds it.</param>
/// <param name="WorstPeakA">The peak with the driver's voltage limit at its greatest, in amperes; null where there is none.</param>
/// <param name="Emitter">Whether the emitter survives, at the worst corner.</param>
/// <param name="Driver">Whether the driver survives.</param>
/// <param name="Resistors">Whether all resistors survive.</param>
/// <param name="Overloaded">Name of the resistor that is loaded most over what it may take; empty where none is.</param>
/// <param name="RunsToLimit">Whether nothing but the driver's own limits holds the current.</param>
/// <param name="Standing">Whether the design is judged by it.</param>
/// <param name="Words">What follows, in a sentence or two.</param>
/// <param name="See">What one would see.</param>
public sealed record FaultResult(
    Fault Fault,
    string What,
    string Position,
    double CurrentA,
    double? CurrentMostA,
    double SoundA,
    double? SenseV,
    double? OutputV,
    double? PeakA,
    double? WorstA,
    double? WorstPeakA,
    Survival Emitter,
    Survival Driver,
    Survival Resistors,
    string Overloaded,
    bool RunsToLimit,
    FaultStanding Standing,
    string Words,
    string See
)
{
    /// <summary>Whether the emitter's current can pass its limit at the worst corner; where the limit is not known, whether nothing holds the current.</summary>
    /// <param name="mostA">The emitter's greatest current, null where it is not known.</param>
    public bool Exceeds(double? mostA) =>
        mostA is { } most
            ? !(WorstA <= most) || (Standing != FaultStanding.AnyLight && WorstPeakA > most)
            : WorstA is null;

    /// <summary>Whether only the tolerances pass the emitter's limit: with every part as stated it holds.</summary>
    /// <param name="mostA">The emitter's greatest current, null where it is not known.</param>
    public bool IsNarrow(double? mostA) =>
        mostA is { } most
        && Exceeds(most)
        && CurrentMostA <= most
        && (Standing == FaultStanding.AnyLight || !(PeakA > most));
}
