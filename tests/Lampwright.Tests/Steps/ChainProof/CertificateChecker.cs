using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Steps.ChainProof;

/// <summary>Verifies a proof that no chain is better, with nothing of the search: only Ohm's law at the ends of each closed box.</summary>
internal sealed class CertificateChecker(ChainSearchSpec s, ChainCertificate proof, double error)
{
    private static readonly double Slack = 1e-8;

    private readonly double[] _wanted = OwnCircuit.Wanted(s);
    private readonly Dictionary<(bool, int, int, bool), OwnCircuit.End> _ends = [];

    /// <summary>The first line that does not hold, in words; null when the proof stands.</summary>
    public string? Fault()
    {
        if (ListsFault() is { } fault)
        {
            return fault;
        }

        var waiting = new Stack<(int[] Least, int[] Most)>();
        var n = s.Switches + 1;
        waiting.Push(([.. new int[n]], [.. Enumerable.Range(0, n).Select(k => Values(k).Count - 1)]));
        var line = 0;
        while (waiting.TryPop(out var box))
        {
            for (var open = true; open; line++)
            {
                if (line >= proof.Lines.Count)
                {
                    return "the proof ends with a box that is open";
                }

                var l = proof.Lines[line];
                var (least, most) = box;
                if (l.Step != CaseStep.Closed && (l.Index < least[l.Position] - 1 || l.Index > most[l.Position] + 1))
                {
                    return $"line {line} lies outside its box";
                }

                switch (l.Step)
                {
                    case CaseStep.Closed:
                        open = false;
                        if (!Holds(l, least, most))
                        {
                            return $"line {line}: {l} does not close {string.Join(',', least)} to {string.Join(',', most)}";
                        }

                        break;
                    case CaseStep.Halved:
                        var upper = (int[])least.Clone();
                        upper[l.Position] = l.Index + 1;
                        waiting.Push((upper, (int[])most.Clone()));
                        most[l.Position] = l.Index;
                        break;
                    default:
                        var (a, z) = ((int[])least.Clone(), (int[])most.Clone());
                        (l.Step == CaseStep.CutBelow ? z : a)[l.Position] = l.Index;
                        if (!Holds(l, a, z))
                        {
                            return $"line {line}: {l} does not hold for what it cuts off";
                        }

                        (l.Step == CaseStep.CutBelow ? least : most)[l.Position] =
                            l.Step == CaseStep.CutBelow ? l.Index + 1 : l.Index - 1;
                        break;
                }
            }
        }

        return line == proof.Lines.Count ? null : "lines are left over";
    }

    // Every part and pair of the stock must be among the values: itself where parts are counted, else one that may carry as much.
    private string? ListsFault()
    {
        var counted = s.Stock.Any(p => p.Count is not null);
        foreach (var isFixed in new[] { true, false })
        {
            var list = isFixed ? proof.FixedValues : proof.SwitchedValues;
            IEnumerable<PositionParts> all =
                isFixed && s.Fixed is { } f ? [new(Joint.Single, f)] : BruteForce.Values(s);
            foreach (var p in all.Where(p => BruteForce.MayTake(s, p, isFixed) && (isFixed || s.Switches > 0)))
            {
                var ends = (OwnCircuit.Of(s, p, -1, isFixed), OwnCircuit.Of(s, p, 1, isFixed));
                if (
                    !list.Any(v =>
                        v.Any(w => counted ? Same(w, p) : w.AllowedW >= p.AllowedW * (1 - 1e-12))
                        && Math.Abs(v[0].Ohm - p.Ohm) <= 1e-11 * p.Ohm
                        && Math.Abs(OwnCircuit.Of(s, v[0], -1, isFixed).Cold - ends.Item1.Cold) <= 1e-11 * p.Ohm
                        && Math.Abs(OwnCircuit.Of(s, v[0], 1, isFixed).Cold - ends.Item2.Cold) <= 1e-11 * p.Ohm
                    )
                )
                {
                    return $"{p.Words} is not among the values";
                }
            }
        }

        return null;
    }

    private static bool Same(PositionParts a, PositionParts b) =>
        a.Joint == b.Joint
        && ((a.First == b.First && a.Second == b.Second) || (a.First == b.Second && a.Second == b.First));

    private IReadOnlyList<IReadOnlyList<PositionParts>> Values(int k) =>
        k == 0 ? proof.FixedValues : proof.SwitchedValues;

