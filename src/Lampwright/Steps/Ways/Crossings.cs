namespace Lampwright.Steps.Ways;

/// <summary>Finds where source line and load line cross, and which crossings are stable.</summary>
/// <remarks>
/// The difference of both lines is looked at on an even grid and at every place where a line bends (about a clamp, at the greatest gap
/// of a constant-power load, at the edge of drop-out, at a lock-out); each change of sign is closed in by halving and secant in turn, so
/// that a steep clamp costs steps and never the answer. A crossing is stable where the load's slope is greater than the source's,
/// which is where the difference falls.
/// A load that has been on stays on down to its lock-out: crossings under it are none.
/// <b>Accuracy</b>: 1e-9 of the voltage. <b>Checked by</b>: closed forms, derived rows E.D-13 and E.C.
/// </remarks>
public static class Crossings
{
    private static readonly double[] AboutLimit = [-20, -8, -4, -2, -1, 0, 1, 2, 4, 8, 20];

    /// <summary>Every crossing of a circuit, by rising voltage.</summary>
    /// <param name="circuit">The circuit.</param>
    public static IReadOnlyList<Crossing> Of(WayCircuit circuit)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        Span<double> at = stackalloc double[64];
        var count = Places(circuit, at);
        at = at[..count];
        at.Sort();
        var found = new List<Crossing>(3);
        var (before, gapBefore) = (at[0], Gap(circuit, at[0]));
        for (var k = 1; k < count; k++)
        {
            var (here, gap) = (at[k], Gap(circuit, at[k]));
            if (here > before && gapBefore > 0 != gap > 0)
            {
                var volts = Close(circuit, before, gapBefore, here, gap);
                found.Add(Named(circuit, volts, gapBefore > 0));
            }

            (before, gapBefore) = (here, gap);
        }

        return found;
    }

    /// <summary>What the source gives more than the load takes at a voltage, in amperes.</summary>
    internal static double Gap(WayCircuit circuit, double volts) =>
        circuit.Source.CurrentA(volts) - circuit.Load.CurrentA(volts);

    /// <summary>Whether a voltage lies where the protection of a driver has taken over.</summary>
    internal static bool AtLimit(SourceLine source, double volts) =>
        source is DriverOutput d && volts > d.LimitV - (4 * DriverOutput.SoftV);

    private static int Places(WayCircuit circuit, Span<double> at)
    {
        var converter = circuit.Load as ConverterLine;
        var low = Math.Max(converter?.OffV ?? 0, 0);
        var high = circuit.Source switch
        {
            SupplyBehindResistance s => s.OpenV,
            DriverOutput { LimitV: < 1e6 } d => d.LimitV + (20 * DriverOutput.SoftV),
            DriverOutput d => Reach(circuit.Load, d.SetA),
            _ => 1e3,
        };
        high = Math.Max(high, low + 1e-6);
        var count = 0;
        Add(low, at);
        Add(high, at);
        for (var k = 1; k < 20; k++)
        {
            Add(low + ((high - low) * k / 20), at);
        }

        if (circuit.Source is DriverOutput { LimitV: < 1e6 } limited)
        {
            foreach (var k in AboutLimit)
            {
                Add(limited.LimitV + (k * DriverOutput.SoftV), at);
            }
        }

        if (converter is { } c)
        {
            Add(c.FloorV, at);
            if (circuit.Source is SupplyBehindResistance s)
            {
                // Here P/V comes nearest to the source's line.
                Add(Math.Sqrt(c.PowerW * s.Ohm), at);
            }

            if (c.DropOut is { } behind)
            {
                var edge = Edge(c, behind);
                Add(edge, at);
                Add(edge * (1 - 1e-6), at);
                Add(edge * (1 + 1e-6), at);
            }
        }

        return count;

        void Add(double volts, Span<double> places)
        {
            if (volts >= low && volts <= high && count < places.Length)
            {
                places[count++] = volts;
            }
        }
    }

    // Where the emitter behind a converter that is always on takes as much as the converter needs to regulate: the peak of its line.
    private static double Edge(ConverterLine converter, EmitterLine behind)
    {
        var amps = Math.Max(converter.EmitterRegulatedA, 1e-9);
        var volts = 0.0;
        for (var pass = 0; pass < 20; pass++)
        {
            volts = behind.Model.VoltageV(amps, behind.JunctionK) + (behind.SeriesOhm * amps);
            amps = converter.PowerW / Math.Max(volts, 1e-6);
        }

        return volts;
    }

    private static double Reach(LoadLine load, double amps)
    {
        var volts = 1.0;
        while (volts < 1e6 && load.CurrentA(volts) < 2 * amps)
        {
            volts *= 2;
        }

        return volts;
    }

    private static double Close(WayCircuit circuit, double low, double gapLow, double high, double gapHigh)
    {
        for (var pass = 0; pass < 200 && high - low > 1e-10 * high; pass++)
        {
            var middle = 0.5 * (low + high);
            if (pass % 2 == 1)
            {
                var secant = low + ((high - low) * gapLow / (gapLow - gapHigh));
                var aside = 0.01 * (high - low);
                middle =
                    secant > low && secant < high
                        ? Math.Clamp(secant, low + (0.1 * aside), high - (0.1 * aside))
                        : middle;
            }

            var gap = Gap(circuit, middle);
            if (gap == 0)
            {
                return middle;
            }

            if (gap > 0 == gapLow > 0)
            {
                (low, gapLow) = (middle, gap);
            }
            else
            {
                (high, gapHigh) = (middle, gap);
            }
        }

        return 0.5 * (low + high);
    }

    private static Crossing Named(WayCircuit circuit, double volts, bool falls)
    {
        var amps = circuit.Source.CurrentA(volts);
        if (!falls)
        {
            return new(volts, amps, false, "never stays: from here the voltage runs up or collapses");
        }

        if (AtLimit(circuit.Source, volts))
        {
            return ((DriverOutput)circuit.Source).Over switch
            {
                OverVoltage.Clamps => new(volts, amps, true, "held at the driver's voltage limit"),
                OverVoltage.Trips => new(volts, amps, false, "the driver trips here"),
                _ => new(volts, amps, true, "at the driver's voltage limit, if it clamps there"),
            };
        }

        return circuit.Load switch
        {
            ConverterLine { DropOut: not null } => new(
                volts,
                amps,
                true,
                "in drop-out: the emitter gets what the driver gives"
            ),
            ConverterLine => new(volts, amps, true, "stable while nothing falls below it"),
            ChoppedLine => new(volts, amps, true, "where it goes while the switch is closed"),
            _ => new(volts, amps, true, "stable"),
        };
    }
}
