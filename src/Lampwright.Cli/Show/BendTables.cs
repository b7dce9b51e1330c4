using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Drawings;
using Lampwright.Metal.Bending;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>The order of bending of each part.</summary>
internal static class BendTables
{
    public static void Show(IAnsiConsole screen, BendingAnswer bending)
    {
        foreach (var part in bending.Parts)
        {
            if (part.Plan.Verdict != BendVerdict.Found)
            {
                screen.WriteLine();
                screen.Write(new Text(Words.Plain(BendCards.Sum(part)) + "\n"));
                continue;
            }

            var cells = new Cells(
                ">no.",
                "bend",
                "under the clamp",
                "up",
                ">swing to",
                ">nose back mm",
                "fingers mm",
                "note"
            );
            for (var i = 0; i < part.Plan.Stages.Count; i++)
            {
                var card = BendCards.Of(part, i);
                cells.Row(
                    Cells.Of(i + 1, 0),
                    Cells.Of(card.Flange),
                    Cells.Of(card.Clamped),
                    Cells.Of(card.Up),
                    Cells.Of(card.SwingTo),
                    Cells.Of(card.NoseBackMm, 1),
                    Cells.Of(card.Fingers),
                    Cells.Side(string.Join("; ", card.Notes))
                );
            }

            cells.On(
                screen,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Order of bending: {part.Name}{(bending.IsDescribed ? "" : " (on a usual brake; the fingers and heights of yours are not told)")}"
                )
            );
        }
    }
}
