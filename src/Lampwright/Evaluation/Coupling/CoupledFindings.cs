using System.Globalization;
using Lampwright.Evaluation.Boxes;
using Lampwright.Findings;
using Lampwright.Heat;
using Lampwright.Heat.Time;
using Lampwright.Light;
using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>What steps, heat and light have to say once current, light and heat have come to rest at nominal values.</summary>
internal static class CoupledFindings
{
    private static readonly double ZeroC = 273.15;

    // Hands touch the front to aim it: a few seconds.
    private static readonly double TouchS = 5;

    // From a quarter on the contact's factor of two moves the sink by more than all other errors of it (common practice).
    private static readonly double MuchBySheet = 0.25;

    /// <summary>The sink at the brightest position in the scene normal, solved exactly; null without a computed sink.</summary>
    public static SinkResult? Working(CoupledLight light, double[] row) => SinkAt(light, row, Scene.Normal);

    /// <summary>Whether the loop of voltage, flux and heat came to rest at every position in every scene.</summary>
    /// <param name="residualK">Largest movement of a junction in the last pass, K.</param>
    public static bool IsSettled(double residualK) => residualK <= 1e-3;

    /// <summary>All findings; of a loop that found no rest only that, since every other would judge its last guess.</summary>
    public static IEnumerable<Finding> Of(
        CoupledLight light,
        double[] row,
        SinkResult? working,
        AirStudy air,
        double residualK
    )
    {
        var inputs = light.Inputs;
        if (!IsSettled(residualK))
        {
            return
            [
                .. inputs.Told.Findings,
                EvaluationRules.NotSettled.At(
                    inputs.Parts.SinkPath,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The junction comes to no rest: it still moves by {residualK:G3} K from pass to pass, or runs away without end."
                    )
                ),
            ];
        }

