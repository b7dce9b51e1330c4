using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>What limits, and what one change would help most.</summary>
internal static class AdviceTables
{
    /// <summary>Shows what there is.</summary>
    public static void Show(IAnsiConsole screen, HeatAdvice advice)
    {
        var limits = new Cells("what", ">°C", ">limit °C", ">left K", "from");
        foreach (var limit in advice.Limits)
        {
            limits.Row(
                Cells.Of(limit.What),
                Cells.Of(limit.ValueC, 0),
                Cells.Of(limit.LimitC, 0),
                Cells.Of(limit.MarginK, 0),
                Cells.Side(limit.Path)
            );
        }

        limits.On(screen, $"What limits, scene {advice.Nearest.Scene}, brightest position, the nearest first");

        var helps = new Cells(
            "change",
            "",
            $">{advice.Nearest.What} K",
            ">junction K",
            ">skin K",
            ">kg",
            ">noise dB",
            ">light stops",
            "costs"
        );
        foreach (var help in advice.Helps)
        {
            helps.Row(
                Cells.Of(help.Path),
                Cells.Of(help.Step),
                Cells.Of(help.LimitK, 1),
                Cells.Of(help.JunctionK, 1),
                Cells.Of(help.SkinK, 1),
                Cells.Of(help.MassKg, 2),
                Cells.Of(help.NoiseDb, 1),
                Cells.Of(help.LightStops, 2),
                Cells.Side(help.Cost)
            );
        }

        helps.On(screen, $"What one step would do, what helps the {advice.Nearest.What} most first");
        screen.WriteLine(
            $"Nearest its limit: {advice.Nearest.What}, {HeatText.Left(advice.Nearest, TemperatureUnit.Celsius)}. {HeatText.HelpsMost(advice, TemperatureUnit.Celsius)}"
        );
    }
}
