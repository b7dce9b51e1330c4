namespace Lampwright.Light;

/// <summary>A four-sided folded funnel: a small opening round the emitter, a large one towards the subject, flat walls between.</summary>
/// <param name="SmallWidthM">Small opening along x, metres, above 0.</param>
/// <param name="SmallHeightM">Small opening along y, metres, above 0.</param>
/// <param name="LargeWidthM">Large opening (the mouth) along x, metres, above 0.</param>
/// <param name="LargeHeightM">Large opening along y, metres, above 0.</param>
/// <param name="DepthM">Distance of the two openings, metres, above 0.</param>
/// <param name="WallReflectance">Total reflectance of the wall, 0 to 1.</param>
/// <param name="SpecularShare">Share of the reflected light that is mirrored instead of scattered, 0 to 1.</param>
public sealed record FunnelSpec(
    double SmallWidthM,
    double SmallHeightM,
    double LargeWidthM,
    double LargeHeightM,
    double DepthM,
    double WallReflectance,
    double SpecularShare
)
{
    /// <summary>Half width of the cross-section at a height above the small opening, metres.</summary>
    internal double HalfWidthAt(double zM) => (SmallWidthM + ((LargeWidthM - SmallWidthM) * zM / DepthM)) / 2;

    /// <summary>Half height of the cross-section at a height above the small opening, metres.</summary>
    internal double HalfHeightAt(double zM) => (SmallHeightM + ((LargeHeightM - SmallHeightM) * zM / DepthM)) / 2;
}

/// <summary>A diffusing panel before the light.</summary>
/// <param name="WidthM">Width along x, metres, above 0.</param>
/// <param name="HeightM">Height along y, metres, above 0.</param>
/// <param name="Transmittance">Share of the light falling on it that passes, 0 to 1.</param>
/// <param name="Reflectance">Share of the light falling on it that goes back, 0 to 1; with the transmittance at most 1.</param>
public sealed record DiffuserSpec(double WidthM, double HeightM, double Transmittance, double Reflectance);
