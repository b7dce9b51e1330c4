using Lampwright.References.Electrical.Decks;
using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.References.Electrical;

/// <summary>The time simulation beside a general-purpose circuit simulator on the same circuits: Decks/*.cir, run by ngspice.</summary>
/// <remarks>Settled values agree within 1 %, periods of starts and stops within 3 %.</remarks>
public class WayDeckTests
{
    private static string Folder => Path.Combine(AppContext.BaseDirectory, "Electrical", "Decks");

    // E.L-1c, derived from published points (Lumileds DS60 p. 6): nVt 0.14901 V, Is 1.6844e-10 A, Rs 0.29176 ohm; ten in series.
    private static EmitterLine Ten { get; } =
        new(
            new(
                1.4901,
                -1.4901 * Math.Log(1.6844e-10),
                2.9176,
                -0.028,
                298.15,
                2000,
                1,
                FluxForm.Saturating,
                0.2,
                0.001,
                0.35,
                1.5
            ),
            328.15
        );

    private static EmitterLine Led => WaySimulationRows.Led;

    private static DriverOutput Driver(double amps, double limit) =>
        new(amps, null, limit, OverVoltage.Clamps, UnderVoltage.Hiccups, 0.02);

    private static SupplyBehindResistance Supply(double volts, double ohm) => new(volts, ohm);

    public static TheoryData<string> Names => [.. Circuits.Keys];

