using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Files.Drawings;

/// <summary>Marks findings in a drawing where they bite: a ring or a stretch, and beside it the code with few words.</summary>
/// <param name="draw">The drawing, its shape drawn.</param>
/// <param name="findings">Findings with a place in what is drawn, the worst first.</param>
/// <param name="k">Paper millimetres per metre.</param>
/// <param name="size">Size of the type.</param>
internal sealed class FindingMarks(DrawingBuilder draw, IReadOnlyList<Finding> findings, double k, double size)
{
    private const double Ring = 2.2;
    private static readonly double[] Reaches = [3.2, 5, 8, 12, 17, 23];

    /// <summary>Kind of line of a severity.</summary>
    public static LineKind KindOf(Severity severity) =>
        severity switch
        {
            Severity.Stop => LineKind.Stop,
            Severity.Warn => LineKind.Warn,
            _ => LineKind.Hint,
        };

    /// <summary>Findings of a part that have a place, the worst first.</summary>
    /// <param name="all">All findings.</param>
    /// <param name="part">Name of the part.</param>
    public static IReadOnlyList<Finding> Of(IEnumerable<Finding> all, string part) =>
        [
            .. all.Where(f => f.Place?.Part == part)
                .OrderByDescending(f => f.Severity)
                .ThenBy(f => f.Key, StringComparer.Ordinal),
        ];

    /// <summary>Rings and stretches.</summary>
    public void Places()
    {
        foreach (var finding in findings)
        {
            var (kind, place) = (KindOf(finding.Severity), finding.Place!);
            var (a, b, c) = (place.A * k, place.B * k, place.Middle * k);
            if (!place.IsPoint)
            {
                draw.Line(finding.Key, kind, a, b);
                draw.Crowd.Take(a, b, 4);
            }

            if ((b - a).Length < 3 * Ring)
            {
                draw.Circle(finding.Key, kind, c, Ring);
                draw.Crowd.Take(TextBox.Round(c, Ring));
                continue;
            }

            // The ends of a long stretch are seen by short strokes across it.
            var across = (b - a).Unit.Left * 1.2;
            draw.Line(finding.Key, kind, a - across, a + across);
            draw.Line(finding.Key, kind, b - across, b + across);
        }
    }

    /// <summary>Code and words of each, where they lie on nothing else, with a line to the place.</summary>
    public void Words()
    {
        foreach (var finding in findings)
        {
            var best = Best(finding, FindingWords.Beside(finding));
            if (best.Cost >= 2)
            {
                var code = Best(finding, finding.Code);
                best = code.Cost < best.Cost ? code : best;
            }

            var kind = KindOf(finding.Severity);
            draw.Line(finding.Key, kind, best.From, best.To);
            draw.Text(finding.Key, best.Text, best.At, size, TextRole.Found, TextAnchor.Start, 0, kind);
        }
    }

    private (string Text, Vec2 At, Vec2 From, Vec2 To, double Cost) Best(Finding finding, string text)
    {
        var place = finding.Place!;
        var width = TextWidth.Of(text, size);
        var best = (
            Text: text,
            At: default(Vec2),
            From: default(Vec2),
            To: default(Vec2),
            Cost: double.PositiveInfinity
        );
        foreach (var share in (place.B - place.A).Length * k < 20 ? (double[])[0.5] : [0.5, 0.25, 0.75, 0.1, 0.9])
        {
            var c = (place.A + ((place.B - place.A) * share)) * k;
            for (var i = 0; i < Reaches.Length; i++)
            {
                for (var turn = 0; turn < 8; turn++)
                {
                    var way = new Vec2(1, 0).Turned((turn * Math.PI / 4) + (Math.PI / 6));
                    var foot = c + (way * Reaches[i]);
                    var at = new Vec2(way.X >= 0 ? foot.X : foot.X - width, foot.Y - (size * 0.36));
                    var box = TextBox.Of(text, at, size, TextAnchor.Start, 0);
                    var cost = draw.Crowd.Cost(box) + (0.25 * i) + (0.01 * turn) + Beyond(box);
                    if (cost < best.Cost)
                    {
                        var ring = (place.B - place.A).Length * k < 3 * Ring ? Ring : 0;
                        best = (text, at, c + (way * ring), c + (way * (Reaches[i] - 0.4)), cost);
                    }
                }
            }
        }

        return best;
    }

    /// <summary>A label inside of what is drawn already does not make the drawing larger.</summary>
    private double Beyond(TextBox box) =>
        box.Corners.All(c => c.X >= draw.Left && c.X <= draw.Right && c.Y >= draw.Bottom && c.Y <= draw.Top) ? 0 : 1.2;
}
