using System.Globalization;

namespace Lampwright.Steps.ChainProof;

/// <summary>What would be better but was refused: a value below the worn contact, one part more than the drawer has.</summary>
/// <remarks>The same search with that limit lifted, to the budget of a live one; nothing is said where it gains nothing.</remarks>
internal static class ChainRefused
{
    private static readonly long MostBoxes = 20_000;
    private static readonly double WorthIt = 0.2;

    /// <summary>Why a smaller value was refused; null where none would be better.</summary>
    /// <param name="spec">What was asked.</param>
    /// <param name="found">What was found.</param>
    public static string? Smaller(ChainSearchSpec spec, ChainSearchResult found)
    {
        var limit = spec.LeastSwitchedOhm;
        if (!found.Found || !spec.Stock.Any(p => p.Usable && p.Ohm < limit))
        {
            return null;
        }

        var free = Lifted(spec with { LeastSwitchedOhm = 0 });
        var small = free.Ohms.Skip(1).Where(r => r < limit * (1 - 1e-9)).DefaultIfEmpty(0).Min();
        if (small <= 0 || free.WorstError >= found.WorstError * (1 - 1e-3))
        {
            return null;
        }

        var worn = Math.Max(spec.ContactWornOhm ?? 0, spec.ContactOhm);
        var share = worn > 0 ? small / (small + worn) : 1;
        return Text(
            $"{small * 1000:0.##} mohm in a switched position would bring the worst error from {found.WorstError:0.## %} to {free.WorstError:0.## %} while contacts are new, and is refused below {limit * 1000:0.##} mohm: a contact worn to {worn * 1000:0.##} mohm takes {share:0 %} of the current when it is closed, the rest stays in the resistor, and the step shrinks from {small * 1000:0.##} to {small * share * 1000:0.##} mohm."
        );
    }

    /// <summary>Which part the drawer has too few of; null where more would gain less than a fifth.</summary>
    /// <param name="spec">What was asked.</param>
    /// <param name="found">What was found.</param>
    public static string? Short(ChainSearchSpec spec, ChainSearchResult found)
    {
        if (!found.Found || spec.Stock.All(p => p.Count is null))
        {
            return null;
        }

        var free = Lifted(spec with { Stock = [.. spec.Stock.Select(p => p with { Count = null })] });
        return free.WorstError < found.WorstError * (1 - WorthIt) && Lacks(spec, free.Parts) is { } lacks
            ? Text($"{lacks} would bring the worst error from {found.WorstError:0.## %} to {free.WorstError:0.## %}.")
            : null;
    }

    /// <summary>What is lacking of the drawer's parts for a chain, in words; null where nothing is.</summary>
    /// <param name="spec">What was asked.</param>
    /// <param name="parts">The chain, counts left out.</param>
    public static string? Lacks(ChainSearchSpec spec, IReadOnlyList<PositionParts> parts)
    {
        var words = parts
            .Where((_, k) => k > 0 || spec.Fixed is null)
            .SelectMany(p => new[] { p.First, p.Second })
            .OfType<StockPart>()
            .GroupBy(p => p with { Count = null })
            .Select(g =>
                (
                    g.Key.Ohm,
                    Wanted: g.Count(),
                    There: spec.Stock.Where(p => p with { Count = null } == g.Key).Sum(p => (long)(p.Count ?? 100))
                )
            )
            .Where(n => n.There < n.Wanted)
            .Select(n => Text($"{n.Wanted - n.There} more of {n.Ohm:0.####} ohm"))
            .ToArray();
        return words.Length == 0 ? null : string.Join(" and ", words);
    }

    private static ChainSearchResult Lifted(ChainSearchSpec spec) =>
        ChainSearch.Find(spec with { WithCertificate = false, MostBoxes = Math.Min(spec.MostBoxes, MostBoxes) });

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
