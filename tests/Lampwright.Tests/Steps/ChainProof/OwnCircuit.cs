using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Steps.ChainProof;

/// <summary>Ohm's law for a chain, written anew for the tests: nothing here calls the search or its formulas.</summary>
internal static class OwnCircuit
{
    /// <summary>Resistance of a position at an end (−1, 0, 1), and what I² adds to it.</summary>
    internal readonly record struct End(double Cold, double Heat);

    public static bool IsNominal(ChainSearchSpec s) => s.Objective == ChainObjective.Nominal;

    public static double Volts(ChainSearchSpec s, int side) =>
        s.Driver.ThresholdV * (1 - (IsNominal(s) ? 0 : side * s.ThresholdTolerance));

    /// <summary>Tolerance of a fixed part that the threshold was found with, as V = I0·R0.</summary>
    public static double Own(ChainSearchSpec s) =>
        !IsNominal(s) && s.ThresholdByFixed && s.Fixed is { } own ? own.Tolerance : 0;

    public static double Lead(ChainSearchSpec s, int side) =>
        s.LeadOhm * (1 + (IsNominal(s) ? 0 : side * s.LeadTolerance));

    public static double Contact(ChainSearchSpec s, int side) =>
        IsNominal(s) || side == 0 ? s.ContactOhm
        : side < 0 ? Math.Min(s.ContactOhm, s.ContactLeastOhm ?? s.ContactOhm)
        : Math.Max(s.ContactOhm, s.ContactMostOhm ?? s.ContactOhm);

    public static End Of(ChainSearchSpec s, StockPart p, int side)
    {
        if (IsNominal(s))
        {
            side = 0;
        }

        var known = s.TempcoIsLimit ? 0 : p.TempcoPerK;
        double[] airs = side == 0 ? [s.AirK] : [s.AirLeastK ?? s.AirK, s.AirMostK ?? s.AirK];
        double[] alphas = s.TempcoIsLimit && side != 0 ? [-p.TempcoPerK, p.TempcoPerK] : [known];
        var factors = airs.SelectMany(t => alphas.Select(a => 1 + (a * (t - 298.15)))).ToArray();
        var x = p.Ohm * (1 + (side * p.Tolerance));
        var cold = x * (side < 0 ? factors.Min() : factors.Max());
        var alpha = side < 0 ? alphas.Min() : alphas.Max();
        return new(cold, alpha * p.RisePerWattK * x * cold);
    }

    /// <summary>A position; as errors see it, the fixed part that made the threshold greater is itself greater by as much.</summary>
    public static End Of(ChainSearchSpec s, PositionParts p, int side, bool isFixed, bool aim = false)
    {
        var end = Of(
            s,
            aim && isFixed && Own(s) > 0
                ? p.First with
                {
                    Ohm = p.First.Ohm * (1 - (side * Own(s))),
                    Tolerance = 0,
                }
                : p.First,
            side
        );
        if (p.Second is { } second)
        {
            var b = Of(s, second, side);
            if (p.Joint == Joint.Series)
            {
                end = new(end.Cold + b.Cold, end.Heat + b.Heat);
            }
            else
            {
                var (share, rest) = (b.Cold / (end.Cold + b.Cold), end.Cold / (end.Cold + b.Cold));
                end = new(end.Cold * share, (Math.Pow(share, 4) * end.Heat) + (Math.Pow(rest, 4) * b.Heat));
            }
        }

        if (s.Arrangement == Arrangement.ParallelBranches)
        {
            var amps = Volts(s, side) * (1 - (side * Own(s))) / (end.Cold + (isFixed ? 0 : s.ContactOhm));
            end = new(end.Cold + (end.Heat * amps * amps), 0);
        }

        return end;
    }

    /// <summary>Current of a combination with every position at one end.</summary>
    public static double Amps(ChainSearchSpec s, int combination, IReadOnlyList<End> ends, int side, bool aim = false)
    {
        var volts = Volts(s, side) * (aim ? 1 - (side * Own(s)) : 1);
        var (contact, lead) = (Contact(s, side), Lead(s, side));
        var (cold, heat, siemens) = (lead, 0.0, 0.0);
        for (var k = 1; k < ends.Count; k++)
        {
            var x = ends[k].Cold;
            var open = s.OneAfterAnother ? k <= combination : ((combination >> (s.Switches - k)) & 1) == 1;
            switch (s.Arrangement)
            {
                case Arrangement.Selector when combination == k - 1:
                    (cold, heat) = (cold + x + contact, heat + ends[k].Heat);
                    break;
                case Arrangement.SeriesChain when open:
                    (cold, heat) = (cold + x, heat + ends[k].Heat);
                    break;
                case Arrangement.SeriesChain:
                    cold += 1 / ((1 / x) + (1 / contact));
                    break;
                case Arrangement.ParallelBranches when !open:
                    siemens += 1 / (x + contact);
                    break;
                default:
                    break;
            }
        }

        var floor = s.FloorOhm * (1 + (IsNominal(s) ? 0 : side * s.FloorTolerance));
        var unsensed = s.UnsensedLeadOhm * (1 - (IsNominal(s) ? 0 : side * s.LeadTolerance));
        var amps = 0.0;
        for (var i = 0; i < 80; i++)
        {
            var first = ends[0].Cold + (ends[0].Heat * amps * amps);
            var chain = cold + (heat * amps * amps);
            var total =
                s.Arrangement == Arrangement.ParallelBranches
                    ? floor + (siemens > 0 ? 1 / ((1 / first) + (1 / (lead + (1 / siemens)))) : first)
                : s.BleedOhm is { } b ? first + (chain * b / (b + chain + unsensed))
                : first + chain;
            var next = Math.Max(0, (volts / total) - s.Driver.OffsetA);
            if (Math.Abs(next - amps) <= 1e-15 * amps)
            {
                break;
            }

            amps = next;
        }

        return amps;
    }

