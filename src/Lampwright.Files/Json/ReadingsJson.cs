using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Json;

/// <summary>The answer of the station readings.</summary>
internal static class ReadingsJson
{
    public static void Write(JsonOut json, ReadingsAnswer readings)
    {
        json.Array(
            "rows",
            readings.Rows,
            r =>
            {
                json.Plain("line", r.Line);
                json.Text("what", r.What);
                json.Text("switches", r.Switches);
                json.Text("place", r.Place);
                json.Text("unit", r.Unit);
                json.Plain("measured", r.Measured);
                json.Predicted("predicted", r.Predicted);
                json.Plain("difference", r.Difference);
                json.Plain("inBands", r.InBands);
            }
        );
        json.Array(
            "takeovers",
            readings.Takeovers,
            t =>
            {
                json.Text("path", t.Path);
                json.Text("label", t.Label);
                json.Text("text", t.Text);
                json.Text("because", t.Because);
            }
        );
    }
}
