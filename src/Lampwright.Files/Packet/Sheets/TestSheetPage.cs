using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The sheet for the bench: what each switch position should show, and room to write what it shows.</summary>
internal static class TestSheetPage
{
    private static readonly string[] order =
    [
        "Plug out: measure the sense path at the driver's pads in every position, and write the milliohms down.",
        "Plug out: earth continuity from the plug to every metal part; no continuity from sense wires to earth.",
        "Dimmest position first, any fan running, a thermometer on the sink. Then one position brighter at a time.",
        "Brightest position for an hour: note the sink every ten minutes. Past its number and still rising: switch off.",
        "Copy the figures into the readings file; the light is then computed from what it really does.",
    ];

    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Steps is not { Combinations.Count: > 0 } steps)
        {
            return;
        }

        var flow = new Flow(book, new("Test sheet")).Begun();
        flow.Title("Test sheet", "print: what to expect; box: what it shows");
        for (var i = 0; i < order.Length; i++)
        {
            flow.Paragraph($"{(char)('1' + i)}  {order[i]}", 2.7);
        }

        flow.Skip(2);
        Positions(flow, steps);
        Temperatures(flow, book, steps);
    }

    private static void Positions(Flow flow, StepsAnswer steps)
    {
        var first = Math.Max(14, 3 + (steps.Combinations[0].Switches.Length * 2.3));
        var each = (flow.Width - first) / 8;
        var (wide, box) = (each * 1.12, each * 0.88);
        var table = new Table(
            [
                new("switches", "", first),
                new("path", "mΩ", wide, wide * 0.44),
                new("", "", box),
                new("current", "A", wide, wide * 0.44),
                new("", "", box),
                new("voltage", "V", wide, wide * 0.44),
                new("", "", box),
                new("subject", "lx", wide, wide * 0.48),
                new("", "", box),
            ],
            steps.Combinations.Count > 16 ? 6 : 7.4,
            3
        );
        var lux = ChartText.DecimalsFor(steps.Combinations.Max(c => c.LuxAtSubject.Value));
        table.Draw(
            flow,
            [
                .. steps.Combinations.Select(c =>
                    (IReadOnlyList<Cell>)
                        [
                            new(c.Switches, Weight: Weight.SemiBold),
                            Cell.Of(c.ResistanceOhm.In(1000), 0),
                            "",
                            Cell.Of(c.CurrentA, 2),
                            "",
                            Cell.Of(c.VoltageV, 1),
                            "",
                            Cell.Of(c.LuxAtSubject, lux),
                            "",
                        ]
                ),
            ],
            (ink, _, left, y) =>
            {
                for (var i = 0; i < 4; i++)
                {
                    var x = left + first + (i * (wide + box)) + wide;
                    ink.Box(x, y - (table.RowHeight / 2) - 0.2, box - 2, table.RowHeight - 1.6, new(Palette.Ink, 0.18));
                }
            }
        );
    }

    private static void Temperatures(Flow flow, PacketBook book, StepsAnswer steps)
    {
        if (book.Evaluation.Heat is not { Scenes.Count: > 0 } heat)
        {
            return;
        }

        var brightest = steps.Combinations[0].Switches;
        var rows = new List<IReadOnlyList<Cell>>();
        foreach (var scene in heat.TellingScenes)
        {
            if (scene.Points.FirstOrDefault(p => p.Switches == brightest) is not { } point)
            {
                continue;
            }

            Cell Degrees(Predicted p) => book.Units.Degrees(p);
            rows.Add([
                ((Cell)scene.Name).Strong,
                Degrees(scene.AmbientC),
                Degrees(point.SinkC),
                Degrees(point.DriverC),
                Degrees(point.FrontC),
                Degrees(point.JunctionC),
            ]);
        }

        var unit = book.Units.Temperature.Sign;
        flow.Head($"Temperatures at {brightest}, after they have settled");
        var table = new Table(
            [
                new("scene", "", 28),
                new("air", unit, 26, 11),
                new("sink", unit, 29, 11),
                new("driver", unit, 29, 11),
                new("front", unit, 29, 11),
                new("junction", unit, 29, 14),
            ],
            6.4,
            3.1
        );
        table.Draw(flow, rows);
        flow.Need(18);
        flow.Skip(2);
        flow.Ink.Text("sink, minutes after switching on", flow.Left, flow.Y + 2, new(2.5, Palette.Soft));
        flow.Skip(4);
        var width = flow.Width / 8;
        for (var i = 0; i < 8; i++)
        {
            var minutes =
                i == 0 ? "0"
                : i == 7 ? "steady"
                : ChartText.Fixed(i * 10, 0);
            flow.Ink.Box(flow.Left + (i * width), flow.Y, width - 2, 7, new(Palette.Ink, 0.18));
            flow.Ink.Text(minutes, flow.Left + (i * width) + 1, flow.Y + 2.6, new(2, Palette.Soft));
        }

        flow.Skip(9);
    }
}
