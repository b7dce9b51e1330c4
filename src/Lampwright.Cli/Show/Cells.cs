using Lampwright.Evaluation;
using Lampwright.Web.Show;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Lampwright.Cli.Show;

/// <summary>A table of few lines: a rule under its head, numbers to the right, bands in a quieter tone behind them.</summary>
internal sealed class Cells
{
    private static readonly Style Quiet = new(Color.Grey);
    private readonly Table _table = new() { Border = TableBorder.Simple, UseSafeBorder = false };

    /// <summary>A table with these heads; one that begins with &gt; is over numbers.</summary>
    public Cells(params string[] heads)
    {
        foreach (var head in heads)
        {
            var toRight = head.StartsWith('>');
            var column = new TableColumn(new Text(toRight ? head[1..] : head, Quiet)) { NoWrap = toRight };
            _table.AddColumn(toRight ? column.RightAligned() : column);
        }
    }

    /// <summary>Adds a row.</summary>
    public void Row(params IRenderable[] cells) => _table.AddRow(cells);

    /// <summary>The table, under a line that says what it shows.</summary>
    public void On(IAnsiConsole screen, string title)
    {
        if (_table.Rows.Count == 0)
        {
            return;
        }

        screen.WriteLine();
        screen.Write(new Text(Words.Plain(title) + "\n", new Style(decoration: Decoration.Bold)));
        screen.Write(_table);
    }

    /// <summary>A text.</summary>
    public static IRenderable Of(string text) => new Text(Words.Plain(text));

    /// <summary>A text in a quiet tone.</summary>
    public static IRenderable Side(string text) => new Text(Words.Plain(text), Quiet);

    /// <summary>A number without a band.</summary>
    public static IRenderable Of(double value, int decimals) => new Text(Numbers.Fixed(value, decimals));

    /// <summary>A predicted number, its band behind it; nothing where it is absent.</summary>
    public static IRenderable Of(Predicted? number, Func<double, string> write)
    {
        var cell = new Paragraph();
        if (number is { } p)
        {
            cell.Append(write(p.Value));
            if (Words.HasBand(p))
            {
                cell.Append("  " + Numbers.Band(p, write), Quiet);
            }
        }

        return cell;
    }

    /// <summary>A predicted number with fixed decimals, its band behind it.</summary>
    public static IRenderable Of(Predicted? number, int decimals) => Of(number, v => Numbers.Fixed(v, decimals));

    /// <summary>A predicted number with three significant figures, its band behind it.</summary>
    public static IRenderable Rounded(Predicted? number) => Of(number, v => Numbers.Significant(v));

    /// <summary>A predicted share in percent, its band behind it.</summary>
    public static IRenderable Percent(Predicted? number, int decimals = 0) =>
        Of(number?.In(100), v => Numbers.Fixed(v, decimals));
}
