using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>How the members of a pattern lie.</summary>
public enum HolePatternKind
{
    /// <summary>Columns and rows about the pattern's centre.</summary>
    Grid,

    /// <summary>As many holes on a square grid as fit whole into <see cref="HolePattern.Within"/>.</summary>
    SquareField,

    /// <summary>As many holes at 60° stagger as fit whole into <see cref="HolePattern.Within"/>.</summary>
    StaggeredField,

    /// <summary>Evenly round a circle.</summary>
    Ring,

    /// <summary>Evenly along x about the pattern's centre.</summary>
    Line,

    /// <summary>At single places from the pattern's centre.</summary>
    Points,
}

/// <summary>A pattern of equal holes about its centre; metres and radians.</summary>
/// <remarks>
/// Members are called <c>[column,row]</c> from the corner of least x and y, counted from 1 (rings and lines <c>[n]</c>), so that a name
/// hangs only on the pattern's own numbers.
/// </remarks>
public sealed record HolePattern(HolePatternKind Kind)
{
    /// <summary>Columns and rows of a grid; the first is the number on a ring or line.</summary>
    public (int Columns, int Rows) Count { get; init; } = (1, 1);

    /// <summary>Places of single points from the pattern's centre, metres.</summary>
    public IReadOnlyList<Vec2> PlacesM { get; init; } = [];

    /// <summary>Pitch along x and y of a grid; nearest pitch of a field (the first counts); pitch of a line.</summary>
    public (double X, double Y) PitchM { get; init; }

    /// <summary>Width and height that a field may fill, metres.</summary>
    public (double X, double Y) Within { get; init; }

    /// <summary>Least metal between the holes of a field and the edges and bends of its flat, metres; null leaves no hole out.</summary>
    public double? EdgeM { get; init; }

    /// <summary>Members that a field keeps whatever its edges are, for neighbours of a part whose holes are settled; null asks the edges.</summary>
    internal IReadOnlySet<string>? Kept { get; init; }

    /// <summary>Diameter of the circle of a ring, metres.</summary>
    public double RingDiameterM { get; init; }

    /// <summary>Angle of the first member of a ring against x, radians.</summary>
    public double StartAngleRad { get; init; }

    /// <summary>A grid.</summary>
    public static HolePattern Grid(int columns, int rows, double pitchXM, double pitchYM) =>
        new(HolePatternKind.Grid) { Count = (columns, rows), PitchM = (pitchXM, pitchYM) };

    /// <summary>A field of holes within a rectangle.</summary>
    public static HolePattern Field(double pitchM, double widthM, double heightM, bool staggered) =>
        new(staggered ? HolePatternKind.StaggeredField : HolePatternKind.SquareField)
        {
            PitchM = (pitchM, pitchM),
            Within = (widthM, heightM),
        };

    /// <summary>A ring.</summary>
    public static HolePattern Ring(int count, double diameterM, double startAngleRad = 0) =>
        new(HolePatternKind.Ring)
        {
            Count = (count, 1),
            RingDiameterM = diameterM,
            StartAngleRad = startAngleRad,
        };

    /// <summary>A line along x.</summary>
    public static HolePattern Line(int count, double pitchM) =>
        new(HolePatternKind.Line) { Count = (count, 1), PitchM = (pitchM, pitchM) };

    /// <summary>Single places from the pattern's centre, metres.</summary>
    public static HolePattern Points(IReadOnlyList<Vec2> placesM) => new(HolePatternKind.Points) { PlacesM = placesM };
}
