namespace Lampwright.Steps;

/// <summary>How the switched resistors stand to the fixed one.</summary>
public enum Arrangement
{
    /// <summary>Fixed resistor and switched ones in series; a closed switch by-passes its resistor: more light.</summary>
    SeriesChain,

    /// <summary>Switched branches parallel to the fixed resistor; a closed switch connects its branch: more light.</summary>
    ParallelBranches,

    /// <summary>One of several resistors, chosen by a rotary switch, in series with the fixed one.</summary>
    Selector,
}

/// <summary>What a rotary switch does between two positions.</summary>
public enum SelectorKind
{
    /// <summary>Not known; treated as one that opens.</summary>
    Unknown,

    /// <summary>Opens before it closes the next: the sense loop is open in between.</summary>
    BreakBeforeMake,

    /// <summary>Closes the next before it opens: two positions act at once in between.</summary>
    MakeBeforeBreak,
}

/// <summary>Where the driver's sense input takes the voltage it regulates.</summary>
public enum SenseTaps
{
    /// <summary>On the board: both leads lie in the sense loop.</summary>
    OnTheBoard,

    /// <summary>
    /// By a lead of its own at the far end of the chain: of the two leads only the one between fixed resistor and chain stays in the loop.
    /// Series chain and selector; parallel branches are always sensed on the board.
    /// </summary>
    AtTheChainsEnds,
}

/// <summary>How a resistor can fail.</summary>
public enum FailureKind
{
    /// <summary>Not known; treated as one that may fail short.</summary>
    Unknown,

    /// <summary>Fails open only: metal strip, metal film and wirewound parts.</summary>
    Open,

    /// <summary>May fail short.</summary>
    ShortOrOpen,
}

/// <summary>The leads between the driver's board and the switches.</summary>
/// <param name="LengthM">Length of one conductor in metres; ≥ 0.</param>
/// <param name="AreaMm2">Copper area in mm².</param>
/// <param name="Conductors">How many conductors the sense current passes one after another; there and back is 2.</param>
/// <param name="Tinned">Whether the strands are tinned.</param>
public sealed record LeadSpec(double LengthM, double AreaMm2, int Conductors = 2, bool Tinned = false);

/// <summary>A switched sense chain as it is to be built.</summary>
/// <param name="Arrangement">How the resistors stand to each other.</param>
/// <param name="Fixed">The resistor that is never by-passed; it stays on the driver's board.</param>
/// <param name="Switched">The switched resistors in the order of the chain.</param>
/// <param name="ContactOhm">Resistance of one closed contact in ohm; ≥ 0.</param>
/// <param name="ContactMostOhm">Greatest resistance of a worn contact in ohm; null where it is not known.</param>
/// <param name="Lead">The leads, null where there are none in the sense loop.</param>
/// <param name="Selector">What a rotary switch does between positions.</param>
/// <param name="Path">Path in the design file that findings lead to.</param>
/// <param name="TempcoIsLimit">True when the parts' coefficient is a limit to either side: its nominal value is then 0.</param>
/// <param name="Taps">Where the sense input takes its voltage.</param>
/// <param name="BleedOhm">Resistor on the board across the ends of the two leads, in ohm; null where there is none. Series chain and selector.</param>
/// <param name="FloorOhm">Resistor on the board in series with all parallel branches, in ohm; null where there is none. Parallel branches only.</param>
/// <param name="FallbackOhm">Resistor on the board from the sense input to the pad that the tap lead by-passes, in ohm; null where there is none.</param>
/// <param name="Fails">How its resistors can fail.</param>
/// <param name="ContactMostA">Greatest current the switches are rated for, in amperes; null where it is not known.</param>
/// <param name="LeadsApart">Whether the emitter's leads run apart from the chain's, with plugs that cannot be exchanged.</param>
/// <param name="LeastOhm">Least resistance of a switched position that the maker wants, in ohm; null for that of a worn contact.</param>
public sealed record ChainSpec(
    Arrangement Arrangement,
    ResistorPart Fixed,
    IReadOnlyList<ResistorPart> Switched,
    double ContactOhm,
    double? ContactMostOhm = null,
    LeadSpec? Lead = null,
    SelectorKind Selector = SelectorKind.Unknown,
    string Path = "steps",
    bool TempcoIsLimit = false,
    SenseTaps Taps = SenseTaps.OnTheBoard,
    double? BleedOhm = null,
    double? FloorOhm = null,
    double? FallbackOhm = null,
    FailureKind Fails = FailureKind.Unknown,
    double? ContactMostA = null,
    bool LeadsApart = false,
    double? LeastOhm = null
)
{
    /// <summary>
    /// Least useful resistance of a switched position: that of its worn contact, where half of the current stays in the resistor when its switch is
    /// closed. A selector's contact lies in series with its position, whatever the value: there is none.
    /// </summary>
    public double LeastSwitchedOhm =>
        LeastOhm ?? (Arrangement == Arrangement.Selector ? 0 : Math.Max(ContactOhm, ContactMostOhm ?? 0));

    /// <summary>More switches than this are not computed: 1,024 combinations.</summary>
    public static int MostSwitches => 10;

    /// <summary>Whether the sense input has a lead of its own to the far end of the chain.</summary>
    public bool HasTapLead => Taps == SenseTaps.AtTheChainsEnds && Arrangement != Arrangement.ParallelBranches;
}
