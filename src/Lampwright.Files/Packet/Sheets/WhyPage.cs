using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Json;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Steps.Ways;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>Why the light is dimmed the way it is: the chosen way with its pictures, and in a line each why the others were left.</summary>
internal static class WhyPage
{
    private const double Gap = 6;
    private const double Small = 2.35;
    private const double LineHeight = Small * 1.28;
    private const double NameWidth = 40;
    private const double VerdictWidth = 19.5;
    private const double LeastPicture = 46;
    private const double MostPicture = 78;
    private static readonly string[] cautions = ["mains", "charge", "sense"];

    public static void Draw(PacketBook book)
    {
        var ways = book.Evaluation.Ways;
        if (ways.FirstOrDefault(w => w.IsChosen) is not { } chosen)
        {
            return;
        }

        var isWrong = chosen.Way.Verdict is Steps.Ways.Verdict.Stop or Steps.Ways.Verdict.DoesNotWork;
        var title = isWrong ? "Why not this way" : "Why this way";
        var flow = new Flow(book, new(title)).Begun();
        flow.Title(title, $"{(isWrong ? "to be dimmed" : "dimmed")} by: {chosen.Way.Name}");
        Verdict(flow, chosen.Way);
        Numbers(flow, chosen);
        var others = ways.Where(w => !w.IsChosen).ToList();

        // Reasons in three lines where the sheet has room for them, else in two: one sheet it is.
        var rest = Height(flow, chosen.Way, others, 3) + CautionsHeight(flow, book);
        var lines = rest + LeastPicture <= flow.Room ? 3 : 2;
        rest = Height(flow, chosen.Way, others, lines) + CautionsHeight(flow, book);
        Pictures(flow, chosen, Math.Clamp(flow.Room - rest, LeastPicture, MostPicture));
        Notes(flow, chosen.Way);
        Others(flow, others, lines);
        CautionsOn(flow, book);
    }

    private static void Verdict(Flow flow, Way way)
    {
        flow.Skip(1);
        flow.Paragraph($"{Sentence(Spoken.Of(way.Verdict))}: {way.Reason}", 3.5, TintOf(way.Verdict), Weight.Medium);
        flow.Skip(1.5);
    }

    private static void Numbers(Flow flow, WayAnswer chosen)
    {
        var way = chosen.Way;
        new Table(
            [
                new("least light", "%", 23, 11),
                new("most light", "%", 23, 11),
                new("at half: efficiency", "%", 30, 16),
                new("heat but the emitter's", "W", 32, 16),
                new("light is held", "", 20),
                new("blinks", "", 14),
                new("driver is opened", "", 28),
            ],
            6,
            3
        ).Draw(
            flow,
            [
                [
                    Cell.Of(chosen.LeastShare?.In(100), 0),
                    Cell.Of(chosen.MostShare?.In(100), 0),
                    Cell.Of(chosen.EfficiencyAtHalf?.In(100), 0),
                    Cell.Of(chosen.HeatAtHalfW, 1),
                    Spoken.Of(way.Regulates),
                    Spoken.Of(way.Blinks),
                    way.OpensDriver ? "yes" : "no",
                ],
            ]
        );
    }

    private static void Pictures(Flow flow, WayAnswer chosen, double height)
    {
        Chart?[] charts =
        [
            OperatingChart.Of(chosen.Way.Picture, "Where driver and light meet" + At(chosen)),
            TraceChart.Of(chosen.Trace(), "The first tenth of a second" + At(chosen)),
        ];
        var shown = charts.OfType<Chart>().ToList();
        if (shown.Count == 0)
        {
            return;
        }

        flow.Need(height);
        var width = (flow.Width - (Gap * (shown.Count - 1))) / shown.Count;
        for (var i = 0; i < shown.Count; i++)
        {
            ChartDrawing.Draw(shown[i], flow.Ink, flow.Left + (i * (width + Gap)), flow.Y, width, height, 2.5);
        }

        flow.Skip(height + 2);
    }

    private static string At(WayAnswer chosen) =>
        chosen.Way.Circuit.Source is DriverOutput driver ? $", set to {ChartText.Number(driver.SetA)} A" : "";

