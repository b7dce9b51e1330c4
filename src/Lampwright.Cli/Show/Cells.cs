using Lampwright.Evaluation;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>What stands in one place of a table.</summary>
/// <param name="Text">The text, or the number as it is read first.</param>
/// <param name="Band">Its band, quieter; empty where there is none.</param>
/// <param name="IsQuiet">Whether the text itself is said in the quieter tone.</param>
internal readonly record struct Cell(string Text, string Band = "", bool IsQuiet = false)
{
    /// <summary>Columns of the terminal it takes.</summary>
    public int Width(bool withBand) => Text.Length + (withBand && Band.Length > 0 ? Band.Length + 2 : 0);
}

/// <summary>A table of few lines: a rule under its head, numbers to the right, bands in a quieter tone behind them.</summary>
/// <remarks>A number is never broken over lines: where the terminal is too narrow for bands, they are left out and that is said.</remarks>
internal sealed class Cells
{
    private static readonly Style Quiet = new(Color.Grey);
    private static readonly int WideText = 24;
    private static readonly int Gap = 2;
    private readonly string[] _heads;
    private readonly bool[] _isNumber;
    private readonly List<Cell[]> _rows = [];

    /// <summary>A table with these heads; one that begins with &gt; is over numbers.</summary>
    public Cells(params string[] heads)
    {
        _isNumber = [.. heads.Select(h => h.StartsWith('>'))];
        _heads = [.. heads.Select(h => h.TrimStart('>'))];
    }

    /// <summary>Adds a row.</summary>
    public void Row(params Cell[] cells) => _rows.Add(cells);

    /// <summary>The table, under a line that says what it shows.</summary>
    public void On(IAnsiConsole screen, string title)
    {
        if (_rows.Count == 0)
        {
            return;
        }

        var withBands = Enumerable.Range(0, _heads.Length).Sum(c => Least(c, true) + Gap) + 1 <= screen.Profile.Width;
        screen.WriteLine();
        screen.Write(new Text(Words.Plain(title) + "\n", new Style(decoration: Decoration.Bold)));
        screen.Write(Laid(withBands));
        if (!withBands && _rows.Any(r => r.Any(c => c.Band.Length > 0)))
        {
            screen.Write(new Text("  (too narrow here for the bands)\n", Quiet));
        }
    }

    /// <summary>A text.</summary>
    public static Cell Of(string text) => new(Words.Plain(text));

    /// <summary>A text in a quiet tone.</summary>
    public static Cell Side(string text) => new(Words.Plain(text), IsQuiet: true);

    /// <summary>A number without a band.</summary>
    public static Cell Of(double value, int decimals) => new(Numbers.Fixed(value, decimals));

    /// <summary>A predicted number, its band behind it; nothing where it is absent.</summary>
    public static Cell Of(Predicted? number, Func<double, string> write) =>
        number is { } p ? new(write(p.Value), Words.HasBand(p) ? Numbers.Band(p, write) : "") : new("");

    /// <summary>A predicted number with fixed decimals, its band behind it.</summary>
    public static Cell Of(Predicted? number, int decimals) => Of(number, v => Numbers.Fixed(v, decimals));

    /// <summary>A predicted number with three significant figures, its band behind it.</summary>
    public static Cell Rounded(Predicted? number) => Of(number, v => Numbers.Significant(v));

    /// <summary>A predicted share in percent, its band behind it.</summary>
    public static Cell Percent(Predicted? number, int decimals = 0) =>
        Of(number?.In(100), v => Numbers.Fixed(v, decimals));

    private Table Laid(bool withBands)
    {
        var table = new Table
        {
            Border = TableBorder.Simple,
            UseSafeBorder = false,
            ShowRowSeparators = false,
        };
        for (var c = 0; c < _heads.Length; c++)
        {
            var column = new TableColumn(new Text(_heads[c], Quiet)) { Padding = new Padding(1, 0, 1, 0) };
            if (_isNumber[c])
            {
                column.Alignment = Justify.Right;
                column.Width = Least(c, withBands);
            }

            table.AddColumn(column);
        }

        foreach (var row in _rows)
        {
            table.AddRow(row.Select(cell => Written(cell, withBands)));
        }

        return table;
    }

    private static Paragraph Written(Cell cell, bool withBands)
    {
        var text = new Paragraph(cell.Text, cell.IsQuiet ? Quiet : Style.Plain);
        if (withBands && cell.Band.Length > 0)
        {
            text.Append("  " + cell.Band, Quiet);
        }

        return text;
    }

    /// <summary>Least width of a column: numbers whole, longer texts and heads broken between words.</summary>
    private int Least(int column, bool withBands)
    {
        var head = _heads[column].Split(' ').Max(word => word.Length);
        var widest = _rows.Max(r => r[column].Width(withBands));
        return Math.Max(head, _isNumber[column] ? widest : Math.Min(widest, WideText));
    }
}
