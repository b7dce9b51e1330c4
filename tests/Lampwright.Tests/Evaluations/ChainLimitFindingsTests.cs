using System.Globalization;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>What is said of limits in the worst corner, of short drawers and of values too small beside their contact.</summary>
public sealed class ChainLimitFindingsTests
{
    private static readonly string Text = Repository.Text("examples/herbarium/herbarium.toml");
    private static readonly string Chosen = "chain = [\"0.13 ohm\", \"0.16 ohm\", \"0.24 ohm\", \"0.36 ohm\"]";

    [Fact]
    public void A_smaller_value_that_is_refused_is_told_with_what_its_worn_contact_would_make_of_it()
    {
        var (light, chain) = Of(Text);
        var told = Assert.Single(light.Findings, f => f.Rule == ChainRules.SmallerRefused);
        Assert.Equal("steps.part.least", told.Path);
        Assert.Equal("12 mohm", told.Limit);
        Assert.Matches(@"worst error from \d+\.?\d* % to \d+\.?\d* % while", told.Message);
        Assert.All(chain.Best.Ohms.Skip(1), r => Assert.True(r >= 0.012));

        var (free, better) = Of(
            Text.Replace("fails = \"open\"", "fails = \"open\", least = \"5 mohm\"", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(free.Findings, f => f.Rule == ChainRules.SmallerRefused);
        Assert.True(better.Best.WorstError < chain.Best.WorstError && better.Best.Ohms.Min() < 0.012);
    }

    [Theory]
    [InlineData("freely")]
    [InlineData("one after another")]
    public void Switches_thrown_one_after_another_have_a_position_for_each_wanted_step(string thrown)
    {
        var (light, chain) = Of(
            Text.Replace("arrangement = ", $"thrown = \"{thrown}\"\narrangement = ", StringComparison.Ordinal)
                .Replace(
                    Chosen,
                    "chain = [\"0.36 ohm\", \"0.24 ohm\", \"0.16 ohm\", \"0.13 ohm\"]",
                    StringComparison.Ordinal
                )
        );
        var inTurn = thrown != "freely";
        Assert.Equal(inTurn, chain.Asked.OneAfterAnother);
        Assert.True(chain.Best.Proven);
        string[] turn = ["1111", "0111", "0011", "0001", "0000"];
        Assert.Equal(inTurn, turn.SequenceEqual(light.Steps!.Recommended));
        Assert.Equal(inTurn, turn.SequenceEqual(light.Steps.Targets.Select(t => t.Switches)));

        // A wanted step is missed by the position that stands for it, not by the nearest of all.
        var missed = light.Steps.Targets.Count(t => Math.Abs(t.ErrorStops.Value) > 1.0 / 3);
        var told = light.Findings.Where(f => f.Rule == StepsRules.StepMissed).ToArray();
        Assert.Equal(missed, told.Length);
        Assert.Equal(inTurn, told.Length > 0);
        Assert.DoesNotContain(told, f => f.Message.Contains("nearest", StringComparison.Ordinal));
    }

    // What is given with a spread counts at the end that is worse, as for faults.
    [Fact]
    public void The_search_keeps_limits_at_their_worse_end()
    {
        ChainSearchSpec Asked(string text) => Of(text).Chain.Asked;
        string Emitter(string most) => Text.Replace("= \"2.0 A\"", $"= \"{most}\"", StringComparison.Ordinal);
        Assert.Equal(Asked(Emitter("1.5 A")).CornerMostA!.Value, Asked(Emitter("1.6 A ± 0.1 A")).CornerMostA!.Value, 9);
        Assert.True(Asked(Emitter("1.5 A")).CornerMostA < Asked(Text).CornerMostA);
    }

    [Theory]
    [InlineData("11.9 mohm", true)]
    [InlineData("12 mohm", false)]
    public void A_chosen_resistor_below_its_worn_contact_is_told(string second, bool speaks)
    {
        var text = Text.Replace("\"0.16 ohm\"", $"\"{second}\"", StringComparison.Ordinal);
        var found = Open(text).Nominal().Findings.Where(f => f.Rule == StepsRules.SmallerThanContact).ToArray();
        Assert.Equal(speaks ? ["steps.chosen.chain[1]"] : [], found.Select(f => f.Path));
        Assert.DoesNotContain(
            Open(text.Replace("\"series chain\"", "\"selector\"", StringComparison.Ordinal)).Nominal().Findings,
            f => f.Rule == StepsRules.SmallerThanContact
        );
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(2, false)]
    public void A_drawer_that_is_short_of_one_part_says_which(int count, bool speaks)
    {
        var (light, chain) = Of(
            Drawer(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"[\"0.13 ohm\", {{ value = \"0.3 ohm\", count = {count} }}, {{ value = \"2 ohm\", count = 9 }}]"
                ),
                switches: 3
            )
        );
        Assert.True(chain.Best.Proven && chain.Best.Parts.Count(p => p.First.Ohm == 0.3) <= count);
        var told = light.Findings.Where(f => f.Rule == ChainRules.DrawerIsShort).ToArray();
        Assert.True(told.Length == (speaks ? 1 : 0), string.Join('\n', light.Findings.Select(f => f.Message)));
        Assert.All(told, f => Assert.Contains("1 more of 0.3 ohm", f.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_drawer_with_too_few_parts_for_any_chain_says_what_is_lacking()
    {
        var (light, chain) = Of(Drawer("[{ value = \"0.2 ohm\", count = 2 }]", switches: 3));
        Assert.Equal(ChainLimit.Counts, chain.Best.Missing!.Limit);
        Assert.Contains("1 more of 0.2 ohm", chain.Best.Missing.Words, StringComparison.Ordinal);
        Assert.Contains(light.Findings, f => f.Rule == ChainRules.NoChain);
    }

    [Fact]
    public void A_chosen_chain_that_keeps_a_limit_only_at_stated_values_is_told()
    {
        var brightest = Open(Text).Nominal().Steps!.Combinations[0].CurrentA.Value;
        LightEvaluation With(double most) =>
            Of(
                Text.Replace(
                    "current_max",
                    string.Create(CultureInfo.InvariantCulture, $"current_max = \"{most:0.####} A\" #"),
                    StringComparison.Ordinal
                )
            ).Light;
        Assert.Contains(
            With(brightest * 1.01).Findings,
            f => f.Rule == ChainRules.BreaksAtCorner && f.Path == "steps.chosen"
        );
        Assert.DoesNotContain(With(brightest * 1.2).Findings, f => f.Rule == ChainRules.BreaksAtCorner);
    }

    [Fact]
    public void The_search_keeps_emitter_and_driver_in_the_worst_corner()
    {
        var chain = Of(Text).Chain;
        Assert.True(chain.Asked.CornerLimits);
        Assert.True(chain.Best.Steps.Max(s => s.HighA) <= chain.Asked.CornerMostA * (1 + 1e-9));
        Assert.Equal(0.012, chain.Asked.ContactWornOhm);
        Assert.Equal("", chain.Used!.Breaks);
    }

    [Theory]
    [InlineData("[\"90 ohm\"]", "range that can matter")]
    [InlineData("[{ value = \"0.2 ohm\", count = 0 }]", "has none")]
    public void A_drawer_that_has_nothing_of_use_is_told(string drawer, string words)
    {
        var (light, _) = OfEmpty(Drawer(drawer, switches: 3));
        Assert.Contains(light.Findings, f => f.Message.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_chosen_resistor_of_no_ohms_is_named_with_its_place()
    {
        var light = Open(Text.Replace("\"0.16 ohm\"", "\"0 ohm\"", StringComparison.Ordinal)).Nominal();
        var told = Assert.Single(light.Findings, f => f.Rule == StepsRules.NotComputable);
        Assert.Equal("steps.chosen.chain[1]", told.Path);
        Assert.StartsWith("R2 has 0 ohm.", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawer_of_ten_thousand_parts_is_read_and_searched()
    {
        var values = Enumerable.Range(0, 10_000).Select(k => $"\"{12 + k} mohm\"");
        var light = Open(Drawer("[" + string.Join(", ", values) + "]", switches: 2)).Nominal();
        Assert.Equal("first search", light.Steps!.ChosenBy);
    }

    [Fact]
    public void Parts_that_may_carry_nothing_in_their_air_are_told()
    {
        var text = Text.Replace(
            "full_to = \"70 degC\", zero_at = \"155 degC\"",
            "full_to = \"10 degC\", zero_at = \"50 degC\"",
            StringComparison.Ordinal
        );
        var (light, chain) = Of(text);
        Assert.Equal(ChainLimit.NoStock, chain.Best.Missing!.Limit);
        Assert.Contains(
            light.Findings,
            f =>
                f.Rule == ChainRules.NoChain
                && f.Message.Contains("may carry nothing in air of", StringComparison.Ordinal)
        );
    }

    private static string Drawer(string resistors, int switches) =>
        Text.Replace("stock       = \"E24\"", "stock       = \"drawer\"", StringComparison.Ordinal)
            .Replace("switches    = 4", $"switches    = {switches}", StringComparison.Ordinal)
            .Replace("chosen      = { " + Chosen + " }", "", StringComparison.Ordinal)
        + $"\n[drawer]\nresistors = {resistors}\n";

    private static (LightEvaluation Light, ChainAnswer Chain) Of(string text)
    {
        var (light, chain) = OfEmpty(text);
        return (light, chain!);
    }

    private static (LightEvaluation Light, ChainAnswer? Chain) OfEmpty(string text)
    {
        var prepared = Open(text);
        var chain = prepared.Chain(false, false, null, CancellationToken.None);
        return (prepared.Nominal().WithChain(chain), chain);
    }

    private static PreparedEvaluation Open(string text)
    {
        static string Beside(string name) => Repository.Text($"examples/herbarium/{name}");
        var loaded = DesignLoader.Parse(text, "light.toml", Beside);
        Assert.Empty(loaded.Problems);
        return OpenedLight.Of(loaded, Beside).Prepare();
    }
}
