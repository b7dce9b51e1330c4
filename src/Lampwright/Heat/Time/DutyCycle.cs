using Lampwright.Heat.Network;

namespace Lampwright.Heat.Time;

/// <summary>How long a light may run and must rest in a room too hot for it.</summary>
/// <param name="Share">Share of the time it may run, 0 to 1; 1 without rest.</param>
/// <param name="OnS">Longest run, s; infinite where it needs no rest.</param>
/// <param name="OffS">Rest after it, s.</param>
/// <param name="What">What limits it; empty where nothing does.</param>
public sealed record DutyAdvice(double Share, double OnS, double OffS, string What);

/// <summary>Finds the duty by playing it: on until the first limit, off until the rise at that place has fallen to six tenths.</summary>
/// <remarks>
/// The third cycle is told, when the cool parts have come along. Validity: the fan runs on while the light rests. Source: definition;
/// the share at which to go on is common practice, no source. Checked by: invariant (no limit is passed in the cycle told).
/// </remarks>
public static class DutyCycle
{
    private static readonly double FallsTo = 0.6;
    private static readonly double LongestS = 6 * 3600;
    private static readonly int Cycles = 3;

    /// <summary>The duty.</summary>
    /// <param name="on">The network with the light on.</param>
    /// <param name="off">The same with it off.</param>
    /// <param name="roomK">The room, K.</param>
    /// <param name="limits">What must not be passed.</param>
    /// <returns>The duty; a share of 0 where a limit lies below the room or the course could not be followed.</returns>
    public static DutyAdvice Of(ThermalNetwork on, ThermalNetwork off, double roomK, IReadOnlyList<HarmLimit> limits)
    {
        ArgumentNullException.ThrowIfNull(on);
        ArgumentNullException.ThrowIfNull(off);
        ArgumentNullException.ThrowIfNull(limits);
        if (on.Steady().Result is { } rest && limits.All(l => rest.Kelvin[l.Node] <= l.Kelvin))
        {
            return new(1, double.PositiveInfinity, 0, "");
        }

        IReadOnlyList<double> kelvin = [.. on.Nodes.Select(n => n.FixedK ?? roomK)];
        var (onS, offS, what) = (0.0, 0.0, "");
        for (var cycle = 0; cycle < Cycles; cycle++)
        {
            var hot = NetworkTransient.Follow(on, kelvin, LongestS, 1e-3);
            var harm = CutOut.FirstHarm(hot, limits);
            var reached = harm.AtS ?? (hot.Stopped ? 0 : hot.EndS);
            if (limits.Count == 0 || reached <= 0)
            {
                return new(0, 0, 0, limits.Count > 0 ? limits[0].What : "");
            }

            // A limit that is only crept up to: the longest run that was played.
            (onS, what) = (
                reached,
                harm.AtS is null ? limits.MinBy(l => l.Kelvin - hot.EndK[l.Node])!.What : harm.What
            );
            kelvin = [.. Enumerable.Range(0, on.Nodes.Count).Select(i => hot.KelvinAt(i, reached))];
            var limit = limits.First(l => l.What == what);
            var cool = NetworkTransient.Follow(off, kelvin, LongestS, 1e-3);
            if (cool.FirstS(limit.Node, roomK + (FallsTo * (limit.Kelvin - roomK)), rising: false) is not { } fallen)
            {
                return new(0, onS, LongestS, what);
            }

            offS = fallen;
            kelvin = [.. Enumerable.Range(0, on.Nodes.Count).Select(i => cool.KelvinAt(i, fallen))];
        }

        return new(onS / (onS + offS), onS, offS, what);
    }
}
