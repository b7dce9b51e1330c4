namespace Lampwright.Steps.Faults;

/// <summary>Where the circuit comes to rest with one fault at one position of the switches.</summary>
/// <param name="EmitterA">Current through the emitter in amperes; the least it can be where the driver's limit is not known.</param>
/// <param name="EmitterMostA">The greatest it can be; infinite where nothing that is known holds it.</param>
/// <param name="DriverA">Output current of the driver in amperes, at <paramref name="EmitterA"/>.</param>
/// <param name="DriverMostA">Output current at <paramref name="EmitterMostA"/>.</param>
/// <param name="SenseV">Voltage at the sense input in volts.</param>
/// <param name="OutputV">Output voltage of the driver in volts; NaN where nothing known holds it.</param>
/// <param name="EmitterV">Voltage across the emitter in volts, negative when it is the wrong way round.</param>
/// <param name="Regulated">Whether the driver holds its threshold.</param>
/// <param name="AtVoltageLimit">Whether its output voltage is what stops it.</param>
/// <param name="SenseFollowsLow">Whether the sense input hangs at the pad LED − with no path to ground: what leaks through the emitter reaches it.</param>
public readonly record struct FaultPoint(
    double EmitterA,
    double EmitterMostA,
    double DriverA,
    double DriverMostA,
    double SenseV,
    double OutputV,
    double EmitterV,
    bool Regulated,
    bool AtVoltageLimit,
    bool SenseFollowsLow
);

/// <summary>Finds the point of rest of the sense circuit with a single fault in it.</summary>
/// <remarks>
/// The driver is a current source that raises its current until the sense input sees the threshold, its own limit is reached, or its output
/// comes to the voltage limit. Where its own limit is not known both ends are told: what it is rated for, and what the threshold asks for.
/// The emitter conducts above its knee along a straight line, or not at all.
/// <b>Validity</b>: the point of rest; what happens on the way there (milliseconds, the output capacitor) is not in it. A sense input that hangs
/// free is taken to see nothing, the worst it can. <b>Source</b>: Kirchhoff; regulation as in references, electrical.md section 3.
/// <b>Accuracy</b>: that of threshold and resistances. <b>Checked by</b>: solver (decks of a general-purpose circuit simulator), invariant.
/// </remarks>
public static class FaultPoints
{
    // Stands for "nothing known holds it" in the arithmetic; never shown.
    private static readonly double Unbounded = 1e6;

    /// <summary>The point of rest; no allocation.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="spec">Driver, threshold and emitter.</param>
    /// <param name="fault">What is wrong.</param>
    /// <param name="closed">Closed contacts as bits, the first switch the lowest.</param>
    /// <param name="contactOhm">Resistance of a closed contact in ohm; ≥ 0.</param>
    /// <param name="watts">Takes the power of each resistor at <see cref="FaultPoint.EmitterA"/>, in watts; or empty.</param>
    /// <param name="mostWatts">Takes that at <see cref="FaultPoint.EmitterMostA"/>, infinite where nothing bounds it; or empty.</param>
    public static FaultPoint At(
        SenseCircuit circuit,
        FaultsSpec spec,
        Fault fault,
        int closed,
        double contactOhm,
        Span<double> watts,
        Span<double> mostWatts
    )
    {
        ArgumentNullException.ThrowIfNull(circuit);
        ArgumentNullException.ThrowIfNull(spec);
        watts.Clear();
        mostWatts.Clear();
        if (fault.Kind == FaultKind.SupplyPulled)
        {
            return default;
        }

        Span<int> root = stackalloc int[circuit.Nodes];
        Span<double> room = stackalloc double[circuit.Nodes * (circuit.Nodes + 2)];
        FaultPoint point = default;
        foreach (var conducts in (ReadOnlySpan<bool>)[true, false])
        {
            var net = new NodalSolve(circuit.Nodes, root, room);
            Wires(ref net, circuit, fault, closed, contactOhm);
            net.Number();
            Parts(ref net, circuit, fault, closed, contactOhm);
            Emitter(ref net, spec.Emitter, conducts);
            net.Feed(SenseNode.Out, 0, 1);
            net.Solve();
            point = Rest(net, spec, conducts);
            if (!conducts || point.EmitterA > -1e-6)
            {
                Powers(net, circuit, fault, point, watts, mostWatts);
                break;
            }
        }

        var dark = point.EmitterA < 0;
        return dark ? point with { EmitterA = 0, EmitterMostA = Math.Max(0, point.EmitterMostA) } : point;
    }

    private static void Wires(ref NodalSolve net, SenseCircuit circuit, Fault fault, int closed, double contactOhm)
    {
        foreach (var (a, b) in circuit.Wires)
        {
            net.Wire(a, b);
        }

        for (var i = 0; i < circuit.Leads.Count; i++)
        {
            if (circuit.Leads[i].Ohm <= 0 && Connects(circuit, fault, i, out var board, out var far))
            {
                net.Wire(board, far);
            }
        }

        if (fault.Kind == FaultKind.LeadsTouch)
        {
            net.Wire(circuit.Leads[fault.First].Board, circuit.Leads[fault.Second].Board);
        }

        if (fault.Kind == FaultKind.ResistorShort)
        {
            net.Wire(circuit.Resistors[fault.First].A, circuit.Resistors[fault.First].B);
        }

        for (var k = 0; contactOhm <= 0 && k < circuit.Contacts.Count; k++)
        {
            if (IsClosed(fault, closed, k))
            {
                net.Wire(circuit.Contacts[k].A, circuit.Contacts[k].B);
            }
        }
    }

