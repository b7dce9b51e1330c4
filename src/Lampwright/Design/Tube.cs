using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>A square or rectangular tube cut to length.</summary>
/// <param name="Size">Outside width (of the face) and height, m.</param>
/// <param name="Wall">Wall, m.</param>
/// <param name="Length">Length over all, between the longest points of its ends, m.</param>
/// <param name="Corner">Outside corner radius, m; null takes that of the standard.</param>
/// <param name="Material">Material, by its name in the table of sheet grades.</param>
public sealed record Tube(Size Size, Value Wall, Value Length, Value? Corner, string Material)
{
    /// <summary>The end at x = 0; null for a square cut.</summary>
    public TubeEnd? Start { get; init; }

    /// <summary>The other end; null for a square cut.</summary>
    public TubeEnd? End { get; init; }
}

/// <summary>A mitred end of a tube.</summary>
/// <param name="Angle">Angle of the saw against a square cut, rad; positive shortens the far side of the face it is seen on.</param>
/// <param name="IsOnTop">True where the slant is seen on the top, false where it is seen on the face.</param>
public sealed record TubeEnd(Value Angle, bool IsOnTop);
