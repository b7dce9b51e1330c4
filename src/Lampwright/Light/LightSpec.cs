namespace Lampwright.Light;

/// <summary>What the camera looks at, square to the light's axis and centred on it.</summary>
/// <param name="DistanceM">Distance from the light's exit (diffuser, mouth or emitter face), metres, above 0.</param>
/// <param name="WidthM">Width along the light's x, metres, 0 or more.</param>
/// <param name="HeightM">Height along the light's y, metres, 0 or more.</param>
/// <param name="Iso">ISO speed of the camera, above 0.</param>
/// <param name="ShutterS">Exposure time in seconds, above 0.</param>
public sealed record SubjectSpec(double DistanceM, double WidthM, double HeightM, double Iso, double ShutterS);

/// <summary>Where the parts of the light stand in the design file, for findings.</summary>
/// <param name="Emitter">Path of the emitter.</param>
/// <param name="Reflector">Path of the reflector.</param>
/// <param name="Diffuser">Path of the diffuser.</param>
/// <param name="Subject">Path of the subject.</param>
/// <param name="Driver">Path of the driver, whose ripple makes the light flicker.</param>
public sealed record LightPaths(
    string Emitter = "emitter.main",
    string Reflector = "reflector.main",
    string Diffuser = "diffuser.front",
    string Subject = "subject",
    string Driver = "driver.main"
);

/// <summary>What the light station is told.</summary>
/// <param name="Emitter">The emitting face and its beam.</param>
/// <param name="Funnel">The reflector; null for none.</param>
/// <param name="Diffuser">The diffuser; null for none.</param>
/// <param name="BaseReflectance">Reflectance of the plane round and on the emitter, 0 to 1.</param>
/// <param name="Subject">What is lit.</param>
/// <param name="CctK">Correlated colour temperature in kelvin; NaN is never given, 0 where unknown.</param>
/// <param name="Paths">Where the parts stand in the design file.</param>
public sealed record LightSpec(
    EmitterFace Emitter,
    FunnelSpec? Funnel,
    DiffuserSpec? Diffuser,
    double BaseReflectance,
    SubjectSpec Subject,
    double CctK,
    LightPaths Paths
)
{
    /// <summary>
    /// Reflectance of emitter and sink round it when none is given: 0.5 (bare metal and a phosphor face, mixed; common practice, no source).
    /// </summary>
    public static double DefaultBaseReflectance { get; } = 0.5;

    /// <summary>The values that draws vary, at nominal.</summary>
    public LightDraw Nominal =>
        new(
            Funnel?.WallReflectance ?? 0,
            Funnel?.SpecularShare ?? 0,
            BaseReflectance,
            Diffuser?.Transmittance ?? 1,
            Diffuser?.Reflectance ?? 0,
            Subject.DistanceM
        );
}

/// <summary>The values that draws vary. Shares outside 0 to 1 are taken at the limit.</summary>
/// <param name="WallReflectance">Total reflectance of the funnel's wall; 0 where there is none.</param>
/// <param name="SpecularShare">Mirrored share of that.</param>
/// <param name="BaseReflectance">Reflectance of the plane of the emitter.</param>
/// <param name="Transmittance">Transmittance of the diffuser; 1 where there is none.</param>
/// <param name="Reflectance">Reflectance of the diffuser; 0 where there is none.</param>
/// <param name="DistanceM">Distance of the subject, metres, above 0.</param>
/// <param name="FunnelFactor">Factor of the method error <c>light.funnel</c>, on the light that leaves.</param>
/// <param name="SpecularFactor">Factor of <c>light.specular_share</c>, on the mirrored share.</param>
/// <param name="DiffuserFactor">Factor of <c>light.diffuser_lambertian</c>, on axis and subject.</param>
/// <param name="BeamFactor">Factor of <c>light.beam</c>, on axis and subject where the emitter is seen bare.</param>
public readonly record struct LightDraw(
    double WallReflectance,
    double SpecularShare,
    double BaseReflectance,
    double Transmittance,
    double Reflectance,
    double DistanceM,
    double FunnelFactor = 1,
    double SpecularFactor = 1,
    double DiffuserFactor = 1,
    double BeamFactor = 1
);

/// <summary>What comes of one lumen of the emitter; everything is proportional to its flux.</summary>
/// <param name="Exit">Share of the flux that leaves the light, 0 to 1.</param>
/// <param name="AbsorbedReflector">Share that heats the reflector.</param>
/// <param name="AbsorbedDiffuser">Share that heats the diffuser.</param>
/// <param name="AbsorbedBase">Share that heats the plane of the emitter. The four shares sum to 1.</param>
/// <param name="AxisCdPerLm">Intensity along the axis from far away, candela per emitter lumen.</param>
/// <param name="CentreLuxPerLm">Illuminance at the subject's centre, lux per emitter lumen.</param>
/// <param name="CornerLuxPerLm">Illuminance at the subject's corners, lux per emitter lumen.</param>
/// <param name="DistanceM">Distance it was computed for, metres.</param>
public readonly record struct LightResult(
    double Exit,
    double AbsorbedReflector,
    double AbsorbedDiffuser,
    double AbsorbedBase,
    double AxisCdPerLm,
    double CentreLuxPerLm,
    double CornerLuxPerLm,
    double DistanceM
)
{
    /// <summary>Least over centre illuminance on the subject, 0 to 1: the corners are the darkest places of a centred light.</summary>
    public double Evenness => CentreLuxPerLm > 0 ? Math.Min(CornerLuxPerLm / CentreLuxPerLm, 1) : 0;

    /// <summary>By how much the inverse-square shortcut (axis intensity over distance squared) reads high at the centre; 0.01 is 1 %.</summary>
    public double ShortcutError => CentreLuxPerLm > 0 ? (AxisCdPerLm / DistanceM / DistanceM / CentreLuxPerLm) - 1 : 0;
}
