namespace Lampwright.Steps;

/// <summary>Voltage over current at the reference temperature: V = LogV·ln I + OffsetV + SeriesOhm·I.</summary>
/// <remarks>Constraint is empty, or the sentence that says what was held back and why.</remarks>
internal sealed record VoltageFit(
    double LogV,
    double OffsetV,
    double SeriesOhm,
    double FromA,
    double ToA,
    FitKind Kind,
    double HalfWidth,
    double DynamicHalfWidth,
    string HalfWidthSource,
    string Constraint
)
{
    /// <summary>Least half-width: points are typical values, one sample lies within about ±0.06 V of 3 V (common practice).</summary>
    private static readonly double LeastHalfWidth = 0.02;

    public double At(double currentA) => (LogV * Math.Log(currentA)) + OffsetV + (SeriesOhm * currentA);

    public static VoltageFit From(EmitterPoint[] points, EmitterRated? rated)
    {
        var distinct = points.Select(p => p.CurrentA).Distinct().Count();
        return distinct switch
        {
            >= 3 => Least(points),
            2 => Two(points),
            1 => StandIn(points.Average(p => p.VoltageV), points[0].CurrentA, 0.02),
            _ => StandIn(
                (rated!.LeastV + rated.MostV) / 2,
                rated.CurrentA,
                0.9 * (rated.MostV - rated.LeastV) / (rated.MostV + rated.LeastV)
            ),
        };
    }

    private static VoltageFit StandIn(double volts, double amps, double halfWidth) =>
        new(
            0,
            0.8 * volts,
            0.2 * volts / amps,
            0.3 * amps,
            amps,
            FitKind.StandIn,
            Math.Max(halfWidth, 0.02),
            0.5,
            "stand-in of ITECH IT8731 manual p. 58; width: common practice, no source",
            ""
        );

    private static VoltageFit Two(EmitterPoint[] points)
    {
        var groups = points.GroupBy(p => p.CurrentA).OrderBy(g => g.Key).ToArray();
        var (i1, i2) = (groups[0].Key, groups[1].Key);
        var (v1, v2) = (groups[0].Average(p => p.VoltageV), groups[1].Average(p => p.VoltageV));
        if (v2 < v1)
        {
            return Flat(points, FitKind.TwoPoints);
        }

        var log = (v2 - v1) / 2 / Math.Log(i2 / i1);
        var ohm = (v2 - v1) / 2 / (i2 - i1);
        var offset = v1 - (log * Math.Log(i1)) - (ohm * i1);

        // The gap between logarithm and chord is widest where their slopes agree, at the logarithmic mean current.
        var at = (i2 - i1) / Math.Log(i2 / i1);
        var gap = (2 * log * Math.Log(at / i1)) - (2 * ohm * (at - i1));
        var halfWidth = Math.Max(LeastHalfWidth, gap / 2 / v1);
        return new(
            log,
            offset,
            ohm,
            i1,
            i2,
            FitKind.TwoPoints,
            halfWidth,
            0.15,
            "half the gap between logarithm and chord (derived); at least 2 % between samples (common practice, no source)",
            ""
        );
    }

    private static VoltageFit Least(EmitterPoint[] points)
    {
        var volts = points.Select(p => p.VoltageV).ToArray();
        double[] logs = [.. points.Select(p => Math.Log(p.CurrentA))];
        double[] ones = [.. points.Select(_ => 1.0)];
        double[] amps = [.. points.Select(p => p.CurrentA)];
        if (LeastSquares.Solve([logs, ones, amps], volts) is { } full && full[0] >= 0 && full[2] >= 0)
        {
            return Make(points, full[0], full[1], full[2], 3, "");
        }

        // Both parts must not be negative: the best of the two reduced fits that keeps to that.
        var byLog =
            LeastSquares.Solve([logs, ones], volts) is { } l && l[0] >= 0
                ? Make(
                    points,
                    l[0],
                    l[1],
                    0,
                    2,
                    "The points ask for a negative series resistance; it was held at zero."
                )
                : null;
        var byLine =
            LeastSquares.Solve([ones, amps], volts) is { } s && s[1] >= 0
                ? Make(
                    points,
                    0,
                    s[0],
                    s[1],
                    2,
                    "The points bend upward instead of downward; a straight line was taken."
                )
                : null;
        if (byLog is null || byLine is null)
        {
            return byLog ?? byLine ?? Flat(points, FitKind.Points);
        }

        return byLine.HalfWidth < byLog.HalfWidth ? byLine : byLog;
    }

    private static VoltageFit Flat(EmitterPoint[] points, FitKind kind)
    {
        var mean = points.Average(p => p.VoltageV);
        var spread = points.Max(p => Math.Abs(p.VoltageV - mean)) / mean;
        return new(
            0,
            mean,
            0,
            points[0].CurrentA,
            points[^1].CurrentA,
            kind,
            Math.Max(0.05, spread),
            0.5,
            "points that contradict each other; common practice, no source",
            "The voltage falls as the current rises, which no emitter does; the mean voltage was taken."
        );
    }

    private static VoltageFit Make(
        EmitterPoint[] points,
        double log,
        double offset,
        double ohm,
        int unknowns,
        string why
    )
    {
        var fit = new VoltageFit(
            log,
            offset,
            ohm,
            points[0].CurrentA,
            points[^1].CurrentA,
            FitKind.Points,
            0,
            why.Length > 0 ? 0.15 : 0.05,
            "residuals of the fit, 1.645 s; at least 2 % between samples (common practice, no source)",
            why
        );
        var sum = points.Sum(p => Square((fit.At(p.CurrentA) / p.VoltageV) - 1));
        var s = Math.Sqrt(sum / Math.Max(1, points.Length - unknowns));
        return fit with { HalfWidth = Math.Max(LeastHalfWidth, 1.645 * s) };
    }

    private static double Square(double x) => x * x;
}
