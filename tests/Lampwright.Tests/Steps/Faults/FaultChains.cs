using Lampwright.Steps;
using Lampwright.Steps.Faults;

namespace Lampwright.Tests.Steps.Faults;

/// <summary>Chains that faults are played on.</summary>
internal static class FaultChains
{
    public static DriverSpec Driver { get; } =
        new(1.75, 0.25, 24, 42, 0.89, new([]), Isolation.Yes, 46, OverVoltage.Trips, UnderVoltage.Hiccups);

    public static ResistorPart Part(double ohm) => new(ohm, 0, 3, 343.15, 428.15);

    /// <summary>A series chain in which nothing can harm the emitter: parts that fail open, leads apart.</summary>
    public static ChainSpec Series { get; } =
        new(
            Arrangement.SeriesChain,
            Part(0.195),
            [Part(0.13), Part(0.16), Part(0.24), Part(0.36)],
            0.005,
            0.012,
            new(0.12, 0.75),
            Fails: FailureKind.Open,
            LeadsApart: true
        );

    public static ChainSpec Taps { get; } =
        Series with
        {
            Taps = SenseTaps.AtTheChainsEnds,
            FallbackOhm = 100,
            BleedOhm = 1,
        };

    public static ChainSpec Branches { get; } =
        Series with
        {
            Arrangement = Arrangement.ParallelBranches,
            Fixed = Part(0.39),
            Switched = [Part(0.47), Part(0.82)],
            FloorOhm = 0.18,
        };

    public static ChainSpec Selector { get; } =
        Series with
        {
            Arrangement = Arrangement.Selector,
            Switched = [Part(0.05), Part(0.2), Part(0.5)],
        };

    public static FaultsSpec Spec(ChainSpec chain, double thresholdV = 0.339, DriverSpec? driver = null) =>
        new(chain, new(thresholdV, 0.195, 0, 0.89), driver ?? Driver, new(31, 2.5, 2.0));

    public static FaultResult Of(FaultsSpec spec, string what) => FaultPlay.All(spec).Single(f => f.What == what);
}
