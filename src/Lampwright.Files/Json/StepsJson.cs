using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Json;

/// <summary>The answer of the station steps.</summary>
internal static class StepsJson
{
    public static void Write(JsonOut json, StepsAnswer steps)
    {
        json.Text("arrangement", steps.Arrangement);
        json.Text("chosenBy", steps.ChosenBy);
        json.Predicted("senseThresholdV", steps.SenseThresholdV);
        json.Flag("thresholdIsPlausible", steps.ThresholdIsPlausible);
        json.Predicted("leadOhm", steps.LeadOhm);
        json.Array(
            "parts",
            steps.Parts,
            p =>
            {
                json.Text("name", p.Name);
                json.Plain("resistanceOhm", p.ResistanceOhm);
                json.Plain("ratingW", p.RatingW);
                json.Predicted("mostW", p.MostW);
                json.Predicted("deratedW", p.DeratedW);
                json.Predicted("hottestC", p.HottestC);
                json.Text("joined", p.Joined);
                json.Array(
                    "pair",
                    p.Pair,
                    one =>
                    {
                        json.Text("name", one.Name);
                        json.Plain("resistanceOhm", one.ResistanceOhm);
                        json.Plain("ratingW", one.RatingW);
                        json.Predicted("mostW", one.MostW);
                        json.Predicted("deratedW", one.DeratedW);
                        json.Predicted("hottestC", one.HottestC);
                    }
                );
            }
        );
        json.Array("combinations", steps.Combinations, c => Combination(json, c));
        json.Texts("recommended", steps.Recommended);
        json.Array("faults", steps.Faults, f => FaultsJson.Fault(json, f));
        FaultsJson.Build(json, steps.Build, steps.Fuse);
        json.Array(
            "targets",
            steps.Targets,
            t =>
            {
                json.Text("wanted", t.Wanted);
                json.Predicted("currentA", t.CurrentA);
                json.Text("switches", t.Switches);
                json.Predicted("errorStops", t.ErrorStops);
            }
        );
        Chain(json, steps.Chain);
    }

    private static void Chain(JsonOut json, ChainAnswer? chain)
    {
        if (chain is null)
        {
            json.Null("chain");
            return;
        }

        json.Object("chain", () => ChainJson.Write(json, chain));
    }

    private static void Combination(JsonOut json, Combination c)
    {
        json.Text("switches", c.Switches);
        json.Predicted("resistanceOhm", c.ResistanceOhm);
        json.Predicted("currentA", c.CurrentA);
        if (c.Corner is { } corner)
        {
            json.Plain("leastA", corner.LeastA);
            json.Plain("mostA", corner.MostA);
            json.Plain("chainLeastA", corner.ChainLeastA);
            json.Plain("chainMostA", corner.ChainMostA);
        }

        json.Predicted("voltageV", c.VoltageV);
        json.Predicted("emitterW", c.EmitterW);
        json.Predicted("fluxLm", c.FluxLm);
        json.Predicted("fluxOutLm", c.FluxOutLm);
        json.Predicted("luxAtSubject", c.LuxAtSubject);
        json.Predicted("stops", c.Stops);
        json.Predicted("ev", c.Ev);
        json.Predicted("aperture", c.Aperture);
        json.Predicted("junctionC", c.JunctionC);
        json.Predicted("junctionHotC", c.JunctionHotC);
        json.Predicted("junctionFanStoppedC", c.JunctionFanStoppedC);
        json.Predicted("driverLossW", c.DriverLossW);
        json.Predicted("inputW", c.InputW);
        json.Predicteds("resistorsW", c.ResistorsW);
        json.Predicted("currentMarginA", c.CurrentMarginA);
        json.Predicted("junctionMarginK", c.JunctionMarginK);
    }
}
