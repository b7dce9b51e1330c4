namespace Lampwright.Steps.Ways;

/// <summary>The emitter of one draw at full current and at half of its light, with the junction as warm as at full current.</summary>
/// <remarks>
/// A dimmed emitter is cooler and gives a few per cent more light than is reckoned here, so that half of the light is met at a slightly lower current.
/// </remarks>
internal readonly struct HalfLight
{
    private readonly EmitterModel _model;
    private readonly double _junctionK;
    private readonly double _fullLm;

    public HalfLight(in WayDraw draw)
    {
        _model = draw.Model.FluxRefLm > 0 ? draw.Model : draw.Model with { FluxRefLm = 1 };
        _junctionK = draw.JunctionK;
        SetA = draw.SetA;
        FullV = Math.Max(_model.VoltageV(SetA, _junctionK), 1e-3);
        _fullLm = _model.FluxLm(SetA, _junctionK);
        var half = _fullLm > 0 ? _model.CurrentForFlux(0.5 * _fullLm, _junctionK) : null;
        HalfA = half is { } h && h > 0.05 * SetA && h < 0.95 * SetA ? h : 0.5 * SetA;
        HalfV = Math.Max(_model.VoltageV(HalfA, _junctionK), 1e-3);
    }

    /// <summary>Set current in amperes.</summary>
    public double SetA { get; }

    /// <summary>Emitter voltage at the set current, in volts.</summary>
    public double FullV { get; }

    /// <summary>Current at half of the light, in amperes.</summary>
    public double HalfA { get; }

    /// <summary>Emitter voltage there, in volts.</summary>
    public double HalfV { get; }

    /// <summary>Emitter power there, in watts.</summary>
    public double HalfW => HalfA * HalfV;

    /// <summary>Light at a current as a share of that at the set current.</summary>
    public double Share(double currentA) =>
        _fullLm > 0 ? _model.FluxLm(currentA, _junctionK) / _fullLm : Math.Max(0, currentA) / SetA;

    /// <summary>Emitter power at a current, in watts.</summary>
    public double PowerW(double currentA) => currentA * _model.VoltageV(currentA, _junctionK);
}
