namespace Lampwright.Steps.Faults;

/// <summary>What one fault can come to at one position when every part and the driver are as far off as they may be.</summary>
/// <param name="Point">The point of rest with the greatest current through the emitter.</param>
/// <param name="MostSenseV">Greatest voltage seen at the sense input over all corners tried, in volts.</param>
internal readonly record struct FaultCorner(FaultPoint Point, double MostSenseV);

/// <summary>Looks for the worst corner of a fault: the one in which the emitter carries most.</summary>
/// <remarks>
/// Currents are quotients of polynomials of the first degree in each resistance (Kirchhoff's trees), so monotone in each while the others stand still: the
/// greatest lies at a corner. From the corner that is worst for a sound chain, all resistances least and threshold and limits of the driver greatest, each
/// resistance is turned to its other end in turn and stays there if the current grew, until none does. Each resistance is taken at its tolerance, its drift
/// over life and with heat to the end of its derating line, all on one side; a contact between none and worn; law of the driver at both ends.
/// Where the sense input sits at the driving point (no tap lead, the emitter's leads untouched) the first corner is the worst already (Rayleigh: no resistance
/// between two points falls when one in the network rises).
/// <b>Validity</b>: turning one at a time could stop short of the greatest where two must turn together; tests against every corner of random circuits find none.
/// <b>Source</b>: Kirchhoff's theorem of trees. <b>Accuracy</b>: exact for the model at a corner. <b>Checked by</b>: invariant (every corner, random draws).
/// </remarks>
internal readonly ref struct FaultCorners
{
    private readonly SenseCircuit _circuit;
    private readonly FaultsSpec _one;
    private readonly FaultsSpec _other;
    private readonly Span<double> _low;
    private readonly Span<double> _high;
    private readonly Span<double> _at;

    /// <param name="circuit">The circuit.</param>
    /// <param name="spec">What it is played with; its corners must be known.</param>
    /// <param name="room">Room for three times <see cref="Values"/> numbers.</param>
    public FaultCorners(SenseCircuit circuit, FaultsSpec spec, Span<double> room)
    {
        var off = spec.Corners!;
        _circuit = circuit;
        var n = Values(circuit);
        _low = room[..n];
        _high = room.Slice(n, n);
        _at = room.Slice(2 * n, n);
        (_one, _other) = (High(spec, -1), off.LawPerE > 0 ? High(spec, +1) : spec);
        var i = 0;
        foreach (var part in circuit.Resistors)
        {
            var share = Tolerance(part, off) + off.AgeShare + part.DriftShare;
            share = Guard.InRange(Math.Min(share, 0.9), 0, 0.9);
            (_low[i], _high[i++]) = (part.Ohm * (1 - share), part.Ohm * (1 + share));
        }

        foreach (var lead in circuit.Leads)
        {
            (_low[i], _high[i++]) = (lead.Ohm * (1 - off.LeadShare), lead.Ohm * (1 + off.LeadShare));
        }

        var worn = Math.Max(circuit.Spec.ContactOhm, circuit.Spec.ContactMostOhm ?? 0);
        for (var k = 0; k < circuit.Contacts.Count; k++)
        {
            (_low[i], _high[i++]) = (0, worn);
        }
    }

    private static double Tolerance(SenseResistor part, CornerSpec off) =>
        part.Tolerance ?? (part.Name.StartsWith("R0", StringComparison.Ordinal) ? off.FixedTolerance : off.Tolerance);

    /// <summary>How many resistances a circuit has.</summary>
    public static int Values(SenseCircuit circuit) =>
        circuit.Resistors.Count + circuit.Leads.Count + circuit.Contacts.Count;

    /// <summary>The worst corner.</summary>
    /// <param name="fault">What is wrong.</param>
    /// <param name="closed">Closed contacts as bits.</param>
    /// <param name="rounds">How often each resistance is turned at most; 0 for the corner of a sound chain alone.</param>
    /// <param name="mostWatts">Room for one number per resistor.</param>
    /// <param name="load">Greatest load of each part as a share of what it may take; raised by every corner tried.</param>
    public FaultCorner Worst(Fault fault, int closed, int rounds, Span<double> mostWatts, Span<double> load)
    {
        _low.CopyTo(_at);
        var spec = _one;
        var best = At(spec, fault, closed, mostWatts, load);
        var senseV = best.SenseV;
        if (rounds > 0 && _one.Corners!.LawPerE > 0)
        {
            var other = At(_other, fault, closed, mostWatts, load);
            senseV = Math.Max(senseV, other.SenseV);
            (best, spec) = other.EmitterMostA > best.EmitterMostA ? (other, _other) : (best, spec);
        }

        // Where the sense input sits at the point that the emitter feeds, a driving point, lower resistance is always more current.
        var plain = !_circuit.Spec.HasTapLead && !TouchesEmitter(fault) && !IsNearLimit(load);
        var grew = !plain;
        for (var round = 0; grew && round < rounds; round++)
        {
            grew = false;
            for (var i = 0; i < _at.Length && !double.IsInfinity(best.EmitterMostA); i++)
            {
                var (was, to) = (_at[i], _at[i] == _low[i] ? _high[i] : _low[i]);
                if (was == to || !Matters(fault, closed, i))
                {
                    continue;
                }

                _at[i] = to;
                var point = At(spec, fault, closed, mostWatts, load);
                senseV = Math.Max(senseV, point.SenseV);
                if (point.EmitterMostA > best.EmitterMostA * (1 + 1e-9))
                {
                    (best, grew) = (point, true);
                }
                else
                {
                    _at[i] = was;
                }
            }
        }

        return new(best, senseV);
    }

    private static bool TouchesEmitter(Fault fault) =>
        fault.Kind is FaultKind.LeadsTouch or FaultKind.LeadsSwapped && fault.First < 2;

    // A part takes most with itself at its greatest and all others at their least, or with itself at its least: near the limit both are played.
    private bool IsNearLimit(ReadOnlySpan<double> load)
    {
        for (var k = 0; k < load.Length; k++)
        {
            if (load[k] is <= 1 and > 0 && load[k] * _high[k] / _low[k] > 1)
            {
                return true;
            }
        }

        return false;
    }

    private bool Matters(Fault fault, int closed, int i)
    {
        var contact = i - _circuit.Resistors.Count - _circuit.Leads.Count;
        return contact < 0 || FaultWiring.IsClosed(fault, closed, contact);
    }

    private FaultPoint At(FaultsSpec spec, Fault fault, int closed, Span<double> mostWatts, Span<double> load)
    {
        var (r, l) = (_circuit.Resistors.Count, _circuit.Leads.Count);
        var ohms = new FaultOhms(_at[..r], _at.Slice(r, l), _at[(r + l)..]);
        var point = FaultPoints.At(_circuit, spec, fault, closed, ohms, mostWatts, mostWatts);
        FaultPlay.Loads(_circuit, mostWatts, load);
        return point;
    }

    private static FaultsSpec High(FaultsSpec spec, int law)
    {
        var off = spec.Corners!;
        return spec with
        {
            Law = spec.HighLaw(off, law),
            Driver = spec.Driver with
            {
                LimitA = spec.LimitMostA,
                OverVoltageV = spec.Driver.OverVoltageV is { } v ? Math.Max(v, off.OverMostV ?? v) : null,
            },
        };
    }
}
