using Lampwright.Geometry;

namespace Lampwright.FitUp;

/// <summary>A part or a bought thing.</summary>
/// <param name="Id">Id, for example <c>part.sink_tray</c> or <c>fan.main</c>.</param>
/// <param name="MassKg">Mass, kg; null when nobody knows it.</param>
/// <param name="CentreOfMass">Centre of mass in the body's own frame, metres.</param>
/// <param name="Patterns">Its hole patterns.</param>
public sealed record BodySpec(string Id, double? MassKg, Vec3 CentreOfMass, IReadOnlyList<PatternSpec> Patterns)
{
    /// <summary>Path in the design file that findings lead to; the id when empty.</summary>
    public string Path { get; init; } = "";
}

/// <summary>Holes of one body that are fastened together: in one plane, with one direction.</summary>
/// <param name="Id">Id among all bodies, for example <c>sink_tray.fan</c> or <c>fan.main.mount</c>.</param>
/// <param name="Holes">Its holes.</param>
/// <param name="Outward">Unit vector out of the side on which the centres lie, in the body's frame.</param>
/// <param name="Along">
/// Direction in the plane that a turn is counted from, in the body's frame: the x axis of a face or flange, that of the box of a bought
/// thing. What of it points along <paramref name="Outward"/> is left aside.
/// </param>
/// <param name="DiameterM">Diameter of each hole (least width of a slot), metres; of a tapped hole its thread.</param>
/// <param name="ThicknessM">Material along the axis, metres: sheet thickness, depth of a through hole or of a tapped hole.</param>
public sealed record PatternSpec(
    string Id,
    IReadOnlyList<PatternHole> Holes,
    Vec3 Outward,
    Vec3 Along,
    double DiameterM,
    double ThicknessM
)
{
    /// <summary>Name of the side on which the centres lie (<c>outside</c> and <c>near</c> always name it too).</summary>
    public string NearSide { get; init; } = "outside";

    /// <summary>Name of the opposite side, one thickness further in (<c>inside</c> and <c>far</c> always name it too).</summary>
    public string FarSide { get; init; } = "inside";

    /// <summary>True when the holes carry a thread.</summary>
    public bool IsTapped { get; init; }

    /// <summary>True when a screw cannot come out on the other side.</summary>
    public bool IsBlind { get; init; }

    /// <summary>How far a screw can slide in a slot, end to end (over-all length less width), metres; 0 for round holes.</summary>
    public double SlideM { get; init; }

    /// <summary>Direction of the slots, in the body's frame; of no meaning for round holes.</summary>
    public Vec3 SlideAlong { get; init; }

    /// <summary>True when the maker drills it; false for the holes of a bought thing.</summary>
    public bool IsMadeByHand { get; init; } = true;
}

/// <summary>A hole.</summary>
/// <param name="Id">Permanent id, for example <c>sink_tray.face.fan[1,2]</c>.</param>
/// <param name="Centre">Centre on the near side, in the body's frame, metres.</param>
public sealed record PatternHole(string Id, Vec3 Centre);
