using Lampwright.Findings;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Steps.ChainProof;

/// <summary>Limits from both sides, bad input, budgets, stopping, what is missing, and the findings.</summary>
public class ChainLimitsTests
{
    private static ChainSearchSpec E24(double[] wanted, int switches, double allowedW = 3) =>
        Questions.Plain(
            Arrangement.SeriesChain,
            wanted,
            switches,
            ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E24", Questions.Driver, wanted, new(1, allowedW))
        );

    private static readonly double[] Five = Questions.Stops(4, 0.5, 5);

    [Fact]
    public void Greatest_current_holds_from_both_sides()
    {
        // 0.06 ohm with nothing else in the loop gives 5 A at 0.3 V.
        var spec = new ChainSearchSpec(Arrangement.SeriesChain, [5], 0, [new(0.06, 9)], Questions.Driver, 0, 0, 5);
        Assert.True(ChainSearch.Find(spec).Found);
        var none = ChainSearch.Find(spec with { MostA = 4.999 });
        Assert.False(none.Found);
        Assert.Equal(ChainLimit.MostCurrent, none.Missing!.Limit);
        Assert.Equal(0.3 / 4.999, none.Missing.Ohm!.Value, 9);
    }

    [Fact]
    public void Power_holds_from_both_sides()
    {
        // 5 A through 0.06 ohm: 1.5 W.
        var spec = new ChainSearchSpec(Arrangement.SeriesChain, [5], 0, [new(0.06, 1.5)], Questions.Driver, 0, 0, 5);
        Assert.True(ChainSearch.Find(spec).Found);
        var none = ChainSearch.Find(spec with { Stock = [new(0.06, 1.499)] });
        Assert.False(none.Found);
        Assert.Equal(ChainLimit.Power, none.Missing!.Limit);
        Assert.Equal(1.5, none.Missing.AllowedW!.Value, 6);
        Assert.Contains("1.5 W", none.Missing.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_parts_share_the_power()
    {
        var spec = new ChainSearchSpec(
            Arrangement.SeriesChain,
            [5],
            0,
            [new(0.03, 0.751), new(0.12, 0.751)],
            Questions.Driver,
            0,
            0,
            5
        );
        Assert.False(ChainSearch.Find(spec).Found && ChainSearch.Find(spec).WorstError < 0.1);
        var got = ChainSearch.Find(spec with { Joined = true });
        Assert.True(got.WorstError < 1e-9, $"{got.WorstError}");
        Assert.Equal(2, got.PartCount);
        Assert.InRange(got.MostLoad, 0.99, 1);
    }

    [Fact]
    public void Least_current_and_switch_rating_hold()
    {
        var free = ChainSearch.Find(E24(Five, 4));
        var dimmest = new ChainNetworkOf(free).Dimmest();
        Assert.True(
            ChainSearch.Find(E24(Five, 4) with { LeastA = dimmest * (1 - 1e-6) }).WorstError == free.WorstError
        );
        var held = ChainSearch.Find(E24(Five, 4) with { LeastA = dimmest * 1.001 });
        Assert.True(held.WorstError > free.WorstError || new ChainNetworkOf(held).Dimmest() >= dimmest * 1.001);
        var small = ChainSearch.Find(E24(Five, 4) with { SwitchA = 3.5 });
        Assert.All(small.Steps, s => Assert.True(s.CurrentA <= 3.5 * (1 + 1e-9)));
        var branches = ChainSearch.Find(E24(Five, 3) with { Arrangement = Arrangement.ParallelBranches, SwitchA = 1 });
        Assert.All(branches.Ohms.Skip(1), r => Assert.True(0.3 / (r + 0.005) <= 1 + 1e-9));
    }

    private sealed class ChainNetworkOf(ChainSearchResult found)
    {
        public double Dimmest() => 0.3 / (found.Ohms.Sum() + 0.003);
    }

    [Fact]
    public void Nothing_that_can_be_done_says_why()
    {
        ChainLimit? Why(ChainSearchSpec spec)
        {
            var got = ChainSearch.Find(spec);
            Assert.False(got.Found);
            Assert.NotEmpty(got.Missing!.Words);
            return got.Missing.Limit;
        }

        Assert.Equal(ChainLimit.Power, Why(E24(Five, 2, 1e-6)));
        Assert.Equal(ChainLimit.NoStock, Why(E24(Five, 2) with { Stock = [] }));
        Assert.Equal(
            ChainLimit.NoStock,
            Why(E24(Five, 2) with { Stock = [new(0, 1), new(0.1, 0), new(double.NaN, 1)] })
        );
        Assert.Equal(ChainLimit.NothingWanted, Why(E24(Five, 2) with { WantedA = [double.NaN, -1, 0] }));
        Assert.Equal(ChainLimit.MostCurrent, Why(E24(Five, 2) with { Stock = [new(0.01, 9)], MostA = 1 }));
        Assert.Equal(ChainLimit.LeastCurrent, Why(E24(Five, 2) with { Stock = [new(10, 9)], LeastA = 1 }));
        Assert.Equal(ChainLimit.TooFewSwitches, Why(E24(Five, 3) with { OneAfterAnother = true }));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainSearch.Find(E24(Five, 11)));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ChainSearch.Find(E24(Five, 2) with { LeadTolerance = double.NaN })
        );
    }

