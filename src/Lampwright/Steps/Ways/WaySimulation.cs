using System.Globalization;

namespace Lampwright.Steps.Ways;

/// <summary>What a circuit of dimming does over its first tens of milliseconds: an averaged model with events.</summary>
/// <remarks>
/// C·dV/dt = source(V) − load(V), with the inductance of the source where it has one. Between events all is smooth and is solved by linearly implicit
/// steps of third order (<see cref="WayStep"/>) that keep their error; events (lock-out, limit, window, chopping: <see cref="WaySwitches"/>) are
/// located to 1e-10 of the voltage. Work is bounded whatever the circuit: where the bound is met the trace ends early and its last event says so.
/// What is not known of a driver is shown as the worse: at its limit that it switches off, under its window that it starts and stops.
/// <b>Validity</b>: averaged over the switching of driver and converter, so nothing faster than some ten of their periods; one junction
/// temperature, so no longer than the junction takes to warm.
/// <b>Source</b>: Kirchhoff (derived). <b>Accuracy</b>: 0.1 % of settled values and of periods.
/// <b>Checked by</b>: derived rows E.C-1 to E.C-7, E.D-11, E.D-13, E.D-14, E.M-3, E.M-4a, solver (general-purpose circuit simulator, decks
/// kept), invariant (charge in equals charge out).
/// </remarks>
public static class WaySimulation
{
    /// <summary>How far beyond the wanted time a cycle of starts and stops is looked for, as a multiple of it.</summary>
    private static readonly double LookAhead = 20;

    /// <summary>Simulates a circuit.</summary>
    /// <param name="circuit">The circuit; its capacitor above 0, its numbers finite (a limit may be infinite).</param>
    /// <param name="seconds">Time to simulate, in seconds; above 0.</param>
    /// <param name="tolerance">Relative error of one step; 1e-9 to 1e-2.</param>
    /// <returns>
    /// Trace with at most some thousand points. Mean and peak are those of whole cycles at the end where it repeats. How often it starts and stops
    /// is looked for beyond the wanted time too, so that a slow cycle is found.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite or out of its range.</exception>
    public static WayTrace Of(WayCircuit circuit, double seconds = 0.1, double tolerance = 1e-5)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        Guard.Positive(circuit.CapacitorF);
        Guard.Finite(circuit.StartV);
        Guard.Positive(seconds);
        Guard.InRange(tolerance, 1e-9, 1e-2);
        var run = new WayRun(circuit, tolerance);
        run.Until(seconds, record: true);
        var end = run.Time;
        if (run.Exhausted)
        {
            var ms = (1e3 * end).ToString("G3", CultureInfo.InvariantCulture);
            run.Told.Add(new(end, $"followed for {ms} ms only: too much happens in it"));
        }

        var steady = WaySummary.Steady(run, circuit, end);
        if (!steady && !run.Exhausted && !run.Switches.Latched && (run.Switches.Waits || !run.Switches.Chops))
        {
            run.Until((LookAhead * seconds) + run.Switches.WaitS, record: false, () => run.Switches.Cycles >= 3);
        }

        return WaySummary.Of(run, circuit, end, steady);
    }
}
