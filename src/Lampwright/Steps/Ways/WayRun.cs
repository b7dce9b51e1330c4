namespace Lampwright.Steps.Ways;

/// <summary>Runs a circuit from event to event, with a bound on the work.</summary>
internal sealed class WayRun
{
    /// <summary>Steps a run may take, rejected ones and those that look for an event included.</summary>
    private static readonly int MostSteps = 8_000;

    /// <summary>Events a run may have.</summary>
    private static readonly int MostEvents = 3000;

    private static readonly int MostTold = 100;

    private readonly WayDynamics _d;
    private readonly double _tolerance;
    private double _v;
    private double _i;
    private double _h;
    private bool _recording = true;
    private int _work;
    private int _events;

    public WayRun(WayCircuit circuit, double tolerance)
    {
        _tolerance = tolerance;
        _d = new(circuit);
        (_v, _i) = (circuit.StartV, (circuit.Source as SupplyBehindResistance)?.StartA ?? 0);
        Switches = new(circuit, _d, Tell);
    }

    public WaySwitches Switches { get; }

    public WayRecord Record { get; } = new();

    public List<TraceEvent> Told { get; } = [];

    public double Time { get; private set; }

    /// <summary>Whether the bound on work ended the run.</summary>
    public bool Exhausted => _work >= MostSteps || _events >= MostEvents;

    public void Tell(double t, string words)
    {
        if (Told.Count < MostTold && _recording)
        {
            Told.Add(new(t, words));
        }
    }

    /// <summary>Runs on to a time; points are kept only while <paramref name="record"/> is set.</summary>
    public void Until(double end, bool record, Func<bool>? enough = null)
    {
        _recording = record;
        Keep(Time, _v);
        while (Time < end && !Exhausted && enough?.Invoke() != true)
        {
            var stop = Math.Min(end, Switches.NextTime);
            var (above, below) = (Switches.Above(_v), Switches.Below(_v));
            var reached = Smooth(stop, above, below);
            if (reached is { } rising)
            {
                _events++;
                Switches.Reached(Time, _v, rising);
                Restart();
            }
            else if (Time >= Switches.NextTime)
            {
                _events++;
                Switches.Struck(Time, _v);
                Restart();
            }
        }
    }

    private void Restart()
    {
        _h = 0;
        Keep(Time, _v);
    }

    /// <summary>Steps to a time or to a voltage, whichever comes first: true or false for one reached rising or falling, null for the time.</summary>
    private bool? Smooth(double stop, double above, double below)
    {
        while (Time < stop && _work < MostSteps)
        {
            var step = new WayStep(_d, Time, _v, _i);
            var most = stop - Time;
            if (_h <= 0)
            {
                // A first step over which the voltage moves by a thousandth.
                _h = 1e-3 * _d.Volts / (Math.Abs(step.RateV) + (1e-9 * _d.Volts));
            }

            var bound = step.LongestS;
            WayStepResult next;
            double h;
            while (true)
            {
                h = Math.Min(Math.Min(_h, bound), most);
                h = h > 0.999 * most ? most : h;
                next = step.After(h);
                _work++;
                var error = Error(next);
                var factor = error > 0 ? 0.9 / Math.Cbrt(error) : 8;
                if ((error <= 1 && next.Finite) || h < 1e-15 + (1e-14 * Time) || _work >= MostSteps)
                {
                    // A step that was cut short by the end says little of the next.
                    _h = Math.Max(h * Math.Clamp(factor, 0.2, 8), h < _h && error <= 1 ? Math.Min(_h, 8 * h) : 0);
                    break;
                }

                _h = h * (next.Finite ? Math.Clamp(factor, 0.1, 0.7) : 0.1);
            }

            if (!next.Finite)
            {
                _work = MostSteps;
                return null;
            }

            if (next.V > above || next.V < below || (next.V == above && _v < above) || (next.V == below && _v > below))
            {
                var rising = next.V >= above;
                h = Crossing(step, h, next, rising ? above : below, out next);
                Advance(step, h, Time + h, next with { V = rising ? above : below });
                return rising;
            }

            // The end exactly, not the sum that rounds to its neighbour.
            Advance(step, h, h == most ? stop : Time + h, next);
        }

        return null;
    }

    private double Error(in WayStepResult next)
    {
        var v = next.ErrorV / (_tolerance * (Math.Abs(next.V) + (0.1 * _d.Volts)));
        return _d.Henry > 0 ? Math.Max(v, next.ErrorI / (_tolerance * (Math.Abs(next.I) + (0.1 * _d.Amps)))) : v;
    }

    /// <summary>The length of step that just reaches a voltage: regula falsi with the far end halved (Illinois).</summary>
    private double Crossing(in WayStep step, double h, WayStepResult far, double level, out WayStepResult next)
    {
        var (low, high, fLow, fHigh) = (0.0, h, _v - level, far.V - level);
        var (side, near) = (0, 1e-10 * _d.Volts);
        next = far;
        for (var n = 0; n < 60 && Math.Abs(next.V - level) > near && high - low > 1e-12 * h; n++)
        {
            var middle = low + ((high - low) * fLow / (fLow - fHigh));
            middle = middle > low && middle < high ? middle : 0.5 * (low + high);
            next = step.After(middle);
            _work++;
            var f = next.V - level;
            h = middle;
            if (f > 0 == far.V > level)
            {
                (high, fHigh) = (middle, f);
                fLow *= side > 0 ? 0.5 : 1;
                side = 1;
            }
            else
            {
                (low, fLow) = (middle, f);
                fHigh *= side < 0 ? 0.5 : 1;
                side = -1;
            }
        }

        return h;
    }

    private void Advance(in WayStep step, double h, double end, WayStepResult next)
    {
        if (_recording)
        {
            var middle = (0.5 * (_v + next.V)) + (h * (step.RateV - _d.RateV(end, next.V, next.I)) / 8);
            middle =
                _d.Henry > 0 || _d.Ripples ? middle : Math.Clamp(middle, Math.Min(_v, next.V), Math.Max(_v, next.V));
            Keep(0.5 * (Time + end), middle);
        }

        (Time, _v, _i) = (end, next.V, next.I);
        Keep(Time, _v);
    }

    private void Keep(double t, double v)
    {
        if (_recording)
        {
            Record.Add(t, v, _d.EmitterA(v));
        }
    }
}
