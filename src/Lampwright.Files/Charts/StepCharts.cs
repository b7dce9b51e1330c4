using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Charts;

/// <summary>Charts over the switch positions.</summary>
public static class StepCharts
{
    /// <summary>Illuminance at the subject at each switch position; null without steps.</summary>
    public static Chart? Light(LightEvaluation evaluation) =>
        Over(
            evaluation,
            "Light at the subject",
            "Illuminance",
            "lx",
            Palette.Light,
            c => c.LuxAtSubject,
            "A dot is what to expect, the bar round it the 5 to 95 % of the draws."
        );

    /// <summary>Current through the emitter at each switch position; null without steps.</summary>
    public static Chart? Current(LightEvaluation evaluation) =>
        Over(evaluation, "Current of the emitter", "Current", "A", Palette.Flow, c => c.CurrentA, "");

    /// <summary>Light against the brightest position, in stops; null without steps.</summary>
    public static Chart? Stops(LightEvaluation evaluation) =>
        Over(evaluation, "Light below the brightest", "Light", "stops", Palette.Light, c => c.Stops, "");

    /// <summary>Junction temperature at each switch position in every scene, with the limit; null without steps or heat.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="show">Unit of temperatures; null takes °C.</param>
    public static Chart? Junction(LightEvaluation evaluation, Show? show = null)
    {
        if (
            evaluation.Steps is not { Combinations.Count: > 0 } steps
            || evaluation.Heat is not { Scenes.Count: > 0 } heat
        )
        {
            return null;
        }

        var unit = TemperatureUnit.Of(show);
        var scenes = heat.TellingScenes.ToList();
        var middle = (scenes.Count - 1) / 2.0;
        var places = InOrder(steps).Select(c => c.Switches).ToList();
        var layers = new List<ChartLayer>();
        var most = steps.Combinations[0].JunctionHotC.Value + steps.Combinations[0].JunctionMarginK.Value;
        layers.Add(
            new LevelLayer($"most {ChartText.Fixed(unit.From(most), 0)} {unit.Sign}", Palette.Stop, unit.From(most))
        );
        for (var s = 0; s < scenes.Count; s++)
        {
            var scene = scenes[s];
            layers.Add(
                new DotLayer(
                    scene.Name,
                    TintOf(scene.Name),
                    [
                        .. scene
                            .Points.Select(p => (X: (double)places.IndexOf(p.Switches), Y: unit.From(p.JunctionC)))
                            .Where(p => p.X >= 0)
                            .OrderBy(p => p.X),
                    ],
                    Shift: (s - middle) * 0.24
                )
            );
        }

        return new("Junction temperature", Places(steps.Combinations.Count, places), new("Junction", unit.Sign), layers)
        {
            Says = heat.HasFan
                ? "In the usual air, in the hottest air, and with the fan stopped."
                : "In the usual air and in the hottest.",
        };
    }

    private static Tint TintOf(string scene) =>
        scene switch
        {
            "normal" => Palette.Flow,
            "hot" => Palette.Heat,
            _ => Palette.Ink,
        };

    private static Chart? Over(
        LightEvaluation evaluation,
        string title,
        string label,
        string unit,
        Tint tint,
        Func<Combination, Predicted> number,
        string says
    )
    {
        if (evaluation.Steps is not { Combinations.Count: > 0 } steps)
        {
            return null;
        }

        var order = InOrder(steps);
        var points = order.Select((c, i) => (X: (double)i, Y: number(c))).ToList();
        var axis = new Axis(label, unit) { Least = points.TrueForAll(p => p.Y.Low >= 0) ? 0 : null };
        return new(
            title,
            Places(steps.Combinations.Count, [.. order.Select(c => c.Switches)]),
            axis,
            [new DotLayer(label, tint, points, Joined: true)]
        )
        {
            Says = says,
        };
    }

    /// <summary>Brightest first, so that the steps can be seen as steps.</summary>
    private static IReadOnlyList<Combination> InOrder(StepsAnswer steps) =>
        [.. steps.Combinations.OrderByDescending(c => c.LuxAtSubject.Value)];

    private static Axis Places(int count, IReadOnlyList<string> places) =>
        new(count > 1 ? "switches, 1 = closed" : "", "") { Places = places };
}
