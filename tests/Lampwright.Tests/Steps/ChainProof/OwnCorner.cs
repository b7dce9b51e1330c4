using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Steps.ChainProof;

/// <summary>Limits with everything at the end that hurts most, written anew for the tests: every combination, every part, the range of two parts by a grid.</summary>
internal static class OwnCorner
{
    private static readonly double Slack = 2e-9;

    public static bool KeepsCurrents(ChainSearchSpec s, IReadOnlyList<PositionParts> parts)
    {
        var all = s with { OneAfterAnother = false };
        var series = s.Arrangement != Arrangement.ParallelBranches;
        var most = s.CornerMostA ?? 1e99;
        if (s.CornerLimits && !OwnCircuit.IsNominal(s) && series)
        {
            most = Math.Min(most, s.SwitchA ?? 1e99);
        }

        var worn = all with { ContactMostOhm = Math.Max(OwnCircuit.Contact(s, 1), s.ContactWornOhm ?? 0) };
        return All(Bare(all), parts, -1).Max() <= most * (1 + Slack)
            && All(worn, parts, 1).Min() >= (s.CornerLeastA ?? 0) * (1 - Slack);
    }

    public static bool KeepsPowers(ChainSearchSpec s, IReadOnlyList<PositionParts> parts) =>
        Enumerable.Range(0, parts.Count).All(k => KeepsPower(s, parts[k], MostThrough(s, parts, k)))
        && (
            s.Arrangement != Arrangement.ParallelBranches
            || parts
                .Skip(1)
                .All(p =>
                    OwnCircuit.Volts(s, -1) / (OwnCircuit.Of(s, p, -1, false).Cold + OwnCircuit.Contact(Bare(s), -1))
                    <= (s.SwitchA ?? 1e99) * (1 + Slack)
                )
        );

    /// <summary>The question with contacts as limits of the greatest current count them.</summary>
    public static ChainSearchSpec Bare(ChainSearchSpec s) =>
        s with
        {
            ContactLeastOhm = s.ContactBareOhm ?? s.ContactLeastOhm,
        };

