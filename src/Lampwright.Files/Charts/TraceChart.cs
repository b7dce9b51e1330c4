using Lampwright.Steps.Ways;

namespace Lampwright.Files.Charts;

/// <summary>Light and current of one way of dimming over time, as its simulation found them.</summary>
public static class TraceChart
{
    private const int Columns = 240;
    private const int Stretches = 48;

    /// <summary>The whole course; null where there is none.</summary>
    /// <param name="trace">What the simulation found.</param>
    /// <param name="title">What it shows, in a few words.</param>
    public static Chart? Of(WayTrace trace, string title = "Light and current from switching on")
    {
        ArgumentNullException.ThrowIfNull(trace);
        return trace.TimeS.Count < 2
            ? null
            : Draw(trace, title, trace.TimeS[0], trace.TimeS[^1]) with
            {
                Says = TraceWords.Of(trace),
            };
    }

    /// <summary>The last few times that the light goes on and off, where they are too many to be told apart in the whole; null otherwise.</summary>
    /// <param name="trace">What the simulation found.</param>
    /// <param name="title">What it shows, in a few words.</param>
    public static Chart? Close(WayTrace trace, string title = "The last few of it, closer")
    {
        ArgumentNullException.ThrowIfNull(trace);
        var starts = TraceWords.Rises(trace);
        if (starts.Count < 25)
        {
            return null;
        }

        var from = starts[^6];
        return Draw(trace, title, from, trace.TimeS[^1]) with { Says = "Each pulse of the light by itself." };
    }

    private static Chart Draw(WayTrace trace, string title, double fromS, double toS)
    {
        var span = toS - fromS;
        var (factor, unit) =
            span > 2 ? (1.0, "s")
            : span > 2e-3 ? (1e3, "ms")
            : (1e6, "µs");
        var shown = Enumerable.Range(0, trace.TimeS.Count).Where(i => trace.TimeS[i] >= fromS && trace.TimeS[i] <= toS);
        var light = shown.Select(i => (X: trace.TimeS[i] * factor, Y: trace.LightShare[i] * 100)).ToList();
        var current = shown.Select(i => (X: trace.TimeS[i] * factor, Y: trace.EmitterA[i])).ToList();
        var (mostLight, mostA) = (Top(light, 100), Top(current, 0));
        return new(
            title,
            new("Time", unit) { Least = fromS * factor, Most = toS * factor },
            new("Light", "% of set") { Least = 0, Most = mostLight },
            [
                new AreaLayer("light", Palette.Light, Envelope.Of(light, Columns)),
                new LineLayer("emitter current", Palette.Flow, Envelope.Of(current, Columns))
                {
                    OnSecond = true,
                    MostReadouts = 0,
                    Boldness = 0.55,
                },
                new MomentLayer("events", Palette.Heat, Moments(trace, fromS, toS, factor)),
                new TellLayer("", Palette.Light, Tells(light, current, unit)),
            ]
        )
        {
            Second = new("Current", "A") { Least = 0, Most = mostA },
        };
    }

    /// <summary>Each kind of event is named where it first happens; those that come again are ticks.</summary>
    private static IReadOnlyList<Moment> Moments(WayTrace trace, double fromS, double toS, double factor)
    {
        var named = new HashSet<string>(StringComparer.Ordinal);
        return
        [
            .. trace
                .Events.Where(e => e.AtS >= fromS && e.AtS <= toS)
                .Select(e => new Moment(e.AtS * factor, named.Add(e.Words) ? e.Words : "")),
        ];
    }

    private static IReadOnlyList<Tell> Tells(
        IReadOnlyList<(double X, double Y)> light,
        IReadOnlyList<(double X, double Y)> current,
        string unit
    )
    {
        if (light.Count == 0)
        {
            return [];
        }

        var (from, width) = (light[0].X, (light[^1].X - light[0].X) / Stretches);
        var tells = new List<Tell>(Stretches);
        var next = 0;
        for (var s = 0; s < Stretches && width > 0; s++)
        {
            var (a, b) = (from + (s * width), s + 1 < Stretches ? from + ((s + 1) * width) : light[^1].X);
            var (low, high) = (At(light, next, a), At(light, next, a));
            var (least, most) = (At(current, next, a), At(current, next, a));
            for (; next < light.Count && light[next].X <= b; next++)
            {
                (low, high) = (Math.Min(low, light[next].Y), Math.Max(high, light[next].Y));
                (least, most) = (Math.Min(least, current[next].Y), Math.Max(most, current[next].Y));
            }

            tells.Add(
                new(
                    a,
                    b,
                    $"{ChartText.Number((a + b) / 2)} {unit}",
                    $"light {Range(low, high, 0)} %, {Range(least, most, 2)} A",
                    low,
                    high
                )
            );
        }

        return tells;
    }

    /// <summary>The course at a place before the point with the given index.</summary>
    private static double At(IReadOnlyList<(double X, double Y)> course, int next, double x)
    {
        if (next <= 0 || next >= course.Count)
        {
            return course[Math.Clamp(next, 0, course.Count - 1)].Y;
        }

        var (before, after) = (course[next - 1], course[next]);
        var share = after.X > before.X ? Math.Clamp((x - before.X) / (after.X - before.X), 0, 1) : 1;
        return before.Y + (share * (after.Y - before.Y));
    }

    private static string Range(double low, double high, int decimals)
    {
        var (a, b) = (ChartText.Fixed(low, decimals), ChartText.Fixed(high, decimals));
        return a == b ? a : $"{a} to {b}";
    }

    /// <summary>A round number above all, at least the given.</summary>
    private static double Top(IReadOnlyList<(double X, double Y)> points, double least)
    {
        var most = points.Select(p => p.Y).Where(double.IsFinite).DefaultIfEmpty(0).Max();
        var top = Math.Max(Math.Max(most * 1.03, least), 1e-3);
        var step = Scale.RoundTick(top / 8);
        return Math.Ceiling((top / step) - 1e-9) * step;
    }
}
