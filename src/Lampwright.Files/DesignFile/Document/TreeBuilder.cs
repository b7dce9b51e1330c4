using Tomlyn.Syntax;

namespace Lampwright.Files.DesignFile.Document;

/// <summary>Makes one tree of tables out of the statements of a file: headers, dotted keys and braces alike.</summary>
internal sealed class TreeBuilder(DesignText source, int shift)
{
    private readonly DocTable _root = new(source, 0, source.Text.Length);

    public DocTable Build(DocumentSyntax document)
    {
        var top = shift;
        var last = -1;
        foreach (var pair in document.KeyValues)
        {
            last = Pair(_root, pair, last);
        }

        _root.Blocks.Add(new DocBlock(top, -1, last));
        foreach (var table in document.Tables)
        {
            Header(table);
        }

        return _root;
    }

    private void Header(TableSyntaxBase table)
    {
        if (table.Name is null || table.OpenBracket is null)
        {
            return;
        }

        var start = table.OpenBracket.Span.Offset + shift;
        var headerEnd = (table.CloseBracket ?? (SyntaxNode)table.Name).Span is var span
            ? Clamp(span.Offset + span.Length + shift)
            : 0;
        var parts = Parts(table.Name);
        if (parts.Count == 0)
        {
            return;
        }

        var parent = _root;
        for (var i = 0; i < parts.Count - 1 && parent is not null; i++)
        {
            parent = Descend(parent, parts[i], start, headerEnd);
        }

        if (parent is null)
        {
            return;
        }

        var (name, keyStart, keyLength) = parts[^1];
        DocTable? target;
        if (table is TableArraySyntax)
        {
            var existing = parent.Find(name);
            if (existing is null)
            {
                var array = new DocArray(source, start, headerEnd - start) { IsOfHeaders = true };
                existing = new DocEntry(name, keyStart, keyLength, array, start, headerEnd);
                parent.Add(existing);
            }

            if (existing.Value is not DocArray { IsOfHeaders: true } list)
            {
                return;
            }

            target = new DocTable(source, start, headerEnd - start);
            list.Items.Add(target);
        }
        else
        {
            target = Descend(parent, parts[^1], start, headerEnd);
        }

        if (target is null)
        {
            return;
        }

        var last = -1;
        foreach (var pair in table.Items)
        {
            last = Pair(target, pair, last);
        }

        target.Blocks.Add(new DocBlock(start, headerEnd, last));
    }

    private int Pair(DocTable table, KeyValueSyntax pair, int last)
    {
        if (pair.Key is null || pair.Value is null || pair.Value.Span.Length <= 0)
        {
            return last;
        }

        var parts = Parts(pair.Key);
        if (parts.Count == 0)
        {
            return last;
        }

        var start = parts[0].Start;
        var end = Clamp(pair.Value.Span.Offset + pair.Value.Span.Length + shift);
        DocTable? target = table;
        for (var i = 0; i < parts.Count - 1 && target is not null; i++)
        {
            target = Descend(target, parts[i], start, end);
        }

        if (target is not null && Value(pair.Value) is { } value)
        {
            var (name, keyStart, keyLength) = parts[^1];
            target.Add(new DocEntry(name, keyStart, keyLength, value, start, end));
        }

        return Math.Max(last, end);
    }

    private DocTable? Descend(DocTable table, (string Name, int Start, int Length) part, int start, int end)
    {
        var entry = table.Find(part.Name);
        if (entry is null)
        {
            entry = new DocEntry(
                part.Name,
                part.Start,
                part.Length,
                new DocTable(source, start, end - start),
                start,
                end
            );
            table.Add(entry);
        }

        return entry.Value switch
        {
            DocTable found => found,
            DocArray { IsOfHeaders: true, Items: [.., DocTable last] } => last,
            _ => null,
        };
    }

    private DocNode? Value(ValueSyntax value)
    {
        var start = value.Span.Offset + shift;
        var length = Clamp(start + value.Span.Length) - start;
        if (length < 0)
        {
            return null;
        }

        switch (value)
        {
            case StringValueSyntax text:
                return new DocScalar(source, start, length, ScalarKind.Text, text.Value ?? "");
            case IntegerValueSyntax:
                return new DocScalar(source, start, length, ScalarKind.Integer, Written(start, length));
            case FloatValueSyntax:
                return new DocScalar(source, start, length, ScalarKind.Float, Written(start, length));
            case BooleanValueSyntax flag:
                return new DocScalar(source, start, length, ScalarKind.Flag, flag.Value ? "true" : "false");
            case DateTimeValueSyntax:
                return new DocScalar(source, start, length, ScalarKind.Date, Written(start, length));
            case ArraySyntax list:
                var array = new DocArray(source, start, length);
                foreach (var item in list.Items)
                {
                    if (item.Value is not null && Value(item.Value) is { } node)
                    {
                        array.Items.Add(node);
                    }
                }

                return array;
            case InlineTableSyntax inline:
                var table = new DocTable(source, start, length) { IsInline = true };
                foreach (var item in inline.Items)
                {
                    if (item.KeyValue is not null)
                    {
                        Pair(table, item.KeyValue, -1);
                    }
                }

                return table;
            default:
                return null;
        }
    }

    /// <summary>The reader lets what is never closed end beyond the end of the text.</summary>
    private int Clamp(int end) => Math.Min(end, source.Text.Length);

    private string Written(int start, int length) => source.Text.Substring(start, length);

    private List<(string Name, int Start, int Length)> Parts(KeySyntax key)
    {
        var parts = new List<(string, int, int)>();
        Take(key.Key);
        foreach (var dotted in key.DotKeys)
        {
            Take(dotted.Key);
        }

        return parts;

        void Take(BareKeyOrStringValueSyntax? part)
        {
            var name = part switch
            {
                BareKeySyntax bare => bare.Key?.Text,
                StringValueSyntax text => text.Value,
                _ => null,
            };
            if (name is not null)
            {
                parts.Add((name, part!.Span.Offset + shift, part.Span.Length));
            }
        }
    }
}
