using Lampwright.Evaluation.Answers;
using Lampwright.Files.Json;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>What the driver's board tells of its sense circuit.</summary>
internal static class BoardLines
{
    /// <summary>Shows the reading.</summary>
    public static void Show(IAnsiConsole screen, BoardAnswer board)
    {
        var reading = board.Reading;
        screen.WriteLine();
        screen.Write(new Text("The driver's board\n", new Style(decoration: Decoration.Bold)));
        if (board.ThresholdV is { } volts)
        {
            var parts = reading.ParallelOhm is { } ohm ? $", {Numbers.Significant(ohm)} ohm of sense parts" : "";
            Line(
                screen,
                $"threshold {Words.WithBand(volts, v => Numbers.Fixed(v, 3), "V")} by {Spoken.Of(reading.Threshold.Basis)}{parts}"
            );
        }

        Line(screen, reading.Threshold.Reason);
        if (reading.Law is { } law)
        {
            Line(screen, law.Words);
        }

        if (reading.Stops.Count > 0)
        {
            Line(screen, $"no wires may leave it while these stand: {string.Join(", ", reading.Stops)}");
        }

        foreach (var question in reading.Questions.Where(q => q.IsOpen))
        {
            Line(screen, $"open: {question.Ask} ({question.Key})");
        }
    }

    private static void Line(IAnsiConsole screen, string text) => screen.WriteLine("  " + Words.Plain(text));
}
