using System.Globalization;
using System.Text;
using Lampwright.Geometry;

namespace Lampwright.Files.Drawings;

/// <summary>Writes a drawing as SVG: paper millimetres, so that a print at 100 % has its scale.</summary>
/// <remarks>
/// Every kind of line and text has a class (<c>cut bend mark dimension centre hidden before</c>, <c>t-bend t-hole …</c>) and stands in
/// the current colour, so a page can restyle it; items carry <c>data-id</c>. Text is escaped: nothing of a design is ever markup.
/// </remarks>
public static class SvgDrawing
{
    /// <summary>A whole SVG file.</summary>
    public static string File(Drawing drawing) =>
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + Element(drawing, standsAlone: true);

    /// <summary>The <c>svg</c> element alone, for a page.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="standsAlone">True with size in mm, colours and a white ground; false without, for a page that styles it.</param>
    public static string Element(Drawing drawing, bool standsAlone = false)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        var (w, h) = (Numbers.Svg(drawing.WidthMm), Numbers.Svg(drawing.HeightMm));
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {w} {h}\"");
        if (standsAlone)
        {
            text.Append(CultureInfo.InvariantCulture, $" width=\"{w}mm\" height=\"{h}mm\" color=\"#1d2a33\"");
        }

        // What holds links is no picture to a reader of the page, but a group of them.
        var isGroup = !standsAlone && drawing.Items.Any(i => i is DrawnText { Role: TextRole.Found });
        text.Append(isGroup ? $" role=\"group\" aria-label=\"{Escaped(drawing.Title)}\"" : " role=\"img\"");
        text.Append(
            " class=\"drawing\" fill=\"none\" stroke=\"currentColor\" stroke-linecap=\"round\" stroke-linejoin=\"round\""
        );
        text.Append(" font-family=\"Inter, 'Helvetica Neue', Arial, sans-serif\">\n");
        text.Append("<title>")
            .Append(Escaped(drawing.Title))
            .Append(' ')
            .Append(drawing.ScaleText)
            .Append("</title>\n");
        if (standsAlone)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"<rect width=\"{w}\" height=\"{h}\" fill=\"#ffffff\" stroke=\"none\"/>\n"
            );
        }

        foreach (var item in drawing.Items)
        {
            Item(text, item, standsAlone);
        }

        return text.Append("</svg>\n").ToString();
    }

    /// <summary>Text as XML shows it: markup and control characters made harmless.</summary>
    internal static string Escaped(string text)
    {
        var safe = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            safe.Append(
                c switch
                {
                    '&' => "&amp;",
                    '<' => "&lt;",
                    '>' => "&gt;",
                    '"' => "&quot;",
                    '\'' => "&#39;",
                    _ when char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]) =>
                        text.Substring(i++, 2),
                    _ when char.IsControl(c) || char.IsSurrogate(c) || c is '\uFFFE' or '\uFFFF' => "\uFFFD",
                    _ => c.ToString(),
                }
            );
        }

        return safe.ToString();
    }

    private static void Item(StringBuilder text, DrawingItem item, bool standsAlone)
    {
        switch (item)
        {
            case DrawnPath { Filled: true } p:
                text.Append("<path class=\"")
                    .Append(p.Line == LineKind.Dimension ? "arrow" : "arrow " + LineStyle.Of(p.Line).Word)
                    .Append("\" fill=\"")
                    .Append(Colour(p.Line))
                    .Append("\" stroke=\"none\" d=\"")
                    .Append(Data(p))
                    .Append("\"/>\n");
                break;
            case DrawnPath p:
                text.Append("<path ").Append(Look(p.Line, p.Id)).Append(" d=\"").Append(Data(p)).Append("\"/>\n");
                break;
            case DrawnCircle c:
                text.Append("<circle ").Append(Look(c.Line, c.Id));
                text.Append(
                    CultureInfo.InvariantCulture,
                    $" cx=\"{Numbers.Svg(c.Centre.X)}\" cy=\"{Numbers.Svg(c.Centre.Y)}\" r=\"{Numbers.Svg(c.Radius)}\"/>\n"
                );
                break;
            case DrawnText t:
                Write(text, t, standsAlone);
                break;
            default:
                break;
        }
    }

    private const string Own = "currentColor";

    private static string Colour(LineKind kind) =>
        LineStyle.TintOf(kind) is var tint && tint == Charts.Palette.Ink ? Own : tint.Hex;

    private static string Look(LineKind kind, string id)
    {
        var style = LineStyle.Of(kind);
        var colour = Colour(kind) is var hex && hex == Own ? "" : $" stroke=\"{hex}\"";
        var dashes =
            style.DashesMm.Count > 0
                ? $" stroke-dasharray=\"{string.Join(' ', style.DashesMm.Select(Numbers.Svg))}\""
                : "";
        var data = id.Length > 0 ? $" data-id=\"{Escaped(id)}\"" : "";
        return $"class=\"{style.Word}\" stroke-width=\"{Numbers.Svg(style.WidthMm)}\"{colour}{dashes}{data}";
    }

    private static string Data(DrawnPath path)
    {
        var data = new StringBuilder();
        data.Append('M').Append(Point(path.Start));
        foreach (var s in path.Steps)
        {
            if (s.Radius == 0)
            {
                data.Append('L').Append(Point(s.To));
                continue;
            }

            var r = Numbers.Svg(s.Radius);
            var large = Math.Abs(s.SweepRad) > Math.PI ? 1 : 0;
            var sweep = s.SweepRad > 0 ? 1 : 0;
            data.Append(CultureInfo.InvariantCulture, $"A{r} {r} 0 {large} {sweep} ").Append(Point(s.To));
        }

        return data.Append(path.Closed ? "Z" : "").ToString();
    }

    private static string Point(Vec2 p) => Numbers.Svg(p.X) + " " + Numbers.Svg(p.Y);

    private static void Write(StringBuilder text, DrawnText t, bool standsAlone)
    {
        var anchor = t.Anchor switch
        {
            TextAnchor.Middle => " text-anchor=\"middle\"",
            TextAnchor.End => " text-anchor=\"end\"",
            _ => "",
        };
        var (x, y) = (Numbers.Svg(t.At.X), Numbers.Svg(t.At.Y));
        var turn =
            Math.Abs(t.AngleRad) < 1e-9
                ? ""
                : $" transform=\"rotate({Numbers.Svg(t.AngleRad * 180 / Math.PI)} {x} {y})\"";
        var data = t.Id.Length > 0 ? $" data-id=\"{Escaped(t.Id)}\"" : "";

        // On a page what a finding says leads to it, by keys too.
        data += t.Role == TextRole.Found && t.Id.Length > 0 && !standsAlone ? " tabindex=\"0\" role=\"link\"" : "";
        var role = t.Role switch
        {
            TextRole.Bend => "t-bend",
            TextRole.Hole => "t-hole",
            TextRole.Dimension => "t-dimension",
            TextRole.Title => "t-title",
            TextRole.Found => "t-found",
            _ => "t-note",
        };
        role += t.Line is { } line ? " " + LineStyle.Of(line).Word : "";
        var weight =
            t.Role is TextRole.Hole or TextRole.Title
            || t is { Role: TextRole.Found, Line: LineKind.Stop or LineKind.Warn }
                ? " font-weight=\"600\""
                : "";
        var colour = Colour(t.Line ?? (t.Role == TextRole.Bend ? LineKind.Bend : LineKind.Cut));
        text.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"{role}\" x=\"{x}\" y=\"{y}\" font-size=\"{Numbers.Svg(t.SizeMm)}\" fill=\"{colour}\" stroke=\"none\"{anchor}{weight}{turn}{data}>"
        );
        text.Append(Escaped(t.Text)).Append("</text>\n");
    }
}
