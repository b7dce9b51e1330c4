using System.Globalization;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;

namespace Lampwright.Files.DesignFile.Edits;

/// <summary>Finds the sensible place for a key or a table that is not there yet.</summary>
/// <remarks>
/// A key goes behind the last key of its table, with the spacing of that table's other keys. A table that the maker names goes behind
/// the last table of its kind; any other table becomes keys with dots in the table it belongs to. Nothing else moves.
/// </remarks>
internal static class Insertion
{
    public static Splice? Of(DesignText text, string path, string toml, out string? refusal)
    {
        refusal = null;
        if (DocPath.Split(path) is not { } parts)
        {
            refusal = $"'{path}' is no path";
            return null;
        }

        DocNode node = text.Root;
        var depth = 0;
        DocTable? block = text.Root;
        var blockDepth = 0;
        for (; depth < parts.Count; depth++)
        {
            var next = Step(node, parts[depth]);
            if (next is null)
            {
                break;
            }

            node = next;
            if (node is DocTable { Blocks.Count: > 0 } or DocTable { IsInline: true })
            {
                (block, blockDepth) = ((DocTable)node, depth + 1);
            }
            else if (node is DocArray)
            {
                // Beneath a list only the tables in it can take keys.
                (block, blockDepth) = (null, depth + 1);
            }
        }

        if (parts.Skip(depth).Any(p => p.StartsWith('[')))
        {
            return Item(text, node, parts, depth, toml, out refusal);
        }

        if (node is DocScalar or DocArray || block is null)
        {
            refusal = $"{DocPath.Whole(parts.Take(depth))} is no table";
            return null;
        }

        if (block.IsInline)
        {
            return IntoBraces(block, Key(parts, blockDepth), toml);
        }

        var table = parts.Take(parts.Count - 1).ToList();
        return NeedsHeader(table, blockDepth)
            ? Table(text, HeaderOf(table), Key(parts, HeaderOf(table).Count) + " = " + toml)
            : IntoBlock(text, block, Key(parts, blockDepth), toml);
    }

    /// <summary>A new table, with a first line where one is given.</summary>
    public static Splice Table(DesignText text, IReadOnlyList<string> parts, string? line)
    {
        var eol = Eol(text.Text);
        var at = BehindKin(text, parts);
        var before = text.Text.AsSpan(0, at);
        var lead =
            before.Trim('\uFEFF').IsEmpty ? ""
            : before.EndsWith(eol + eol) || before.EndsWith("\n\n") ? ""
            : before.EndsWith("\n") ? eol
            : eol + eol;
        var header = $"[{DocPath.Whole(parts)}]{eol}";
        var tail = at < text.Text.Length && text.Text[at] is not ('\n' or '\r') ? eol : "";
        return new Splice(at, 0, lead + header + (line is null ? "" : line + eol) + tail);
    }

    private static DocNode? Step(DocNode node, string part)
    {
        if (node is DocArray array && part.StartsWith('[') && Index(part, out var index))
        {
            return index < array.Items.Count ? array.Items[index] : null;
        }

        return (node as DocTable)?.Find(part)?.Value;
    }

    private static bool Index(string part, out int index) =>
        int.TryParse(part.AsSpan(1, part.Length - 2), NumberStyles.None, CultureInfo.InvariantCulture, out index);

    private static string Key(IReadOnlyList<string> parts, int from) => DocPath.Whole(parts.Skip(from));

    /// <summary>A maker's named table wants a header of its own when nothing of it is written yet.</summary>
    private static bool NeedsHeader(IReadOnlyList<string> table, int written) => HeaderOf(table).Count > written;

    /// <summary>How much of a table's path stands in a header: up to the last name that the maker gives, or the first word.</summary>
    private static List<string> HeaderOf(IReadOnlyList<string> table)
    {
        var deepest = Math.Min(1, table.Count);
        for (var i = 1; i <= table.Count; i++)
        {
            var kind = DesignSchema.OfPath(DocPath.Whole(table.Take(i)))?.Kind;
            if (kind == KeyKind.NamedTables && i < table.Count && table[i - 1] != "holes")
            {
                deepest = i + 1;
            }
        }

        return [.. table.Take(deepest)];
    }

    private static Splice IntoBlock(DesignText text, DocTable table, string key, string toml)
    {
        var block = table.Blocks[^1];
        var eol = Eol(text.Text);
        var line = Aligned(text, table, key) + toml;
        if (block.LastEnd >= 0)
        {
            var end = LineEnd(text.Text, block.LastEnd);
            return new Splice(end, 0, eol + Indent(text.Text, table, block) + line);
        }

        if (block.HeaderEnd >= 0)
        {
            return new Splice(LineEnd(text.Text, block.HeaderEnd), 0, eol + line);
        }

        // The top of a file that starts with a table: its own keys go before everything but remarks.
        var first = text.Root.Entries.Count > 0 ? text.Root.Entries.Min(e => e.StatementStart) : text.Text.Length;
        var at = first == 0 ? 0 : text.Text.LastIndexOf('\n', Math.Min(first, text.Text.Length) - 1) + 1;
        at = Math.Max(at, text.Text.StartsWith('\uFEFF') ? 1 : 0);
        return new Splice(at, 0, line + eol + (text.Root.Entries.Count > 0 ? eol : ""));
    }

