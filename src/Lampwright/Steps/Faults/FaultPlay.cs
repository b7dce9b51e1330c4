namespace Lampwright.Steps.Faults;

/// <summary>Plays every single fault of a chain through and judges what survives.</summary>
/// <remarks>
/// A fault is solved at the positions where it can be worst. The sense voltage per ampere is a quotient of two polynomials, each of the first
/// degree in every one resistance, with coefficients of one sign (Kirchhoff's trees): in the resistance of any one switch position it is
/// monotone, so greatest and least current lie at positions where all switches stand at an end. Those and, for a switch, the positions in which
/// it is alone, are solved; where the threshold holds at one end and a limit of the driver at the other, all positions are. Tests compare with
/// all positions. Each is solved twice: with every part as stated, which is what one would measure, and at its worst corner, by which it is judged.
/// <b>Validity</b>: one fault at a time. <b>Source</b>: Kirchhoff's theorem of trees. <b>Checked by</b>: solver, invariant.
/// </remarks>
public static class FaultPlay
{
    // Twice round has found the worst of every circuit tried; the third finds that nothing grew.
    private static readonly int Rounds = 3;

    /// <summary>All faults, those that can harm the emitter first.</summary>
    /// <param name="spec">Chain, driver, emitter.</param>
    public static IReadOnlyList<FaultResult> All(FaultsSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var circuit = new SenseCircuit(spec.Chain, spec.AirK);
        var faults = FaultList.Of(circuit);
        var sound = new Dictionary<int, FaultPoint>();
        var results = new FaultResult[faults.Count];
        var corners = spec.Corners is null
            ? default
            : new FaultCorners(circuit, spec, new double[3 * FaultCorners.Values(circuit)]);
        for (var i = 0; i < results.Length; i++)
        {
            results[i] = Worst(circuit, spec, faults[i], sound, corners);
        }

        var most = spec.Emitter.MostA;
        return
        [
            .. results
                .Select((r, i) => (Result: r, Place: i))
                .OrderByDescending(r => r.Result.Exceeds(most) ? 3 - (int)r.Result.Standing : -1)
                .ThenBy(r => r.Place)
                .Select(r => r.Result),
        ];
    }

    /// <summary>The positions that are solved for a fault, as bits.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="fault">The fault.</param>
    /// <param name="places">Room for as many integers as there are switches, and four.</param>
    /// <returns>Count of positions.</returns>
    public static int Positions(SenseCircuit circuit, Fault fault, Span<int> places)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        var n = circuit.Contacts.Count;
        var count = 0;
        if (circuit.Spec.Arrangement == Arrangement.Selector)
        {
            for (var k = 0; k < n; k++)
            {
                places[count++] = 1 << k;
            }

            if (fault.Kind == FaultKind.BothPositions)
            {
                (places[0], count) = (1 << fault.First, 1);
            }

            if (n == 0)
            {
                places[count++] = 0;
            }

            return count;
        }

        var all = (1 << n) - 1;
        places[count++] = all;
        if (n == 0)
        {
            return count;
        }

        places[count++] = 0;
        if (fault.Kind is FaultKind.SwitchOpen or FaultKind.SwitchClosed && n > 1)
        {
            places[count++] = 1 << fault.First;
            places[count++] = all & ~(1 << fault.First);
        }

        var switched = fault.Kind is FaultKind.ResistorOpen or FaultKind.ResistorShort
            ? circuit.Resistors[fault.First].Switch
            : -1;
        if (n > 1 && switched >= 0)
        {
            places[count++] = 1 << switched;
            places[count++] = all & ~(1 << switched);
        }

