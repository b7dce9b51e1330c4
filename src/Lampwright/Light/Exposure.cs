namespace Lampwright.Light;

/// <summary>From illuminance to exposure value and aperture.</summary>
/// <remarks>
/// 2^EV = N²/t; incident light E = C·2^EV/S. <b>Source</b>: ISO 2720:1974 (second-hand): C 240 to 400 for a flat receptor, 320 to 540
/// for a hemispherical one (memory); K 10.6 to 13.4. <b>Checked by</b>: L.P-1a, L.P-1b, L.P-4a, L.P-4b, L.P-13c.
/// </remarks>
public static class Exposure
{
    /// <summary>Incident-light constant C when none is given: 250 lx·s (flat receptor; with it EV 0 at ISO 100 is 2.5 lx).</summary>
    public static double DefaultConstant { get; } = 250;

    /// <summary>Exposure value for ISO 100 of an illuminance; minus infinity never: 0 lx is told as the value of 1e-9 lx.</summary>
    /// <param name="lux">Illuminance at the subject, lux, 0 or more.</param>
    /// <param name="constant">Incident-light constant C, lx·s.</param>
    public static double ValueAtIso100(double lux, double constant) =>
        Math.Log2(Math.Max(lux, 1e-9) * 100 / Guard.Positive(constant));

    /// <summary>Illuminance in lux that an exposure value for an ISO speed stands for.</summary>
    /// <param name="exposureValue">Exposure value EV.</param>
    /// <param name="iso">ISO speed, above 0.</param>
    /// <param name="constant">Incident-light constant C, lx·s.</param>
    public static double Lux(double exposureValue, double iso, double constant) =>
        Guard.Positive(constant) * Math.Pow(2, Guard.Finite(exposureValue)) / Guard.Positive(iso);

    /// <summary>Luminance in cd/m² that an exposure value for an ISO speed stands for (reflected light, constant K).</summary>
    /// <param name="exposureValue">Exposure value EV.</param>
    /// <param name="iso">ISO speed, above 0.</param>
    /// <param name="reflectedConstant">Reflected-light constant K, cd·s/m²; 12.5 is common.</param>
    public static double Luminance(double exposureValue, double iso, double reflectedConstant) =>
        Guard.Positive(reflectedConstant) * Math.Pow(2, Guard.Finite(exposureValue)) / Guard.Positive(iso);

    /// <summary>Reflectance of a subject that both kinds of meter expose alike: πK/C.</summary>
    /// <param name="reflectedConstant">Reflected-light constant K, cd·s/m².</param>
    /// <param name="constant">Incident-light constant C, lx·s.</param>
    public static double MatchingReflectance(double reflectedConstant, double constant) =>
        Math.PI * Guard.Positive(reflectedConstant) / Guard.Positive(constant);

    /// <summary>Aperture (f-number) N = √(E·S·t/C) that exposes the subject rightly.</summary>
    /// <param name="lux">Illuminance at the subject, lux, 0 or more.</param>
    /// <param name="iso">ISO speed, above 0.</param>
    /// <param name="shutterS">Exposure time in seconds, above 0.</param>
    /// <param name="constant">Incident-light constant C, lx·s.</param>
    public static double Aperture(double lux, double iso, double shutterS, double constant) =>
        Math.Sqrt(Math.Max(lux, 0) * Guard.Positive(iso) * Guard.Positive(shutterS) / Guard.Positive(constant));

    /// <summary>Illuminance in lux that an aperture, an exposure time and an ISO speed ask for.</summary>
    /// <param name="aperture">f-number, above 0.</param>
    /// <param name="iso">ISO speed, above 0.</param>
    /// <param name="shutterS">Exposure time in seconds, above 0.</param>
    /// <param name="constant">Incident-light constant C, lx·s.</param>
    public static double LuxFor(double aperture, double iso, double shutterS, double constant) =>
        Guard.Positive(constant) * Guard.Positive(aperture) * aperture / Guard.Positive(shutterS) / Guard.Positive(iso);
}
