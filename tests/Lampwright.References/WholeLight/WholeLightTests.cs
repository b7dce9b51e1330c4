using System.Text.Json;
using System.Text.Json.Nodes;
using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Heat.Network;

namespace Lampwright.References.WholeLight;

/// <summary>
/// The herbarium light against a second solver (whole_light.py, ours: fsolve on the whole loop, random rays for the optics). Both stand
/// on the same published formulas; that a number agrees says that it was computed right, not that the formula is.
/// </summary>
public class WholeLightTests
{
    private static readonly OpenedLight Opened = OpenedLight.At(
        Path.Combine(Root(), "examples", "herbarium", "herbarium.toml")
    );

    [Fact]
    public async Task All_switch_positions_come_to_rest_where_a_second_solver_finds_them()
    {
        var light = Opened.Prepare();
        var answer = await SecondSolver.SolveAsync(Told(light));
        var ours = light.Nominal();
        foreach (var (scene, name) in ours.Heat!.Scenes.Take(2).Zip(["normal", "hot"]))
        {
            Assert.Equal(name, scene.Name);
            var points = answer.GetProperty("scenes").GetProperty(name).EnumerateArray().ToList();
            Assert.Equal(16, points.Count);
            foreach (var theirs in points)
            {
                Compare(ours, scene, theirs);
            }
        }
    }

    [Fact]
    public async Task Shares_of_the_light_are_those_of_random_rays()
    {
        var answer = await SecondSolver.SolveAsync(Told(Opened.Prepare()));
        var (shares, light) = (answer.GetProperty("shares"), Opened.Prepare().Nominal().Light!);

        // 400,000 rays: a standard error of 0.0008 and less on each share.
        Near("exit", shares.GetProperty("exit").GetDouble(), light.Efficiency.Value, 0.004);
        Near("reflector", shares.GetProperty("reflector").GetDouble(), light.ReflectorAbsorbs.Value, 0.004);
        Near("diffuser", shares.GetProperty("diffuser").GetDouble(), light.DiffuserAbsorbs.Value, 0.004);
    }

    private static JsonObject Told(PreparedEvaluation light)
    {
        var box = light.Box!;
        JsonObject Each(Func<LightNetwork, IReadOnlyList<double>, double> number)
        {
            JsonNode? In(int scene) =>
                JsonSerializer.SerializeToNode(
                    Enumerable
                        .Range(0, box.Light.Positions)
                        .Select(i => box.State(scene, true, "", i)!)
                        .Select(s => number(s.Light, s.Kelvin!))
                );
            return new() { ["normal"] = In(0), ["hot"] = In(1) };
        }

        var told = JsonSerializer.SerializeToNode(WholeLightInputs.Of(Opened.Loaded.Design))!.AsObject();
        told["sheet_w_per_k"] = Each((n, kelvin) => n.SeatW(kelvin) / (kelvin[n.Base] - kelvin[n.Room]));
        told["air_rise_k"] = Each((n, kelvin) => kelvin[n.CompartmentAir] - kelvin[n.Room]);
        return told;
    }

    private static void Compare(LightEvaluation ours, Evaluation.Answers.HeatScene scene, JsonElement theirs)
    {
        var switches = theirs.GetProperty("switches").GetString();
        var where = $"{scene.Name} {switches}";
        var (heat, ambient) = (scene.Points.Single(p => p.Switches == switches), scene.AmbientC.Value);
        if (scene.Name == "normal")
        {
            var step = ours.Steps!.Combinations.Single(c => c.Switches == switches);
            Within(where, "resistance_ohm", theirs, step.ResistanceOhm.Value, 5e-4);
            Within(where, "current_a", theirs, step.CurrentA.Value, 5e-4);
            Within(where, "voltage_v", theirs, step.VoltageV.Value, 5e-4);
            Within(where, "flux_lm", theirs, step.FluxLm.Value, 1e-3);
        }

        Within(where, "heat_w", theirs, heat.HeatW.Value, 4e-3);
        Within(where, "junction_rise_k", theirs, heat.JunctionC.Value - ambient, 1e-2);
        Within(where, "base_rise_k", theirs, heat.SinkC.Value - ambient, 1e-2);
        Within(where, "flow_m3_per_h", theirs, scene.FlowM3PerH.Value, 5e-3);
    }

    private static void Within(string where, string what, JsonElement theirs, double ours, double relative)
    {
        var expected = theirs.GetProperty(what).GetDouble();
        Near($"{where} {what}", expected, ours, relative * Math.Abs(expected));
    }

    private static void Near(string what, double expected, double ours, double tolerance) =>
        Assert.True(
            Math.Abs(ours - expected) <= tolerance,
            FormattableString.Invariant(
                $"{what}: second solver {expected:G7}, ours {ours:G7}, tolerance {tolerance:G3}"
            )
        );

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Lampwright.slnx")))
        {
            at = at.Parent;
        }

        return at?.FullName ?? throw new InvalidOperationException("Lampwright.slnx is in no folder above the tests.");
    }
}
