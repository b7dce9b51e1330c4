using System.Globalization;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Coupling;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Heat.Time;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>Steps and heat on one road: one number for each temperature, a rest that both agree on, no heat lost between them.</summary>
public sealed class OneNumberTests
{
    private static readonly string Text = Repository.Text("examples/herbarium/herbarium.toml");

    public static TheoryData<int> Seeds => new(Enumerable.Range(1, 12));

    [Fact]
    public void Every_temperature_has_one_number_and_one_band()
    {
        var heat = Light(Text).WithBands(64).Heat!;
        foreach (var scene in heat.Scenes)
        {
            var box = heat.Box!.Scenes.Single(s => s.Name == scene.Name);
            var full = scene.Points.MaxBy(p => p.HeatW.Value)!;
            Predicted At(string node) => box.Nodes.Single(n => n.Name == node).TemperatureC;
            Assert.Equal(full.JunctionC, At("junction"));
            Assert.Equal(full.CaseC, At("case"));
            Assert.Equal(full.SinkC, At("base"));
            Assert.Equal(full.DriverC, At("driver"));
            Assert.Equal(full.CompartmentC, At("compartment air"));
            Assert.True(full.DriverC.Low < full.DriverC.Value && full.DriverC.Value < full.DriverC.High);
        }
    }

    // The number is not only written into both places: the network, solved by itself, comes to it.
    [Fact]
    public void The_network_of_every_position_agrees_with_the_scene()
    {
        var light = Light(Text);
        var (box, heat) = (light.Box!, light.Nominal().Heat!);
        for (var s = 0; s < Scene.All.Count; s++)
        {
            for (var i = 0; i < box.Light.Positions; i++)
            {
                var state = box.State(s, Scene.All[s].FanRuns, "", i)!;
                var (n, kelvin) = (state.Light, state.Kelvin!);
                var point = heat.Scenes[s].Points.Single(p => p.Switches == box.Light.Inputs.Network.Switches(i));
                Assert.Equal(point.JunctionC.Value, kelvin[n.Junction] - 273.15, 0.02);
                Assert.Equal(point.SinkC.Value, kelvin[n.Base] - 273.15, 0.02);
                Assert.Equal(point.DriverC.Value, kelvin[n.Driver] - 273.15, 0.02);
                Assert.Equal(point.CompartmentC.Value, kelvin[n.CompartmentAir] - 273.15, 0.02);
            }
        }
    }

    [Fact]
    public void Steps_derates_and_drifts_at_the_temperatures_that_the_network_finds()
    {
        var light = Light(Text);
        var (answer, box) = (light.Nominal(), light.Box!);
        var hottest = answer.Steps!.Parts.Select(_ => double.NegativeInfinity).ToArray();
        var air = new List<double>();
        for (var i = 0; i < box.Light.Positions; i++)
        {
            var state = box.State(Scene.AtHighestAmbient, true, "", i)!;
            air.Add(state.Kelvin![state.Light.CompartmentAir]);
            for (var k = 0; k < hottest.Length; k++)
            {
                hottest[k] = Math.Max(hottest[k], state.Kelvin![state.Light.Resistors[k]] - 273.15);
            }
        }

        for (var k = 0; k < hottest.Length; k++)
        {
            // The findings take the hottest air and the greatest power, which need not meet at one position.
            Assert.InRange(
                answer.Steps.Parts[k].HottestC.Value,
                hottest[k] - 0.05,
                hottest[k] + air.Max() - air.Min() + 0.05
            );
        }

        // A compartment that is hotter by its driver makes the chain drift: less current at a positive coefficient.
        var hotter = Light(
                Text.Replace(
                        "efficiency       = \"0.89 ± 0.02\"",
                        "efficiency       = \"0.75\"",
                        StringComparison.Ordinal
                    )
                    .Replace("tempco = \"100 ppm/K\"", "tempco = \"1000 ppm/K ± 1 ppm/K\"", StringComparison.Ordinal)
            )
            .Nominal();
        var cooler = Light(
                Text.Replace("tempco = \"100 ppm/K\"", "tempco = \"1000 ppm/K ± 1 ppm/K\"", StringComparison.Ordinal)
            )
            .Nominal();
        Assert.True(
            hotter.Steps!.Combinations[0].CurrentA.Value < 0.995 * cooler.Steps!.Combinations[0].CurrentA.Value
        );
    }

    // Lights drawn at random: what the driver takes in leaves as light and as heat, and every state of the box keeps nothing.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_heat_is_lost_between_steps_and_heat(int seed)
    {
        var chance = new Random(seed);
        double Between(double a, double b) => a + ((b - a) * chance.NextDouble());
        string Put(string text, string before, FormattableString after)
        {
            Assert.Contains(before, text, StringComparison.Ordinal);
            return text.Replace(before, after.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        }

        var text = Put(Text, "\"0.89 ± 0.02\"", $"\"{Between(0.6, 0.95):F3}\"");
        text = Put(text, "\"21 degC ± 3 K\"", $"\"{Between(-5, 32):F1} degC ± 3 K\"");
        text = Put(text, "\"32 degC\"", $"\"{Between(33, 45):F1} degC\"");
        text = Put(text, "\"240 m\"", $"\"{Between(0, 3000):F0} m\"");
        text = Put(text, "tempco = \"100 ppm/K\"", $"tempco = \"{Between(-900, 1500):F0} ppm/K ± 5 ppm/K\"");
        text = Put(text, "rating = \"3 W\"", $"rating = \"{Between(0.4, 5):F2} W\"");
        text = Put(text, "\"10 V\"", $"\"{Between(6, 12):F1} V\"");
        var light = Light(text);
        Assert.DoesNotContain(light.Nominal().Findings, f => f.Rule == BoxRules.NoCommonRest);
        var box = light.Box!;
        Assert.InRange(box.Light.Rounds, 1, 5);
        for (var s = 0; s < Scene.All.Count; s++)
        {
            for (var i = 0; i < box.Light.Positions; i++)
            {
                var state = box.State(s, Scene.All[s].FanRuns, "", i)!;
                var rest = state.Solve.Result!;
                Assert.InRange(rest.BalanceError, -1e-6, 1e-6);

                var heat = box.HeatAtPosition(s, i);
                var emitter = box.At(s, i, PositionRow.EmitterW);
                var all = emitter + heat.DriverW + heat.Resistors.Sum(r => r.HeatW);
                var absorbed = heat.ReflectorW + heat.DiffuserW;
                var outside = emitter - heat.HeatW - absorbed;
                Assert.InRange(outside, 0, 0.6 * emitter);

                // The network's own account: what is set free in it is all but the light that leaves.
                Assert.Equal(all - outside, rest.SourceW, 1e-5 * all);
                Assert.Equal(rest.SourceW, rest.LeavesW, 1e-6 * all);
            }
        }
    }

    private static PreparedEvaluation Light(string text) =>
        OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare();

    private static string Beside(string name) => Repository.Text("examples/herbarium/" + name);
}
