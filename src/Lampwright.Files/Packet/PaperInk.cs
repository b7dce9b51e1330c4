using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Geometry;
using PdfSharp.Drawing;

namespace Lampwright.Files.Packet;

/// <summary>Draws on a page of the PDF, in millimetres from its upper left corner, everything as vectors and text.</summary>
/// <param name="graphics">The page.</param>
/// <param name="fonts">Fonts of the book that were made already: to make one costs more than to draw a line of text with it.</param>
internal sealed class PaperInk(XGraphics graphics, Dictionary<(Weight Weight, double Size), XFont> fonts) : IInk
{
    public void Line(double x0, double y0, double x1, double y1, Stroke stroke) =>
        graphics.DrawLine(Pen(stroke), x0, y0, x1, y1);

    public void Path(
        IReadOnlyList<(double X, double Y)> points,
        bool closed,
        Stroke? stroke,
        Tint? fill = null,
        double opacity = 1
    )
    {
        if (points.Count < 2)
        {
            return;
        }

        var path = new XGraphicsPath();
        path.AddLines([.. points.Select(p => new XPoint(p.X, p.Y))]);
        if (closed)
        {
            path.CloseFigure();
        }

        Draw(path, stroke, fill, opacity);
    }

    public void Circle(double x, double y, double radius, Stroke? stroke, Tint? fill = null)
    {
        var box = new XRect(x - radius, y - radius, 2 * radius, 2 * radius);
        if (fill is not null)
        {
            graphics.DrawEllipse(Brush(fill, 1), box);
        }

        if (stroke is not null)
        {
            graphics.DrawEllipse(Pen(stroke), box);
        }
    }

    public void Text(string text, double x, double y, TextStyle style)
    {
        var shown = Readable(text);
        if (shown.Length == 0)
        {
            return;
        }

        if (!fonts.TryGetValue((style.Weight, style.Size), out var font))
        {
            font = fonts[(style.Weight, style.Size)] = InterResolver.Font(style.Weight, style.Size);
        }

        var width = Typeface.WidthOf(shown, style.Size, style.Weight);
        var left = style.Anchor switch
        {
            Anchor.Middle => x - (width / 2),
            Anchor.End => x - width,
            _ => x,
        };
        if (style.TurnDeg == 0)
        {
            graphics.DrawString(shown, font, Brush(style.Tint, 1), left, y, XStringFormats.BaseLineLeft);
            return;
        }

        var state = graphics.Save();
        graphics.RotateAtTransform(-style.TurnDeg, new XPoint(x, y));
        graphics.DrawString(shown, font, Brush(style.Tint, 1), left, y, XStringFormats.BaseLineLeft);
        graphics.Restore(state);
    }

    /// <summary>Paper has no pointer.</summary>
    public void Readout(double x, double y, double width, double height, Readout readout) { }

    /// <summary>A rectangle.</summary>
    public void Box(double x, double y, double width, double height, Stroke? stroke, Tint? fill = null) =>
        Path([(x, y), (x + width, y), (x + width, y + height), (x, y + height)], true, stroke, fill);

    /// <summary>An outline of lines and arcs.</summary>
    /// <param name="outline">The outline, metres.</param>
    /// <param name="place">Carries a point of it to the page, mm; turns and mirrors, scales alike in all directions.</param>
    /// <param name="stroke">How it is drawn.</param>
    public void Outline(Outline outline, Func<Vec2, Vec2> place, Stroke stroke)
    {
        var path = new XGraphicsPath();
        for (var i = 0; i < outline.Corners.Count; i++)
        {
            var (a, b) = (outline.Corners[i], outline.Corners[(i + 1) % outline.Corners.Count]);
            if (a.Bulge == 0)
            {
                path.AddLine(Point(place(a.Point)), Point(place(b.Point)));
                continue;
            }

            var (centre, _) = outline.Arc(i);
            AddArc(path, centre, a.Point, 4 * Math.Atan(a.Bulge), place);
        }

        path.CloseFigure();
        Draw(path, stroke, null, 1);
    }

    /// <summary>An arc given by its centre, its start and the angle it turns in its own plane.</summary>
    public static void AddArc(XGraphicsPath path, Vec2 centre, Vec2 start, double angle, Func<Vec2, Vec2> place)
    {
        // Cubics of at most an eighth of a turn leave the circle by less than a millionth of its radius.
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(angle) / (Math.PI / 4) - 1e-9));
        var step = angle / pieces;
        var reach = 4.0 / 3 * Math.Tan(step / 4);
        var from = start - centre;
        for (var k = 0; k < pieces; k++)
        {
            var to = from.Turned(step);
            path.AddBezier(
                Point(place(centre + from)),
                Point(place(centre + from + (from.Left * reach))),
                Point(place(centre + to - (to.Left * reach))),
                Point(place(centre + to))
            );
            from = to;
        }
    }

    /// <summary>Stretches everything that is drawn from now on about a point: against a printer that does not print true.</summary>
    public void Stretch(double x, double y, double aboutX, double aboutY)
    {
        graphics.TranslateTransform(aboutX, aboutY);
        graphics.ScaleTransform(x, y);
        graphics.TranslateTransform(-aboutX, -aboutY);
    }

    /// <summary>Draws a path made elsewhere.</summary>
    public void Draw(XGraphicsPath path, Stroke? stroke, Tint? fill, double opacity)
    {
        if (fill is not null)
        {
            graphics.DrawPath(Brush(fill, opacity), path);
        }

        if (stroke is not null)
        {
            graphics.DrawPath(Pen(stroke), path);
        }
    }

    /// <summary>What is drawn in <paramref name="draw"/> shows inside of a box only.</summary>
    public void Clipped(double x, double y, double width, double height, Action draw)
    {
        var state = graphics.Save();
        graphics.IntersectClip(new XRect(x, y, width, height));
        draw();
        graphics.Restore(state);
    }

    /// <summary>The text with every sign that the typeface lacks, and every control sign, replaced.</summary>
    internal static string Readable(string text) =>
        Typeface.Has(text) ? text : string.Concat(text.Select(c => Typeface.Has(c.ToString()) ? c : '?'));

    private static XPoint Point(Vec2 p) => new(p.X, p.Y);

    private static XPen Pen(Stroke stroke)
    {
        var pen = new XPen(Colour(stroke.Tint, 1), stroke.Width)
        {
            LineCap = XLineCap.Flat,
            LineJoin = XLineJoin.Miter,
        };
        if (stroke.Dashes.Count > 0)
        {
            // Dashes are counted in widths of the pen.
            pen.DashPattern = [.. stroke.Dashes.Select(d => d / stroke.Width)];
        }

        return pen;
    }

    private static XSolidBrush Brush(Tint tint, double opacity) => new(Colour(tint, opacity));

    private static XColor Colour(Tint tint, double opacity) =>
        XColor.FromArgb((int)Math.Round(255 * opacity), (tint.Rgb >> 16) & 255, (tint.Rgb >> 8) & 255, tint.Rgb & 255);
}
