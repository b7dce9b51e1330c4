using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Drawings;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Files.Packet.Templates;

/// <summary>Findings on a template, where they bite: what is cut by it is looked at once more before the first punch.</summary>
internal static class TemplateMarks
{
    private const double Ring = 3.2;
    private const double Size = 2.4;

    /// <summary>Marks and words.</summary>
    /// <param name="ink">The sheet.</param>
    /// <param name="findings">Findings with a place in the blank.</param>
    /// <param name="place">Carries a point of the blank (metres, outside up) to the sheet.</param>
    public static void Draw(PaperInk ink, IReadOnlyList<Finding> findings, Func<Vec2, Vec2> place)
    {
        foreach (var finding in findings)
        {
            var on = finding.Place!;
            var (a, b, c) = (place(on.A), place(on.B), place(on.Middle));
            var tint = LineStyle.TintOf(FindingMarks.KindOf(finding.Severity));
            var stroke = new Stroke(
                tint,
                finding.Severity == Severity.Note ? 0.18 : 0.35,
                finding.Severity == Severity.Note ? [1, 1] : []
            );
            var words = FindingWords.Beside(finding);
            if ((b - a).Length < 4 * Ring)
            {
                ink.Circle(c.X, c.Y, Ring, stroke);
                ink.Line(a.X, a.Y, b.X, b.Y, stroke);
                ink.Text(words, c.X + Ring + 0.6, c.Y + 3.4, new(Size, tint, Weight: Weight.Medium));
                continue;
            }

            ink.Line(a.X, a.Y, b.X, b.Y, stroke);
            var along = (b - a).Unit;
            if (along.X < -1e-9 || (Math.Abs(along.X) <= 1e-9 && along.Y > 0))
            {
                along = -along;
            }

            // At the beginning and below, since the words of a bend stand above its middle.
            var foot = c - (along * (((b - a).Length / 2) - 7.5)) + (new Vec2(-along.Y, along.X) * (Size + 0.6));
            var turn = -Math.Atan2(along.Y, along.X) * 180 / Math.PI;
            ink.Text(words, foot.X, foot.Y, new(Size, tint, Anchor.Start, Weight.Medium, turn));
        }
    }

    /// <summary>What stops the work on a part, in one line; empty where nothing does.</summary>
    public static string Stop(PartAnswer part, IReadOnlyList<Finding> findings)
    {
        var stops = findings
            .Where(f =>
                f.Severity == Severity.Stop
                && (
                    f.Place?.Part == part.Name
                    || f.Path == part.Path
                    || f.Path.StartsWith(part.Path + ".", StringComparison.Ordinal)
                )
            )
            .Select(FindingWords.Beside)
            .Distinct(StringComparer.Ordinal)
            .ToList();
        return stops.Count == 0 ? "" : "Do not cut: " + string.Join(", ", stops) + ". Mend the design and print again.";
    }
}
