using Lampwright.Findings;

namespace Lampwright.Evaluation;

/// <summary>What the evaluation itself has to say: stations that a design does not say enough for, and loops that do not settle.</summary>
/// <remarks>Filed under FIL, since the remedy is always a line of the design file.</remarks>
public static class EvaluationRules
{
    private static readonly string Own = "derived: the evaluation cannot do without it";

    /// <summary>No emitter to compute with.</summary>
    public static readonly Rule NoEmitter = new(
        "FIL101",
        "No emitter",
        Severity.Warn,
        "Give an [emitter.NAME] with points from its data sheet, or its rated current, voltage and flux.",
        Own
    );

    /// <summary>No driver to compute with.</summary>
    public static readonly Rule NoDriver = new(
        "FIL102",
        "No driver",
        Severity.Warn,
        "Give a [driver.NAME] with its rated current and what is marked on its sense parts.",
        Own
    );

    /// <summary>No sink to compute with.</summary>
    public static readonly Rule NoSink = new(
        "FIL103",
        "No sink",
        Severity.Warn,
        "Give a [sink.NAME] with base and fins, or its measured resistance; and the emitter's body.",
        Own
    );

    /// <summary>No light-emitting surface.</summary>
    public static readonly Rule NoFace = new(
        "FIL104",
        "No light-emitting surface",
        Severity.Warn,
        "Give the emitter's face: its diameter, or width and height.",
        Own
    );

    /// <summary>The loop of current, light and heat did not settle.</summary>
    public static readonly Rule NotSettled = new(
        "FIL105",
        "Temperatures do not settle",
        Severity.Stop,
        "The emitter runs away: more cooling or less current, before anything is powered.",
        "derived: the coupled loop of voltage, flux and heat has no resting point here"
    );

    /// <summary>A hole that nothing says the shape of.</summary>
    public static readonly Rule HoleWithoutShape = new(
        "FIL106",
        "Hole without a shape",
        Severity.Warn,
        "Give the hole a shape, or a `for` that names a pattern of a bought thing or a screw such as \"M4 clearance\".",
        Own
    );

    /// <summary>A name that nothing carries.</summary>
    public static readonly Rule UnknownName = new(
        "FIL107",
        "Name that nothing carries",
        Severity.Warn,
        "Name a table that the file has, or add the table.",
        Own
    );

    /// <summary>A stopped fan takes the junction over its limit.</summary>
    public static readonly Rule NeedsCutOut = new(
        "FIL108",
        "A stopped fan overheats the emitter",
        Severity.Warn,
        "Put a thermal cut-out on the sink that opens the driver's input (never the emitter's line or the sense line) before the limit, or a sink that does without its fan at the dimmer positions.",
        "common practice, no source"
    );

    /// <summary>The diffuser gets hotter than it bears.</summary>
    public static readonly Rule DiffuserTooHot = new(
        "FIL109",
        "Diffuser too hot",
        Severity.Stop,
        "Let less light be absorbed (a brighter reflector, a clearer diffuser), give the front more area, or use a diffuser that bears more.",
        "derived: the maker's own limit against the computed front"
    );

    /// <summary>A tilt joint that nothing can be said of.</summary>
    public static readonly Rule TiltNotComputed = new(
        "FIL110",
        "Tilt joint not judged",
        Severity.Warn,
        "Name two patterns on the axis that joints place, give the washer's inner and outer diameter, and a screw such as \"M6 wing\".",
        Own
    );

    /// <summary>A part that nothing says the shape of.</summary>
    public static readonly Rule PartWithoutShape = new(
        "FIL111",
        "Part without a shape",
        Severity.Warn,
        "Give the part a face or panels, or let it mirror a part that has a face.",
        Own
    );

    /// <summary>Two values that cannot both be right.</summary>
    public static readonly Rule Contradiction = new(
        "FIL112",
        "Two values contradict one another",
        Severity.Warn,
        "Correct one of the two.",
        "derived: both cannot be right"
    );

    /// <summary>A value that nothing uses.</summary>
    public static readonly Rule NotUsed = new(
        "FIL113",
        "Given and not used",
        Severity.Warn,
        "Give what the message names, or leave the value out.",
        Own
    );

    /// <summary>All rules of the evaluation.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        NoEmitter,
        NoDriver,
        NoSink,
        NoFace,
        NotSettled,
        HoleWithoutShape,
        UnknownName,
        NeedsCutOut,
        DiffuserTooHot,
        TiltNotComputed,
        PartWithoutShape,
        Contradiction,
        NotUsed,
    ];
}
