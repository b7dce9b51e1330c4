using Lampwright.Evaluation.Answers;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Files.Json;

/// <summary>The best chain from the stock, its runners-up and the light's own chain beside it.</summary>
internal static class ChainJson
{
    private const string Corner = "a limit over all tolerances at once, no percentile";
    private const string Nominal = "of the nominal light; the range stands beside it";
    private const string Bought = "nominal value of the part that is bought";

    /// <summary>Numbers that stand without a band, each with its reason.</summary>
    public static IReadOnlyDictionary<string, string> PlainNumbers { get; } =
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["steps.chain.worstError"] = Corner,
            ["steps.chain.nominalError"] = Nominal,
            ["steps.chain.bound"] = Corner,
            ["steps.chain.gap"] = Corner,
            ["steps.chain.cases"] = "a count",
            ["steps.chain.mostLoad"] = Corner,
            ["steps.chain.positions[].ohm"] = Bought,
            ["steps.chain.positions[].parts[].ohm"] = Bought,
            ["steps.chain.positions[].parts[].tolerance"] = "as given",
            ["steps.chain.positions[].parts[].allowedW"] = "rating of the part in the hottest air of the box",
            ["steps.chain.wanted[].wantedA"] = Nominal,
            ["steps.chain.wanted[].currentA"] = Nominal,
            ["steps.chain.wanted[].leastA"] = Corner,
            ["steps.chain.wanted[].mostA"] = Corner,
            ["steps.chain.wanted[].worstError"] = Corner,
            ["steps.chain.missing.ohm"] = Bought,
            ["steps.chain.missing.allowedW"] = "rating that a part would need",
            ["steps.chain.missing.error"] = Corner,
            ["steps.chain.offers[].worstError"] = Corner,
            ["steps.chain.offers[].bound"] = Corner,
            ["steps.chain.offers[].switches"] = "a count",
            ["steps.chain.offers[].parts"] = "a count",
            ["steps.chain.offers[].mostLoad"] = Corner,
            ["steps.chain.offers[].hottestRiseK"] = Corner,
            ["steps.chain.offers[].ohm[]"] = Bought,
            ["steps.chain.used.worstError"] = Corner,
            ["steps.chain.used.nominalError"] = Nominal,
            ["steps.chain.used.overBest"] = Corner,
        };

    public static void Write(JsonOut json, ChainAnswer chain)
    {
        var best = chain.Best;
        json.Text("objective", Spoken.Of(chain.Asked.Objective));
        json.Flag("found", best.Found);
        json.Flag("proven", best.Proven);
        json.Flag("toTheEnd", chain.ToTheEnd);
        json.Plain("worstError", best.WorstError);
        json.Plain("nominalError", best.NominalError);
        json.Plain("bound", best.Found ? best.Bound : null);
        json.Plain("gap", best.Found ? best.Gap : null);
        json.Plain("cases", best.CasesClosed);
        json.Plain("mostLoad", best.Found ? best.MostLoad : null);
        json.Array("positions", best.Parts.Select((p, k) => (p, k)), p => Position(json, p.p, p.k));
        json.Array("wanted", chain.Gives(best), w => Wanted(json, w.Wanted, w.Gives));
        Missing(json, best.Missing ?? chain.Better);
        json.Array("offers", chain.Offers, o => Offer(json, o));
        if (chain.Used is not { } used)
        {
            json.Null("used");
            return;
        }

        json.Object(
            "used",
            () =>
            {
                json.Flag("given", used.IsGiven);
                json.Plain("worstError", used.Does.WorstError);
                json.Plain("nominalError", used.Does.NominalError);
                json.Plain("overBest", best.Found ? used.Does.WorstError - best.WorstError : null);
                json.Text("breaks", used.Breaks);
            }
        );
    }

    private static void Position(JsonOut json, PositionParts position, int k)
    {
        json.Text("name", $"R{k}");
        json.Plain("ohm", position.Ohm);
        json.Text("joined", Spoken.Of(position.Joint));
        json.Array(
            "parts",
            position.Second is { } second ? new[] { position.First, second } : [position.First],
            p =>
            {
                json.Plain("ohm", p.Ohm);
                json.Plain("tolerance", p.Tolerance);
                json.Plain("allowedW", p.AllowedW);
            }
        );
    }

    private static void Wanted(JsonOut json, string wanted, WantedStep step)
    {
        json.Text("wanted", wanted);
        json.Plain("wantedA", step.WantedA);
        json.Text("switches", step.Switches);
        json.Plain("currentA", step.CurrentA);
        json.Plain("leastA", step.LowA);
        json.Plain("mostA", step.HighA);
        json.Plain("worstError", step.WorstError);
    }

    private static void Missing(JsonOut json, ChainMissing? missing)
    {
        if (missing is null)
        {
            json.Null("missing");
            return;
        }

        json.Object(
            "missing",
            () =>
            {
                json.Text("position", missing.Position is { } k ? $"R{k}" : null);
                json.Plain("ohm", missing.Ohm);
                json.Plain("allowedW", missing.AllowedW);
                json.Plain("error", missing.Error);
                json.Text("words", missing.Words);
            }
        );
    }

    private static void Offer(JsonOut json, ChainOffer offer)
    {
        var found = offer.Choice.Found;
        json.Text("words", offer.Words);
        json.Flag("used", offer.IsUsed);
        json.Plain("worstError", found.WorstError);
        json.Flag("proven", found.Proven);
        json.Plain("bound", found.Bound);
        json.Count("switches", offer.Choice.Switches);
        json.Count("parts", found.PartCount);
        json.Plain("mostLoad", found.MostLoad);
        json.Plain("hottestRiseK", offer.HottestRiseK);
        json.Plains("ohm", [.. found.Ohms]);
        json.Texts("values", found.Parts.Select(p => p.Words));
    }
}
