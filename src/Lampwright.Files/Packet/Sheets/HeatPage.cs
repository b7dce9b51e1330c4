using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The cut-out to fit and why, what happens when the fan stops, warming up and cooling down, the hottest skins.</summary>
internal static class HeatPage
{
    private const double ChartHeight = 46;
    private const int MostSkins = 6;

    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Heat?.Box is not { } box)
        {
            return;
        }

        var show = book.Design.Show;
        var unit = TemperatureUnit.Of(show);
        var flow = new Flow(book, new("Heat over time")).Begun();
        flow.Title("Heat over time", "cut-out, stopped fan, warming up, what a hand can touch");
        Advice(flow, box, unit);
        Chart?[] charts =
        [
            HeatCourseCharts.FanStop(box, show),
            HeatCourseCharts.WarmUp(box, show),
            HeatCourseCharts.CoolDown(box, show),
        ];
        foreach (var chart in charts.OfType<Chart>())
        {
            flow.Need(ChartHeight);
            ChartDrawing.Draw(chart, flow.Ink, flow.Left, flow.Y, flow.Width, ChartHeight, 2.7);
            flow.Skip(ChartHeight + 3);
        }

        Skins(flow, box, unit);
        flow.Skip(2);
        flow.Paragraph(HeatText.HowSure, 2.7);
    }

    private static void Advice(Flow flow, BoxAnswer box, TemperatureUnit unit)
    {
        if (box.FanStop is null)
        {
            flow.Paragraph("No fan runs in this light, so none can stop, and no cut-out is worked out.", 3);
            flow.Skip(2);
            return;
        }

        if (HeatText.Advised(box) is { SettingC: { } setting } best)
        {
            var number = $"{ChartText.Fixed(unit.From(setting), 0)} {unit.Sign}";
            flow.Skip(7.5);
            flow.Ink.Text(number, flow.Left, flow.Y, new(9, Palette.Heat, Weight: Weight.SemiBold));
            flow.Ink.Text(
                PaperInk.Readable(
                    $"{HeatText.Tolerance(unit)}, on the {HeatText.Plain(best.Place)}: setting of the thermal cut-out"
                ),
                flow.Left + Typeface.WidthOf(number, 9, Weight.SemiBold) + 4,
                flow.Y,
                new(3.6, Palette.Ink, Weight: Weight.Medium)
            );
            flow.Skip(3);
            flow.Paragraph(HeatText.Why(best, unit), 3);
        }
        else
        {
            flow.Paragraph(HeatText.NoSetting, 3.4, Palette.Stop, Weight.Medium);
        }

        flow.Paragraph(HeatText.WhereItSwitches, 3, Palette.Stop);
        flow.Skip(1);
        flow.Paragraph(HeatText.Stopped(box, unit), 3);
        flow.Skip(3);
    }

    private static void Skins(Flow flow, BoxAnswer box, TemperatureUnit unit)
    {
        var worst = box.Scenes[^1];
        var skins = worst
            .Nodes.Where(n => n.Kind == "skin")
            .OrderByDescending(n => n.TemperatureC.Value)
            .Take(MostSkins)
            .ToList();
        if (skins.Count == 0)
        {
            return;
        }

        flow.Head("Hottest skins", $"scene {worst.Name}, brightest position");
        new Table(
            [
                new("skin", "", 62),
                new("temperature", unit.Sign, 40, 22),
                new("limit", unit.Sign, 26, 14),
                new("may be touched for", "", 40),
            ],
            5.6,
            2.9
        ).Draw(
            flow,
            [
                .. skins.Select(n =>
                    (IReadOnlyList<Cell>)
                        [
                            HeatText.Plain(n.Name),
                            Cell.Of(unit.From(n.TemperatureC), 0),
                            n.LimitC is { } limit ? ChartText.Fixed(unit.From(limit), 0) : "–",
                            HeatText.Touch(n.TouchS),
                        ]
                ),
            ]
        );
    }
}
