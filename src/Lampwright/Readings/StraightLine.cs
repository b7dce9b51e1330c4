namespace Lampwright.Readings;

/// <summary>A straight line y = y1 + y2·(t − t0) by least squares.</summary>
/// <remarks>
/// <b>Source</b>: JCGM 100:2008, H.3. <b>Validity</b>: errors of y alone, equal and independent. <b>Checked by</b>: <i>certified</i> (StRD Norris, S.N-2),
/// S.N-1a, S.N-1b.
/// </remarks>
/// <param name="Reference">Reference abscissa t0.</param>
/// <param name="Intercept">Value y1 at t0.</param>
/// <param name="Slope">Slope y2.</param>
/// <param name="InterceptUncertainty">Standard uncertainty of y1.</param>
/// <param name="SlopeUncertainty">Standard uncertainty of y2.</param>
/// <param name="Correlation">Correlation of y1 and y2, −1 to 1.</param>
/// <param name="ResidualDeviation">Residual standard deviation s, n − 2 degrees of freedom.</param>
/// <param name="RSquared">Share of the variance that the line explains.</param>
/// <param name="Count">Count of points.</param>
public sealed record StraightLine(
    double Reference,
    double Intercept,
    double Slope,
    double InterceptUncertainty,
    double SlopeUncertainty,
    double Correlation,
    double ResidualDeviation,
    double RSquared,
    int Count
)
{
    /// <summary>Fits a line to three or more points.</summary>
    /// <param name="t">Abscissas, not all equal.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="reference">Reference abscissa t0.</param>
    public static StraightLine Fit(IReadOnlyList<double> t, IReadOnlyList<double> y, double reference = 0)
    {
        ArgumentNullException.ThrowIfNull(t);
        ArgumentNullException.ThrowIfNull(y);
        var n = (int)Guard.InRange(t.Count, 3, int.MaxValue);
        Guard.InRange(y.Count, n, n);
        var (meanT, meanY) = (t.Average(), y.Average());
        var (tt, ty, yy) = (0.0, 0.0, 0.0);
        for (var i = 0; i < n; i++)
        {
            var (dt, dy) = (Guard.Finite(t[i]) - meanT, Guard.Finite(y[i]) - meanY);
            tt += dt * dt;
            ty += dt * dy;
            yy += dy * dy;
        }

        var slope = ty / Guard.Positive(tt);
        var intercept = meanY - (slope * (meanT - reference));
        var residual = 0.0;
        for (var i = 0; i < n; i++)
        {
            var off = y[i] - meanY - (slope * (t[i] - meanT));
            residual += off * off;
        }

        var deviation = Math.Sqrt(residual / (n - 2));
        var toMean = meanT - reference;
        var spread = (1.0 / n) + (toMean * toMean / tt);
        var uIntercept = deviation * Math.Sqrt(spread);
        var uSlope = deviation / Math.Sqrt(tt);
        var correlation = -toMean / tt / Math.Sqrt(spread / tt);
        return new(
            reference,
            intercept,
            slope,
            uIntercept,
            uSlope,
            correlation,
            deviation,
            yy > 0 ? 1 - (residual / yy) : 1,
            n
        );
    }

    /// <summary>Value of the line at an abscissa, with the uncertainty of the line: u² = u1² + (t − t0)²·u2² + 2(t − t0)·u1·u2·r.</summary>
    /// <param name="t">Abscissa.</param>
    public Estimate At(double t)
    {
        var d = Guard.Finite(t) - Reference;
        var variance =
            (InterceptUncertainty * InterceptUncertainty)
            + (d * d * SlopeUncertainty * SlopeUncertainty)
            + (2 * d * InterceptUncertainty * SlopeUncertainty * Correlation);
        return new(Intercept + (Slope * d), Math.Sqrt(Math.Max(variance, 0)));
    }

    /// <summary>Factor of a line through the origin, with its standard uncertainty: B = Σxy/Σx², n − 1 degrees of freedom.</summary>
    /// <param name="x">Abscissas, two or more, not all 0.</param>
    /// <param name="y">Ordinates.</param>
    public static Estimate FactorThroughOrigin(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        var n = (int)Guard.InRange(x.Count, 2, int.MaxValue);
        Guard.InRange(y.Count, n, n);
        var (xx, xy) = (0.0, 0.0);
        for (var i = 0; i < n; i++)
        {
            xx += Guard.Finite(x[i]) * x[i];
            xy += x[i] * Guard.Finite(y[i]);
        }

        var factor = xy / Guard.Positive(xx);
        var residual = 0.0;
        for (var i = 0; i < n; i++)
        {
            var off = y[i] - (factor * x[i]);
            residual += off * off;
        }

        return new(factor, Math.Sqrt(residual / (n - 1) / xx));
    }
}