    [Fact]
    public void A_stock_of_ten_thousand_parts_ends()
    {
        var random = new Random(2);
        var stock = Enumerable
            .Range(0, 10_000)
            .Select(_ => new StockPart(0.01 * Math.Pow(200, random.NextDouble()), 3));
        var got = ChainSearch.Find(E24(Five, 4) with { Stock = [.. stock], Joined = true, MostBoxes = 20_000 });
        Assert.True(got.Found);
        Assert.True(got.WorstError < 0.01, $"{got.WorstError}");
        Assert.True(got.CasesClosed <= 62_000, $"{got.CasesClosed}");
        Assert.True(got.Told.NotJoined);
    }

    [Fact]
    public void Budget_is_kept_and_an_unproven_answer_says_so_with_its_gap()
    {
        var wanted = Questions.Stops(4, 0.3, 8);
        var spec = Questions.Plain(
            Arrangement.SeriesChain,
            wanted,
            6,
            ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E96", Questions.Driver, wanted, new(1, 3, 0.01))
        ) with
        {
            MostBoxes = 500,
            Objective = ChainObjective.WorstCorner,
        };
        var got = ChainSearch.Find(spec);
        Assert.True(got.Found);
        Assert.False(got.Proven);
        Assert.Null(got.Certificate);
        Assert.True(got.Bound <= got.WorstError);
        Assert.Equal(got.WorstError - got.Bound, got.Gap);
        Assert.Contains(ChainRules.Searched(spec, got, "steps"), f => f.Rule == ChainRules.NotProven);
        var none = ChainSearch.Find(spec with { MostBoxes = 0 });
        Assert.False(none.Proven);
    }

    [Fact]
    public void A_search_can_be_stopped_and_shows_how_far_it_is()
    {
        var wanted = Questions.Stops(4, 0.25, 9);
        var spec = Questions.Plain(
            Arrangement.SeriesChain,
            wanted,
            8,
            ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E96", Questions.Driver, wanted, new(1, 3, 0.01))
        ) with
        {
            Objective = ChainObjective.WorstCorner,
            MostBoxes = 1_000_000_000,
        };
        using var stop = new CancellationTokenSource();
        stop.CancelAfter(300);
        var got = ChainSearch.Find(spec, null, stop.Token);
        Assert.False(got.Proven);
        Assert.True(got.Found);
        var told = new List<ChainProgress>();
        ChainSearch.Find(E24(Five, 4), new Told(told), TestContext.Current.CancellationToken);
        Assert.NotEmpty(told);
        Assert.Equal(1, told.Max(p => p.Share), 9);
        Assert.All(told, p => Assert.True(p.Bound <= p.BestError && p.Gap >= 0, $"{p}"));
    }

    private sealed class Told(List<ChainProgress> all) : IProgress<ChainProgress>
    {
        public void Report(ChainProgress value) => all.Add(value);
    }

    [Fact]
    public void Fixed_resistor_may_stay_as_it_is()
    {
        var got = ChainSearch.Find(E24(Five, 4) with { Fixed = new(0.066, 3) });
        Assert.Equal(0.066, got.Ohms[0]);
        Assert.True(got.Proven);
    }

    [Fact]
    public void Steps_come_back_in_the_order_they_were_asked()
    {
        double[] mixed = [2, 4, 1];
        var got = ChainSearch.Find(E24(mixed, 3));
        Assert.Equal(mixed, got.Steps.Select(s => s.WantedA));
        Assert.Equal(ChainRules.OutOfOrder, ChainRules.Order(mixed, "steps.targets")!.Rule);
        Assert.Equal(ChainRules.OutOfOrder, ChainRules.Order([4, 4], "steps.targets")!.Rule);
        Assert.Equal(ChainRules.OutOfOrder, ChainRules.Order([4, double.NaN], "steps.targets")!.Rule);
        Assert.Null(ChainRules.Order([4, 2, 1], "steps.targets"));
    }

