namespace Lampwright.Steps.Ways;

/// <summary>What the node's voltage and, where there is an inductance, the current in it do, for the modes that are set.</summary>
/// <remarks>C·dV/dt = source − load; L·di/dt = Vs − R·i − V. Modes change at events only; between them all is smooth.</remarks>
internal sealed class WayDynamics
{
    private static readonly double LeastOhm = 1e-6;

    private readonly DriverOutput? _driver;
    private readonly SupplyBehindResistance? _supply;
    private readonly SourceLine _source;
    private readonly LoadLine _load;
    private readonly double _farad;
    private readonly double _ohm;
    private readonly double _omega;

    public WayDynamics(WayCircuit circuit)
    {
        _source = circuit.Source;
        _driver = circuit.Source as DriverOutput;
        _supply = circuit.Source as SupplyBehindResistance;
        _load = circuit.Load is ChoppedLine chopped ? chopped.Closed : circuit.Load;
        _farad = circuit.CapacitorF;
        _ohm = Math.Max(_supply?.Ohm ?? 0, LeastOhm);
        _omega = 2 * Math.PI * (_driver?.RippleHz ?? 0);
        Henry = _supply?.Henry ?? 0;
        Clamps = _driver is null or { Over: OverVoltage.Clamps };
        Volts = Math.Max(1e-3, Math.Max(Math.Abs(circuit.StartV), ScaleV(circuit)));
        Amps = Math.Max(1e-9, Math.Max(Math.Abs(_supply?.StartA ?? 0), _load.CurrentA(Volts)));
    }

    /// <summary>Inductance of the source in henry; 0 where there is none.</summary>
    public double Henry { get; }

    /// <summary>Whether the source limits its voltage softly; else it gives all of its current until it is switched off.</summary>
    public bool Clamps { get; }

    /// <summary>A voltage of the circuit's own size, for tolerances.</summary>
    public double Volts { get; }

    /// <summary>A current of the circuit's own size, for tolerances.</summary>
    public double Amps { get; }

    /// <summary>Whether the source is on.</summary>
    public bool SourceOn { get; set; } = true;

    /// <summary>Whether the load is on: started, or its switch closed.</summary>
    public bool LoadOn { get; set; } = true;

    public bool Ripples => _driver is { RippleShare: not 0, RippleHz: > 0 };

    public double RipplePeriodS => 1 / (_driver?.RippleHz ?? 0);

    public double SourceA(double t, double v, double i)
    {
        if (!SourceOn)
        {
            return 0;
        }

        if (_driver is null)
        {
            return Henry > 0 ? i
                : _supply is null ? _source.CurrentA(v)
                : Math.Max(0, (_supply.OpenV - v) / _ohm);
        }

        var held = Clamps ? _driver.CurrentA(v) : _driver.SetA;
        return Ripples ? held * (1 + (_driver.RippleShare * Math.Cos(_omega * t))) : held;
    }

    public double LoadA(double v) => LoadOn ? _load.CurrentA(v) : 0;

    public double EmitterA(double v) => LoadOn ? _load.EmitterA(v) : 0;

    public double RateV(double t, double v, double i) => (SourceA(t, v, i) - LoadA(v)) / _farad;

    public double RateI(double v, double i) => Henry > 0 ? (_supply!.OpenV - (_ohm * i) - v) / Henry : 0;

    /// <summary>∂(dV/dt)/∂V by a small difference, with the rate at v given.</summary>
    public double SlopeV(double t, double v, double i, double rate)
    {
        var d = 1e-7 * (Math.Abs(v) + (0.01 * Volts));
        return (RateV(t, v + d, i) - rate) / d;
    }

    /// <summary>∂(dV/dt)/∂i.</summary>
    public double SlopeVi => Henry > 0 ? 1 / _farad : 0;

    /// <summary>∂(di/dt)/∂V.</summary>
    public double SlopeIv => Henry > 0 ? -1 / Henry : 0;

    /// <summary>∂(di/dt)/∂i.</summary>
    public double SlopeIi => Henry > 0 ? -_ohm / Henry : 0;

    /// <summary>∂(dV/dt)/∂t: the ripple.</summary>
    public double SlopeT(double t, double v)
    {
        if (!Ripples || !SourceOn)
        {
            return 0;
        }

        var held = Clamps ? _driver!.CurrentA(v) : _driver!.SetA;
        return -held * _driver.RippleShare * _omega * Math.Sin(_omega * t) / _farad;
    }

    private static double ScaleV(WayCircuit circuit)
    {
        var load = circuit.Load switch
        {
            ConverterLine c => c.OnV,
            ChoppedLine c => Across(c.Emitter),
            EmitterLine e => Across(e),
            _ => 0,
        };
        return circuit.Source switch
        {
            DriverOutput { LimitV: < 1e5 } d => d.LimitV,
            SupplyBehindResistance s => s.OpenV,
            _ => load,
        };
    }

    private static double Across(EmitterLine emitter) =>
        emitter.Model.VoltageV(emitter.Model.FluxRefA, emitter.JunctionK);
}
