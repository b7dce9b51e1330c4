using System.Globalization;

namespace Lampwright.Steps.Ways;

/// <summary>Samples the source line and the load line of a circuit for the picture.</summary>
/// <remarks>
/// Half of the points are spread evenly, the others stand where a line bends: about a driver's limit, at a lock-out, at the foot of an emitter.
/// A current far above what the source can give tells nothing and is cut off at three times that.
/// </remarks>
internal static class WayLines
{
    public static IReadOnlyList<OperatingLine> Of(WayCircuit circuit, int points)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 2);
        var most = MostV(circuit);
        var top = 3 * Math.Max(circuit.Source.CurrentA(0), 1e-9);
        return
        [
            Line(SourceName(circuit.Source), points, most, Bends(circuit.Source), v => circuit.Source.CurrentA(v)),
            Line(
                LoadName(circuit.Load),
                points,
                most,
                Bends(circuit.Load, circuit.Source.CurrentA(0)),
                v => Math.Min(top, Running(circuit.Load, v))
            ),
        ];
    }

    /// <summary>What a load takes when the voltage comes down from above: nothing under its lock-out.</summary>
    private static double Running(LoadLine load, double volts) =>
        load is ConverterLine c && volts < c.OffV ? 0 : load.CurrentA(volts);

    private static double MostV(WayCircuit circuit)
    {
        var needed = circuit.Load switch
        {
            ConverterLine c => Math.Max(1.2 * c.OnV, c.DropOut is null ? 0 : VoltsFor(c.DropOut, c.EmitterRegulatedA)),
            var l => VoltsFor(l, circuit.Source.CurrentA(0)),
        };
        return circuit.Source switch
        {
            DriverOutput { LimitV: < 1e5 } d => 1.1 * Math.Max(d.LimitV, 0.1),
            SupplyBehindResistance s => 1.05 * Math.Max(s.OpenV, 0.1),
            DriverOutput d when circuit.Load is ConverterLine c && d.SetA > 0 => 1.5
                * Math.Max(needed, Math.Min(c.PowerW / d.SetA, 1e5)),
            _ => 1.25 * Math.Max(needed, 0.1),
        };
    }

    private static double VoltsFor(LoadLine load, double amps)
    {
        var (low, high) = (0.0, 1.0);
        while (load.CurrentA(high) < amps && high < 1e5)
        {
            high *= 2;
        }

        for (var i = 0; i < 40; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = load.CurrentA(middle) < amps ? (middle, high) : (low, middle);
        }

        return high;
    }

    private static IEnumerable<double> Bends(SourceLine source) =>
        source switch
        {
            DriverOutput { LimitV: < 1e5 } d => Enumerable
                .Range(-12, 25)
                .Select(i => d.LimitV + (0.2 * i * DriverOutput.SoftV)),
            SupplyBehindResistance s => [s.OpenV],
            _ => [],
        };

    private static IEnumerable<double> Bends(LoadLine load, double amps)
    {
        if (load is ConverterLine c)
        {
            var edge = c.DropOut is null ? 0 : VoltsFor(c.DropOut, c.EmitterRegulatedA);
            return [Math.BitDecrement(Math.Max(c.OffV, 1e-9)), c.OffV, edge, .. Spread(c.OffV, 1.5 * c.OnV, 12)];
        }

        return Spread(VoltsFor(load, 1e-3 * amps), VoltsFor(load, 1.2 * amps), 24);
    }

    private static IEnumerable<double> Spread(double from, double to, int count) =>
        Enumerable.Range(0, count).Select(i => from + ((to - from) * i / (count - 1)));

    private static OperatingLine Line(
        string name,
        int points,
        double most,
        IEnumerable<double> bends,
        Func<double, double> current
    )
    {
        double[] special = [.. bends.Where(v => v > 0 && v < most).Distinct().Take(Math.Min(points / 2, points - 2))];
        double[] volts = [.. Spread(0, most, Math.Max(points - special.Length, 2)), .. special];
        Array.Sort(volts);
        return new(name, volts, [.. volts.Select(current)]);
    }

    private static string SourceName(SourceLine source) =>
        source switch
        {
            DriverOutput => "what the driver gives",
            SupplyBehindResistance s => string.Create(
                CultureInfo.InvariantCulture,
                $"what the supply gives through {WayBench.Ohm(s.Ohm)}"
            ),
            _ => "what the source gives",
        };

    private static string LoadName(LoadLine load) =>
        load switch
        {
            ConverterLine { DropOut: null } => "what the driver takes",
            ConverterLine => "what the converter takes",
            ChoppedLine => "what the emitter takes while the switch is closed",
            EmitterLine { SeriesOhm: > 0 } => "what emitter and series resistor take",
            EmitterLine e when double.IsFinite(e.ShuntOhm) => "what emitter and shunt take",
            _ => "what the emitter takes",
        };
}
