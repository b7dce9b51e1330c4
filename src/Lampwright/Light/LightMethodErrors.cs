using Lampwright.Tables;

namespace Lampwright.Light;

/// <summary>The errors of this station's methods, as variables for the draws.</summary>
public static class LightMethodErrors
{
    /// <summary>Light that leaves funnel and diffuser, beside the spreads of reflectances. Factor: <see cref="LightDraw.FunnelFactor"/>.</summary>
    public static MethodError Funnel { get; } =
        new(
            "light.funnel",
            0.02,
            "Ring radiosity against a patch radiosity: within 0.1 % (benchmark funnel); seams, edges and screw heads left out: common practice, no source"
        );

    /// <summary>Mirrored share after the first scattering and haze of the lobe. Factor: <see cref="LightDraw.SpecularFactor"/>.</summary>
    public static MethodError SpecularShare { get; } =
        new(
            "light.specular_share",
            0.25,
            "Mirror and scattered part apart, nothing between: common practice, no source"
        );

    /// <summary>A real diffuser is not quite Lambertian. Factor: <see cref="LightDraw.DiffuserFactor"/>.</summary>
    public static MethodError DiffuserLambertian { get; } =
        new("light.diffuser_lambertian", 0.06, "Opal panels look brighter along the axis: common practice, no source");

    /// <summary>A real beam is not quite cos^m. Factor: <see cref="LightDraw.BeamFactor"/>.</summary>
    public static MethodError Beam { get; } =
        new("light.beam", 0.05, "cos^m fitted to the full width at half maximum alone: common practice, no source");

    /// <summary>Threshold of the blue-light table. Multiply the threshold illuminance with it.</summary>
    public static MethodError BlueLightThreshold { get; } =
        new("light.blue_light_threshold", 0.13, "Table against four standard LED spectra (L.B-2a), derived");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MethodError> All { get; } =
    [Funnel, SpecularShare, DiffuserLambertian, Beam, BlueLightThreshold];
}
