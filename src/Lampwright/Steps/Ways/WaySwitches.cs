using System.Globalization;

namespace Lampwright.Steps.Ways;

/// <summary>What switches a source or a load on and off: lock-out, limit, window, chopping; each by a voltage or by the clock.</summary>
/// <remarks>
/// A driver that is under its window is given time to charge its capacitor: twice C·V/I, at least <see cref="HoldS"/>; then it gives up.
/// Where it is not known what a driver does at its limit it is taken to switch off, under its window to start and stop: the worse of what it may
/// be; an event says so. A trip waits at least <see cref="LeastRestartS"/>, a lock-out has at least a thousandth of hysteresis.
/// <b>Source</b>: derived (thresholds with hysteresis); the two times: common practice, no source.
/// </remarks>
internal sealed class WaySwitches
{
    private readonly WayDynamics _d;
    private readonly DriverOutput? _driver;
    private readonly ConverterLine? _converter;
    private readonly ChoppedLine? _chopped;
    private readonly Action<double, string> _tell;
    private readonly double _offV;
    private readonly double _dropOutV;
    private readonly double _clampV;
    private readonly double _graceS;
    private double _retryAt = double.PositiveInfinity;
    private double _giveUpAt = double.PositiveInfinity;
    private bool _clampTold;
    private long _edge;
    private double _edgeAt = double.PositiveInfinity;

    public WaySwitches(WayCircuit circuit, WayDynamics dynamics, Action<double, string> tell)
    {
        (_d, _tell) = (dynamics, tell);
        _driver = circuit.Source as DriverOutput;
        _converter = circuit.Load as ConverterLine;
        _chopped = circuit.Load as ChoppedLine;
        var v = circuit.StartV;
        if (_converter is { } c)
        {
            _offV = Math.Min(c.OffV, c.OnV * (1 - 1e-3));
            _dropOutV = c.DropOut is { } e ? VoltsFor(e, c.EmitterRegulatedA) : double.NaN;
            _d.LoadOn = v >= c.OnV || !(c.OnV > 0);
            if (_d.LoadOn)
            {
                LoadStarts.Add(0);
            }
        }

        if (_driver is { } driver)
        {
            _clampV = _d.Clamps ? driver.LimitV - (2 * DriverOutput.SoftV) : double.PositiveInfinity;
            var charge = 2 * circuit.CapacitorF * Math.Max(driver.LeastV ?? 0, 0) / Math.Max(driver.SetA, 1e-9);
            _graceS = Math.Max(HoldS, charge);
            StartDriver(0, v, first: true);
        }

        if (_chopped is { Duty: < 1 } chop && chop.FrequencyHz > 0 && double.IsFinite(chop.FrequencyHz))
        {
            _d.LoadOn = chop.Duty > 0;
            (_edge, _edgeAt) = chop.Duty > 0 ? (1, EdgeTime(1)) : (0, double.PositiveInfinity);
        }
        else if (_chopped is { Duty: not > 0 })
        {
            _d.LoadOn = false;
        }
    }

    /// <summary>How long a driver holds on under its window at least, in seconds: half a period of the mains.</summary>
    public static double HoldS => 0.01;

    /// <summary>Least time from a trip to the next try, in seconds.</summary>
    public static double LeastRestartS => 1e-3;

    /// <summary>When the load started, in seconds.</summary>
    public List<double> LoadStarts { get; } = [];

    /// <summary>When the driver started, in seconds; the first start is not among them.</summary>
    public List<double> DriverStarts { get; } = [];

    /// <summary>When something last switched other than by the chopping, in seconds.</summary>
    public double LastAt { get; private set; } = -1;

    /// <summary>Whether the driver is off and will not try again.</summary>
    public bool Latched { get; private set; }

    /// <summary>Whether the chopping has edges to come.</summary>
    public bool Chops => double.IsFinite(_edgeAt);

    /// <summary>Whether the driver is off and its next try is still to come.</summary>
    public bool Waits => double.IsFinite(_retryAt);

    /// <summary>How often driver or load have started again.</summary>
    public int Cycles => Math.Max(LoadStarts.Count - 1, DriverStarts.Count);

    /// <summary>Three waits of the driver between tries, in seconds; 0 where it does not wait.</summary>
    public double WaitS =>
        _driver is { RestartS: > 0 and < 1e3 } && (DriverStarts.Count > 0 || Waits) ? 4 * _driver.RestartS : 0;

    /// <summary>The next time at which the clock switches something, in seconds.</summary>
    public double NextTime => Math.Min(_edgeAt, Math.Min(_retryAt, _giveUpAt));

    /// <summary>The lowest voltage above <paramref name="v"/> at which something happens.</summary>
    public double Above(double v)
    {
        var next = double.PositiveInfinity;
        if (_driver is not null && _d.SourceOn)
        {
            next = Least(next, v, _d.Clamps ? (_clampTold ? double.PositiveInfinity : _clampV) : _driver.LimitV);
            next = Least(next, v, Under ? _driver.LeastV!.Value : double.PositiveInfinity);
        }

        if (_converter is not null)
        {
            next = Least(next, v, _d.LoadOn ? _dropOutV : _converter.OnV);
        }

        return next;
    }

