using Lampwright.Geometry;

namespace Lampwright.Files.Drawings;

/// <summary>Something that is drawn. Paper millimetres, x to the right and y down, zero at the drawing's upper left corner.</summary>
/// <param name="Id">Permanent id of what it shows (a hole, a bend, an edge), or empty.</param>
public abstract record DrawingItem(string Id);

/// <summary>One step of a path: a line to a point, or an arc to it.</summary>
/// <param name="To">Where the step ends.</param>
/// <param name="Centre">Centre of the arc; of no meaning for a line.</param>
/// <param name="Radius">Radius of the arc, mm; 0 for a line.</param>
/// <param name="StartRad">Where on its circle the arc starts, radians, clockwise on paper from the x axis.</param>
/// <param name="SweepRad">How far it runs, radians, positive clockwise on paper.</param>
public readonly record struct DrawnStep(
    Vec2 To,
    Vec2 Centre = default,
    double Radius = 0,
    double StartRad = 0,
    double SweepRad = 0
);

/// <summary>Lines and arcs in one go.</summary>
/// <param name="Id">Permanent id of what it shows, or empty.</param>
/// <param name="Line">What the line means.</param>
/// <param name="Start">Where it starts.</param>
/// <param name="Steps">Its steps in order.</param>
/// <param name="Closed">True when it ends where it starts.</param>
/// <param name="Filled">True for arrow heads and dots: filled with the colour of the line, without a stroke.</param>
public sealed record DrawnPath(
    string Id,
    LineKind Line,
    Vec2 Start,
    IReadOnlyList<DrawnStep> Steps,
    bool Closed,
    bool Filled = false
) : DrawingItem(Id);

/// <summary>A circle.</summary>
/// <param name="Id">Permanent id of what it shows, or empty.</param>
/// <param name="Line">What the line means.</param>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius, mm on paper.</param>
public sealed record DrawnCircle(string Id, LineKind Line, Vec2 Centre, double Radius) : DrawingItem(Id);

/// <summary>Where a text stands on its point.</summary>
public enum TextAnchor
{
    /// <summary>It starts there.</summary>
    Start,

    /// <summary>Its middle is there.</summary>
    Middle,

    /// <summary>It ends there.</summary>
    End,
}

/// <summary>What a text is for.</summary>
public enum TextRole
{
    /// <summary>A dimension or coordinate.</summary>
    Dimension,

    /// <summary>What a bend does.</summary>
    Bend,

    /// <summary>Letter of a group of holes.</summary>
    Hole,

    /// <summary>Legend and notes.</summary>
    Note,

    /// <summary>Title of the drawing.</summary>
    Title,

    /// <summary>What a finding says beside its place.</summary>
    Found,
}

/// <summary>A line of text.</summary>
/// <param name="Id">Permanent id of what it speaks of, or empty.</param>
/// <param name="Text">The text as it is read; each writer escapes it for its own format.</param>
/// <param name="At">Point of its base line.</param>
/// <param name="SizeMm">Size of the type (em) on paper, mm; capitals are about 0.73 of it.</param>
/// <param name="AngleRad">Turn of its base line, radians, positive clockwise on paper.</param>
/// <param name="Anchor">Where it stands on its point.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Line">The kind of line whose colour it has; null for ink (of a bend: the bend's).</param>
public sealed record DrawnText(
    string Id,
    string Text,
    Vec2 At,
    double SizeMm,
    double AngleRad,
    TextAnchor Anchor,
    TextRole Role,
    LineKind? Line = null
) : DrawingItem(Id);
