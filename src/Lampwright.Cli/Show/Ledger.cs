using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>The light at a glance: each switch position, then one line from every other station.</summary>
internal static class Ledger
{
    /// <summary>Shows it; false when no station has an answer.</summary>
    public static bool Show(IAnsiConsole screen, LightEvaluation light)
    {
        if (light.Steps is { } steps)
        {
            Headline(screen, steps);
            Positions(screen, steps);
        }

        Stations(screen, light);
        Influences(screen, light);
        return light is not { Steps: null, Light: null, Heat: null, FitUp: null, Balance: null }
            || light.Metal is { Parts.Count: > 0 };
    }

    private static void Headline(IAnsiConsole screen, StepsAnswer steps)
    {
        if (steps.Combinations.MaxBy(c => c.CurrentA.Value) is not { } most)
        {
            return;
        }

        var hottest = steps.Combinations.MinBy(c => c.JunctionMarginK.Value) ?? most;
        screen.WriteLine();
        screen.WriteLine(
            $"Brightest ({most.Switches}): {Words.WithBand(most.LuxAtSubject, v => Numbers.Significant(v), "lx")} at the subject, "
                + $"f/{Words.WithBand(most.Aperture, v => Numbers.Fixed(v, 1))}, {Words.WithBand(most.CurrentA, v => Numbers.Fixed(v, 2), "A")}."
        );
        screen.WriteLine(
            $"Hottest junction ({hottest.Switches}): {Words.WithBand(hottest.JunctionHotC, v => Numbers.Fixed(v, 0), "°C")} in the hottest room, "
                + $"{Words.WithBand(hottest.JunctionMarginK, v => Numbers.Fixed(v, 0), "K")} below its limit."
        );
    }

    private static void Positions(IAnsiConsole screen, StepsAnswer steps)
    {
        var cells = new Cells(
            "switches",
            ">A",
            ">emitter W",
            ">lux at subject",
            ">stops",
            ">f/",
            ">junction hot °C",
            ">margin K"
        );
        foreach (var c in steps.Combinations)
        {
            cells.Row(
                Cells.Of(c.Switches),
                Cells.Of(c.CurrentA, 2),
                Cells.Of(Predicted.Sharp(c.EmitterW.Value), 1),
                Cells.Rounded(c.LuxAtSubject),
                Cells.Of(Predicted.Sharp(c.Stops.Value), 2),
                Cells.Of(Predicted.Sharp(c.Aperture.Value), 1),
                Cells.Of(c.JunctionHotC, 0),
                Cells.Of(Predicted.Sharp(c.JunctionMarginK.Value), 0)
            );
        }

        cells.On(screen, "The light at a glance (1 = switch closed; scene normal where none is said)");
    }

    private static void Stations(IAnsiConsole screen, LightEvaluation light)
    {
        var lines = new List<(string Station, string Line)>();
        // Without a fan the hottest room is the worst there is.
        var scene = light.Heat?.HasFan == true ? "fan stopped" : "hot";
        if (light.Heat?.Scenes.FirstOrDefault(s => s.Name == scene) is { Points.Count: > 0 } stopped)
        {
            var worst = stopped.Points.MaxBy(p => p.JunctionC.Value)!;
            lines.Add(
                (
                    "heat",
                    $"{(scene == "hot" ? "no fan, hottest room" : scene)}: junction {Words.WithBand(worst.JunctionC, v => Numbers.Fixed(v, 0), "°C")} at {worst.Switches}"
                )
            );
        }

        if (light.Light is { } l)
        {
            lines.Add(
                (
                    "light",
                    $"{Words.WithBand(l.Efficiency.In(100), v => Numbers.Fixed(v, 0), "%")} of the flux leaves; "
                        + $"darkest corner {Words.WithBand(l.Evenness.In(100), v => Numbers.Fixed(v, 0), "%")} of the centre"
                )
            );
        }

        if (light.Metal is { Parts.Count: > 0 } metal)
        {
            lines.Add(("metal", $"{Words.Count(metal.Parts.Count, "blank")} to cut; see lampwright metal"));
        }

        if (light.FitUp is { } fit)
        {
            lines.Add(
                (
                    "fit-up",
                    $"{Words.WithBand(fit.TotalMassKg, v => Numbers.Fixed(v, 2), "kg")} in all, {Words.Count(fit.Joints.Count, "joint")}"
                        + (fit.Unplaced.Count > 0 ? $", {Words.Count(fit.Unplaced.Count, "thing")} not placed" : "")
                )
            );
        }

        foreach (var tilt in light.Balance?.Tilts ?? [])
        {
            lines.Add(
                (
                    "balance",
                    $"tilt {tilt.Name} holds {Words.WithBand(tilt.SafetyFactor, v => Numbers.Fixed(v, 1))} times its worst moment"
                )
            );
        }

        if (light.Readings is { Rows.Count: > 0 } readings)
        {
            var outside = readings.Rows.Count(r => r.InBands is { } n && Math.Abs(n) > 1);
            lines.Add(("readings", $"{Words.Count(readings.Rows.Count, "reading")}, {outside} outside of their bands"));
        }

        if (lines.Count > 0)
        {
            var cells = new Cells("station", "answer");
            foreach (var (station, line) in lines)
            {
                cells.Row(Cells.Side(station), Cells.Of(line));
            }

            cells.On(screen, "The other stations");
        }
    }

    private static void Influences(IAnsiConsole screen, LightEvaluation light)
    {
        var cells = new Cells("result", "hangs most on", ">share %");
        foreach (var result in light.Influences.GroupBy(i => i.Result))
        {
            var first = true;
            foreach (var influence in result.OrderByDescending(i => i.Share).Take(3))
            {
                cells.Row(
                    Cells.Of(first ? influence.Result : ""),
                    Cells.Of((influence.Direction < 0 ? "− " : "+ ") + influence.Variable),
                    Cells.Of(influence.Share * 100, 0)
                );
                first = false;
            }
        }

        cells.On(screen, "What matters most");
    }
}
