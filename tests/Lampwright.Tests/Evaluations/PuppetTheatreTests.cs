using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Readings;
using Lampwright.Steps;
using Lampwright.Tables;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>What is peculiar to the puppet theatre's light: resistors by the first search, steps in percent, outward lips, a phone that is off.</summary>
public class PuppetTheatreTests
{
    private static readonly string Text = Repository.Text("examples/puppet-theatre/puppet-theatre.toml");
    private static readonly LightEvaluation Light = Of(Text);

    [Fact]
    public void The_first_search_meets_every_wanted_step_with_values_that_shops_have()
    {
        Assert.Equal("first search", Light.Steps!.ChosenBy);
        Assert.All(
            Light.Steps.Parts.Skip(1),
            p => Assert.Contains(ESeries.Between("E24", 0.01, 100), v => Math.Abs(v - p.ResistanceOhm) < 1e-9)
        );
        Assert.DoesNotContain(Light.Findings, f => f.Rule == StepsRules.StepMissed);
    }

    [Fact]
    public void Lips_that_turn_outward_are_not_in_the_airs_way()
    {
        var lip = "on     = \"left.far\"\nheight = { outside = \"16 mm\" }";
        Assert.Contains(lip, Text, StringComparison.Ordinal);
        var wider = Of(
            Text.Replace(lip, lip.Replace("16 mm", "26 mm", StringComparison.Ordinal), StringComparison.Ordinal)
        );
        Assert.Equal(Beside(Light), Beside(wider));
        static string Beside(LightEvaluation light) => light.Findings.Single(f => f.Code == "HEA017").Message;
    }

    [Fact]
    public void A_phone_that_shows_too_little_at_every_step_is_told_as_one_cause()
    {
        var opened = OpenedLight.At(Path.Combine(Repository.Root, "examples/puppet-theatre/puppet-theatre.toml"));
        var banded = opened.Prepare().WithBands(64);
        Assert.Contains(banded.Findings, f => f.Rule == ReadingsRules.OneSided);
    }

    private static LightEvaluation Of(string text) =>
        OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare().Nominal();

    private static string Beside(string name) => Repository.Text("examples/puppet-theatre/" + name);
}
