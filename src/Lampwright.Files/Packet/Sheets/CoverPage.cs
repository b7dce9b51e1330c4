using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Findings;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The cover: what the light is, every switch position at a glance, what a foreman would say, what can hurt.</summary>
internal static class CoverPage
{
    // More positions than this go to the test sheet; the cover keeps the brightest.
    private const int MostRows = 16;

    public static void Draw(PacketBook book)
    {
        var flow = new Flow(book, new("Cover")).Begun();
        Title(flow, book);
        Stop(flow, book);
        Glance(flow, book);
        Worst(flow, book);
        CautionsOn(flow, book);
    }

    private static void Title(Flow flow, PacketBook book)
    {
        flow.Skip(9);
        flow.Ink.Text(
            Texts.Fitting(PaperInk.Readable(book.Evaluation.Title), flow.Width, 9, Weight.SemiBold),
            flow.Left,
            flow.Y,
            new(9, Palette.Ink, Weight: Weight.SemiBold)
        );
        flow.Skip(6);
        flow.Ink.Text(Texts.Fitting(Facts(book), flow.Width, 3.1), flow.Left, flow.Y, new(3.1, Palette.Soft));
        flow.Skip(4);
    }

    private static string Facts(PacketBook book)
    {
        var facts = new List<string>();
        if (book.Design.Subject is { } subject)
        {
            facts.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"subject at {subject.Distance.Nominal:0.##} m, ISO {subject.Iso:0}, {Shutter(subject.Shutter.Nominal)}"
                )
            );
        }

        if (book.Evaluation.FitUp is { } fit)
        {
            facts.Add($"{ChartText.Number(fit.TotalMassKg.Value, 2)} kg");
        }

        if (book.Evaluation.Metal is { Parts.Count: > 0 } metal)
        {
            facts.Add(string.Create(CultureInfo.InvariantCulture, $"{metal.Parts.Sum(p => p.Count)} folded parts"));
        }

        facts.Add(
            $"air {ChartText.Fixed(book.Units.Temperature.From(book.Design.Place.Ambient.Nominal - 273.15), 0)} to at most {ChartText.Fixed(book.Units.Temperature.From(book.Design.Place.AmbientMax.Nominal - 273.15), 0)} {book.Units.Temperature.Sign}"
        );
        return string.Join("  ·  ", facts);
    }

    private static string Shutter(double seconds) =>
        seconds is > 0 and < 0.5
            ? string.Create(CultureInfo.InvariantCulture, $"1/{Math.Round(1 / seconds):0} s")
            : string.Create(CultureInfo.InvariantCulture, $"{seconds:0.##} s");

    private static void Stop(Flow flow, PacketBook book)
    {
        var stops = book.Evaluation.Findings.Where(f => f.Severity == Severity.Stop).ToList();
        if (stops.Count == 0)
        {
            return;
        }

        var lines = Texts.Lines(PaperInk.Readable(stops[0].Message), flow.Width - 8, 3).Take(2).ToList();
        var height = 9 + (4.3 * lines.Count);
        flow.Ink.Box(flow.Left, flow.Y, flow.Width, height, null, Palette.Stop);
        var more = stops.Count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" ({stops.Count} reasons)");
        flow.Ink.Text(
            $"STOP: do not build or power this{more}",
            flow.Left + 4,
            flow.Y + 6,
            new(4.4, Palette.Paper, Weight: Weight.SemiBold)
        );
        for (var i = 0; i < lines.Count; i++)
        {
            flow.Ink.Text(lines[i], flow.Left + 4, flow.Y + 10.6 + (4.3 * i), new(3, Palette.Paper));
        }

        flow.Skip(height + 2);
    }

    private static void Glance(Flow flow, PacketBook book)
    {
        if (book.Evaluation.Steps is not { Combinations.Count: > 0 } steps)
        {
            flow.Paragraph("The switch positions could not be computed; the findings say what is missing.", 3.2);
            return;
        }

        var hasFan = book.Evaluation.Heat?.HasFan == true;
        var shown = steps.Combinations.Take(MostRows).ToList();
        var rest = steps.Combinations.Count - shown.Count;
        flow.Head(
            "The light at a glance",
            rest > 0
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"the first {shown.Count} of {steps.Combinations.Count} positions; all are on the test sheet"
                )
                : "1 and black: closed; junction on the hottest day" + (hasFan ? ", and with the fan stopped" : "")
        );
        var unit = book.Units.Temperature.Sign;
        var switches = shown[0].Switches.Length;
        var first = Math.Max(28, 5 + (switches * 5.4));
        var share = (flow.Width - first) / (hasFan ? 138 : 116);
        Column Number(string head, string sign, double width, double number) =>
            new(head, sign, width * share, number * share);
        var table = new Table(
            [
                new("switches", "", first),
                Number("current", "A", 23, 10),
                Number("emitter", "W", 23, 10),
                Number("subject", "lx", 29, 13),
                Number("aperture", "f/", 19, 8),
                Number("junction", unit, 22, 9.5),
                .. hasFan ? [Number("fan stopped", unit, 22, 9.5)] : Array.Empty<Column>(),
            ],
            RowHeight: shown.Count > 12 ? 5.5 : 7,
            Size: 3.5
        );
        var amps = Decimals(shown, c => c.CurrentA.Value);
        var watts = Decimals(shown, c => c.EmitterW.Value);
        var lux = Decimals(shown, c => c.LuxAtSubject.Value);
        var most = MostJunction(steps);
        table.Draw(
            flow,
            [.. shown.Select(c => Row(book, c, amps, watts, lux, most))],
            (ink, i, left, y) => Pips(ink, shown[i].Switches, left + 2 + Typeface.WidthOf(shown[i].Switches, 3.5), y)
        );
    }

    private static IReadOnlyList<Cell> Row(PacketBook book, Combination c, int amps, int watts, int lux, double most)
    {
        var tooMuch = c.CurrentMarginA.Value < 0 ? Palette.Stop : null;
        Cell Junction(Evaluation.Predicted p) =>
            book.Units.Degrees(p) with
            {
                Tint =
                    p.Value > most ? Palette.Stop
                    : p.High > most ? Palette.Warn
                    : null,
            };
        return
        [
            new(c.Switches, Weight: Weight.Medium),
            Cell.Of(c.CurrentA, amps) with
            {
                Tint = tooMuch,
            },
            Cell.Of(c.EmitterW, watts),
            Cell.Of(c.LuxAtSubject, lux).Strong,
            Cell.Of(c.Aperture, 1),
            Junction(c.JunctionHotC),
            Junction(c.JunctionFanStoppedC),
        ];
    }

    /// <summary>Hottest junction allowed, °C: the margin is counted from it.</summary>
    internal static double MostJunction(StepsAnswer steps) =>
        steps.Combinations[0].JunctionHotC.Value + steps.Combinations[0].JunctionMarginK.Value;

    private static int Decimals(List<Combination> rows, Func<Combination, double> number) =>
        ChartText.DecimalsFor(rows.Max(number));

    /// <summary>One square a switch: black is closed.</summary>
    internal static void Pips(PaperInk ink, string switches, double x, double y)
    {
        for (var i = 0; i < switches.Length; i++)
        {
            ink.Box(x + (3.4 * i), y - 2.6, 2.6, 2.6, new(Palette.Ink, 0.25), switches[i] == '1' ? Palette.Ink : null);
        }
    }

    private static void Worst(Flow flow, PacketBook book)
    {
        var findings = book.Evaluation.Findings;
        if (findings.Count == 0)
        {
            flow.Paragraph("No findings.", 3.2, Palette.Hold, Weight.Medium);
            return;
        }

        int Count(Severity severity) => findings.Count(f => f.Severity == severity);
        flow.Head(
            "Findings",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{Count(Severity.Stop)} stop, {Count(Severity.Warn)} warn, {Count(Severity.Note)} note; in full on their own sheet"
            )
        );
        foreach (var rule in findings.GroupBy(f => f.Code, StringComparer.Ordinal).Take(3))
        {
            var finding = rule.First();
            var more = rule.Count() - 1;
            var also = more > 0 ? string.Create(CultureInfo.InvariantCulture, $" (and {more} more of this kind)") : "";
            flow.Skip(4.4);
            FindingsPage.Tag(flow.Ink, finding.Severity, flow.Left, flow.Y);
            flow.Ink.Text(
                Texts.Fitting(PaperInk.Readable($"{finding.Code}  {finding.Message}{also}"), flow.Width - 13, 2.9),
                flow.Left + 13,
                flow.Y,
                new(2.9, Palette.Ink)
            );
        }

        flow.Skip(2.5);
    }

    private static void CautionsOn(Flow flow, PacketBook book)
    {
        var cautions = Cautions.For(book.Design, book.Evaluation);
        var (gap, size) = (6.0, 2.4);
        var width = (flow.Width - gap) / 2;
        var blocks = cautions
            .Select(c => (c.Title, Lines: Texts.Lines(c.Text, width, size)))
            .Select(c => (c.Title, c.Lines, Height: 4 + (3.15 * c.Lines.Count) + 1))
            .ToList();
        var half = blocks.Sum(b => b.Height) / 2;
        flow.Need(half + 13);
        flow.Head("What can hurt", "local codes and licensed practice come first");
        var (top, y, x, lowest) = (flow.Y, flow.Y, flow.Left, flow.Y);
        foreach (var (title, lines, height) in blocks)
        {
            if (x == flow.Left && y > top && y - top + (height / 2) > half)
            {
                (x, y) = (flow.Left + width + gap, top);
            }

            flow.Ink.Text(title, x, y + 3.6, new(2.9, Palette.Stop, Weight: Weight.SemiBold));
            for (var i = 0; i < lines.Count; i++)
            {
                flow.Ink.Text(lines[i], x, y + 6.9 + (3.15 * i), new(size, Palette.Ink));
            }

            y += height;
            lowest = Math.Max(lowest, y);
        }

        flow.Skip(lowest - flow.Y);
    }
}
