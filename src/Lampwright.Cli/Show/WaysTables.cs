using Lampwright.Evaluation.Answers;
using Lampwright.Files.Json;
using Lampwright.Steps.Ways;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>What each way of dimming would do.</summary>
internal static class WaysTables
{
    /// <summary>Shows the ways; false when there are none.</summary>
    public static bool Show(IAnsiConsole screen, IReadOnlyList<WayAnswer> ways)
    {
        var table = new Cells("way", "verdict", ">light %", ">half: eff. %", "blinks", "why");
        foreach (var answer in ways)
        {
            var way = answer.Way;
            table.Row(
                Cells.Of(answer.IsChosen ? $"* {way.Name}" : way.Name),
                Cells.Of(Spoken.Of(way.Verdict)),
                Cells.Of(Range(answer)),
                Cells.Percent(answer.EfficiencyAtHalf),
                Cells.Of(Blinks(way)),
                Cells.Of(way.Reason)
            );
        }

        table.On(screen, "Ways of dimming" + (ways.Any(w => w.IsChosen) ? " (* the one that [steps] says)" : ""));
        return ways.Count > 0;
    }

    private static string Range(WayAnswer answer) =>
        answer is { LeastShare: { } least, MostShare: { } most }
            ? $"{Numbers.Fixed(least.Value * 100, 0)}–{Numbers.Fixed(most.Value * 100, 0)}"
            : "";

    private static string Blinks(Way way) =>
        way.HiccupHz is { } rate
            ? $"{Spoken.Of(way.Blinks)}, {Numbers.Significant(rate.Least, 2)}–{Numbers.Significant(rate.Most, 2)} Hz"
            : Spoken.Of(way.Blinks);
}
