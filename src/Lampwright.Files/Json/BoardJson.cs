using Lampwright.Evaluation.Answers;
using Lampwright.Steps;

namespace Lampwright.Files.Json;

/// <summary>What the driver's board tells of its sense circuit.</summary>
internal static class BoardJson
{
    public static void Write(JsonOut json, BoardAnswer board)
    {
        var reading = board.Reading;
        json.Predicted("thresholdV", board.ThresholdV);
        json.Flag("plausible", reading.IsPlausible);
        json.Text("likelihood", Spoken.Of(reading.Threshold.Likelihood));
        json.Text("basis", Spoken.Of(reading.Threshold.Basis));
        json.Text("reason", reading.Threshold.Reason);
        json.Plain("parallelOhm", reading.ParallelOhm);
        json.Array("marks", reading.Threshold.Marks, m => Mark(json, m));
        json.Text("control", Spoken.Of(reading.Law?.Control ?? SenseControl.Unknown));
        json.Text("law", reading.Law?.Words);
        json.Plain("leastCurrentA", reading.Least.CurrentA);
        json.Text("leastCurrent", reading.Least.Words);
        json.Texts("stops", reading.Stops);
        json.Array(
            "questions",
            reading.Questions,
            q =>
            {
                json.Text("key", q.Key);
                json.Text("ask", q.Ask);
                json.Text("why", q.Why);
                json.Text("howToFindOut", q.HowToFindOut);
                json.Flag("open", q.IsOpen);
                json.Text("stop", q.Stop.Length == 0 ? null : q.Stop);
            }
        );
    }

    private static void Mark(JsonOut json, Marking mark)
    {
        json.Text("text", mark.Text);
        json.Plain("ohm", mark.Ohm);
        json.Text("how", mark.How);
        json.Text("problem", mark.Problem.Length == 0 ? null : mark.Problem);
    }
}
