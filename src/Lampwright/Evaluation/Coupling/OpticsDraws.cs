using Lampwright.Design;
using Lampwright.Evaluation.Draws;
using Lampwright.Light;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Reflector, diffuser and distance of a draw.</summary>
internal sealed class OpticsDraws
{
    private readonly LightModel _model;
    private readonly int _wall;
    private readonly int _specular;
    private readonly int _base;
    private readonly int _pass;
    private readonly int _back;
    private readonly int _distance;
    private readonly int _funnel;
    private readonly int _share;
    private readonly int _diffuser;
    private readonly int _beam;
    private readonly int _care;

    public OpticsDraws(LightModel model, LightDesign design, LightParts parts, Variables variables)
    {
        _model = model;
        var nominal = model.Spec.Nominal;
        _wall = parts.Reflector is { } r ? variables.Of(r.Reflectance) : variables.Exact("light.no_wall", 0);
        _specular = parts.Reflector is { } s ? variables.Of(s.Specular) : variables.Exact("light.no_wall", 0);
        _base = variables.Between("light.base_reflectance", nominal.BaseReflectance, 0.2);
        _pass = parts.Diffuser is { } d ? variables.Of(d.Transmittance) : variables.Exact("light.no_diffuser", 1);
        _back = parts.Diffuser is { } b ? variables.Of(b.Reflectance) : variables.Exact("light.no_diffuser_back", 0);
        _distance = variables.Of((design.Subject ?? new Subject()).Distance);
        _funnel = variables.Factor(LightMethodErrors.Funnel);
        _share = variables.Factor(LightMethodErrors.SpecularShare);
        _diffuser = variables.Factor(LightMethodErrors.DiffuserLambertian);
        _beam = variables.Factor(LightMethodErrors.Beam);
        _care = variables.Factor(LightMethodErrors.BlueLightThreshold);
    }

    /// <summary>Shares and illuminances per lumen of the bare emitter in one draw.</summary>
    public LightResult At(ReadOnlySpan<double> x) =>
        _model.Result(
            new(
                x[_wall],
                x[_specular],
                x[_base],
                x[_pass],
                x[_back],
                x[_distance],
                x[_funnel],
                x[_share],
                x[_diffuser],
                x[_beam]
            )
        );

    /// <summary>Factor on the illuminance at which looking into the light needs care.</summary>
    public double Care(ReadOnlySpan<double> x) => x[_care];
}
