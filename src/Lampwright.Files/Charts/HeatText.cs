using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Heat.Time;

namespace Lampwright.Files.Charts;

/// <summary>What is said of heat in time, the same on paper and on the page.</summary>
public static class HeatText
{
    // Less than this is nothing that anybody would notice, K.
    private static readonly double LeastK = 0.05;
    private static readonly double LeastKg = 5e-4;
    private static readonly double LeastDb = 0.05;
    private static readonly double LeastStops = 0.01;

    /// <summary>Where a cut-out belongs, and what it must never switch.</summary>
    public static string WhereItSwitches =>
        "It switches the driver's input and nothing else: never the emitter, never a sense line. "
        + "That side may be mains: it is built to the local code, by those who are licensed for it.";

    /// <summary>What is said where no place has a setting.</summary>
    public static string NoSetting =>
        "No place that was looked at has a setting for a cut-out that trips before harm and never in normal use. "
        + "A larger sink, less power or a fan whose stop is noticed otherwise is needed.";

    /// <summary>How far the bands of temperatures can be trusted, as measured (docs/heat.md, second truth).</summary>
    public static string HowSure =>
        "Bands are 5 to 95 % of the draws and hold less than that: of lights made by a second, independent model the band held 74 % at the sink's base, "
        + "70 % at the junction; 20 % of junctions were hotter than it says, with a stopped fan in a housing 30 %. Keep room to every limit and measure.";

    /// <summary>A time as people say it: <c>48 s</c>, <c>5.7 min</c>, <c>34 min</c>, <c>2.5 h</c>.</summary>
    /// <param name="seconds">The time, s.</param>
    public static string Time(double seconds) =>
        seconds < 120 ? $"{ChartText.Fixed(seconds, 0)} s"
        : seconds < 600 ? $"{ChartText.Fixed(seconds / 60, 1)} min"
        : seconds < 7200 ? $"{ChartText.Fixed(seconds / 60, 0)} min"
        : $"{ChartText.Fixed(seconds / 3600, 1)} h";

    /// <summary>A time with its band.</summary>
    /// <param name="seconds">The time, s.</param>
    public static string Time(Predicted seconds)
    {
        var (low, high) = (Time(seconds.Low), Time(seconds.High));
        return low == high ? Time(seconds.Value) : $"{Time(seconds.Value)} ({low} to {high})";
    }

    /// <summary>How long a skin may be touched.</summary>
    /// <param name="seconds">Longest contact, s; 0 for none, null for any.</param>
    public static string Touch(double? seconds) =>
        seconds switch
        {
            null => "any time",
            <= 0 => "not at all",
            { } s => Time(s),
        };

    /// <summary>The place of the cut-out to fit; null where none can be advised.</summary>
    /// <param name="box">The answer.</param>
    public static CutOutPlace? Advised(BoxAnswer box)
    {
        ArgumentNullException.ThrowIfNull(box);
        return box.CutOuts.FirstOrDefault(c => c is { Best: true, SettingC: not null });
    }

    /// <summary>Tolerance that the advice is made for, in °C or °F of the unit.</summary>
    /// <param name="unit">Unit of temperatures.</param>
    public static string Tolerance(TemperatureUnit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return $"± {ChartText.Fixed(CutOut.UsualToleranceK * unit.Factor, 0)} {(unit == TemperatureUnit.Celsius ? "K" : unit.Sign)}";
    }

