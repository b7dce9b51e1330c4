using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Steps.ChainProof;

/// <summary>The search against every chain of small stocks, and its proof against a checker that shares no code with it.</summary>
public class ChainSearchTests
{
    public static TheoryData<Arrangement, bool, bool, bool> Kinds()
    {
        var data = new TheoryData<Arrangement, bool, bool, bool>();
        foreach (var arrangement in Enum.GetValues<Arrangement>())
        {
            foreach (var joined in new[] { false, true })
            {
                foreach (var scattered in new[] { false, true })
                {
                    data.Add(arrangement, joined, scattered, false);
                    if (arrangement != Arrangement.Selector)
                    {
                        data.Add(arrangement, joined, scattered, true);
                    }
                }
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Search_finds_what_brute_force_finds_and_its_proof_stands(
        Arrangement arrangement,
        bool joined,
        bool scattered,
        bool oneAfterAnother
    )
    {
        var random = new Random(17 + (int)arrangement);
        var found = 0;
        for (var round = 0; round < 8; round++)
        {
            var stock = Questions.Stock(random, joined ? 3 : 6, arrangement);
            var spec = Questions.Plain(
                arrangement,
                Questions.Stops(arrangement == Arrangement.Selector ? 3 : 4, 0.6, 3),
                joined ? 2 : 3,
                stock
            ) with
            {
                Joined = joined,
                OneAfterAnother = oneAfterAnother,
                WithCertificate = true,
            };
            spec = scattered ? Questions.Scattered(spec, random) : spec;
            spec = round % 3 == 2 ? Questions.OnBoard(spec) : spec;
            var got = ChainSearch.Find(spec);
            var best = BruteForce.Best(spec);
            var told = $"{arrangement} round {round}: {got.WorstError}, brute force {best}, {got.CasesClosed} cases";
            Assert.True(got.Proven, told);
            Assert.Equal(double.IsFinite(best), got.Found);
            if (got.Found)
            {
                found++;
                Assert.True(Math.Abs(got.WorstError - best) <= (2e-9 * best) + 1e-12, told);
                Assert.True(got.Bound <= got.WorstError && got.Bound >= got.WorstError * (1 - 2e-9), told);
                Assert.Equal(got.WorstError, OwnCircuit.Error(spec, got.Parts), 1e-9);
            }

            var error = got.Found ? got.WorstError : 1e9;
            Assert.Null(new CertificateChecker(spec, got.Certificate!, error).Fault());
        }

        Assert.True(found > 0, "no round had a chain");
    }

    [Theory]
    [InlineData(Arrangement.SeriesChain)]
    [InlineData(Arrangement.ParallelBranches)]
    [InlineData(Arrangement.Selector)]
    public void Counts_of_the_drawer_are_kept(Arrangement arrangement)
    {
        var random = new Random(5);
        for (var round = 0; round < 6; round++)
        {
            StockPart[] stock =
            [
                .. Questions
                    .Stock(random, 4, arrangement)
                    .Select(p => p with { AllowedW = 5, Count = 1 + random.Next(2) }),
            ];
            var spec = Questions.Plain(arrangement, Questions.Stops(3, 0.6, 3), 2, stock) with { Joined = true };
            var got = ChainSearch.Find(spec);
            var best = BruteForce.Best(spec);
            Assert.Equal(double.IsFinite(best), got.Found);
            Assert.True(!got.Found || Math.Abs(got.WorstError - best) < 1e-9, $"{got.WorstError} {best}");
            foreach (var part in stock)
            {
                var used = got.Parts.Sum(p => (p.First == part ? 1 : 0) + (p.Second == part ? 1 : 0));
                Assert.True(used <= part.Count, $"{part} taken {used} times");
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Few_switches_are_searched_too(int switches)
    {
        var random = new Random(3);
        foreach (var arrangement in Enum.GetValues<Arrangement>())
        {
            var spec = Questions.Plain(
                arrangement,
                [2.5],
                switches,
                [.. Questions.Stock(random, 8, arrangement).Select(p => p with { AllowedW = 9 })]
            );
            var got = ChainSearch.Find(spec);
            Assert.Equal(BruteForce.Best(spec), got.WorstError, 1e-9);
        }
    }

    [Fact]
    public void A_proof_that_says_too_much_or_lacks_a_line_is_refused()
    {
        var spec = Questions.Plain(
            Arrangement.SeriesChain,
            Questions.Stops(4, 0.5, 5),
            3,
            [.. Questions.Stock(new Random(1), 14, Arrangement.SeriesChain).Select(p => p with { AllowedW = 3 })]
        ) with
        {
            WithCertificate = true,
        };
        var got = ChainSearch.Find(spec);
        var proof = got.Certificate!;
        Assert.Null(new CertificateChecker(spec, proof, got.WorstError).Fault());
        Assert.NotNull(new CertificateChecker(spec, proof, got.WorstError * 1.2).Fault());
        Assert.NotNull(
            new CertificateChecker(spec, proof with { Lines = [.. proof.Lines.SkipLast(1)] }, got.WorstError).Fault()
        );
        Assert.NotNull(
            new CertificateChecker(
                spec,
                proof with
                {
                    Lines = [.. proof.Lines, proof.Lines[^1]],
                },
                got.WorstError
            ).Fault()
        );
        Assert.NotNull(
            new CertificateChecker(
                spec,
                proof with
                {
                    SwitchedValues = [.. proof.SwitchedValues.Skip(1)],
                },
                got.WorstError
            ).Fault()
        );
        ProofLine[] early = [new(CaseStep.Closed, 0, 0, ClosedBy.Target, 0)];
        Assert.NotNull(new CertificateChecker(spec, proof with { Lines = early }, got.WorstError).Fault());
    }

    [Theory]
    [InlineData(Arrangement.SeriesChain)]
    [InlineData(Arrangement.ParallelBranches)]
    [InlineData(Arrangement.Selector)]
    public void Search_and_network_agree_on_every_step(Arrangement arrangement)
    {
        var wanted = Questions.Stops(4, 0.5, 5);
        var stock = ChainSearchSpec.StockOf(arrangement, "E24", Questions.Driver, wanted, new(1, 3));
        var got = ChainSearch.Find(Questions.Plain(arrangement, wanted, 4, stock));
        static ResistorPart Part(double ohm) => new(ohm, 0, 3, 400, 500);
        var network = new ChainNetwork(new(arrangement, Part(got.Ohms[0]), [.. got.Ohms.Skip(1).Select(Part)], 0.005));
        double[] ohms = [.. got.Ohms];
        double[] contact = [0.005];
        foreach (var step in got.Steps)
        {
            var index = Enumerable.Range(0, network.CombinationCount).Single(i => network.Switches(i) == step.Switches);
            Assert.Equal(Questions.Driver.CurrentA(network.TotalOhm(index, ohms, contact, 0.003)), step.CurrentA, 9);
        }

        Assert.Equal(got.WorstError, got.Steps.Max(s => Math.Abs(s.Error)), 9);
        Assert.Equal(got.WorstError, got.NominalError, 9);
    }

    [Theory]
    [InlineData(Arrangement.SeriesChain)]
    [InlineData(Arrangement.ParallelBranches)]
    [InlineData(Arrangement.Selector)]
    public void Resistors_on_the_board_and_taps_are_those_of_the_network(Arrangement arrangement)
    {
        var wanted = Questions.Stops(3, 0.5, 4);
        static ResistorPart Part(double ohm) => new(ohm, 0, 3, 400, 500);
        ChainNetwork Built(IReadOnlyList<double> ohms) =>
            new(
                new(
                    arrangement,
                    Part(ohms[0]),
                    [.. ohms.Skip(1).Select(Part)],
                    0.005,
                    Lead: new(0.3, 0.75),
                    Taps: SenseTaps.AtTheChainsEnds,
                    BleedOhm: arrangement == Arrangement.ParallelBranches ? null : 2.2,
                    FloorOhm: arrangement == Arrangement.ParallelBranches ? 0.02 : null
                )
            );
        var lead = Built([0.1, 0.1]).LeadOhm(298.15);
        var tapped = arrangement != Arrangement.ParallelBranches;
        var spec = Questions.OnBoard(
            Questions.Plain(
                arrangement,
                wanted,
                4,
                ChainSearchSpec.StockOf(arrangement, "E24", Questions.Driver, wanted, new(1, 3))
            )
        ) with
        {
            LeadOhm = tapped ? lead / 2 : lead,
            UnsensedLeadOhm = tapped ? lead / 2 : 0,
        };
        var got = ChainSearch.Find(spec);
        Assert.True(got.Proven && got.Found);
        var network = Built(got.Ohms);
        double[] ohms = [.. got.Ohms];
        double[] contact = [0.005];
        foreach (var step in got.Steps)
        {
            var index = Enumerable.Range(0, network.CombinationCount).Single(i => network.Switches(i) == step.Switches);
            Assert.Equal(Questions.Driver.CurrentA(network.TotalOhm(index, ohms, contact, lead)), step.CurrentA, 9);
        }
    }

    [Fact]
    public void Warm_resistors_of_the_search_are_those_of_the_network()
    {
        var wanted = Questions.Stops(4, 0.5, 5);
        StockPart kind = new(1, 3, 0, 150e-6, 28);
        var spec = Questions.Plain(
            Arrangement.SeriesChain,
            wanted,
            3,
            ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E24", Questions.Driver, wanted, kind)
        ) with
        {
            TempcoIsLimit = false,
            AirK = 328.15,
            LeadOhm = 0,
        };
        var got = ChainSearch.Find(spec);
        ResistorPart Part(double ohm) => new(ohm, 150e-6, 3, 343.15, 343.15 + (28 * 3));
        var network = new ChainNetwork(
            new(Arrangement.SeriesChain, Part(got.Ohms[0]), [.. got.Ohms.Skip(1).Select(Part)], 0.005)
        );
        var currents = new double[network.CombinationCount];
        var draw = new ChainDraw { Driver = Questions.Driver with { ThresholdV = 0.3 }, AirK = 328.15 };

        network.Operate(draw, currents, [], []);
        foreach (var step in got.Steps)
        {
            var index = Enumerable.Range(0, network.CombinationCount).Single(i => network.Switches(i) == step.Switches);

            // What the first order leaves out: (150 ppm/K times some 60 K) squared.
            Assert.InRange(step.CurrentA / currents[index], 1 - 1e-4, 1 + 1e-4);
        }

        Assert.True(got.Proven);
    }

    [Fact]
    public void Same_question_same_answer_whatever_the_count_of_workers()
    {
        var wanted = Questions.Stops(4, 0.4, 7);
        var spec = Questions.Plain(
            Arrangement.SeriesChain,
            wanted,
            4,
            ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E24", Questions.Driver, wanted, new(1, 3, 0.01))
        );
        foreach (var objective in Enum.GetValues<ChainObjective>())
        {
            var one = ChainSearch.Find(spec with { Objective = objective, Workers = 1 });
            for (var round = 0; round < 4; round++)
            {
                var many = ChainSearch.Find(spec with { Objective = objective, Workers = 2 + round });
                Assert.Equal(one.WorstError, many.WorstError);
                Assert.Equal(one.CasesClosed, many.CasesClosed);
                Assert.Equal(one.Parts, many.Parts);
            }
        }
    }

    [Fact]
    public void Tolerance_in_the_objective_is_never_better_than_the_nominal_error_and_never_worse_than_that_of_the_nominal_best()
    {
        var wanted = Questions.Stops(4, 0.4, 6);
        var nominal = Questions.Plain(
            Arrangement.SeriesChain,
            wanted,
            4,
            ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E24", Questions.Driver, wanted, new(1, 3, 0.01))
        );
        var corner = nominal with { Objective = ChainObjective.WorstCorner, ContactMostOhm = 0.008 };
        var (a, b) = (ChainSearch.Find(nominal), ChainSearch.Find(corner));
        Assert.True(b.WorstError > a.WorstError);
        Assert.True(b.WorstError <= ChainCheck.Error(corner, a.Parts) + 1e-12);
        Assert.All(b.Steps, s => Assert.True(s.LowA < s.CurrentA && s.CurrentA < s.HighA, $"{s}"));
        Assert.Equal(b.WorstError, b.Steps.Max(s => s.WorstError), 9);
    }
}
