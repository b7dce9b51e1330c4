using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Findings;
using Lampwright.Metal;

namespace Lampwright.Files.Packet.Templates;

/// <summary>What stands round the window of a template sheet: name, proof bars, map, seams.</summary>
internal static class TemplateSheet
{
    private static readonly Stroke thin = new(Palette.Ink, 0.18);
    private static readonly Stroke fine = new(Palette.Ink, 0.13);
    private static readonly Stroke glue = new(Palette.Soft, 0.13, [0.4, 1.6]);
    private static readonly Stroke seam = new(Palette.Soft, 0.18, [2, 1.2]);

    public static void Draw(
        PaperInk ink,
        PartAnswer part,
        IReadOnlyList<Finding> findings,
        TileGrid grid,
        TemplateFace face,
        TemplateOptions options,
        int row,
        int column
    )
    {
        Seams(ink, grid, row, column);
        foreach (var cross in grid.Crosses(row, column))
        {
            var p = grid.OnSheet(row, column, cross);
            ink.Line(p.X - 4, p.Y, p.X + 4, p.Y, fine);
            ink.Line(p.X, p.Y - 4, p.X, p.Y + 4, fine);
            ink.Circle(p.X, p.Y, 2, fine);

            // Nothing like a punch cross in a hole: two opposite quarters are filled.
            foreach (var from in (double[])[0, Math.PI])
            {
                var rim = Enumerable.Range(0, 10).Select(i => from + (i * Math.PI / 18));
                (double X, double Y)[] quarter =
                [
                    (p.X, p.Y),
                    .. rim.Select(t => (p.X + (1.2 * Math.Cos(t)), p.Y + (1.2 * Math.Sin(t)))),
                ];
                ink.Path(quarter, true, null, Palette.Ink);
            }
        }

        ProofBars.Draw(ink, grid.Paper, TileGrid.EdgeMm);
        Footer(ink, part, TemplateMarks.Stop(part, findings), grid, face, options, row, column);
    }

    /// <summary>Left and upper edges are cut and laid over the glue strips that stand right and below on the neighbours.</summary>
    private static void Seams(PaperInk ink, TileGrid grid, int row, int column)
    {
        var (left, top, width, height) = (TileGrid.WindowLeft, TileGrid.WindowTop, grid.WindowWidth, grid.WindowHeight);
        var (right, bottom) = (left + width, top + height);
        var small = new TextStyle(2.1, Palette.Soft);
        if (column > 0)
        {
            ink.Line(left, top, left, bottom, seam);
            ink.Text(
                $"cut here, lay over {TileGrid.Name(row, column - 1)}",
                left + 2.6,
                bottom - 60,
                small with
                {
                    TurnDeg = 90,
                }
            );
        }

        if (column + 1 < grid.Columns)
        {
            ink.Line(right, top, right, bottom, seam);
            ink.Line(right - TileGrid.OverlapMm, top, right - TileGrid.OverlapMm, bottom, glue);
            ink.Text(
                $"glue edge, {TileGrid.Name(row, column + 1)} lies over it",
                right - 1,
                bottom - 60,
                small with
                {
                    TurnDeg = 90,
                }
            );
        }

        if (row > 0)
        {
            ink.Line(left, top, right, top, seam);
            ink.Text($"cut here, lay over {TileGrid.Name(row - 1, column)}", left + 60, top + 2.6, small);
        }

        if (row + 1 < grid.Rows)
        {
            ink.Line(left, bottom, right, bottom, seam);
            ink.Line(left, bottom - TileGrid.OverlapMm, right, bottom - TileGrid.OverlapMm, glue);
            ink.Text($"glue edge, {TileGrid.Name(row + 1, column)} lies over it", left + 60, bottom - 1, small);
        }
    }