    /// <summary>The key with its equals sign set where the table's others have theirs, if they agree.</summary>
    private static string Aligned(DesignText text, DocTable table, string key)
    {
        var columns = new HashSet<int>();
        foreach (
            var entry in table.Entries.Where(e => e.Value.Source == text && e.Value is not DocTable { IsInline: false })
        )
        {
            var equal = text.Text.IndexOf('=', entry.KeyStart + entry.KeyLength);
            if (equal >= 0)
            {
                columns.Add(equal - text.Text.LastIndexOf('\n', entry.StatementStart) - 1);
            }
        }

        var width = columns.Count == 1 && table.Entries.Count > 1 ? columns.First() : 0;
        return key.PadRight(Math.Max(0, width - 1)) + " = ";
    }

    private static string Indent(string text, DocTable table, DocBlock block)
    {
        var last = table.Entries.LastOrDefault(e => e.StatementEnd == block.LastEnd);
        if (last is null)
        {
            return "";
        }

        var start = text.LastIndexOf('\n', Math.Max(0, last.StatementStart - 1)) + 1;
        var indent = text[start..Math.Max(start, last.StatementStart)];
        return string.IsNullOrWhiteSpace(indent) && !indent.Contains('\uFEFF') ? indent : "";
    }

    private static Splice IntoBraces(DocTable table, string key, string toml)
    {
        if (table.Entries.Count == 0)
        {
            return new Splice(table.Start + 1, table.Length - 2, $" {key} = {toml} ");
        }

        var last = table.Entries.Max(e => e.StatementEnd);
        return new Splice(last, 0, $", {key} = {toml}");
    }

    private static Splice? Item(
        DesignText text,
        DocNode node,
        IReadOnlyList<string> parts,
        int depth,
        string toml,
        out string? refusal
    )
    {
        refusal = null;
        if (
            depth == parts.Count - 1
            && node is DocArray { IsOfHeaders: false } array
            && Index(parts[depth], out var index)
            && index == array.Items.Count
        )
        {
            return array.Items.Count == 0
                ? new Splice(array.Start + 1, array.Length - 2, toml)
                : new Splice(array.Items[^1].End, 0, Between(text, array) + toml);
        }

        refusal = $"{DocPath.Whole(parts.Take(depth))} has no place {parts[depth]}";
        return null;
    }

    /// <summary>A list with an item on each line goes on that way.</summary>
    private static string Between(DesignText text, DocArray array)
    {
        var last = array.Items[^1];
        var lineStart = text.Text.LastIndexOf('\n', Math.Max(0, last.Start - 1)) + 1;
        var indent = text.Text[lineStart..last.Start];
        return lineStart > array.Start && string.IsNullOrWhiteSpace(indent) ? "," + Eol(text.Text) + indent : ", ";
    }

    private static int BehindKin(DesignText text, IReadOnlyList<string> parts)
    {
        for (var depth = parts.Count - 1; depth > 0; depth--)
        {
            if (
                DocPath.Find(text.Root, DocPath.Whole(parts.Take(depth)))?.Value is DocTable kin
                && LastEnd(kin) is var end and >= 0
            )
            {
                var at = LineEnd(text.Text, end);
                return Math.Min(text.Text.Length, at + EolLength(text.Text, at));
            }
        }

        return text.Text.Length;
    }

    private static int LastEnd(DocTable table)
    {
        var last = -1;
        foreach (var block in table.Blocks)
        {
            last = Math.Max(last, Math.Max(block.HeaderEnd, block.LastEnd));
        }

        foreach (var entry in table.Entries)
        {
            last = Math.Max(
                last,
                entry.Value is DocTable { IsInline: false } inner ? LastEnd(inner) : entry.StatementEnd
            );
        }

        return last;
    }

    internal static string Eol(string text)
    {
        var first = text.IndexOf('\n', StringComparison.Ordinal);
        return first > 0 && text[first - 1] == '\r' ? "\r\n" : "\n";
    }

    /// <summary>Where the line of a place ends, before its line break; a remark behind the value stays with it.</summary>
    internal static int LineEnd(string text, int at)
    {
        var end = text.IndexOf('\n', Math.Min(at, text.Length));
        return end < 0 ? text.Length
            : end > at && text[end - 1] == '\r' ? end - 1
            : end;
    }

    internal static int EolLength(string text, int at) =>
        at >= text.Length ? 0
        : text[at] == '\r' ? 2
        : 1;
}
