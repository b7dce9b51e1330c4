using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Rules of the bench: the clamp's nose, the grain, hands that make a part and hands that touch it.</summary>
public static partial class MetalRules
{
    /// <summary>A nose, or its place, that makes another radius than the blank counts on.</summary>
    public static readonly Rule NoseMakesAnotherRadius = new(
        "MET039",
        "The clamp's nose makes the radius that the blank counts on",
        Severity.Warn,
        "Write the radius that a bent strip shows, set the nose back for the radius that is wanted, or take fingers with a smaller nose.",
        "derived (docs/metal-blanks.md)"
    );

    /// <summary>A radius that is enough across the rolling direction only.</summary>
    public static readonly Rule BendAcrossGrain = new(
        "MET040",
        "A tight bend lies across the rolling direction",
        Severity.Note,
        "Lay the blank so that the bend crosses the rolling direction, and write grain at the part; or take a larger radius.",
        "DIN 6935:1975, smallest inside radii"
    );

    /// <summary>An opening through which a finger reaches live parts.</summary>
    public static readonly Rule FingerReachesLive = new(
        "MET041",
        "A finger does not reach live parts through an opening",
        Severity.Stop,
        "Make the openings smaller, set the live parts further back, or put a barrier between. Local codes and a licensed electrician have the last word.",
        "IEC 60529 and IEC 61032 (test finger, second-hand); ISO 13857, table 4 (memory)",
        ProtectsPeople: true
    );

    /// <summary>An opening through which a wire reaches live parts.</summary>
    public static readonly Rule WireReachesLive = new(
        "MET042",
        "A wire does not reach live parts through an opening",
        Severity.Warn,
        "Make the openings smaller than 1 mm where wire or tools may be poked in (always on top), set the live parts further back, or put a mesh or baffle behind.",
        "IEC 60529 and IEC 61032 (test wire 1.0 mm; second-hand, its length of 100 mm from memory)"
    );

    /// <summary>A cut edge where hands go.</summary>
    public static readonly Rule SharpEdge = new(
        "MET043",
        "No cut edge stands where hands go",
        Severity.Note,
        "Break both sides with a file to half a millimetre, fold the edge over, or push an edging on it.",
        "common practice, no source"
    );

    /// <summary>A row of holes weaker than the bend it stands beside.</summary>
    public static readonly Rule WeakRowOfHoles = new(
        "MET044",
        "A flange bends at its bend and not in a row of holes",
        Severity.Note,
        "Cut or perforate after bending, leave more metal in the row or keep it further from the bend, or bend with a bar clamped along the flange.",
        "derived (moment of the apron, docs/metal-blanks.md)"
    );

    /// <summary>A hole that hand tools make badly.</summary>
    public static readonly Rule NotByHand = new(
        "MET045",
        "A hole can be made with drill and file",
        Severity.Note,
        "Make it larger, of several drilled holes, by a saw or punch, or have it cut. The limits are rules least_drill, least_file and step_height.",
        "common practice, no source"
    );

    /// <summary>A perforated field that keeps off edges and bends by leaving holes out.</summary>
    public static readonly Rule FieldLosesHoles = new(
        "MET046",
        "A perforated field keeps its distance from edges and bends",
        Severity.Note,
        "Nothing is wrong; where more holes are wanted, move the field, make its pitch smaller, or lower its edge. The air it lets through is that of the holes that stay.",
        "the maker's own rule (hole.NAME.field.edge)"
    );

    private static IReadOnlyList<Rule> Bench =>
        [
            NoseMakesAnotherRadius,
            BendAcrossGrain,
            FingerReachesLive,
            WireReachesLive,
            SharpEdge,
            WeakRowOfHoles,
            NotByHand,
            FieldLosesHoles,
        ];
}
