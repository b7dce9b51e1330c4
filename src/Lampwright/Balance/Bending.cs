namespace Lampwright.Balance;

/// <summary>Deflection and stress of simple arms, in closed form.</summary>
/// <remarks>
/// <b>Validity</b>: slender, straight, elastic, rigid at the foot; shear left out. <b>Source</b>: beam theory (reference page mechanics, section 5).
/// <b>Accuracy</b>: real clamps give way: 10 %. <b>Checked by</b>: K.N9a, K.N10.
/// </remarks>
public static class Bending
{
    /// <summary>Deflection in metres of a cantilever's end under a force there: F·L³/(3EI).</summary>
    /// <param name="forceN">Force, newtons.</param>
    /// <param name="lengthM">Free length, metres, above 0.</param>
    /// <param name="modulusPa">Modulus of elasticity, pascals, above 0.</param>
    /// <param name="secondMomentM4">Second moment of area, m⁴, above 0.</param>
    public static double EndDeflectionM(double forceN, double lengthM, double modulusPa, double secondMomentM4) =>
        forceN * Cube(Guard.Positive(lengthM)) / (3 * Guard.Positive(modulusPa) * Guard.Positive(secondMomentM4));

    /// <summary>Slope in radians of a cantilever's end under a force there: F·L²/(2EI).</summary>
    /// <param name="forceN">Force, newtons.</param>
    /// <param name="lengthM">Free length, metres, above 0.</param>
    /// <param name="modulusPa">Modulus of elasticity, pascals, above 0.</param>
    /// <param name="secondMomentM4">Second moment of area, m⁴, above 0.</param>
    public static double EndSlopeRad(double forceN, double lengthM, double modulusPa, double secondMomentM4) =>
        forceN * Guard.Positive(lengthM) * lengthM / (2 * Guard.Positive(modulusPa) * Guard.Positive(secondMomentM4));

    /// <summary>Deflection in metres of a cantilever's end under its own weight: q·L⁴/(8EI).</summary>
    /// <param name="weightNPerM">Weight over length, newtons per metre, 0 or more.</param>
    /// <param name="lengthM">Free length, metres, above 0.</param>
    /// <param name="modulusPa">Modulus of elasticity, pascals, above 0.</param>
    /// <param name="secondMomentM4">Second moment of area, m⁴, above 0.</param>
    public static double OwnDeflectionM(double weightNPerM, double lengthM, double modulusPa, double secondMomentM4) =>
        weightNPerM
        * Cube(Guard.Positive(lengthM))
        * lengthM
        / (8 * Guard.Positive(modulusPa) * Guard.Positive(secondMomentM4));

    /// <summary>Bending stress in pascals: M/Z.</summary>
    /// <param name="momentNm">Moment, newton metres.</param>
    /// <param name="sectionModulusM3">Section modulus, m³, above 0.</param>
    public static double StressPa(double momentNm, double sectionModulusM3) =>
        momentNm / Guard.Positive(sectionModulusM3);

    /// <summary>Deflections in metres of the tip of an L-frame (upright post, arm across) under a force down at the tip.</summary>
    /// <param name="forceN">Force down, newtons.</param>
    /// <param name="armM">Length of the arm, metres, above 0.</param>
    /// <param name="postM">Height of the post, metres, 0 or more.</param>
    /// <param name="modulusPa">Modulus of elasticity, pascals, above 0.</param>
    /// <param name="armSecondMomentM4">Second moment of area of the arm, m⁴, above 0.</param>
    /// <param name="postSecondMomentM4">Second moment of area of the post, m⁴, above 0.</param>
    public static (double DownM, double SidewaysM) TipOfLFrame(
        double forceN,
        double armM,
        double postM,
        double modulusPa,
        double armSecondMomentM4,
        double postSecondMomentM4
    )
    {
        Guard.InRange(postM, 0, 1e3);
        var post = Guard.Positive(modulusPa) * Guard.Positive(postSecondMomentM4);
        var down = EndDeflectionM(forceN, armM, modulusPa, armSecondMomentM4) + (forceN * armM * armM * postM / post);
        return (down, forceN * armM * postM * postM / (2 * post));
    }

    private static double Cube(double x) => x * x * x;
}
