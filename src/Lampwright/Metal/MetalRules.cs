using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>The rules of the metal station. Codes are never used again; each has a paragraph in docs/findings.md.</summary>
public static partial class MetalRules
{
    private static readonly string Practice = "common practice, no source";

    /// <summary>A flange stands on an edge that is not there.</summary>
    public static readonly Rule UnknownEdge = new(
        "MET001",
        "A flange stands on a straight edge that exists",
        Severity.Stop,
        "Name a straight free edge of the face or of another flange, and give every flange a name of its own.",
        Practice
    );

    /// <summary>Two flanges on one piece of edge.</summary>
    public static readonly Rule EdgeUsedUp = new(
        "MET002",
        "An edge carries one flange at a place",
        Severity.Stop,
        "Move one of the flanges to another edge, or give both offsets so that they stand side by side.",
        Practice
    );

    /// <summary>An angle that cannot be bent.</summary>
    public static readonly Rule AngleOutOfRange = new(
        "MET003",
        "A bend turns by more than 0° and at most 180°",
        Severity.Stop,
        "Give the angle turned from flat, between 0° and 180° either way.",
        Practice
    );

    /// <summary>An angle beyond what the brake closes to.</summary>
    public static readonly Rule BeyondBrake = new(
        "MET004",
        "A bend does not turn further than the brake closes",
        Severity.Stop,
        "Lessen the angle, or make the part of two pieces with a seam.",
        Practice
    );

    /// <summary>Nothing is left of a flange beside its bend.</summary>
    public static readonly Rule FlangeWithoutFlat = new(
        "MET005",
        "Something flat is left of a flange",
        Severity.Stop,
        "Make the flange higher or longer, its sides less slanted, or its bend radius smaller.",
        "derived"
    );

    /// <summary>A flange the brake cannot hold.</summary>
    public static readonly Rule ShortFlange = new(
        "MET006",
        "A flange is high enough for the brake to take hold",
        Severity.Warn,
        "Make the flange higher, or bend it high and cut it down afterwards.",
        Practice
    );

    /// <summary>A radius under which the sheet may crack.</summary>
    public static readonly Rule SmallRadius = new(
        "MET007",
        "The inside radius is not below the least for the sheet",
        Severity.Warn,
        "Take a larger radius or a softer sheet, bend across the rolling direction, and try a strip first.",
        "DIN 6935:1975, smallest inside radii"
    );

    /// <summary>A hole close to a bend.</summary>
    public static readonly Rule HoleNearBend = new(
        "MET008",
        "A hole keeps its distance from a bend",
        Severity.Warn,
        "Move the hole away from the bend, or cut it after bending.",
        Practice
    );

    /// <summary>A hole that reaches into a bend.</summary>
    public static readonly Rule HoleInBend = new(
        "MET009",
        "A hole lies in the flat, not in a bend",
        Severity.Stop,
        "Move the hole out of the bend zone; a hole there is pulled out of shape and its place is not defined.",
        Practice
    );

    /// <summary>A hole that leaves its face.</summary>
    public static readonly Rule HoleOutside = new(
        "MET010",
        "A hole lies inside its face",
        Severity.Stop,
        "Move the hole or make it smaller, so that metal is left round it.",
        "derived"
    );

    /// <summary>A hole far too close to an edge.</summary>
    public static readonly Rule HoleAtEdge = new(
        "MET011",
        "A hole leaves at least a thickness of metal to the edge",
        Severity.Warn,
        "Move the hole away from the edge or make it a notch on purpose.",
        Practice
    );

    /// <summary>A hole closer to an edge than is good.</summary>
    public static readonly Rule HoleNearEdge = new(
        "MET012",
        "A hole leaves two thicknesses of metal to the edge",
        Severity.Note,
        "Move the hole a little away from the edge where there is room.",
        Practice
    );

    /// <summary>A thin web between holes.</summary>
    public static readonly Rule ThinWeb = new(
        "MET013",
        "Holes leave a web between them",
        Severity.Warn,
        "Set the holes further apart or make them smaller.",
        Practice
    );

    /// <summary>Holes that run into each other.</summary>
    public static readonly Rule HolesOverlap = new(
        "MET014",
        "Holes do not run into each other",
        Severity.Stop,
        "Set the holes apart, or draw them as one outline.",
        "derived"
    );

    /// <summary>A hole smaller than the sheet is thick.</summary>
    public static readonly Rule SmallHole = new(
        "MET015",
        "A hole is not smaller than the sheet is thick",
        Severity.Note,
        "Drill it instead of punching it, or make it larger.",
        Practice
    );

    /// <summary>More holes than are computed.</summary>
    public static readonly Rule TooManyHoles = new(
        "MET016",
        "A part has no more holes than can be made",
        Severity.Stop,
        "Use perforated sheet, a larger pitch or a smaller field.",
        "limit of the program"
    );

    /// <summary>The blank overlaps itself.</summary>
    public static readonly Rule BlankOverlaps = new(
        "MET017",
        "The blank lies flat without overlapping itself",
        Severity.Stop,
        "Shorten the flanges that meet in the flat, or make the part of two pieces with a seam.",
        "derived"
    );

    /// <summary>Folded flats that cut through one another.</summary>
    public static readonly Rule FoldCollides = new(
        "MET018",
        "Folded flanges do not cut through one another",
        Severity.Stop,
        "Give one of the two an offset or a slanted side, or make it shorter.",
        "derived"
    );

    /// <summary>A blank larger than its sheet.</summary>
    public static readonly Rule LargerThanSheet = new(
        "MET019",
        "The blank fits on its sheet",
        Severity.Stop,
        "Take a larger sheet or make the part of two pieces.",
        "derived"
    );

