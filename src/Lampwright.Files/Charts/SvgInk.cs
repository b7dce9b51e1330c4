using System.Globalization;
using System.Net;
using System.Text;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Charts;

/// <summary>Draws SVG for the page. Colours are style variables with the paper's colour behind them; every text is escaped.</summary>
public sealed class SvgInk : IInk
{
    private readonly StringBuilder body = new();

    /// <summary>The elements drawn so far.</summary>
    public string Body => body.ToString();

    /// <inheritdoc/>
    public void Line(double x0, double y0, double x1, double y1, Stroke stroke) =>
        body.Append(
            CultureInfo.InvariantCulture,
            $"""<line x1="{N(x0)}" y1="{N(y0)}" x2="{N(x1)}" y2="{N(y1)}"{Drawn(stroke)}/>"""
        );

    /// <inheritdoc/>
    public void Path(
        IReadOnlyList<(double X, double Y)> points,
        bool closed,
        Stroke? stroke,
        Tint? fill = null,
        double opacity = 1
    )
    {
        body.Append("<path d=\"M");
        foreach (var (x, y) in points)
        {
            body.Append(CultureInfo.InvariantCulture, $"{N(x)} {N(y)} ");
        }

        body.Length--;
        body.Append(closed ? "Z\"" : "\"");
        if (fill is null)
        {
            body.Append(" fill=\"none\"");
        }
        else if (opacity < 1)
        {
            body.Append(CultureInfo.InvariantCulture, $" fill-opacity=\"{N(opacity)}\"");
        }

        // One attribute for both: of two, a browser drops the second.
        List<string> style = [];
        if (fill is not null)
        {
            style.Add($"fill:{fill.Css}");
        }

        if (stroke is not null)
        {
            style.Add($"stroke:{stroke.Tint.Css}");
        }

        body.Append(style.Count == 0 ? "" : $" style=\"{string.Join(';', style)}\"");
        body.Append(stroke is null ? "" : Widths(stroke)).Append("/>");
    }

    /// <inheritdoc/>
    public void Circle(double x, double y, double radius, Stroke? stroke, Tint? fill = null) =>
        body.Append(
            CultureInfo.InvariantCulture,
            $"""<circle cx="{N(x)}" cy="{N(y)}" r="{N(radius)}" fill="{(fill is null ? "none" : fill.Css)}"{(stroke is null ? "" : Drawn(stroke))}/>"""
        );

    /// <inheritdoc/>
    public void Text(string text, double x, double y, TextStyle style)
    {
        var anchor = style.Anchor switch
        {
            Anchor.Middle => " text-anchor=\"middle\"",
            Anchor.End => " text-anchor=\"end\"",
            _ => "",
        };
        var weight = style.Weight switch
        {
            Weight.Medium => " font-weight=\"500\"",
            Weight.SemiBold => " font-weight=\"600\"",
            _ => "",
        };
        var turn =
            style.TurnDeg == 0
                ? ""
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $" transform=\"rotate({N(-style.TurnDeg)} {N(x)} {N(y)})\""
                );
        body.Append(
            CultureInfo.InvariantCulture,
            $"""<text x="{N(x)}" y="{N(y)}" font-size="{N(style.Size)}" style="fill:{style.Tint.Css}"{anchor}{weight}{turn}>{WebUtility.HtmlEncode(text)}</text>"""
        );
    }

    /// <inheritdoc/>
    public void Readout(double x, double y, double width, double height, Readout readout)
    {
        var band = readout is { Low: { } low, High: { } high }
            ? string.Create(CultureInfo.InvariantCulture, $" data-low=\"{low:R}\" data-high=\"{high:R}\"")
            : "";
        var series = readout.Series.Length == 0 ? "" : $"{readout.Series}, ";
        body.Append(
            CultureInfo.InvariantCulture,
            $"""
            <rect class="lw-readout" x="{N(x)}" y="{N(y)}" width="{N(width)}" height="{N(
                height
            )}" fill="transparent" data-series="{E(readout.Series)}" data-x="{E(readout.X)}" data-text="{E(
                readout.Text
            )}" data-value="{readout.Value:R}"{band}><title>{E(series)}{E(readout.X)}: {E(readout.Text)}</title></rect>
            """
        );
    }

    private static string Drawn(Stroke stroke) => $" style=\"stroke:{stroke.Tint.Css}\"{Widths(stroke)}";

    private static string Widths(Stroke stroke) =>
        $" stroke-width=\"{N(stroke.Width)}\""
        + (stroke.Dashes.Count == 0 ? "" : $" stroke-dasharray=\"{string.Join(' ', stroke.Dashes.Select(N))}\"");

    private static string E(string text) => WebUtility.HtmlEncode(text);

    private static string N(double number) => Math.Round(number, 2).ToString(CultureInfo.InvariantCulture);
}
