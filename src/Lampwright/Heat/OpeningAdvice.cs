namespace Lampwright.Heat;

/// <summary>How much larger or smaller the openings of the air's way would have to be for a wanted temperature.</summary>
/// <param name="Times">Factor on the open area of all openings; 1 as drawn. The most that was tried where nothing reaches it.</param>
/// <param name="IsReached">False when even wide open the base stays hotter.</param>
/// <param name="BaseRiseK">Rise of the base with it, K.</param>
public sealed record Opening(double Times, bool IsReached, double BaseRiseK);

/// <summary>Finds the opening that gives a wanted temperature.</summary>
/// <remarks>
/// All openings grow alike; guards, filters, turns and the sink's channels stay. More opening never warms, so the search halves in the logarithm
/// of the area. <b>Heavy</b> (about 0.3 ms): once, at nominal. Accuracy: that of <see cref="SinkCurve"/>.
/// </remarks>
public static class OpeningAdvice
{
    /// <summary>Least part of the drawn opening that is tried.</summary>
    public static readonly double LeastTimes = 0.05;

    /// <summary>Most of the drawn opening that is tried; beyond it an opening costs nothing any more.</summary>
    public static readonly double MostTimes = 20;

    private static readonly int Halvings = 24;

    /// <summary>The opening that gives a wanted rise; null without a fan that runs or without an opening that can be changed.</summary>
    /// <param name="sink">The sink.</param>
    /// <param name="ambientK">Air that the fan draws in, K, 200 to 400.</param>
    /// <param name="heatW">Heat that enters, W, above 0.</param>
    /// <param name="wantedRiseK">Rise of the base that is wanted, K.</param>
    public static Opening? For(PreparedSink sink, double ambientK, double heatW, double wantedRiseK)
    {
        ArgumentNullException.ThrowIfNull(sink);
        Guard.Positive(heatW);
        var spec = sink.Nominal;
        if (spec.Fan is not { SpeedRatio: > 0 } || !spec.AirLosses.Any(l => l.OpenM2 > 0))
        {
            return null;
        }

        double Rise(double times) =>
            sink.Curve(
                    spec with
                    {
                        AirLosses = [.. spec.AirLosses.Select(l => l.Opened(times))],
                    },
                    ambientK,
                    fanRuns: true
                )
                .BaseRiseK(heatW);
        var wide = Rise(MostTimes);
        if (wide > wantedRiseK)
        {
            return new(MostTimes, false, wide);
        }

        var tight = Rise(LeastTimes);
        if (tight <= wantedRiseK)
        {
            return new(LeastTimes, true, tight);
        }

        double low = Math.Log(LeastTimes),
            high = Math.Log(MostTimes);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Rise(Math.Exp(middle)) > wantedRiseK ? (middle, high) : (low, middle);
        }

        var times = Math.Exp(high);
        return new(times, true, Rise(times));
    }
}
