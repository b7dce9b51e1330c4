namespace Lampwright.Light;

/// <summary>A cavity whose wall is lit evenly: what many reflections make of the light in it.</summary>
/// <remarks>
/// <b>Validity</b>: ports small against the wall, diffuse wall. <b>Source</b>: Labsphere, technical guide on integrating spheres, 1.2.1.
/// <b>Checked by</b>: L.P-11a, L.P-12a, L.P-12b.
/// </remarks>
public static class IntegratingCavity
{
    /// <summary>Multiplier M = ρ/(1 − ρ(1 − f)) of the wall's luminance Φ·M/(πA).</summary>
    /// <param name="reflectance">Reflectance ρ of the wall, 0 to 1.</param>
    /// <param name="portFraction">Share f of the wall that is open, above 0 to 1.</param>
    public static double Multiplier(double reflectance, double portFraction) =>
        Guard.InRange(reflectance, 0, 1) / (1 - (reflectance * (1 - Guard.InRange(portFraction, 1e-9, 1))));

    /// <summary>Share of the light that leaves by the port after an even first hit: f/(1 − ρ(1 − f)).</summary>
    /// <param name="reflectance">Reflectance ρ of the wall, 0 to 1.</param>
    /// <param name="portFraction">Share f of the wall that is open, above 0 to 1.</param>
    public static double ExitFraction(double reflectance, double portFraction) =>
        Guard.InRange(portFraction, 1e-9, 1) / (1 - (Guard.InRange(reflectance, 0, 1) * (1 - portFraction)));
}
