using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>How the light is dimmed: a chain of resistors in the sense path.</summary>
public sealed record Steps
{
    /// <summary>Name of the emitter.</summary>
    public string Emitter { get; init; } = "main";

    /// <summary>Name of the driver.</summary>
    public string Driver { get; init; } = "main";

    /// <summary>How the resistors are connected.</summary>
    public Arrangement Arrangement { get; init; } = Arrangement.SeriesChain;

    /// <summary>True when the switches are thrown one after another, in the order of the chain, never freely; not for a selector.</summary>
    public bool IsOneAfterAnother { get; init; }

    /// <summary>Count of switches.</summary>
    public int Switches { get; init; }

    /// <summary>Wanted steps.</summary>
    public Targets? Targets { get; init; }

    /// <summary>An E series (<c>E24</c>) or <c>drawer</c>.</summary>
    public string Stock { get; init; } = "E24";

    /// <summary>Resistors at hand in the shop's drawer, which <c>drawer</c> picks from.</summary>
    public IReadOnlyList<DrawerPart> Drawer { get; init; } = [];

    /// <summary>What every resistor of the chain is rated for.</summary>
    public ResistorKind Part { get; init; } = new();

    /// <summary>Contact resistance of a closed switch when new, ohm.</summary>
    public Value ContactTypical { get; init; } = new(0.010, 0, Origin.Default, "steps.contact.typical");

    /// <summary>Most contact resistance of a worn switch, ohm.</summary>
    public Value ContactMost { get; init; } = new(0.050, 0, Origin.Default, "steps.contact.most");

    /// <summary>Length of one lead between driver and switch plate (there and back count twice), m.</summary>
    public Value LeadLength { get; init; } = new(0.3, 0, Origin.Default, "steps.lead.length");

    /// <summary>Cross-section of a lead, m².</summary>
    public Value LeadArea { get; init; } = new(0.75e-6, 0, Origin.Default, "steps.lead.area");

    /// <summary>Whether the leads' strands are tinned.</summary>
    public bool LeadTinned { get; init; }

    /// <summary>Whether the emitter's leads run apart from the chain's, with plugs that cannot be exchanged.</summary>
    public bool LeadsApart { get; init; }

    /// <summary>Where the driver's sense input takes its voltage.</summary>
    public SenseTaps Taps { get; init; } = SenseTaps.OnTheBoard;

    /// <summary>What a rotary switch does between two positions.</summary>
    public SelectorKind Selector { get; init; } = SelectorKind.Unknown;

    /// <summary>Resistor on the driver's board across the two leads, ohm; null where there is none.</summary>
    public Value? Bleed { get; init; }

    /// <summary>Resistor on the driver's board in series with parallel branches, ohm; null where there is none.</summary>
    public Value? Floor { get; init; }

    /// <summary>Resistor on the driver's board from the sense input to the pad that the tap lead by-passes, ohm; null where there is none.</summary>
    public Value? Fallback { get; init; }

    /// <summary>Greatest current the switches are rated for, A.</summary>
    public Value? ContactRating { get; init; }

    /// <summary>Resistor values the maker has chosen; null lets the first search pick them.</summary>
    public ChosenChain? Chosen { get; init; }
}

/// <summary>How the resistors of the chain are connected.</summary>
public enum Arrangement
{
    /// <summary>By-passable resistors in series.</summary>
    SeriesChain,

    /// <summary>Branches in parallel, each with its switch.</summary>
    ParallelBranches,

    /// <summary>One of several resistors at a time.</summary>
    Selector,
}

/// <summary>Wanted steps: a ladder of stops of light, or a list.</summary>
/// <param name="Kind">What the list holds.</param>
/// <param name="From">Current of the brightest step, A (needed for stops and percent).</param>
/// <param name="EveryStops">Distance between steps in stops of light (ladder).</param>
/// <param name="Count">Count of steps (ladder).</param>
/// <param name="List">The list: currents in A, lux in lx, percent as shares of the brightest.</param>
public sealed record Targets(TargetKind Kind, Value? From, double EveryStops, int Count, IReadOnlyList<Value> List);

