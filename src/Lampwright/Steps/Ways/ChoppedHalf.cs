namespace Lampwright.Steps.Ways;

/// <summary>Half of the light by chopping behind the output capacitor: the duty that gives it, and what the least duty gives.</summary>
internal readonly record struct ChoppedHalf(
    double? Duty,
    double EmitterW,
    double SwitchW,
    double LeastShare,
    double LeastA,
    double MostShare,
    double MostA
)
{
    /// <summary>Least duty that is looked at.</summary>
    public static double LeastDuty => 0.1;

    /// <summary>Share of light that half is met by; the band of any emitter is far wider.</summary>
    private static readonly double Near = 1e-3;

    /// <summary>The duty at which the mean light is half, null where even the least duty gives more.</summary>
    public static ChoppedHalf Of(in WayDraw draw, in HalfLight half)
    {
        var (low, high) = (LeastDuty, 1.0);
        var cycle = Cycle(draw, low);
        var leastShare = cycle.Mean(low, (h, i) => h.Share(i), half);
        var leastA = cycle.MeanA;
        var open = Cycle(draw, high);
        var (mostShare, mostA) = (open.Mean(high, (h, i) => h.Share(i), half), open.MeanA);
        if (!(leastShare < 0.5) || !(mostShare > 0.5))
        {
            return new(null, 0, 0, leastShare, leastA, mostShare, mostA);
        }

        // Regula falsi with the Illinois rule: the light rises steadily with the duty.
        var (under, over) = (leastShare - 0.5, mostShare - 0.5);
        var (duty, side) = (0.0, 0);
        for (var pass = 0; pass < 12; pass++)
        {
            duty = low + ((high - low) * under / (under - over));
            cycle = Cycle(draw, duty);
            var miss = cycle.Mean(duty, (h, i) => h.Share(i), half) - 0.5;
            if (Math.Abs(miss) < Near)
            {
                break;
            }

            // The end that stays twice counts half.
            if (miss < 0)
            {
                (low, under, over, side) = (duty, miss, side < 0 ? 0.5 * over : over, -1);
            }
            else
            {
                (high, over, under, side) = (duty, miss, side > 0 ? 0.5 * under : under, 1);
            }
        }

        var emitterW = cycle.Mean(duty, (h, i) => h.PowerW(i), half);
        var switchW = WayExamples.SwitchOhm * cycle.Mean(duty, (_, i) => i * i, 0);
        return new(duty, emitterW, switchW, leastShare, leastA, mostShare, mostA);
    }

    /// <summary>The cycle at a duty.</summary>
    public static ChoppedCycle Cycle(in WayDraw draw, double duty) =>
        ChoppedCycle.Of(draw.Model, draw.JunctionK, draw.SetA, draw.OutputF, draw.LimitV, WayExamples.ChopHz, duty);
}
