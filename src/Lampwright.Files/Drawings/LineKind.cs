using Lampwright.Files.Charts;

namespace Lampwright.Files.Drawings;

/// <summary>What a drawn line means; its width and dashes follow from it.</summary>
public enum LineKind
{
    /// <summary>Cut: outline of the blank and of its holes (continuous wide, 01.2).</summary>
    Cut,

    /// <summary>Middle of a bend zone (continuous narrow, 01.1).</summary>
    Bend,

    /// <summary>Punch mark or scribed mark (continuous narrow, 01.1).</summary>
    Mark,

    /// <summary>Dimension, extension and leader lines and their arrows (continuous narrow, 01.1).</summary>
    Dimension,

    /// <summary>Centre line (long-dash dot narrow, 04.1).</summary>
    Centre,

    /// <summary>Hidden edge (dashed narrow, 02.1).</summary>
    Hidden,

    /// <summary>Outline before forming, or a neighbouring part (long-dash double-dot narrow, 05.1).</summary>
    Before,

    /// <summary>Set line of the brake, scribed on the face that is seen (long dashes, as on the template).</summary>
    Set,

    /// <summary>Set line that is scribed on the face beneath (dashed: hidden).</summary>
    SetInside,

    /// <summary>Place of a finding that stops the work.</summary>
    Stop,

    /// <summary>Place of a finding that warns.</summary>
    Warn,

    /// <summary>Place of a finding that is worth knowing.</summary>
    Hint,
}

/// <summary>How a kind of line is drawn on paper.</summary>
/// <param name="WidthMm">Width of the line on paper, mm.</param>
/// <param name="DashesMm">Lengths of ink and gap in turn on paper, mm; empty for a continuous line.</param>
/// <param name="Word">One word that names it: the class in an SVG.</param>
/// <remarks>Source: ISO 128-2 line types and dash lengths in line widths (from memory), line group 0.5.</remarks>
public sealed record LineStyle(double WidthMm, IReadOnlyList<double> DashesMm, string Word)
{
    private static readonly LineStyle[] Styles =
    [
        new(0.5, [], "cut"),
        new(0.25, [], "bend"),
        new(0.25, [], "mark"),
        new(0.18, [], "dimension"),
        new(0.18, [24 * 0.18, 3 * 0.18, 0.5 * 0.18, 3 * 0.18], "centre"),
        new(0.25, [12 * 0.25, 3 * 0.25], "hidden"),
        new(0.25, [24 * 0.25, 3 * 0.25, 0.5 * 0.25, 3 * 0.25, 0.5 * 0.25, 3 * 0.25], "before"),
        new(0.25, [5, 1.5], "set"),
        new(0.25, [12 * 0.25, 3 * 0.25], "set-inside"),
        new(0.6, [], "found-stop"),
        new(0.6, [], "found-warn"),
        new(0.4, [], "found-note"),
    ];

    /// <summary>The style of a kind of line.</summary>
    public static LineStyle Of(LineKind kind) => Styles[(int)kind];

    /// <summary>Its colour on paper, the same in SVG and PDF; ink for lines that are cut, punched or measured.</summary>
    public static Tint TintOf(LineKind kind) =>
        kind switch
        {
            LineKind.Bend => Palette.Flow,
            LineKind.Set or LineKind.SetInside => Palette.Hold,
            LineKind.Stop => Palette.Stop,
            LineKind.Warn => Palette.Warn,
            LineKind.Hint => Palette.Soft,
            _ => Palette.Ink,
        };
}
