using Lampwright.Steps;

namespace Lampwright.Tests.Steps;

public class ChainSearchTests
{
    private static readonly DriverModel Driver = new(0.3, 0.06, 0, 0.9);

    private static ChainSearchSpec Spec(
        Arrangement arrangement,
        double[] wanted,
        int switches,
        IReadOnlyList<StockPart> stock,
        double most = 5
    ) => new(arrangement, wanted, switches, stock, Driver, 0.005, 0.003, most);

    private static double[] Stops(double from, double every, int count) =>
        [.. Enumerable.Range(0, count).Select(k => from * Math.Pow(2, -every * k))];

    [Theory]
    [InlineData(Arrangement.SeriesChain)]
    [InlineData(Arrangement.ParallelBranches)]
    [InlineData(Arrangement.Selector)]
    public void Search_finds_what_brute_force_finds(Arrangement arrangement)
    {
        var random = new Random(7);
        for (var round = 0; round < 6; round++)
        {
            StockPart[] stock =
            [
                .. Enumerable
                    .Range(0, 7)
                    .Select(_ => new StockPart(Math.Round(0.04 * Math.Pow(12, random.NextDouble()), 3), 1.5)),
            ];
            var spec = Spec(arrangement, Stops(4, 0.7, 4), 3, stock);
            var got = ChainSearch.Find(spec);
            var best = double.PositiveInfinity;
            foreach (var a in stock)
            foreach (var b in stock)
            foreach (var c in stock)
            foreach (var d in stock)
            {
                best = Math.Min(best, Brute(spec, a, [b, c, d]));
            }

            Assert.True(
                got is null ? double.IsInfinity(best) : Math.Abs(got.WorstError - best) < 1e-9 && got.Complete,
                $"{arrangement} round {round}: {got?.WorstError}, brute force {best}, {got?.Boxes} boxes"
            );
        }
    }

    // The network of the station itself, so that search and evaluation cannot drift apart.
    private static double Brute(ChainSearchSpec spec, StockPart first, StockPart[] chain)
    {
        static ResistorPart Part(StockPart p) => new(p.Ohm, 0, p.AllowedW, 400, 500);
        var network = new ChainNetwork(new(spec.Arrangement, Part(first), [.. chain.Select(Part)], spec.ContactOhm));
        double[] ohms = [first.Ohm, .. chain.Select(p => p.Ohm)];
        double[] contact = [spec.ContactOhm];
        var currents = Enumerable
            .Range(0, network.CombinationCount)
            .Select(i => spec.Driver.CurrentA(network.TotalOhm(i, ohms, contact, spec.LeadOhm)))
            .ToArray();
        if (currents.Max() > spec.MostA)
        {
            return double.PositiveInfinity;
        }

        var result = new double[ohms.Length * network.CombinationCount];
        network.Operate(
            new ChainDraw
            {
                Driver = spec.Driver,
                AirK = 298.15,
                LeadFactor = 0,
            },
            new double[network.CombinationCount],
            [],
            result
        );

        // Power with the leads left out is a little more than with them; the stock here is far from that edge or far over it.
        for (var i = 0; i < result.Length; i++)
        {
            if (result[i] > 1.5 * 1.2)
            {
                return double.PositiveInfinity;
            }
        }

        return spec.WantedA.Max(w => currents.Min(c => Math.Abs((c / w) - 1)));
    }

    [Theory]
    [InlineData(Arrangement.SeriesChain)]
    [InlineData(Arrangement.ParallelBranches)]
    [InlineData(Arrangement.Selector)]
    public void Search_and_network_agree_on_every_step(Arrangement arrangement)
    {
        var wanted = Stops(4, 0.5, 5);
        var stock = ChainSearchSpec.StockOf(arrangement, "E24", Driver, wanted, 3);
        var got = ChainSearch.Find(Spec(arrangement, wanted, 4, stock))!;
        static ResistorPart Part(StockPart p) => new(p.Ohm, 0, p.AllowedW, 400, 500);
        var network = new ChainNetwork(new(arrangement, Part(got.Fixed), [.. got.Chain.Select(Part)], 0.005));
        double[] ohms = [got.Fixed.Ohm, .. got.Chain.Select(p => p.Ohm)];
        double[] contact = [0.005];
        foreach (var step in got.Steps)
        {
            var index = Enumerable.Range(0, network.CombinationCount).Single(i => network.Switches(i) == step.Switches);
            Assert.Equal(Driver.CurrentA(network.TotalOhm(index, ohms, contact, 0.003)), step.CurrentA, 9);
        }

        Assert.Equal(got.WorstError, got.Steps.Max(s => Math.Abs(s.Error)), 9);
    }

    [Fact]
    public void Same_question_same_answer_and_no_current_over_the_limit()
    {
        var wanted = Stops(4, 0.5, 5);
        var spec = Spec(
            Arrangement.SeriesChain,
            wanted,
            4,
            ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E24", Driver, wanted, 3),
            4.02
        );
        var (a, b) = (ChainSearch.Find(spec)!, ChainSearch.Find(spec)!);
        Assert.Equal(a.WorstError, b.WorstError);
        Assert.Equal(a.Chain, b.Chain);
        Assert.All(a.Steps, s => Assert.True(s.CurrentA <= 4.02 * (1 + 1e-9), $"{s}"));
        Assert.Contains("not the proof", a.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Fixed_resistor_may_stay_as_it_is()
    {
        var wanted = Stops(4, 0.5, 5);
        var stock = ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E12", Driver, wanted, 3);
        var got = ChainSearch.Find(Spec(Arrangement.SeriesChain, wanted, 4, stock) with { FixedOhm = new(0.066, 3) })!;
        Assert.Equal(0.066, got.Fixed.Ohm);
    }

    [Fact]
    public void Limit_of_boxes_is_told()
    {
        var wanted = Stops(4, 0.3, 8);
        var stock = ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E96", Driver, wanted, 3);
        var got = ChainSearch.Find(Spec(Arrangement.SeriesChain, wanted, 5, stock) with { MostBoxes = 100 })!;
        Assert.False(got.Complete);
        Assert.Contains("may exist", got.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_that_can_be_done_is_null()
    {
        StockPart[] weak = [new(0.1, 1e-6), new(0.2, 1e-6)];
        Assert.Null(ChainSearch.Find(Spec(Arrangement.SeriesChain, [4], 2, weak)));
        Assert.Null(ChainSearch.Find(Spec(Arrangement.SeriesChain, [4], 2, [])));
        Assert.Null(ChainSearch.Find(Spec(Arrangement.SeriesChain, [double.NaN, -1], 2, [new(0.1, 1)])));
        Assert.Null(ChainSearch.Find(Spec(Arrangement.SeriesChain, [4], 2, [new(0.01, 9)], most: 1)));
        Assert.Empty(ChainSearchSpec.StockOf(Arrangement.SeriesChain, "E24", Driver, [0], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ChainSearch.Find(Spec(Arrangement.SeriesChain, [4], 11, [new(0.1, 1)]))
        );
    }
}