    private static void Parts(ref NodalSolve net, SenseCircuit circuit, Fault fault, int closed, double contactOhm)
    {
        for (var k = 0; k < circuit.Resistors.Count; k++)
        {
            var part = circuit.Resistors[k];
            if (fault != new Fault(FaultKind.ResistorOpen, k))
            {
                net.Resistor(part.A, part.B, 1 / part.Ohm);
            }
        }

        for (var k = 0; contactOhm > 0 && k < circuit.Contacts.Count; k++)
        {
            if (IsClosed(fault, closed, k))
            {
                net.Resistor(circuit.Contacts[k].A, circuit.Contacts[k].B, 1 / contactOhm);
            }
        }

        for (var i = 0; i < circuit.Leads.Count; i++)
        {
            if (circuit.Leads[i].Ohm > 0 && Connects(circuit, fault, i, out var board, out var far))
            {
                net.Resistor(board, far, 1 / circuit.Leads[i].Ohm);
            }
        }
    }

    private static bool IsClosed(Fault fault, int closed, int k) =>
        fault.Kind switch
        {
            FaultKind.SwitchOpen when fault.First == k => false,
            FaultKind.SwitchClosed when fault.First == k => true,
            FaultKind.BetweenPositions => false,
            _ => ((closed >> k) & 1) == 1,
        };

    // Where a lead goes, if it goes anywhere; swapped leads trade their ends on the board.
    private static bool Connects(SenseCircuit circuit, Fault fault, int i, out int board, out int far)
    {
        var emitter = i < 2;
        (board, far) = (circuit.Leads[i].Board, circuit.Leads[i].Far);
        if (fault.Kind == FaultKind.LeadsSwapped && (fault.First == i || fault.Second == i))
        {
            board = circuit.Leads[fault.First == i ? fault.Second : fault.First].Board;
        }

        return fault.Kind switch
        {
            FaultKind.LeadBroken => fault.First != i,
            FaultKind.PlatePulled => emitter,
            FaultKind.EmitterPulled => !emitter,
            _ => true,
        };
    }

    private static void Emitter(ref NodalSolve net, EmitterStraight emitter, bool conducts)
    {
        if (!conducts)
        {
            return;
        }

        var siemens = 1 / emitter.SlopeOhm;
        net.Resistor(SenseNode.Anode, SenseNode.Cathode, siemens);
        net.Feed(SenseNode.Anode, emitter.KneeV * siemens, 0);
        net.Feed(SenseNode.Cathode, -emitter.KneeV * siemens, 0);
    }

    private static FaultPoint Rest(in NodalSolve net, FaultsSpec spec, bool conducts)
    {
        var (driver, limits) = (spec.Driver, spec.Limits ?? new FaultLimits());
        var (s0, s1) = (net.First(SenseNode.Sense), net.Second(SenseNode.Sense));
        var (o0, o1) = (net.First(SenseNode.Out), net.Second(SenseNode.Out));
        var asked =
            s1 <= 1e-7 ? Unbounded
            : Math.Abs(s0) < 1e-6 && s1 is > 1e-5 and < 1e5 ? spec.Law.CurrentA(s1)
            : (spec.ThresholdV - s0) / s1;
        var most = Math.Clamp(asked, 0, driver.LimitA ?? Unbounded);
        var regulated = most >= asked;
        var atVoltage = false;
        if (driver.OverVoltageV is { } volts && o0 + (most * o1) > volts)
        {
            most = Math.Max(0, (volts - o0) / o1);
            (regulated, atVoltage) = (false, true);
        }

        var least = driver.LimitA is null ? Math.Min(most, driver.RatedA * (1 + limits.OverRated)) : most;
        var (a0, a1) = (net.First(SenseNode.Anode), net.Second(SenseNode.Anode));
        var (k0, k1) = (net.First(SenseNode.Cathode), net.Second(SenseNode.Cathode));
        double Emitted(double amps) =>
            conducts ? (a0 - k0 + (amps * (a1 - k1)) - spec.Emitter.KneeV) / spec.Emitter.SlopeOhm : 0;

        // Hundreds of kiloamperes flow nowhere: where the driver's limit and voltage are both unknown, nothing known holds the current.
        var bounded = most < Unbounded * 0.99;
        var emitted = Emitted(most);
        var shorted = Math.Abs(o1) < 1e-12;
        var outputV = shorted ? o0 : o0 + (most * o1);
        return new(
            Emitted(least),
            bounded || emitted < 1 ? emitted : double.PositiveInfinity,
            least,
            bounded ? most : double.PositiveInfinity,
            Math.Abs(s1) < 1e-12 ? s0 : s0 + (most * s1),
            shorted || (bounded && outputV < Unbounded) ? outputV : double.NaN,
            bounded ? a0 - k0 + (most * (a1 - k1)) : double.NaN,
            regulated && bounded,
            atVoltage,
            s1 > 1e6
        );
    }

    private static void Powers(
        in NodalSolve net,
        SenseCircuit circuit,
        Fault fault,
        in FaultPoint point,
        Span<double> watts,
        Span<double> mostWatts
    )
    {
        for (var k = 0; k < watts.Length; k++)
        {
            var part = circuit.Resistors[k];
            var open = fault == new Fault(FaultKind.ResistorOpen, k);
            var (v0, v1) = (net.First(part.A) - net.First(part.B), net.Second(part.A) - net.Second(part.B));
            double Power(double amps)
            {
                var v = v0 + (amps * v1);
                return open ? 0 : v * v / part.Ohm;
            }

            watts[k] = Power(point.DriverA);
            if (mostWatts.IsEmpty)
            {
                continue;
            }

            mostWatts[k] =
                !double.IsInfinity(point.DriverMostA) ? Power(point.DriverMostA)
                : Math.Abs(v1) < 1e-7 ? Power(0)
                : double.PositiveInfinity;
        }
    }
}