    [Fact]
    public void Findings_are_raised_and_stay_silent_inside_the_limits()
    {
        IReadOnlyList<Finding> Of(ChainSearchSpec spec) => ChainRules.Searched(spec, ChainSearch.Find(spec), "steps");
        Assert.Contains(Of(E24(Five, 2, 1e-6)), f => f.Rule == ChainRules.NoChain);
        var aside = E24(Five, 3);
        Assert.Contains(
            Of(aside with { Stock = [.. aside.Stock, new(0, 1)] }),
            f => f.Rule == ChainRules.StockLeftAside
        );

        // Nothing to say of a fine stock whose best chain no single value betters by a fifth.
        StockPart[] exact = [new(0.06, 9), new(0.06, 9), new(0.12, 9), new(0.24, 9)];
        var perfect = new ChainSearchSpec(Arrangement.SeriesChain, [5, 2.5, 1.25], 2, exact, Questions.Driver, 0, 0, 5)
        {
            Objective = ChainObjective.Nominal,
        };
        Assert.Empty(Of(perfect));

        // The same without 0.12 ohm: that value is named.
        var lacking = perfect with
        {
            Stock = [new(0.06, 9), new(0.3, 9)],
        };
        var help = Assert.Single(Of(lacking), f => f.Rule == ChainRules.ValueWouldHelp);
        Assert.NotEmpty(help.Message);
        var better = ChainLack.Better(lacking, ChainSearch.Find(lacking))!;
        var bettered = ChainSearch.Find(lacking with { Stock = [.. lacking.Stock, new(better.Ohm!.Value, 9)] });
        Assert.True(bettered.WorstError <= better.Error + 1e-9, $"{bettered.WorstError} {better}");
    }

    [Fact]
    public void Every_runner_up_tells_how_far_it_is_and_a_stop_keeps_those_that_were_found()
    {
        var spec = E24(Five, 4, 1.5) with { Joined = true, LeastOhm = 0.01, MostOhm = 1 };
        spec = spec with { Stock = [.. spec.Stock.Where((_, i) => i % 3 == 0)] };
        var told = new Heard();
        var all = ChainTradeOff.Of(spec, TestContext.Current.CancellationToken, told);
        var kinds = told.All.Select(p => p.Of).Distinct().ToList();
        Assert.True(kinds.Count >= all.Count, string.Join(", ", kinds));
        Assert.Equal($"runner-up 1 of {kinds.Count}", kinds[0]);
        Assert.Contains(told.All, p => double.IsFinite(p.BestError) && p.Gap >= -1e-12 && p.Boxes > 0);
        Assert.Equal(told.All.Select(p => p.Share).Order(), told.All.Select(p => p.Share));
        Assert.InRange(told.All[^1].Share, 0, 1);

        using var stop = new CancellationTokenSource();
        var some = ChainTradeOff.Of(
            spec,
            stop.Token,
            new Heard(p => Stop(p.Of.StartsWith("runner-up 3", StringComparison.Ordinal), stop))
        );
        Assert.InRange(some.Count, 1, 3);
    }

    private static void Stop(bool now, CancellationTokenSource stop)
    {
        if (now)
        {
            stop.Cancel();
        }
    }

    private sealed class Heard(Action<ChainProgress>? also = null) : IProgress<ChainProgress>
    {
        public List<ChainProgress> All { get; } = [];

        public void Report(ChainProgress value)
        {
            All.Add(value);
            also?.Invoke(value);
        }
    }

    [Fact]
    public void Trade_off_has_no_chain_that_another_beats()
    {
        var spec = E24(Five, 4, 1.5) with { Joined = true, LeastOhm = 0.01, MostOhm = 1 };
        spec = spec with { Stock = [.. spec.Stock.Where((_, i) => i % 3 == 0)] };
        var choices = ChainTradeOff.Of(spec, TestContext.Current.CancellationToken);
        Assert.True(choices.Count >= 3, $"{choices.Count}");
        Assert.Equal(ChainSearch.Find(spec).WorstError, choices[0].Found.WorstError, 9);
        Assert.All(choices, c => Assert.DoesNotContain(choices, o => o != c && c.IsBeatenBy(o)));
        Assert.Contains(choices, c => c.Switches < 4);
        Assert.Contains(choices, c => c.Found.PartCount < choices[0].Found.PartCount);
        Assert.All(
            choices,
            c =>
                Assert.Equal(
                    c.Found.WorstError,
                    ChainCheck.Error(spec with { Switches = c.Switches }, c.Found.Parts),
                    9
                )
        );
        Assert.All(
            choices,
            c =>
                Assert.InRange(
                    c.Found.Parts.Select((p, k) => OwnCircuit.PowerW(spec, c.Found.Parts, k) / p.AllowedW).Max(),
                    0,
                    c.LoadLimit * (1 + 1e-6)
                )
        );
    }
}
