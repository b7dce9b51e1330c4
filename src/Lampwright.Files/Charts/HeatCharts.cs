using Lampwright.Design;
using Lampwright.Evaluation;

namespace Lampwright.Files.Charts;

/// <summary>Charts of heat and air.</summary>
public static class HeatCharts
{
    /// <summary>Temperatures from junction to room at the brightest position, drop by drop; null without heat.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="show">Unit of temperatures; null takes °C.</param>
    public static Chart? Staircase(LightEvaluation evaluation, Show? show = null)
    {
        if (
            evaluation.Heat is not { Staircase.Count: > 0 } heat
            || heat.Scenes.Count == 0
            || heat.Scenes[0].Points.Count == 0
        )
        {
            return null;
        }

        var unit = TemperatureUnit.Of(show);
        var ambient = heat.Scenes[0].AmbientC.Value;
        var level = ambient + heat.Staircase.Sum(s => s.DropK.Value);
        var bars = new List<Bar>();
        foreach (var step in heat.Staircase)
        {
            var next = level - step.DropK.Value;
            var size = step.DropK.In(unit.Factor);
            bars.Add(new(bars.Count, unit.From(level), unit.From(next), size, ChartText.Fixed(size.Value, 1)));
            level = next;
        }

        var room = unit.From(ambient);
        return new(
            "From junction to room",
            new("", "") { Places = [.. heat.Staircase.Select(s => $"{s.From} → {s.To}")] },
            new("Temperature", unit.Sign),
            [
                new LevelLayer($"air {ChartText.Fixed(room, 0)} {unit.Sign}", Palette.Flow, room),
                new BarLayer("", Palette.Heat, bars),
            ]
        )
        {
            Says = "Where the kelvins are lost at the brightest position: the tallest step is the one to work on.",
        };
    }

    /// <summary>The fan against what it blows through; null without a fan.</summary>
    public static Chart? FanCurve(LightEvaluation evaluation)
    {
        if (evaluation.Heat is not { Fan: { FlowM3PerH.Count: > 1 } fan } heat || heat.Scenes.Count == 0)
        {
            return null;
        }

        var scene = heat.Scenes[0];
        var most = fan.FanPa.Max() * 1.1;
        var system = fan.FlowM3PerH.Zip(fan.SystemPa).Where(p => p.Second <= most).ToList();
        return new(
            "Fan and what it blows through",
            new("Flow", "m³/h") { Least = 0 },
            new("Pressure", "Pa") { Least = 0 },
            [
                new LineLayer("fan", Palette.Flow, [.. fan.FlowM3PerH.Zip(fan.FanPa)]),
                new LineLayer("air path", Palette.Ink, system, Dashed: true),
                new MarkLayer(
                    $"{ChartText.Number(scene.FlowM3PerH.Value)} m³/h",
                    Palette.Heat,
                    scene.FlowM3PerH.Value,
                    scene.PressurePa,
                    scene.FlowM3PerH
                ),
            ]
        )
        {
            Says = "Where the curves cross, the air settles.",
        };
    }
}
