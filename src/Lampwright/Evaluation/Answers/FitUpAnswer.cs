using Lampwright.Geometry;

namespace Lampwright.Evaluation.Answers;

/// <summary>Answer of the station fit-up.</summary>
public sealed record FitUpAnswer
{
    /// <summary>Where each part and bought thing lies, in the frame of the fixed one.</summary>
    public required IReadOnlyList<Placement> Placements { get; init; }

    /// <summary>Ids of things that no joint reaches.</summary>
    public required IReadOnlyList<string> Unplaced { get; init; }

    /// <summary>What is fastened to what, hole by hole.</summary>
    public required IReadOnlyList<JointAnswer> Joints { get; init; }

    /// <summary>Mass of the whole light, kg.</summary>
    public required Predicted TotalMassKg { get; init; }

    /// <summary>Balance point in the frame of the fixed part, mm.</summary>
    public required PredictedPoint BalancePointMm { get; init; }

    /// <summary>Every thing and its mass.</summary>
    public required IReadOnlyList<MassLine> Masses { get; init; }
}

/// <summary>Where a thing lies.</summary>
/// <param name="Id">Id of the thing: <c>part.sink_tray</c>, <c>fan.main</c>, <c>item.inlet</c> …</param>
/// <param name="Frame">Its frame in that of the fixed part, m.</param>
/// <param name="BoxM">Sizes of the box that stands for a bought thing, m; null for a folded part.</param>
public sealed record Placement(string Id, Frame Frame, Vec3? BoxM);

/// <summary>A point with bands.</summary>
/// <param name="X">First coordinate.</param>
/// <param name="Y">Second coordinate.</param>
/// <param name="Z">Third coordinate.</param>
public sealed record PredictedPoint(Predicted X, Predicted Y, Predicted Z);

/// <summary>One joint.</summary>
/// <param name="Name">Name of the joint.</param>
/// <param name="Stack">Patterns in the order of the stack.</param>
/// <param name="Holes">What is left over at each hole.</param>
/// <param name="Screw">Screw as text, for example <c>M4 × 12</c>; empty without one.</param>
/// <param name="GripMm">Thickness that the screw passes before its nut or thread, mm; absent without a screw.</param>
/// <param name="EngagedMm">Thread that is engaged, mm; absent without a screw.</param>
/// <param name="SparesMm">Length the screw stands out beyond, mm; absent without a screw.</param>
public sealed record JointAnswer(
    string Name,
    IReadOnlyList<string> Stack,
    IReadOnlyList<JointHole> Holes,
    string Screw,
    Predicted? GripMm,
    Predicted? EngagedMm,
    Predicted? SparesMm
);

/// <summary>One hole of a joint.</summary>
/// <param name="Ids">Ids of the holes that meet.</param>
/// <param name="MissMm">Distance of their axes that is left over, as drawn and as marked by hand, mm.</param>
/// <param name="AllowsMm">Distance that the clearance allows, mm.</param>
public sealed record JointHole(IReadOnlyList<string> Ids, Predicted MissMm, Predicted AllowsMm);

/// <summary>A thing and its mass.</summary>
/// <param name="Id">Id of the thing.</param>
/// <param name="Count">How many.</param>
/// <param name="MassKg">Mass of all of them, kg.</param>
/// <param name="IsKnown">False when the file gives no mass and none can be computed.</param>
public sealed record MassLine(string Id, int Count, Predicted MassKg, bool IsKnown);