    public static int Combinations(ChainSearchSpec s) =>
        s.Arrangement == Arrangement.Selector ? Math.Max(1, s.Switches)
        : s.OneAfterAnother ? s.Switches + 1
        : 1 << s.Switches;

    /// <summary>Wanted currents, brightest first.</summary>
    public static double[] Wanted(ChainSearchSpec s) => [.. s.WantedA.OrderDescending()];

    public static double Error(double[] low, double[] high, double wanted, int? only = null) =>
        Enumerable
            .Range(0, low.Length)
            .Where(c => only is null || c == only)
            .Min(c => Math.Max(0, Math.Max((high[c] / wanted) - 1, 1 - (low[c] / wanted))));

    public static double Error(ChainSearchSpec s, IReadOnlyList<PositionParts> parts)
    {
        double[] All(int side) =>
            [
                .. Enumerable
                    .Range(0, Combinations(s))
                    .Select(c => Amps(s, c, [.. parts.Select((p, k) => Of(s, p, side, k == 0, true))], side, true)),
            ];
        var (high, low) = (All(-1), All(1));
        return Wanted(s)
            .Select(
                (w, t) => Error(low, high, w, s.OneAfterAnother && s.Arrangement != Arrangement.Selector ? t : null)
            )
            .Max();
    }

    /// <summary>Whether the chain keeps currents and powers: at stated values, and in the worst corner where that is asked.</summary>
    public static bool KeepsLimits(ChainSearchSpec s, IReadOnlyList<PositionParts> parts)
    {
        var all = s with { OneAfterAnother = false };
        End[] stated = [.. parts.Select((p, k) => Of(s with { Objective = ChainObjective.Nominal }, p, 0, k == 0))];
        var amps = Enumerable
            .Range(0, Combinations(all))
            .Select(c => Amps(all with { Objective = ChainObjective.Nominal }, c, stated, 0))
            .ToArray();
        var most = s.Arrangement == Arrangement.ParallelBranches ? s.MostA : Math.Min(s.MostA, s.SwitchA ?? 1e99);
        return amps.Max() <= most * (1 + 2e-9)
            && amps.Min() >= (s.LeastA ?? 0) * (1 - 2e-9)
            && OwnCorner.KeepsCurrents(s, parts)
            && (
                s.CornerLimits && !IsNominal(s)
                    ? OwnCorner.KeepsPowers(s, parts)
                    : parts.Select((p, k) => PowerW(s, parts, k) <= p.AllowedW * (1 + 2e-9)).All(b => b)
            );
    }

    /// <summary>Greatest power of a position over all combinations, cold, at stated values.</summary>
    public static double PowerW(ChainSearchSpec s, IReadOnlyList<PositionParts> parts, int k)
    {
        var network = new ChainNetwork(
            new(
                s.Arrangement,
                new(parts[0].Ohm, 0, 1, 400, 500),
                [.. parts.Skip(1).Select(p => new ResistorPart(p.Ohm, 0, 1, 400, 500))],
                s.ContactOhm
            )
        );
        double[] ohms = [.. parts.Select(p => p.Ohm)];
        double[] contact = [s.ContactOhm];
        var worst = 0.0;
        for (var c = 0; c < network.CombinationCount; c++)
        {
            var total = network.TotalOhm(c, ohms, contact, s.LeadOhm);
            var chain = total - ohms[0];
            var share = s.BleedOhm is { } b && k > 0 ? b / (b + chain + s.UnsensedLeadOhm) : 1;
            if (s.BleedOhm is { } bleed && s.Arrangement != Arrangement.ParallelBranches)
            {
                total = ohms[0] + (chain * bleed / (bleed + chain + s.UnsensedLeadOhm));
            }

            var amps = s.Driver.CurrentA(total) * share;
            worst = Math.Max(worst, Share(s, network, c, ohms, amps, k));
        }

        return worst;
    }

    private static double Share(ChainSearchSpec s, ChainNetwork n, int c, double[] ohms, double amps, int k)
    {
        var volts = s.Driver.ThresholdV;
        if (s.Arrangement == Arrangement.ParallelBranches)
        {
            if (k == 0)
            {
                var left = volts - (FloorVolts(s, n, c, ohms));
                return left * left / ohms[0];
            }

            var siemens = Enumerable
                .Range(0, n.SwitchCount)
                .Where(j => n.Closed(c, j))
                .Sum(j => 1 / (ohms[j + 1] + s.ContactOhm));
            var node = siemens > 0 ? (volts - FloorVolts(s, n, c, ohms)) / (1 + (s.LeadOhm * siemens)) : 0;
            var through = n.Closed(c, k - 1) ? node / (ohms[k] + s.ContactOhm) : 0;
            return through * through * ohms[k];
        }

        if (k == 0)
        {
            return amps * amps * ohms[0];
        }

        var closed = n.Closed(c, k - 1);
        if (s.Arrangement == Arrangement.Selector)
        {
            return closed ? amps * amps * ohms[k] : 0;
        }

        var across = amps * (closed ? 1 / ((1 / ohms[k]) + (1 / s.ContactOhm)) : ohms[k]);
        return across * across / ohms[k];
    }

    private static double FloorVolts(ChainSearchSpec s, ChainNetwork n, int c, double[] ohms)
    {
        double[] contact = [s.ContactOhm];
        var branches = n.TotalOhm(c, ohms, contact, s.LeadOhm);
        return s.Driver.ThresholdV * s.FloorOhm / (s.FloorOhm + branches);
    }
}
