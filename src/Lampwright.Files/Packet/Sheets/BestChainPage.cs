using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The best chain from the stock beside the one that is built, how far each step is missed, and what else could be taken.</summary>
internal static class BestChainPage
{
    private const double ChartHeight = 62;

    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Steps?.Chain is not { } chain)
        {
            return;
        }

        var flow = new Flow(book, new("The best chain")).Begun();
        flow.Title("The best chain from the stock", "every tolerance against it");
        flow.Paragraph(Proof(chain), 3);
        if (chain.Used is { } used)
        {
            flow.Skip(1);
            flow.Paragraph(Against(chain, used), 3);
        }

        if (ChainCharts.Errors(chain, chain.Best, "the best", chain.Used?.Does, "as it is built") is { } errors)
        {
            flow.Skip(3);
            flow.Need(ChartHeight);
            ChartDrawing.Draw(errors, flow.Ink, flow.Left, flow.Y, flow.Width, ChartHeight, 2.9);
            flow.Skip(ChartHeight + 3);
        }

        Offers(flow, chain);
    }

    private static void Offers(Flow flow, ChainAnswer chain)
    {
        if (chain.Offers.Count == 0)
        {
            return;
        }

        flow.Head("What could be taken", "? not proven best of its kind");
        new Table(
            [
                new("worst", "%", 19, 13),
                new("switches", "", 16, 10),
                new("parts", "", 13, 8),
                new("loaded", "%", 16, 11),
                new("R0, then the chain", "Ω", flow.Width - 64),
            ],
            5.6,
            2.7
        ).Draw(
            flow,
            [
                .. chain.Offers.Select(o =>
                    (IReadOnlyList<Cell>)
                        [
                            ((Cell)(Percent(o.Choice.Found.WorstError) + (o.Choice.Found.Proven ? "" : " ?"))).Strong,
                            o.Choice.Switches.ToString(CultureInfo.InvariantCulture),
                            o.Choice.Found.PartCount.ToString(CultureInfo.InvariantCulture),
                            ChartText.Fixed(100 * o.Choice.Found.MostLoad, 0),
                            string.Join("  ", o.Choice.Found.Parts.Select(p => p.Words))
                                + (o.IsUsed ? "  (is built)" : ""),
                        ]
                ),
            ]
        );
        flow.Paragraph("+ one after the other, | side by side.", 2.4, Palette.Soft);
    }

    private static string Proof(ChainAnswer chain)
    {
        var best = chain.Best;
        if (!best.Found)
        {
            return best.Missing!.Words;
        }

        var values = string.Join(", ", best.Parts.Select((p, k) => $"R{k} {p.Words} Ω"));
        var cases = best.CasesClosed.ToString(CultureInfo.InvariantCulture);
        return best.Proven
            ? $"{values}. No step is missed by more than {Percent(best.WorstError)} %; proven: no chain of this stock is better ({cases} cases)."
            : $"{values}. No step is missed by more than {Percent(best.WorstError)} %; not proven: {Percent(best.Gap)} % could still be gained.";
    }

    private static string Against(ChainAnswer chain, UsedChain used) =>
        used.Breaks.Length > 0 ? $"The chain that is built is outside of the limits: {used.Breaks}."
        : chain.Best.Found
            ? $"The chain that is built ({(used.IsGiven ? "chosen" : "by the first search")}) misses a step by {Percent(used.Does.WorstError)} % at most."
        : $"The chain that is built misses a step by {Percent(used.Does.WorstError)} % at most.";

    private static string Percent(double share) => ChartText.Fixed(100 * share, 2);
}
