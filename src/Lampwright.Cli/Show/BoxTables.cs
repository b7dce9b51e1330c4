using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
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
                    Cells.Of(HeatText.Plain(n.Name)),
                    Cells.Of(n.TemperatureC, 0),
                    Cells.Side(n.LimitC is { } limit ? Numbers.Fixed(limit, 0) : "–"),
                    Cells.Side(HeatText.Touch(n.TouchS))
                );
            }

            skins.On(
                screen,
                $"Hottest skins, {scene.Name}, air {Numbers.Fixed(scene.AmbientC, 0)} °C, brightest position"
            );
        }

        screen.WriteLine(
            $"Warm to nine tenths after {HeatText.Time(box.WarmUp.To90S.Value)}; cool again after {HeatText.Time(box.CoolDown.To90S.Value)}."
        );
        CutOut(screen, box);

        if (box.RoomLimits.Count > 0)
        {
            var rooms = new Cells("switches", ">room °C", "limited by");
            foreach (var room in box.RoomLimits)
            {
                rooms.Row(Cells.Of(room.Switches), Cells.Of(room.AmbientC, 0), Cells.Side(HeatText.Plain(room.What)));
            }

            rooms.On(screen, "Hottest room in which each position may burn for ever");
        }

        if (box.Duty is { OnS: { } on, OffS: { } off })
        {
            screen.WriteLine(
                $"At {Numbers.Fixed(box.Duty.AmbientC, 0)} °C: {HeatText.Time(on)} on, {HeatText.Time(off)} off ({box.Duty.What})."
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

    private static void CutOut(IAnsiConsole screen, BoxAnswer box)
    {
        if (box.FanStop is not null)
        {
            screen.WriteLine(HeatText.Stopped(box, TemperatureUnit.Celsius));
            if (HeatText.Advised(box) is { SettingC: { } setting } best)
            {
                screen.WriteLine(
                    $"Thermal cut-out: {Numbers.Fixed(setting, 0)} °C {HeatText.Tolerance(TemperatureUnit.Celsius)} on the {HeatText.Plain(best.Place)}. {HeatText.Why(best, TemperatureUnit.Celsius)}"
                );
            }
            else
            {
                screen.WriteLine(HeatText.NoSetting);
            }

            screen.WriteLine(HeatText.WhereItSwitches);
        }

        foreach (var p in box.Played)
        {
            screen.WriteLine(
                $"Cut-out {p.Name}, {HeatText.Plain(p.Place)}, {Numbers.Fixed(p.OpensC, 0)} °C: {p.Verdict}."
            );
        }
    }
}
