using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Charts;

/// <summary>Temperatures over time: warming up, cooling down, and after the fan stops.</summary>
public static class HeatCourseCharts
{
    private static readonly double MostS = 4 * 3600;

    /// <summary>From the cold light to a warm one; null where it is not known.</summary>
    /// <param name="box">The answer.</param>
    /// <param name="show">Unit of temperatures; null takes °C.</param>
    public static Chart? WarmUp(BoxAnswer? box, Show? show = null) =>
        box is null
            ? null
            : Of(
                "Warming up",
                box.WarmUp,
                Whole(box.WarmUp),
                [],
                Ninety(box.WarmUp),
                show,
                $"The base of the sink has made nine tenths of its rise after {HeatText.Time(box.WarmUp.To90S)}."
            );

    /// <summary>From the warm light to a cold one, all switched off; null where it is not known.</summary>
    /// <param name="box">The answer.</param>
    /// <param name="show">Unit of temperatures; null takes °C.</param>
    public static Chart? CoolDown(BoxAnswer? box, Show? show = null) =>
        box is null
            ? null
            : Of(
                "Cooling down",
                box.CoolDown,
                Whole(box.CoolDown),
                [],
                Ninety(box.CoolDown),
                show,
                $"Light and fan off; the base of the sink has lost nine tenths of its rise after {HeatText.Time(box.CoolDown.To90S)}."
            );

    /// <summary>After the fan stops at full light on the hottest day; null without a fan.</summary>
    /// <param name="box">The answer.</param>
    /// <param name="show">Unit of temperatures; null takes °C.</param>
    public static Chart? FanStop(BoxAnswer? box, Show? show = null)
    {
        if (box?.FanStop is not { } stop)
        {
            return null;
        }

        // What happens late, or not at all, leaves the first hour to be looked at.
        var last = stop.Events.Select(e => e.TimeS).DefaultIfEmpty(0).Max();
        var most = Math.Min(MostS, Math.Max(last * 1.25, Math.Min(Whole(stop.Curves), 3600)));
        var moments = stop
            .Events.Where(e => e.TimeS > 0)
            .GroupBy(e => e.What, StringComparer.Ordinal)
            .Select(g => (g.Min(e => e.TimeS), $"{HeatText.Time(g.Min(e => e.TimeS))}: {HeatText.Plain(g.Key)}"))
            .ToList();
        var junction = box.Scenes.SelectMany(s => s.Nodes).FirstOrDefault(n => n.Name == "junction")?.LimitC;
        return Of(
            "The fan stops",
            stop.Curves,
            most,
            junction is { } limit ? [("junction's limit", limit)] : [],
            moments,
            show,
            "At full light on the hottest day, with no cut-out; the ground round a curve is its band."
        );
    }

    /// <summary>The moment from which no curve is further than a thirtieth of its change from its end.</summary>
    private static double Whole(HeatCurves curves)
    {
        var last = 0.0;
        foreach (var line in curves.Lines.Where(l => Look(l.Node, curves) is not null))
        {
            var (from, to) = (line.ValueC[0], line.ValueC[^1]);
            for (var i = line.ValueC.Count - 1; i >= 0; i--)
            {
                if (Math.Abs(line.ValueC[i] - to) > Math.Abs(to - from) / 30)
                {
                    last = Math.Max(last, curves.TimesS[Math.Min(i + 1, curves.TimesS.Count - 1)]);
                    break;
                }
            }
        }

        return Math.Clamp(last, 300, MostS);
    }

    private static List<(double S, string Words)> Ninety(HeatCurves curves) =>
        curves.To90S.Value > 0 ? [(curves.To90S.Value, "nine tenths")] : [];

    private static Chart? Of(
        string title,
        HeatCurves curves,
        double mostS,
        IReadOnlyList<(string Name, double Celsius)> levels,
        List<(double S, string Words)> moments,
        Show? show,
        string says
    )
    {
        if (curves.TimesS.Count < 2 || curves.Lines.Count == 0)
        {
            return null;
        }

        var unit = TemperatureUnit.Of(show);
        var shown = Math.Min(mostS, curves.TimesS[^1]);
        var (name, scale) = shown > 2 * 3600 ? ("h", 3600.0) : ("min", 60.0);
        var layers = new List<ChartLayer>();
        foreach (var line in curves.Lines)
        {
            if (Look(line.Node, curves) is not { } look)
            {
                continue;
            }

            var points = Until(curves.TimesS, line, shown).Select(p => (p.S / scale, unit.From(p.Celsius))).ToList();
            layers.Add(new CourseLayer(HeatText.Plain(line.Node), look.Tint, points, look.Dashed));
        }

        layers.AddRange(
            levels.Select(l => new LevelLayer(
                $"{l.Name} {ChartText.Fixed(unit.From(l.Celsius), 0)} {unit.Sign}",
                Palette.Stop,
                unit.From(l.Celsius)
            ))
        );
        if (moments.Count > 0)
        {
            layers.Add(
                new MomentLayer(
                    "",
                    Palette.Soft,
                    [.. moments.OrderBy(m => m.S).Select(m => new Moment(m.S / scale, m.Words))]
                )
            );
        }

        return new(title, new("Time", name) { Least = 0, Most = shown / scale }, new("Temperature", unit.Sign), layers)
        {
            Says = says,
        };
    }

    /// <summary>The points up to a moment, and the moment itself.</summary>
    private static IEnumerable<(double S, Predicted Celsius)> Until(
        IReadOnlyList<double> times,
        HeatLine line,
        double most
    )
    {
        Predicted At(int i) => new(line.ValueC[i], line.LowC[i], line.HighC[i]);
        for (var i = 0; i < times.Count && times[i] <= most; i++)
        {
            yield return (times[i], At(i));
            if (i + 1 < times.Count && times[i] < most && times[i + 1] > most)
            {
                var share = (most - times[i]) / (times[i + 1] - times[i]);
                double Between(IReadOnlyList<double> v) => v[i] + (share * (v[i + 1] - v[i]));
                yield return (most, new(Between(line.ValueC), Between(line.LowC), Between(line.HighC)));
            }
        }
    }

    /// <summary>How a node is drawn; null for one that only the tables tell, so that five curves can be told apart.</summary>
    private static (Tint Tint, bool Dashed)? Look(string node, HeatCurves curves) =>
        node switch
        {
            "junction" => (Palette.Heat, false),
            "base" => (Palette.Ink, false),
            "driver" => (Palette.Flow, false),
            "diffuser" => (Palette.Light, true),
            "case" or "channel air" or "compartment air" or "reflector" => null,
            _ when curves.Lines.First(l => IsSkin(l.Node)).Node == node => (Palette.Hold, true),
            _ => null,
        };

    private static bool IsSkin(string node) =>
        node
            is not (
                "junction"
                or "base"
                or "driver"
                or "diffuser"
                or "case"
                or "channel air"
                or "compartment air"
                or "reflector"
            );
}
