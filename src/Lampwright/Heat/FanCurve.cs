namespace Lampwright.Heat;

/// <summary>Pressure of a fan over its flow, through the maker's points. Laid once; reading it allocates nothing.</summary>
/// <remarks>
/// Piecewise monotone cubic. Before the first point the pressure is held; after the last it goes on at the last slope until it is spent.
/// Validity: as far as the points go. Accuracy: makers allow themselves 10 % (common practice).
/// </remarks>
public sealed class FanCurve
{
    private readonly double[] flows;
    private readonly double[] pressures;
    private readonly double[] slopes;

    /// <summary>Lays a curve through points.</summary>
    /// <param name="points">At least two points, flow rising, none negative (see <see cref="IsUsable"/>).</param>
    /// <exception cref="ArgumentException">The points are not usable.</exception>
    public FanCurve(IReadOnlyList<FanPoint> points)
    {
        if (!IsUsable(points))
        {
            throw new ArgumentException(
                "A fan curve needs two points or more, flow rising, none negative.",
                nameof(points)
            );
        }

        var ends = WithFreeFlow(points);
        flows = [.. ends.Select(p => p.FlowM3PerS)];
        pressures = [.. ends.Select(p => p.PressurePa)];
        slopes = new double[flows.Length];
        MonotoneCubic.Slopes(flows, pressures, slopes);
    }

    /// <summary>Flow at which the pressure is spent, m³/s.</summary>
    public double FreeFlowM3PerS => flows[^1];

    /// <summary>Pressure with the outlet shut, Pa.</summary>
    public double StillPressurePa => pressures[0];

    /// <summary>Flows of the points, rising, m³/s.</summary>
    internal ReadOnlySpan<double> Flows => flows;

    /// <summary>True when the points make a curve: two or more, finite, flow rising, none negative, some pressure.</summary>
    /// <param name="points">The points.</param>
    public static bool IsUsable(IReadOnlyList<FanPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var some = false;
        for (var i = 0; i < points.Count; i++)
        {
            var (flow, pressure) = (points[i].FlowM3PerS, points[i].PressurePa);
            if (!(flow >= 0 && pressure >= 0) || !double.IsFinite(flow) || !double.IsFinite(pressure))
            {
                return false;
            }

            if (i > 0 && !(flow > points[i - 1].FlowM3PerS))
            {
                return false;
            }

            some |= pressure > 0;
        }

        return points.Count >= 2 && some;
    }

    /// <summary>Pressure at a flow, Pa; negative beyond the free flow, where the fan is in the way.</summary>
    /// <param name="flowM3PerS">Flow at rated speed, m³/s.</param>
    public double PressurePa(double flowM3PerS)
    {
        if (flowM3PerS > flows[^1])
        {
            return (flows[^1] - flowM3PerS) * StillPressurePa / flows[^1];
        }

        return MonotoneCubic.At(flows, pressures, slopes, flowM3PerS);
    }

    /// <summary>True when the curve rises at a flow: the region where fans stall and growl.</summary>
    /// <param name="flowM3PerS">Flow at rated speed, m³/s.</param>
    public bool RisesAt(double flowM3PerS)
    {
        var step = 1e-3 * flows[^1];
        return PressurePa(flowM3PerS + step) > PressurePa(Math.Max(0, flowM3PerS - step)) + 1e-9 * StillPressurePa;
    }

    private static List<FanPoint> WithFreeFlow(IReadOnlyList<FanPoint> points)
    {
        List<FanPoint> all = [.. points];
        if (all[0].FlowM3PerS > 0)
        {
            all.Insert(0, new FanPoint(0, all[0].PressurePa));
        }

        var last = all[^1];
        if (last.PressurePa > 0)
        {
            var before = all[^2];
            var slope = (last.PressurePa - before.PressurePa) / (last.FlowM3PerS - before.FlowM3PerS);
            var further = slope < 0 ? Math.Min(-last.PressurePa / slope, last.FlowM3PerS) : 0.5 * last.FlowM3PerS;
            all.Add(new FanPoint(last.FlowM3PerS + further, 0));
        }

        return all;
    }
}
