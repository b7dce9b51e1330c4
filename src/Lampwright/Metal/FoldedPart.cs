using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>The flat of a face or flange in the folded part.</summary>
/// <param name="Id">Permanent id: <c>sink_tray.face</c>, <c>sink_tray.wall_l</c>.</param>
/// <param name="Face"><c>face</c> or the flange's id within the part.</param>
/// <param name="Frame">Its frame in the part's frame: origin at its datum on the outside skin, z outward; the metal lies at z from -T to 0.</param>
/// <param name="Nominal">Outline to the outside mould lines, in its own frame, with edge ids within the face (<c>far</c>, <c>left</c>).</param>
/// <param name="Flat">Outline of the flat that is left between the bends, in its own frame.</param>
public sealed record FoldedFace(string Id, string Face, Frame Frame, Outline Nominal, Outline Flat);

/// <summary>A hole in the folded part.</summary>
/// <param name="Id">Permanent id, the same as on the blank.</param>
/// <param name="Hole">Id of the hole in the part, without the member.</param>
/// <param name="Member">The member of a pattern, <c>[3,2]</c>, or empty.</param>
/// <param name="Face"><c>face</c> or the flange's id.</param>
/// <param name="Centre">Centre on the outside skin, part frame, metres.</param>
/// <param name="Axis">Unit vector outward, part frame.</param>
/// <param name="Outline">Outline in the frame of its face, metres.</param>
/// <param name="CentreOnFace">Centre in the frame of its face, metres.</param>
/// <param name="DiameterM">Diameter of a round hole, 0 for other shapes.</param>
/// <param name="Purpose">What it is for, or empty.</param>
public sealed record FoldedHole(
    string Id,
    string Hole,
    string Member,
    string Face,
    Vec3 Centre,
    Vec3 Axis,
    Outline Outline,
    Vec2 CentreOnFace,
    double DiameterM,
    string Purpose
);

/// <summary>A bend of the folded part: a piece of a tube round an axis.</summary>
/// <param name="Id">Permanent id, the same as on the blank.</param>
/// <param name="Flange">Id of the flange it carries.</param>
/// <param name="Parent"><c>face</c> or the id of the flange it starts from.</param>
/// <param name="Axis">
/// Frame on the axis of the bend in the part's frame: x along the flange's root, z from the axis towards the bend's beginning;
/// the bend turns about x.
/// </param>
/// <param name="AngleRad">Angle turned, radians, signed as in the design.</param>
/// <param name="InsideRadiusM">Inside radius, metres.</param>
/// <param name="Zone">
/// The bend zone as it lies on the blank, metres: x along the root as in the flange's frame, y from 0 at the parent's tangent to the
/// allowance at the flange's.
/// </param>
/// <param name="AllowanceM">Width of the zone, metres.</param>
public sealed record FoldedBend(
    string Id,
    string Flange,
    string Parent,
    Frame Axis,
    double AngleRad,
    double InsideRadiusM,
    Outline Zone,
    double AllowanceM
);

/// <summary>A straight edge of the folded part on its outside skin.</summary>
/// <param name="Id">Permanent id: <c>sink_tray.wall_l.far</c>.</param>
/// <param name="A">One end, part frame, metres.</param>
/// <param name="B">Other end.</param>
/// <param name="Outward">Unit vector out of the metal in the plane of its face.</param>
/// <param name="Normal">Unit vector out of the face.</param>
public sealed record FoldedEdge(string Id, Vec3 A, Vec3 B, Vec3 Outward, Vec3 Normal)
{
    /// <summary>Length in metres.</summary>
    public double LengthM => (B - A).Length;
}

/// <summary>A part as it stands after bending, in the frame of its first face.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="ThicknessM">Thickness, metres.</param>
/// <param name="Faces">Faces, parents before children; the first is <c>face</c>.</param>
/// <param name="Bends">Bends.</param>
/// <param name="Holes">Holes.</param>
/// <param name="Edges">Free edges.</param>
/// <param name="MassKg">Mass, from the blank.</param>
/// <param name="CentreOfMass">Centre of mass, part frame, metres.</param>
/// <param name="BoxLeast">Least corner of the box round it, part frame, metres.</param>
/// <param name="BoxMost">Most corner of that box.</param>
/// <param name="VolumeM3">Volume of metal (blank area times thickness), m³.</param>
public sealed record FoldedPart(
    string Name,
    double ThicknessM,
    IReadOnlyList<FoldedFace> Faces,
    IReadOnlyList<FoldedBend> Bends,
    IReadOnlyList<FoldedHole> Holes,
    IReadOnlyList<FoldedEdge> Edges,
    double MassKg,
    Vec3 CentreOfMass,
    Vec3 BoxLeast,
    Vec3 BoxMost,
    double VolumeM3
)
{
    /// <summary>True for a tube, which was never flat and is not unfolded; its <see cref="Bends"/> are its round corners.</summary>
    public bool IsTube { get; init; }
}
