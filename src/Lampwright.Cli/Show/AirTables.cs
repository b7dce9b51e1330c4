using Lampwright.Evaluation.Answers;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>What the fan's air passes, how slow the fan may run, and what its openings would have to be.</summary>
internal static class AirTables
{
    /// <summary>Shows what there is.</summary>
    public static void Show(IAnsiConsole screen, AirAnswer air)
    {
        var losses = new Cells("the air passes", ">costs Pa", ">share %");
        var sum = air.Losses.Sum(l => l.PressurePa.Value);
        foreach (var loss in air.Losses)
        {
            losses.Row(
                Cells.Of(loss.Path),
                Cells.Of(loss.PressurePa, 1),
                Cells.Of(sum > 0 ? 100 * loss.PressurePa.Value / sum : 0, 0)
            );
        }

        losses.On(screen, "What the fan works against, scene normal");

        Steps(screen, air);
        Opening(screen, air);
    }

    private static void Steps(IAnsiConsole screen, AirAnswer air)
    {
        var runs = air.RunsAtV is { } at ? $"; it runs at {Numbers.Fixed(at, 1)} V" : "";
        if (
            air.FanSteps is [{ NoiseDb: { } noise }, ..]
            && air.FanSteps.All(s => s.IsSafe && s.LeastV?.High <= air.FloorV)
        )
        {
            screen.WriteLine();
            screen.WriteLine(
                Words.Plain(
                    $"On the hottest day {Numbers.Fixed(air.FloorV!.Value, 1)} V, the least that is advised, holds the junction at every position{runs} ({Numbers.Fixed(noise.Value, 0)} dB)."
                )
            );
            return;
        }

        var steps = new Cells("switches", ">least V", "", ">noise dB");
        foreach (var step in air.FanSteps)
        {
            steps.Row(
                Cells.Of(step.Switches),
                Cells.Of(step.LeastV, 1),
                Cells.Side(Said(step)),
                Cells.Of(step.NoiseDb, 0)
            );
        }

        steps.On(screen, $"How slow the fan may run on the hottest day{runs}");
    }

    private static void Opening(IAnsiConsole screen, AirAnswer air)
    {
        if (air.Opening is { } opening)
        {
            var openings = new Cells("opening", ">now cm²", ">wanted cm²");
            foreach (var o in opening.Openings)
            {
                openings.Row(Cells.Of(o.Path), Cells.Of(o.OpenCm2, 1), Cells.Of(o.WantedCm2, 1));
            }

            openings.On(
                screen,
                opening.IsReached
                    ? $"Openings that give the sink {Numbers.Fixed(opening.WantedC, 0)} °C on the hottest day, brightest position"
                    : $"No opening gives the sink {Numbers.Fixed(opening.WantedC, 0)} °C on the hottest day; with these it comes to {Numbers.Fixed(opening.BaseC.Value, 0)} °C"
            );
        }
    }

    private static string Said(FanStep step) =>
        step switch
        {
            { LeastV: null } => "no voltage holds it",
            { IsSafe: false } => "not sure at any voltage",
            _ => "",
        };
}
