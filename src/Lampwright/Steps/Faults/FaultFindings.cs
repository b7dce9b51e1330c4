using Lampwright.Findings;

namespace Lampwright.Steps.Faults;

/// <summary>What single faults of a chain and its switches have to say.</summary>
public static class FaultFindings
{
    /// <summary>What the faults of a chain and its switches have to say.</summary>
    /// <param name="spec">What the faults were played with.</param>
    /// <param name="faults">What came of it.</param>
    /// <param name="mostA">Greatest current of all positions, in amperes.</param>
    /// <param name="leastA">Least current of all positions, in amperes.</param>
    public static IEnumerable<Finding> Judge(
        FaultsSpec spec,
        IReadOnlyList<FaultResult> faults,
        double mostA,
        double leastA
    )
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(faults);
        var (chain, limit) = (spec.Chain, spec.Emitter.MostA);
        if (chain.Switched.Count == 0)
        {
            yield break;
        }

        var takes = limit is { } l ? Amps(l) : "";
        foreach (
            var (rule, standing) in new[]
            {
                (FaultRules.FaultOverEmitter, FaultStanding.Counts),
                (FaultRules.FaultByConstruction, FaultStanding.ByConstruction),
            }
        )
        {
            var bad = faults.Where(f => f.Standing == standing && f.Exceeds(limit)).ToList();
            if (bad.Count > 0)
            {
                var worst = bad[0];
                var more =
                    bad.Count > 1
                        ? Text($" So do {bad.Count - 1} more: {Some([.. bad.Skip(1).Select(f => f.What)])}.")
                        : "";
                yield return rule.At(
                    chain.Path,
                    $"{Capital(worst.What)}, at {worst.Position}: {worst.Words}{more}",
                    worst.CurrentMostA is { } a ? Amps(Math.Max(a, worst.PeakA ?? 0)) : "the driver's own limit",
                    takes
                );
            }
        }

        if (
            chain.Arrangement == Arrangement.ParallelBranches
            && !(chain.FloorOhm > 0)
            && !(spec.Driver.LimitA <= limit)
        )
        {
            var least = spec.FloorOhm is { } floor ? Text($" It takes {floor:0.000} Ω at least.") : "";
            yield return FaultRules.NoFloor.At(
                chain.Path + ".arrangement",
                "Nothing on the board is in series with the branches: where their leads touch, the sense input sees nothing."
                    + least
            );
        }

        var loose = faults
            .Where(f =>
                f.Fault.Kind == FaultKind.LeadBroken && f.Fault.First >= 2 && f.Standing == FaultStanding.Counts
            )
            .Where(f => f.CurrentMostA is not { } a || a < leastA * 0.1 || a > leastA * 1.25)
            .Where(f => !(f.CurrentMostA is { } a && Math.Abs((a / Math.Max(f.SoundA, 1e-9)) - 1) < 0.1))
            .ToList();
        if (chain.Arrangement != Arrangement.ParallelBranches && loose.Count > 0)
        {
            yield return FaultRules.LooseLead.At(
                chain.Path + ".bleed",
                $"{Capital(loose[0].What)}, at {loose[0].Position}: {loose[0].Words}",
                loose[0].CurrentMostA is { } a ? Amps(a) : "the driver's own limit",
                Amps(leastA)
            );
        }

        if (chain.ContactMostA is { } rated && mostA > rated)
        {
            yield return FaultRules.ContactOverRating.At(
                chain.Path + ".contact.rating",
                Text($"A closed contact carries up to {mostA:0.00} A; it is rated {rated:0.00} A."),
                Amps(mostA),
                Amps(rated)
            );
        }
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Some(string[] names) =>
        names.Length <= 4 ? string.Join(", ", names) : string.Join(", ", names.Take(4)) + ", …";

    private static string Amps(double a) => Text($"{a:0.000} A");

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
