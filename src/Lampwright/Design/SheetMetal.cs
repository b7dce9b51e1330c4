using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>Sheet stock.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Sheet(string Name)
{
    /// <summary>Material, by its name in the table of materials.</summary>
    public string Material { get; init; } = "DC01";

    /// <summary>Thickness, m.</summary>
    public Value? Thickness { get; init; }

    /// <summary>Length and width of a whole sheet, m.</summary>
    public Size? Size { get; init; }

    /// <summary>Inside radius as the brake makes it, m.</summary>
    public Value? Radius { get; init; }

    /// <summary>How its blanks are computed.</summary>
    public BendMethod Bend { get; init; } = new("DIN 6935", null, []);

    /// <summary>Emissivity of its finished surface.</summary>
    public Value Emissivity { get; init; } = new(0.9, 0.05, Origin.Default, "emissivity");
}

/// <summary>How blanks are computed.</summary>
/// <param name="Method"><c>DIN 6935</c>, <c>handbook</c>, <c>k</c> or <c>strips</c>.</param>
/// <param name="K">Neutral fibre as a share of the thickness, for <c>k</c>.</param>
/// <param name="Strips">The maker's test strips, for <c>strips</c>.</param>
public sealed record BendMethod(string Method, Value? K, IReadOnlyList<TestStrip> Strips);

/// <summary>A test strip bent once.</summary>
/// <param name="Length">Length before bending, m.</param>
/// <param name="LegA">First leg after bending, outside, m.</param>
/// <param name="LegB">Second leg after bending, outside, m.</param>
/// <param name="Angle">Angle turned, rad.</param>
public sealed record TestStrip(Value Length, Value LegA, Value LegB, Value Angle);

/// <summary>The brake.</summary>
public sealed record Brake
{
    /// <summary>Longest bend, m.</summary>
    public Value Length { get; init; } = new(1.0, 0, Origin.Default, "brake.length");

    /// <summary>Shortest flange that its clamp and apron hold, outside, m.</summary>
    public Value LeastFlange { get; init; } = new(0.008, 0, Origin.Default, "brake.least_flange");

    /// <summary>Largest angle it turns, rad.</summary>
    public Value Closing { get; init; } = new(2.0943951023931953, 0, Origin.Default, "brake.closing");

    /// <summary>Radius of the nose of its clamp, m; null takes the inside radius of each bend.</summary>
    public Value? NoseRadius { get; init; }

    /// <summary>How far the foremost edge of the nose stands behind the apron's axis, m; null sets it for each bend.</summary>
    public Value? NoseBack { get; init; }

    /// <summary>Thickest mild steel that it bends over its length, m; null is not checked.</summary>
    public Value? Capacity { get; init; }

    /// <summary>What of it is in the way of a part.</summary>
    public BrakeShape Shape { get; init; } = new();
}

/// <summary>What of a brake stands in the way of a part: fingers, and the heights and depths of its section, or the section itself. Metres.</summary>
/// <remarks>Defaults are those of a small hand brake with fingers: common practice, no source.</remarks>
public sealed record BrakeShape
{
    /// <summary>Widths of the fingers; null is not given, empty says that there are none.</summary>
    public IReadOnlyList<Value>? Fingers { get; init; }

    /// <summary>Height of the fingers up to the clamp's beam.</summary>
    public Value FingerHeight { get; init; } = Usual(0.05, "finger_height");

    /// <summary>Depth of the fingers from the nose back.</summary>
    public Value FingerDepth { get; init; } = Usual(0.05, "finger_depth");

    /// <summary>Height of the clamp's beam above the fingers.</summary>
    public Value BeamHeight { get; init; } = Usual(0.06, "beam_height");

    /// <summary>Depth of the bed.</summary>
    public Value BedDepth { get; init; } = Usual(0.2, "bed_depth");

    /// <summary>Depth of the apron.</summary>
    public Value ApronDepth { get; init; } = Usual(0.06, "apron_depth");

    /// <summary>Thickness of the apron.</summary>
    public Value ApronThickness { get; init; } = Usual(0.03, "apron_thickness");

