using Lampwright.Findings;

namespace Lampwright.Steps;

/// <summary>The rules of the steps station; each has a paragraph in docs/findings.md.</summary>
public static partial class StepsRules
{
    private const string Practice = "common practice, no source";

    /// <summary>Wires from a sense part that is not on the secondary side.</summary>
    public static readonly Rule SenseNotSecondary = new(
        "STP001",
        "Sense part not shown to be on the secondary side",
        Severity.Stop,
        "Do not bring wires out of this driver; take one with a dimming input, or have a licensed person establish the side.",
        "primary-side sense nodes are at mains potential; " + Practice,
        ProtectsPeople: true
    );

    /// <summary>Wires from a driver whose output is not isolated.</summary>
    public static readonly Rule OutputNotIsolated = new(
        "STP002",
        "Output not shown to be isolated from the mains",
        Severity.Stop,
        "Do not bring wires out of this driver; take one whose label or data sheet states an isolated, extra-low output.",
        "only a sense point on an isolated secondary may be brought out; " + Practice,
        ProtectsPeople: true
    );

    /// <summary>Wires from a sense part that carries pulses.</summary>
    public static readonly Rule PulsedSense = new(
        "STP003",
        "Sense part not shown to carry a smooth current",
        Severity.Stop,
        "Measure first; where the part carries pulses, leave it on the board and do not lengthen its loop.",
        "pulsed sense loops belong to the switching stage; " + Practice,
        ProtectsPeople: true
    );

    /// <summary>More current than the emitter takes.</summary>
    public static readonly Rule OverEmitter = new(
        "STP004",
        "The chain can drive more than the emitter takes",
        Severity.Stop,
        "Take a greater fixed resistor: the current with every switch closed must stay under the emitter's limit.",
        "the emitter's data sheet"
    );

    /// <summary>A little over the driver's rating.</summary>
    public static readonly Rule OverRated = new(
        "STP005",
        "More current than the driver is rated for",
        Severity.Warn,
        "Take a greater fixed resistor, or a driver of a higher rating.",
        "the driver's label"
    );

    /// <summary>Far over the driver's rating.</summary>
    public static readonly Rule FarOverRated = new(
        "STP006",
        "Much more current than the driver is rated for",
        Severity.Stop,
        "Take a greater fixed resistor, or a driver of a higher rating.",
        "the driver's label; how much is much: " + Practice
    );

    /// <summary>Under the driver's least current.</summary>
    public static readonly Rule UnderLeast = new(
        "STP007",
        "Less current than the driver holds",
        Severity.Warn,
        "Take a smaller resistor in the chain, or leave this combination unused: the light may blink or go out.",
        "the driver's label"
    );

    /// <summary>A resistor over its derated rating.</summary>
    public static readonly Rule ResistorOver = new(
        "STP008",
        "A resistor carries more than its derated rating",
        Severity.Stop,
        "Take a part of a higher rating, share the power between two parts, or bring cooler air to it.",
        "derating line of the part, Bourns CRA2512 data sheet"
    );

    /// <summary>A resistor near its derated rating.</summary>
    public static readonly Rule ResistorNear = new(
        "STP009",
        "A resistor carries most of its derated rating",
        Severity.Warn,
        "Take a part of a higher rating: it will be hot and drift.",
        Practice
    );

    /// <summary>Emitter voltage over the window.</summary>
    public static readonly Rule OverWindow = new(
        "STP010",
        "Emitter voltage above the driver's output window",
        Severity.Stop,
        "Take a driver with a higher window, or an emitter of less voltage; a cold start is the worst case.",
        "the driver's label"
    );

    /// <summary>Emitter voltage under the window.</summary>
    public static readonly Rule UnderWindow = new(
        "STP011",
        "Emitter voltage below the driver's output window",
        Severity.Stop,
        "Take a driver with a lower window; the dimmest step when hot is the worst case.",
        "the driver's label"
    );

    /// <summary>A threshold no controller has.</summary>
    public static readonly Rule ImplausibleThreshold = new(
        "STP012",
        "The sense threshold is not plausible",
        Severity.Warn,
        "Look for a further parallel part, read the marks again, and measure the current.",
        "published thresholds in sense-thresholds.csv; range: " + Practice
    );

    /// <summary>Marks that cannot be read.</summary>
    public static readonly Rule UnreadableMarks = new(
        "STP013",
        "A marking on a sense part cannot be read",
        Severity.Warn,
        "Write it as printed (472, R15, 2R4, L500, 65A), or measure the resistance with four wires and give it.",
        "IEC 60062; EIA-96"
    );

