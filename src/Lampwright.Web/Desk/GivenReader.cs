using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Web.Desk;

/// <summary>Reads what a design file says, and what its tables could say besides, as the fields of the board.</summary>
internal sealed class GivenReader
{
    private readonly DesignText _text;
    private readonly Func<string, string> _comesTo;
    private readonly List<GivenTable> _tables = [];

    private GivenReader(DesignText text, Func<string, string> comesTo) => (_text, _comesTo) = (text, comesTo);

    /// <summary>The tables of a file in its order; tables that may be left out and are show their defaults at the end.</summary>
    /// <param name="text">The file.</param>
    /// <param name="comesTo">What the expression at a path comes to, with its unit; empty where nobody knows.</param>
    public static IReadOnlyList<GivenTable> Of(DesignText text, Func<string, string> comesTo)
    {
        var reader = new GivenReader(text, comesTo);
        reader.Table("", "", text.Root);
        return reader._tables;
    }

    /// <summary>A table with a heading of its own, and those below it.</summary>
    private void Table(string path, string pattern, DocTable? table)
    {
        var fields = new List<GivenField>();
        var below = new List<(string Path, string Pattern, DocTable? Table)>();
        Fields(path, pattern, table, "", fields, below);
        if (path.Length > 0 || fields.Count > 0)
        {
            _tables.Add(new(path, fields) { Help = DesignSchema.OfPattern(pattern)?.Meaning ?? "" });
        }

        foreach (var (p, t, node) in below)
        {
            Table(p, t, node);
        }
    }

    private void Fields(
        string path,
        string pattern,
        DocTable? table,
        string label,
        List<GivenField> fields,
        List<(string, string, DocTable?)> below
    )
    {
        foreach (var entry in table?.Entries ?? [])
        {
            Entry(
                DocPath.Join(path, entry.Name),
                Known(pattern, entry.Name),
                entry,
                Spoken(label, entry.Name),
                fields,
                below
            );
        }

        foreach (var name in DesignSchema.NamesIn(pattern))
        {
            if (name != "*" && table?.Find(name) is null && DesignSchema.OfPattern(Join(pattern, name)) is { } key)
            {
                Unwritten(
                    DocPath.Join(path, name),
                    key,
                    Spoken(label, name),
                    fields,
                    below,
                    path.Length == 0,
                    table is not null
                );
            }
        }
    }

    private void Entry(
        string path,
        string pattern,
        DocEntry entry,
        string label,
        List<GivenField> fields,
        List<(string, string, DocTable?)> below
    )
    {
        var key = DesignSchema.OfPattern(pattern);
        switch (entry.Value)
        {
            case DocTable table when key?.Kind == KeyKind.NamedTables:
                foreach (var named in table.Entries)
                {
                    below.Add((DocPath.Join(path, named.Name), pattern + ".*", named.Value as DocTable));
                }

                break;
            case DocTable table when !path.Contains('.', StringComparison.Ordinal):
                below.Add((path, pattern, table));
                break;
            case DocTable table:
                Fields(path, pattern, table, label, fields, below);
                break;
            case DocArray array:
                Items(path, pattern, array, label, fields);
                break;
            default:
                fields.Add(Written(path, key, entry.Value, label));
                break;
        }
    }

    private void Items(string path, string pattern, DocArray array, string label, List<GivenField> fields)
    {
        var key = DesignSchema.OfPattern(pattern);
        for (var i = 0; i < array.Items.Count; i++)
        {
            var at = DocPath.Item(path, i);
            var spoken = $"{label} {i + 1}";
            switch (array.Items[i])
            {
                case DocTable row:
                    foreach (var entry in row.Entries)
                    {
                        var member = Known(pattern + "[]", entry.Name);
                        if (entry.Value is DocArray places)
                        {
                            Items(DocPath.Join(at, entry.Name), member, places, Spoken(spoken, entry.Name), fields);
                        }
                        else
                        {
                            fields.Add(
                                Written(
                                    DocPath.Join(at, entry.Name),
                                    DesignSchema.OfPattern(member),
                                    entry.Value,
                                    Spoken(spoken, entry.Name)
                                )
                            );
                        }
                    }

                    break;
                case DocArray inner:
                    Items(at, pattern, inner, spoken, fields);
                    break;
                case var item:
                    fields.Add(Written(at, key, item, spoken));
                    break;
            }
        }
    }

    private void Unwritten(
        string path,
        SchemaKey key,
        string label,
        List<GivenField> fields,
        List<(string, string, DocTable?)> below,
        bool isTop,
        bool isThere
    )
    {
        switch (key.Kind)
        {
            case KeyKind.NamedTables or KeyKind.ListOfTables:
                break;
            case KeyKind.Table when isTop:
                below.Add((path, key.Pattern, null));
                break;
            case KeyKind.Table when key.Absent == "none" || key.Absent.EndsWith(" is used", StringComparison.Ordinal):
                // Without the table there is no such thing, or another stands for it: the defaults of its keys are not in force.
                var spare = new List<GivenField>();
                Fields(path, key.Pattern, null, label, spare, below);
                fields.AddRange(spare.Select(f => f with { Default = "", DefaultSource = "" }));
                break;
            case KeyKind.Table:
                Fields(path, key.Pattern, null, label, fields, below);
                break;
            default:
                fields.Add(
                    new(path, label, "", Origin.Default)
                    {
                        Help = key.Meaning,
                        Accepts = Accepted(key),
                        Default = key.Default,
                        DefaultSource = key.DefaultSource,
                        Absent = key.Required && isThere ? "needed" : key.Absent,
                        Choices = Choices(key),
                    }
                );
                break;
        }
    }

    private GivenField Written(string path, SchemaKey? key, DocNode value, string label)
    {
        var text = value is DocScalar scalar ? scalar.Text : value.Raw;
        return new(path, label, text, text.StartsWith('{') ? Origin.Computed : Origin.Given)
        {
            Help = key?.Meaning ?? "",
            Accepts = key is null ? "" : Accepted(key),
            ComesTo = text.Contains('{', StringComparison.Ordinal) ? _comesTo(path) : "",
            Line = _text.At(value.Start).Line,
            Default = key?.Default ?? "",
            Choices = key is null ? [] : Choices(key),
        };
    }

    private IReadOnlyList<string> Choices(SchemaKey key) =>
        key.Kind switch
        {
            KeyKind.Choice => key.Choices,
            KeyKind.Flag => ["true", "false"],
            KeyKind.Reference when _text.Root.Find(key.RefersTo)?.Value is DocTable { Entries.Count: > 0 } named =>
            [
                .. named.Entries.Select(e => e.Name),
            ],
            _ => [],
        };

    private static string Accepted(SchemaKey key)
    {
        var example = KeyExamples.Of(key).Trim('"');
        return key.Range.Length > 0 ? $"{key.Range}, for example {example}" : $"for example {example}";
    }

    /// <summary>The pattern of a name in a table: its own where the schema has it, any name's otherwise.</summary>
    private static string Known(string pattern, string name) =>
        DesignSchema.OfPattern(Join(pattern, name)) is null && DesignSchema.OfPattern(pattern + ".*") is not null
            ? pattern + ".*"
            : Join(pattern, name);

    private static string Join(string pattern, string name) => pattern.Length == 0 ? name : pattern + "." + name;

    private static string Spoken(string label, string name)
    {
        var word = name.Replace('_', ' ');
        return label.Length == 0 ? word : $"{label} {word}";
    }
}
