using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>The best chain from the stock in a few lines.</summary>
internal static class ChainLines
{
    /// <summary>Shows it.</summary>
    public static void Show(IAnsiConsole screen, ChainAnswer chain)
    {
        var best = chain.Best;
        screen.WriteLine();
        screen.Write(new Text("The best chain from the stock\n", new Style(decoration: Decoration.Bold)));
        if (!best.Found)
        {
            Line(screen, best.Missing!.Words);
        }
        else
        {
            Line(screen, string.Join("  ", best.Parts.Select((p, k) => $"R{k} {p.Words}")) + " ohm");
            Line(screen, Proof(chain));
        }

        if (chain.Used is { } used)
        {
            Line(screen, Against(chain, used));
        }

        var offers = new Cells("could be taken", ">worst error", ">switches", ">parts", ">most load", "ohm");
        foreach (var o in chain.Offers)
        {
            var found = o.Choice.Found;
            offers.Row(
                Cells.Of(o.Words + (o.IsUsed ? " (is used)" : "")),
                Cells.Of(Percent(found.WorstError) + (found.Proven ? "" : " ?")),
                Cells.Of(o.Choice.Switches, 0),
                Cells.Of(found.PartCount, 0),
                Cells.Of(Numbers.Percent(found.MostLoad)),
                Cells.Of(string.Join("  ", found.Parts.Select(p => p.Words)))
            );
        }

        offers.On(screen, "The trade-off (? = not proven best of its kind)");
    }

    private static string Proof(ChainAnswer chain)
    {
        var best = chain.Best;
        var cases = best.CasesClosed.ToString("#,##0", CultureInfo.InvariantCulture);
        return best.Proven
            ? $"worst error {Percent(best.WorstError)} with all tolerances against it; proven: none is better ({cases} cases)"
            : $"worst error {Percent(best.WorstError)} with all tolerances against it; not proven: {Percent(best.Gap)} could still be gained "
                + $"({cases} cases{(chain.ToTheEnd ? "" : "; --prove goes on to the end")})";
    }

    private static string Against(ChainAnswer chain, UsedChain used)
    {
        var name = used.IsGiven ? "the chosen chain" : "the chain that is computed with";
        return used.Breaks.Length > 0 ? $"{name} is outside of the limits: {used.Breaks}"
            : !chain.Best.Found ? $"{name}: worst error {Percent(used.Does.WorstError)}"
            : $"{name}: worst error {Percent(used.Does.WorstError)} against {Percent(chain.Best.WorstError)}";
    }

    private static string Percent(double share) => Numbers.Percent(share, 2);

    private static void Line(IAnsiConsole screen, string text) => screen.WriteLine("  " + Words.Plain(text));
}
