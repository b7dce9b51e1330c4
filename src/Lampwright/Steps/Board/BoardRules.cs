using Lampwright.Findings;

namespace Lampwright.Steps.Board;

/// <summary>The rules of reading a board beside STP001 to STP003; each has a paragraph in docs/findings.md.</summary>
public static class BoardRules
{
    private const string Practice = "common practice, no source";

    /// <summary>A second point that cannot belong to the same driver.</summary>
    public static readonly Rule SecondContradicts = new(
        "STP032",
        "The second measured point contradicts the first",
        Severity.Warn,
        "Check both resistances and both currents; the second point is not used as it stands.",
        "Iavg = Vcs/Rs less half of the ripple, TI AN-1954 p. 8; limits of the offset: " + Practice
    );

    /// <summary>Peak control whose ripple is not known.</summary>
    public static readonly Rule PeakWithoutRipple = new(
        "STP033",
        "Peak control without the ripple it subtracts",
        Severity.Warn,
        "Give the ripple of the inductor current from the controller's data sheet, or a second measured point.",
        "Iavg = Vcs/Rs less half of the ripple, TI AN-1954 p. 8"
    );

    /// <summary>The law used far beyond its points.</summary>
    public static readonly Rule LawExtrapolated = new(
        "STP034",
        "The law from resistance to current is used far beyond what is known",
        Severity.Warn,
        "Say what the controller holds, or give a second measured point near the dimmest step; until then buy no parts for it.",
        "error of the law by kind of control; how much is let pass: " + Practice
    );

    /// <summary>Parallel parts that hardly belong together.</summary>
    public static readonly Rule UnusualMix = new(
        "STP035",
        "The marks are an unusual mix for parallel sense parts",
        Severity.Note,
        "Look again whether each of these parts lies across the same two nodes; the greatest may belong to a filter.",
        Practice
    );

    /// <summary>A mark with two meanings.</summary>
    public static readonly Rule AmbiguousMark = new(
        "STP036",
        "A marking on a sense part has two meanings",
        Severity.Note,
        "Write it so that it has one (0R22, 22R0), or measure the resistance with four wires and give it.",
        "IEC 60062 against EIA-96"
    );

    /// <summary>An offset that matters.</summary>
    public static readonly Rule OffsetLarge = new(
        "STP037",
        "The offset is large against the sense threshold",
        Severity.Warn,
        "Take the offset over temperature from the amplifier's data sheet; the current may drift by that share from board to board.",
        "Vos/V, ST TSM1012 table 5 note 1; how much is much: " + Practice
    );

    /// <summary>A kind of control that other facts speak against.</summary>
    public static readonly Rule ControlDisagrees = new(
        "STP038",
        "The kind of control does not fit what else is known",
        Severity.Warn,
        "Read the controller's data sheet again; the stops stay as the graver of the two would have them.",
        "twice the 5 to 95 % band is met by chance once in a thousand: JCGM 100:2008; TI AN-1954 p. 8"
    );

    /// <summary>All rules of reading a board.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [SecondContradicts, PeakWithoutRipple, LawExtrapolated, UnusualMix, AmbiguousMark, OffsetLarge, ControlDisagrees];
}
