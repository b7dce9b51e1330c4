using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Steps.ChainProof;

/// <summary>Random small questions, the same in every run.</summary>
internal static class Questions
{
    public static readonly DriverModel Driver = new(0.3, 0.06, 0, 0.9);

    public static double[] Stops(double from, double every, int count) =>
        [.. Enumerable.Range(0, count).Select(k => from * Math.Pow(2, -every * k))];

    public static ChainSearchSpec Plain(
        Arrangement arrangement,
        double[] wanted,
        int switches,
        IReadOnlyList<StockPart> stock,
        double most = 5
    ) => new(arrangement, wanted, switches, stock, Driver, 0.005, 0.003, most) { Objective = ChainObjective.Nominal };

    /// <summary>Values between 40 mΩ and half an ohm; ratings that bind now and then.</summary>
    public static StockPart[] Stock(Random random, int count, Arrangement arrangement) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(_ => new StockPart(
                    Math.Round(
                        (arrangement == Arrangement.ParallelBranches ? 0.08 : 0.04) * Math.Pow(12, random.NextDouble()),
                        3
                    ),
                    Math.Round(0.3 + (1.5 * random.NextDouble()), 2)
                ))
                .DistinctBy(p => p.Ohm),
        ];

    /// <summary>The same with tolerances, drift, warm parts, contacts, leads and threshold that scatter, and a few more limits.</summary>
    public static ChainSearchSpec Scattered(ChainSearchSpec s, Random random) =>
        s with
        {
            Objective = ChainObjective.WorstCorner,
            Stock =
            [
                .. s.Stock.Select(p =>
                    p with
                    {
                        Tolerance = random.Next(3) switch
                        {
                            0 => 0.001,
                            1 => 0.01,
                            _ => 0.05,
                        },
                        TempcoPerK = 200e-6 * random.NextDouble(),
                        RisePerWattK = 60 * random.NextDouble(),
                    }
                ),
            ],
            ThresholdTolerance = 0.02 * random.NextDouble(),
            LeadTolerance = 0.1,
            ContactLeastOhm = 0.003,
            ContactMostOhm = 0.008,
            AirLeastK = 283.15,
            AirMostK = 338.15,
            TempcoIsLimit = random.Next(2) == 0,
            LeastA = random.Next(3) == 0 ? 0.4 : null,
            CornerMostA = random.Next(3) == 0 ? 4.8 : null,
        };

    /// <summary>The same with a resistor across the leads, or below all branches, on the driver's board.</summary>
    public static ChainSearchSpec OnBoard(ChainSearchSpec s) =>
        s.Arrangement == Arrangement.ParallelBranches
            ? s with
            {
                FloorOhm = 0.02,
                FloorTolerance = 0.01,
            }
            : s with
            {
                BleedOhm = 2.2,
                UnsensedLeadOhm = 0.004,
            };
}
