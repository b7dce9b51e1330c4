using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Rules of the kinds of parts beyond folded sheet: tubes, funnels, fields, letters, hinges.</summary>
public static partial class MetalRules
{
    /// <summary>A tube whose sizes contradict each other.</summary>
    public static readonly Rule TubeCannotBe = new(
        "MET027",
        "Wall, corners, length and cuts of a tube go together",
        Severity.Stop,
        "Correct the size that is named: the wall under half of the smaller side, the corners with something flat between them, cuts that leave something of every side.",
        "derived"
    );

    /// <summary>A corner radius that no standard tube has.</summary>
    public static readonly Rule TubeCorner = new(
        "MET028",
        "The corners of a tube are as its standard has them",
        Severity.Note,
        "Measure the corner with a radius gauge, or leave it out to take that of the standard. Precision and aluminium tube have smaller ones.",
        "EN 10219-2:2006, table 3 (second-hand)"
    );

    /// <summary>A funnel of six or eight panels as a reflector.</summary>
    public static readonly Rule LightOfRectangle = new(
        "MET029",
        "The light of a funnel is computed for its own panels",
        Severity.Note,
        "Take light and evenness as near, and measure; four panels are computed as they are.",
        "derived"
    );

    private static IReadOnlyList<Rule> Kinds => [TubeCannotBe, TubeCorner, LightOfRectangle];
}