        if (light.Trouble is { } trouble)
        {
            var stood = double.IsNaN(trouble.MovedK)
                ? $"The network of the light finds no rest at {trouble.Where}."
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"After the last of twelve rounds the {trouble.Where} still moved by {trouble.MovedK:G2} K."
                );
            return
            [
                .. inputs.Told.Findings,
                BoxRules.NoCommonRest.At(inputs.Parts.SinkPath, stood, scene: trouble.Scene),
            ];
        }

        return Steps(light, row)
            .Concat(Heat(light, row, working))
            .Concat(AirFindings.Of(light, row, air))
            .Concat(
                inputs.Light is { } model
                    ? LightFindings.Of(
                        model,
                        model.Result(model.Spec.Nominal),
                        row[light.Place(Scene.Normal, light.Brightest) + PositionRow.FluxLm],
                        Ripple(inputs)
                    )
                    : []
            );
    }

    private static IEnumerable<Finding> Steps(CoupledLight light, double[] row)
    {
        var inputs = light.Inputs;
        double Hottest(int scene, int number) =>
            Enumerable.Range(0, light.Positions).Max(i => row[light.Place(scene, i) + number]);
        var warm = inputs.StepsSpec with
        {
            AirK = Hottest(Scene.AtHighestAmbient, PositionRow.CompartmentC) + ZeroC,
            ColdJunctionK = inputs.Design.Place.Ambient.Nominal,
            HotJunctionK = Hottest(Scene.AtHighestAmbient, PositionRow.JunctionC) + ZeroC,
        };
        foreach (var finding in StepsStation.Warm(warm, inputs.Told).Findings)
        {
            yield return finding;
        }

        for (var k = 0; k < light.Wanted.Count; k++)
        {
            var got = row[light.Place(Scene.Normal, light.MetBy[k]) + PositionRow.CurrentA];
            if (StepsRules.Missed("steps.targets", row[light.WantedPlace(k)], got) is { } missed)
            {
                yield return missed;
            }
        }
    }

    private static IEnumerable<Finding> Heat(CoupledLight light, double[] row, SinkResult? working)
    {
        var (parts, network) = (light.Inputs.Parts, light.Inputs.Network);
        if (!light.HasSink)
        {
            yield break;
        }

        if (working is not null)
        {
            var fan = "fan." + (parts.Fan?.Name ?? "main");
            foreach (var f in HeatFindings.Working(working, parts.SinkPath, fan, Scene.All[Scene.Normal].Name))
            {
                yield return f;
            }
        }

        foreach (var s in new[] { Scene.Normal, Scene.AtHighestAmbient })
        {
            var place = light.Place(s, light.Brightest);
            var scene = Scene.All[s].Name;
            var limit = parts.Emitter.JunctionMax?.Nominal ?? CoupledLight.DefaultJunctionMaxK;
            var where = $"position {network.Switches(light.Brightest)}";
            Finding?[] found =
            [
                HeatFindings.Junction(
                    row[place + PositionRow.JunctionC] + ZeroC,
                    limit,
                    parts.EmitterPath + ".junction_max",
                    scene,
                    where
                ),
                HeatFindings.Driver(
                    row[place + PositionRow.DriverC] + ZeroC,
                    parts.Driver?.CaseMax?.Nominal,
                    parts.DriverPath + ".case_max",
                    scene
                ),
                Diffuser(light, row[place + PositionRow.FrontC], scene),
            ];
            foreach (var f in found.OfType<Finding>())
            {
                yield return f;
            }
        }

        // Hands do not know that the fan has stopped.
        for (var s = 0; s < Scene.All.Count; s++)
        {
            foreach (var f in Touched(light, row, s).OfType<Finding>())
            {
                yield return f;
            }
        }

        if (FanStops(light, row) is { } stopped)
        {
            yield return stopped;
        }

        var most = Enumerable.Range(0, Scene.All.Count).MaxBy(i => light.SeatShare(i, light.Brightest));
        if (BySheet(parts.SinkPath, light.SeatShare(most, light.Brightest), Scene.All[most].Name) is { } guess)
        {
            yield return guess;
        }
    }

    /// <summary>What is said of heat that goes into the sheet under a sink; null where it is little.</summary>
    /// <param name="path">Path of the sink.</param>
    /// <param name="share">Share of the emitter's heat.</param>
    /// <param name="scene">Name of the scene.</param>
    public static Finding? BySheet(string path, double share, string scene) =>
        share < MuchBySheet
            ? null
            : BoxRules.ContactIsGuess.At(
                path,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{100 * share:0} % of the emitter's heat goes into the sheet that the sink is screwed to; the {SheetPanelsMap.SeatWPerM2K:0} W/(m²·K) between them are a guess, the band holds half to twice that."
                ),
                string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %"),
                string.Create(CultureInfo.InvariantCulture, $"{100 * MuchBySheet:0} %"),
                scene
            );

    private static Finding?[] Touched(CoupledLight light, double[] row, int s)
    {
        var parts = light.Inputs.Parts;
        var (place, scene) = (light.Place(s, light.Brightest), Scene.All[s].Name);
        Finding? At(int number, string path) =>
            HeatFindings.Surface(row[place + number] + ZeroC, TouchMaterial.Metal, TouchS, path, scene);

        // A sink whose air passes openings of parts stands behind these; any other can be touched.
        var housed = parts.Fan is { Air.Count: > 1 };
        return
        [
            At(PositionRow.FrontC, parts.Reflector is { } r ? "reflector." + r.Name : parts.SinkPath),
            housed ? null : At(PositionRow.SinkC, parts.SinkPath),
        ];
    }

    private static Finding? FanStops(CoupledLight light, double[] row)
    {
        var emitter = light.Inputs.Parts.Emitter;
        // The scene is at the usual ambient; a fan may stop on the hottest day as well, and the rise hardly changes with it.
        var hotter =
            row[light.ScenePlace(Scene.AtHighestAmbient, SceneRow.AmbientC)]
            - row[light.ScenePlace(Scene.FanStopped, SceneRow.AmbientC)];
        var hot = row[light.Place(Scene.FanStopped, light.Brightest) + PositionRow.JunctionC] + Math.Max(0, hotter);
        var limit = (emitter.JunctionMax?.Nominal ?? CoupledLight.DefaultJunctionMaxK) - ZeroC;
        return light.Inputs.Parts.Fan is not null && hot > limit
            ? EvaluationRules.NeedsCutOut.At(
                "fan." + light.Inputs.Parts.Fan.Name,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"With the fan stopped on the hottest day the junction would come to {hot:0} °C at position {light.Inputs.Network.Switches(light.Brightest)}; its limit is {limit:0} °C."
                ),
                string.Create(CultureInfo.InvariantCulture, $"{hot:0} °C"),
                string.Create(CultureInfo.InvariantCulture, $"{limit:0} °C"),
                Scene.All[Scene.FanStopped].Name
            )
            : null;
    }

    private static Finding? Diffuser(CoupledLight light, double frontC, string scene) =>
        light.Inputs.Parts.Diffuser is { TemperatureMax: { } most } d && frontC > most.Nominal - ZeroC
            ? EvaluationRules.DiffuserTooHot.At(
                $"diffuser.{d.Name}.temperature_max",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The front comes to {frontC:0} °C; the diffuser bears {most.Nominal - ZeroC:0} °C."
                ),
                string.Create(CultureInfo.InvariantCulture, $"{frontC:0} °C"),
                string.Create(CultureInfo.InvariantCulture, $"{most.Nominal - ZeroC:0} °C"),
                scene
            )
            : null;

    private static SinkResult? SinkAt(CoupledLight light, double[] row, int scene)
    {
        var heat = row[light.Place(scene, light.Brightest) + PositionRow.HeatW];
        var ambient = row[light.ScenePlace(scene, SceneRow.AmbientC)] + ZeroC;
        return light.Inputs.Sink is { } sink && heat > 0
            ? sink.At(sink.Nominal, Math.Clamp(ambient, 200, 400), Scene.All[scene].FanRuns, heat)
            : null;
    }

    private static RippleSpec? Ripple(CoupledInputs inputs) =>
        inputs.Parts.Driver is { RippleDepth: { } depth, RippleFrequency: { } frequency } && frequency.Nominal > 0
            ? new(Math.Clamp(depth.Nominal, 0, 1), frequency.Nominal)
            : null;
}
