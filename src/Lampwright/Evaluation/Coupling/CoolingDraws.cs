using Lampwright.Evaluation.Draws;
using Lampwright.Heat;
using Lampwright.Heat.Network;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Sink, fan, interface and the air of a draw.</summary>
internal sealed class CoolingDraws
{
    private readonly PreparedSink? _sink;
    private readonly SinkSpec? _spec;
    private readonly int[] _factors;
    private readonly int _emissivity;
    private readonly int _ambient;
    private readonly int _ambientMax;
    private readonly int _thickness;
    private readonly int _conductivity;
    private readonly int _junction;
    private readonly int _radiation;
    private readonly int _measured;
    private readonly int _runAt;
    private readonly double _bodyM2;
    private readonly double _ratedV;
    private readonly bool _isMeasured;
    private readonly bool _hasFan;
    private readonly int _still;
    private readonly FanCurve? _fan;
    private readonly TrialDraws _trials;
    private readonly bool _hasKey;
    private readonly int _pipe;
    private readonly int _lightShare;
    private readonly int _contact;
    private readonly int _airFlow;

    public CoolingDraws(CoupledInputs inputs, Variables variables)
    {
        var (design, parts) = (inputs.Design, inputs.Parts);
        _sink = inputs.Sink;
        _spec = _sink?.Nominal;
        _factors = [.. HeatMethods.Widened([.. inputs.OutsideRange]).Select(variables.Factor)];
        _contact = variables.Factor(NetworkFactors.ContactError);
        _airFlow = variables.Factor(NetworkFactors.AirFlowError);
        _ambient = variables.Of(design.Place.Ambient);
        _ambientMax = variables.Of(design.Place.AmbientMax);
        _emissivity = parts.Sink is { } s ? variables.Of(s.Emissivity) : variables.Exact("sink.none", 0.1);

        // Without a layer in the file: grease of some tens of micrometres, as it comes from a tube (common practice, no source).
        _thickness = parts.Interface is { } layer
            ? variables.Of(layer.Thickness)
            : variables.Between("interface.thickness", 60e-6, 40e-6);
        _conductivity = parts.Interface is { } of
            ? variables.Of(of.Conductivity)
            : variables.Between("interface.conductivity", 1.5, 0.7);
        _bodyM2 = parts.Emitter.Body is { } body ? body.Width.Nominal * body.Height.Nominal : 0;
        _junction = parts.Emitter.JunctionToCase is { } r
            ? variables.Of(r)
            : variables.Between(parts.EmitterPath + ".junction_to_case", 0.5, 0.3);
        _radiation = variables.Of(parts.Emitter.RadiationEfficacy);
        _isMeasured = parts.Sink is { IsMeasured: true };
        _hasKey = parts.Sink?.Measured is not null;
        _measured = parts.Sink?.Measured is { } m ? variables.Of(m) : variables.Exact("sink.not_measured", 1);
        _hasFan = parts.Fan is not null;
        _trials = new(parts.Sink, _hasFan, variables);
        _pipe = _spec?.Tower is not null ? variables.Of(parts.Sink!.Pipes!.Resistance) : -1;
        _lightShare = parts.Emitter.LightShare is { } share ? variables.Of(share) : -1;
        _still =
            _isMeasured && _hasFan && _sink is null
                ? variables.Factor("sink.fan_stopped", 1)
                : variables.Exact("sink.fan_stopped", 1);
        _ratedV = parts.Fan?.Rated?.Nominal ?? 0;
        _runAt = parts.Fan?.RunAt is { } run ? variables.Of(run) : variables.Exact("fan.run_at", _ratedV);
        _fan = _spec?.Fan is { } fan ? new FanCurve(fan.Curve) : null;
        JunctionIsElectrical = parts.Emitter.JunctionToCaseIsElectrical;
    }

    /// <summary>
    /// Resistance of a sink without its fan over that measured with it, where nothing else is known of it: 8, within a factor of two
    /// (common practice, no source).
    /// </summary>
    public static double StillOverFanned => 8;

    /// <summary>True when the junction's resistance counts on electrical power.</summary>
    public bool JunctionIsElectrical { get; }

    /// <summary>True when the sink's resistance was measured.</summary>
    public bool IsMeasured => _isMeasured;

    /// <summary>True when it was measured in the state of the scene normal.</summary>
    public bool NormalIsMeasured => _hasKey || _trials.Covers(_hasFan);

    /// <summary>Factors of the station's methods.</summary>
    public HeatFactors Factors(ReadOnlySpan<double> x)
    {
        Span<double> f = stackalloc double[_factors.Length];
        for (var i = 0; i < f.Length; i++)
        {
            f[i] = x[_factors[i]];
        }

        return HeatFactors.From(f);
    }

    /// <summary>Air round the light, K.</summary>
    public double AmbientK(ReadOnlySpan<double> x, Scene scene) => x[scene.Hot ? _ambientMax : _ambient];

    /// <summary>Interface under the emitter, K/W.</summary>
    public double InterfaceKPerW(ReadOnlySpan<double> x, HeatFactors factors) =>
        _bodyM2 > 0
            ? ContactLayer.ResistanceKPerW(x[_thickness], x[_conductivity], _bodyM2, 0, factors)
            : 0.1 * factors.Interface;

    /// <summary>Junction to case, K/W.</summary>
    public double JunctionKPerW(ReadOnlySpan<double> x) => x[_junction];

