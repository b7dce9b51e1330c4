using System.Globalization;
using System.Net;

namespace Lampwright.Files.Charts;

/// <summary>Charts as SVG for the page.</summary>
public static class ChartSvg
{
    /// <summary>A whole SVG element that fills the width it is given and keeps its shape.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="width">Width of the drawing in units of the view box (pixels at full size).</param>
    /// <param name="height">Height in the same unit.</param>
    /// <param name="size">Height of the text's em in the same unit.</param>
    /// <param name="withTitle">Whether title and sentence are drawn; they are always told to people who hear the page.</param>
    public static string Of(
        Chart chart,
        double width = 720,
        double height = 360,
        double size = 12,
        bool withTitle = true
    )
    {
        var ink = new SvgInk();
        ChartDrawing.Draw(withTitle ? chart : chart with { Title = "", Says = "" }, ink, 0, 0, width, height, size);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"""
            <svg class="lw-chart" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" role="img" aria-label="{WebUtility.HtmlEncode(
                Spoken(chart)
            )}" font-family="Inter, system-ui, sans-serif" font-variant-numeric="tabular-nums" preserveAspectRatio="xMidYMid meet">{ink.Body}</svg>
            """
        );
    }

    private static string Spoken(Chart chart) => chart.Says.Length == 0 ? chart.Title : $"{chart.Title}: {chart.Says}";
}
