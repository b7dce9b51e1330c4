using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Coupling;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Evaluation.Chains;

/// <summary>The best chain and its runners-up, each with what sets it apart.</summary>
internal static class ChainOffers
{
    private static readonly double HardlyWorse = 0.02;

    // A fine series gains little from pairs, and its pairs are tens of thousands: too many to look at while somebody types.
    private static readonly int MostJoined = 100;

    /// <summary>The offers, the least error first.</summary>
    /// <param name="asked">What was asked.</param>
    /// <param name="best">What the search itself came to; it stays in the list whatever beats it.</param>
    /// <param name="used">The light's own chain.</param>
    /// <param name="toTheEnd">Whether each runner-up is searched for as long as the trade-off allows; else the live budget ends it.</param>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="stop">Ends the search with what there is.</param>
    public static IReadOnlyList<ChainOffer> Of(
        ChainSearchSpec asked,
        ChainSearchResult best,
        UsedChain? used,
        bool toTheEnd,
        IProgress<ChainProgress>? progress,
        CancellationToken stop
    )
    {
        var choices = ChainTradeOff
            .Of(
                asked with
                {
                    Joined = asked.Stock.Count <= MostJoined,
                    MostBoxes = toTheEnd ? asked.MostBoxes : FirstSearch.LiveBoxes,
                },
                stop,
                progress
            )
            .ToList();
        if (best.Found)
        {
            choices.RemoveAll(c => Same(c.Found, best));
            choices.Insert(0, new(best, asked.Switches, 1, false));
        }

        return
        [
            .. choices
                .Where(c => ReferenceEquals(c.Found, best) || !choices.Exists(o => o != c && IsHardlyWorse(o, c)))
                .OrderBy(c => c.Found.WorstError)
                .Select(c => new ChainOffer(
                    c,
                    Rise(asked, c),
                    Words(asked, c, best),
                    used is not null && Same(c.Found, used.Does)
                )),
        ];
    }

    // Nobody solders more parts for less than a fiftieth of the error.
    private static bool IsHardlyWorse(ChainChoice simpler, ChainChoice other) =>
        simpler.Found.WorstError <= other.Found.WorstError * (1 + HardlyWorse)
        && simpler.Found.PartCount < other.Found.PartCount
        && simpler.Switches <= other.Switches
        && Math.Ceiling(simpler.Found.MostLoad * 20) <= Math.Ceiling(other.Found.MostLoad * 20);

    private static bool Same(ChainSearchResult a, ChainSearchResult b) =>
        a.Parts.Count == b.Parts.Count && a.Ohms.Order().Zip(b.Ohms.Order()).All(p => Near(p.First, p.Second));

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-4 * b;

    private static double Rise(ChainSearchSpec asked, ChainChoice choice)
    {
        var spec = asked with { Switches = choice.Switches };
        return choice
            .Found.Parts.Select(
                (p, k) =>
                {
                    var watts = ChainCheck.PowerW(spec, choice.Found.Parts, k);
                    var first = watts * p.FirstShare * p.First.RisePerWattK;
                    var second = p.Second is { } other ? watts * (1 - p.FirstShare) * other.RisePerWattK : 0;
                    return Math.Max(first, second);
                }
            )
            .Max();
    }

    private static string Words(ChainSearchSpec asked, ChainChoice choice, ChainSearchResult best)
    {
        if (ReferenceEquals(choice.Found, best))
        {
            return "the best with one part in each position";
        }

        var words = new List<string>();
        if (choice.Switches < asked.Switches)
        {
            words.Add(
                choice.Switches == asked.Switches - 1
                    ? "one switch less"
                    : string.Create(CultureInfo.InvariantCulture, $"{asked.Switches - choice.Switches} switches less")
            );
        }

        if (choice.Found.Parts.Any(p => p.Second is not null))
        {
            words.Add("two parts in a position");
        }

        if (choice.LoadLimit < 1)
        {
            words.Add(
                string.Create(CultureInfo.InvariantCulture, $"each part at most {choice.LoadLimit * 100:0} % loaded")
            );
        }

        return words.Count > 0 ? string.Join(", ", words) : "one part in each position";
    }
}
