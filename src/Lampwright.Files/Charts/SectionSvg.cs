using System.Globalization;
using System.Net;

namespace Lampwright.Files.Charts;

/// <summary>Sections as SVG for the page.</summary>
public static class SectionSvg
{
    /// <summary>A whole SVG element that fills the width it is given and keeps its shape.</summary>
    /// <param name="picture">What it shows.</param>
    /// <param name="width">Width of the drawing in units of the view box.</param>
    /// <param name="most">Most height of light and scale in the same unit.</param>
    /// <param name="size">Height of the text's em in the same unit.</param>
    /// <param name="isKeyed">Whether names stand in a list below, which adds to the height.</param>
    public static string Of(SectionPicture picture, double width, double most, double size, bool isKeyed)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var ink = new SvgInk();
        var labels = SectionLabel.Of(picture.Cut, picture.Scene, picture.Unit);
        var whole =
            SectionDrawing.HeightFor(picture, width, most, size, isKeyed)
            + (isKeyed ? SectionDrawing.KeyHeight(labels.Count, size) : 0);
        SectionDrawing.Draw(picture, ink, 0, 0, width, whole, size, isKeyed);
        var spoken = string.Join(
            "; ",
            labels.Where(l => l.Text.Length > 0).Select(l => $"{l.Name} {l.Text} {l.Over}".Trim())
        );
        return string.Create(
            CultureInfo.InvariantCulture,
            $"""
            <svg class="lw-section" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {Math.Round(whole, 1)}" role="img" aria-label="{WebUtility.HtmlEncode(
                $"Section {picture.Cut.Name}, scene {picture.Scene.Name}: {spoken}"
            )}" font-family="Inter, system-ui, sans-serif" font-variant-numeric="tabular-nums" preserveAspectRatio="xMidYMid meet">{ink.Body}</svg>
            """
        );
    }
}
