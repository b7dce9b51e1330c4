using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>Resistors, switch positions and wanted steps.</summary>
internal static class StepsTables
{
    /// <summary>Shows the station; false when it has no answer.</summary>
    public static bool Show(IAnsiConsole screen, LightEvaluation light)
    {
        if (light.Steps is { } steps)
        {
            Chain(screen, steps);
            if (steps.Chain is { } best)
            {
                ChainLines.Show(screen, best);
            }

            FaultLines.Show(screen, steps);
        }
        else if (light.Ways.Count > 0 || light.Board is not null)
        {
            screen.WriteLine();
            screen.WriteLine("No switch position could be computed; the problems and findings say why.");
        }

        var ways = WaysTables.Show(screen, light.Ways);
        if (light.Board is { } board)
        {
            BoardLines.Show(screen, board);
        }

        return light.Steps is not null || ways || light.Board is not null;
    }

    private static void Chain(IAnsiConsole screen, StepsAnswer steps)
    {
        var parts = new Cells("resistor", ">ohm", ">rated W", ">most W", ">may take W (hot)", ">hottest °C");
        foreach (var part in steps.Parts.SelectMany(p => p.Pair.Prepend(p)))
        {
            parts.Row(
                Cells.Of(part.Label),
                Cells.Of(Predicted.Sharp(part.ResistanceOhm), v => Numbers.Significant(v)),
                Cells.Of(Predicted.Sharp(part.RatingW), v => Numbers.Significant(v)),
                Cells.Rounded(part.MostW),
                Cells.Rounded(part.DeratedW),
                Cells.Of(part.HottestC, 0)
            );
        }

        parts.On(screen, $"The chain ({steps.Arrangement}; values: {steps.ChosenBy})");
        screen.WriteLine(
            $"  threshold {Words.WithBand(steps.SenseThresholdV, v => Numbers.Fixed(v, 3), "V")}, "
                + (steps.ThresholdIsPlausible ? "one that drivers use" : "not one that drivers use")
                + $"; leads {Words.WithBand(steps.LeadOhm.In(1000), v => Numbers.Fixed(v, 0), "mohm")}"
        );

        var positions = new Cells(
            "switches",
            ">path ohm",
            ">A",
            ">V",
            ">emitter W",
            ">lm out",
            ">stops",
            ">from supply W"
        );
        foreach (var c in steps.Combinations)
        {
            positions.Row(
                Cells.Of(c.Switches),
                Cells.Of(c.ResistanceOhm, 3),
                Cells.Of(c.CurrentA, 2),
                Cells.Of(c.VoltageV, 1),
                Cells.Of(c.EmitterW, 1),
                Cells.Rounded(c.FluxOutLm),
                Cells.Of(c.Stops, 2),
                Cells.Of(c.InputW, 0)
            );
        }

        positions.On(screen, "Switch positions (1 = switch closed; scene normal)");

        var targets = new Cells("wanted", ">A", "position", ">off by stops");
        foreach (var target in steps.Targets)
        {
            targets.Row(
                Cells.Of(target.Wanted),
                Cells.Of(target.CurrentA, 2),
                Cells.Of(target.Switches),
                Cells.Of(target.ErrorStops, 2)
            );
        }

        targets.On(screen, "Wanted steps");
    }
}
