using Lampwright.Findings;
using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>Draws what can be drawn of a part that has no blank, with the places of its findings. Nothing is cut by it.</summary>
public static class SketchDrawing
{
    /// <summary>The drawing at the largest usual scale that fits.</summary>
    /// <param name="sketch">The sketch.</param>
    /// <param name="findings">Findings; those of this part are marked.</param>
    /// <param name="widthMm">Width of the field, mm.</param>
    /// <param name="heightMm">Height of the field, mm.</param>
    /// <param name="textMm">Size of the type, mm.</param>
    public static Drawing Fitting(
        BlankSketch sketch,
        IReadOnlyList<Finding> findings,
        double widthMm,
        double heightMm,
        double textMm = 3.4
    )
    {
        ArgumentNullException.ThrowIfNull(sketch);
        var (w, h) = (sketch.WidthM * 1000, sketch.HeightM * 1000);
        var scale = BlankDrawing.Scales.FirstOrDefault(
            s => (w * s) + 40 <= widthMm && (h * s) + 30 <= heightMm,
            BlankDrawing.Scales[^1]
        );
        var (draw, k) = (new DrawingBuilder(), 1000 * scale);
        foreach (var one in sketch.Outlines)
        {
            var outline = one.Outline.Moved(p => p * k);
            draw.Outline(one.Id, one.IsHole ? LineKind.Mark : LineKind.Before, outline);
            var points = outline.Points(0.2);
            for (var i = 0; i < points.Count; i++)
            {
                draw.Crowd.Take(points[i], points[(i + 1) % points.Count], 8);
            }
        }

        var mine = FindingMarks.Of(findings, sketch.Part);
        var marks = new FindingMarks(draw, mine, k, textMm);
        marks.Places();
        foreach (var one in sketch.Outlines.Where(o => !o.IsHole))
        {
            var (least, most) = one.Outline.Box;
            draw.Text(one.Id, one.Id, (least + most) / 2 * k, textMm, TextRole.Hole, TextAnchor.Middle);
        }

        marks.Words();
        var y = draw.Bottom - (2.2 * textMm);
        draw.Text(
            "",
            $"{sketch.Part}: no blank. Laid flat as given, nothing trimmed; cut nothing by this.",
            new(draw.Left, y),
            textMm,
            TextRole.Note
        );
        return draw.Finish(sketch.Part, scale, margin: 2, []);
    }
}
