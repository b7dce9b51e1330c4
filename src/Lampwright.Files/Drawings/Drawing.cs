using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Files.Drawings;

/// <summary>A finished drawing that the SVG, the PDF and the board draw alike: it decides everything but the ink and the typeface.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="WidthMm">Width on paper, mm.</param>
/// <param name="HeightMm">Height on paper, mm.</param>
/// <param name="Scale">Paper millimetres per real millimetre: 1 is full size, 0.5 is 1:2.</param>
/// <param name="Origin">Where the zero of the thing that is shown lies on paper.</param>
/// <param name="Items">What is drawn, from the bottom up.</param>
/// <param name="Groups">Groups of equal holes with their letters and places.</param>
public sealed record Drawing(
    string Title,
    double WidthMm,
    double HeightMm,
    double Scale,
    Vec2 Origin,
    IReadOnlyList<DrawingItem> Items,
    IReadOnlyList<HoleGroup> Groups
)
{
    /// <summary>The scale as it is written: <c>1:2</c>, <c>1:1</c>, <c>2:1</c>.</summary>
    public string ScaleText =>
        Scale >= 1 ? Invariant($"{Math.Round(Scale, 3)}:1") : Invariant($"1:{Math.Round(1 / Scale, 3)}");

    /// <summary>A point of the thing that is shown (metres, y up) on paper.</summary>
    public Vec2 OnPaper(Vec2 point) => new(Origin.X + (point.X * 1000 * Scale), Origin.Y - (point.Y * 1000 * Scale));

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}

/// <summary>How a blank is drawn.</summary>
public sealed record BlankDrawingOptions
{
    /// <summary>Paper millimetres per real millimetre.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>Size of the type (em) on paper, mm; 3.4 gives capitals of 2.5 mm.</summary>
    public double TextMm { get; init; } = 3.4;

    /// <summary>True with dimensions: over-all sizes, and places of bends and corners from the datum edges.</summary>
    public bool Dimensions { get; init; } = true;

    /// <summary>True with the coordinates of hole centres along the top and the right.</summary>
    public bool HoleCoordinates { get; init; } = true;

    /// <summary>True with a label on each bend.</summary>
    public bool BendLabels { get; init; } = true;

    /// <summary>True with the legend below: kinds of lines, groups of holes, notes.</summary>
    public bool Legend { get; init; } = true;

    /// <summary>Width that the legend may take even where the drawing is narrower, mm.</summary>
    public double LegendMm { get; init; } = 165;

    /// <summary>Findings that are marked where they bite; those without a place in the part are passed over.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>True with the set lines of the brake's clamp.</summary>
    public bool SetLines { get; init; } = true;

    /// <summary>The plain shape: cuts, bends and marks, nothing else. For templates, full size.</summary>
    public static BlankDrawingOptions Plain { get; } =
        new()
        {
            Dimensions = false,
            HoleCoordinates = false,
            BendLabels = false,
            Legend = false,
            SetLines = false,
        };
}
