using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The packet while it is being written: sheets in frames, with a title block that counts them.</summary>
/// <remarks>
/// Frame and margins after ISO 5457 (20 mm at the binding edge, 10 mm elsewhere, centring marks); the title block has the fields of
/// ISO 7200 that a one-off needs and leaves name and date to be written by hand, since the program reads no clock.
/// </remarks>
internal sealed class PacketBook : IDisposable
{
    private const double Block = 15;
    private const double Pad = 5;
    private readonly PdfBook book;
    private readonly List<(PaperInk Ink, Paper Paper, SheetTitle Title)> sheets = [];

    public PacketBook(LightDesign design, LightEvaluation evaluation, string state)
    {
        (Design, Evaluation, State) = (design, evaluation, state);
        Paper = Paper.Of(design.Show.Paper);
        Units = new(design.Show);
        book = new PdfBook(PaperInk.Readable(evaluation.Title));
    }

    public LightDesign Design { get; }

    public LightEvaluation Evaluation { get; }

    public Paper Paper { get; }

    public ShownUnits Units { get; }

    /// <summary>Short code of the evaluation, so that paper and file can be told to belong together.</summary>
    public string State { get; }

    public Sheet Add(SheetTitle title, bool onItsSide = false, bool isBookmark = true)
    {
        var paper = onItsSide ? Paper.OnItsSide : Paper;
        var ink = book.AddPage(paper, isBookmark ? title.Title : "");
        sheets.Add((ink, paper, title));
        return new(ink, 20 + Pad, 10 + Pad, paper.WidthMm - 10 - Pad, paper.HeightMm - 10 - Block - 3);
    }

    public void Save(Stream stream)
    {
        for (var i = 0; i < sheets.Count; i++)
        {
            Frame(sheets[i].Ink, sheets[i].Paper);
            TitleBlock(sheets[i].Ink, sheets[i].Paper, sheets[i].Title, i + 1);
        }

        book.Save(stream);
    }

    public void Dispose() => book.Dispose();

    private static void Frame(PaperInk ink, Paper paper)
    {
        var (left, top, right, bottom) = (20.0, 10.0, paper.WidthMm - 10, paper.HeightMm - 10);
        var line = new Stroke(Palette.Ink, 0.5);
        ink.Box(left, top, right - left, bottom - top, line);
        var (x, y) = ((left + right) / 2, (top + bottom) / 2);
        ink.Line(x, top - 5, x, top + 2, line);
        ink.Line(x, bottom - 2, x, bottom + 5, line);
        ink.Line(left - 5, y, left + 2, y, line);
        ink.Line(right - 2, y, right + 5, y, line);
    }

    private void TitleBlock(PaperInk ink, Paper paper, SheetTitle title, int number)
    {
        var (right, bottom) = (paper.WidthMm - 10, paper.HeightMm - 10);
        var width = Math.Min(180, right - 20);
        var (left, top) = (right - width, bottom - Block);
        ink.Box(left, top, width, Block, new(Palette.Ink, 0.5), Palette.Paper);
        var thin = new Stroke(Palette.Ink, 0.18);
        var wide = width - 116;
        (string Caption, string Text, double Width)[] fields =
        [
            ("light", Evaluation.Title, wide),
            ("sheet", title.Title, 50),
            ("material", title.Material, 26),
            ("scale", title.Scale, 18),
            ("no.", string.Create(CultureInfo.InvariantCulture, $"{number} / {sheets.Count}"), 22),
        ];
        var x = left;
        foreach (var (caption, text, span) in fields)
        {
            ink.Text(caption, x + 1.5, top + 2.9, new(1.9, Palette.Soft));
            ink.Text(
                Texts.Fitting(PaperInk.Readable(text), span - 3, 3.1, Weight.Medium),
                x + 1.5,
                top + 7.1,
                new(3.1, Palette.Ink, Weight: Weight.Medium)
            );
            x += span;
            if (x < right - 1)
            {
                ink.Line(x, top, x, top + 8.5, thin);
            }
        }

        ink.Line(left, top + 8.5, right, top + 8.5, thin);
        var foot = top + 13;
        var soft = new TextStyle(2.2, Palette.Soft);
        ink.Text($"state {State}", left + 1.5, foot, soft);
        ink.Text($"{Units.LengthSign}, {Units.Temperature.Sign}; small figures: 5 to 95 %", left + 32, foot, soft);
        ink.Text("built by", right - 80, foot, soft);
        ink.Line(right - 70, foot + 0.4, right - 38, foot + 0.4, thin);
        ink.Text("date", right - 34, foot, soft);
        ink.Line(right - 28, foot + 0.4, right - 2, foot + 0.4, thin);
    }
}
