using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Lampwright.Steps;
using Lampwright.Steps.Faults;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>While a stop stands against wires from the driver, nothing in the evaluation advises work on its sense path.</summary>
public class StopsOnSenseWorkTests
{
    private static readonly Lazy<PreparedEvaluation> Allowed = new(() => Of("yes"));
    private static readonly Lazy<PreparedEvaluation> Stopped = new(() => Of("unknown"));

    [Fact]
    public void No_finding_advises_work_on_the_sense_path()
    {
        List<Rule> allowed = [.. Allowed.Value.Nominal().Findings.Select(f => f.Rule)];
        List<Rule> stopped = [.. Stopped.Value.Nominal().Findings.Select(f => f.Rule)];
        Assert.Contains(StepsRules.OutputNotIsolated, stopped);
        Rule[] advice = [StepsRules.ContactShare, FaultRules.LooseLead];
        Assert.All(advice, r => Assert.Contains(r, allowed));
        Assert.All(advice, r => Assert.DoesNotContain(r, stopped));
    }

    [Fact]
    public void No_chain_is_offered_and_nothing_is_said_to_be_soldered()
    {
        Assert.NotNull(Allowed.Value.Chain(withOffers: false));
        Assert.Null(Stopped.Value.Chain(withOffers: false));
        Assert.NotNull(Allowed.Value.Nominal().Steps!.Build);
        Assert.Null(Stopped.Value.Nominal().Steps!.Build);
    }

    private static PreparedEvaluation Of(string isolated)
    {
        var text = Repository.Text("examples/herbarium/herbarium.toml");
        const string Given = "isolated         = \"yes\"";
        Assert.Contains(Given, text, StringComparison.Ordinal);
        return Prepared(text.Replace(Given, $"isolated = \"{isolated}\"", StringComparison.Ordinal));
    }

    private static PreparedEvaluation Prepared(string text) =>
        OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare();

    private static string Beside(string name) => Repository.Text("examples/herbarium/" + name);
}
