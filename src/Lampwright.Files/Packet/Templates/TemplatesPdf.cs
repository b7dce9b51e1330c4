using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Packet.Templates;

/// <summary>Writes <c>templates.pdf</c>: every blank at full size, spread over sheets that are laid on each other by crosses.</summary>
public static class TemplatesPdf
{
    /// <summary>Writes the templates of all parts.</summary>
    /// <param name="evaluation">The evaluation whose blanks are drawn.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="stream">What is written to; stays open.</param>
    public static void Write(LightEvaluation evaluation, Paper paper, Stream stream) =>
        Write(evaluation, new TemplateOptions(paper), stream);

    /// <summary>Writes the templates of all parts.</summary>
    /// <param name="evaluation">The evaluation whose blanks are drawn.</param>
    /// <param name="options">How they are printed.</param>
    /// <param name="stream">What is written to; stays open.</param>
    public static void Write(LightEvaluation evaluation, TemplateOptions options, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        ArgumentNullException.ThrowIfNull(options);
        using var book = new PdfBook($"{evaluation.Title}: templates");
        var sets = (evaluation.Metal?.Parts ?? []).SelectMany(p => Sets(p, options)).ToList();
        var front = options.Paper.IsRoll ? Paper.A4 : options.Paper;
        TemplateFront.Draw(book.AddPage(front, "How to use the templates"), evaluation.Title, front, options, sets);
        foreach (var (part, face, grid) in sets)
        {
            if (grid.Sheets > TileGrid.MostSheets)
            {
                continue;
            }

            var blank = new TemplateBlank(part.Blank, evaluation.Findings, face);
            for (var row = 0; row < grid.Rows; row++)
            {
                for (var column = 0; column < grid.Columns; column++)
                {
                    var words = face == TemplateFace.Inside ? part.Name + ", inside" : part.Name;
                    var ink = book.AddPage(grid.Paper, row + column == 0 ? words : "");
                    options.Stretch(ink, grid.Paper);
                    blank.Draw(ink, grid, row, column);
                    TemplateSheet.Draw(ink, part, evaluation.Findings, grid, face, options, row, column);
                }
            }
        }

        book.Save(stream);
    }

    private static IEnumerable<TemplateSet> Sets(PartAnswer part, TemplateOptions options)
    {
        var grid = TileGrid.For(part.Blank.WidthM * 1000, part.Blank.HeightM * 1000, options.Paper);
        if (options.ShowsOutside)
        {
            yield return new(part, TemplateFace.Outside, grid);
        }

        if (options.ShowsInside(part.Blank))
        {
            yield return new(part, TemplateFace.Inside, grid);
        }
    }
}

/// <summary>The template of one face of a part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Face">The face that is up.</param>
/// <param name="Grid">How it is spread over sheets.</param>
internal sealed record TemplateSet(PartAnswer Part, TemplateFace Face, TileGrid Grid);