    private static string Said(Way way) =>
        way.Stresses.Count > 0 ? $"It stresses: {string.Join("; ", way.Stresses)}." : "";

    private static void Notes(Flow flow, Way way)
    {
        if (Said(way) is { Length: > 0 } said)
        {
            flow.Paragraph(said, Small);
            flow.Skip(0.6);
        }
    }

    private static void Others(Flow flow, List<WayAnswer> others, int lines)
    {
        if (others.Count == 0)
        {
            return;
        }

        flow.Head("The other ways", "with this supply, driver and emitter");
        foreach (var other in others)
        {
            var way = other.Way;
            var height = RowHeight(flow, way, lines);
            flow.Need(height);
            Put(flow, 0, NameLines(way), Palette.Ink, Weight.Medium);
            Put(flow, NameWidth, [Spoken.Of(way.Verdict)], TintOf(way.Verdict), Weight.Medium);
            Put(flow, NameWidth + VerdictWidth, ReasonLines(flow, way, lines), Palette.Ink, Weight.Regular);
            flow.Skip(height);
            flow.Ink.Line(flow.Left, flow.Y, flow.Left + flow.Width, flow.Y, new(Palette.Rule, 0.13));
        }

        flow.Skip(2);
    }

    private static void Put(Flow flow, double x, IReadOnlyList<string> lines, Tint tint, Weight weight)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            flow.Ink.Text(lines[i], flow.Left + x, flow.Y + 3.2 + (i * LineHeight), new(Small, tint, Weight: weight));
        }
    }

    private static IReadOnlyList<string> NameLines(Way way) => AtMost(2, way.Name, NameWidth - 2, Weight.Medium);

    private static IReadOnlyList<string> ReasonLines(Flow flow, Way way, int lines) =>
        AtMost(lines, way.Reason, flow.Width - NameWidth - VerdictWidth, Weight.Regular);

    private static IReadOnlyList<string> AtMost(int most, string text, double room, Weight weight)
    {
        var lines = Texts.Lines(PaperInk.Readable(text), room, Small, weight);
        return lines.Count <= most
            ? lines
            : [.. lines.Take(most - 1), Texts.Fitting(string.Join(' ', lines.Skip(most - 1)), room, Small, weight)];
    }

    private static double RowHeight(Flow flow, Way way, int lines) =>
        1.6 + (Math.Max(NameLines(way).Count, ReasonLines(flow, way, lines).Count) * LineHeight);

    private static double Height(Flow flow, Way chosen, List<WayAnswer> others, int lines) =>
        TextHeight(flow, Said(chosen), Small)
        + 3
        + (others.Count > 0 ? 10 + others.Sum(o => RowHeight(flow, o.Way, lines)) : 0)
        + 2;

    private static IEnumerable<Caution> CautionsFor(PacketBook book) =>
        Cautions.For(book.Design, book.Evaluation).Where(c => cautions.Contains(c.Id, StringComparer.Ordinal));

    private static double CautionsHeight(Flow flow, PacketBook book) =>
        CautionsFor(book).Sum(c => TextHeight(flow, $"{c.Title}. {c.Text}", Small) + 0.6);

    private static void CautionsOn(Flow flow, PacketBook book)
    {
        foreach (var caution in CautionsFor(book))
        {
            flow.Paragraph($"{caution.Title}. {caution.Text}", Small, Palette.Stop);
            flow.Skip(0.6);
        }
    }

    private static double TextHeight(Flow flow, string text, double size) =>
        Texts.Lines(PaperInk.Readable(text), flow.Width, size).Count * size * 1.45;

    private static string Sentence(string words) =>
        words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    private static Tint TintOf(Verdict verdict) =>
        verdict switch
        {
            Steps.Ways.Verdict.Stop or Steps.Ways.Verdict.DoesNotWork => Palette.Stop,
            Steps.Ways.Verdict.AskFirst or Steps.Ways.Verdict.WithDrawback => Palette.Warn,
            _ => Palette.Hold,
        };
}
