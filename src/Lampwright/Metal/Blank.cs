using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>A hole in the blank.</summary>
/// <param name="Id">Permanent id, for example <c>sink_tray.left.vents[3,2]</c>.</param>
/// <param name="Hole">Id of the hole in the part, without the member: <c>vents</c>.</param>
/// <param name="On"><c>face</c> or the id of the flange it lies in.</param>
/// <param name="Outline">Outline in the blank's frame, metres.</param>
/// <param name="Centre">Centre (the punch mark), metres.</param>
/// <param name="DiameterM">Diameter of a round hole, 0 for other shapes.</param>
/// <param name="Purpose">What it is for, or empty.</param>
public sealed record BlankHole(
    string Id,
    string Hole,
    string On,
    Outline Outline,
    Vec2 Centre,
    double DiameterM,
    string Purpose
)
{
    /// <summary>True for an outline of its own, which is marked out corner by corner.</summary>
    public bool IsOutline { get; init; }
}

/// <summary>Which way a bend turns, seen on the outside of the blank.</summary>
public enum BendDirection
{
    /// <summary>The flange turns away from the viewer (positive angle).</summary>
    Down,

    /// <summary>The flange turns towards the viewer (negative angle).</summary>
    Up,
}

/// <summary>A straight piece of line in the blank's frame, metres.</summary>
/// <param name="A">One end.</param>
/// <param name="B">Other end.</param>
public readonly record struct Segment(Vec2 A, Vec2 B)
{
    /// <summary>Length in metres.</summary>
    public double LengthM => (B - A).Length;
}

/// <summary>A bend on the blank.</summary>
/// <param name="Id">Permanent id: part and flange, for example <c>sink_tray.wall_l</c>.</param>
/// <param name="Flange">Id of the flange it carries.</param>
/// <param name="CentreLine">Middle of the bend zone, as long as the bend.</param>
/// <param name="InnerTangent">Where the bend begins, on the side of the parent.</param>
/// <param name="OuterTangent">Where the bend ends, on the side of the flange.</param>
/// <param name="AngleRad">Angle turned from flat, radians, always positive.</param>
/// <param name="Direction">Which way it turns.</param>
/// <param name="InsideRadiusM">Inside radius, metres.</param>
/// <param name="AllowanceM">Width of the bend zone on the blank, metres.</param>
/// <param name="DeductionM">What the sum of the outside legs exceeds the blank by, metres.</param>
/// <param name="SetbackM">Outside mould line (or tangent plane) to tangent, metres.</param>
public sealed record BlankBend(
    string Id,
    string Flange,
    Segment CentreLine,
    Segment InnerTangent,
    Segment OuterTangent,
    double AngleRad,
    BendDirection Direction,
    double InsideRadiusM,
    double AllowanceM,
    double DeductionM,
    double SetbackM
)
{
    /// <summary>Where the nose of the brake's clamp sits; null for a bend that is not made on the brake.</summary>
    public SetLine? Set { get; init; }

    /// <summary>Angle to bend to, so that the wanted one is left when it springs back, radians; null where the source has no row.</summary>
    public double? BendToRad { get; init; }
}

/// <summary>The flat blank of a part, seen on the outside; origin at the lower left corner of its box, y up, metres.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Sheet">Name of the sheet.</param>
/// <param name="ThicknessM">Thickness, metres.</param>
/// <param name="Outline">Outer outline, counter-clockwise, arcs as bulges, with permanent edge ids where an edge survives.</param>
/// <param name="Holes">Holes.</param>
/// <param name="Bends">Bends, parents before children.</param>
/// <param name="WidthM">Width of the box.</param>
/// <param name="HeightM">Height of the box.</param>
/// <param name="AreaM2">Area net of holes.</param>
/// <param name="MassKg">Mass, from the net area.</param>
/// <param name="CutLengthM">Length of all cuts, outline and holes.</param>
/// <param name="Method">The bend method in words, for example <c>DIN 6935</c>.</param>
public sealed record Blank(
    string Part,
    string Sheet,
    double ThicknessM,
    Outline Outline,
    IReadOnlyList<BlankHole> Holes,
    IReadOnlyList<BlankBend> Bends,
    double WidthM,
    double HeightM,
    double AreaM2,
    double MassKg,
    double CutLengthM,
    string Method
)
{
    /// <summary>Rolling direction of the sheet along x of the blank (true), along its y (false), or not known (null).</summary>
    public bool? GrainAlongX { get; init; }

    /// <summary>Length of the outline alone, metres: what is sheared or sawn.</summary>
    public double OutlineLengthM => Outline.Perimeter;

    /// <summary>Lines that are scribed or engraved and not cut.</summary>
    public IReadOnlyList<BlankMark> Marks { get; init; } = [];

    /// <summary>Set where this is the outside of a tube laid flat; null for a sheet.</summary>
    public TubeWrap? Wrap { get; init; }
}
