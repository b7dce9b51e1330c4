using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Kind of a hole's shape.</summary>
public enum HoleShapeKind
{
    /// <summary>A circle.</summary>
    Round,

    /// <summary>Two parallel lines closed by half circles.</summary>
    Slot,

    /// <summary>A rectangle, its corners rounded or not.</summary>
    Rectangle,

    /// <summary>Any outline, for example the cut-out of an inlet.</summary>
    Outline,
}

/// <summary>Shape of a hole about its own centre. Metres.</summary>
/// <param name="Kind">Kind of shape.</param>
/// <param name="LengthM">Diameter of a round hole; over-all length of a slot; width of a rectangle along x.</param>
/// <param name="WidthM">Width of a slot; height of a rectangle along y; the diameter of a round hole again.</param>
/// <param name="CornerRadiusM">Corner radius of a rectangle, 0 for sharp corners.</param>
/// <param name="Own">The outline about its own zero, for <see cref="HoleShapeKind.Outline"/>.</param>
public sealed record HoleShape(
    HoleShapeKind Kind,
    double LengthM,
    double WidthM,
    double CornerRadiusM = 0,
    Outline? Own = null
)
{
    /// <summary>A round hole.</summary>
    public static HoleShape Round(double diameterM) => new(HoleShapeKind.Round, diameterM, diameterM);

    /// <summary>A slot along x; the length is over all.</summary>
    public static HoleShape Slot(double lengthM, double widthM) => new(HoleShapeKind.Slot, lengthM, widthM);

    /// <summary>A rectangle.</summary>
    public static HoleShape Rectangle(double widthM, double heightM, double cornerRadiusM = 0) =>
        new(HoleShapeKind.Rectangle, widthM, heightM, cornerRadiusM);

    /// <summary>Any outline, given about its own zero and run either way.</summary>
    /// <param name="outline">The outline, metres.</param>
    /// <param name="roundM">Radius of its corners between straight edges, metres; 0 leaves them sharp.</param>
    public static HoleShape Of(Outline outline, double roundM = 0)
    {
        var (least, most) = outline.Box;
        var round = roundM > 0 ? FaceCornerCut.Of(outline, roundM, round: true, new HashSet<string>()) : outline;
        return new(
            HoleShapeKind.Outline,
            most.X - least.X,
            most.Y - least.Y,
            0,
            round.SignedArea < 0 ? round.Reversed : round
        );
    }

    /// <summary>From the shape's zero to what is called its centre: the zero itself, of an outline the middle of its box.</summary>
    internal Vec2 Middle
    {
        get
        {
            if (Kind != HoleShapeKind.Outline)
            {
                return default;
            }

            var (least, most) = Outline.Box;
            return (least + most) / 2;
        }
    }

    /// <summary>Diameter of a round hole, 0 for any other shape.</summary>
    public double DiameterM => Kind == HoleShapeKind.Round ? LengthM : 0;

    /// <summary>The outline about the shape's own zero, counter-clockwise.</summary>
    public Outline Outline =>
        Kind switch
        {
            HoleShapeKind.Round => Geometry.Outline.Circle(default, LengthM / 2),
            HoleShapeKind.Slot => Geometry.Outline.Slot(default, LengthM, WidthM),
            HoleShapeKind.Rectangle => Geometry.Outline.Rectangle(default, LengthM, WidthM, CornerRadiusM),
            _ => Own ?? throw new InvalidOperationException("A hole of any outline has no outline."),
        };
}