    /// <summary>Why this setting at this place, in sentences.</summary>
    /// <param name="place">The place advised.</param>
    /// <param name="unit">Unit of temperatures.</param>
    public static string Why(CutOutPlace place, TemperatureUnit unit)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(unit);
        string T(double celsius) => $"{ChartText.Fixed(unit.From(celsius), 0)} {unit.Sign}";
        var normal =
            $"In normal use on the hottest day the place reaches {T(place.NormalC)} at most, so a setting of {T(place.LeastC)} or more never trips for nothing.";
        var harm = place.MostC is { } most
            ? $" Up to {T(most)} it trips before harm is done"
                + (
                    place is { HarmAfterS: { } after, TripsAfterS: { } trips }
                        ? $": with the fan stopped at full light it opens after {Time(trips)} at the latest, {place.Harm} would pass its limit after {Time(after)}, counted on the safe side."
                        : "."
                )
            : " With the fan stopped at full light nothing passes its limit, so none is needed.";
        return normal + harm;
    }

    /// <summary>What a stopped fan does, in a sentence; empty without a fan.</summary>
    /// <param name="box">The answer.</param>
    /// <param name="unit">Unit of temperatures.</param>
    public static string Stopped(BoxAnswer box, TemperatureUnit unit)
    {
        ArgumentNullException.ThrowIfNull(box);
        ArgumentNullException.ThrowIfNull(unit);
        if (box.FanStop is not { } stop)
        {
            return "";
        }

        var junction = stop.JunctionLimitS is { } j
            ? $"the junction passes its limit after {Time(j)}"
            : "the junction stays below its limit";
        var skin = stop.SkinLimitS is { } s
            ? $"{Plain(stop.Skin)} is too hot to touch after {Time(s)}"
            : "no skin gets too hot to touch that is not so already";
        return $"The fan stops at full light and {ChartText.Fixed(unit.From(stop.AmbientC), 0)} {unit.Sign}: {junction}; {skin}; "
            + $"light falls by {ChartText.Fixed(stop.LightLossStops, 2)} stops, which {(stop.LossShows ? "shows" : "nobody sees")}.";
    }

    /// <summary>The name of a node or part of one for reading.</summary>
    /// <param name="node">For example <c>tray.face</c>.</param>
    public static string Plain(string node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Replace('_', ' ').Replace(".", ", ", StringComparison.Ordinal);
    }

    /// <summary>The name of a node or thing as it stands beside a picture: <c>tray, fan end</c>, <c>fins of the sink</c>.</summary>
    /// <param name="id">For example <c>base</c>, <c>tray.fan_end</c>, <c>fan.main</c>.</param>
    public static string PlaceName(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return id switch
        {
            "base" => "base of the sink",
            "fins" => "fins",
            "case" => "case of the emitter",
            _ when id.StartsWith("fan.", StringComparison.Ordinal) => "fan",
            _ when id.StartsWith("driver.", StringComparison.Ordinal) => "driver",
            _ => Plain(id),
        };
    }

    /// <summary>A temperature that has a limit, in a sentence: what, how hot, what is left.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="unit">Unit of temperatures.</param>
    public static string Left(HeatLimit limit, TemperatureUnit unit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        ArgumentNullException.ThrowIfNull(unit);
        var at =
            $"{ChartText.Fixed(unit.From(limit.ValueC), 0)} of {ChartText.Fixed(unit.From(limit.LimitC), 0)} {unit.Sign}";
        var margin = $"{ChartText.Fixed(Math.Abs(limit.MarginK) * unit.Factor, 0)} {Difference(unit)}";
        return limit.MarginK < 0 ? $"{at}: {margin} too hot" : $"{at}: {margin} left";
    }

    /// <summary>Sign of a difference of temperatures.</summary>
    /// <param name="unit">Unit of temperatures.</param>
    public static string Difference(TemperatureUnit unit) => unit == TemperatureUnit.Celsius ? "K" : "°F";

    /// <summary>The change that helps most at the nearest limit, in a sentence; empty where none helps.</summary>
    /// <param name="advice">What limits and what helps.</param>
    /// <param name="unit">Unit of temperatures.</param>
    public static string HelpsMost(HeatAdvice advice, TemperatureUnit unit)
    {
        ArgumentNullException.ThrowIfNull(advice);
        ArgumentNullException.ThrowIfNull(unit);
        if (advice.Helps.FirstOrDefault() is not { } best || !(best.LimitK < -LeastK || best.JunctionK < -LeastK))
        {
            return "No single step at an input helps; the light wants less power, a larger sink or more room for the air.";
        }

        var (what, by) = best.LimitK < -LeastK ? (advice.Nearest.What, best.LimitK) : ("junction", best.JunctionK);
        return $"One step that helps most: {best.Step} ({Plain(best.Path)}). It makes the {what} {ChartText.Fixed(-by * unit.Factor, 1)} {Difference(unit)} cooler and costs {Costs(best)}.";
    }

    /// <summary>What a change costs, numbers first; what has a number is not named again without one.</summary>
    /// <param name="help">The change.</param>
    public static string Costs(HeatHelp help)
    {
        ArgumentNullException.ThrowIfNull(help);
        (string Of, string Text)[] numbers =
        [
            ("mass", help.MassKg >= LeastKg ? $"{ChartText.Fixed(help.MassKg * 1000, 0)} g of mass" : ""),
            ("noise", help.NoiseDb >= LeastDb ? $"{ChartText.Fixed(help.NoiseDb, 1)} dB of noise" : ""),
            ("light", help.LightStops <= -LeastStops ? $"{ChartText.Fixed(-help.LightStops, 2)} stops of light" : ""),
        ];
        var told = numbers.Where(n => n.Text.Length > 0).ToList();
        return string.Join(
            ", ",
            told.Select(n => n.Text).Concat(help.Cost.Split(", ").Where(word => told.All(n => n.Of != word)))
        );
    }
}
