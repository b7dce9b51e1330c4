using Lampwright.Evaluation.Answers;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>Skins, what happens when the fan stops, cut-outs, hottest rooms: the short of the box.</summary>
internal static class BoxTables
{
    private static readonly int MostSkins = 6;

    /// <summary>Shows the box.</summary>
    public static void Show(IAnsiConsole screen, BoxAnswer box)
    {
        foreach (var scene in box.Scenes.Where(s => s.Name is "hot" or "fan stopped, hot"))
        {
            var skins = new Cells("skin", ">°C", ">limit °C", "may be touched for");
            foreach (
                var n in scene
                    .Nodes.Where(n => n.Kind == "skin")
                    .OrderByDescending(n => n.TemperatureC.Value)
                    .Take(MostSkins)
            )
            {
                skins.Row(
                    Cells.Of(n.Name),
                    Cells.Of(n.TemperatureC, 0),
                    Cells.Side(n.LimitC is { } limit ? Numbers.Fixed(limit, 0) : "–"),
                    Cells.Side(Contact(n.TouchS))
                );
            }

            skins.On(
                screen,
                $"Hottest skins, {scene.Name}, air {Numbers.Fixed(scene.AmbientC, 0)} °C, brightest position"
            );
        }

        screen.WriteLine(
            $"Warm to nine tenths after {Time(box.WarmUp.To90S.Value)}; cool again after {Time(box.CoolDown.To90S.Value)}."
        );
        if (box.FanStop is { } stop)
        {
            screen.WriteLine(
                $"Fan stops at full light and {Numbers.Fixed(stop.AmbientC, 0)} °C: "
                    + (
                        stop.JunctionLimitS is { } j
                            ? $"junction over its limit after {Time(j.Value)} ({Time(j.Low)} to {Time(j.High)}); "
                            : "the junction stays below its limit; "
                    )
                    + (
                        stop.SkinLimitS is { } s
                            ? $"{stop.Skin} too hot to touch after {Time(s.Value)}; "
                            : "no skin gets too hot; "
                    )
                    + $"light falls by {Numbers.Fixed(stop.LightLossStops, 2)} stops, which {(stop.LossShows ? "shows" : "nobody sees")}."
            );
        }

        if (box.CutOuts.FirstOrDefault(c => c.Best) is { SettingC: { } setting } best)
        {
            screen.WriteLine(
                $"Cut-out in the driver's input: {best.Place}, {Numbers.Fixed(setting, 0)} °C ± 5 K"
                    + (
                        best.MostC is { } most
                            ? $" (from {Numbers.Fixed(best.LeastC, 0)} to {Numbers.Fixed(most, 0)} °C would do)."
                            : " (nothing is harmed without one)."
                    )
            );
        }

        foreach (var p in box.Played)
        {
            screen.WriteLine($"Cut-out {p.Name}, {p.Place}, {Numbers.Fixed(p.OpensC, 0)} °C: {p.Verdict}.");
        }

        if (box.RoomLimits.Count > 0)
        {
            var full = box.RoomLimits[0];
            screen.WriteLine(
                $"Position {full.Switches} may burn for ever in a room up to {Numbers.Fixed(full.AmbientC.Value, 0)} °C ({full.What})."
            );
        }

        if (box.Duty is { OnS: { } on, OffS: { } off })
        {
            screen.WriteLine(
                $"At {Numbers.Fixed(box.Duty.AmbientC, 0)} °C: {Time(on)} on, {Time(off)} off ({box.Duty.What})."
            );
        }

        if (box.Life is { } life)
        {
            screen.WriteLine(
                life.Hours is { } hours
                    ? $"L70 {(life.IsCapped ? "above" : "about")} {Numbers.Fixed(hours, 0)} h by TM-21."
                    : $"Nothing is said of life: {life.Why}."
            );
        }
    }

    private static string Contact(double? seconds) =>
        seconds switch
        {
            null => "any time",
            0 => "not at all",
            { } s => Time(s),
        };

    private static string Time(double s) =>
        s < 120 ? $"{Numbers.Fixed(s, 0)} s"
        : s < 7200 ? $"{Numbers.Fixed(s / 60, 0)} min"
        : $"{Numbers.Fixed(s / 3600, 1)} h";
}
