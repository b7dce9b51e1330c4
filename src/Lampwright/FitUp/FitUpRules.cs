using Lampwright.Findings;

namespace Lampwright.FitUp;

/// <summary>Rules of the station fit-up.</summary>
public static class FitUpRules
{
    /// <summary>A body that no joint reaches.</summary>
    public static readonly Rule Unplaced = new(
        "FIT001",
        "No joint places this",
        Severity.Warn,
        "Add a joint that fastens it to something that is placed.",
        "Derived"
    );

    /// <summary>A joint names a pattern that no body has.</summary>
    public static readonly Rule PatternMissing = new(
        "FIT002",
        "A joint names holes that do not exist",
        Severity.Stop,
        "Name a hole pattern of a part or of a bought thing, or add the holes.",
        "Derived"
    );

    /// <summary>Patterns of a joint have different counts of holes, or too many to match.</summary>
    public static readonly Rule CountsDiffer = new(
        "FIT003",
        "Patterns of a joint differ in their count of holes",
        Severity.Warn,
        "Give both patterns the same holes, at most 64; what has no partner is left without a screw.",
        "Derived"
    );

    /// <summary>Holes do not meet as they are drawn.</summary>
    public static readonly Rule HolesMiss = new(
        "FIT004",
        "Holes do not meet as drawn",
        Severity.Stop,
        "Bring the pitches of both patterns together, correct the turn, or drill larger holes.",
        "ASME Y14.5, appendix B: H = F + T, H = F + 2T"
    );

    /// <summary>Holes may not meet by the accuracy of hand work.</summary>
    public static readonly Rule HandMayMiss = new(
        "FIT005",
        "Holes may not meet by hand",
        Severity.Warn,
        "Drill larger holes, make one of them a slot, punch through the mating part, or drill both together.",
        "ASME Y14.5, appendix B; scatter of hand work: common practice, no source"
    );

    /// <summary>The screw does not reach its nut or thread.</summary>
    public static readonly Rule ScrewShort = new(
        "FIT006",
        "Screw too short",
        Severity.Stop,
        "Take a longer screw or fewer washers: a nut must be filled, a thread hold at least three turns.",
        "Common practice, no source"
    );

    /// <summary>The screw stands out far.</summary>
    public static readonly Rule ScrewLong = new(
        "FIT007",
        "Screw stands out far",
        Severity.Warn,
        "Take a shorter screw; what stands out catches cables and hands.",
        "Common practice, no source"
    );

    /// <summary>The size of a screw is not in the table.</summary>
    public static readonly Rule ScrewUnknown = new(
        "FIT008",
        "Screw of unknown size",
        Severity.Warn,
        "Name a metric coarse thread from M2 to M10, for example M4.",
        "ISO 724"
    );

    /// <summary>Nobody knows what a thing weighs.</summary>
    public static readonly Rule MassUnknown = new(
        "FIT009",
        "Mass not known",
        Severity.Note,
        "Weigh it and give its mass; it counts as nothing now.",
        "Derived"
    );

    /// <summary>Two joints place one body differently.</summary>
    public static readonly Rule Contradiction = new(
        "FIT010",
        "Joints contradict one another",
        Severity.Stop,
        "Correct a size, a side or a turn: the parts cannot be where both joints want them. A miss as large as a part mostly means that an earlier joint turned one over: look at the turns first.",
        "Derived"
    );

    /// <summary>Few threads in a tapped hole.</summary>
    public static readonly Rule FewThreads = new(
        "FIT011",
        "Fewer than three full threads",
        Severity.Warn,
        "Use a rivet nut, weld nut or clinch nut, or a nut behind the sheet.",
        "Common practice, no source"
    );

    /// <summary>A screw has neither nut nor thread.</summary>
    public static readonly Rule NothingHolds = new(
        "FIT012",
        "Nothing holds the screw",
        Severity.Stop,
        "Give the screw a nut, or tap the last hole of the stack.",
        "Derived"
    );

    /// <summary>The screw meets the bottom of a blind hole before it clamps.</summary>
    public static readonly Rule ScrewBottoms = new(
        "FIT013",
        "Screw meets the bottom of its hole",
        Severity.Stop,
        "Take a shorter screw or add a washer.",
        "Common practice, no source"
    );

    /// <summary>A side or a turn was taken by default.</summary>
    public static readonly Rule TakenByDefault = new(
        "FIT014",
        "Side or turn taken by default",
        Severity.Note,
        "Name the sides that touch and, where the pattern is symmetric, the turn.",
        "Derived"
    );

    /// <summary>A side that the pattern does not have.</summary>
    public static readonly Rule SideUnknown = new(
        "FIT015",
        "Side of a joint not known",
        Severity.Warn,
        "Name a side that the pattern has.",
        "Derived"
    );

    /// <summary>The holes do not allow the turn that is told.</summary>
    public static readonly Rule TurnUnfit = new(
        "FIT016",
        "Turn does not fit the holes",
        Severity.Warn,
        "Give a turn at which the holes of both patterns meet.",
        "Derived"
    );

    /// <summary>The fixed body does not exist.</summary>
    public static readonly Rule FixedMissing = new(
        "FIT017",
        "Fixed part not known",
        Severity.Warn,
        "Name a part or bought thing of the design in assembly.fixed.",
        "Derived"
    );

    /// <summary>The screw does not pass a hole.</summary>
    public static readonly Rule ScrewDoesNotPass = new(
        "FIT018",
        "Screw does not pass its hole",
        Severity.Stop,
        "Drill the clearance hole of the screw's size, or take a thinner screw.",
        "ISO 273"
    );

    /// <summary>A joint joins less than two patterns.</summary>
    public static readonly Rule JointOfOne = new(
        "FIT019",
        "Joint of fewer than two patterns",
        Severity.Warn,
        "Name at least two hole patterns in the stack.",
        "Derived"
    );

    /// <summary>All rules of the station.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        Unplaced,
        PatternMissing,
        CountsDiffer,
        HolesMiss,
        HandMayMiss,
        ScrewShort,
        ScrewLong,
        ScrewUnknown,
        MassUnknown,
        Contradiction,
        FewThreads,
        NothingHolds,
        ScrewBottoms,
        TakenByDefault,
        SideUnknown,
        TurnUnfit,
        FixedMissing,
        ScrewDoesNotPass,
        JointOfOne,
    ];
}
