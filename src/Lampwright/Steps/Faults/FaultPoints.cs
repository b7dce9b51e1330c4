namespace Lampwright.Steps.Faults;

/// <summary>Finds the point of rest of the sense circuit with a single fault in it.</summary>
/// <remarks>
/// The driver is a current source that raises its current until the sense input sees the threshold, its own limit is reached, or its output
/// comes to the voltage limit. Where its own limit is not known both ends are told: what it is rated for, and what the threshold asks for.
/// The emitter is a straight line that is laid anew at the current found until it is the tangent of the curve there (Newton's rule: the curve bends
/// downward, so that every step after the first comes from below and none overshoots); where only a line is known it is that line.
/// <b>Validity</b>: the point of rest; what happens on the way there (milliseconds, the output capacitor) is not in it. A sense input that hangs
/// free is taken to see nothing, the worst it can. <b>Source</b>: Kirchhoff; regulation as in references, electrical.md section 3.
/// <b>Accuracy</b>: that of threshold and resistances. <b>Checked by</b>: solver (decks of a general-purpose circuit simulator), invariant.
/// </remarks>
public static class FaultPoints
{
    // Stands for "nothing known holds it" in the arithmetic; never shown.
    private static readonly double Unbounded = 1e6;

    // More than this from the output to ground is no path: only the leaks of the arithmetic are left.
    private static readonly double NoPathOhm = 1e6;

    private static readonly int MostTangents = 24;

    /// <summary>The point of rest with every part as stated; no allocation.</summary>
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
        Span<double> resistors = stackalloc double[circuit.Resistors.Count];
        Span<double> leads = stackalloc double[circuit.Leads.Count];
        Span<double> contacts = stackalloc double[circuit.Contacts.Count];
        for (var k = 0; k < resistors.Length; k++)
        {
            resistors[k] = circuit.Resistors[k].Ohm;
        }

        for (var i = 0; i < leads.Length; i++)
        {
            leads[i] = circuit.Leads[i].Ohm;
        }

        contacts.Fill(contactOhm);
        return At(circuit, spec, fault, closed, new FaultOhms(resistors, leads, contacts), watts, mostWatts);
    }

    /// <summary>The point of rest with resistances of one's own; no allocation.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="spec">Driver, threshold and emitter.</param>
    /// <param name="fault">What is wrong.</param>
    /// <param name="closed">Closed contacts as bits, the first switch the lowest.</param>
    /// <param name="ohms">The resistances.</param>
    /// <param name="watts">Takes the power of each resistor at <see cref="FaultPoint.EmitterA"/>, in watts; or empty.</param>
    /// <param name="mostWatts">Takes that at <see cref="FaultPoint.EmitterMostA"/>, infinite where nothing bounds it; or empty.</param>
    public static FaultPoint At(
        SenseCircuit circuit,
        FaultsSpec spec,
        Fault fault,
        int closed,
        FaultOhms ohms,
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
        var (curve, dark) = (spec.Emitter.Curve, (spec.Limits ?? new FaultLimits()).Dark);
        var (line, lit) = (new EmitterTangent(spec.Emitter.KneeV, spec.Emitter.SlopeOhm, true), false);
        for (var turn = 0; ; turn++)
        {
            var net = new NodalSolve(circuit.Nodes, root, room);
            FaultWiring.Wires(ref net, circuit, fault, closed, ohms);
            net.Number();
            FaultWiring.Parts(ref net, circuit, fault, closed, ohms);
            line.Into(ref net);
            net.Feed(SenseNode.Out, 0, 1);
            net.Solve();
            var point = Rest(net, spec, line);
            var hasPath = net.Second(SenseNode.Out) < NoPathOhm;
            if (line.Conducts && !lit && curve is not null && hasPath && point.EmitterA <= dark)
            {
                // The chord lies over the foot of the curve: only the foot itself tells whether anything flows at all.
                (line, lit) = (EmitterTangent.Of(curve, dark), true);
                continue;
            }

            if (line.Conducts && point.EmitterA <= -1e-6)
            {
                line = default;
                continue;
            }

            if (curve is not null && line.Conducts && hasPath && turn < MostTangents)
            {
                var amps = double.IsInfinity(point.EmitterMostA) ? point.EmitterA : point.EmitterMostA;
                var next = EmitterTangent.Of(curve, Math.Max(amps, dark));
                var missV = next.VoltageV(amps) - line.VoltageV(amps);
                if (amps > dark && Math.Abs(missV) > 1e-5)
                {
                    // Where all of a current that something else sets passes the emitter, its voltage moves the output and nothing besides.
                    var moved = point.OutputV + missV;
                    var alone = Math.Abs(point.DriverMostA - amps) <= 1e-7 * amps && !point.AtVoltageLimit;
                    if (!alone || double.IsNaN(moved) || moved > (spec.Driver.OverVoltageV ?? double.PositiveInfinity))
                    {
                        (line, lit) = (next, true);
                        continue;
                    }

                    point = point with { OutputV = moved, EmitterV = point.EmitterV + missV };
                }
            }

            Powers(net, circuit, fault, ohms, point, watts, mostWatts);
            return point.EmitterA < 0
                ? point with
                {
                    EmitterA = 0,
                    EmitterMostA = Math.Max(0, point.EmitterMostA),
                }
                : point;
        }
    }

    private static FaultPoint Rest(in NodalSolve net, FaultsSpec spec, EmitterTangent line)
    {
        var (driver, limits) = (spec.Driver, spec.Limits ?? new FaultLimits());
        var (s0, s1) = (net.First(SenseNode.Sense), net.Second(SenseNode.Sense));
        var (o0, o1) = (net.First(SenseNode.Out), net.Second(SenseNode.Out));
        var asked =
            s1 <= 1e-7 ? Unbounded
            : Math.Abs(s0) < 1e-6 && s1 is > 1e-5 and < 1e5 ? spec.Law.CurrentA(s1)
            : (spec.ThresholdV - s0) / s1;
        var most = Math.Clamp(asked, 0, driver.LimitA ?? Unbounded);
        var regulated = most >= asked && asked < Unbounded;
        var atVoltage = false;
        if (driver.OverVoltageV is { } volts)
        {
            if (o0 + (most * o1) > volts)
            {
                most = Math.Max(0, (volts - o0) / o1);
                (regulated, atVoltage) = (false, true);
            }
        }
        else if (!regulated && o1 > NoPathOhm)
        {
            // No path and no voltage limit that is known: nothing flows, and the output climbs to where nobody knows.
            return new(0, 0, 0, 0, 0, double.NaN, double.NaN, false, false, s1 > 1e6);
        }

        var least = driver.LimitA is null ? Math.Min(most, driver.RatedA * (1 + limits.OverRated)) : most;
        var (a0, a1) = (net.First(SenseNode.Anode), net.Second(SenseNode.Anode));
        var (k0, k1) = (net.First(SenseNode.Cathode), net.Second(SenseNode.Cathode));
        double Emitted(double amps) => line.CurrentA(a0 - k0 + (amps * (a1 - k1)));

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
        FaultOhms ohms,
        in FaultPoint point,
        Span<double> watts,
        Span<double> mostWatts
    )
    {
        for (var k = 0; k < watts.Length; k++)
        {
            var (part, ohm) = (circuit.Resistors[k], ohms.Resistors[k]);
            var open = fault == new Fault(FaultKind.ResistorOpen, k);
            var (v0, v1) = (net.First(part.A) - net.First(part.B), net.Second(part.A) - net.Second(part.B));
            double Power(double amps)
            {
                var v = v0 + (amps * v1);
                return open ? 0 : v * v / ohm;
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
