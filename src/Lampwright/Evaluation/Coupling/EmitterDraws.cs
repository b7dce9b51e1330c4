using Lampwright.Evaluation.Draws;
using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>The emitter of a draw: the fitted curves, moved by the spreads of the data sheet and the errors of the fit.</summary>
internal sealed class EmitterDraws
{
    private readonly EmitterModel _model;
    private readonly int[] _factors;
    private readonly int _points;
    private readonly int _light;
    private readonly int _slope;
    private readonly int _hot;
    private readonly double _slopeNominal;
    private readonly double _hotNominal;
    private readonly double _referenceK;
    private readonly double _hotAtK;

    public EmitterDraws(EmitterFit fit, LightParts parts, Variables variables)
    {
        var e = parts.Emitter;
        _model = fit.Model;
        _factors = [.. fit.MethodErrors.Select(variables.Factor)];
        _points = variables.Between(parts.EmitterPath + ".points.voltage", 1, Mean(e.Points, p => p.Voltage));
        _light = variables.Between(parts.EmitterPath + ".points.flux", 1, Mean(e.Points, p => p.Flux));
        _slopeNominal = e.VoltageSlope?.Nominal ?? 1;
        _slope = e.VoltageSlope is { } s ? variables.Of(s) : variables.Exact(parts.EmitterPath + ".voltage_slope", 1);
        _referenceK = e.Reference.Nominal;
        _hotAtK = e.FluxHot?.At.Nominal ?? _referenceK + 60;
        _hotNominal = e.FluxHot?.Factor.Nominal ?? 1;
        _hot = e.FluxHot is { } h ? variables.Of(h.Factor) : variables.Exact(parts.EmitterPath + ".flux_hot.factor", 1);
    }

    /// <summary>The emitter of one draw.</summary>
    public EmitterModel At(ReadOnlySpan<double> x)
    {
        Span<double> f = stackalloc double[EmitterFactors.Count];
        for (var i = 0; i < f.Length; i++)
        {
            f[i] = x[_factors[i]];
        }

        f[0] *= x[_points];
        f[3] *= x[_light];
        f[2] *= _slopeNominal != 0 ? x[_slope] / _slopeNominal : 1;
        var decay = Decay(_hotNominal);
        f[5] *= decay != 0 ? Decay(x[_hot]) / decay : 1;
        return _model.With(EmitterFactors.From(f));
    }

    private double Decay(double factor) =>
        factor > 0 && Math.Abs(_hotAtK - _referenceK) > 1e-6 ? -Math.Log(factor) / (_hotAtK - _referenceK) : 0;

    private static double Mean(
        IReadOnlyList<Design.EmitterPoint> points,
        Func<Design.EmitterPoint, Quantities.Value> of
    ) =>
        points.Count == 0 ? 0 : points.Average(p => of(p).Nominal != 0 ? of(p).HalfWidth / Math.Abs(of(p).Nominal) : 0);
}
