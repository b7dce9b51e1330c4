namespace Lampwright.Heat;

/// <summary>Rises of a sink over the voltage of its fan, for the question how slow it may run.</summary>
/// <remarks>
/// Laid once at some twenty voltages (about 0.3 ms) and read between them in a straight line. More voltage never warms; where a computed rise
/// grows by a hair, the smaller stands. Accuracy: 1 % of the voltage.
/// </remarks>
public sealed class FanLadder
{
    private static readonly int Rungs = 24;

    private readonly double[] ratios;
    private readonly SinkCurve[] curves;

    private FanLadder(double[] ratios, SinkCurve[] curves) => (this.ratios, this.curves) = (ratios, curves);

    /// <summary>Lays the ladder; null without a fan.</summary>
    /// <param name="sink">The sink.</param>
    /// <param name="ambientK">Air that the fan draws in, K, 200 to 400.</param>
    /// <param name="leastRatio">Least voltage that it may be given over the rated one, above 0.</param>
    /// <param name="mostRatio">Most voltage over the rated one, above the least.</param>
    public static FanLadder? Of(PreparedSink sink, double ambientK, double leastRatio, double mostRatio)
    {
        ArgumentNullException.ThrowIfNull(sink);
        Guard.Positive(leastRatio);
        if (sink.Nominal.Fan is not { } fan || mostRatio <= leastRatio)
        {
            return null;
        }

        var ratios = Enumerable
            .Range(0, Rungs)
            .Select(i => leastRatio + ((mostRatio - leastRatio) * i / (Rungs - 1)))
            .ToArray();
        return new(
            ratios,
            [
                .. ratios.Select(r =>
                    sink.Curve(sink.Nominal with { Fan = fan with { VoltageRatio = r } }, ambientK, fanRuns: true)
                ),
            ]
        );
    }

    /// <summary>Least voltage over the rated one that keeps the rise under the hottest emitter; null where none does.</summary>
    /// <param name="heatW">Heat that enters, W, 0 or above.</param>
    /// <param name="riseK">Rise that must not be passed, K.</param>
    public double? LeastRatio(double heatW, double riseK)
    {
        var above = curves[0].HottestRiseK(heatW);
        if (above <= riseK)
        {
            return ratios[0];
        }

        for (var i = 1; i < curves.Length; i++)
        {
            var here = curves[i].HottestRiseK(heatW);
            if (here <= riseK)
            {
                return ratios[i - 1] + ((ratios[i] - ratios[i - 1]) * (above - riseK) / (above - here));
            }

            above = Math.Min(above, here);
        }

        return null;
    }
}