    /// <summary>Whether both parts of a position bear a current, each at the resistance that is worst for it.</summary>
    public static bool KeepsPower(ChainSearchSpec s, PositionParts p, double amps)
    {
        var (a, b) = (Range(s, p.First), p.Second is { } second ? Range(s, second) : (0, 0));
        bool Within(double watts, StockPart part) => watts <= part.AllowedW * (1 + Slack);
        if (p.Second is null || p.Joint == Joint.Series)
        {
            return Within(amps * amps * a.Most, p.First)
                && (p.Second is null || Within(amps * amps * b.Most, p.Second));
        }

        for (var i = 0; i <= 60; i++)
        {
            for (var j = 0; j <= 1; j++)
            {
                var (x, y) = (a.Least + ((a.Most - a.Least) * i / 60), j == 0 ? b.Least : b.Most);
                var (u, v) = (b.Least + ((b.Most - b.Least) * i / 60), j == 0 ? a.Least : a.Most);
                if (
                    !Within(Math.Pow(amps * y / (x + y), 2) * x, p.First)
                    || !Within(Math.Pow(amps * v / (u + v), 2) * u, p.Second)
                )
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Greatest current through a position over all combinations in which it has its say.</summary>
    public static double MostThrough(ChainSearchSpec s, IReadOnlyList<PositionParts> parts, int k)
    {
        var all = s with { OneAfterAnother = false };
        OwnCircuit.End[] ends = [.. parts.Select((p, j) => OwnCircuit.Of(s, p, -1, j == 0))];
        return MostThrough(all, ends, OwnCircuit.Of(s, parts[0], 1, true), k);
    }

    /// <summary>The same for given ends; beside branches the fixed one at its greatest leaves them most.</summary>
    public static double MostThrough(ChainSearchSpec all, OwnCircuit.End[] ends, OwnCircuit.End fixedMost, int k)
    {
        var worst = 0.0;
        all = Bare(all);

        // With the threshold found by the fixed part: that part and the threshold both at their greatest.
        var aim = OwnCircuit.Own(all) > 0;
        OwnCircuit.End[] aimed = aim
            ? [OwnCircuit.Of(all, new PositionParts(Joint.Single, all.Fixed!), -1, true, true), .. ends[1..]]
            : ends;
        for (var c = 0; c < OwnCircuit.Combinations(all); c++)
        {
            worst = Math.Max(
                worst,
                all.Arrangement == Arrangement.ParallelBranches
                    ? Math.Max(
                        Branch(all, ends, fixedMost.Cold, c, k, false),
                        Branch(all, aimed, fixedMost.Cold, c, k, aim)
                    )
                    : Math.Max(Series(all, ends, c, k, false), Series(all, aimed, c, k, aim))
            );
        }

        return worst;
    }

    private static double Series(ChainSearchSpec s, OwnCircuit.End[] ends, int c, int k, bool aim)
    {
        bool Open(int j) => ((c >> (s.Switches - j)) & 1) == 1;
        var selector = s.Arrangement == Arrangement.Selector;
        if (k > 0 && (selector ? c != k - 1 : !Open(k)))
        {
            return 0;
        }

        var amps = OwnCircuit.Amps(s, c, ends, -1, aim);
        if (k == 0 || s.BleedOhm is not { } bleed)
        {
            return amps;
        }

        var (contact, chain) = (OwnCircuit.Contact(s, -1), OwnCircuit.Lead(s, -1));
        for (var j = 1; j < ends.Length; j++)
        {
            var warm = ends[j].Cold + (ends[j].Heat * amps * amps);
            chain +=
                selector ? (j == k ? warm + contact : 0)
                : Open(j) ? warm
                : 1 / ((1 / ends[j].Cold) + (1 / contact));
        }

        // The unsensed lead at its least leaves the chain most.
        return amps * bleed / (bleed + chain + (s.UnsensedLeadOhm * (1 - s.LeadTolerance)));
    }

    private static double Branch(ChainSearchSpec s, OwnCircuit.End[] ends, double fixedMost, int c, int k, bool aim)
    {
        bool Closed(int j) => ((c >> (s.Switches - j)) & 1) == 0;
        var (contact, lead, floor) = (
            OwnCircuit.Contact(s, -1),
            OwnCircuit.Lead(s, -1),
            s.FloorOhm * (1 - s.FloorTolerance)
        );
        var siemens = Enumerable.Range(1, s.Switches).Where(Closed).Sum(j => 1 / (ends[j].Cold + contact));
        var first = k == 0 ? ends[0].Cold : fixedMost;
        var branches = siemens > 0 ? 1 / (lead + (1 / siemens)) : 0;
        var total = 1 / ((1 / first) + branches);
        var across = OwnCircuit.Volts(s, -1) * (aim ? 1 + OwnCircuit.Own(s) : 1) * total / (floor + total);
        if (k == 0)
        {
            return across / first;
        }

        return Closed(k) ? across * branches / siemens / (ends[k].Cold + contact) : 0;
    }

    private static IEnumerable<double> All(ChainSearchSpec s, IReadOnlyList<PositionParts> parts, int side)
    {
        OwnCircuit.End[] ends = [.. parts.Select((p, k) => OwnCircuit.Of(s, p, side, k == 0))];
        return Enumerable.Range(0, OwnCircuit.Combinations(s)).Select(c => OwnCircuit.Amps(s, c, ends, side));
    }

    // A part at its limit is warmed by all of its allowed power.
    private static (double Least, double Most) Range(ChainSearchSpec s, StockPart p)
    {
        double[] signs = s.TempcoIsLimit ? [-1, 1] : [1];
        var drifts = signs.Select(g => 1 + (g * p.TempcoPerK * p.RisePerWattK * p.AllowedW)).Append(1).ToArray();
        return (OwnCircuit.Of(s, p, -1).Cold * drifts.Min(), OwnCircuit.Of(s, p, 1).Cold * drifts.Max());
    }
}