    /// <summary>A dimension nobody can mean.</summary>
    public static readonly Rule AbsurdSize = new(
        "MET020",
        "Dimensions are such as a shop can make",
        Severity.Stop,
        "Check the number and its unit.",
        "limit of the program"
    );

    /// <summary>A bend longer than the brake.</summary>
    public static readonly Rule LongerThanBrake = new(
        "MET021",
        "A bend is not longer than the brake",
        Severity.Stop,
        "Bend it elsewhere or make the part of two pieces.",
        Practice
    );

    /// <summary>Sheet that is too strong for the brake.</summary>
    public static readonly Rule TooStrongForBrake = new(
        "MET022",
        "The sheet is not too strong for the brake",
        Severity.Warn,
        "Take thinner or softer sheet, or bend shorter lengths.",
        "derived from the bending moment S T² / 4"
    );

    /// <summary>A neutral fibre where none can be.</summary>
    public static readonly Rule ImplausibleK = new(
        "MET023",
        "The neutral fibre lies inside the sheet",
        Severity.Warn,
        "Measure the test strip and the inside radius again; K between 0.25 and 0.5 is usual.",
        "Machinery's Handbook, 26th ed., table of K (second-hand)"
    );

    /// <summary>Corner edges that press on each other by a little.</summary>
    public static readonly Rule CornerTouches = new(
        "MET024",
        "Neighbouring flanges clear each other at the corner",
        Severity.Note,
        "File the corner edges, or ask for the corner relief 'clear'.",
        "derived"
    );

    /// <summary>A seam whose edges do not meet.</summary>
    public static readonly Rule SeamOpen = new(
        "MET025",
        "The edges of a seam meet when the part is folded",
        Severity.Warn,
        "Check the names of the edges, the heights and the angles.",
        "derived"
    );

    /// <summary>Bends too close to each other.</summary>
    public static readonly Rule BendUsesUpEdge = new(
        "MET026",
        "Bends leave something flat between them",
        Severity.Stop,
        "Make the face larger, or the edges between the bends longer.",
        "derived"
    );

    /// <summary>Sheet too thin or too thick for what is put into an opening.</summary>
    public static readonly Rule SheetForCutOut = new(
        "MET031",
        "The sheet suits what is put into its opening",
        Severity.Warn,
        "Take a part made for this thickness, or thin or back the sheet round the opening.",
        "Tables/cut-outs.csv, each row its source"
    );

    /// <summary>A standard opening that nobody read in print.</summary>
    public static readonly Rule CutOutNotRead = new(
        "MET032",
        "A standard opening is read in its maker's print",
        Severity.Note,
        "Hold the part against the template before cutting; give its own size with shape where it differs.",
        Practice
    );

    /// <summary>A hem that may crack or cannot be closed.</summary>
    public static readonly Rule HemCracks = new(
        "MET033",
        "A closed hem is folded in sheet that takes it",
        Severity.Warn,
        "Take softer sheet or a wider hem, fold an open hem over a strip of sheet, or anneal the edge; try a strip first.",
        Practice
    );

    /// <summary>A joggle is not made on the brake.</summary>
    public static readonly Rule JoggleTool = new(
        "MET034",
        "A joggle is set between two bars",
        Severity.Note,
        "Press it between two bars that stand off by the step, in a vice or a press; the brake cannot take hold between its bends.",
        Practice
    );

    /// <summary>Two bends that do not fit into a step.</summary>
    public static readonly Rule JoggleTooSteep = new(
        "MET035",
        "The bends of a joggle fit into its step",
        Severity.Stop,
        "Lessen the angle or the radius, make the step higher, or leave the angle out.",
        "derived"
    );

    /// <summary>An outline that is none.</summary>
    public static readonly Rule OutlineCrosses = new(
        "MET036",
        "An outline goes round once without crossing itself",
        Severity.Stop,
        "Give the corners in the order in which a finger follows the edge.",
        "derived"
    );

    /// <summary>A relief smaller than what keeps the sheet from tearing.</summary>
    public static readonly Rule SmallRelief = new(
        "MET037",
        "A relief is as wide as the sheet is thick and reaches past the bend",
        Severity.Warn,
        "Make it larger or leave its size out.",
        Practice
    );

    /// <summary>A hole that a hem closes.</summary>
    public static readonly Rule HoleUnderHem = new(
        "MET038",
        "A hole does not lie beneath a hem",
        Severity.Warn,
        "Move the hole past the hem, make the hem narrower or leave a stretch of the edge without, or drill through both after folding.",
        "derived"
    );

    /// <summary>All rules, in order of their codes.</summary>
    public static IReadOnlyList<Rule> All => Every.Rules;

    /// <summary>Made after all rules are, whatever order the files of this class are compiled in.</summary>
    private static class Every
    {
        public static readonly IReadOnlyList<Rule> Rules =
        [
            UnknownEdge,
            EdgeUsedUp,
            AngleOutOfRange,
            BeyondBrake,
            FlangeWithoutFlat,
            ShortFlange,
            SmallRadius,
            HoleNearBend,
            HoleInBend,
            HoleOutside,
            HoleAtEdge,
            HoleNearEdge,
            ThinWeb,
            HolesOverlap,
            SmallHole,
            TooManyHoles,
            BlankOverlaps,
            FoldCollides,
            LargerThanSheet,
            AbsurdSize,
            LongerThanBrake,
            TooStrongForBrake,
            ImplausibleK,
            CornerTouches,
            SeamOpen,
            BendUsesUpEdge,
            .. Kinds,
            SheetForCutOut,
            CutOutNotRead,
            HemCracks,
            JoggleTool,
            JoggleTooSteep,
            OutlineCrosses,
            SmallRelief,
            HoleUnderHem,
            .. Bench,
            .. Order,
        ];
    }
}
