using Lampwright.Evaluation.Answers;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>What limits and what one change helps, held against the same change written into the file.</summary>
public class HeatAdviceTests
{
    private static readonly string Text = Repository.Text("examples/herbarium/herbarium.toml");
    private static readonly HeatAnswer Nominal = Heat(Text);
    private static readonly HeatAdvice Advice = Nominal.Advice.Value!;

    [Theory]
    [InlineData("fan.main.run_at", "run_at      = \"10 V\"", "run_at      = \"11 V\"")]
    [InlineData("sink.main.fins.count", "count = 16, height", "count = 18, height")]
    [InlineData("sink.main.fins.height", "height = \"48 mm\"", "height = \"52.8 mm\"")]
    [InlineData("interface.main.thickness", "\"60 um ± 30 um\"", "\"54 um ± 27 um\"")]
    [InlineData("interface.main.conductivity", "\"3 W/(m*K) ± 15 %\"", "\"3.3 W/(m*K) ± 15 %\"")]
    public void A_step_does_what_the_same_step_in_the_file_does(string path, string from, string to)
    {
        Assert.Contains(from, Text, StringComparison.Ordinal);
        var help = Assert.Single(Advice.Helps, h => h.Path == path);
        var then = Heat(Text.Replace(from, to, StringComparison.Ordinal));

        Assert.Equal(Junction(then) - Junction(Nominal), help.JunctionK, 0.02);
        Assert.True(help.JunctionK < 0);
    }

    [Fact]
    public void The_nearest_limit_comes_first_and_its_numbers_are_those_of_the_scene()
    {
        Assert.Equal(Advice.Limits.Min(l => l.MarginK), Advice.Nearest.MarginK);
        var junction = Assert.Single(Advice.Limits, l => l.What == "junction");
        Assert.Equal(Junction(Nominal), junction.ValueC, 1e-6);
        Assert.Equal("hot", junction.Scene);
    }

    [Fact]
    public void Helps_are_ranked_by_the_nearest_limit_and_cost_something()
    {
        var ranks = Advice.Helps.Select(h => Math.Round(h.LimitK, 1)).ToList();
        Assert.Equal(ranks.Order(), ranks);
        Assert.All(Advice.Helps, h => Assert.NotEmpty(h.Cost));

        var dimmer = Assert.Single(Advice.Helps, h => h.Path == "steps.switches");
        Assert.True(dimmer.LightStops < -0.1 && dimmer.JunctionK < 0);
    }

    [Fact]
    public void A_faster_fan_is_louder_by_the_fan_laws_and_more_metal_is_heavier()
    {
        var fan = Assert.Single(Advice.Helps, h => h.Path == "fan.main.run_at");
        Assert.Equal(50 * Math.Log10(11.0 / 10), fan.NoiseDb, 0.5);
        var fins = Assert.Single(Advice.Helps, h => h.Path == "sink.main.fins.count");

        // Two fins of 48 × 1 × 100 mm in aluminium of 2690 kg/m³.
        Assert.Equal(2 * 0.048 * 0.001 * 0.1 * 2690, fins.MassKg, 1e-4);
        Assert.Equal(0, fan.MassKg);
    }

    [Fact]
    public void A_black_sink_is_not_told_to_be_painted_and_a_bare_one_in_still_air_is()
    {
        Assert.DoesNotContain(Advice.Helps, h => h.Path == "sink.main.emissivity");
        var bare = Heat(
            Text.Replace("\"0.80 ± 0.08\"               # black", "\"0.1 ± 0.05\"  # bare", StringComparison.Ordinal)
        );
        var paint = Assert.Single(bare.Advice.Value!.Helps, h => h.Path == "sink.main.emissivity");
        Assert.True(paint.JunctionK < -0.1);
    }

    [Theory]
    [InlineData("herbarium", "count = 16", "count = 16", "two fins more: 16 to 18")]
    [InlineData("puppet-theatre", "count = 14", "count = 14", "")]
    [InlineData("boatshed", "count = 14", "count = 14", "")]
    [InlineData("boatshed", "count = 14", "count = 8", "two fins more: 8 to 10")]
    [InlineData("boatshed", "count = 14", "count = 22", "two fins fewer: 22 to 20")]
    public void No_advice_makes_the_nearest_limit_or_the_junction_hotter(
        string light,
        string from,
        string to,
        string fins
    )
    {
        string Near(string name) => Repository.Text($"examples/{light}/{name}");
        var text = Near(light + ".toml");
        Assert.Contains(from, text, StringComparison.Ordinal);
        var parsed = DesignLoader.Parse(text.Replace(from, to, StringComparison.Ordinal), "light.toml", Near);
        var helps = OpenedLight.Of(parsed, Near).Prepare().Nominal().Heat!.Advice.Value!.Helps;

        Assert.NotEmpty(helps);
        Assert.All(
            helps,
            h =>
            {
                Assert.True(Math.Max(h.LimitK, h.JunctionK) < 0.05, $"{h.Step}: {h.LimitK}, {h.JunctionK} K");
                Assert.True(Math.Min(h.LimitK, h.JunctionK) < -0.05, $"{h.Step}: {h.LimitK}, {h.JunctionK} K");
            }
        );
        var told = helps.Where(h => h.Path.EndsWith(".fins.count", StringComparison.Ordinal)).Select(h => h.Step);
        Assert.Equal(fins, string.Join("; ", told));
    }

    private static double Junction(HeatAnswer heat) => heat.Scenes[1].Points.Max(p => p.JunctionC.Value);

    private static HeatAnswer Heat(string text) =>
        OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare().Nominal().Heat!;

    private static string Beside(string name) => Repository.Text("examples/herbarium/" + name);
}
