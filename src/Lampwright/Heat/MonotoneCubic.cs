namespace Lampwright.Heat;

/// <summary>A smooth curve through points that rises and falls only where the points do.</summary>
/// <remarks>Source: Hyman 1983, SIAM J. Sci. Stat. Comput. 4:645-654: slopes of parabolas, held to three times the smaller neighbour's.</remarks>
internal static class MonotoneCubic
{
    /// <summary>Slopes at the points, held so that nothing overshoots.</summary>
    /// <param name="x">Abscissas, rising, at least two.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="slopes">Receives one slope per point.</param>
    internal static void Slopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y, Span<double> slopes)
    {
        var last = x.Length - 1;
        if (last == 1)
        {
            slopes[0] = slopes[1] = (y[1] - y[0]) / (x[1] - x[0]);
            return;
        }

        for (var i = 1; i < last; i++)
        {
            double h0 = x[i] - x[i - 1],
                h1 = x[i + 1] - x[i],
                d0 = (y[i] - y[i - 1]) / h0,
                d1 = (y[i + 1] - y[i]) / h1;
            slopes[i] = Held((h1 * d0 + h0 * d1) / (h0 + h1), d0, d1);
        }

        slopes[0] = End(x[1] - x[0], x[2] - x[1], (y[1] - y[0]) / (x[1] - x[0]), (y[2] - y[1]) / (x[2] - x[1]));
        slopes[last] = End(
            x[last] - x[last - 1],
            x[last - 1] - x[last - 2],
            (y[last] - y[last - 1]) / (x[last] - x[last - 1]),
            (y[last - 1] - y[last - 2]) / (x[last - 1] - x[last - 2])
        );
    }

    /// <summary>Value of the curve; held at the ends outside the points.</summary>
    internal static double At(ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> slopes, double at)
    {
        var last = x.Length - 1;
        if (at <= x[0])
        {
            return y[0];
        }

        if (at >= x[last])
        {
            return y[last];
        }

        var i = 1;
        while (at > x[i])
        {
            i++;
        }

        var h = x[i] - x[i - 1];
        double t = (at - x[i - 1]) / h,
            u = 1 - t;
        return u * u * (y[i - 1] * (1 + 2 * t) + slopes[i - 1] * h * t)
            + t * t * (y[i] * (1 + 2 * u) - slopes[i] * h * u);
    }

    private static double Held(double slope, double d0, double d1)
    {
        if (d0 * d1 <= 0)
        {
            return 0;
        }

        var most = 3 * Math.Min(Math.Abs(d0), Math.Abs(d1));
        return Math.Clamp(slope, -most, most);
    }

    private static double End(double h0, double h1, double d0, double d1)
    {
        var slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
        if (slope * d0 <= 0)
        {
            return 0;
        }

        return d0 * d1 <= 0 && Math.Abs(slope) > 3 * Math.Abs(d0) ? 3 * d0 : slope;
    }
}
