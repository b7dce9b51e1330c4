using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>Rules that only the whole light can break: raised by one change of the herbarium light, and not raised just inside.</summary>
public class EvaluationRulesTests
{
    private static readonly string Text = Repository.Text("examples/herbarium/herbarium.toml");

    [Fact]
    public void An_emitter_without_a_face_gives_no_light_to_follow()
    {
        Assert.Contains(EvaluationRules.NoFace, Raised("face             = \"22 mm\"\n", ""));
        Assert.DoesNotContain(EvaluationRules.NoFace, Raised("= \"22 mm\"", "= [\"20 mm\", \"20 mm\"]"));
    }

    [Fact]
    public void A_hole_that_nothing_gives_a_shape_to_is_told()
    {
        Assert.Contains(EvaluationRules.HoleWithoutShape, Raised("shape = \"rectangle 46 mm x 46 mm\"\n", ""));
        Assert.DoesNotContain(EvaluationRules.HoleWithoutShape, Raised("rectangle 46 mm x 46 mm", "round 46 mm"));
    }

    [Fact]
    public void A_sheet_that_no_table_names_is_told()
    {
        Assert.Contains(
            EvaluationRules.UnknownName,
            Raised(
                "[part.hood]                               # carries everything; its face looks up, its walls go down round the funnel\nsheet = \"mild\"",
                "[part.hood]\nsheet = \"mold\""
            )
        );
        Assert.DoesNotContain(EvaluationRules.UnknownName, Raised("\"21 degC ± 3 K\"", "\"22 degC ± 3 K\""));
    }

    [Fact]
    public void A_fan_whose_stop_overheats_the_emitter_needs_a_cut_out()
    {
        Assert.Contains(EvaluationRules.NeedsCutOut, Raised("= \"120 degC\"", "= \"85 degC\""));
        Assert.DoesNotContain(EvaluationRules.NeedsCutOut, Raised("= \"120 degC\"", "= \"200 degC\""));
    }

    [Fact]
    public void A_diffuser_at_its_limit_stops_and_just_below_does_not()
    {
        var front = Light("= \"21 degC ± 3 K\"", "= \"21 degC\"")
            .Heat!.Scenes.Where(s => s.Name != "fan stopped")
            .Max(s => s.Points.Max(p => p.FrontC.Value));
        Assert.Contains(EvaluationRules.DiffuserTooHot, Raised("temperature_max = \"75 degC\"", Limit(front - 1)));
        Assert.DoesNotContain(
            EvaluationRules.DiffuserTooHot,
            Raised("temperature_max = \"75 degC\"", Limit(front + 20))
        );
        static string Limit(double celsius) => FormattableString.Invariant($"temperature_max = \"{celsius:F2} degC\"");
    }

    [Fact]
    public void A_tilt_without_its_washer_is_not_judged()
    {
        Assert.Contains(EvaluationRules.TiltNotComputed, Raised("washer   = [\"6.6 mm\", \"24 mm\"]\n", ""));
        Assert.DoesNotContain(
            EvaluationRules.TiltNotComputed,
            Raised("[\"6.6 mm\", \"24 mm\"]", "[\"6.6 mm\", \"20 mm\"]")
        );
    }

    [Fact]
    public void A_junction_that_finds_no_rest_is_no_answer()
    {
        // Behind a thousand kelvin per watt the junction runs away; behind two it is only warm.
        var runaway = Light("\"0.28 K/W ± 15 %\"", "\"1000 K/W\"");
        Assert.Contains(EvaluationRules.NotSettled, runaway.Findings.Select(f => f.Rule));
        Assert.Null(runaway.Steps);
        Assert.Null(runaway.Heat);
        Assert.Null(runaway.Light);
        Assert.NotNull(runaway.Metal);
        Assert.DoesNotContain(EvaluationRules.NotSettled, Raised("\"0.28 K/W ± 15 %\"", "\"2 K/W\""));
    }

    private static IEnumerable<Rule> Raised(string before, string after) =>
        Light(before, after).Findings.Select(f => f.Rule);

    private static LightEvaluation Light(string before, string after)
    {
        Assert.Contains(before, Text, StringComparison.Ordinal);
        return Of(Text.Replace(before, after, StringComparison.Ordinal));
    }

    private static LightEvaluation Of(string text) =>
        OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare().Nominal();

    private static string Beside(string name) => Repository.Text("examples/herbarium/" + name);
}
