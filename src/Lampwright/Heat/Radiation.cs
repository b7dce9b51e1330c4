namespace Lampwright.Heat;

/// <summary>Heat radiated by a surface into surroundings much larger than itself, and out of a fin channel.</summary>
/// <remarks>Source: Incropera ch. 13; Siegel and Howell (view factors of rectangles). Checked by: printed values.</remarks>
public static class Radiation
{
    /// <summary>Heat radiated per area of an open surface, W/m².</summary>
    /// <param name="emissivity">Emissivity, 0 to 1.</param>
    /// <param name="surfaceK">Temperature of the surface, K.</param>
    /// <param name="surroundingsK">Temperature of the surroundings, K.</param>
    public static double FluxWPerM2(double emissivity, double surfaceK, double surroundingsK) =>
        emissivity * CoefficientBlack(surfaceK, surroundingsK) * (surfaceK - surroundingsK);

    /// <summary>Heat radiated through the open sides of a fin channel, W.</summary>
    /// <remarks>Validity: grey walls of uniform radiosity at one temperature.</remarks>
    /// <param name="wallAreaM2">Area of both walls and the base, m².</param>
    /// <param name="viewFactor">View factor of those to the surroundings.</param>
    /// <param name="emissivity">Emissivity of the walls, 0 to 1.</param>
    /// <param name="wallK">Temperature of the walls, K.</param>
    /// <param name="surroundingsK">Temperature of the surroundings, K.</param>
    public static double ChannelW(
        double wallAreaM2,
        double viewFactor,
        double emissivity,
        double wallK,
        double surroundingsK
    ) => wallAreaM2 * FluxWPerM2(ChannelEmissivity(viewFactor, emissivity), wallK, surroundingsK);

    /// <summary>Emissivity that the walls of a fin channel seem to have: 1/[(1-ε)/ε + 1/F].</summary>
    /// <param name="viewFactor">View factor of the walls to the surroundings, 0 to 1.</param>
    /// <param name="emissivity">Emissivity of the walls, 0 to 1.</param>
    public static double ChannelEmissivity(double viewFactor, double emissivity) =>
        emissivity <= 0 || viewFactor <= 0 ? 0 : 1 / ((1 - emissivity) / emissivity + 1 / viewFactor);

    /// <summary>View factor of a fin channel (two walls and base) to the surroundings. Laid once, at nominal.</summary>
    /// <param name="gapM">Gap s, m, above 0.</param>
    /// <param name="depthM">Depth H of the channel, m, above 0.</param>
    /// <param name="lengthM">Length L of the channel, m, above 0.</param>
    public static double ChannelViewFactor(double gapM, double depthM, double lengthM)
    {
        Guard.Positive(gapM);
        Guard.Positive(depthM);
        Guard.Positive(lengthM);
        double top = gapM * lengthM,
            end = gapM * depthM,
            walls = (2 * depthM + gapM) * lengthM;
        var topToEnd = PerpendicularViewFactor(lengthM / gapM, depthM / gapM);
        var endToEnd = ParallelViewFactor(gapM / lengthM, depthM / lengthM);
        return (top + 2 * end - 4 * top * topToEnd - 2 * end * endToEnd) / walls;
    }

    /// <summary>View factor between rectangles at right angles with a common edge, from the first.</summary>
    /// <param name="w">Width of the first over the common edge.</param>
    /// <param name="h">Width of the second over the common edge.</param>
    public static double PerpendicularViewFactor(double w, double h)
    {
        double w2 = w * w,
            h2 = h * h,
            s = w2 + h2;
        var logs =
            Math.Log((1 + w2) * (1 + h2) / (1 + s))
            + w2 * Math.Log(w2 * (1 + s) / ((1 + w2) * s))
            + h2 * Math.Log(h2 * (1 + s) / ((1 + h2) * s));
        var arcs = w * Math.Atan(1 / w) + h * Math.Atan(1 / h) - Math.Sqrt(s) * Math.Atan(1 / Math.Sqrt(s));
        return (arcs + 0.25 * logs) / (Math.PI * w);
    }

    /// <summary>View factor between equal, aligned, parallel rectangles.</summary>
    /// <param name="x">One side over the distance.</param>
    /// <param name="y">The other side over the distance.</param>
    public static double ParallelViewFactor(double x, double y)
    {
        double x2 = 1 + x * x,
            y2 = 1 + y * y;
        var sum =
            0.5 * Math.Log(x2 * y2 / (1 + x * x + y * y))
            + x * Math.Sqrt(y2) * Math.Atan(x / Math.Sqrt(y2))
            + y * Math.Sqrt(x2) * Math.Atan(y / Math.Sqrt(x2))
            - x * Math.Atan(x)
            - y * Math.Atan(y);
        return 2 / (Math.PI * x * y) * sum;
    }

    /// <summary>Radiation coefficient of a black surface σ(T + T₀)(T² + T₀²), W/(m²·K).</summary>
    /// <param name="surfaceK">Temperature of the surface, K.</param>
    /// <param name="surroundingsK">Temperature of the surroundings, K.</param>
    public static double CoefficientBlack(double surfaceK, double surroundingsK) =>
        Physics.StefanBoltzmann * (surfaceK + surroundingsK) * (surfaceK * surfaceK + surroundingsK * surroundingsK);
}
