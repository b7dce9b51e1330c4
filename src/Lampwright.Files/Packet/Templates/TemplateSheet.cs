using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Templates;

/// <summary>What stands round the window of a template sheet: name, proof bars, map, seams.</summary>
internal static class TemplateSheet
{
    private static readonly Stroke thin = new(Palette.Ink, 0.18);
    private static readonly Stroke fine = new(Palette.Ink, 0.13);
    private static readonly Stroke seam = new(Palette.Soft, 0.18, [2, 1.2]);

    /// <summary>Length of the proof bars, mm.</summary>
    public static double ProofMm { get; } = 100;

    public static void Draw(PaperInk ink, PartAnswer part, TileGrid grid, int row, int column)
    {
        Seams(ink, grid, row, column);
        foreach (var cross in grid.Crosses(row, column))
        {
            var p = grid.OnSheet(row, column, cross);
            ink.Line(p.X - 4, p.Y, p.X + 4, p.Y, fine);
            ink.Line(p.X, p.Y - 4, p.X, p.Y + 4, fine);
            ink.Circle(p.X, p.Y, 2, fine);
        }

        ProofBars(ink, grid.Paper, TileGrid.EdgeMm);
        Footer(ink, part, grid, row, column);
    }

    /// <summary>A bar of 100.0 mm along the bottom and one up the left side, with a mark every 10 mm.</summary>
    public static void ProofBars(PaperInk ink, Paper paper, double edge)
    {
        var (x, y) = (edge + 11, paper.HeightMm - edge - 5);
        ink.Line(x, y, x + ProofMm, y, thin);
        for (var i = 0; i <= 10; i++)
        {
            var half =
                i % 10 == 0 ? 3
                : i == 5 ? 1.4
                : 0.9;
            ink.Line(x + (10 * i), y - half, x + (10 * i), y + half, thin);
        }

        var style = new TextStyle(2.6, Palette.Ink, Anchor.Middle, Weight.Medium);
        ink.Text("100.0 mm", x + 25, y - 1.6, style);
        var (u, v) = (edge + 4.5, paper.HeightMm - edge - 11);
        ink.Line(u, v, u, v - ProofMm, thin);
        for (var i = 0; i <= 10; i++)
        {
            var half =
                i % 10 == 0 ? 3
                : i == 5 ? 1.4
                : 0.9;
            ink.Line(u - half, v - (10 * i), u + half, v - (10 * i), thin);
        }

        ink.Text("100.0 mm", u - 1.6, v - 25, style with { TurnDeg = 90 });
    }

    private static void Seams(PaperInk ink, TileGrid grid, int row, int column)
    {
        var (left, top, width, height) = (TileGrid.WindowLeft, TileGrid.WindowTop, grid.WindowWidth, grid.WindowHeight);
        var (right, bottom) = (left + width, top + height);
        var small = new TextStyle(2.1, Palette.Soft);
        if (column > 0)
        {
            ink.Line(left, top, left, bottom, seam);
            ink.Text($"joins {TileGrid.Name(row, column - 1)}", left + 2.6, top + 14, small with { TurnDeg = 90 });
        }

        if (column + 1 < grid.Columns)
        {
            ink.Line(right, top, right, bottom, seam);
            ink.Text($"joins {TileGrid.Name(row, column + 1)}", right - 1, top + 14, small with { TurnDeg = 90 });
        }

        if (row > 0)
        {
            ink.Line(left, top, right, top, seam);
            ink.Text($"joins {TileGrid.Name(row - 1, column)}", left + 14, top + 2.6, small);
        }

        if (row + 1 < grid.Rows)
        {
            ink.Line(left, bottom, right, bottom, seam);
            ink.Text($"joins {TileGrid.Name(row + 1, column)}", left + 14, bottom - 1, small);
        }
    }

    private static void Footer(PaperInk ink, PartAnswer part, TileGrid grid, int row, int column)
    {
        var (left, right) = (TileGrid.WindowLeft, grid.Paper.WidthMm - TileGrid.EdgeMm);
        var top = grid.FooterTop + 2.5;
        ink.Line(left, top, right, top, new(Palette.Ink, 0.35));
        var map = Map(ink, grid, row, column, right, top + 2);
        var room = map - left - 4;
        var name = grid.Sheets > 1 ? $"{part.Name}  {TileGrid.Name(row, column)}" : part.Name;
        ink.Text(
            Texts.Fitting(name, room, 6, Weight.SemiBold),
            left,
            top + 7.2,
            new(6, Palette.Ink, Weight: Weight.SemiBold)
        );
        var lines = new[]
        {
            string.Create(
                CultureInfo.InvariantCulture,
                $"{part.Sheet}, {part.ThicknessMm:0.##} mm · make {part.Count} · blank {Size(part.BlankWidthMm.Value)} × {Size(part.BlankHeightMm.Value)} mm"
            ),
            "This side up: the outside of the face. Blue: bend. Cross: punch here.",
            "Printed at 100 % both bars measure 100.0 mm; if they do not, do not use this sheet.",
        };
        for (var i = 0; i < lines.Length; i++)
        {
            ink.Text(
                Texts.Fitting(lines[i], room, 2.7),
                left,
                top + 12 + (3.9 * i),
                new(2.7, i == 2 ? Palette.Ink : Palette.Soft, Weight: i == 2 ? Weight.Medium : Weight.Regular)
            );
        }
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
