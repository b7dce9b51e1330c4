namespace Lampwright.Light;

/// <summary>The cos^m beam: how the intensity of an emitter falls off its axis.</summary>
/// <remarks>
/// <b>Validity</b>: emitters without a lens or with one whose beam falls smoothly from the axis; m = 1 is a Lambertian face.
/// <b>Source</b>: shared reference page light, section 3 (derived); IES definitions of beam width. <b>Checked by</b>: L.P-13a.
/// </remarks>
public static class Emission
{
    /// <summary>Exponent m so that cos^m falls to one half at half of the beam's full width.</summary>
    /// <param name="beamRad">Full width at half of the peak, radians, above 0 and below π.</param>
    public static double BeamExponent(double beamRad) =>
        -Math.Log(2) / Math.Log(Math.Cos(Guard.InRange(beamRad, 1e-3, Math.PI) / 2));

    /// <summary>Peak intensity for one lumen, in candela per lumen (1/sr): (m + 1)/2π.</summary>
    /// <param name="beamExponent">Exponent m, 0 or more.</param>
    public static double PeakIntensityPerLumen(double beamExponent) =>
        (Guard.InRange(beamExponent, 0, 1e9) + 1) / (2 * Math.PI);

    /// <summary>Intensity relative to the peak at an angle off the axis; 0 from 90° on.</summary>
    /// <param name="beamExponent">Exponent m, 0 or more.</param>
    /// <param name="angleRad">Angle off the axis in radians.</param>
    public static double RelativeIntensity(double beamExponent, double angleRad)
    {
        var cosine = Math.Cos(Guard.Finite(angleRad));
        return cosine <= 0 ? 0 : Math.Pow(cosine, Guard.InRange(beamExponent, 0, 1e9));
    }

    /// <summary>Illuminance of a flat Lambertian source over a parallel plane, relative to the axis: cos⁴ of the angle.</summary>
    /// <param name="angleRad">Angle off the axis in radians, below a right angle.</param>
    public static double RelativeIlluminanceOnPlane(double angleRad)
    {
        var cosine = Math.Cos(Guard.InRange(angleRad, -Math.PI / 2, Math.PI / 2));
        return cosine * cosine * cosine * cosine;
    }
}
