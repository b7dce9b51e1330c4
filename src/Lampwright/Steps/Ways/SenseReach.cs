namespace Lampwright.Steps.Ways;

/// <summary>How far a changed sense resistance reaches: least and greatest current, and what bounds them.</summary>
/// <remarks>
/// Least: the driver's label, half of the inductor's ripple (below it the current law ends), and the
/// lower end of the output window with a hot emitter. Most: the rated current, the emitter's limit, and the upper end of the window, or the voltage limit where that lies inside of it, with
/// a cold one. A chain that is chosen bounds both by its own resistances.
/// </remarks>
internal sealed class SenseReach
{
    private readonly WayFacts _facts;
    private readonly ChainSpec? _chain;
    private readonly double _chainLeast;
    private readonly double _chainMost;

    public SenseReach(WayFacts facts)
    {
        _facts = facts;
        Threshold = SenseThreshold.From(facts.Spec.Driver);
        Driver = DriverModel.From(facts.Spec.Driver with { Efficiency = facts.Efficiency }, Threshold);
        if (Driver is { } d && facts.Spec.Chain is { } chain && StepsStation.Computable(chain))
        {
            _chain = chain;
            (_chainLeast, _chainMost, OverlapA) = Ends(new ChainNetwork(chain), d);
        }
    }

    public SenseThreshold Threshold { get; }

    public DriverModel? Driver { get; }

    /// <summary>Greatest current between two positions of the chosen selector, null where none is chosen.</summary>
    public double? OverlapA { get; }

    /// <summary>Least current that holds for every changed sense resistance, in amperes, and what bounds it.</summary>
    public double LeastA(in WayDraw draw, out SenseBound bound)
    {
        var least = _facts.LeastA ?? 0;
        bound = _facts.LeastA is null ? SenseBound.Example : SenseBound.Label;
        if (bound == SenseBound.Example)
        {
            least = WayExamples.LeastShare * _facts.Spec.Driver.RatedA;
        }

        if (Threshold.Law?.EndsBelowA is { } ends && ends > least)
        {
            (least, bound) = (ends, SenseBound.Ripple);
        }

        if (_facts.WindowLeastV is { } window && draw.Model.VoltageV(least, _facts.HotK) < window)
        {
            least = Math.Max(least, EmitterCurve.CurrentA(draw.Model, window, _facts.HotK, 10 * draw.SetA));
            bound = SenseBound.Window;
        }

        return least;
    }

    /// <summary>Greatest current, in amperes.</summary>
    public double MostA(in WayDraw draw)
    {
        var most = Math.Min(Math.Max(_facts.Spec.Driver.RatedA, draw.SetA), _facts.EmitterMostA ?? double.MaxValue);

        // A protection that acts inside of the window ends it there.
        return _facts.GivesUpToV is var top && draw.Model.VoltageV(most, _facts.ColdK) > top
            ? Math.Min(most, EmitterCurve.CurrentA(draw.Model, top, _facts.ColdK, most))
            : most;
    }

    /// <summary>Least and greatest current of a way, in amperes; the least may lie above the greatest, then there is none.</summary>
    public (double LeastA, double MostA) Of(WayKind kind, in WayDraw draw)
    {
        var (least, most) = (LeastA(draw, out _), MostA(draw));
        if (IsChosen(kind))
        {
            // The draw's driver gives more or less than the nominal one by the same share at every resistance.
            var ratio = draw.SetA / _facts.SetA;
            return (Math.Max(least, _chainLeast * ratio), Math.Min(most, _chainMost * ratio));
        }

        if (kind == WayKind.ParallelBranches && Threshold.VoltageV is { } v)
        {
            // Leads and contacts stay in series with the branches: least current through the fixed part, most through that floor beside it.
            most = Math.Min(most, least + (v / WayExamples.BranchFloorOhm));
        }

        return (least, most);
    }

    /// <summary>Whether a way is the one that the chosen chain builds.</summary>
    public bool IsChosen(WayKind kind) =>
        _chain is { } c
        && kind
            == (
                c.Switched.Count == 0
                    ? WayKind.FixedSense
                    : c.Arrangement switch
                    {
                        Arrangement.SeriesChain => WayKind.SteppedChain,
                        Arrangement.ParallelBranches => WayKind.ParallelBranches,
                        _ => c.Selector == SelectorKind.MakeBeforeBreak
                            ? WayKind.SelectorShorting
                            : WayKind.SelectorOpening,
                    }
            );

    /// <summary>Heat of the sense resistors outside of the driver at a dimmed current, in watts: the threshold less the part that stays on the board.</summary>
    public double OutsideW(double currentA, double setA) =>
        Threshold.VoltageV is { } v ? v * currentA * Math.Max(0, 1 - (currentA / setA)) : 0;

    // Every closed switch lowers the resistance, so first and last combination are the ends; a selector is looked at in each position.
    private static (double LeastA, double MostA, double? OverlapA) Ends(ChainNetwork network, in DriverModel driver)
    {
        var spec = network.Spec;
        ReadOnlySpan<double> contact = [spec.ContactOhm];
        Span<double> ohms = stackalloc double[spec.Switched.Count + 1];
        ohms[0] = spec.Fixed.Ohm;
        for (var k = 0; k < spec.Switched.Count; k++)
        {
            ohms[k + 1] = spec.Switched[k].Ohm;
        }

        var lead = network.LeadOhm(313.15);
        var (least, most) = (double.PositiveInfinity, 0.0);
        var last = network.CombinationCount - 1;
        var step = spec.Arrangement == Arrangement.Selector ? 1 : Math.Max(1, last);
        for (var i = 0; i <= last; i += step)
        {
            var amps = driver.CurrentA(network.TotalOhm(i, ohms, contact, lead));
            (least, most) = (Math.Min(least, amps), Math.Max(most, amps));
        }

        double? overlap = null;
        for (var k = 1; spec.Arrangement == Arrangement.Selector && k < spec.Switched.Count; k++)
        {
            var both = ChainNetwork.ByPassed(ohms[k] + spec.ContactOhm, ohms[k + 1] + spec.ContactOhm);
            overlap = Math.Max(overlap ?? 0, driver.CurrentA(ohms[0] + lead + both));
        }

        return (least, most, overlap);
    }
}

/// <summary>What bounds the least current of a changed sense resistance.</summary>
internal enum SenseBound
{
    /// <summary>Nothing is known: a tenth of the rated current is taken.</summary>
    Example,

    /// <summary>The driver's label.</summary>
    Label,

    /// <summary>Half of the ripple of the inductor's current.</summary>
    Ripple,

    /// <summary>The lower end of the output window.</summary>
    Window,
}
