using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Json;

/// <summary>The answer of the station heat.</summary>
internal static class HeatJson
{
    public static void Write(JsonOut json, HeatAnswer heat)
    {
        json.Text("sinkFrom", heat.SinkFrom);
        json.Array(
            "scenes",
            heat.Scenes,
            s =>
            {
                json.Text("name", s.Name);
                json.Predicted("ambientC", s.AmbientC);
                json.Flag("fanRuns", s.FanRuns);
                json.Predicted("flowM3PerH", s.FlowM3PerH);
                json.Predicted("pressurePa", s.PressurePa);
                json.Predicted("sinkKPerW", s.SinkKPerW);
                json.Array("points", s.Points, p => Point(json, p));
            }
        );
        json.Array(
            "staircase",
            heat.Staircase,
            s =>
            {
                json.Text("from", s.From);
                json.Text("to", s.To);
                json.Predicted("dropK", s.DropK);
                json.Text("method", s.Method);
            }
        );
    }

    private static void Point(JsonOut json, HeatPoint p)
    {
        json.Text("switches", p.Switches);
        json.Predicted("heatW", p.HeatW);
        json.Predicted("junctionC", p.JunctionC);
        json.Predicted("caseC", p.CaseC);
        json.Predicted("sinkC", p.SinkC);
        json.Predicted("driverC", p.DriverC);
        json.Predicted("compartmentC", p.CompartmentC);
        json.Predicted("frontC", p.FrontC);
    }
}
