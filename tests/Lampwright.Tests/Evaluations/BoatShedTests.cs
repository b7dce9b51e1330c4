using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Lampwright.Heat;
using Lampwright.Readings;
using Lampwright.Steps;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>What is peculiar to the boat shed light: a battery, no fan, mirrored cheeks, a stand.</summary>
public class BoatShedTests
{
    private static readonly string Text = Repository.Text("examples/boatshed/boatshed.toml");
    private static readonly LightEvaluation Light = Of(Text);

    [Fact]
    public void A_mirrored_part_without_a_sheet_of_its_own_is_cut_from_that_of_its_original()
    {
        var left = Light.Metal!.Parts.Single(p => p.Name == "cheek_l");
        var right = Light.Metal.Parts.Single(p => p.Name == "cheek_r");
        Assert.Equal(left.Sheet, right.Sheet);
        Assert.Equal(left.Blank.Holes.Count, right.Blank.Holes.Count);
        Assert.Equal(left.BlankWidthMm.Value, right.BlankWidthMm.Value, 1e-9);
        Assert.NotEqual(left.Blank.Holes[0].Centre.X, right.Blank.Holes[0].Centre.X, 1e-6);
    }

    [Theory]
    [InlineData("no")]
    [InlineData("unknown")]
    public void A_battery_does_not_lift_the_stop_of_an_output_that_is_not_isolated(string isolated)
    {
        var other = Changed("isolated   = \"yes\"", $"isolated   = \"{isolated}\"");
        Assert.Contains(StepsRules.OutputNotIsolated, other.Findings.Select(f => f.Rule));
        Assert.True(other.HasStop);
    }

    [Fact]
    public void Nothing_is_said_of_a_fan_where_there_is_none()
    {
        Assert.DoesNotContain(Light.Heat!.Scenes, s => s.FanRuns);
        Assert.DoesNotContain(Light.Heat.Staircase, s => s.Method.Contains("fan", StringComparison.Ordinal));
    }

    [Fact]
    public void Fins_that_lie_level_are_told_in_degrees()
    {
        // The light shines at the ceiling, and with it the channels lie down.
        var text = Text;
        foreach (var side in new[] { "l", "r" })
        {
            var joint =
                $"stack = [\"yoke.pivot_{side}\", \"cheek_{side}.pivot\"]\nsides = [\"inside\", \"outside\"]\nturn  = ";
            Assert.Contains(joint + "\"0 deg\"", text, StringComparison.Ordinal);
            text = text.Replace(
                joint + "\"0 deg\"",
                joint + (side == "l" ? "\"90 deg\"" : "\"-90 deg\""),
                StringComparison.Ordinal
            );
        }

        var told = Of(text).Findings.Where(f => f.Rule == HeatRules.OutsideRange);
        Assert.Contains("90° off the upright", Assert.Single(told).Message, StringComparison.Ordinal);
        Assert.DoesNotContain(HeatRules.OutsideRange, Light.Findings.Select(f => f.Rule));
    }

    [Fact]
    public void Without_bands_no_reading_lies_outside_of_one()
    {
        var opened = OpenedLight.At(Path.Combine(Repository.Root, "examples/boatshed/boatshed.toml"));
        var rules = opened.Prepare().Nominal().Findings.Select(f => f.Rule).ToList();
        Assert.DoesNotContain(ReadingsRules.OutsideBand, rules);
        Assert.DoesNotContain(ReadingsRules.FarOutsideBand, rules);
        Assert.DoesNotContain(ReadingsRules.OneSided, rules);
    }

    private static LightEvaluation Changed(string before, string after)
    {
        Assert.Contains(before, Text, StringComparison.Ordinal);
        return Of(Text.Replace(before, after, StringComparison.Ordinal));
    }

    private static LightEvaluation Of(string text) =>
        OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare().Nominal();

    private static string Beside(string name) => Repository.Text("examples/boatshed/" + name);
}
