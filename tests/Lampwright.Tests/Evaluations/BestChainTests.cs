using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Lampwright.Quantities;
using Lampwright.Steps.ChainProof;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>The best chain on the one road: of the settled light, proven, beside the chain that the maker has chosen.</summary>
public sealed class BestChainTests
{
    public static TheoryData<string> Examples => ["herbarium", "boatshed", "puppet-theatre"];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_has_a_proven_best_chain_that_no_used_one_betters(string name)
    {
        var chain = Chain(Example(name));
        Assert.True(chain.Best.Proven);
        Assert.Equal(chain.Asked.Switches + 1, chain.Best.Parts.Count);
        Assert.Equal("", chain.Used!.Breaks);
        Assert.True(chain.Used.Does.WorstError >= chain.Best.Bound);
        Assert.Contains(chain.Offers, o => ReferenceEquals(o.Choice.Found, chain.Best));
    }

    [Fact]
    public void The_best_of_a_drawer_is_that_of_trying_every_chain()
    {
        var chain = Chain(Example("boatshed"));
        var stock = chain.Asked.Stock;
        var least = double.PositiveInfinity;
        foreach (var fixedPart in stock)
        {
            foreach (var one in stock)
            {
                foreach (var two in stock)
                {
                    PositionParts[] parts =
                    [
                        .. new[] { fixedPart, one, two }.Select(p => new PositionParts(
                            Lampwright.Steps.ChainProof.Joint.Single,
                            p
                        )),
                    ];
                    least = Math.Min(least, ChainCheck.Error(chain.Asked, parts));
                }
            }
        }

        Assert.InRange(chain.Best.WorstError, least * (1 - 1e-9), least * (1 + 1e-9));
        Assert.True(Assert.Single(chain.Offers, o => o.Choice.Found == chain.Best).IsUsed);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Wanted_currents_are_those_that_the_settled_light_needs(string name)
    {
        var prepared = Example(name);
        var (chain, steps) = (Chain(prepared), prepared.Nominal().Steps!);
        Assert.Equal(steps.Targets.Select(t => t.CurrentA.Value), chain.Asked.WantedA);
        Assert.Equal(steps.Targets.Select(t => t.Wanted), chain.Gives(chain.Best).Select(g => g.Wanted));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_used_chain_gives_the_currents_of_the_light_itself(string name)
    {
        var prepared = Example(name);
        var light = prepared.Nominal().Steps!;
        foreach (var (_, gives) in Chain(prepared).Gives(Chain(prepared).Used!.Does))
        {
            var current = light.Combinations.Single(c => c.Switches == gives.Switches).CurrentA;
            // The light's resistors are warm, those of the search cold with warmth in the range.
            Assert.InRange(gives.CurrentA / current.Value, 0.985, 1.015);
            Assert.InRange(current.Value, gives.LowA, gives.HighA);
        }
    }

    [Fact]
    public void A_light_whose_values_are_chosen_is_computed_without_a_search()
    {
        var prepared = Example("herbarium");
        Assert.Null(prepared.Nominal().Steps!.Chain);
        var chain = Chain(prepared);
        Assert.True(chain.Used!.IsGiven);
        Assert.True(chain.Used.Does.WorstError > chain.Best.WorstError);
        var light = prepared.Nominal().WithChain(chain);
        Assert.Same(chain, light.Steps!.Chain);
        Assert.All(chain.Findings, f => Assert.Contains(f, light.Findings));
    }

    [Fact]
    public void The_same_light_has_the_same_chain()
    {
        var (one, two) = (Chain(Example("herbarium")), Chain(Example("herbarium")));
        Assert.Equal(one.Best.Ohms, two.Best.Ohms);
        Assert.Equal(one.Best.CasesClosed, two.Best.CasesClosed);
        Assert.Equal(one.Offers.Select(o => o.Words), two.Offers.Select(o => o.Words));
    }

    [Fact]
    public void To_the_end_is_never_worse_and_always_proven()
    {
        var prepared = Example("herbarium");
        var (live, end) = (Chain(prepared), prepared.Chain(toTheEnd: true, withOffers: false)!);
        Assert.True(end.ToTheEnd && end.Best.Proven);
        Assert.True(end.Best.WorstError <= live.Best.WorstError * (1 + 1e-9));
    }

    [Fact]
    public void What_is_proven_is_told_before_the_runners_up_are_looked_for()
    {
        List<string> order = [];
        ChainAnswer? early = null;
        var end = Example("herbarium")
            .Chain(
                true,
                true,
                new Told<ChainProgress>(p => order.Add(p.Of.Length > 0 ? "runner-up" : "best")),
                default,
                new Told<ChainAnswer>(a =>
                {
                    early = a;
                    order.Add("told");
                })
            )!;
        Assert.True(early!.Best.Proven);
        Assert.Empty(early.Offers);
        Assert.NotEmpty(end.Offers);
        Assert.Equal(end.Best.Ohms, early.Best.Ohms);
        Assert.DoesNotContain("runner-up", order.TakeWhile(o => o != "told"));
    }

    [Fact]
    public void A_stopped_search_says_that_nothing_is_proven()
    {
        var chain = Example("herbarium").Chain(true, false, null, new CancellationToken(canceled: true))!;
        Assert.False(chain.Best.Proven);
        Assert.True(chain.Best.Found);
        Assert.Contains(chain.Findings, f => f.Rule == ChainRules.NotProven);
        Assert.True(chain.Best.Gap > 0);
    }

    [Fact]
    public void A_drawer_that_cannot_do_it_says_what_is_missing()
    {
        var design = With(s =>
            s with
            {
                Stock = "drawer",
                Drawer = [new(Value.Exact(0.1), null, null)],
                Part = s.Part with { Rating = Value.Exact(0.001) },
            }
        );
        var light = Evaluator.Prepare(design);
        var chain = Chain(light);
        Assert.False(chain.Best.Found);
        Assert.NotEqual("", chain.Best.Missing!.Words);
        Assert.Contains(
            light.Nominal().WithChain(chain).Findings,
            f => f.Rule == ChainRules.NoChain && f.Path == "steps"
        );
    }

    [Fact]
    public void Wanted_steps_out_of_order_are_told_even_where_values_are_chosen()
    {
        var steps = new Targets(TargetKind.Currents, null, 0, 0, [Value.Exact(0.5), Value.Exact(1)]);
        var light = Evaluator.Prepare(With(s => s with { Targets = steps })).Nominal();
        Assert.Contains(light.Findings, f => f.Rule == ChainRules.OutOfOrder && f.Path == "steps.targets");
        var right = Evaluator.Prepare(With(s => s with { Targets = steps with { List = [.. steps.List.Reverse()] } }));
        Assert.DoesNotContain(right.Nominal().Findings, f => f.Rule == ChainRules.OutOfOrder);
    }

    [Fact]
    public void A_resistor_across_the_leads_is_in_the_search_as_it_is_in_the_light()
    {
        var prepared = Evaluator.Prepare(With(s => s with { Bleed = Value.Exact(3) }));
        var light = prepared.Nominal().Steps!;
        var chain = Chain(prepared);
        Assert.NotEqual(Chain(Example("herbarium")).Best.WorstError, chain.Best.WorstError);
        Assert.All(
            chain.Gives(chain.Used!.Does),
            g =>
                Assert.InRange(
                    light.Combinations.Single(c => c.Switches == g.Gives.Switches).CurrentA.Value,
                    g.Gives.LowA,
                    g.Gives.HighA
                )
        );
    }

    [Fact]
    public void No_offer_takes_more_parts_for_hardly_less_error()
    {
        var chain = Chain(Example("puppet-theatre"));
        foreach (var offer in chain.Offers.Where(o => o.Choice.Found != chain.Best))
        {
            Assert.DoesNotContain(
                chain.Offers,
                o =>
                    o.Choice.Found.PartCount < offer.Choice.Found.PartCount
                    && o.Choice.Switches <= offer.Choice.Switches
                    && o.Choice.Found.MostLoad <= offer.Choice.Found.MostLoad
                    && o.Choice.Found.WorstError <= offer.Choice.Found.WorstError * 1.02
            );
        }
    }

    private static ChainAnswer Chain(PreparedEvaluation prepared) => prepared.Chain()!;

    private static PreparedEvaluation Example(string name) => Opened(name).Prepare();

    private static OpenedLight Opened(string name) =>
        OpenedLight.At(Path.Combine(Repository.Root, "examples", name, name + ".toml"));

    private static LightDesign With(Func<Design.Steps, Design.Steps> change)
    {
        var design = Opened("herbarium").Loaded.Design;
        return design with { Steps = change(design.Steps!) };
    }

    private sealed class Told<T>(Action<T> tell) : IProgress<T>
    {
        public void Report(T value)
        {
            lock (this)
            {
                tell(value);
            }
        }
    }
}
