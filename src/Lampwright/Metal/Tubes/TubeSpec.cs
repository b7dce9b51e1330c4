namespace Lampwright.Metal;

/// <summary>The side of a tube on which a mitred end is seen as a slanted line.</summary>
public enum TubeSlant
{
    /// <summary>The face (and the back): the saw leans across the width.</summary>
    Face,

    /// <summary>The top (and the bottom): the saw leans across the height.</summary>
    Top,
}

/// <summary>How an end of a tube is cut.</summary>
/// <param name="AngleRad">
/// Angle of the saw against a square cut, radians, between −80° and 80°. Positive shortens the side where y of that face is largest, negative the
/// one where it is 0.
/// </param>
/// <param name="On">The side on which the cut is seen slanted.</param>
public sealed record TubeCut(double AngleRad, TubeSlant On = TubeSlant.Face)
{
    /// <summary>A square cut.</summary>
    public static TubeCut Square { get; } = new(0);
}

/// <summary>A square or rectangular tube that is cut to length. Metres; wall and inside corner radius are those of the part's <see cref="SheetSpec"/>.</summary>
/// <param name="WidthM">Outside width: the size of the face and of the back along their y.</param>
/// <param name="HeightM">Outside height: the size of top and bottom along their y.</param>
/// <param name="LengthM">Length over all, between the longest points of both ends.</param>
public sealed record TubeSpec(double WidthM, double HeightM, double LengthM)
{
    /// <summary>The end at x = 0.</summary>
    public TubeCut Start { get; init; } = TubeCut.Square;

    /// <summary>The end at x = length.</summary>
    public TubeCut End { get; init; } = TubeCut.Square;

    /// <summary>Names of the four sides in the order of the wrap.</summary>
    public static IReadOnlyList<string> Sides { get; } = ["face", "top", "back", "bottom"];
}