    /// <summary>How far the clamp lifts.</summary>
    public Value Opening { get; init; } = Usual(0.03, "opening");

    /// <summary>Least metal under the clamp.</summary>
    public Value LeastHold { get; init; } = Usual(0.008, "least_hold");

    /// <summary>What may stay without a finger at each end of a bend.</summary>
    public Value EndGap { get; init; } = Usual(0.005, "end_gap");

    /// <summary>What may stay open between two fingers.</summary>
    public Value FingerGap { get; init; } = Usual(0.003, "finger_gap");

    /// <summary>Section of a finger from the foremost edge of its nose; empty takes the heights.</summary>
    public IReadOnlyList<Spot> Nose { get; init; } = [];

    /// <summary>Section of the clamp's beam, from the same point; empty takes the heights.</summary>
    public IReadOnlyList<Spot> Clamp { get; init; } = [];

    /// <summary>Section of the bed from the apron's axis; empty takes the depth.</summary>
    public IReadOnlyList<Spot> Bed { get; init; } = [];

    /// <summary>Section of the apron as it lies level, from its axis; empty takes depth and thickness.</summary>
    public IReadOnlyList<Spot> Apron { get; init; } = [];

    private static Value Usual(double metres, string key) => new(metres, 0, Origin.Default, "brake." + key);
}

/// <summary>A folded part: a face with a tree of flanges; or panels of a funnel; or the mirror of another.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Part(string Name)
{
    /// <summary>Name of the sheet it is cut from.</summary>
    public string Sheet { get; init; } = "";

    /// <summary>How many are made.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The face: width and height, m; null for panels and mirrors.</summary>
    public Size? Face { get; init; }

    /// <summary>True when the face is given inside its flanges.</summary>
    public bool FaceIsInside { get; init; }

    /// <summary>Flanges in the order of the file.</summary>
    public IReadOnlyList<Flange> Flanges { get; init; } = [];

    /// <summary>Corners of a face that is no rectangle, m, counter-clockwise; its edges are e1, e2 … from the first corner on. Empty for a rectangle.</summary>
    public IReadOnlyList<Spot> Outline { get; init; } = [];

    /// <summary>What is done to the corners of the face that stand free of flanges; null leaves them sharp.</summary>
    public FaceCorners? Corners { get; init; }

    /// <summary>Reliefs of bends; null takes the defaults.</summary>
    public Relief? Relief { get; init; }

    /// <summary>Closed hems in the order of the file.</summary>
    public IReadOnlyList<Hem> Hems { get; init; } = [];

    /// <summary>Joggles in the order of the file.</summary>
    public IReadOnlyList<Joggle> Joggles { get; init; } = [];

    /// <summary>Holes in the order of the file.</summary>
    public IReadOnlyList<Hole> Holes { get; init; } = [];

    /// <summary>Edges that meet when folded and are joined.</summary>
    public IReadOnlyList<Seam> Seams { get; init; } = [];

    /// <summary>A funnel of panels.</summary>
    public FunnelPanels? Panels { get; init; }

    /// <summary>A tube cut to length instead of a folded sheet; null for others.</summary>
    public Tube? Tube { get; init; }

    /// <summary>The part this one mirrors.</summary>
    public string? Mirror { get; init; }

    /// <summary>Rolling direction of the sheet along <c>x</c> or <c>y</c> of the face; empty where it is not known.</summary>
    public string Grain { get; init; } = "";

    /// <summary>Least distance from its openings to live parts behind them, m; null where none are.</summary>
    public Value? Live { get; init; }

    /// <summary>Edges where hands go.</summary>
    public IReadOnlyList<string> Hands { get; init; } = [];

    /// <summary>What the maker notes beside it.</summary>
    public string Note { get; init; } = "";
}

