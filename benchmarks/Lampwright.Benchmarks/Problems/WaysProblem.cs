using System.Diagnostics;
using Lampwright.Files.Opening;
using Lampwright.References.Electrical.Decks;
using Lampwright.Steps.Ways;

namespace Lampwright.Benchmarks.Problems;

/// <summary>A design file: every way of dimming judged, and the time simulation beside ngspice on the same circuits and the same time.</summary>
/// <remarks>
/// <c>ms</c> is judging all ways, without pictures. <c>simulationMs</c> is the slowest of their simulations over 0.1 s, <c>peerMs</c> ngspice on that circuit
/// with steps of at most 20 µs, which the agreement of 1 % and 3 % in the tests needs; what ngspice takes to start is taken off. The answer has all ways,
/// each with both times, and the least ratio among them.
/// </remarks>
internal sealed class WaysProblem : Problem
{
    private static readonly double Seconds = 0.1;
    private static readonly double StepS = 20e-6;

    private static string Decks => Path.Combine(AppContext.BaseDirectory, "Decks");

    /// <inheritdoc/>
    public override string Name => "ways";

    /// <inheritdoc/>
    public override bool PeerUnasked => true;

    /// <inheritdoc/>
    public override Prepared Load(string file)
    {
        if (!File.Exists(file))
        {
            throw new BadProblemException($"{file} is not there");
        }

        var spec =
            OpenedLight.At(file).Prepare().WaysSpec
            ?? throw new BadProblemException($"{file} names no emitter and driver that ways could be compared for");
        var ways = WaysComparison.Of(spec).Ways;
        Way? slowest = null;
        Way Slowest() => slowest ??= ways.MaxBy(SimulationMs)!;
        return new(() => WaysComparison.Of(spec), Answer)
        {
            Also = [("simulationMs", () => WaySimulation.Of(Slowest().Circuit, Seconds))],
            PeerMs = SpiceDeck.Program is null ? null : () => PeerMs(Slowest()),
            PeerAgainst = "simulationMs",
        };
    }

    private static object Answer(object solution)
    {
        var rows = ((WaysResult)solution)
            .Ways.Select(w =>
            {
                var trace = WaySimulation.Of(w.Circuit, Seconds);
                var ms = SimulationMs(w);
                double? peer = SpiceDeck.Program is null ? null : PeerMs(w);
                return new
                {
                    Name = w.Kind.ToString(),
                    Verdict = w.Verdict.ToString(),
                    Regulates = w.Regulates.ToString(),
                    trace.Settled,
                    MeanA = Math.Round(trace.MeanA, 4),
                    trace.HiccupHz,
                    SimulationMs = Math.Round(ms, 4),
                    PeerMs = peer,
                    Ratio = peer / ms,
                };
            })
            .ToList();
        return new { Ways = rows, LeastRatio = rows.Min(r => r.Ratio) };
    }

    /// <summary>Median of warm runs.</summary>
    private static double SimulationMs(Way way)
    {
        var times = new double[25];
        for (var n = -25; n < times.Length; n++)
        {
            var start = Stopwatch.GetTimestamp();
            GC.KeepAlive(WaySimulation.Of(way.Circuit, Seconds));
            times[Math.Max(n, 0)] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return times[times.Length / 2];
    }

    private static double PeerMs(Way way) => Math.Max(0, Ran(way.Circuit, Seconds) - Ran(way.Circuit, StepS));

    private static double Ran(WayCircuit circuit, double seconds)
    {
        var folder = Directory.CreateTempSubdirectory("lampwright-deck-").FullName;
        try
        {
            SpiceDeck.Of(circuit, seconds, StepS).Prepare(Decks, folder);
            return SpiceDeck.Start(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
