using Lampwright.Evaluation;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>Temperatures in three scenes, and the way from junction to room.</summary>
internal static class HeatTables
{
    /// <summary>Shows the station; false when it has no answer.</summary>
    public static bool Show(IAnsiConsole screen, LightEvaluation light)
    {
        if (light.Heat is not { } heat)
        {
            return false;
        }

        var way = new Cells("from", "to", ">drop K", "found by");
        foreach (var step in heat.Staircase)
        {
            way.Row(Cells.Of(step.From), Cells.Of(step.To), Cells.Of(step.DropK, 1), Cells.Side(step.Method));
        }

        way.On(screen, "From junction to room, brightest position, scene normal");

        foreach (var scene in heat.TellingScenes)
        {
            var points = new Cells(
                "switches",
                ">heat W",
                ">junction °C",
                ">case °C",
                ">sink °C",
                ">driver °C",
                ">compartment °C",
                ">front °C"
            );
            foreach (var p in scene.Points)
            {
                points.Row(
                    Cells.Of(p.Switches),
                    Cells.Of(Predicted.Sharp(p.HeatW.Value), 1),
                    Cells.Of(p.JunctionC, 0),
                    Cells.Of(Predicted.Sharp(p.CaseC.Value), 0),
                    Cells.Of(p.SinkC, 0),
                    Cells.Of(p.DriverC, 0),
                    Cells.Of(p.CompartmentC, 0),
                    Cells.Of(p.FrontC, 0)
                );
            }

            var fan = scene.FanRuns
                ? $"fan {Words.WithBand(scene.FlowM3PerH, v => Numbers.Fixed(v, 1), "m³/h")} at {Words.WithBand(scene.PressurePa, v => Numbers.Fixed(v, 1), "Pa")}"
                : "no fan";
            points.On(
                screen,
                $"Scene {scene.Name}: air {Words.WithBand(scene.AmbientC, v => Numbers.Fixed(v, 0), "°C")}, {fan}, "
                    + $"sink {Words.WithBand(scene.SinkKPerW, v => Numbers.Fixed(v, 2), "K/W")} ({heat.SinkFrom})"
            );
        }

        if (heat.Air.Value is { } air)
        {
            AirTables.Show(screen, air);
        }

        if (heat.Box is { } box)
        {
            BoxTables.Show(screen, box);
        }

        if (heat.Advice.Value is { } advice)
        {
            AdviceTables.Show(screen, advice);
        }

        return true;
    }
}