        return count;
    }

    private static FaultResult Worst(
        SenseCircuit circuit,
        FaultsSpec spec,
        Fault fault,
        Dictionary<int, FaultPoint> sound,
        FaultCorners corners
    )
    {
        Span<int> places = stackalloc int[circuit.Contacts.Count + 4];
        Span<double> watts = stackalloc double[circuit.Resistors.Count];
        Span<double> mostWatts = stackalloc double[circuit.Resistors.Count];
        Span<double> load = stackalloc double[circuit.Resistors.Count];
        Span<double> mostLoad = stackalloc double[circuit.Resistors.Count];
        load.Clear();
        mostLoad.Clear();
        var count = Positions(circuit, fault, places);
        var (at, score, senseV) = (places[0], double.NegativeInfinity, 0.0);
        var (worst, healthy, corner) = (default(FaultPoint), default(FaultPoint), default(FaultPoint));
        var contact = spec.Chain.ContactOhm;
        var (held, free) = (false, false);
        var isSelector = circuit.Spec.Arrangement == Arrangement.Selector;
        var rounds = Rounds;
        for (var i = 0; i < count; i++)
        {
            if (!sound.TryGetValue(places[i], out var well))
            {
                well = FaultPoints.At(circuit, spec, default, places[i], contact, [], []);
                sound[places[i]] = well;
            }

            var point = FaultPoints.At(circuit, spec, fault, places[i], contact, watts, mostWatts);
            Loads(circuit, watts, load);
            Loads(circuit, mostWatts, mostLoad);
            var off = Off(spec, corners, fault, places[i], rounds, point, mostWatts, mostLoad);
            (held, free) = (held || point.Regulated, free || !point.Regulated || !off.Point.Regulated);
            senseV = Math.Max(senseV, off.MostSenseV);
            var s = Score(point, off.Point, well, spec);
            if (s > score)
            {
                (worst, healthy, corner, at, score) = (point, well, off.Point, places[i], s);
            }

            // Where the threshold holds at one end and a limit of the driver at the other, the worst may lie between: then all are played.
            if (i == count - 1 && held && free && count < 1 << circuit.Contacts.Count && !isSelector)
            {
                places = new int[1 << circuit.Contacts.Count];
                for (var k = 0; k < places.Length; k++)
                {
                    places[k] = k;
                }

                (i, count, rounds) = (-1, places.Length, 0);
            }
        }

        if (rounds == 0)
        {
            var off = Off(spec, corners, fault, at, Rounds, corner, mostWatts, mostLoad);
            (corner, senseV) = (off.Point, Math.Max(senseV, off.MostSenseV));
        }

        return FaultJudge.Of(
            circuit,
            spec,
            fault,
            circuit.Switches(at),
            new(worst, healthy, corner, senseV),
            load,
            mostLoad
        );
    }

    private static FaultCorner Off(
        FaultsSpec spec,
        FaultCorners corners,
        Fault fault,
        int closed,
        int rounds,
        in FaultPoint point,
        Span<double> mostWatts,
        Span<double> mostLoad
    )
    {
        if (spec.Corners is null)
        {
            return new(point, point.SenseV);
        }

        var off = corners.Worst(fault, closed, rounds, mostWatts, mostLoad);

        // A corner is never better than what is stated: a contact that is closed has its stated resistance among its ends, rounding aside.
        return point.EmitterMostA > off.Point.EmitterMostA ? new(point, Math.Max(point.SenseV, off.MostSenseV)) : off;
    }

    // What is over the emitter's limit goes first, then what lies furthest from what the plate says.
    private static double Score(in FaultPoint point, in FaultPoint corner, in FaultPoint sound, FaultsSpec spec)
    {
        var most = spec.Emitter.MostA ?? double.PositiveInfinity;
        if (corner.EmitterMostA > most || double.IsInfinity(corner.EmitterMostA))
        {
            return 1e6 + Math.Min(corner.EmitterMostA, 1e9);
        }

        return Math.Abs(Math.Log(Math.Max(point.EmitterA, 1e-9) / Math.Max(sound.EmitterA, 1e-9)));
    }

    // The greatest load of each part over all positions, as a share of what it may take.
    internal static void Loads(SenseCircuit circuit, Span<double> watts, Span<double> load)
    {
        for (var k = 0; k < watts.Length; k++)
        {
            if (circuit.Resistors[k].AllowedW is { } allowed)
            {
                load[k] = Math.Max(load[k], watts[k] > 1e-12 ? watts[k] / Math.Max(allowed, 1e-9) : 0);
            }
        }
    }
}