    private bool Holds(ProofLine l, int[] least, int[] most)
    {
        if (least.Zip(most).Any(p => p.First > p.Second))
        {
            return true;
        }

        switch (l.By)
        {
            case ClosedBy.Target:
                return Missed(l.Target, least, most);
            case ClosedBy.Order:
                return !s.OneAfterAnother
                    && Enumerable.Range(2, Math.Max(0, least.Length - 2)).Any(k => least[k - 1] > most[k]);
            case ClosedBy.MostCurrent:
                return s.Arrangement != Arrangement.Selector && Nominal(most, 0) > Top() * (1 - 1e-10)
                    || (s.Arrangement == Arrangement.Selector && Brightest(most) > Top() * (1 - 1e-10));
            case ClosedBy.LeastCurrent:
                return Enumerable
                    .Range(0, OwnCircuit.Combinations(s with { OneAfterAnother = false }))
                    .Any(c => Nominal(least, c) < s.LeastA * (1 + 1e-10));
            case ClosedBy.Power:
                return Enumerable.Range(0, least.Length).Any(k => Overloaded(least, most, k));
            case ClosedBy.CornerCurrent:
                return AllAt(most, least, -1, OwnCorner.Bare(s)).Max() > CornerTop() * (1 - 1e-10);
            case ClosedBy.CornerLeast:
                var worn = s with { ContactMostOhm = Math.Max(OwnCircuit.Contact(s, 1), s.ContactWornOhm ?? 0) };
                return AllAt(most, least, 1, worn).Min() < s.CornerLeastA * (1 + 1e-10);
            case ClosedBy.CornerPower:
                return Enumerable.Range(0, least.Length).Any(k => OverloadedAtCorner(least, most, k));
            case ClosedBy.Count:
                return !Supplied(least, most);
            case ClosedBy.Computed:
                return least.SequenceEqual(most) && NotBetter(least);
            default:
                return false;
        }
    }

    // No way to make these values from the stock keeps the limits and is better.
    private bool NotBetter(int[] at)
    {
        IReadOnlyList<PositionParts>[] ways = [.. at.Select((i, k) => Values(k)[i])];
        return !Picks(ways)
            .Any(p =>
                BruteForce.Counts(p) && OwnCircuit.KeepsLimits(s, p) && OwnCircuit.Error(s, p) < error * (1 - Slack)
            );
    }

    private static IEnumerable<PositionParts[]> Picks(IReadOnlyList<PositionParts>[] ways) =>
        ways.Aggregate(
            (IEnumerable<PositionParts[]>)
                [
                    [],
                ],
            (picks, next) => picks.SelectMany(p => next.Select(w => (PositionParts[])[.. p, w]))
        );

    // Once alike positions ascend, some are decided: can they be made together?
    private bool Supplied(int[] least, int[] most)
    {
        var (a, z) = ((int[])least.Clone(), (int[])most.Clone());
        for (var k = 2; k < a.Length && !s.OneAfterAnother; k++)
        {
            a[k] = Math.Max(a[k], a[k - 1]);
        }

        for (var k = z.Length - 2; k >= 1 && !s.OneAfterAnother; k--)
        {
            z[k] = Math.Min(z[k], z[k + 1]);
        }

        IReadOnlyList<PositionParts>[] decided =
        [
            .. Enumerable.Range(0, a.Length).Where(k => a[k] == z[k]).Select(k => Values(k)[a[k]]),
        ];
        return Enumerable.Range(0, a.Length).All(k => a[k] <= z[k]) && Picks(decided).Any(BruteForce.Counts);
    }

    // Currents of all combinations with every position at the end that no chain of the box goes beyond.
    private IEnumerable<double> AllAt(int[] most, int[] least, int side, ChainSearchSpec spec)
    {
        var all = spec with { OneAfterAnother = false };
        OwnCircuit.End[] ends = [.. least.Select((a, k) => Extreme(k, a, most[k], side))];
        return Enumerable.Range(0, OwnCircuit.Combinations(all)).Select(c => OwnCircuit.Amps(all, c, ends, side));
    }

    private double CornerTop() =>
        Math.Min(
            s.CornerMostA ?? 1e99,
            s.CornerLimits && s.Arrangement != Arrangement.ParallelBranches ? s.SwitchA ?? 1e99 : 1e99
        );

