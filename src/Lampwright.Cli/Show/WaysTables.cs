using Lampwright.Evaluation.Answers;
using Lampwright.Files.Json;
using Lampwright.Steps.Ways;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>What each way of dimming would do: side by side in a table, the reasons below at full width.</summary>
internal static class WaysTables
{
    /// <summary>Shows the ways; false when there are none.</summary>
    public static bool Show(IAnsiConsole screen, IReadOnlyList<WayAnswer> ways)
    {
        var table = new Cells(
            "way",
            "verdict",
            ">light %",
            ">half: eff. %",
            ">half: heat W",
            "held",
            "blinks",
            "opened"
        );
        foreach (var answer in ways)
        {
            var way = answer.Way;
            table.Row(
                Cells.Of(Name(answer)),
                Cells.Of(Spoken.Of(way.Verdict)),
                Cells.Of(Range(answer)),
                Cells.Percent(answer.EfficiencyAtHalf),
                Cells.Of(answer.HeatAtHalfW, 1),
                Cells.Of(Spoken.Of(way.Regulates)),
                Cells.Of(Blinks(way)),
                Cells.Of(way.OpensDriver ? "yes" : "no")
            );
        }

        table.On(screen, "Ways of dimming" + (ways.Any(w => w.IsChosen) ? " (* the one that [steps] says)" : ""));
        foreach (var answer in ways)
        {
            var line = new Paragraph();
            line.Append(Words.Plain(Name(answer)), new Style(decoration: Decoration.Bold));
            line.Append(": " + Words.Plain(answer.Way.Reason));
            screen.Write(new Padder(line, new Padding(2, 0, 0, 0)));
        }

        return ways.Count > 0;
    }

    private static string Name(WayAnswer answer) => answer.IsChosen ? $"* {answer.Way.Name}" : answer.Way.Name;

    private static string Range(WayAnswer answer) =>
        answer is { LeastShare: { } least, MostShare: { } most }
            ? $"{Numbers.Fixed(least.Value * 100, 0)}–{Numbers.Fixed(most.Value * 100, 0)}"
            : "";

    private static string Blinks(Way way) =>
        way.HiccupHz is { } rate
            ? $"{Spoken.Of(way.Blinks)}, {Numbers.Significant(rate.Least, 2)}–{Numbers.Significant(rate.Most, 2)} Hz"
            : Spoken.Of(way.Blinks);
}
