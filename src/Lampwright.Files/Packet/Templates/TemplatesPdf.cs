using System.Globalization;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Templates;

/// <summary>Writes <c>templates.pdf</c>: every blank at full size, spread over sheets that are laid on each other by crosses.</summary>
public static class TemplatesPdf
{
    private static readonly string[] steps =
    [
        "Print at 100 %, without any fitting to the page. The file asks for it; the printer has the last word.",
        "Measure both bars of every sheet with a rule: 100.0 mm. A sheet that is off is not used.",
        "Cut along the dashed edge on one of two neighbours, lay its crosses on the other's, hold against the light, glue.",
        "Lay the paper on the sheet with this side up: it shows the outside of the face. Fix it so that it cannot creep.",
        "Punch through every cross. Scribe the outline and both ends of every bend line. Take the paper off before drilling.",
    ];

    /// <summary>Writes the templates of all parts.</summary>
    /// <param name="evaluation">The evaluation whose blanks are drawn.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="stream">What is written to; stays open.</param>
    public static void Write(LightEvaluation evaluation, Paper paper, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        ArgumentNullException.ThrowIfNull(paper);
        using var book = new PdfBook($"{evaluation.Title}: templates");
        var parts = evaluation.Metal?.Parts ?? [];
        var grids = parts
            .Select(p => (Part: p, Grid: TileGrid.For(p.Blank.WidthM * 1000, p.Blank.HeightM * 1000, paper)))
            .ToList();
        Front(book.AddPage(paper, "How to use the templates"), evaluation.Title, paper, grids);
        foreach (var (part, grid) in grids)
        {
            if (grid.Sheets > TileGrid.MostSheets)
            {
                continue;
            }

            var blank = new TemplateBlank(part.Blank);
            for (var row = 0; row < grid.Rows; row++)
            {
                for (var column = 0; column < grid.Columns; column++)
                {
                    var ink = book.AddPage(grid.Paper, row + column == 0 ? part.Name : "");
                    blank.Draw(ink, grid, row, column);
                    TemplateSheet.Draw(ink, part, grid, row, column);
                }
            }
        }

        book.Save(stream);
    }

    private static void Front(PaperInk ink, string title, Paper paper, List<(PartAnswer Part, TileGrid Grid)> grids)
    {
        var (left, width) = (24.0, paper.WidthMm - 24 - 16);
        ink.Text("Templates, full size", left, 22, new(3.4, Palette.Soft));
        ink.Text(
            Texts.Fitting(PaperInk.Readable(title), width, 8, Weight.SemiBold),
            left,
            31,
            new(8, Palette.Ink, Weight: Weight.SemiBold)
        );
        var y = 44.0;
        for (var i = 0; i < steps.Length; i++)
        {
            ink.Text(
                (i + 1).ToString(CultureInfo.InvariantCulture),
                left,
                y,
                new(4, Palette.Flow, Weight: Weight.SemiBold)
            );
            foreach (var line in Texts.Lines(steps[i], width - 8, 3.4))
            {
                ink.Text(line, left + 8, y, new(3.4, Palette.Ink));
                y += 4.8;
            }

            y += 2;
        }

        y += 4;
        ink.Line(left, y - 5, left + width, y - 5, new(Palette.Ink, 0.35));
        var page = 2;
        var most = (int)((paper.HeightMm - 34 - y) / 5.2);
        foreach (var (part, grid) in grids.Take(most))
        {
            var large = grid.Sheets > TileGrid.MostSheets;
            ink.Text(
                Texts.Fitting(PaperInk.Readable(part.Name), 60, 3.4, Weight.Medium),
                left,
                y,
                new(3.4, Palette.Ink, Weight: Weight.Medium)
            );
            ink.Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{part.Blank.WidthM * 1000:0.0} × {part.Blank.HeightM * 1000:0.0} mm"
                ),
                left + 100,
                y,
                new(3.4, Palette.Ink, Anchor.End)
            );
            ink.Text(
                large
                    ? "too large for paper: scribe it from its drawing"
                    : string.Create(
                        CultureInfo.InvariantCulture,
                        $"page {page}{(grid.Sheets > 1 ? $" to {page + grid.Sheets - 1}, {grid.Rows} × {grid.Columns} sheets" : "")}"
                    ),
                left + 108,
                y,
                new(3.4, Palette.Soft)
            );
            page += large ? 0 : grid.Sheets;
            y += 5.2;
        }

        TemplateSheet.ProofBars(ink, paper, 7);
    }
}
