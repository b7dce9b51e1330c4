using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Drawings;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Findings;
using Lampwright.Metal;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>One sheet a part: its blank with dimensions, upright or lying as it becomes larger.</summary>
internal static class PartPages
{
    private const double HeadHeight = 20;

    public static void Draw(PacketBook book)
    {
        foreach (var part in book.Evaluation.Metal?.Parts ?? [])
        {
            One(book, part);
        }

        foreach (var sketch in book.Evaluation.Metal?.Sketches ?? [])
        {
            Unmade(book, sketch);
        }
    }

    /// <summary>A part without blank: where its faults lie.</summary>
    private static void Unmade(PacketBook book, BlankSketch sketch)
    {
        var sheet = book.Add(new(sketch.Part, "no blank"));
        sheet.Ink.Text(
            Texts.Fitting(PaperInk.Readable(sketch.Part), sheet.Width - 40, 6.5, Weight.SemiBold),
            sheet.Left,
            sheet.Top + 6.5,
            new(6.5, Palette.Ink, Weight: Weight.SemiBold)
        );
        sheet.Ink.Text(
            "cannot be made as given: no blank, no template",
            sheet.Left,
            sheet.Top + 12,
            new(2.9, Palette.Stop, Weight: Weight.Medium)
        );
        sheet.Ink.Line(sheet.Left, sheet.Top + 16, sheet.Right, sheet.Top + 16, new(Palette.Ink, 0.25));
        var findings = book.Evaluation.Findings.Where(f => IsOf(f, sketch.Part)).ToList();
        var y = sheet.Top + HeadHeight + 2;
        foreach (var line in findings.Take(8).SelectMany(f => Texts.Lines($"{f.Code}  {f.Message}", sheet.Width, 3)))
        {
            sheet.Ink.Text(line, sheet.Left, y, new(3, Palette.Ink));
            y += 4.3;
        }

        var room = sheet.Bottom - y - 4;
        var drawing = SketchDrawing.Fitting(sketch, book.Evaluation.Findings, sheet.Width, room, 3);
        DrawingOnPaper.Draw(sheet.Ink, drawing, sheet.Left, y + 2);
    }

    private static bool IsOf(Finding finding, string part) =>
        finding.Path == "part." + part || finding.Path.StartsWith($"part.{part}.", StringComparison.Ordinal);

    private static void One(PacketBook book, PartAnswer part)
    {
        var (drawing, lies) = Largest(part, book.Evaluation.Findings, book.Paper);
        var material = string.Create(CultureInfo.InvariantCulture, $"{part.Material} {part.ThicknessMm:0.##} mm");
        var sheet = book.Add(new(part.Name, material, drawing.ScaleText), lies);
        Head(sheet, book, part);
        var top = sheet.Top + HeadHeight;
        var x = sheet.Left + Math.Max(0, (sheet.Width - drawing.WidthMm) / 2);
        var y = top + Math.Clamp((sheet.Bottom - top - drawing.HeightMm) / 2, 0, 12);
        DrawingOnPaper.Draw(sheet.Ink, drawing, x, y);
    }

    /// <summary>The drawing at the largest scale that fits the paper either way; upright where both ways fit.</summary>
    private static (Drawing Drawing, bool Lies) Largest(PartAnswer part, IReadOnlyList<Finding> findings, Paper paper)
    {
        // A drawing is never smaller than its blank, so scales at which the blank alone is too large need not be drawn.
        var (w, h) = (part.Blank.WidthM * 1000, part.Blank.HeightM * 1000);
        Drawing? drawing = null;
        foreach (var scale in BlankDrawing.Scales)
        {
            var isLast = scale == BlankDrawing.Scales[^1];
            if (!isLast && !Fits(w * scale, h * scale, paper) && !Fits(w * scale, h * scale, paper.OnItsSide))
            {
                continue;
            }

            drawing = BlankDrawing.Of(
                part.Blank,
                new()
                {
                    Scale = scale,
                    TextMm = 3,
                    Findings = findings,
                }
            );
            if (Fits(drawing.WidthMm, drawing.HeightMm, paper))
            {
                return (drawing, false);
            }

            if (Fits(drawing.WidthMm, drawing.HeightMm, paper.OnItsSide))
            {
                return (drawing, true);
            }
        }

        return (drawing!, false);
    }

    private static bool Fits(double width, double height, Paper paper) =>
        width <= paper.WidthMm - 40 && height <= paper.HeightMm - 43 - HeadHeight;

    private static void Head(Sheet sheet, PacketBook book, PartAnswer part)
    {
        var ink = sheet.Ink;
        ink.Text(
            Texts.Fitting(PaperInk.Readable(part.Name), sheet.Width - 110, 6.5, Weight.SemiBold),
            sheet.Left,
            sheet.Top + 6.5,
            new(6.5, Palette.Ink, Weight: Weight.SemiBold)
        );
        ink.Text(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{part.Sheet}: {part.Material}, {part.ThicknessMm:0.##} mm  ·  {ChartText.WithBand(part.MassKg.In(1000), "g")}"
            ),
            sheet.Left,
            sheet.Top + 12,
            new(2.9, Palette.Soft)
        );
        var x = sheet.Right;
        x = Key(ink, "height", book.Units.Length(part.BlankHeightMm), book.Units.LengthSign, x, sheet.Top, 40);
        x = Key(ink, "blank, width", book.Units.Length(part.BlankWidthMm), book.Units.LengthSign, x, sheet.Top, 40);
        Key(ink, "make", new(part.Count.ToString(CultureInfo.InvariantCulture)), "", x, sheet.Top, 18);
        ink.Line(sheet.Left, sheet.Top + 16, sheet.Right, sheet.Top + 16, new(Palette.Ink, 0.25));
    }

    /// <summary>A number that is read first, with its caption above and its band below.</summary>
    private static double Key(
        PaperInk ink,
        string caption,
        Cell number,
        string unit,
        double right,
        double top,
        double width
    )
    {
        var left = right - width + 3;
        ink.Text(caption, left, top + 2, new(2.2, Palette.Soft));
        ink.Text(number.Text, left, top + 9, new(7, Palette.Ink, Weight: Weight.SemiBold));
        var after = left + Typeface.WidthOf(number.Text, 7, Weight.SemiBold) + 1;
        ink.Text(unit, after, top + 9, new(3, Palette.Soft));
        ink.Text(number.Band, left, top + 13, new(2.3, Palette.Soft));
        return right - width;
    }
}