    /// <summary>The emitter beyond its points.</summary>
    public static readonly Rule Extrapolated = new(
        "STP014",
        "The emitter's curve is used beyond its points",
        Severity.Warn,
        "Add a point of the data sheet, or a reading, near the current in question.",
        "validity of the fit; how far is let pass: " + Practice
    );

    /// <summary>Sense facts that contradict each other.</summary>
    public static readonly Rule Contradiction = new(
        "STP015",
        "What is known of the sense circuit contradicts itself",
        Severity.Warn,
        "Measure the sense resistance with four wires and the current with a meter in line.",
        Practice
    );

    /// <summary>Contacts that matter too much.</summary>
    public static readonly Rule ContactShare = new(
        "STP016",
        "Contacts take too large a share of the sense resistance",
        Severity.Warn,
        "Use both poles of a switch in parallel, contacts of lower resistance, or fewer closed switches in series.",
        "NKK M and A series; share: " + Practice
    );

    /// <summary>A switched resistor below its worn contact.</summary>
    public static readonly Rule SmallerThanContact = new(
        "STP051",
        "A switched resistor is smaller than its worn contact",
        Severity.Warn,
        "Take a greater value, leave the switch out, or take contacts of lower resistance: both poles in parallel, gold.",
        "current divides as conductances do (Ohm's law); half as the limit: " + Practice
    );

    /// <summary>Points that no emitter has.</summary>
    public static readonly Rule UnphysicalPoints = new(
        "STP017",
        "The emitter's points do not fit an emitter",
        Severity.Warn,
        "Compare the points with the data sheet: two may be swapped, or from different temperatures.",
        "diode equation"
    );

    /// <summary>A curve from few points.</summary>
    public static readonly Rule FewPoints = new(
        "STP018",
        "The emitter's curve rests on few points",
        Severity.Note,
        "Give three points of the data sheet over the range that will be used; the bands become narrower.",
        "stand-in of ITECH IT8731 manual p. 58"
    );

    /// <summary>A selector that opens the sense loop.</summary>
    public static readonly Rule SelectorOpens = new(
        "STP019",
        "The selector opens the sense loop between positions",
        Severity.Stop,
        "Take a make-before-break (shorting) selector and say so in steps.selector, put a resistor across the leads on the board (steps.bleed), or take a chain of by-passed resistors, which never opens.",
        "NKK A series: non-shorting is break-before-make; " + Practice
    );

    /// <summary>No threshold.</summary>
    public static readonly Rule NoThreshold = new(
        "STP020",
        "The driver's sense threshold is not known",
        Severity.Warn,
        "Give the marks of the sense parts, their resistance, or a measured pair of resistance and current.",
        "I = V/R"
    );

    /// <summary>No flux.</summary>
    public static readonly Rule NoFlux = new(
        "STP021",
        "No flux is given for the emitter",
        Severity.Warn,
        "Give the flux at one current at least.",
        Practice
    );

    /// <summary>A chain that cannot be computed.</summary>
    public static readonly Rule NotComputable = new(
        "STP022",
        "The chain cannot be computed",
        Severity.Stop,
        "Give every resistor a resistance and a rating above zero, a derating line that falls, and at most ten switches.",
        "validity of the method"
    );

    /// <summary>A wanted step that no combination meets.</summary>
    public static readonly Rule StepMissed = new(
        "STP023",
        "A wanted step is not met by any combination",
        Severity.Warn,
        "Allow a finer series or one switch more, or move the wanted step.",
        "a third of a stop is what a photographer sees; " + Practice
    );

    /// <summary>A threshold worth a second look.</summary>
    public static readonly Rule UnusualThreshold = new(
        "STP024",
        "The sense threshold is unusual",
        Severity.Note,
        "Look for a further parallel part, and measure the current before parts are bought.",
        "published thresholds in sense-thresholds.csv; range: " + Practice
    );

    /// <summary>All rules of the station.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        SenseNotSecondary,
        OutputNotIsolated,
        PulsedSense,
        OverEmitter,
        OverRated,
        FarOverRated,
        UnderLeast,
        ResistorOver,
        ResistorNear,
        OverWindow,
        UnderWindow,
        ImplausibleThreshold,
        UnreadableMarks,
        Extrapolated,
        Contradiction,
        ContactShare,
        SmallerThanContact,
        UnphysicalPoints,
        FewPoints,
        SelectorOpens,
        NoThreshold,
        NoFlux,
        NotComputable,
        StepMissed,
        UnusualThreshold,
        .. ChainProof.ChainRules.All,
    ];
}
