using Lampwright.Files.Charts;
using Lampwright.Files.Drawings;
using Lampwright.Files.Packet.Fonts;
using PdfSharp.Drawing;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>Puts a finished drawing on a sheet: the same lines and texts as its SVG.</summary>
internal static class DrawingOnPaper
{
    public static void Draw(PaperInk ink, Drawing drawing, double x, double y)
    {
        foreach (var item in drawing.Items)
        {
            switch (item)
            {
                case DrawnPath path:
                    Path(ink, path, x, y);
                    break;
                case DrawnCircle circle:
                    ink.Circle(circle.Centre.X + x, circle.Centre.Y + y, circle.Radius, StrokeOf(circle.Line));
                    break;
                case DrawnText text:
                    Text(ink, text, x, y);
                    break;
            }
        }
    }

    private static void Path(PaperInk ink, DrawnPath drawn, double x, double y)
    {
        var path = new XGraphicsPath();
        var at = drawn.Start;
        foreach (var step in drawn.Steps)
        {
            if (step.Radius == 0)
            {
                path.AddLine(at.X + x, at.Y + y, step.To.X + x, step.To.Y + y);
            }
            else
            {
                // On paper y points down, so a positive sweep is clockwise as seen and positive in these coordinates.
                PaperInk.AddArc(path, step.Centre, at, step.SweepRad, p => new(p.X + x, p.Y + y));
            }

            at = step.To;
        }

        if (drawn.Closed)
        {
            path.CloseFigure();
        }

        ink.Draw(
            path,
            drawn.Filled ? null : StrokeOf(drawn.Line),
            drawn.Filled ? LineStyle.TintOf(drawn.Line) : null,
            1
        );
    }

    private static void Text(PaperInk ink, DrawnText text, double x, double y) =>
        ink.Text(
            text.Text,
            text.At.X + x,
            text.At.Y + y,
            new(
                text.SizeMm,
                LineStyle.TintOf(text.Line ?? (text.Role == TextRole.Bend ? LineKind.Bend : LineKind.Cut)),
                text.Anchor switch
                {
                    TextAnchor.Middle => Anchor.Middle,
                    TextAnchor.End => Anchor.End,
                    _ => Anchor.Start,
                },
                text.Role is TextRole.Hole or TextRole.Title ? Weight.SemiBold
                    : text is { Role: TextRole.Found, Line: LineKind.Stop or LineKind.Warn } ? Weight.Medium
                    : Weight.Regular,
                -text.AngleRad * 180 / Math.PI
            )
        );

    private static Stroke StrokeOf(LineKind kind)
    {
        var style = LineStyle.Of(kind);
        return new(LineStyle.TintOf(kind), style.WidthMm, style.DashesMm);
    }
}
