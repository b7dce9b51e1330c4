namespace Lampwright.Heat;

/// <summary>Ways to join two limits smoothly.</summary>
/// <remarks>Source: Churchill and Usagi 1972, AIChE J. 18:1121 (the general form).</remarks>
internal static class Blend
{
    /// <summary>(a⁻³ + b⁻³)^(-1/3): follows the smaller of two limits.</summary>
    internal static double InverseCubes(double a, double b)
    {
        if (a <= 0 || b <= 0)
        {
            return 0;
        }

        var ratio = a / b;
        return a / Math.Cbrt(1 + ratio * ratio * ratio);
    }

    /// <summary>(a³ + b³)^(1/3): follows the larger; joins forced and natural convection.</summary>
    /// <remarks>
    /// Source: Churchill 1977, AIChE J. 23:10; Incropera eq. 9.64 with n = 3. Holds when buoyancy helps the fan or crosses it; a fan that
    /// blows down a hot channel does a little worse at low speed.
    /// </remarks>
    internal static double Cubes(double a, double b) => Math.Cbrt(a * a * a + b * b * b);

    /// <summary>(a⁴ + b⁴)^(1/4): joins two natural flows that replace each other with the tilt.</summary>
    internal static double Fourths(double a, double b) => Math.Sqrt(Math.Sqrt(a * a * a * a + b * b * b * b));

    /// <summary>
    /// Share of a channel's draft that is left with gravity's share along it: all to 60° from the upright, where its formula ends, and from there
    /// smoothly to nothing at level (common practice, no source).
    /// </summary>
    internal static double Rising(double along)
    {
        var t = Math.Clamp(2 * along, 0, 1);
        return t * (2 - t);
    }

    /// <summary>(a⁸ + b⁸)^(1/8): the larger of two, without a jump where they change places (9 % above it there).</summary>
    internal static double Eighths(double a, double b)
    {
        double a2 = a * a,
            b2 = b * b;
        return Math.Sqrt(Fourths(a2, b2));
    }
}
