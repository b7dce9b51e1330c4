using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The light cut open, coloured by temperature; what limits, what one step would do; least fan and hottest room of each position.</summary>
internal static class HeatLimitsPage
{
    private const double SectionHeight = 92;
    private const double TextSize = 2.7;
    private const int MostHelps = 6;
    private const int MostPositions = 16;

    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Heat is not { } heat)
        {
            return;
        }

        var (advice, section) = (heat.Advice.Value, heat.Section.Value);
        if (advice is null && section is null)
        {
            return;
        }

        var unit = TemperatureUnit.Of(book.Design.Show);
        var flow = new Flow(book, new("Heat")).Begun();
        flow.Title("Heat", "what limits, what helps, and where the heat is");
        if (advice is not null)
        {
            Headline(flow, advice, unit);
        }

        if (section is not null && heat.Box is { } box)
        {
            Sections(flow, book.Evaluation, section, box, unit);
        }

        if (advice is not null)
        {
            Limits(flow, advice, unit);
            Helps(flow, advice, unit);
        }

        Positions(flow, heat, unit);
    }

    private static void Headline(Flow flow, HeatAdvice advice, TemperatureUnit unit)
    {
        var near = advice.Nearest;
        var number = $"{ChartText.Fixed(near.MarginK * unit.Factor, 0)} {HeatText.Difference(unit)}";
        flow.Skip(7.5);
        flow.Ink.Text(
            number,
            flow.Left,
            flow.Y,
            new(9, near.MarginK < 0 ? Palette.Stop : Palette.Heat, Weight: Weight.SemiBold)
        );
        flow.Ink.Text(
            PaperInk.Readable(
                $"{(near.MarginK < 0 ? "over the limit" : "left")}: {near.What}, {HeatText.Left(near, unit)}, hottest day, brightest position"
            ),
            flow.Left + Typeface.WidthOf(number, 9, Weight.SemiBold) + 4,
            flow.Y,
            new(3.4, Palette.Ink, Weight: Weight.Medium)
        );
        flow.Skip(3);
        flow.Paragraph(HeatText.HelpsMost(advice, unit), 3);
        flow.Skip(3);
    }

    private static void Sections(
        Flow flow,
        LightEvaluation evaluation,
        SectionAnswer section,
        BoxAnswer box,
        TemperatureUnit unit
    )
    {
        if (evaluation.Steps?.Combinations.MaxBy(c => c.CurrentA.Value)?.Switches is not { } full)
        {
            return;
        }

        var scale = HeatScale.Of(box);
        string[] scenes = section.Scenes.Contains("fan stopped, hot") ? ["hot", "fan stopped, hot"] : ["hot"];
        foreach (var scene in scenes)
        {
            if (section.At(full, scene) is not { } temperatures)
            {
                continue;
            }

            var picture = new SectionPicture(section.Cuts[0], temperatures, scale, unit);
            var height = SectionDrawing.HeightFor(picture, flow.Width, SectionHeight, TextSize, false);
            flow.Need(height + 12);
            flow.Head(
                $"Cut {section.Cuts[0].Name}",
                $"{scene}, brightest; arrow: beam; dashed: beside the cut; red: over its limit"
            );
            SectionDrawing.Draw(picture, flow.Ink, flow.Left, flow.Y, flow.Width, height, TextSize);
            flow.Skip(height + 2);
        }
    }

    private static void Limits(Flow flow, HeatAdvice advice, TemperatureUnit unit)
    {
        flow.Head("What limits", $"scene {advice.Nearest.Scene}, brightest position, the nearest first");
        new Table(
            [
                new("what", "", 50),
                new("temperature", unit.Sign, 32),
                new("limit", unit.Sign, 32),
                new("left", HeatText.Difference(unit), 32),
            ],
            5.6,
            2.9
        ).Draw(
            flow,
            [
                .. advice.Limits.Select(l =>
                    (IReadOnlyList<Cell>)
                        [
                            l.What,
                            ChartText.Fixed(unit.From(l.ValueC), 0),
                            ChartText.Fixed(unit.From(l.LimitC), 0),
                            ChartText.Fixed(l.MarginK * unit.Factor, 0),
                        ]
                ),
            ]
        );
    }

    private static void Helps(Flow flow, HeatAdvice advice, TemperatureUnit unit)
    {
        if (advice.Helps.Count == 0)
        {
            return;
        }

        var kelvin = HeatText.Difference(unit);
        flow.Head("What one step would do", "the whole light solved again with each, at nominal values");
        new Table(
            [
                new("change", "", 82),
                new(advice.Nearest.What, kelvin, 17),
                new("junction", kelvin, 17),
                new("costs", "", 50),
            ],
            5.6,
            2.7
        ).Draw(
            flow,
            [
                .. advice
                    .Helps.Take(MostHelps)
                    .Select(h =>
                        (IReadOnlyList<Cell>)
                            [
                                $"{HeatText.Plain(h.Path)}: {h.Step}",
                                ChartText.Fixed(h.LimitK * unit.Factor, 1),
                                ChartText.Fixed(h.JunctionK * unit.Factor, 1),
                                HeatText.Costs(h),
                            ]
                    ),
            ]
        );
    }

    private static void Positions(Flow flow, HeatAnswer heat, TemperatureUnit unit)
    {
        var steps = heat.Air.Value?.FanSteps ?? [];
        var rooms = heat.Box?.RoomLimits ?? [];
        var positions = (rooms.Count > 0 ? rooms.Select(r => r.Switches) : steps.Select(s => s.Switches))
            .Take(MostPositions)
            .ToList();
        if (positions.Count == 0)
        {
            return;
        }

        flow.Head("Least fan, hottest room", "on the hottest day; for ever");
        new Table(
            [
                new("switches", "", 34),
                new("fan at least", "V", 36, 18),
                new("room at most", unit.Sign, 38, 20),
                new("limited by", "", 56),
            ],
            5.6,
            2.9
        ).Draw(
            flow,
            [
                .. positions.Select(p =>
                {
                    var step = steps.FirstOrDefault(s => s.Switches == p);
                    var room = rooms.FirstOrDefault(r => r.Switches == p);
                    return (IReadOnlyList<Cell>)
                        [
                            p,
                            step is null ? "–"
                            : step is { LeastV: { } unsure, IsSafe: false }
                                ? Cell.Of(unsure, 1) with
                                {
                                    Band = "not sure",
                                    Tint = Palette.Warn,
                                }
                            : step.LeastV is { } volts ? Cell.Of(volts, 1)
                            : "not held",
                            room is null ? "–" : Cell.Of(unit.From(room.AmbientC), 0),
                            room is null ? "" : HeatText.Plain(room.What),
                        ];
                }),
            ]
        );
    }
}