    /// <summary>Share of the emitter's power that leaves as light; null where flux and efficacy tell it.</summary>
    public double? LightShare(ReadOnlySpan<double> x) => _lightShare < 0 ? null : x[_lightShare];

    /// <summary>True where neither a trial nor the sink's sizes say anything of a state of the fan.</summary>
    public bool Guesses(bool fanRuns) =>
        _isMeasured && _hasFan && _sink is null && !_trials.Covers(fanRuns) && !(_hasKey && fanRuns);

    /// <summary>True where the sink in a state of the fan is read off a measurement and not off its sizes.</summary>
    public bool IsMeasuredWhen(bool fanRuns)
    {
        var runs = fanRuns && _hasFan;
        return _trials.Covers(runs) || (_hasKey && (fanRuns || !_hasFan)) || (_isMeasured && _sink is null);
    }

    /// <summary>Error of joints between sheets in one draw.</summary>
    public double Contact(ReadOnlySpan<double> x) => x[_contact];

    /// <summary>Error of the flow through the housing in one draw.</summary>
    public double AirFlow(ReadOnlySpan<double> x) => x[_airFlow];

    /// <summary>The sink at a heat, solved exactly; null where its sizes are not known.</summary>
    public SinkResult? At(SinkSpec? spec, double ambientK, bool fanRuns, double heatW) =>
        _sink is not null && spec is not null && heatW > 1e-6 ? _sink.At(spec, ambientK, fanRuns, heatW) : null;

    /// <summary>Luminous efficacy of the radiation, lm/W.</summary>
    public double RadiationLmPerW(ReadOnlySpan<double> x) => x[_radiation];

    /// <summary>The sink of one draw with the fan at its voltage.</summary>
    public SinkSpec? Spec(ReadOnlySpan<double> x, HeatFactors factors)
    {
        if (_spec is null)
        {
            return null;
        }

        var fan =
            _spec.Fan is { } f && _ratedV > 0 ? f with { VoltageRatio = Math.Max(0, x[_runAt] / _ratedV) } : _spec.Fan;
        var tower = _pipe < 0 ? _spec.Tower : _spec.Tower! with { PipeKPerW = Math.Max(x[_pipe], 1e-3) };
        return _spec with
        {
            Tower = tower,
            Emissivity = Math.Clamp(x[_emissivity], 0.01, 1),
            Factors = factors,
            Fan = fan,
        };
    }

    /// <summary>What each of the air's losses costs at a flow, the sink's own channels last, Pa.</summary>
    /// <param name="spec">The sink of the draw.</param>
    /// <param name="ambientK">Air that the fan draws in, K.</param>
    /// <param name="flowM3PerS">Flow, m³/s.</param>
    /// <param name="pressurePa">Pressure of the fan at that flow, Pa: what the openings leave of it is lost in the channels.</param>
    /// <param name="into">Takes them.</param>
    public static void Losses(SinkSpec spec, double ambientK, double flowM3PerS, double pressurePa, Span<double> into)
    {
        var air = Air.At(Math.Clamp(ambientK, 200, 400), spec.PressurePa);
        var left = pressurePa;
        for (var k = 0; k < into.Length - 1; k++)
        {
            into[k] = spec.Factors.AirOpenings * spec.AirLosses[k].LossPa(flowM3PerS, air);
            left -= into[k];
        }

        into[^1] = Math.Max(0, left);
    }

    /// <summary>Pressure that the fan gives at a flow, Pa.</summary>
    public double PressurePa(SinkSpec spec, double ambientK, double flowM3PerS) =>
        _fan is null || spec.Fan is not { } fan
            ? 0
            : FanOperatingPoint.FanPressurePa(
                _fan,
                fan,
                fan.SpeedRatio * spec.Factors.FanSpeed,
                spec.Factors.FanPressure,
                Air.At(ambientK, spec.PressurePa).Density / fan.CurveDensity,
                flowM3PerS
            );

    /// <summary>Rise of the sink over heat in one scene of one draw; null without a sink.</summary>
    public SinkCurve? Curve(ReadOnlySpan<double> x, SinkSpec? spec, double ambientK, bool fanRuns)
    {
        var runs = fanRuns && _hasFan;
        if (_trials.Covers(runs))
        {
            return WithFlow(_trials.Curve(x, runs), spec, ambientK, runs);
        }

        // A measurement holds for the fan as set; for a stopped fan only the computation says anything.
        if (_hasKey && (fanRuns || !_hasFan))
        {
            return WithFlow(SinkCurve.Measured(Math.Max(x[_measured], 1e-3)), spec, ambientK, runs);
        }

        if (_isMeasured && _sink is null)
        {
            // Nothing is known of this state: still air stands for a fan, and so many times the fan's resistance for still air.
            return runs
                ? _trials.Curve(x, fanRuns: false)
                : SinkCurve.Measured(
                    (_hasKey ? Math.Max(x[_measured], 1e-3) : _trials.RunningKPerW(x)) * StillOverFanned * x[_still]
                );
        }

        return _sink is null || spec is null ? null : _sink.Curve(spec, Math.Clamp(ambientK, 200, 400), fanRuns);
    }

    private SinkCurve WithFlow(SinkCurve curve, SinkSpec? spec, double ambientK, bool runs) =>
        runs && _sink is not null && spec is not null
            ? curve.WithFlow(_sink.Curve(spec, Math.Clamp(ambientK, 200, 400), fanRuns: true).FlowM3PerS)
            : curve;
}
