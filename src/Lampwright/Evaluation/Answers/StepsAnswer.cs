using Lampwright.Steps.Faults;

namespace Lampwright.Evaluation.Answers;

/// <summary>Answer of the station steps.</summary>
public sealed record StepsAnswer
{
    /// <summary>Voltage over the sense path at which the driver regulates, V.</summary>
    public required Predicted SenseThresholdV { get; init; }

    /// <summary>Whether that threshold is one that drivers use.</summary>
    public required bool ThresholdIsPlausible { get; init; }

    /// <summary>Where the resistor values come from: <c>given</c> or <c>first search</c>.</summary>
    public required string ChosenBy { get; init; }

    /// <summary>The fixed resistor first, then the chain in its order.</summary>
    public required IReadOnlyList<ChainPart> Parts { get; init; }

    /// <summary>All switch positions, brightest (all closed) to dimmest by their order in the chain.</summary>
    public required IReadOnlyList<Combination> Combinations { get; init; }

    /// <summary>Wanted steps and the position that stands for each: its own where the switches are thrown one after another, else the nearest.</summary>
    public IReadOnlyList<TargetMatch> Targets { get; init; } = [];

    /// <summary>The best chain from the stock; null until it is asked for, and where nothing is wanted.</summary>
    public ChainAnswer? Chain { get; init; }

    /// <summary>Resistance of the leads to the switch plate and back, ohm.</summary>
    public required Predicted LeadOhm { get; init; }

    /// <summary>How the chain is connected: <c>series chain</c>, <c>parallel branches</c> or <c>selector</c>.</summary>
    public required string Arrangement { get; init; }

    /// <summary>Every single fault of the chain with what follows, the worst first; at nominal. Empty without switches.</summary>
    public IReadOnlyList<FaultResult> Faults { get; init; } = [];

    /// <summary>What is soldered: leads, resistors, switches, what meters show.</summary>
    public ChainBuild? Build { get; init; }

    /// <summary>Fuse of the supply; null where the supply is not known.</summary>
    public FuseRow? Fuse { get; init; }

    /// <summary>Positions for the switch plate, brightest first: those that stand for the wanted steps.</summary>
    public IReadOnlyList<string> Recommended { get; init; } = [];
}

/// <summary>One resistor of the chain.</summary>
/// <param name="Name">R0 for the fixed one, then R1 … in the order of the chain; R1a and R1b for two parts in one position.</param>
/// <param name="ResistanceOhm">Nominal resistance, ohm.</param>
/// <param name="RatingW">Rated power, W.</param>
/// <param name="MostW">Most power over all positions, W.</param>
/// <param name="DeratedW">Power it may take in the air that surrounds it, at the hottest scene, W.</param>
/// <param name="HottestC">Hottest surface over all positions, at the hottest scene, °C; the hotter of two.</param>
public sealed record ChainPart(
    string Name,
    double ResistanceOhm,
    double RatingW,
    Predicted MostW,
    Predicted DeratedW,
    Predicted HottestC
)
{
    /// <summary>How two parts of this position are joined: <c>series</c> or <c>parallel</c>; empty for one part.</summary>
    public string Joined { get; init; } = "";

    /// <summary>The two parts of this position, R2a and R2b; empty for one part. Rating and powers of the position are then those at which the first of the two comes to its limit.</summary>
    public IReadOnlyList<ChainPart> Pair { get; init; } = [];

    /// <summary>Its name, of two parts with both of them: <c>R2 = R2a + R2b</c>, <c>R2 = R2a ∥ R2b</c>.</summary>
    public string Label => Pair.Count == 0 ? Name : $"{Name} = {Pair[0].Name} {JoinedBy} {Pair[1].Name}";

    /// <summary>The sign between two parts, + in series and ∥ side by side; empty for one part.</summary>
    public string JoinedBy =>
        Joined switch
        {
            "" => "",
            "series" => "+",
            _ => "∥",
        };

    /// <summary>What is soldered: the part itself or both of a pair.</summary>
    public IReadOnlyList<ChainPart> Soldered() => Pair.Count > 0 ? Pair : [this];
}

/// <summary>One switch position, in the scene normal unless a name says otherwise.</summary>
public sealed record Combination
{
    /// <summary>One digit a switch in the order of the chain; 1 is closed, which by-passes its resistor.</summary>
    public required string Switches { get; init; }

    /// <summary>Resistance of the whole sense path, warm, ohm.</summary>
    public required Predicted ResistanceOhm { get; init; }

    /// <summary>Current through the emitter, A.</summary>
    public required Predicted CurrentA { get; init; }

    /// <summary>Least and greatest current that parts and threshold allow at once, in the hottest air; null where it was not computed.</summary>
    public WorstCorner? Corner { get; init; }

    /// <summary>Voltage of the emitter, V.</summary>
    public required Predicted VoltageV { get; init; }

    /// <summary>Electrical power of the emitter, W.</summary>
    public required Predicted EmitterW { get; init; }

    /// <summary>Flux of the bare emitter, lm.</summary>
    public required Predicted FluxLm { get; init; }

    /// <summary>Flux that leaves the light, lm.</summary>
    public required Predicted FluxOutLm { get; init; }

    /// <summary>Illuminance at the centre of the subject, lx.</summary>
    public required Predicted LuxAtSubject { get; init; }

    /// <summary>Flux as a share of the brightest position's, nominal.</summary>
    public double Share { get; init; }

    /// <summary>Light below the brightest position, in stops (0 for the brightest, negative below).</summary>
    public required Predicted Stops { get; init; }

    /// <summary>Exposure value at ISO 100.</summary>
    public required Predicted Ev { get; init; }

    /// <summary>Aperture (f-number) for the subject's ISO and shutter.</summary>
    public required Predicted Aperture { get; init; }

    /// <summary>Junction temperature, °C.</summary>
    public required Predicted JunctionC { get; init; }

    /// <summary>Junction temperature in the scene hot, °C.</summary>
    public required Predicted JunctionHotC { get; init; }

    /// <summary>Junction temperature when the fan has stopped, °C.</summary>
    public required Predicted JunctionFanStoppedC { get; init; }

    /// <summary>Heat lost in the driver, W.</summary>
    public required Predicted DriverLossW { get; init; }

    /// <summary>Power drawn from the supply, W, without the fan.</summary>
    public required Predicted InputW { get; init; }

    /// <summary>Power of each resistor, the fixed one first, W.</summary>
    public required IReadOnlyList<Predicted> ResistorsW { get; init; }

    /// <summary>Most emitter current less this current, A; negative is too much.</summary>
    public required Predicted CurrentMarginA { get; init; }

    /// <summary>Hottest junction allowed less the junction in the scene hot, K; negative is too hot.</summary>
    public required Predicted JunctionMarginK { get; init; }
}

/// <summary>A wanted step and the position that stands for it.</summary>
/// <param name="Wanted">What was wanted, as text with its unit.</param>
/// <param name="CurrentA">Current that gives it, A.</param>
/// <param name="Switches">Position that stands for it.</param>
/// <param name="ErrorStops">Its light against the wanted, in stops.</param>
public sealed record TargetMatch(string Wanted, Predicted CurrentA, string Switches, Predicted ErrorStops);