    /// <summary>The highest voltage below <paramref name="v"/> at which something happens.</summary>
    public double Below(double v)
    {
        var next = double.NegativeInfinity;
        if (_driver is { LeastV: { } least } && _d.SourceOn && !Under && least <= v)
        {
            next = least;
        }

        if (_converter is not null && _d.LoadOn)
        {
            next = _offV < v && _offV > 0 ? Math.Max(next, _offV) : next;
            next = _dropOutV < v ? Math.Max(next, _dropOutV) : next;
        }

        return next;
    }

    /// <summary>Acts on a voltage that was reached.</summary>
    /// <param name="t">Time in seconds.</param>
    /// <param name="v">The voltage, exactly one of <see cref="Above"/> or <see cref="Below"/>.</param>
    /// <param name="rising">Whether it was reached from below.</param>
    public void Reached(double t, double v, bool rising)
    {
        if (_driver is not null && _d.SourceOn)
        {
            if (rising && !_d.Clamps && v >= _driver.LimitV)
            {
                Trip(t);
            }
            else if (rising && v == _clampV && !_clampTold)
            {
                _clampTold = true;
                _tell(t, $"driver holds its limit of {Text(_driver.LimitV)} V");
            }
            else if (v == _driver.LeastV && rising == Under)
            {
                _giveUpAt = rising ? double.PositiveInfinity : t + _graceS;
            }
        }

        if (_converter is { } c)
        {
            if (rising && !_d.LoadOn && v >= c.OnV)
            {
                (_d.LoadOn, LastAt) = (true, t);
                LoadStarts.Add(t);
                _tell(t, $"converter or driver input starts at {Text(c.OnV)} V");
            }
            else if (!rising && _d.LoadOn && v == _offV)
            {
                (_d.LoadOn, LastAt) = (false, t);
                _tell(t, $"converter or driver input locks out at {Text(_offV)} V");
            }
            else if (v == _dropOutV && _d.LoadOn)
            {
                _tell(t, rising ? "converter regulates" : "converter drops out: its switch stays on");
            }
        }
    }

    /// <summary>Acts on the clock.</summary>
    public void Struck(double t, double v)
    {
        if (t >= _edgeAt)
        {
            _d.LoadOn = !_d.LoadOn;
            if (_edge < 3)
            {
                _tell(t, _d.LoadOn ? "switch closes" : "switch opens");
            }

            _edgeAt = EdgeTime(++_edge);
        }

        if (t >= _retryAt)
        {
            StartDriver(t, v, first: false);
        }

        if (t >= _giveUpAt)
        {
            var known = _driver!.Under == UnderVoltage.Unknown ? " (not known what it does; shown as the worse)" : "";
            var stops = _driver.Under == UnderVoltage.Stops;
            _tell(t, $"driver gives up under its window{(stops ? " and stays off" : "")}{known}");
            Off(t, stops);
        }
    }

    private bool Under => double.IsFinite(_giveUpAt);

    private void StartDriver(double t, double v, bool first)
    {
        _retryAt = double.PositiveInfinity;
        if (!first)
        {
            _tell(t, "driver tries again");
            DriverStarts.Add(t);
            LastAt = t;
        }

        _d.SourceOn = true;
        if (!_d.Clamps && v >= _driver!.LimitV)
        {
            Trip(t);
        }
        else
        {
            _giveUpAt = v < _driver!.LeastV ? t + _graceS : double.PositiveInfinity;
        }
    }

    private void Trip(double t)
    {
        var known = _driver!.Over == OverVoltage.Unknown ? " (not known what it does; shown as the worse)" : "";
        _tell(t, $"driver switches off at its limit of {Text(_driver.LimitV)} V{known}");
        Off(t, stays: false);
    }

    private void Off(double t, bool stays)
    {
        (_d.SourceOn, _giveUpAt, LastAt) = (false, double.PositiveInfinity, t);
        var wait = _driver!.RestartS;
        Latched = stays || !double.IsFinite(wait);
        _retryAt = Latched ? double.PositiveInfinity : t + Math.Max(wait, LeastRestartS);
    }

    // Edges are counted, not added up, so that they keep their place over any number of periods.
    private double EdgeTime(long edge) => ((edge / 2) + (edge % 2 == 1 ? _chopped!.Duty : 0)) / _chopped!.FrequencyHz;

    private static double Least(double next, double v, double candidate) =>
        candidate > v && candidate < next ? candidate : next;

    /// <summary>Voltage that an emitter needs for a current, in volts.</summary>
    private static double VoltsFor(EmitterLine e, double amps)
    {
        var across = e.Model.VoltageV(amps, e.JunctionK);
        return across + (e.SeriesOhm * (amps + (across / e.ShuntOhm)));
    }

    private static string Text(double volts) => volts.ToString("0.0", CultureInfo.InvariantCulture);
}
