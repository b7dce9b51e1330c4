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
        json.ObjectOrNull("air", heat.Air.Value, a => Air(json, a));
        json.ObjectOrNull("box", heat.Box, b => BoxJson.Write(json, b));
        json.ObjectOrNull("advice", heat.Advice.Value, a => Advice(json, a));
    }

    private static void Advice(JsonOut json, HeatAdvice advice)
    {
        json.Array(
            "limits",
            advice.Limits,
            l =>
            {
                json.Text("what", l.What);
                json.Text("scene", l.Scene);
                json.Text("path", l.Path);
                json.Plain("valueC", l.ValueC);
                json.Plain("limitC", l.LimitC);
                json.Plain("marginK", l.MarginK);
            }
        );
        json.Array(
            "helps",
            advice.Helps,
            h =>
            {
                json.Text("path", h.Path);
                json.Text("step", h.Step);
                json.Plain("limitK", h.LimitK);
                json.Plain("junctionK", h.JunctionK);
                json.Plain("skinK", h.SkinK);
                json.Plain("massKg", h.MassKg);
                json.Plain("noiseDb", h.NoiseDb);
                json.Plain("lightStops", h.LightStops);
                json.Text("cost", h.Cost);
            }
        );
    }

    private static void Air(JsonOut json, AirAnswer air)
    {
        json.Array(
            "losses",
            air.Losses,
            l =>
            {
                json.Text("path", l.Path);
                json.Predicted("pressurePa", l.PressurePa);
            }
        );
        json.Plain("runsAtV", air.RunsAtV);
        json.Plain("floorV", air.FloorV);
        json.Array(
            "fanSteps",
            air.FanSteps,
            f =>
            {
                json.Text("switches", f.Switches);
                json.Predicted("leastV", f.LeastV);
                json.Flag("isSafe", f.IsSafe);
                json.Predicted("noiseDb", f.NoiseDb);
            }
        );
        json.ObjectOrNull("opening", air.Opening, o => Opening(json, o));
    }

    private static void Opening(JsonOut json, OpeningForTemperature opening)
    {
        json.Plain("wantedC", opening.WantedC);
        json.Predicted("times", opening.Times);
        json.Flag("isReached", opening.IsReached);
        json.Predicted("baseC", opening.BaseC);
        json.Array(
            "openings",
            opening.Openings,
            o =>
            {
                json.Text("path", o.Path);
                json.Plain("openCm2", o.OpenCm2);
                json.Predicted("wantedCm2", o.WantedCm2);
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
