namespace Lampwright.Steps.Ways;

/// <summary>What each way of dimming would do to one supply, driver and emitter, known before anything is desoldered.</summary>
/// <remarks>
/// <b>Validity</b>: averaged over the switching of driver and converter; direct current or rms values; see each way.
/// <b>Source</b>: Kirchhoff (derived); each way names what it takes from elsewhere. <b>Checked by</b>: derived rows, solver, invariant.
/// </remarks>
public static class WaysComparison
{
    /// <summary>Judges every way.</summary>
    /// <param name="spec">Supply, driver, emitter and chain.</param>
    /// <exception cref="ArgumentOutOfRangeException">The driver's rated current is not above zero.</exception>
    public static WaysResult Of(WaysSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var bench = new WayBench(spec);
        Way[] ways =
        [
            SupplyResistorWay.Of(bench),
            ConverterWay.Of(bench),
            SeriesResistorWay.Of(bench),
            ShuntResistorWay.Of(bench),
            SenseWays.Of(bench, WayKind.FixedSense),
            SenseWays.Of(bench, WayKind.SteppedChain),
            SenseWays.Of(bench, WayKind.ParallelBranches),
            SenseWays.Of(bench, WayKind.SelectorShorting),
            SenseWays.Of(bench, WayKind.SelectorOpening),
            ChoppingWays.Behind(bench),
            ChoppingWays.Without(bench),
            DimmingWays.Input(bench),
            DimmingWays.Other(bench),
        ];
        var findings = WayRules.Judge(bench);
        return new(ways, findings);
    }
}