    // No way to make any of the values bears the least current that chains of the box send through.
    private bool OverloadedAtCorner(int[] least, int[] most, int k)
    {
        OwnCircuit.End[] ends = [.. least.Select((a, j) => Extreme(j, a, most[j], -1))];
        var amps =
            OwnCorner.MostThrough(s with { OneAfterAnother = false }, ends, Extreme(0, least[0], most[0], 1), k)
            * (1 + 1e-9);
        return !Enumerable
            .Range(least[k], most[k] - least[k] + 1)
            .Any(i => Values(k)[i].Any(w => OwnCorner.KeepsPower(s, w, amps)));
    }

    private double Top() => Math.Min(s.MostA, s.SwitchA ?? 1e99);

    private ChainSearchSpec Stated => s with { Objective = ChainObjective.Nominal, OneAfterAnother = false };

    private double Nominal(int[] at, int c) =>
        OwnCircuit.Amps(Stated, c, [.. at.Select((i, k) => OwnCircuit.Of(Stated, Values(k)[i][0], 0, k == 0))], 0);

    private double Brightest(int[] at) => Enumerable.Range(0, OwnCircuit.Combinations(s)).Max(c => Nominal(at, c));

    // No chain of the box has a smaller current at its high end, or a greater one at its low end, than these.
    private bool Missed(int t, int[] least, int[] most)
    {
        OwnCircuit.End[] lows = [.. least.Select((a, k) => Extreme(k, a, most[k], -1, true))];
        OwnCircuit.End[] highs = [.. least.Select((a, k) => Extreme(k, a, most[k], 1, true))];
        for (var c = 0; c < OwnCircuit.Combinations(s); c++)
        {
            if (s.OneAfterAnother && c != t)
            {
                continue;
            }

            var above = (OwnCircuit.Amps(s, c, lows, -1, true) / _wanted[t]) - 1;
            var below = 1 - (OwnCircuit.Amps(s, c, highs, 1, true) / _wanted[t]);
            if (Math.Max(above, below) < error * (1 - Slack))
            {
                return false;
            }
        }

        return true;
    }

    private OwnCircuit.End Extreme(int k, int from, int to, int side, bool aim = false)
    {
        var (cold, heat) = (side < 0 ? 0 : double.MaxValue, side < 0 ? double.MinValue : double.MaxValue);
        for (var i = from; i <= to; i++)
        {
            if (!_ends.TryGetValue((k == 0, i, side, aim), out var end))
            {
                end = OwnCircuit.Of(s, Values(k)[i][0], side, k == 0, aim);
                _ends[(k == 0, i, side, aim)] = end;
            }

            (cold, heat) =
                side < 0
                    ? (Math.Max(cold, end.Cold), Math.Max(heat, end.Heat))
                    : (Math.Min(cold, end.Cold), Math.Min(heat, end.Heat));
        }

        return new(cold, heat);
    }

    // The least current that any chain of the box sends through is more than any of its values bears.
    private bool Overloaded(int[] least, int[] most, int k)
    {
        double Ohm(int j, int i) => Values(j)[i][0].Ohm;
        var (x, volts, contact) = (Ohm(k, most[k]), s.Driver.ThresholdV, s.ContactOhm);
        double amps;
        switch (s.Arrangement)
        {
            case Arrangement.ParallelBranches when k == 0:
                amps = volts / (x + s.FloorOhm);
                break;
            case Arrangement.ParallelBranches:
                var (r0, branch) = (Ohm(0, least[0]), Ohm(k, least[k]) + contact + s.LeadOhm);
                var beside = r0 * branch / (r0 + branch);
                amps = volts * beside / (beside + s.FloorOhm) / (x + contact + s.LeadOhm);
                break;
            default:
                var chain = s.LeadOhm;
                if (s.Arrangement == Arrangement.Selector)
                {
                    var chosen = k > 0 ? x : most.Skip(1).Select(i => Ohm(1, i)).DefaultIfEmpty(0).Min();
                    chain += most.Length > 1 ? chosen + contact : 0;
                }

                for (var j = 1; j < most.Length && s.Arrangement == Arrangement.SeriesChain; j++)
                {
                    chain += j == k ? x : Ohm(j, most[j]) * contact / (Ohm(j, most[j]) + contact);
                }

                var share = s.BleedOhm is { } bleed ? bleed / (bleed + chain + s.UnsensedLeadOhm) : 1;
                amps = s.Driver.CurrentA(Ohm(0, most[0]) + (chain * share)) * (k > 0 ? share : 1);
                break;
        }

        return Enumerable
            .Range(least[k], most[k] - least[k] + 1)
            .All(i => Values(k)[i].All(w => amps * amps * w.Ohm > w.AllowedW * (1 - 1e-10)));
    }
}
