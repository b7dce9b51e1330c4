using Lampwright.Findings;
using Lampwright.Tables;

namespace Lampwright.Steps;

/// <summary>What an emitter model was made from.</summary>
public enum FitKind
{
    /// <summary>Least squares over three points or more.</summary>
    Points,

    /// <summary>Two points: midway between the straight chord and the pure logarithm.</summary>
    TwoPoints,

    /// <summary>One point, or rated values: the stand-in Vd = 0.8·V, Rd = 0.2·V/I.</summary>
    StandIn,
}

/// <summary>An emitter model with what it was made from, how well it fits, and how wrong it may be.</summary>
/// <param name="Model">The nominal model.</param>
/// <param name="Kind">What it was made from.</param>
/// <param name="VoltageResidualsV">Model minus point, in volts, one for each point used.</param>
/// <param name="FluxResiduals">Model over point minus one, one for each point with a flux.</param>
/// <param name="MethodErrors">Eight named errors in the order of <see cref="EmitterFactors"/>; half-width 0 where it does not apply.</param>
/// <param name="Findings">What there is to say of the points.</param>
/// <remarks>
/// <b>Validity</b>: within the points; the stand-in from about 0.3 to 1 times the rated current.
/// <b>Source</b>: least squares on the columns ln I, 1, I; stand-in: ITECH IT8731 manual p. 58.
/// <b>Accuracy</b>: for two points the chord and the logarithm bound every curve of a logarithm plus a resistance, half their
/// gap is the error; for one point ±50 % on the dynamic resistance (common practice, no source).
/// <b>Checked by</b>: printed (Lumileds DS60 p. 6), solver.
/// </remarks>
public sealed record EmitterFit(
    EmitterModel Model,
    FitKind Kind,
    IReadOnlyList<double> VoltageResidualsV,
    IReadOnlyList<double> FluxResiduals,
    IReadOnlyList<MethodError> MethodErrors,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>The model that fits what is known of an emitter. Runs once, at nominal.</summary>
    /// <param name="spec">What is known; at least one usable point or rated values.</param>
    /// <exception cref="ArgumentException">There is neither a usable point nor a rated value.</exception>
    public static EmitterFit From(EmitterSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.Finite(spec.ReferenceK);
        var findings = new List<Finding>();
        var points = Usable(spec, findings);
        var rated = spec.Rated is { } r && Sound(r) ? r : null;
        if (points.Length == 0 && rated is null)
        {
            throw new ArgumentException("An emitter needs one usable point or rated values.", nameof(spec));
        }

        var voltage = VoltageFit.From(points, rated);
        var flux = FluxFit.From(points, rated);
        if (voltage.Constraint.Length > 0)
        {
            findings.Add(StepsRules.UnphysicalPoints.At(spec.Path + ".points", voltage.Constraint));
        }

        if (flux.Constraint.Length > 0)
        {
            findings.Add(StepsRules.UnphysicalPoints.At(spec.Path + ".points", flux.Constraint));
        }

        if (voltage.Kind != FitKind.Points)
        {
            var from = voltage.Kind == FitKind.TwoPoints ? "two points" : "one point";
            findings.Add(
                StepsRules.FewPoints.At(
                    spec.Path,
                    $"The emitter's curve rests on {from}; its voltage away from there is a stand-in with a wide band.",
                    from,
                    "3 points"
                )
            );
        }

        if (flux.FluxRefLm <= 0)
        {
            findings.Add(
                StepsRules.NoFlux.At(spec.Path, "No flux is given for the emitter, so no light can be computed.")
            );
        }

        var middleV = voltage.At(voltage.ToA);
        var hot = spec.FluxHot ?? EmitterDefaults.Hot;
        var model = new EmitterModel(
            voltage.LogV,
            voltage.OffsetV,
            voltage.SeriesOhm,
            spec.VoltageSlopePerK ?? (EmitterDefaults.SlopePerVoltPerK * middleV),
            spec.ReferenceK,
            flux.FluxRefLm,
            flux.FluxRefA,
            flux.Form,
            flux.Shape,
            DecayPerK(hot, spec.ReferenceK),
            voltage.FromA,
            voltage.ToA
        );
        return new(
            model,
            voltage.Kind,
            [.. points.Select(p => voltage.At(p.CurrentA) - p.VoltageV)],
            [.. points.Where(HasFlux).Select(p => (model.FluxLm(p.CurrentA, spec.ReferenceK) / p.FluxLm!.Value) - 1)],
            Errors(spec, voltage, flux),
            findings
        );
    }

    /// <summary>1/T0 of the thermal roll-off: ln(1/factor) over the temperature difference, in 1/K; never NaN.</summary>
    /// <param name="hot">Flux at another temperature; a factor that is not above 0 or a temperature equal to the reference gives 0.</param>
    /// <param name="referenceK">Reference temperature in kelvin.</param>
    public static double DecayPerK(FluxHot hot, double referenceK)
    {
        ArgumentNullException.ThrowIfNull(hot);
        var difference = hot.AtK - referenceK;
        return Math.Abs(difference) < 1e-6 || !(hot.Factor > 0) ? 0 : -Math.Log(hot.Factor) / difference;
    }

    private static MethodError[] Errors(EmitterSpec spec, VoltageFit voltage, FluxFit flux) =>
        [
            new("steps.emitter_voltage", voltage.HalfWidth, voltage.HalfWidthSource),
            new("steps.emitter_dynamic", voltage.DynamicHalfWidth, voltage.HalfWidthSource),
            new(
                "steps.emitter_slope",
                spec.VoltageSlopePerK is null ? EmitterDefaults.SlopeHalfWidth : 0,
                "spread of the makers' slopes, Lumileds DS133, DS144, DS107"
            ),
            new("steps.emitter_flux", flux.HalfWidth, flux.HalfWidthSource),
            new("steps.emitter_droop", flux.ShapeHalfWidth, flux.HalfWidthSource),
            new(
                "steps.emitter_hot",
                spec.FluxHot is null ? EmitterDefaults.HotHalfWidth : 0.1,
                "LG Innotek COB application note, sec. 2.1.7: 0.88 to 0.90, some above"
            ),
            new("steps.emitter_voltage_beyond", 0.02, "per factor e beyond the points; common practice, no source"),
            new("steps.emitter_flux_beyond", 0.06, "per factor e beyond the points; common practice, no source"),
        ];

    private static EmitterPoint[] Usable(EmitterSpec spec, List<Finding> findings)
    {
        var usable = new List<EmitterPoint>(spec.Points.Count);
        for (var i = 0; i < spec.Points.Count; i++)
        {
            var p = spec.Points[i];
            var sound =
                p.CurrentA is >= 1e-6 and <= 1e6
                && p.VoltageV is > 0 and <= 1e6
                && p.FluxLm is null or (> 0 and <= 1e12);
            if (sound)
            {
                usable.Add(p);
                continue;
            }

            var text =
                $"Point {i + 1} has a current, voltage or flux that is not above zero or beyond reason; it is left out.";
            findings.Add(StepsRules.UnphysicalPoints.At($"{spec.Path}.points[{i}]", text));
        }

        return [.. usable.OrderBy(p => p.CurrentA)];
    }

    private static bool Sound(EmitterRated r) =>
        r.LeastV > 0 && r.MostV >= r.LeastV && r.MostV <= 1e6 && r.CurrentA is >= 1e-6 and <= 1e6;

    private static bool HasFlux(EmitterPoint p) => p.FluxLm is > 0;
}
