namespace Lampwright.Metal;

/// <summary>A flange bent up from a straight free edge of a face or of another flange.</summary>
/// <param name="Id">Permanent id within the part, for example <c>wall_l</c>.</param>
/// <param name="OnEdge">The edge it stands on: <c>face.left</c>, <c>wall_l.far</c>, <c>wall_l.start</c>.</param>
/// <param name="HeightM">Height from the root to the far edge, metres, measured as <paramref name="Side"/> says.</param>
/// <param name="AngleRad">
/// Angle turned from flat, radians. Positive turns the flange away from the outward normal (walls of a tray stand behind its
/// face); negative turns it the other way.
/// </param>
/// <param name="Side">What the height measures.</param>
/// <remarks>
/// The flange's frame: y from root to far with 0 at the outside of the bend, z outward, x along the root so that the frame is
/// right-handed. x = 0 is the nominal start: the end of the parent's edge plus <see cref="StartOffsetM"/>. Automatic corner
/// reliefs trim material but never move the frame. An edge of the face run counter-clockwise is run backwards by the x of its flange;
/// a flange on a far edge has its x parallel to its parent's.
/// </remarks>
public sealed record FlangeSpec(
    string Id,
    string OnEdge,
    double HeightM,
    double AngleRad = Math.PI / 2,
    DimensionSide Side = DimensionSide.Outside
)
{
    /// <summary>Distance from the edge's end at x = 0 to the flange's start, metres; null lets the corner relief decide.</summary>
    public double? StartOffsetM { get; init; }

    /// <summary>Distance from the flange's end to the other end of the edge, metres; null lets the corner relief decide.</summary>
    public double? EndOffsetM { get; init; }

    /// <summary>Own inside radius, metres; null takes the sheet's.</summary>
    public double? InsideRadiusM { get; init; }

    /// <summary>How it is made.</summary>
    public FlangeMaking Making { get; init; }

    /// <summary>Id of the table that it comes from in the design file where that is not its own; null for its own.</summary>
    public string? TableId { get; init; }

    /// <summary>Slant of the start edge, radians; positive narrows the flange towards far; null mitres only where lips would collide.</summary>
    public double? StartAngleRad { get; init; }

    /// <summary>Slant of the end edge, radians; positive narrows the flange towards far; null mitres only where lips would collide.</summary>
    public double? EndAngleRad { get; init; }
}
