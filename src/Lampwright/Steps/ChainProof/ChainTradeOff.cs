using System.Globalization;

namespace Lampwright.Steps.ChainProof;

/// <summary>One chain along the trade-off.</summary>
/// <param name="Found">The chain.</param>
/// <param name="Switches">How many switches it has.</param>
/// <param name="LoadLimit">Share of its allowed power that each part was held under.</param>
/// <param name="Joined">Whether two parts were allowed in a position.</param>
public sealed record ChainChoice(ChainSearchResult Found, int Switches, double LoadLimit, bool Joined)
{
    /// <summary>Whether another is at least as good in error, parts, price, switches and load, and better in one.</summary>
    /// <param name="other">The other one.</param>
    public bool IsBeatenBy(ChainChoice other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var (mine, its) = (Measures(), other.Measures());
        return its.Zip(mine).All(p => p.First <= p.Second * (1 + 1e-9))
            && its.Zip(mine).Any(p => p.First < p.Second * (1 - 1e-9));
    }

    // Loads that differ by less than a twentieth are the same to the maker.
    private double[] Measures() =>
        [Found.WorstError, Found.PartCount, Found.Price, Switches, Math.Ceiling(Found.MostLoad * 20)];
}

/// <summary>The runners-up: smaller error against fewer parts, fewer switches, a lower price and cooler parts.</summary>
/// <remarks>
/// Each is the best of a search of its own and proven where that says so: with all that was asked, with one part in each position, with
/// one and two switches less, and with every part held under seven and five tenths of its allowed power. What another beats in everything is left out.
/// Price is not searched for; it is told of each.
/// </remarks>
public static class ChainTradeOff
{
    private static readonly double[] Loads = [1, 0.7, 0.5];
    private static readonly long MostBoxes = 300_000;

    /// <summary>The choices, the least error first.</summary>
    /// <param name="spec">What is wanted.</param>
    /// <param name="stop">Ends the search with what there is.</param>
    /// <param name="progress">Told how far it is: which of them, its best so far and its gap still open.</param>
    public static IReadOnlyList<ChainChoice> Of(
        ChainSearchSpec spec,
        CancellationToken stop = default,
        IProgress<ChainProgress>? progress = null
    )
    {
        ArgumentNullException.ThrowIfNull(spec);
        var choices = new List<ChainChoice>();
        var kinds = Kinds(spec).ToList();
        foreach (var ((switches, load, joined), i) in kinds.Select((k, i) => (k, i)))
        {
            if (stop.IsCancellationRequested)
            {
                break;
            }

            var asked = spec with
            {
                Switches = switches,
                Joined = joined,
                Stock = [.. spec.Stock.Select(p => p with { AllowedW = p.AllowedW * load })],
                Fixed = spec.Fixed is { } stays ? stays with { AllowedW = stays.AllowedW * load } : null,
                MostBoxes = Math.Min(spec.MostBoxes, MostBoxes),
                WithCertificate = false,
            };
            var told = progress is null ? null : new OneOf(progress, i, kinds.Count);
            told?.Report(new(0, 0, double.PositiveInfinity, 0));
            var found = ChainSearch.Find(asked, told, stop);
            if (found.Found)
            {
                choices.Add(new(Rated(found, load), switches, load, joined));
            }
        }

        return
        [
            .. choices
                .Where((c, i) => !choices.Where((o, j) => j != i && (c.IsBeatenBy(o) || (j < i && Same(c, o)))).Any())
                .OrderBy(c => c.Found.WorstError),
        ];
    }

    // The parts with the power that they are really allowed.
    private static ChainSearchResult Rated(ChainSearchResult found, double load)
    {
        StockPart Of(StockPart p) => p with { AllowedW = p.AllowedW / load };
        return found with
        {
            MostLoad = found.MostLoad * load,
            Parts =
            [
                .. found.Parts.Select(p =>
                    p with
                    {
                        First = Of(p.First),
                        Second = p.Second is { } second ? Of(second) : null,
                    }
                ),
            ],
        };
    }

    private static IEnumerable<(int Switches, double Load, bool Joined)> Kinds(ChainSearchSpec spec)
    {
        bool[] joints = spec.Joined ? [true, false] : [false];
        foreach (var joined in joints)
        {
            foreach (var load in Loads)
            {
                yield return (spec.Switches, load, joined);
            }
        }

        // A selector has a position for each step; fewer are another light.
        for (var less = 1; less <= 2 && spec.Arrangement != Arrangement.Selector && spec.Switches - less >= 1; less++)
        {
            foreach (var joined in joints)
            {
                yield return (spec.Switches - less, 1, joined);
            }
        }
    }

    // One search among several, as a part of the whole.
    private sealed class OneOf(IProgress<ChainProgress> whole, int place, int count) : IProgress<ChainProgress>
    {
        public void Report(ChainProgress value) =>
            whole.Report(
                value with
                {
                    Share = (place + value.Share) / count,
                    Of = string.Create(CultureInfo.InvariantCulture, $"runner-up {place + 1} of {count}"),
                }
            );
    }

    private static bool Same(ChainChoice a, ChainChoice b) =>
        a.Switches == b.Switches
        && a.Found.Parts.Select(p => p.Words).SequenceEqual(b.Found.Parts.Select(p => p.Words), StringComparer.Ordinal);
}
