using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Drawings;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Metal.Bending;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>Bend cards: for each part its bends in their order, with brake and part in section when each is made.</summary>
internal static class BendCardsPage
{
    private static readonly double PictureWidth = 84;
    private static readonly double PictureHeight = 50;
    private static readonly double CardHeight = 54;

    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Metal?.Bending.Value is not { Parts.Count: > 0 } bending)
        {
            return;
        }

        var flow = new Flow(book, new("Bend cards")).Begun();
        flow.Title("Bend cards", "one card a stroke, in this order; brake seen from its end, the maker to the right");
        flow.Paragraph(
            bending.IsDescribed
                ? "Tighten every finger that is set, take out those that stand in the way. Keep hands clear of clamp and apron; a part that swings as a whole comes up fast. Bend a strip of the same sheet first."
                : "Planned on a usual hand brake, since the fingers and heights of yours are not told ([brake] in the shop file): see at each card that nothing of yours is in the way. Keep hands clear of clamp and apron.",
            2.9,
            Palette.Soft
        );
        flow.Paragraph(BendCards.Unknown, 2.9, Palette.Soft);
        foreach (var part in bending.Parts)
        {
            Part(book, flow, part);
        }
    }

    private static void Part(PacketBook book, Flow flow, PartBending part)
    {
        if (part.Plan.Stages.Count > 0)
        {
            flow.Need(CardHeight + 14);
        }

        flow.Head(
            part.Name,
            part.Plan.Verdict == BendVerdict.Found ? Strokes(part) : "no order is known on this brake"
        );
        if (part.Plan.Verdict != BendVerdict.Found)
        {
            var said = book.Evaluation.Metal!.Bending.Value.Findings.FirstOrDefault(f =>
                f.Path == part.Path && f.Message.Contains(part.Name, StringComparison.Ordinal)
            );
            flow.Paragraph(said is null ? BendCards.Sum(part) : $"{said.Code}  {said.Message}", 3, Palette.Warn);
            flow.Skip(2);
            return;
        }

        for (var i = 0; i < part.Plan.Stages.Count; i++)
        {
            flow.Need(CardHeight);
            Card(flow, part, i);
            flow.Skip(CardHeight);
        }

        if (part.Plan.Pressed.Count > 0)
        {
            flow.Paragraph(
                $"Afterwards, set between bars, not on the brake: {string.Join(", ", part.Plan.Pressed.Order(StringComparer.Ordinal))}.",
                3
            );
        }
    }

    private static string Strokes(PartBending part) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{part.Plan.Stages.Count} strokes, {part.Folded.ThicknessM * 1000:0.##} mm sheet"
        );

    private static void Card(Flow flow, PartBending part, int stage)
    {
        var card = BendCards.Of(part, stage);
        var (x, y, ink) = (flow.Left, flow.Y + 1, flow.Ink);
        ink.Box(x, y, flow.Width, CardHeight - 2, new(Palette.Rule, 0.18));
        ink.Clipped(
            x,
            y,
            PictureWidth,
            CardHeight - 2,
            () => BendPicture.Draw(part, stage, ink, x + 1, y + 1, PictureWidth - 2, PictureHeight, 2.6)
        );
        ink.Line(x + PictureWidth, y, x + PictureWidth, y + CardHeight - 2, new(Palette.Rule, 0.18));
        var left = x + PictureWidth + 4;
        var room = flow.Left + flow.Width - left - 2;
        ink.Text(
            string.Create(CultureInfo.InvariantCulture, $"{stage + 1}"),
            left,
            y + 9,
            new(8, Palette.Soft, Weight: Weight.SemiBold)
        );
        var number = Typeface.WidthOf(string.Create(CultureInfo.InvariantCulture, $"{stage + 1} "), 8, Weight.SemiBold);
        ink.Text(
            Texts.Fitting(PaperInk.Readable(card.Flange), room - number - 26, 5, Weight.SemiBold),
            left + number,
            y + 8.6,
            new(5, Palette.Ink, Weight: Weight.SemiBold)
        );
        ink.Text(card.SwingTo, left + room, y + 8.6, new(5.6, Palette.Ink, Anchor.End, Weight.SemiBold));
        ink.Text("swing to", left + room, y + 3, new(2.1, Palette.Soft, Anchor.End));
        var at = y + 14;
        void Line(string caption, string text)
        {
            ink.Text(caption, left, at, new(2.4, Palette.Soft));
            foreach (var line in Texts.Lines(PaperInk.Readable(text), room - 19, 2.9, Weight.Regular))
            {
                ink.Text(line, left + 19, at, new(2.9, Palette.Ink));
                at += 4;
            }

            at += 0.7;
        }

        Line("clamp", $"{card.Clamped}, {card.Up}");
        Line("set", $"{card.SetLine}; nose {card.NoseBackMm.ToString("0.0", CultureInfo.InvariantCulture)} mm back");
        Line("fingers", $"{card.Fingers} mm");
        Line("row", card.Row);
        if (card.Notes.Count > 0)
        {
            Line("see to", string.Join("; ", card.Notes));
        }
    }
}