/// <summary>What wanted steps are given in.</summary>
public enum TargetKind
{
    /// <summary>Stops of light below the brightest.</summary>
    Stops,

    /// <summary>Amps.</summary>
    Currents,

    /// <summary>Shares of the brightest light.</summary>
    Percent,

    /// <summary>Lux at the subject.</summary>
    Lux,
}

/// <summary>What a resistor is rated for.</summary>
public sealed record ResistorKind
{
    /// <summary>Tolerance as a share.</summary>
    public Value Tolerance { get; init; } = new(0.01, 0, Origin.Default, "steps.part.tolerance");

    /// <summary>Temperature coefficient, 1/K.</summary>
    public Value Tempco { get; init; } = new(100e-6, 0, Origin.Default, "steps.part.tempco");

    /// <summary>Rated power, W.</summary>
    public Value Rating { get; init; } = new(3, 0, Origin.Default, "steps.part.rating");

    /// <summary>Full power up to this temperature, K.</summary>
    public Value FullTo { get; init; } = new(343.15, 0, Origin.Default, "steps.part.full_to");

    /// <summary>No power at this temperature, K.</summary>
    public Value ZeroAt { get; init; } = new(428.15, 0, Origin.Default, "steps.part.zero_at");

    /// <summary>How the resistors can fail.</summary>
    public ResistorFails Fails { get; init; } = ResistorFails.Unknown;

    /// <summary>Least resistance that the search takes for a switched position, ohm; null for that of a worn contact.</summary>
    public Value? Least { get; init; }
}

/// <summary>How a resistor can fail.</summary>
public enum ResistorFails
{
    /// <summary>Nobody has looked.</summary>
    Unknown,

    /// <summary>Open only.</summary>
    Open,

    /// <summary>Short or open.</summary>
    ShortOrOpen,
}

/// <summary>Where the driver's sense input takes its voltage.</summary>
public enum SenseTaps
{
    /// <summary>On the board.</summary>
    OnTheBoard,

    /// <summary>By a lead of its own at the far end of the chain.</summary>
    AtTheChainsEnds,
}

/// <summary>What a rotary switch does between two positions.</summary>
public enum SelectorKind
{
    /// <summary>Nobody has looked.</summary>
    Unknown,

    /// <summary>Opens before it closes the next.</summary>
    BreakBeforeMake,

    /// <summary>Closes the next before it opens.</summary>
    MakeBeforeBreak,
}

/// <summary>Resistor values of the chain.</summary>
/// <param name="Fixed">The resistor that is never by-passed; null keeps the sense parts as they are on the board.</param>
/// <param name="Chain">The switched positions in the order of the chain.</param>
public sealed record ChosenChain(ChosenPosition? Fixed, IReadOnlyList<ChosenPosition> Chain);

/// <summary>What is soldered in one position: one part, or two.</summary>
/// <param name="Joining">How two are joined.</param>
/// <param name="Parts">One part or two, ohm; a spread is the part's own tolerance.</param>
/// <param name="Ratings">Rated power of each part, W; empty for that of all parts.</param>
public sealed record ChosenPosition(Joining Joining, IReadOnlyList<Value> Parts, IReadOnlyList<Value> Ratings);

/// <summary>How the parts of a position are joined.</summary>
public enum Joining
{
    /// <summary>One part.</summary>
    One,

    /// <summary>Two, one after the other.</summary>
    InSeries,

    /// <summary>Two, side by side.</summary>
    SideBySide,
}

/// <summary>A kind of resistor in the shop's drawer.</summary>
/// <param name="Ohm">Resistance, ohm; a spread is its own tolerance.</param>
/// <param name="Count">How many there are; null for as many as wanted.</param>
/// <param name="Rating">Rated power, W; null for that of all parts.</param>
public sealed record DrawerPart(Value Ohm, int? Count, Value? Rating);
