using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>A hole, or a pattern or field of equal holes, in a folded part.</summary>
/// <param name="Id">Id within the part.</param>
/// <param name="On">The face or flange it is in.</param>
public sealed record Hole(string Id, string On)
{
    /// <summary>Centre of the hole or pattern in the frame of its face or flange, m; null is the middle of it.</summary>
    public Spot? At { get; init; }

    /// <summary>What is cut; null when it comes from <see cref="For"/>.</summary>
    public HoleShape? Shape { get; init; }

    /// <summary>
    /// What it is for: a pattern of a bought thing (<c>fan.main.mount</c>), a cut-out of an item (<c>item.inlet.cutout</c>),
    /// or a screw (<c>M4 clearance</c>, <c>M4 tap</c>); empty otherwise.
    /// </summary>
    public string For { get; init; } = "";

    /// <summary>How many of it and where; a single hole when null (or the pattern of <see cref="For"/>).</summary>
    public HoleLayout? Layout { get; init; }

    /// <summary>Name of a standard cut-out that is cut instead of a shape, with the holes of its screws; or empty.</summary>
    public string CutOut { get; init; } = "";

    /// <summary>Distance to live parts behind this opening, m; null: what the part says.</summary>
    public Value? Live { get; init; }

    /// <summary>Turn of the shape or pattern, rad, counter-clockwise seen on the outside.</summary>
    public Value? Turn { get; init; }
}

/// <summary>Shape of a hole.</summary>
/// <param name="Kind">Round, slot, rectangle or an outline of its own.</param>
/// <param name="Width">Diameter, over-all length of the slot, or width, m.</param>
/// <param name="Height">Width of the slot or height, m; the diameter again when round.</param>
/// <param name="Corner">Corner radius of a rectangle or outline, m; null for sharp.</param>
public sealed record HoleShape(HoleKind Kind, Value Width, Value Height, Value? Corner)
{
    /// <summary>Corners of an outline from the place of the hole, m, either way round; empty for other kinds.</summary>
    public IReadOnlyList<Spot> Outline { get; init; } = [];
}

/// <summary>Kind of a hole.</summary>
public enum HoleKind
{
    /// <summary>Round.</summary>
    Round,

    /// <summary>Slot with round ends.</summary>
    Slot,

    /// <summary>Rectangle.</summary>
    Rectangle,

    /// <summary>Any closed outline.</summary>
    Outline,
}

/// <summary>How many equal holes and where.</summary>
public abstract record HoleLayout;

/// <summary>A grid, centred.</summary>
/// <param name="CountX">Count along x.</param>
/// <param name="CountY">Count along y.</param>
/// <param name="PitchX">Pitch along x, m.</param>
/// <param name="PitchY">Pitch along y, m.</param>
public sealed record GridLayout(int CountX, int CountY, Value PitchX, Value PitchY) : HoleLayout;

/// <summary>A ring, centred, first hole on +x.</summary>
/// <param name="Count">Count of holes.</param>
/// <param name="Diameter">Diameter of the ring, m.</param>
public sealed record RingLayout(int Count, Value Diameter) : HoleLayout;

/// <summary>A perforated field, centred: as many holes as lie wholly within.</summary>
/// <param name="Pitch">Distance of neighbours, m.</param>
/// <param name="Staggered">True for rows shifted by half a pitch (60°), false for a square grid.</param>
/// <param name="Within">Width and height of the field, m.</param>
public sealed record FieldLayout(Value Pitch, bool Staggered, Size Within) : HoleLayout
{
    /// <summary>Least metal to the edges and bends of its flat, m; holes that come nearer are left out. Null leaves none out.</summary>
    public Value? Edge { get; init; }
}

/// <summary>Single places, from the pattern's centre.</summary>
/// <param name="Points">Centres, m.</param>
public sealed record PointsLayout(IReadOnlyList<Spot> Points) : HoleLayout;

/// <summary>A hole pattern of a bought thing.</summary>
/// <param name="Id">Id within the thing.</param>
/// <param name="Shape">What the holes are, null when <paramref name="For"/> says it.</param>
/// <param name="For">What goes through: <c>M4 clearance</c>, <c>M4 tap</c>; empty otherwise.</param>
/// <param name="Layout">How many and where; a single hole when null.</param>
/// <param name="At">Centre of the pattern on its face of the box, from that face's corner, m; null is its middle.</param>
/// <param name="On">
/// Which face of the box it is on: <c>back</c> (z = 0), <c>front</c>, <c>left</c> (x = 0), <c>right</c>, <c>bottom</c> (y = 0), <c>top</c>.
/// </param>
/// <param name="Through">Material that a screw passes there, m; null takes the depth of the thing for fans and diffusers, else 2 mm.</param>
public sealed record HolePattern(
    string Id,
    HoleShape? Shape,
    string For,
    HoleLayout? Layout,
    Spot? At,
    string On = "back",
    Value? Through = null
);