    private static readonly Dictionary<string, (WayCircuit Circuit, double Seconds, double Step)> Circuits = new(
        StringComparer.Ordinal
    )
    {
        ["supply resistor, holds"] = (new(Supply(24, 1), new ConverterLine(100, 20, 10, 1), 1e-3, 0, false), 0.1, 1e-5),
        ["supply resistor, hiccups"] = (
            new(Supply(24, 3), new ConverterLine(100, 20, 10, 1), 1e-3, 0, false),
            0.1,
            5e-6
        ),
        ["supply resistor, no solution, slow"] = (
            new(Supply(48, 15), new ConverterLine(40, 36, 20, 1), 470e-6, 0, false),
            0.2,
            1e-5
        ),
        ["converter, settles at the clamp"] = (
            new(Driver(1.5, 36), new ConverterLine(30, 24, 22, 1), 470e-6),
            0.1,
            1e-5
        ),
        ["converter, collapses and hiccups"] = (
            new(Driver(1.5, 36), new ConverterLine(30, 14, 10, 1), 470e-6),
            0.1,
            2e-6
        ),
        ["converter, more power than there is"] = (
            new(Driver(1.5, 36), new ConverterLine(60, 34, 22, 1), 470e-6),
            0.2,
            5e-6
        ),
        ["converter, small capacitor"] = (new(Driver(0.7, 48), new ConverterLine(20, 12, 9, 1), 22e-6), 0.02, 5e-7),
        ["converter, regulates a real emitter"] = (
            new(Driver(1, 45), new ConverterLine(19, 9, 8, 0.5, Ten), 470e-6),
            0.1,
            1e-5
        ),
        ["converter, drops out"] = (new(Driver(1, 60), new ConverterLine(55, 9, 8, 1.3, Ten), 470e-6), 0.1, 1e-5),
        ["converter, drop-out of a straight line"] = (
            new(Driver(1, 60), new ConverterLine(50, 9, 8, 1.3, Led), 470e-6),
            0.1,
            1e-5
        ),
        ["converter, driver trips"] = (
            new(Driver(1.5, 36) with { Over = OverVoltage.Trips }, new ConverterLine(30, 24, 22, 1), 470e-6),
            0.2,
            5e-6
        ),
        ["series resistor"] = (new(Driver(1, 60), Led with { SeriesOhm = 6 }, 470e-6), 0.1, 1e-5),
        ["series resistor, beyond the limit"] = (new(Driver(1, 38), Led with { SeriesOhm = 6 }, 470e-6), 0.1, 1e-5),
        ["series resistor, real emitter"] = (new(Driver(0.7, 60), Ten with { SeriesOhm = 3 }, 220e-6), 0.1, 1e-5),
        ["series resistor, trips"] = (
            new(Driver(1, 38) with { Over = OverVoltage.Trips }, Led with { SeriesOhm = 6 }, 470e-6),
            0.2,
            5e-6
        ),
        ["shunt 144 ohm"] = (new(Driver(1, 60), Led with { ShuntOhm = 144 }, 470e-6), 0.1, 1e-5),
        ["shunt 36 ohm"] = (new(Driver(1, 60), Led with { ShuntOhm = 36 }, 470e-6), 0.1, 1e-5),
        ["shunt, real emitter and series"] = (
            new(Driver(1, 60), Ten with { ShuntOhm = 50, SeriesOhm = 0.5 }, 470e-6),
            0.1,
            1e-5
        ),
        ["real emitter alone"] = (new(Driver(0.35, 60), Ten, 100e-6), 0.05, 1e-5),
        ["ripple"] = (new(Driver(1, 1e3) with { RippleShare = 1, RippleHz = 100 }, Ten, 1000e-6, 36), 0.2, 2e-5),
        ["chopped, high limit"] = (new(Driver(1, 60), new ChoppedLine(Led, 200, 0.5, 1e-3), 470e-6), 0.2, 1e-5),
        ["chopped, limit 42 V"] = (new(Driver(1, 42), new ChoppedLine(Led, 200, 0.5, 1e-3), 470e-6), 0.2, 1e-5),
        ["chopped, real emitter"] = (new(Driver(1, 42), new ChoppedLine(Ten, 400, 0.3, 0.05), 220e-6), 0.1, 5e-6),
        ["chopped without capacitor"] = (new(Driver(1, 42), new ChoppedLine(Led, 200, 0.5, 1e-3), 100e-9), 0.1, 2e-6),
        ["chopped without capacitor, real"] = (
            new(Driver(0.7, 45), new ChoppedLine(Ten, 1000, 0.25, 0.02), 47e-9),
            0.012,
            1e-7
        ),
        ["inductance before constant power"] = (
            new(
                Supply(24, 0.12) with
                {
                    Henry = 100e-6,
                    StartA = 2.5,
                },
                new ConverterLine(60, 10, 5, 1),
                100e-6,
                24,
                false
            ),
            0.1,
            2e-6
        ),
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void Agrees_with_the_circuit_simulator(string name)
    {
        Assert.SkipWhen(SpiceDeck.Program is null, "ngspice is not installed (Debian: ngspice).");
        var (circuit, seconds, step) = Circuits[name];
        var ours = WaySimulation.Of(circuit, seconds);
        var theirs = SpiceDeck.Of(circuit, seconds, step).Run(Folder);
        Assert.True(theirs[^1].S > 0.999 * seconds, $"ngspice ended at {theirs[^1].S} s");
        if (ours.HiccupHz is { } hertz)
        {
            var period = Period(theirs, 0.2 * seconds);
            Near(name + ", period", 1 / hertz, period, 0.03 * period);
            return;
        }

        Assert.True(ours.Settled, $"{name}: neither settled nor starting and stopping");
        var late = theirs.Where(p => p.S >= 0.75 * seconds).ToList();
        var mean = Mean(late, p => p.A);
        Near(name + ", mean current", ours.MeanA, mean, 0.01 * mean);
        var own = ours.TimeS.Zip(ours.VoltageV, ours.EmitterA).Where(p => p.First >= 0.75 * seconds).ToList();
        Near(name + ", greatest voltage", own.Max(p => p.Second), late.Max(p => p.V), 0.01 * late.Max(p => p.V));
        Near(name + ", least voltage", own.Min(p => p.Second), late.Min(p => p.V), 0.01 * late.Max(p => p.V));
        Near(name + ", greatest current", ours.PeakA, late.Max(p => p.A), 0.01 * late.Max(p => p.A));
    }

    private static double Mean(
        List<(double S, double V, double A)> points,
        Func<(double S, double V, double A), double> of
    ) =>
        points.Skip(1).Zip(points).Sum(p => 0.5 * (of(p.First) + of(p.Second)) * (p.First.S - p.Second.S))
        / (points[^1].S - points[0].S);

    /// <summary>Mean time between upward crossings of the middle voltage, after a time.</summary>
    private static double Period(IReadOnlyList<(double S, double V, double A)> points, double from)
    {
        var late = points.Where(p => p.S >= from).ToList();
        var middle = 0.5 * (late.Min(p => p.V) + late.Max(p => p.V));
        double[] times =
        [
            .. late.Skip(1)
                .Zip(late)
                .Where(p => p.First.V > middle && p.Second.V <= middle)
                .Select(p =>
                    p.Second.S + ((p.First.S - p.Second.S) * (middle - p.Second.V) / (p.First.V - p.Second.V))
                ),
        ];
        Assert.True(times.Length >= 2, "ngspice shows no cycle");
        return (times[^1] - times[0]) / (times.Length - 1);
    }

    private static void Near(string what, double got, double expected, double tolerance) =>
        Assert.True(Math.Abs(got - expected) <= tolerance, $"{what}: {got}, ngspice {expected} ± {tolerance}");
}
