using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Steps.ChainProof;

/// <summary>
/// Limits in the worst corner, drawers that are short and the least resistance of a switched position: found and proven as trying every chain finds
/// it, the proof checked by a checker that shares nothing with the search.
/// </summary>
public sealed class CornerProofTests
{
    private static readonly int Rounds = 12;

    public static TheoryData<Arrangement, bool, bool> Kinds()
    {
        var data = new TheoryData<Arrangement, bool, bool>();
        foreach (var arrangement in Enum.GetValues<Arrangement>())
        {
            foreach (var joined in new[] { false, true })
            {
                data.Add(arrangement, joined, false);
                if (arrangement != Arrangement.Selector)
                {
                    data.Add(arrangement, joined, true);
                }
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Best_within_corner_limits_and_counts_is_that_of_trying_every_chain_and_its_proof_stands(
        Arrangement arrangement,
        bool joined,
        bool oneAfterAnother
    )
    {
        var random = new Random(101 + (int)arrangement + (joined ? 10 : 0) + (oneAfterAnother ? 20 : 0));
        var (found, bitten, none) = (0, 0, 0);
        for (var round = 0; round < Rounds; round++)
        {
            var free = Free(arrangement, joined, oneAfterAnother, round, random);
            var spec = Bitten(free, ChainSearch.Find(free), round, random);
            var got = ChainSearch.Find(spec);
            var best = BruteForce.Best(spec);
            var told = $"round {round}: {got.WorstError}, brute force {best}, {got.CasesClosed} cases, {spec}";
            Assert.True(got.Proven, told);
            Assert.True(double.IsFinite(best) == got.Found, told);
            if (got.Certificate is { } proof)
            {
                Assert.Null(new CertificateChecker(spec, proof, got.Found ? got.WorstError : 1e9).Fault());
            }

            if (!got.Found)
            {
                // Without a single value that a position may take there is nothing to prove.
                none++;
                Assert.NotEqual("", got.Missing!.Words);
                continue;
            }

            Assert.NotNull(got.Certificate);
            found++;
            Assert.True(Math.Abs(got.WorstError - best) <= (2e-9 * best) + 1e-12, told);
            Assert.True(OwnCircuit.KeepsLimits(spec, got.Parts) && BruteForce.Counts([.. got.Parts]), told);
            Assert.All(got.Ohms.Skip(1), r => Assert.True(r >= spec.LeastSwitchedOhm * (1 - 1e-12)));
            bitten += BruteForce.Best(free) < best * (1 - 1e-6) ? 1 : 0;
        }

        Assert.True(found >= Rounds / 3, $"{found} found, {none} without a chain");
        Assert.True(bitten >= Rounds / 5, $"limits changed the answer in {bitten} of {found}");
    }

    [Fact]
    public void The_tolerance_of_a_part_that_the_threshold_was_found_with_is_nothing_at_that_part_and_grows_towards_the_dim_end()
    {
        // I0 measured at R0 itself: the true current of a step is I0·R0/(R0 + C), so R0 ± t moves it by t·(1 − R0/R).
        const double T = 0.05;
        StockPart[] stock = [new(0.5, 9)];
        var spec = new ChainSearchSpec(
            Arrangement.SeriesChain,
            [2, 0.2 / 0.6],
            1,
            stock,
            new(0.2, 0.06, 0, 0.9),
            0,
            0,
            5
        )
        {
            Fixed = new(0.1, 9, T),
            ThresholdByFixed = true,
        };
        var steps = ChainSearch.Find(spec).Steps;
        Assert.Equal(2, steps[0].LowA, 9);
        Assert.Equal(2, steps[0].HighA, 9);
        foreach (var (got, sign) in new[] { (steps[1].HighA, 1), (steps[1].LowA, -1) })
        {
            var r0 = 0.1 * (1 + (sign * T));
            Assert.Equal(2 * r0 / (r0 + 0.5), got, 9);
            Assert.Equal(sign * T * (1 - (0.1 / 0.6)), (got / (0.2 / 0.6)) - 1, 2e-3);
        }

        var apart = ChainSearch.Find(spec with { ThresholdByFixed = false }).Steps;
        Assert.True(apart[1].HighA < steps[1].HighA && apart[0].HighA > steps[0].HighA);
    }

    private static ChainSearchSpec Free(
        Arrangement arrangement,
        bool joined,
        bool oneAfterAnother,
        int round,
        Random random
    )
    {
        var stock = Questions.Stock(random, joined ? 3 : 6, arrangement);
        var spec = Questions.Scattered(
            Questions.Plain(
                arrangement,
                Questions.Stops(arrangement == Arrangement.Selector ? 3 : 4, 0.6, 3),
                joined ? 2 : 3,
                stock
            ),
            random
        );
        spec = round % 3 == 2 ? Questions.OnBoard(spec) : spec;
        return spec with
        {
            Joined = joined,
            OneAfterAnother = oneAfterAnother,
            WithCertificate = true,
            CornerLimits = true,
            ContactWornOhm = 0.02,
            ContactBareOhm = round % 4 == 3 ? null : 0,
            Fixed = round % 4 == 1 ? spec.Stock.MinBy(p => p.Ohm) : null,
            ThresholdByFixed = round % 4 == 1,
            LeastA = null,
            CornerMostA = null,
        };
    }

    // One limit each that the best chain without it breaks by a little, and a drawer in which there is one of most kinds.
    private static ChainSearchSpec Bitten(ChainSearchSpec free, ChainSearchResult best, int round, Random random)
    {
        var counted = free with
        {
            Stock = [.. free.Stock.Select(p => p with { Count = random.Next(5) == 0 ? null : 1 + random.Next(2) })],
        };
        if (!best.Found)
        {
            return counted;
        }

        var k = random.Next(best.Parts.Count);
        var through = OwnCorner.MostThrough(free, best.Parts, k);
        var heavy = best.Parts[k].First;
        return (round % 5) switch
        {
            0 => counted,
            1 => free with { CornerMostA = Extreme(free, best, -1) * (0.9999 - (0.05 * random.NextDouble())) },
            2 => free with { CornerLeastA = Extreme(free, best, 1) * (1.0001 + (0.05 * random.NextDouble())) },
            3 => counted with
            {
                Stock =
                [
                    .. counted.Stock.Select(p =>
                        p.Ohm == heavy.Ohm ? p with { AllowedW = through * through * p.Ohm * 0.9 } : p
                    ),
                ],
            },
            _ => counted with
            {
                LeastSwitchedOhm = best.Ohms.Skip(1).Min() * 1.01,
                SwitchA = free.Arrangement == Arrangement.ParallelBranches ? 3 : Extreme(free, best, -1) * 0.98,
            },
        };
    }

    private static double Extreme(ChainSearchSpec s, ChainSearchResult best, int side)
    {
        var all = OwnCorner.Bare(s) with
        {
            OneAfterAnother = false,
            ContactMostOhm = side > 0 ? 0.02 : s.ContactMostOhm,
        };
        OwnCircuit.End[] ends = [.. best.Parts.Select((p, j) => OwnCircuit.Of(s, p, side, j == 0))];
        var amps = Enumerable.Range(0, OwnCircuit.Combinations(all)).Select(c => OwnCircuit.Amps(all, c, ends, side));
        return side < 0 ? amps.Max() : amps.Min();
    }

    [Fact]
    public void A_drawer_of_single_parts_is_proven_within_a_few_thousand_cases()
    {
        var wanted = Questions.Stops(4, 0.5, 5);
        var stock = ChainSearchSpec
            .StockOf(Arrangement.SeriesChain, "E24", Questions.Driver, wanted, new(1, 3, 0.01))
            .Select(p => p with { Count = 1 });
        var spec = Questions.Plain(Arrangement.SeriesChain, wanted, 5, [.. stock]) with
        {
            Objective = ChainObjective.WorstCorner,
        };
        var got = ChainSearch.Find(spec);
        Assert.True(got.Proven && got.Found);
        Assert.Equal(6, got.Parts.Select(p => p.First).Distinct().Count());
        Assert.InRange(got.CasesClosed, 1, 60_000);
    }

    [Fact]
    public void A_proof_that_leaves_out_what_counts_would_allow_is_refused()
    {
        // The wanted steps are met to the last digit by a chain that takes one kind twice.
        double[] wanted = [0.3 / 0.0655, 0.3 / 0.1185, 0.3 / 0.1715];
        var spec = new ChainSearchSpec(
            Arrangement.SeriesChain,
            wanted,
            2,
            [new(0.0655, 5, Count: 1), new(0.053, 5, Count: 1), new(0.051, 5, Count: 1)],
            Questions.Driver,
            0,
            0,
            5
        )
        {
            Objective = ChainObjective.Nominal,
            WithCertificate = true,
        };
        var got = ChainSearch.Find(spec);
        Assert.Null(new CertificateChecker(spec, got.Certificate!, got.WorstError).Fault());
        Assert.NotNull(new CertificateChecker(spec, got.Certificate!, got.WorstError * 1.001).Fault());

        // With one part more of each the same lines no longer prove anything.
        var more = spec with
        {
            Stock = [.. spec.Stock.Select(p => p with { Count = 9 })],
        };
        Assert.True(ChainSearch.Find(more).WorstError < got.WorstError);
        Assert.NotNull(new CertificateChecker(more, got.Certificate!, got.WorstError).Fault());
    }

    [Fact]
    public void A_switched_position_is_never_smaller_than_the_least_and_the_fixed_one_may_be()
    {
        StockPart[] stock = [new(0.009, 9), new(0.06, 9), new(0.1, 9), new(0.2, 9)];
        var spec = Questions.Plain(Arrangement.SeriesChain, Questions.Stops(4, 0.1, 3), 2, stock, 50) with
        {
            LeastSwitchedOhm = 0.012,
        };
        var got = ChainSearch.Find(spec with { Fixed = stock[0] });
        Assert.Equal(0.009, got.Ohms[0]);
        Assert.All(got.Ohms.Skip(1), r => Assert.True(r >= 0.012));
        var free = ChainSearch.Find(spec with { LeastSwitchedOhm = 0.009 });
        Assert.Contains(0.009, free.Ohms.Skip(1));
    }
}