    private static void Footer(
        PaperInk ink,
        PartAnswer part,
        string stop,
        TileGrid grid,
        TemplateFace face,
        TemplateOptions options,
        int row,
        int column
    )
    {
        var (left, right) = (TileGrid.WindowLeft, grid.Paper.WidthMm - TileGrid.EdgeMm);
        var top = grid.FooterTop + 2.5;
        ink.Line(left, top, right, top, new(Palette.Ink, 0.35));
        var map = Map(ink, grid, row, column, right, top + 2);
        var room = map - left - 4;
        var up = face == TemplateFace.Inside ? "INSIDE UP" : "OUTSIDE UP";
        var upWidth = Typeface.WidthOf(up, 4.4, Weight.SemiBold);
        var name = grid.Sheets > 1 ? $"{part.Name}  {TileGrid.Name(row, column)}" : part.Name;
        var shown = Texts.Fitting(name, room - upWidth - 5, 6, Weight.SemiBold);
        ink.Text(shown, left, top + 7.2, new(6, Palette.Ink, Weight: Weight.SemiBold));
        var tint = face == TemplateFace.Inside ? Palette.Hold : Palette.Flow;
        ink.Text(
            up,
            left + Typeface.WidthOf(shown, 6, Weight.SemiBold) + 5,
            top + 7.2,
            new(4.4, tint, Weight: Weight.SemiBold)
        );
        var lines = new[]
        {
            string.Create(
                CultureInfo.InvariantCulture,
                $"{part.Sheet}, {part.ThicknessMm:0.##} mm · make {part.Count} · {(part.Blank.Wrap is null ? "blank" : "wrap")} {Size(part.BlankWidthMm.Value)} × {Size(part.BlankHeightMm.Value)} mm{Grain(part.Blank)}"
            ),
            stop.Length > 0 ? stop : Lines(part.Blank, face),
            Bars(grid.Paper, options),
        };
        for (var i = 0; i < lines.Length; i++)
        {
            ink.Text(
                Texts.Fitting(lines[i], room, 2.7),
                left,
                top + 12 + (3.9 * i),
                new(
                    2.7,
                    i == 2 ? Palette.Ink
                        : i == 1 && stop.Length > 0 ? Palette.Stop
                        : Palette.Soft,
                    Weight: i == 2 || (i == 1 && stop.Length > 0) ? Weight.Medium : Weight.Regular
                )
            );
        }
    }

    /// <summary>How the sheet was rolled, as the template is read.</summary>
    private static string Grain(Blank blank) =>
        blank.GrainAlongX switch
        {
            true => " · grain left to right",
            false => " · grain upwards",
            _ => "",
        };

    private static string Lines(Blank blank, TemplateFace face)
    {
        if (blank.Wrap is not null)
        {
            return "Cross: punch here. Blue: ends of the flat sides. Tape it round the tube: first and last line meet.";
        }

        var text = blank.Bends.Count > 0 ? "Cross: punch here. Blue: middle of the bend." : "Cross: punch here.";
        return blank.Bends.Any(b => b.Set is { } set && set.OnInside == (face == TemplateFace.Inside))
            ? text + " Green: set line, nose edge on it, triangles under the clamp."
            : text;
    }

    private static string Bars(Paper paper, TemplateOptions options)
    {
        var bars =
            $"Bars measure {ProofBars.Words(ProofBars.LengthMm(paper.WidthMm))} and {ProofBars.Words(ProofBars.LengthMm(paper.HeightMm))}";
        return options.IsStretched
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{bars}; stretched by {options.Across:0.0000} and {options.Along:0.0000} for this printer."
            )
            : bars + "; if not, do not use this sheet.";
    }

    /// <summary>A small plan of all sheets of the part with this one filled; gives its left edge.</summary>
    private static double Map(PaperInk ink, TileGrid grid, int row, int column, double right, double top)
    {
        if (grid.Sheets == 1)
        {
            return right;
        }

        var cell = Math.Min(18 / (grid.WindowHeight * grid.Rows), 44 / (grid.WindowWidth * grid.Columns));
        var (w, h) = (cell * grid.WindowWidth, cell * grid.WindowHeight);
        var left = right - (w * grid.Columns);
        for (var r = 0; r < grid.Rows; r++)
        {
            for (var c = 0; c < grid.Columns; c++)
            {
                var here = r == row && c == column;
                ink.Box(left + (w * c), top + (h * r), w, h, thin, here ? Palette.Ink : null);
                if (w > 6 && h > 4)
                {
                    ink.Text(
                        TileGrid.Name(r, c),
                        left + (w * (c + 0.5)),
                        top + (h * (r + 0.5)) + 0.9,
                        new(2.4, here ? Palette.Paper : Palette.Ink, Anchor.Middle)
                    );
                }
            }
        }

        return left;
    }

    private static string Size(double mm) => ChartText.Fixed(mm, 1);
}
