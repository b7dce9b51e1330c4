using Lampwright.Findings;

namespace Lampwright.Balance;

/// <summary>Rules of the station balance.</summary>
public static class BalanceRules
{
    /// <summary>The clamp does not hold the weight with its safety factor.</summary>
    public static readonly Rule TiltSlips = new(
        "BAL001",
        "Tilt joint does not hold",
        Severity.Stop,
        "Bring the axis nearer to the balance point, use larger or more rubbing faces, rougher faces, or a larger screw.",
        "Safety factor of friction joints: common practice, no source",
        ProtectsPeople: true
    );

    /// <summary>The clamp holds with little in hand.</summary>
    public static readonly Rule TiltMarginSmall = new(
        "BAL002",
        "Tilt joint holds with little in hand",
        Severity.Warn,
        "Bring the axis nearer to the balance point or use larger rubbing faces; paint and oil lower friction.",
        "Common practice, no source"
    );

    /// <summary>The stand tips on the test slope.</summary>
    public static readonly Rule StandTips = new(
        "BAL003",
        "Stand tips on a slope of 6 degrees",
        Severity.Stop,
        "Widen the foot, weight it, shorten the arm or lower the light.",
        "IEC 60598-2-4, cl. 4.6.3 (second-hand)",
        ProtectsPeople: true
    );

    /// <summary>The arm's end goes down visibly.</summary>
    public static readonly Rule ArmDroops = new(
        "BAL004",
        "Arm droops",
        Severity.Warn,
        "Use a higher section, a shorter arm or a lighter head.",
        "A hundredth of the length is seen: common practice, no source"
    );

    /// <summary>The arm is stressed near its yield.</summary>
    public static readonly Rule ArmYields = new(
        "BAL005",
        "Arm stressed near its yield strength",
        Severity.Stop,
        "Use a larger section, a shorter arm or a lighter head.",
        "Safety factor of 1.5 on yield: common practice, no source",
        ProtectsPeople: true
    );

    /// <summary>The torque is more than two fingers give on a wing screw.</summary>
    public static readonly Rule HandTorque = new(
        "BAL006",
        "Torque beyond what two fingers give",
        Severity.Warn,
        "Reckon with 1 to 2 newton metres on a wing screw, or use a lever or a knob.",
        "Common practice, no source (two fingers 1 to 2 N·m); CDC/NIOSH for handles"
    );

    /// <summary>A load that could fall on somebody.</summary>
    public static readonly Rule FallingLoad = new(
        "BAL007",
        "The head falls when the clamp lets go",
        Severity.Note,
        "Add a stop or a chain that catches the head, and hold it while loosening the screws.",
        "Common practice, no source"
    );

    /// <summary>The torque overloads the screw.</summary>
    public static readonly Rule ScrewOverloaded = new(
        "BAL008",
        "Clamp force above three quarters of the screw's proof load",
        Severity.Warn,
        "Use a larger screw or less torque.",
        "ISO 898-1 class 4.8 (second-hand); 75 % is common practice"
    );

    /// <summary>Friction taken higher than one may count on.</summary>
    public static readonly Rule FrictionHopeful = new(
        "BAL009",
        "Friction taken higher than one may count on",
        Severity.Note,
        "Reckon with 0.12 to 0.15 for painted or unclean steel faces, unless the faces stay clean and dry.",
        "Reference values of friction, second-hand"
    );

    /// <summary>Rubbing faces that are none.</summary>
    public static readonly Rule FacesImpossible = new(
        "BAL010",
        "Rubbing faces have no width",
        Severity.Stop,
        "Give an inner diameter smaller than the outer one.",
        "Geometry"
    );

    /// <summary>All rules of the station.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        TiltSlips,
        TiltMarginSmall,
        StandTips,
        ArmDroops,
        ArmYields,
        HandTorque,
        FallingLoad,
        ScrewOverloaded,
        FrictionHopeful,
        FacesImpossible,
    ];
}
