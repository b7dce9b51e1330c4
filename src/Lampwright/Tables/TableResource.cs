using System.Globalization;
using System.Reflection;

namespace Lampwright.Tables;

/// <summary>A published table kept as a CSV resource: comment lines with <c>#</c>, one header line, one row per line.</summary>
/// <remarks>
/// The comment lines carry <c># source: id</c> (registered in sources.toml), <c># rows: n</c> and <c># sum: x</c>, the
/// sum over all numeric cells, so that a slip of the pen is caught by a test. Empty cells read as NaN inside this type only.
/// </remarks>
public sealed class TableResource
{
    private readonly string[][] _rows;
    private readonly Dictionary<string, int> _columns;

    private TableResource(Dictionary<string, string> notes, Dictionary<string, int> columns, string[][] rows)
    {
        Notes = notes;
        _columns = columns;
        _rows = rows;
    }

    /// <summary>What the comment lines say: source, rows, sum and others, by key.</summary>
    public IReadOnlyDictionary<string, string> Notes { get; }

    /// <summary>How many rows the table has.</summary>
    public int RowCount => _rows.Length;

    /// <summary>Names of the columns, in order.</summary>
    public IReadOnlyCollection<string> Columns => _columns.Keys;

    /// <summary>Reads a table that is embedded in this assembly.</summary>
    /// <param name="file">File name in Tables/, for example <c>e-series.csv</c>.</param>
    /// <exception cref="ArgumentException">There is no such table.</exception>
    public static TableResource Read(string file)
    {
        using var stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream("Tables/" + file)
            ?? throw new ArgumentException($"There is no table {file}.", nameof(file));
        using var reader = new StreamReader(stream);
        return Parse(reader.ReadToEnd());
    }

    /// <summary>Reads a table from its text.</summary>
    public static TableResource Parse(string text)
    {
        var notes = new Dictionary<string, string>(StringComparer.Ordinal);
        var rows = new List<string[]>();
        string[]? header = null;
        foreach (var raw in text.Split('\n'))
        {
            var line = raw.Trim();
            if (line.StartsWith('#'))
            {
                var colon = line.IndexOf(':', StringComparison.Ordinal);
                if (colon > 0)
                {
                    notes[line[1..colon].Trim()] = line[(colon + 1)..].Trim();
                }
            }
            else if (line.Length > 0)
            {
                var cells = line.Split(',');
                if (header is null)
                {
                    header = cells;
                }
                else
                {
                    rows.Add(cells);
                }
            }
        }

        var columns = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < (header?.Length ?? 0); i++)
        {
            columns[header![i]] = i;
        }

        return new(notes, columns, [.. rows]);
    }

    /// <summary>A cell as text.</summary>
    public string Text(int row, string column) => _rows[row][_columns[column]];

    /// <summary>A cell as a number; NaN where the cell is empty or not a number.</summary>
    public double Number(int row, string column) => ToNumber(Text(row, column));

    /// <summary>Sum over all numeric cells, for the check against slips.</summary>
    public double Sum => _rows.Sum(r => r.Select(ToNumber).Where(double.IsFinite).Sum());

    private static double ToNumber(string cell) =>
        double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var n) ? n : double.NaN;
}
