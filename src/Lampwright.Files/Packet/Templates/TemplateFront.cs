using System.Globalization;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Templates;

/// <summary>First page of the templates: how to use them, and which pages belong to which part.</summary>
internal static class TemplateFront
{
    public static void Draw(
        PaperInk ink,
        string title,
        Paper paper,
        TemplateOptions options,
        IReadOnlyList<TemplateSet> sets
    )
    {
        if (!options.Paper.IsRoll)
        {
            options.Stretch(ink, paper);
        }

        var (left, width) = (24.0, paper.WidthMm - 24 - 16);
        ink.Text("Templates, full size", left, 22, new(3.4, Palette.Soft));
        ink.Text(
            Texts.Fitting(PaperInk.Readable(title), width, 8, Weight.SemiBold),
            left,
            31,
            new(8, Palette.Ink, Weight: Weight.SemiBold)
        );
        var y = 44.0;
        var steps = Steps(options).ToArray();
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
        foreach (var (part, face, grid) in sets.Take(most))
        {
            var large = grid.Sheets > TileGrid.MostSheets;
            ink.Text(
                Texts.Fitting(
                    PaperInk.Readable(face == TemplateFace.Inside ? part.Name + ", inside up" : part.Name),
                    70,
                    3.4,
                    Weight.Medium
                ),
                left,
                y,
                new(3.4, Palette.Ink, Weight: Weight.Medium)
            );
            ink.Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{part.Blank.WidthM * 1000:0.0} × {part.Blank.HeightM * 1000:0.0} mm"
                ),
                left + 104,
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
                left + 110,
                y,
                new(3.4, Palette.Soft)
            );
            page += large ? 0 : grid.Sheets;
            y += 5.2;
        }

        ProofBars.Draw(ink, paper, TileGrid.EdgeMm);
    }

    private static IEnumerable<string> Steps(TemplateOptions options)
    {
        var (across, along) = (
            ProofBars.Words(ProofBars.LengthMm(options.Paper.WidthMm)),
            ProofBars.Words(ProofBars.LengthMm(options.Paper.HeightMm))
        );
        var (shortSide, longSide) = options.Paper.IsRoll
            ? ("across the roll", "along it")
            : ("along the short side", "along the long side");
        yield return "Print at 100 %, without any fitting to the page. The file asks for it; the printer has the last word.";
        yield return $"Measure the bars of every sheet with a rule: {across} {shortSide} of the paper, {along} {longSide}. If they are off, write what "
            + "you measure as bar_across and bar_along into [show.templates] of the design file and print again: the sheets are then "
            + "stretched by it. A sheet whose bars are off is not used.";
        if (options.IsStretched)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"These sheets are stretched by {options.Across:0.0000} {shortSide} and {options.Along:0.0000} {longSide}, for the printer whose bars were measured. The bars of this print must be true."
            );
        }
        else if (!options.IsCorrectable)
        {
            yield return "NOT corrected: the measured bars are more than 3 % off. Such a printer fits to the page; set it to 100 % and measure again.";
        }

        yield return "Cut a sheet along its dashed left and upper edges, lay its targets (half-filled rings) on those of its neighbours, hold against the light, and glue "
            + "it on their glue edges (right and below).";
        yield return "Lay the paper on the face of the sheet that it names: OUTSIDE UP or INSIDE UP (the mirror image). Fix it so that it cannot creep.";
        yield return "Punch through every cross, not through the targets. Scribe the outline and both ends of every bend line. Take the paper off before drilling.";
        yield return "The green line is where the foremost edge of the clamp's nose sits, on the face that is up when the sheet is clamped; the "
            + "triangles at its ends point under the clamp. Scribe it on that face. Test it with a strip first.";
    }
}
