using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Steps.Ways;

namespace Lampwright.Files.Json;

/// <summary>What each way of dimming would do.</summary>
internal static class WaysJson
{
    public static void Write(JsonOut json, WayAnswer answer)
    {
        var way = answer.Way;
        json.Text("kind", Spoken.Of(way.Kind));
        json.Text("name", way.Name);
        json.Flag("chosen", answer.IsChosen);
        json.Text("verdict", Spoken.Of(way.Verdict));
        json.Text("reason", way.Reason);
        json.Text("regulates", Spoken.Of(way.Regulates));
        json.Text("blinks", Spoken.Of(way.Blinks));
        json.Text("hiccups", Spoken.Of(way.Hiccups));
        Extent(json, "hiccupHz", way.HiccupHz);
        Range(json, "range", answer.LeastShare, answer.MostShare);
        Range(json, "currentA", answer.LeastA, answer.MostA);
        json.Predicted("efficiencyAtHalf", answer.EfficiencyAtHalf);
        json.Predicted("heatAtHalfW", answer.HeatAtHalfW);
        json.Predicted("addedHeatAtHalfW", answer.AddedHeatAtHalfW);
        json.Texts("stresses", way.Stresses);
        json.Flag("opensDriver", way.OpensDriver);
        json.Texts("safety", way.Safety);
        json.Texts("stops", way.Stops);
        json.Array(
            "crossings",
            way.Picture.Crossings,
            c =>
            {
                json.Plain("voltageV", c.VoltageV);
                json.Plain("currentA", c.CurrentA);
                json.Flag("stable", c.Stable);
                json.Text("words", c.Words);
            }
        );
    }

    private static void Extent(JsonOut json, string name, Extent? extent)
    {
        if (extent is not { } e)
        {
            json.Null(name);
            return;
        }

        json.Object(
            name,
            () =>
            {
                json.Plain("least", e.Least);
                json.Plain("most", e.Most);
            }
        );
    }

    private static void Range(JsonOut json, string name, Predicted? least, Predicted? most)
    {
        if (least is null || most is null)
        {
            json.Null(name);
            return;
        }

        json.Object(
            name,
            () =>
            {
                json.Predicted("least", least);
                json.Predicted("most", most);
            }
        );
    }
}
