namespace Lampwright.Light;

/// <summary>View factors between simple shapes in closed form: the share of the light of a Lambertian face that meets another.</summary>
/// <remarks>
/// <b>Source</b>: Siegel and Howell, Thermal Radiation Heat Transfer, 4th ed., appendix C (second-hand); the general parallel
/// rectangles as the double area integral in its usual sixteen-term form. <b>Checked by</b>: L.P-8a, L.P-8b, L.P-9a, L.P-10.
/// </remarks>
public static class ViewFactors
{
    /// <summary>View factor between two equal aligned parallel rectangles.</summary>
    /// <param name="widthM">Width, metres, above 0.</param>
    /// <param name="heightM">Height, metres, above 0.</param>
    /// <param name="distanceM">Distance of the planes, metres, above 0.</param>
    public static double EqualParallelRectangles(double widthM, double heightM, double distanceM)
    {
        var x = Guard.Positive(widthM) / Guard.Positive(distanceM);
        var y = Guard.Positive(heightM) / distanceM;
        var (rx, ry) = (Math.Sqrt(1 + (x * x)), Math.Sqrt(1 + (y * y)));
        var sum =
            (Math.Log((1 + (x * x)) * (1 + (y * y)) / (1 + (x * x) + (y * y))) / 2)
            + (x * ry * Math.Atan(x / ry))
            + (y * rx * Math.Atan(y / rx))
            - (x * Math.Atan(x))
            - (y * Math.Atan(y));
        return 2 / (Math.PI * x * y) * sum;
    }

    /// <summary>View factor between two perpendicular rectangles with a common edge, from the first to the second.</summary>
    /// <param name="commonM">Common edge, metres, above 0.</param>
    /// <param name="fromM">Width of the first rectangle away from the edge, metres, above 0.</param>
    /// <param name="toM">Height of the second rectangle away from the edge, metres, above 0.</param>
    public static double PerpendicularRectangles(double commonM, double fromM, double toM)
    {
        var w = Guard.Positive(fromM) / Guard.Positive(commonM);
        var h = Guard.Positive(toM) / commonM;
        var (w2, h2) = (w * w, h * h);
        var both = Math.Sqrt(w2 + h2);
        var log =
            Math.Log((1 + w2) * (1 + h2) / (1 + w2 + h2))
            + (w2 * Math.Log(w2 * (1 + w2 + h2) / ((1 + w2) * (w2 + h2))))
            + (h2 * Math.Log(h2 * (1 + w2 + h2) / ((1 + h2) * (w2 + h2))));
        return ((w * Math.Atan(1 / w)) + (h * Math.Atan(1 / h)) - (both * Math.Atan(1 / both)) + (log / 4))
            / (Math.PI * w);
    }

    /// <summary>View factor between two parallel discs on one axis, from the first to the second.</summary>
    /// <param name="fromRadiusM">Radius of the first disc, metres, above 0.</param>
    /// <param name="toRadiusM">Radius of the second disc, metres, above 0.</param>
    /// <param name="distanceM">Distance of the planes, metres, above 0.</param>
    public static double CoaxialDiscs(double fromRadiusM, double toRadiusM, double distanceM)
    {
        var r1 = Guard.Positive(fromRadiusM) / Guard.Positive(distanceM);
        var r2 = Guard.Positive(toRadiusM) / distanceM;
        var s = 1 + ((1 + (r2 * r2)) / (r1 * r1));
        return (s - Math.Sqrt((s * s) - (4 * (r2 / r1) * (r2 / r1)))) / 2;
    }

    /// <summary>
    /// Exchange area (area times view factor, the same in both directions) of two parallel rectangles on one axis, sides parallel,
    /// given by half sides. At distance 0 the smaller area.
    /// </summary>
    /// <param name="a1M">Half width of the first, metres, 0 or more.</param>
    /// <param name="b1M">Half height of the first, metres, 0 or more.</param>
    /// <param name="a2M">Half width of the second, metres, 0 or more.</param>
    /// <param name="b2M">Half height of the second, metres, 0 or more.</param>
    /// <param name="distanceM">Distance of the planes, metres, 0 or more.</param>
    public static double CoaxialExchangeM2(double a1M, double b1M, double a2M, double b2M, double distanceM)
    {
        if (distanceM <= 0)
        {
            return 4 * Math.Min(a1M, a2M) * Math.Min(b1M, b2M);
        }

        var (p, q, r, s) = (a1M + a2M, a1M - a2M, b1M + b2M, b1M - b2M);
        return 4
            * (
                ExchangeTerm(p, r, distanceM)
                - ExchangeTerm(p, s, distanceM)
                - ExchangeTerm(q, r, distanceM)
                + ExchangeTerm(q, s, distanceM)
            );
    }

    /// <summary>
    /// Share of the view of a small plane element that a parallel rectangle takes, the element's normal meeting one corner:
    /// the illuminance is π times luminance times this.
    /// </summary>
    /// <param name="aM">Side from the corner along x, metres, any sign (a negative side counts negative).</param>
    /// <param name="bM">Side from the corner along y, metres, any sign.</param>
    /// <param name="distanceM">Distance of the planes, metres, above 0.</param>
    public static double ElementToCornerRectangle(double aM, double bM, double distanceM)
    {
        var (x, y) = (aM / distanceM, bM / distanceM);
        var (rx, ry) = (Math.Sqrt(1 + (x * x)), Math.Sqrt(1 + (y * y)));
        return ((x / rx * Math.Atan(y / rx)) + (y / ry * Math.Atan(x / ry))) / (2 * Math.PI);
    }

    /// <summary>The same for a rectangle that lies anywhere, given by its limits relative to the foot of the element's normal.</summary>
    /// <param name="x0M">Least x, metres.</param>
    /// <param name="x1M">Greatest x, metres.</param>
    /// <param name="y0M">Least y, metres.</param>
    /// <param name="y1M">Greatest y, metres.</param>
    /// <param name="distanceM">Distance of the planes, metres, above 0.</param>
    public static double ElementToRectangle(double x0M, double x1M, double y0M, double y1M, double distanceM) =>
        x1M <= x0M || y1M <= y0M
            ? 0
            : ElementToCornerRectangle(x1M, y1M, distanceM)
                - ElementToCornerRectangle(x0M, y1M, distanceM)
                - ElementToCornerRectangle(x1M, y0M, distanceM)
                + ElementToCornerRectangle(x0M, y0M, distanceM);

    private static double ExchangeTerm(double u, double v, double z)
    {
        var (a, b) = (Math.Sqrt((u * u) + (z * z)), Math.Sqrt((v * v) + (z * z)));
        return (
                (v * a * Math.Atan(v / a))
                + (u * b * Math.Atan(u / b))
                - (z * z / 2 * Math.Log((u * u) + (v * v) + (z * z)))
            ) / (2 * Math.PI);
    }
}
