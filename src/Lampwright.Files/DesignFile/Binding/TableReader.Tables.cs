using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Tables within the table: one, many that the maker named, lists.</summary>
internal sealed partial class TableReader
{
    /// <summary>A table under a key.</summary>
    public TableReader Table(string key)
    {
        var rule = Rule(key);
        var node = table?.Find(key)?.Value;
        if (node is not null and not DocTable)
        {
            context.Wrong(node, Join(key), "is not a table", Example(rule));
        }

        if (node is null)
        {
            MissingIfRequired(rule, key);
        }

        // Only a table that stands for something by itself (place, brake) brings defaults where it is not written.
        var absent = node is null && (silent || rule.Absent.Length > 0);
        return new TableReader(context, node as DocTable, Join(key), rule.Pattern, absent);
    }

    /// <summary>What stands at a key, or null.</summary>
    public DocNode? Node(string key) => table?.Find(key)?.Value;

    /// <summary>The reader of a key that is given by something else than a table.</summary>
    public TableReader Table(string key, DocNode instead)
    {
        _ = instead;
        return new TableReader(context, null, Join(key), Rule(key).Pattern, true);
    }

    /// <summary>A table, or a bare value that stands for one of its keys.</summary>
    public TableReader TableOrValue(string key, string valueKey)
    {
        var rule = Rule(key);
        if (table?.Find(key) is not { Value: DocScalar scalar } entry)
        {
            return Table(key);
        }

        var wrapped = new DocTable(scalar.Source, scalar.Start, scalar.Length);
        wrapped.Add(entry with { Name = valueKey });
        return new TableReader(context, wrapped, Join(key), rule.Pattern);
    }

    /// <summary>Tables that the maker named, in the order of the file.</summary>
    public IEnumerable<TableReader> Named(string key)
    {
        var rule = Rule(key);
        var node = table?.Find(key)?.Value;
        if (node is null)
        {
            yield break;
        }

        if (node is not DocTable tables)
        {
            context.Wrong(node, Join(key), "is not a table", $"[{Join(key)}.NAME]");
            yield break;
        }

        foreach (var entry in tables.Entries)
        {
            var inner = DocPath.Join(Join(key), entry.Name);
            if (entry.Value is DocTable named)
            {
                yield return new TableReader(context, named, inner, rule.Pattern + ".*") { Name = entry.Name };
            }
            else
            {
                context.Problem(
                    entry.Value,
                    entry.KeyStart,
                    inner,
                    QuantityError.Shown(entry.Value.Raw),
                    $"a table [{Join(key)}.NAME]",
                    $"{inner}: is not a table. Accepted: a table with a name of your choice, [{Join(key)}.NAME]."
                );
            }
        }
    }

    /// <summary>A table whose name is the maker's, below a pattern that ends in a star.</summary>
    public TableReader Inner(string name, string innerPattern)
    {
        context.Asked.Add(innerPattern);
        var node = table?.Find(name)?.Value;
        if (node is not null and not DocTable)
        {
            context.Wrong(node, Join(name), "is no rule", "{ value = \"...\", because = \"...\" }");
        }

        return new TableReader(context, node as DocTable, Join(name), innerPattern) { Name = name };
    }

    /// <summary>The dimension of the value at a key, or of a formula; null where it has no value.</summary>
    public Dimension? DimensionOf(string key, Formula? formula) =>
        formula is not null
            ? formula.TryEvaluate(0.001, 0.001, out var computed, out _)
                ? computed!.Nominal.Dimension
                : null
            : Node(key) is DocScalar scalar && context.Evaluate(scalar, Join(key)) is { } value
                ? value.Nominal.Dimension
                : null;

    /// <summary>A value of any dimension whose name is the maker's.</summary>
    public Value? Any(string name, string anyPattern)
    {
        context.Asked.Add(anyPattern);
        return table?.Find(name) is { } entry
            ? Read(DesignSchema.OfPattern(anyPattern)!, entry.Value, Join(name))
            : null;
    }

    /// <summary>A list of tables.</summary>
    public IReadOnlyList<TableReader> Tables(string key)
    {
        var rule = Rule(key);
        var readers = new List<TableReader>();
        foreach (var (item, itemPath) in Items(key, rule, "a list of tables, as in [{ ... }, { ... }]"))
        {
            if (item is DocTable inner)
            {
                readers.Add(new TableReader(context, inner, itemPath, rule.Pattern + "[]"));
            }
            else
            {
                context.Wrong(item, itemPath, "is not a table", "{ key = \"value\", ... }");
            }
        }

        return readers;
    }
}
