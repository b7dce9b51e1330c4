using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Whether a dimension is taken over the outside of the bends or between their insides.</summary>
public enum DimensionSide
{
    /// <summary>To the outside mould line (or tangent plane, for angles above 90°).</summary>
    Outside,

    /// <summary>To the inside mould line (or tangent plane, for angles above 90°).</summary>
    Inside,
}

/// <summary>The first face of a part: an outline with named edges in the frame of the face, seen on the outside.</summary>
/// <param name="Outline">
/// Counter-clockwise outline whose corners carry the edge ids (<c>bottom right top left</c> for a rectangle, given names,
/// else <c>e1…en</c>). Where an edge is bent it lies on the mould line; arcs cannot be bent.
/// </param>
/// <param name="Side">What the outline measures at bent edges.</param>
public sealed record FaceSpec(Outline Outline, DimensionSide Side = DimensionSide.Outside)
{
    /// <summary>A rectangle with its datum corner at (0, 0) and edges <c>bottom right top left</c>.</summary>
    public static FaceSpec Rectangle(double widthM, double heightM, DimensionSide side = DimensionSide.Outside) =>
        new(
            new Outline([
                new(new(0, 0), 0, "bottom"),
                new(new(widthM, 0), 0, "right"),
                new(new(widthM, heightM), 0, "top"),
                new(new(0, heightM), 0, "left"),
            ]),
            side
        );
}
