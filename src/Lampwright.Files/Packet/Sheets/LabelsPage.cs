using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>Labels at full size, to cut out and stick on: what the switches do, and what the light is fed with.</summary>
internal static class LabelsPage
{
    private static readonly Stroke cut = new(Palette.Soft, 0.18, [2, 1.2]);

    // A label that is read at arm's length holds no more rows than this.
    private const int MostRows = 16;

    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Steps is not { Combinations.Count: > 0 } steps)
        {
            return;
        }

        var flow = new Flow(book, new("Labels", Scale: "1:1")).Begun();
        flow.Title("Labels", "full size; cut along the dashes");
        Steps(flow, steps);
        Rating(flow, book, steps);
    }

    // What is wanted stands on the plate; every other position is on the test sheet.
    private static void Steps(Flow flow, StepsAnswer steps)
    {
        var wanted = steps.Combinations.Where(c => steps.Recommended.Contains(c.Switches)).ToList();
        var rows = (wanted.Count > 0 ? wanted : steps.Combinations)
            .OrderByDescending(c => c.LuxAtSubject.Value)
            .ThenByDescending(c => c.CurrentA.Value)
            .Take(MostRows)
            .ToList();
        var pips = Math.Max(rows[0].Switches.Length * 3.4, 12);
        var (width, height, step) = (79 + pips, 12 + (rows.Count * 5.2), 5.2);
        flow.Need(height);
        var (x, y) = (flow.Left, flow.Y);
        flow.Ink.Path([(x, y), (x + width, y), (x + width, y + height), (x, y + height)], true, cut);
        var head = new TextStyle(2.5, Palette.Soft);
        flow.Ink.Text("toggles", x + 4, y + 6, head);
        double[] ends = [18, 31, 45, 57, 74];
        string[] heads = ["%", "stops", "A", "f/", "lx"];
        for (var k = 0; k < heads.Length; k++)
        {
            flow.Ink.Text(heads[k], x + pips + ends[k], y + 6, head with { Anchor = Anchor.End });
        }

        flow.Ink.Line(x + 4, y + 7.6, x + width - 4, y + 7.6, new(Palette.Ink, 0.25));
        for (var i = 0; i < rows.Count; i++)
        {
            var (foot, c) = (y + 12 + (i * step), rows[i]);
            CoverPage.Pips(flow.Ink, c.Switches, x + 4, foot);
            var style = new TextStyle(3.3, Palette.Ink, Anchor.End, Weight.Medium);
            string[] texts =
            [
                ChartText.Number(c.Share * 100, 2),
                ChartText.Fixed(c.Stops.Value, 1),
                ChartText.Fixed(c.CurrentA.Value, 2),
                ChartText.Fixed(c.Aperture.Value, 1),
                ChartText.Rounded(c.LuxAtSubject),
            ];
            for (var k = 0; k < texts.Length; k++)
            {
                flow.Ink.Text(texts[k], x + pips + ends[k], foot, style);
            }
        }

        flow.Skip(height + 2);
        var rest = steps.Combinations.Count - rows.Count;
        flow.Paragraph(
            Closed(steps.Arrangement) + (rest > 0 ? " All other positions are on the test sheet." : ""),
            2.4,
            Palette.Soft
        );
        flow.Skip(6);
    }

    private static string Closed(string arrangement) =>
        arrangement switch
        {
            "parallel branches" => "Black: closed, the toggle that puts its resistor beside the fixed one.",
            "selector" => "Black: the position that is chosen.",
            _ => "Black: closed, the toggle that by-passes its resistor.",
        };

    private static void Rating(Flow flow, PacketBook book, StepsAnswer steps)
    {
        var lines = new List<string>();
        if (book.Design.Place.Supply is { } supply)
        {
            var kind = supply.Kind == SupplyKind.Dc ? "⎓" : "~";
            kind = Typeface.Has(kind) ? kind : "DC";
            var hertz = supply.Frequency is { } f
                ? string.Create(CultureInfo.InvariantCulture, $"  {f.Nominal:0} Hz")
                : "";
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{supply.Voltage.Nominal:0.#} V {kind}{hertz}"));
        }

        var most = steps.Combinations.Max(c => c.InputW.High);
        lines.Add(
            $"at most {ChartText.Number(Math.Ceiling(most), 2)} W{(book.Design.Fans.Count > 0 ? " without the fan" : "")}"
        );
        lines.Add("Hot in use. Do not look into the light. Pull the plug before opening.");
        const double width = 86;
        var height = 13 + (5 * lines.Count);
        flow.Need(height);
        var (x, y) = (flow.Left, flow.Y);
        flow.Ink.Path([(x, y), (x + width, y), (x + width, y + height), (x, y + height)], true, cut);
        flow.Ink.Text(
            Texts.Fitting(PaperInk.Readable(book.Evaluation.Title), width - 8, 4, Weight.SemiBold),
            x + 4,
            y + 7,
            new(4, Palette.Ink, Weight: Weight.SemiBold)
        );
        for (var i = 0; i < lines.Count; i++)
        {
            flow.Ink.Text(Texts.Fitting(lines[i], width - 8, 2.5), x + 4, y + 13 + (5 * i), new(2.5, Palette.Ink));
        }

        flow.Ink.Text($"state {book.State}", x + width - 4, y + 13, new(2, Palette.Soft, Anchor.End));
        flow.Skip(height + 4);
    }
}
