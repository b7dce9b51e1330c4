namespace Lampwright.Balance;

/// <summary>Moment that clamped ring faces hold by friction.</summary>
/// <remarks>
/// Uniform wear gives the lower moment and is the one to design with; uniform pressure holds for new, flat faces. <b>Source</b>: Shigley,
/// ch. 16 (disc clutches). <b>Accuracy</b>: the two forms differ by up to 15 %. <b>Checked by</b>: K.N3, K.N4a, K.N11.
/// </remarks>
public static class RubbingFaces
{
    /// <summary>Moment by uniform wear, N·µ·F·(D + d)/4, newton metres.</summary>
    /// <param name="faces">Count of rubbing faces, 1 or more.</param>
    /// <param name="friction">Coefficient of friction, 0 or more.</param>
    /// <param name="forceN">Clamp force, newtons, 0 or more.</param>
    /// <param name="innerM">Inner diameter, metres, 0 or more.</param>
    /// <param name="outerM">Outer diameter, metres, above the inner.</param>
    public static double WornMomentNm(int faces, double friction, double forceN, double innerM, double outerM) =>
        faces
        * Guard.InRange(friction, 0, 10)
        * forceN
        * (Guard.Positive(outerM) + Guard.InRange(innerM, 0, outerM))
        / 4;

    /// <summary>Moment by uniform pressure, N·µ·F·(D³ − d³)/(3(D² − d²)), newton metres.</summary>
    /// <param name="faces">Count of rubbing faces, 1 or more.</param>
    /// <param name="friction">Coefficient of friction, 0 or more.</param>
    /// <param name="forceN">Clamp force, newtons, 0 or more.</param>
    /// <param name="innerM">Inner diameter, metres, 0 or more.</param>
    /// <param name="outerM">Outer diameter, metres, above the inner.</param>
    public static double NewMomentNm(int faces, double friction, double forceN, double innerM, double outerM)
    {
        // (D³ − d³)/(D² − d²) written so that equal diameters do no harm.
        var (d, o) = (Guard.InRange(innerM, 0, outerM), Guard.Positive(outerM));
        return faces * Guard.InRange(friction, 0, 10) * forceN * ((o * o) + (o * d) + (d * d)) / (3 * (o + d));
    }

    /// <summary>Greatest pressure by uniform wear, at the inner edge, pascals: 2F/(π·d·(D − d)).</summary>
    /// <param name="forceN">Clamp force, newtons.</param>
    /// <param name="innerM">Inner diameter, metres, above 0.</param>
    /// <param name="outerM">Outer diameter, metres, above the inner.</param>
    public static double WornPressurePa(double forceN, double innerM, double outerM) =>
        2 * forceN / (Math.PI * Guard.Positive(innerM) * Guard.Positive(outerM - innerM));

    /// <summary>Pressure by uniform pressure, pascals: 4F/(π(D² − d²)).</summary>
    /// <param name="forceN">Clamp force, newtons.</param>
    /// <param name="innerM">Inner diameter, metres, 0 or more.</param>
    /// <param name="outerM">Outer diameter, metres, above the inner.</param>
    public static double NewPressurePa(double forceN, double innerM, double outerM) =>
        4 * forceN / (Math.PI * Guard.Positive((outerM * outerM) - (innerM * innerM)));
}
