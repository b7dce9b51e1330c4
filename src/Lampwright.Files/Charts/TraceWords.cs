using Lampwright.Steps.Ways;

namespace Lampwright.Files.Charts;

/// <summary>Says in a sentence what there is to see in a course over time.</summary>
internal static class TraceWords
{
    /// <summary>Light under this share of the greatest is dark to the reader of the picture.</summary>
    private const double Dark = 0.02;

    /// <summary>The sentence.</summary>
    public static string Of(WayTrace trace)
    {
        var most = trace.LightShare.Max();
        if (most < 1e-3)
        {
            return "It stays dark.";
        }

        if (trace.HiccupHz is { } hz)
        {
            return $"It starts and stops about {ChartText.Number(hz, 2)} times a second: the light blinks.";
        }

        var dark = DarkShare(trace, most);
        if (dark > 0.98)
        {
            return "It lights up and is dark at the end of this time.";
        }

        if (dark > 0.01)
        {
            return $"In the second half of this time it is dark for {ChartText.Fixed(dark * 100, 0)} % of it.";
        }

        return trace.Settled
            ? $"It settles at {ChartText.Number(trace.MeanA)} A, {ChartText.Fixed(trace.LightShare[^1] * 100, 0)} % of the light at the set current."
            : "It has not come to rest in the time shown.";
    }

    /// <summary>Times at which the light rises through the middle between dark and brightest, in seconds.</summary>
    public static IReadOnlyList<double> Rises(WayTrace trace)
    {
        var middle = 0.5 * trace.LightShare.DefaultIfEmpty(0).Max();
        return
        [
            .. Enumerable
                .Range(1, Math.Max(0, trace.TimeS.Count - 1))
                .Where(i => trace.LightShare[i - 1] < middle && trace.LightShare[i] >= middle)
                .Select(i => trace.TimeS[i - 1]),
        ];
    }

    /// <summary>Share of the second half of the time in which it is dark.</summary>
    private static double DarkShare(WayTrace trace, double most)
    {
        var half = 0.5 * (trace.TimeS[0] + trace.TimeS[^1]);
        var (dark, all) = (0.0, 0.0);
        for (var i = 1; i < trace.TimeS.Count; i++)
        {
            var (from, to) = (Math.Max(half, trace.TimeS[i - 1]), trace.TimeS[i]);
            if (to <= from)
            {
                continue;
            }

            all += to - from;
            dark += 0.5 * (trace.LightShare[i - 1] + trace.LightShare[i]) < Dark * most ? to - from : 0;
        }

        return all > 0 ? dark / all : 0;
    }
}
