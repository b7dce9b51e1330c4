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
                    worst.WorstA is { } a ? Amps(Math.Max(a, worst.WorstPeakA ?? 0)) : "the driver's own limit",
                    takes
                );
            }
        }

        foreach (var word in OnWord(spec, faults))
        {
            yield return word;
        }

        if (chain.Arrangement == Arrangement.ParallelBranches && !(chain.FloorOhm > 0) && !(spec.LimitMostA <= limit))
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

    /// <summary>What the supply's fuse has to say.</summary>
    /// <param name="fuse">The fuse; null where the supply is not known.</param>
    /// <param name="path">Path of the supply in the design file.</param>
    public static IEnumerable<Finding> Judge(FuseRow? fuse, string path)
    {
        if (fuse is { RatingA: null })
        {
            yield return FaultRules.FuseBeyondList.At(
                path,
                Text(
                    $"The supply carries {fuse.WorkingA:0.0} A at the brightest position; that asks for {SupplyFuse.LeastRatingA(fuse.WorkingA):0.0} A, and no fuse of the list has so much."
                ),
                Text($"{SupplyFuse.LeastRatingA(fuse.WorkingA):0.0} A")
            );
        }
    }

    // One line for each thing the file gives its word for, where a stop would stand without it.
    private static IEnumerable<Finding> OnWord(FaultsSpec spec, IReadOnlyList<FaultResult> faults)
    {
        var limit = spec.Emitter.MostA;
        foreach (var shorts in new[] { true, false })
        {
            var left = faults
                .Where(f => f.Standing == FaultStanding.Excluded && f.Exceeds(limit))
                .Where(f => f.Fault.Kind == FaultKind.ResistorShort == shorts)
                .ToList();
            if (left.Count == 0)
            {
                continue;
            }

            var amps = left.Any(f => f.WorstA is null) ? null : left.Max(f => f.WorstA);
            var follows = amps is { } a ? Text($"up to {a:0.00} A") : "as much as the driver gives";
            var (key, says) = shorts
                ? (".part.fails", "the resistors fail open only")
                : (".lead.apart", "the emitter's leads run apart from the chain's, with a plug that fits nowhere else");
            yield return FaultRules.TakenOnWord.At(
                spec.Chain.Path + key,
                $"Taken on your word that {says}: {Some([.. left.Select(f => f.What)])} would be a stop. Were it not so, {follows} would flow"
                    + (limit is { } most ? Text($", and the emitter bears {most:0.00} A.") : "."),
                amps is { } flows ? Amps(flows) : "the driver's own limit",
                limit is { } bears ? Amps(bears) : ""
            );
        }
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Some(string[] names) =>
        names.Length <= 4 ? string.Join(", ", names) : string.Join(", ", names.Take(4)) + ", …";

    private static string Amps(double a) => Text($"{a:0.000} A");

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
