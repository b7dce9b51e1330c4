namespace Lampwright.Steps.Ways;

/// <summary>What is read from a run: whether it settles, its mean and peak, how often it starts and stops, its light.</summary>
internal static class WaySummary
{
    /// <summary>Share by which the last quarter may move and still counts as steady.</summary>
    private static readonly double Moving = 3e-3;

    /// <summary>Whether the last quarter is steady, or repeats at the chopping (or ripple) frequency.</summary>
    public static bool Steady(WayRun run, WayCircuit circuit, double end)
    {
        var record = run.Record;
        var from = 0.75 * end;
        var (low, high, peak, _) = record.Over(from, end);
        if (run.Switches.Latched)
        {
            return peak <= 1e-6 * Reference(circuit);
        }

        // Dark between a trip and the next try is no rest, however long it lasts.
        if (run.Switches.LastAt >= from || run.Switches.Waits)
        {
            return false;
        }

        var near = Moving * Math.Max(Math.Abs(high), Math.Abs(low));
        if (PeriodS(run, circuit) is not { } period)
        {
            return high - low <= near;
        }

        var whole = Math.Floor(0.25 * end / period) * period;
        return whole > 0 && Math.Abs(record.VoltsAt(end) - record.VoltsAt(end - whole)) <= near;
    }

    /// <summary>The trace of a run.</summary>
    public static WayTrace Of(WayRun run, WayCircuit circuit, double end, bool steady)
    {
        var record = run.Record;
        var hertz = steady ? null : HiccupHz(run);
        var from = end - WindowS(run, circuit, end, hertz);
        var kept = record.Picture();
        double[] time = [.. kept.Select(k => record.Time[k])];
        double[] volts = [.. kept.Select(k => record.Volts[k])];
        double[] amps = [.. kept.Select(k => record.Amps[k])];
        return new(
            time,
            volts,
            amps,
            Light(circuit, amps),
            run.Told,
            steady,
            record.MeanA(from, end),
            record.Over(from, end).PeakA,
            hertz
        );
    }

    /// <summary>Last quarter, or the whole cycles in it; one cycle where the quarter is shorter than that.</summary>
    private static double WindowS(WayRun run, WayCircuit circuit, double end, double? hertz)
    {
        var quarter = 0.25 * end;
        if ((PeriodS(run, circuit) ?? 1 / hertz) is not { } period || period > end)
        {
            return quarter;
        }

        return Math.Max(1, Math.Floor(quarter / period)) * period;
    }

    private static double? PeriodS(WayRun run, WayCircuit circuit)
    {
        if (run.Switches.Chops)
        {
            return 1 / ((ChoppedLine)circuit.Load).FrequencyHz;
        }

        return circuit.Source is DriverOutput { RippleShare: not 0, RippleHz: > 0 } d ? 1 / d.RippleHz : null;
    }

    /// <summary>Starts in a second at the end of the run; null where it has not started twice, or has run on since for longer than a cycle.</summary>
    private static double? HiccupHz(WayRun run)
    {
        var switches = run.Switches;
        if (switches.Latched)
        {
            return null;
        }

        // A driver that restarts takes the load with it: the slower of the two is the cycle.
        var starts =
            switches.DriverStarts.Count >= 2 || switches.LoadStarts.Count < 2
                ? switches.DriverStarts
                : switches.LoadStarts;
        if (starts.Count < 2)
        {
            return null;
        }

        var cycles = Math.Min(starts.Count - 1, 10);
        var span = starts[^1] - starts[^(cycles + 1)];
        var since = run.Time - switches.LastAt;
        return span > 0 && since <= 1.5 * span / cycles ? cycles / span : null;
    }

    private static double[] Light(WayCircuit circuit, double[] amps)
    {
        var full = Reference(circuit);
        var emitter = circuit.Load switch
        {
            ConverterLine c => c.DropOut,
            ChoppedLine c => c.Emitter,
            var l => l as EmitterLine,
        };
        var lumens = emitter?.Model.FluxLm(full, emitter.JunctionK) ?? 0;
        return lumens > 0
            ? [.. amps.Select(a => emitter!.Model.FluxLm(a, emitter.JunctionK) / lumens)]
            : [.. amps.Select(a => a / full)];
    }

    /// <summary>Current whose light counts as 1: what the driver is set to, in amperes.</summary>
    private static double Reference(WayCircuit circuit)
    {
        var amps = circuit switch
        {
            { Source: DriverOutput d } => d.SetA,
            { Load: ConverterLine c } => c.EmitterRegulatedA,
            { Load: EmitterLine e } => e.Model.FluxRefA,
            { Load: ChoppedLine c } => c.Emitter.Model.FluxRefA,
            _ => 1,
        };
        return Math.Max(amps, 1e-9);
    }
}
