using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>Draws a blank: cuts, bends, punch marks; dimensions from the lower left datum; legend.</summary>
/// <remarks>
/// The blank is seen on its outside. Along the bottom and the left run the places of bends and corners, along the top and the right those
/// of hole centres, all counted from the lower left datum, as a maker scribes them; the over-all sizes stand outermost.
/// </remarks>
public static class BlankDrawing
{
    /// <summary>Scales that are used, largest first.</summary>
    public static IReadOnlyList<double> Scales { get; } =
    [1, 1 / 1.5, 1 / 2.0, 1 / 2.5, 1 / 3.0, 1 / 4.0, 1 / 5.0, 1 / 7.5, 1 / 10.0, 1 / 20.0, 1 / 50.0, 1 / 100.0];

    /// <summary>The drawing of a blank.</summary>
    /// <param name="blank">The blank.</param>
    /// <param name="options">How it is drawn; full size with everything when null.</param>
    public static Drawing Of(Blank blank, BlankDrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(blank);
        options ??= new();
        Guard.InRange(options.Scale, 1e-4, 1e3);
        Guard.InRange(options.TextMm, 0.5, 50);
        var sheet = new BlankSheet(blank, options);
        return sheet.Drawing();
    }

    /// <summary>The drawing at the largest scale of <see cref="Scales"/> at which it fits a field on paper.</summary>
    /// <param name="blank">The blank.</param>
    /// <param name="widthMm">Width of the field, mm.</param>
    /// <param name="heightMm">Height of the field, mm.</param>
    /// <param name="options">How it is drawn; the scale in it is not used.</param>
    public static Drawing Fitting(Blank blank, double widthMm, double heightMm, BlankDrawingOptions? options = null)
    {
        Guard.Positive(widthMm);
        Guard.Positive(heightMm);
        options ??= new();
        Drawing? wide = null;
        foreach (var scale in Scales)
        {
            if (blank.WidthM * 1000 * scale > widthMm || blank.HeightM * 1000 * scale > heightMm)
            {
                continue;
            }

            var drawing = Of(blank, options with { Scale = scale });
            if (drawing.WidthMm <= widthMm && drawing.HeightMm <= heightMm)
            {
                return drawing;
            }

            // A legend that alone is too tall is no reason to draw the part as a speck.
            wide ??= drawing.WidthMm <= widthMm ? drawing : null;
        }

        return wide ?? Of(blank, options with { Scale = Scales[^1] });
    }
}
