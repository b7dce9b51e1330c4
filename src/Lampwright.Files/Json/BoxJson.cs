using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Json;

/// <summary>The box as a network, over time.</summary>
internal static class BoxJson
{
    public static void Write(JsonOut json, BoxAnswer box)
    {
        json.Array("scenes", box.Scenes, s => Scene(json, s));
        json.Array(
            "flows",
            box.Flows,
            f =>
            {
                json.Text("from", f.From);
                json.Text("to", f.To);
                json.Plain("heatW", f.HeatW);
            }
        );
        json.Object("warmUp", () => Curves(json, box.WarmUp));
        json.Object("coolDown", () => Curves(json, box.CoolDown));
        json.ObjectOrNull("fanStop", box.FanStop, s => FanStops(json, s));

        json.Array("cutOuts", box.CutOuts, c => Place(json, c));
        json.Array("played", box.Played, p => Played(json, p));
        json.Array(
            "roomLimits",
            box.RoomLimits,
            r =>
            {
                json.Text("switches", r.Switches);
                json.Predicted("ambientC", r.AmbientC);
                json.Text("what", r.What);
            }
        );
        json.Object(
            "duty",
            () =>
            {
                json.Plain("ambientC", box.Duty.AmbientC);
                json.Plain("share", box.Duty.Share);
                json.Plain("onS", box.Duty.OnS);
                json.Plain("offS", box.Duty.OffS);
                json.Text("what", box.Duty.What);
            }
        );
        json.ObjectOrNull("life", box.Life, l => Life(json, l));
    }

    private static void Scene(JsonOut json, BoxScene s)
    {
        json.Text("name", s.Name);
        json.Plain("ambientC", s.AmbientC);
        json.Array(
            "nodes",
            s.Nodes,
            n =>
            {
                json.Text("name", n.Name);
                json.Text("kind", n.Kind);
                json.Predicted("temperatureC", n.TemperatureC);
                json.Plain("limitC", n.LimitC);
                json.Plain("touchS", n.TouchS);
                json.Plain("burnS", n.BurnS);
            }
        );
    }

    private static void Curves(JsonOut json, HeatCurves curves)
    {
        json.Plains("timesS", [.. curves.TimesS]);
        json.Array(
            "lines",
            curves.Lines,
            l =>
            {
                json.Text("node", l.Node);
                json.Predicteds(
                    "temperatureC",
                    l.ValueC.Select((v, i) => new Evaluation.Predicted(v, l.LowC[i], l.HighC[i]))
                );
            }
        );
        json.Predicted("to90S", curves.To90S);
    }

    private static void FanStops(JsonOut json, FanStop stop)
    {
        json.Plain("ambientC", stop.AmbientC);
        json.Object("curves", () => Curves(json, stop.Curves));
        json.Predicted("junctionLimitS", stop.JunctionLimitS);
        json.Predicted("skinLimitS", stop.SkinLimitS);
        json.Text("skin", stop.Skin);
        json.Plain("lightLossStops", stop.LightLossStops);
        json.Flag("lossShows", stop.LossShows);
        json.Array(
            "events",
            stop.Events,
            e =>
            {
                json.Plain("timeS", e.TimeS);
                json.Text("what", e.What);
            }
        );
    }

    private static void Place(JsonOut json, CutOutPlace c)
    {
        json.Text("place", c.Place);
        json.Plain("normalC", c.NormalC);
        json.Plain("leastC", c.LeastC);
        json.Plain("mostC", c.MostC);
        json.Plain("settingC", c.SettingC);
        json.Plain("tripsAfterS", c.TripsAfterS);
        json.Plain("harmAfterS", c.HarmAfterS);
        json.Text("harm", c.Harm);
        json.Flag("best", c.Best);
    }

    private static void Played(JsonOut json, CutOutPlayed p)
    {
        json.Text("name", p.Name);
        json.Text("place", p.Place);
        json.Plain("opensC", p.OpensC);
        json.Plain("toleranceK", p.ToleranceK);
        json.Plain("normalC", p.NormalC);
        json.Plain("tripsAfterS", p.TripsAfterS);
        json.Plain("junctionAtTripC", p.JunctionAtTripC);
        json.Text("verdict", p.Verdict);
    }

    private static void Life(JsonOut json, LifeAnswer life)
    {
        json.Plain("caseC", life.CaseC);
        json.Plain("share", life.Share);
        json.Plain("hours", life.Hours);
        json.Plain("calculatedHours", life.CalculatedHours);
        json.Plain("capHours", life.CapHours);
        json.Flag("isCapped", life.IsCapped);
        json.Array(
            "curve",
            life.Curve,
            p =>
            {
                json.Plain("hours", p.Hours);
                json.Plain("share", p.Share);
            }
        );
        json.Text("why", life.Why);
    }
}
