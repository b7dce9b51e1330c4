using Lampwright.Evaluation;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>A column of a table.</summary>
/// <param name="Head">Its head.</param>
/// <param name="Unit">Unit, shown small beside the head; empty for none.</param>
/// <param name="Width">Width, mm.</param>
/// <param name="Number">How far from the left of the column numbers end; 0 for text.</param>
internal sealed record Column(string Head, string Unit, double Width, double Number = 0);

/// <summary>What stands in one place of a table.</summary>
/// <param name="Text">The text or number.</param>
/// <param name="Band">Its band, shown small beside it.</param>
/// <param name="Tint">Colour; null for ink.</param>
/// <param name="Weight">Weight.</param>
internal sealed record Cell(string Text, string Band = "", Tint? Tint = null, Weight Weight = Weight.Regular)
{
    public static implicit operator Cell(string text) => new(text);

    /// <summary>A predicted number with so many decimals.</summary>
    public static Cell Of(Predicted p, int decimals) =>
        new(ChartText.Fixed(p.Value, decimals), ChartText.Band(p, decimals));

    /// <summary>A predicted number or a dash.</summary>
    public static Cell Of(Predicted? p, int decimals) => p is { } known ? Of(known, decimals) : new Cell("–");

    public Cell Strong => this with { Weight = Weight.Medium };
}

/// <summary>A table that goes on over sheets, with its head on each.</summary>
/// <param name="Columns">Its columns.</param>
/// <param name="RowHeight">Height of a row, mm.</param>
/// <param name="Size">Height of the text's em, mm.</param>
internal sealed record Table(IReadOnlyList<Column> Columns, double RowHeight = 6, double Size = 3.1)
{
    public double Width => Columns.Sum(c => c.Width);

    /// <summary>Draws the rows below what the flow holds already.</summary>
    /// <param name="flow">Where it is drawn.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="also">Draws more into a row: its number, its left and its base line.</param>
    public void Draw(
        Flow flow,
        IReadOnlyList<IReadOnlyList<Cell>> rows,
        Action<PaperInk, int, double, double>? also = null
    )
    {
        flow.Need(HeadHeight + (RowHeight * Math.Min(rows.Count, 3)));
        Head(flow);
        for (var i = 0; i < rows.Count; i++)
        {
            if (flow.Need(RowHeight))
            {
                Head(flow);
            }

            Row(flow, rows[i]);
            also?.Invoke(flow.Ink, i, flow.Left, flow.Y + BaseLine);
            flow.Skip(RowHeight);
        }

        flow.Ink.Line(flow.Left, flow.Y, flow.Left + Width, flow.Y, new(Palette.Ink, 0.25));
        flow.Skip(3);
    }

    private double HeadHeight => Size * 2;

    private double BaseLine => (RowHeight / 2) + (Size * 0.36);

    private void Head(Flow flow)
    {
        var (x, y) = (flow.Left, flow.Y + HeadHeight - (Size * 0.6));
        var style = new TextStyle(Size * 0.82, Palette.Soft);
        foreach (var column in Columns)
        {
            var text = column.Unit.Length == 0 ? column.Head : $"{column.Head} {column.Unit}";
            if (column.Number > 0)
            {
                // Heads of numbers end where the numbers end, unless that would leave the column.
                var width = Typeface.WidthOf(text, style.Size);
                flow.Ink.Text(text, Math.Max(x + 0.3, x + column.Number - width), y, style);
            }
            else
            {
                flow.Ink.Text(text, x + 0.3, y, style);
            }

            x += column.Width;
        }

        flow.Skip(HeadHeight);
        flow.Ink.Line(flow.Left, flow.Y, flow.Left + Width, flow.Y, new(Palette.Ink, 0.35));
    }

    private void Row(Flow flow, IReadOnlyList<Cell> cells)
    {
        var (x, y) = (flow.Left, flow.Y + BaseLine);
        for (var i = 0; i < Columns.Count && i < cells.Count; i++)
        {
            var (column, cell) = (Columns[i], cells[i]);
            var tint = cell.Tint ?? Palette.Ink;
            if (column.Number > 0)
            {
                flow.Ink.Text(cell.Text, x + column.Number, y, new(Size, tint, Anchor.End, cell.Weight));
                if (cell.Band.Length > 0)
                {
                    var room = column.Width - column.Number - 1.6;
                    var small = Math.Min(Size * 0.68, Size * 0.68 * room / Typeface.WidthOf(cell.Band, Size * 0.68));
                    flow.Ink.Text(cell.Band, x + column.Number + 1, y, new(small, Palette.Soft));
                }
            }
            else
            {
                var text = Texts.Fitting(PaperInk.Readable(cell.Text), column.Width - 1.5, Size, cell.Weight);
                flow.Ink.Text(text, x + 0.3, y, new(Size, tint, Weight: cell.Weight));
            }

            x += column.Width;
        }

        flow.Ink.Line(flow.Left, flow.Y + RowHeight, flow.Left + Width, flow.Y + RowHeight, new(Palette.Rule, 0.13));
    }
}
