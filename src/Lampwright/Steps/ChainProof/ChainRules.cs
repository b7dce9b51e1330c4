using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Steps.ChainProof;

/// <summary>The rules of the search for a chain; each has a paragraph in docs/findings.md.</summary>
public static class ChainRules
{
    private const string Practice = "common practice, no source";

    /// <summary>A stock that gives no chain.</summary>
    public static readonly Rule NoChain = new(
        "STP040",
        "No chain of this stock keeps the limits",
        Severity.Warn,
        "Add the value that is named, a part of a higher rating or a switch, or move the wanted steps or the limit.",
        "Ohm's law at the limits given"
    );

    /// <summary>A chain that may not be the best.</summary>
    public static readonly Rule NotProven = new(
        "STP041",
        "The chain is the best found and not proven best",
        Severity.Note,
        "Let the search run on, or take a coarser stock: what a better chain could still gain is told.",
        "interval branch and bound; docs/steps-chain.md"
    );

    /// <summary>Wanted steps that do not fall.</summary>
    public static readonly Rule OutOfOrder = new(
        "STP042",
        "Wanted steps are out of order or no numbers",
        Severity.Warn,
        "Write the wanted steps from bright to dim, each once and above zero.",
        Practice
    );

    /// <summary>Parts left aside.</summary>
    public static readonly Rule StockLeftAside = new(
        "STP043",
        "Parts of the stock were left aside",
        Severity.Warn,
        "Give every part a resistance and a rating above zero; where a stock is too large, name the parts that may be taken.",
        "validity of the method"
    );

    /// <summary>A value that would help.</summary>
    public static readonly Rule ValueWouldHelp = new(
        "STP044",
        "One more value would make the steps much better",
        Severity.Note,
        "Get the value that is named, or allow two parts in one position.",
        "the search's own error with that value; a fifth is worth a purchase: " + Practice
    );

    /// <summary>A better value that is too small beside its contact.</summary>
    public static readonly Rule SmallerRefused = new(
        "STP050",
        "A smaller value would fit better and is refused for its worn contact",
        Severity.Note,
        "Take contacts of lower resistance (both poles in parallel, gold, cleaned) and say so in steps.contact.most, or set steps.part.least if you want it all the same.",
        "current divides as conductances do (Ohm's law); half as the limit: " + Practice
    );

    /// <summary>A drawer that is short of a part.</summary>
    public static readonly Rule DrawerIsShort = new(
        "STP052",
        "One part more in the drawer would make the steps much better",
        Severity.Note,
        "Get the parts that are named, or allow two parts in one position.",
        "the search's own error without the counts; a fifth is worth a purchase: " + Practice
    );

    /// <summary>A chosen chain that breaks a limit in its worst corner.</summary>
    public static readonly Rule BreaksAtCorner = new(
        "STP053",
        "The chosen chain breaks a limit when everything is off to its worst side",
        Severity.Warn,
        "Take over the best chain, or a greater fixed resistor, parts of closer tolerance or of a higher rating.",
        "monotone corners; docs/steps-chain.md"
    );

    /// <summary>All rules of the search.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [NoChain, NotProven, OutOfOrder, StockLeftAside, ValueWouldHelp, SmallerRefused, DrawerIsShort, BreaksAtCorner];

    /// <summary>What a search has refused although it would be better: each takes a search of its own.</summary>
    /// <param name="spec">What was asked.</param>
    /// <param name="found">What it came to.</param>
    /// <param name="path">Path in the design file of the steps.</param>
    public static IReadOnlyList<Finding> Refused(ChainSearchSpec spec, ChainSearchResult found, string path)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(found);
        var findings = new List<Finding>();
        if (ChainRefused.Smaller(spec, found) is { } smaller)
        {
            findings.Add(
                SmallerRefused.At(
                    path + ".part.least",
                    smaller,
                    limit: Text($"{spec.LeastSwitchedOhm * 1000:0.##} mohm")
                )
            );
        }

        if (ChainRefused.Short(spec, found) is { } lacks)
        {
            findings.Add(DrawerIsShort.At(path + ".stock", lacks));
        }

        return findings;
    }

    /// <summary>What is to be said of a search.</summary>
    /// <param name="spec">What was asked.</param>
    /// <param name="found">What it came to.</param>
    /// <param name="path">Path in the design file of the steps.</param>
    public static IReadOnlyList<Finding> Searched(ChainSearchSpec spec, ChainSearchResult found, string path)
    {
        ArgumentNullException.ThrowIfNull(found);
        var findings = new List<Finding>();
        if (!found.Found)
        {
            findings.Add(NoChain.At(path, found.Missing!.Words));
        }
        else if (!found.Proven)
        {
            findings.Add(
                NotProven.At(
                    path,
                    Text(
                        $"Worst error {found.WorstError:0.###%} after {found.CasesClosed} cases; no chain is better than {found.Bound:0.###%}, so at most {found.Gap:0.###%} could be gained."
                    )
                )
            );
        }

        if (found.Told.Unusable + found.Told.Beyond > 0 || found.Told.NotJoined)
        {
            findings.Add(StockLeftAside.At(path + ".stock", Aside(found.Told)));
        }

        if (ChainLack.Better(spec, found) is { } missing)
        {
            findings.Add(ValueWouldHelp.At(path + ".stock", missing.Words));
        }

        return findings;
    }

    /// <summary>The finding for wanted currents that do not fall from each to the next, or null.</summary>
    /// <param name="wantedA">Wanted currents in the order they were given, in amperes.</param>
    /// <param name="path">Path in the design file of the wanted steps.</param>
    public static Finding? Order(IReadOnlyList<double> wantedA, string path)
    {
        ArgumentNullException.ThrowIfNull(wantedA);
        for (var k = 0; k < wantedA.Count; k++)
        {
            if (wantedA[k] is not (> 0 and < 1e9))
            {
                return OutOfOrder.At(path, Text($"Step {k + 1} asks for {wantedA[k]:0.###} A and is left aside."));
            }

            if (k > 0 && wantedA[k] >= wantedA[k - 1])
            {
                return OutOfOrder.At(
                    path,
                    Text(
                        $"Step {k + 1} asks for {wantedA[k]:0.###} A after {wantedA[k - 1]:0.###} A; the steps are met in falling order."
                    )
                );
            }
        }

        return null;
    }

    private static string Aside(ChainTold told)
    {
        var words = new List<string>();
        if (told.Unusable > 0)
        {
            words.Add(Text($"{told.Unusable} without a sound resistance, rating or count."));
        }

        if (told.Beyond > 0)
        {
            words.Add(Text($"{told.Beyond} beyond the {ChainSearchSpec.MostStock} that are looked at."));
        }

        if (told.NotJoined)
        {
            words.Add(
                Text($"With more than {ChainSearchSpec.MostJoinedStock} values each position takes one part, not two.")
            );
        }

        return string.Join(' ', words);
    }

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
