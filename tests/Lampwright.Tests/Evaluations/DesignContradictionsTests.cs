using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>What a first reader gets wrong and a silent program would build all the same.</summary>
public class DesignContradictionsTests
{
    private static readonly string Text = Repository.Text("examples/herbarium/herbarium.toml");
    private static readonly string Chosen =
        "chosen      = { chain = [\"0.13 ohm\", \"0.16 ohm\", \"0.24 ohm\", \"0.36 ohm\"] }";

    [Fact]
    public void The_examples_contradict_themselves_nowhere()
    {
        foreach (var name in new[] { "herbarium", "boatshed", "puppet-theatre" })
        {
            var light = Of(Repository.Text($"examples/{name}/{name}.toml"), name);
            Assert.DoesNotContain(
                light.Findings,
                f =>
                    f.Rule == EvaluationRules.Contradiction
                    || f.Rule == EvaluationRules.PartWithoutShape
                    || f.Rule == EvaluationRules.NotUsed
            );
        }
    }

    [Theory]
    [InlineData("[part.a]\nmirror = \"b\"\n[part.b]\nmirror = \"a\"\n", 2)]
    [InlineData("[part.a]\nmirror = \"a\"\n", 1)]
    [InlineData("[part.a]\nmirror = \"yoke\"\n[part.b]\nmirror = \"a\"\n", 1)]
    [InlineData("[part.a]\nmirror = \"funnel\"\n", 1)]
    [InlineData("[part.a]\nsheet = \"mild\"\n", 1)]
    [InlineData("[part.a]\nmirror = \"yoke\"\n", 0)]
    public void A_part_that_nothing_says_the_shape_of_is_told(string more, int times) =>
        Assert.Equal(times, Of(Text + "\n" + more).Findings.Count(f => f.Rule == EvaluationRules.PartWithoutShape));

    [Theory]
    [InlineData("[\"60 mm\", \"60 mm\", \"25 mm\"]", "[\"49 mm\", \"60 mm\", \"25 mm\"]", "fan.main")]
    [InlineData("switches    = 4", "switches    = 3", "steps.switches")]
    [InlineData("[\"24 V\", \"42 V\"]", "[\"42 V\", \"24 V\"]", "driver.main.window")]
    [InlineData("ambient_max = \"32 degC\"", "ambient_max = \"20 degC\"", "place.ambient_max")]
    [InlineData("part        = \"funnel\"", "part        = \"hood\"", "reflector.main.part")]
    public void Two_values_that_cannot_both_be_right_are_told_at_one_of_them(string before, string after, string path)
    {
        Assert.Contains(before, Text, StringComparison.Ordinal);
        var told = Of(Text.Replace(before, after, StringComparison.Ordinal))
            .Findings.Where(f => f.Rule == EvaluationRules.Contradiction);
        Assert.Equal(path, Assert.Single(told).Path);
    }

    [Theory]
    [InlineData("49.9 mm", false)]
    [InlineData("50 mm", true)]
    public void A_fan_as_large_as_the_square_of_its_holes_is_believed(string width, bool believed) =>
        Assert.Equal(
            believed,
            Of(
                Text.Replace(
                    "[\"60 mm\", \"60 mm\", \"25 mm\"]",
                    $"[\"{width}\", \"60 mm\", \"25 mm\"]",
                    StringComparison.Ordinal
                )
            )
                .Findings.All(f => f.Rule != EvaluationRules.Contradiction)
        );

    [Theory]
    [InlineData("10.1 mm", true)]
    [InlineData("10 mm", false)]
    public void A_tube_of_more_wall_than_width_is_told(string wall, bool told) =>
        Assert.Equal(
            told,
            Of(Text + $"\n[arm.a]\nlength = \"1 m\"\nwidth = \"20 mm\"\nheight = \"20 mm\"\nwall = \"{wall}\"\n")
                .Findings.Any(f => f.Rule == EvaluationRules.Contradiction && f.Path == "arm.a.wall")
        );

    [Fact]
    public void A_mirror_with_a_shape_of_its_own_is_told() =>
        Assert.Contains(
            Of(Text + "\n[part.a]\nmirror = \"yoke\"\nface = { inside = [\"50 mm\", \"50 mm\"] }\n").Findings,
            f => f.Rule == EvaluationRules.Contradiction && f.Path == "part.a.mirror"
        );

    [Theory]
    [InlineData("blanks = \"separate\"", "blanks = \"joined\"", "part.funnel.panels.blanks")]
    [InlineData(
        "mass         = \"24 g\"\n",
        "mass         = \"24 g\"\nholes.cutout = { shape = \"round 30 mm\" }\n",
        "item.inlet.cutout"
    )]
    public void What_is_given_and_not_used_is_told(string before, string after, string path)
    {
        Assert.Contains(before, Text, StringComparison.Ordinal);
        Assert.Contains(
            Of(Text.Replace(before, after, StringComparison.Ordinal)).Findings,
            f => f.Rule == EvaluationRules.NotUsed && f.Path == path
        );
    }

    [Fact]
    public void A_fan_without_a_curve_is_told()
    {
        var at = Text.IndexOf("curve ", StringComparison.Ordinal);
        var end = Text.IndexOf('\n', at);
        Assert.Contains(Of(Text.Remove(at, end - at)).Findings, f => f.Rule == EvaluationRules.NotUsed);
    }

    [Fact]
    public void The_drawer_is_picked_from_and_an_empty_one_is_told()
    {
        var asked = Text.Replace("= \"E24\"", "= \"drawer\"", StringComparison.Ordinal)
            .Replace(Chosen, "", StringComparison.Ordinal);
        Assert.Contains(Of(asked).Findings, f => f.Rule == EvaluationRules.Contradiction && f.Path == "steps.stock");

        double[] drawer = [0.11, 0.17, 0.23, 0.41];
        var light = Of(asked + "\n[drawer]\nresistors = [\"0.11 ohm\", \"0.17 ohm\", \"0.23 ohm\", \"0.41 ohm\"]\n");
        Assert.Equal("first search", light.Steps!.ChosenBy);
        Assert.All(light.Steps.Parts.Skip(1), r => Assert.Contains(r.ResistanceOhm, drawer));
        Assert.DoesNotContain(light.Findings, f => f.Rule == EvaluationRules.Contradiction);
    }

    private static LightEvaluation Of(string text, string example = "herbarium")
    {
        string Beside(string name) => Repository.Text($"examples/{example}/{name}");
        return OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare().Nominal();
    }
}
