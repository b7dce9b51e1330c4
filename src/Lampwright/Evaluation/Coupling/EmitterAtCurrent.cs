using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>An emitter's curves at one current, over the junction alone: what the loop asks for again and again.</summary>
/// <remarks>The same numbers as <see cref="EmitterModel"/>: voltage is linear and flux exponential in the junction's temperature.</remarks>
internal readonly struct EmitterAtCurrent
{
    private static readonly double SpanK = 64;
    private readonly double _referenceK;
    private readonly double _voltageV;
    private readonly double _slopeVPerK;
    private readonly double _fluxLm;
    private readonly double _decayPerK;

    public EmitterAtCurrent(in EmitterModel model, double currentA)
    {
        CurrentA = currentA;
        _referenceK = model.ReferenceK;
        _voltageV = model.VoltageV(currentA, _referenceK);

        // Where an error beyond the points bends the line, or the floor of zero volts lies near, it is taken on the cold side, where the
        // floor is never in the way of a falling line.
        var side = model.SlopeVPerK <= 0 ? -SpanK : SpanK;
        _slopeVPerK =
            model.VoltageBeyond == 0 && _voltageV > 0
                ? model.SlopeVPerK
                : (model.VoltageV(currentA, _referenceK + side) - _voltageV) / side;
        _fluxLm = model.FluxLm(currentA, _referenceK);
        _decayPerK = model.FluxDecayPerK;
    }

    /// <summary>The current, A.</summary>
    public double CurrentA { get; }

    /// <summary>Voltage, V.</summary>
    public double VoltageV(double junctionK) => Math.Max(0, _voltageV + (_slopeVPerK * (junctionK - _referenceK)));

    /// <summary>Flux, lm.</summary>
    public double FluxLm(double junctionK) => _fluxLm * Math.Exp(Math.Min(5, -_decayPerK * (junctionK - _referenceK)));
}
