using System.Globalization;

namespace Lampwright.Tables;

/// <summary>A published table kept whole as an embedded CSV resource.</summary>
/// <remarks>
/// Lines that start with <c>#</c> come first and say <c># source = ID</c> (an id of sources.toml; more may follow, separated by commas),
/// <c># rows = N</c> and, against slips of the pen, <c># sum COLUMN = VALUE</c>. Then a heading with the unit in each column's name, then the rows.
/// No quoting: cells hold no commas. An empty cell is a value that the source does not print.
/// </remarks>
public sealed class CsvTable
{
    private readonly string[] columns;
    private readonly string[][] rows;

    private CsvTable(string name, string text)
    {
        Name = name;
        var notes = new Dictionary<string, string>(StringComparer.Ordinal);
        var body = new List<string[]>();
        foreach (var line in text.Split('\n'))
        {
            var trimmed = line.Trim();
            if (trimmed.StartsWith('#'))
            {
                var at = trimmed.IndexOf('=', StringComparison.Ordinal);
                if (at > 0)
                {
                    notes[trimmed[1..at].Trim()] = trimmed[(at + 1)..].Trim();
                }
            }
            else if (trimmed.Length > 0)
            {
                body.Add([.. trimmed.Split(',').Select(cell => cell.Trim())]);
            }
        }

        Notes = notes;
        columns = body[0];
        rows = [.. body.Skip(1)];
    }

    /// <summary>Name of the resource, for example <c>Tables/threads.csv</c>.</summary>
    public string Name { get; }

    /// <summary>What the comment lines say: source, rows, sums.</summary>
    public IReadOnlyDictionary<string, string> Notes { get; }

    /// <summary>Ids of the sources in sources.toml.</summary>
    public IReadOnlyList<string> Sources =>
        Notes.TryGetValue("source", out var ids) ? [.. ids.Split(',').Select(id => id.Trim())] : [];

    /// <summary>Count of rows.</summary>
    public int Count => rows.Length;

    /// <summary>Names of the columns.</summary>
    public IReadOnlyList<string> Columns => columns;

    /// <summary>Reads a table out of the resources of the core.</summary>
    /// <param name="name">Name of the resource, for example <c>Tables/threads.csv</c>.</param>
    /// <exception cref="ArgumentException">There is no such table.</exception>
    public static CsvTable Load(string name)
    {
        using var stream =
            typeof(CsvTable).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException("There is no table " + name + ".", nameof(name));
        using var reader = new StreamReader(stream);
        return new(name, reader.ReadToEnd());
    }

    /// <summary>Names of all tables of the core.</summary>
    public static IReadOnlyList<string> Names =>
        [
            .. typeof(CsvTable)
                .Assembly.GetManifestResourceNames()
                .Where(name => name.EndsWith(".csv", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The text of a cell; empty where the source prints none.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <param name="column">Name of the column.</param>
    public string Text(int row, string column) => rows[row][Index(column)];

    /// <summary>The number of a cell; null where the source prints none.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <param name="column">Name of the column.</param>
    public double? NumberOrNull(int row, string column) =>
        Text(row, column) is { Length: > 0 } cell ? double.Parse(cell, CultureInfo.InvariantCulture) : null;

    /// <summary>The number of a cell.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <param name="column">Name of the column.</param>
    /// <exception cref="InvalidOperationException">The cell is empty.</exception>
    public double Number(int row, string column) =>
        NumberOrNull(row, column)
        ?? throw new InvalidOperationException(Name + " has no " + column + " in row " + row + ".");

    private int Index(string column)
    {
        var index = Array.IndexOf(columns, column);
        return index >= 0
            ? index
            : throw new ArgumentException(Name + " has no column " + column + ".", nameof(column));
    }
}
