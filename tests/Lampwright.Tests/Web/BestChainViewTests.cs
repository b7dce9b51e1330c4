using Bunit;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Findings;
using Lampwright.Steps.ChainProof;
using Lampwright.Steps.Faults;
using Lampwright.Tests.Files.Fixtures;
using Lampwright.Web.Chain;
using Lampwright.Web.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using FileLight = Lampwright.Tests.Files.Fixtures.SampleLight;

namespace Lampwright.Tests.Web;

public sealed class BestChainViewTests : BunitContext
{
    private static readonly LightEvaluation Light = FileLight.Evaluation();

    private readonly FakeDesk _desk = new();

    public BestChainViewTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton<IBoardDesk>(_desk);
        _desk.Show(s => s with { Light = Light });
    }

    [Fact]
    public void Values_stand_big_with_the_error_and_what_is_proven()
    {
        var shown = Show();
        var best = SampleBestChain.Answer.Best;
        Assert.Equal(
            best.Parts.Select(p => ChainWords.Ohm(p.Ohm) + "\u202fΩ"),
            shown.FindAll(".chainvalues .v").Select(v => v.TextContent)
        );
        Assert.Contains("R0 stays", shown.Find(".chainvalues li").TextContent, StringComparison.Ordinal);
        Assert.Contains(
            ChainWords.Percent(best.WorstError),
            shown.Find(".proof").TextContent,
            StringComparison.Ordinal
        );
        Assert.Contains("proven: none is better", shown.Find(".proof").TextContent, StringComparison.Ordinal);
        Assert.Empty(shown.FindAll(".proving button"));
        Assert.Contains(
            "chosen in the file has a worst error",
            shown.Find(".used").TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Without_a_proof_the_gap_is_told_and_the_search_can_go_on_and_be_stopped()
    {
        Put(c => c with { Best = c.Best with { Proven = false, Bound = c.Best.WorstError - 0.01 } });
        var shown = Show();
        Assert.Contains(
            "at most 1.00 % could still be gained",
            shown.Find(".proof").TextContent,
            StringComparison.Ordinal
        );
        shown.Find(".proving button").Click();
        shown = Show();
        Assert.Contains(
            "best 5.00 %, at most 2.00 % better",
            shown.Find(".proving").TextContent,
            StringComparison.Ordinal
        );
        shown.Find(".proving button").Click();
        Assert.Null(_desk.State.Proving);
    }

    [Fact]
    public void A_search_for_the_runners_up_is_named_and_read_out_once_and_not_at_every_step()
    {
        Assert.Equal("", Show().Find("[role=status]").TextContent);
        _desk.Show(s => s with { Proving = new(10, 0.1, 0.06, 0.01, "runner-up 2 of 8") });
        var shown = Show();
        Assert.Contains(
            "runner-up 2 of 8: 10 cases, best 6.00 %, at most 5.00 % better",
            shown.Find(".proving").TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("Proven: none is better. Searching for the runners-up.", shown.Find("[role=status]").TextContent);
        Assert.Empty(shown.FindAll(".proving[role], .proving [role=status], .proving [aria-live]"));
        _desk.Show(s => s with { Proving = new(900, 0.7, 0.05, 0.02, "runner-up 6 of 8") });
        Assert.Equal("Proven: none is better. Searching for the runners-up.", Show().Find("[role=status]").TextContent);
    }

    [Fact]
    public void Runners_up_that_are_not_proven_can_be_searched_on_for()
    {
        Put(c =>
            c with
            {
                ToTheEnd = false,
                Offers =
                [
                    .. c.Offers.Select(o =>
                        o with
                        {
                            Choice = o.Choice with { Found = o.Choice.Found with { Proven = false } },
                        }
                    ),
                ],
            }
        );
        Assert.Equal("search on for the runners-up", Show().Find(".proving button").TextContent);
        Put(c => c with { ToTheEnd = true });
        Assert.Empty(Show().FindAll(".proving button"));
    }

    [Fact]
    public void Pressing_a_point_shows_its_values_and_taking_over_hands_them_to_the_desk()
    {
        var shown = Show();
        var offers = SampleBestChain.Answer.Offers;
        var at = shown.FindAll(".at-wide .point").Count - 1;
        var last = offers[at];
        Assert.True(at > 0);
        shown.FindAll(".at-wide .point")[^1].Click();
        Assert.Equal(
            last.Choice.Found.Parts.Select(p => ChainWords.Ohm(p.Ohm) + "\u202fΩ"),
            shown.FindAll(".chainvalues .v").Select(v => v.TextContent)
        );
        Assert.Equal("true", shown.FindAll(".at-wide .point")[^1].GetAttribute("aria-pressed"));
        shown.FindAll(".offers .take")[at].Click();
        Assert.Same(last, Assert.Single(_desk.Taken));
    }

    [Fact]
    public void Nothing_is_taken_over_while_the_offers_are_those_of_another_text()
    {
        _desk.Show(s => s with { ChainIsPending = true });
        Assert.All(Show().FindAll(".offers .take"), b => Assert.True(b.HasAttribute("disabled")));
    }

    [Fact]
    public void What_is_missing_is_said_where_no_stock_does_it()
    {
        var none = ChainSearch.Find(SampleBestChain.Spec with { Stock = [new(0.1, 1e-6)] });
        Put(c => c with { Best = none, Offers = [], Used = null });
        var shown = Show();
        Assert.Contains(none.Missing!.Words, shown.Find(".missing").TextContent, StringComparison.Ordinal);
        Assert.Empty(shown.FindAll(".chainvalues, .lw-chart, .offers"));
    }

    [Fact]
    public void The_label_has_the_recommended_positions_brightest_first()
    {
        var steps = Light.Steps!;
        var rows = Draw<SwitchPlate>(p => p.Add(v => v.Answer, steps)).FindAll("tbody tr");
        Assert.Equal(steps.Recommended.Count, rows.Count);
        Assert.Contains("50", rows[0].TextContent, StringComparison.Ordinal); // the sample's share of the brightest, in percent
    }

    [Theory]
    [InlineData("series chain", "by-passes its resistor")]
    [InlineData("parallel branches", "beside the fixed one")]
    [InlineData("selector", "position that is chosen")]
    public void The_label_says_what_a_closed_toggle_does(string arrangement, string says)
    {
        var steps = Light.Steps! with { Arrangement = arrangement };
        Assert.Contains(says, Draw<SwitchPlate>(p => p.Add(v => v.Answer, steps)).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_that_judge_the_design_come_first_and_the_rest_is_folded()
    {
        var steps = Light.Steps!;
        var stop = FaultRules.FaultOverEmitter.At("steps", "R0 short lets 4 A flow.");
        _desk.Show(s => s with { Light = Light with { Findings = [stop] } });
        var shown = Draw<FaultsView>(p => p.Add(v => v.Answer, steps));
        Assert.Contains("R0 short lets 4 A flow.", shown.Find(".findings .stop").TextContent, StringComparison.Ordinal);
        Assert.Equal(steps.Faults.Count, shown.FindAll("tbody tr").Count);
        Assert.NotEmpty(shown.FindAll("details tbody tr"));
        var bad = steps.Faults.First(f =>
            f.Standing == FaultStanding.Counts && f.Emitter == Survival.No
            || f.Standing == FaultStanding.ByConstruction && f.Emitter != Survival.Yes
        );
        var open = shown.FindAll("tbody tr").Where(r => r.Closest("details") is null).Select(r => r.TextContent);
        Assert.Contains(open, r => r.Contains(bad.What, StringComparison.Ordinal));
        Assert.Contains("licensed", shown.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_soldered_has_leads_resistors_and_what_the_meters_show()
    {
        var steps = Light.Steps!;
        var shown = Draw<BuildView>(p => p.Add(v => v.Answer, steps));
        var rows = shown.FindAll("table").Select(t => t.QuerySelectorAll("tbody tr").Length).ToList();
        Assert.Equal([steps.Build!.Resistors.Count, steps.Build.Leads.Count, steps.Build.Patterns.Count], rows);
        Assert.Contains(
            steps.Fuse!.Words,
            shown.Markup.Replace("&gt;", ">", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        Assert.Contains("Never connect an emitter to a live driver", shown.Markup, StringComparison.Ordinal);
    }

    private void Put(Func<ChainAnswer, ChainAnswer> change) =>
        _desk.Show(s =>
            s with
            {
                Light = Light with { Steps = Light.Steps! with { Chain = change(Light.Steps!.Chain!) } },
            }
        );

    private IRenderedComponent<BestChain> Show() => Draw<BestChain>(_ => { });

    private IRenderedComponent<T> Draw<T>(Action<ComponentParameterCollectionBuilder<T>> more)
        where T : IComponent =>
        Render<T>(p =>
        {
            p.AddCascadingValue(new BoardContext(_desk.State, "1111", _ => { }));
            more(p);
        });
}