/// <summary>A flange.</summary>
/// <param name="Id">Id within the part.</param>
/// <param name="On">The edge it stands on, for example <c>face.left</c> or <c>wall_l.far</c>.</param>
/// <param name="Height">Height, m.</param>
/// <param name="HeightIsInside">True when the height is given inside.</param>
/// <param name="Angle">Angle turned from flat, rad; positive folds away from the outside (toward -z of the face it stands on).</param>
/// <param name="Start">Distance of its start from the start of the edge, m; null for none.</param>
/// <param name="End">Distance of its end from the end of the edge, m; null for none.</param>
/// <param name="Radius">Inside radius, m; null takes the sheet's.</param>
public sealed record Flange(
    string Id,
    string On,
    Value Height,
    bool HeightIsInside,
    Value Angle,
    Value? Start,
    Value? End,
    Value? Radius
)
{
    /// <summary>Slant of its start edge, rad; positive narrows it towards far; null mitres only where lips would collide.</summary>
    public Value? StartSlant { get; init; }

    /// <summary>Slant of its end edge, rad.</summary>
    public Value? EndSlant { get; init; }
}

/// <summary>An edge folded back flat on its own sheet.</summary>
/// <param name="Id">Id within the part.</param>
/// <param name="On">The edge that is made safe.</param>
/// <param name="Width">Its width over all, from the outside of the fold, m.</param>
/// <param name="IsOutside">True when it lies on the outside of its parent.</param>
/// <param name="Start">Distance of its start from the start of the edge, m; null for none.</param>
/// <param name="End">Distance of its end from the end of the edge, m; null for none.</param>
public sealed record Hem(string Id, string On, Value Width, bool IsOutside, Value? Start, Value? End);

/// <summary>A strip along an edge that is set off by a step.</summary>
/// <param name="Id">Id within the part.</param>
/// <param name="On">The edge it stands on.</param>
/// <param name="Lap">Width of the flat strip, m.</param>
/// <param name="Offset">The step, m; null takes one thickness.</param>
/// <param name="Angle">Angle of both bends, rad; null takes 45° or what fits.</param>
/// <param name="IsOutside">True when the strip lies on the outside of its parent's face.</param>
/// <param name="Start">Distance of its start from the start of the edge, m; null for none.</param>
/// <param name="End">Distance of its end from the end of the edge, m; null for none.</param>
public sealed record Joggle(
    string Id,
    string On,
    Value Lap,
    Value? Offset,
    Value? Angle,
    bool IsOutside,
    Value? Start,
    Value? End
);

/// <summary>Reliefs of the bends of a part.</summary>
/// <param name="Corner"><c>notch</c>, <c>clear</c>, <c>hole</c>, <c>slit</c> or <c>overlap</c>.</param>
/// <param name="Hole">Diameter of the relief hole, m; null takes the rule's.</param>
/// <param name="Width">Width of the notch beside a flange, m; null takes the rule's.</param>
/// <param name="Depth">Depth of that notch beyond the bend, m; null takes the rule's.</param>
/// <param name="Gap">Gap of corners and mitres, for the weld, m; null takes the rule's.</param>
public sealed record Relief(string Corner, Value? Hole, Value? Width, Value? Depth, Value? Gap);

/// <summary>Rounded or mitred corners of a face.</summary>
/// <param name="IsRound">True for a radius, false for a corner cut off at equal legs.</param>
/// <param name="Size">Radius or leg, m.</param>
public sealed record FaceCorners(bool IsRound, Value Size);

/// <summary>A seam between two edges.</summary>
/// <param name="Id">Id within the part.</param>
/// <param name="Between">The two edges.</param>
/// <param name="Kind">Kind of joint, for example <c>outside corner</c>.</param>
/// <param name="Gap">Gap left for the weld, m.</param>
public sealed record Seam(string Id, IReadOnlyList<string> Between, string Kind, Value? Gap);

/// <summary>A funnel of flat panels between two openings.</summary>
/// <param name="Small">Small opening, m, inside.</param>
/// <param name="Large">Large opening, m, inside.</param>
/// <param name="Depth">Distance between the openings, m.</param>
/// <param name="Separate">True when each panel is its own blank.</param>
public sealed record FunnelPanels(Size Small, Size Large, Value Depth, bool Separate)
{
    /// <summary>How many panels: 4, 6 or 8.</summary>
    public int Sides { get; init; } = 4;

    /// <summary>Width of the lip at the end of each panel that lies under its neighbour, m; null for none.</summary>
    public Value? Lip { get; init; }
}
