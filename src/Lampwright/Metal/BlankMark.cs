using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>What a mark is for.</summary>
public enum BlankMarkKind
{
    /// <summary>Letters to engrave, punch or paint.</summary>
    Letters,

    /// <summary>A line between the flat and the round corner of a tube.</summary>
    Corner,
}

/// <summary>Lines that are scribed, engraved or painted and never cut, in the blank's frame.</summary>
/// <param name="Id">Permanent id: <c>tray.label</c>.</param>
/// <param name="Kind">What they are for.</param>
/// <param name="Strokes">Open lines from point to point, metres.</param>
public sealed record BlankMark(string Id, BlankMarkKind Kind, IReadOnlyList<IReadOnlyList<Vec2>> Strokes)
{
    /// <summary>The words, for letters.</summary>
    public string Text { get; init; } = "";
}

/// <summary>One side of a tube on its wrap.</summary>
/// <param name="Side"><c>face</c>, <c>top</c>, <c>back</c> or <c>bottom</c>.</param>
/// <param name="ZeroM">Where y = 0 of the side lies on the wrap, metres (a corner's piece outside of its flat).</param>
/// <param name="WidthM">Width of the side over its corners, metres.</param>
/// <param name="CornerM">Outside radius of the corners, metres.</param>
/// <param name="Start">The cut at the start, in the frame of the side over its whole width (as a square would meet it), metres.</param>
/// <param name="End">The cut at the end.</param>
public sealed record WrapSide(string Side, double ZeroM, double WidthM, double CornerM, Segment Start, Segment End)
{
    /// <summary>A place on the wrap in the frame of the side: along the tube from its start, and across from the outside of the side before.</summary>
    public Vec2 OnSide(Vec2 onWrap) => new(onWrap.X, onWrap.Y - ZeroM);
}

/// <summary>Says that a blank is the outside of a tube laid flat, to be taped round it, and not a sheet to cut.</summary>
/// <param name="LengthM">Length of the tube over all, metres.</param>
/// <param name="Sides">Its sides in the order of the wrap.</param>
public sealed record TubeWrap(double LengthM, IReadOnlyList<WrapSide> Sides);
