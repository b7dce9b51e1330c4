using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Steps.ChainProof;

/// <summary>Looks at every chain of a small stock.</summary>
internal static class BruteForce
{
    public static IEnumerable<PositionParts> Values(ChainSearchSpec s)
    {
        foreach (var a in s.Stock)
        {
            yield return new(Joint.Single, a);
            foreach (var b in s.Stock.Where(_ => s.Joined))
            {
                if (s.Stock.ToList().IndexOf(b) <= s.Stock.ToList().IndexOf(a))
                {
                    yield return new(Joint.Series, a, b);
                    yield return new(Joint.Parallel, a, b);
                }
            }
        }
    }

    /// <summary>Least worst error of all chains that keep the limits and counts; infinite where there is none.</summary>
    public static double Best(ChainSearchSpec s)
    {
        PositionParts[] values = [.. Values(s).Where(p => MayTake(s, p, false))];
        PositionParts[] first = s.Fixed is { } f
            ? [new(Joint.Single, f)]
            : [.. Values(s).Where(p => MayTake(s, p, true))];
        var (best, at) = (double.PositiveInfinity, new PositionParts[s.Switches + 1]);
        void Go(int k)
        {
            if (k == at.Length)
            {
                if (Counts(at) && OwnCircuit.Error(s, at) is var error && error < best && OwnCircuit.KeepsLimits(s, at))
                {
                    best = error;
                }

                return;
            }

            foreach (var v in k == 0 ? first : values)
            {
                at[k] = v;

                // Alike positions in one order only, to save time; by place in the list, not by value.
                if (k > 1 && !s.OneAfterAnother && Array.IndexOf(values, v) < Array.IndexOf(values, at[k - 1]))
                {
                    continue;
                }

                Go(k + 1);
            }
        }

        Go(0);
        return best;
    }

    /// <summary>Whether a position may take these parts: within the range asked for, and not more of a kind than there are.</summary>
    public static bool MayTake(ChainSearchSpec s, PositionParts p, bool isFixed) =>
        p.Ohm >= Math.Max(s.LeastOhm, isFixed ? 0 : s.LeastSwitchedOhm)
        && p.Ohm <= s.MostOhm
        && Counts([p])
        && (
            isFixed
            || s.Arrangement != Arrangement.ParallelBranches
            || s.SwitchA is not { } most
            || (s.CornerLimits && !OwnCircuit.IsNominal(s))
            || s.Driver.ThresholdV / (p.Ohm + s.ContactOhm) <= most
        );

    public static bool Counts(PositionParts[] at) =>
        at.SelectMany(p => p.Second is { } b ? new[] { p.First, b } : [p.First])
            .GroupBy(p => p)
            .All(g => g.Key.Count is null || g.Count() <= g.Key.Count);
}
