using Lampwright.Files.DesignFile.Document;

namespace Lampwright.Files.DesignFile.Edits;

/// <summary>Finds the stretches of text that a key or a table takes.</summary>
internal static class Deletion
{
    public static List<Splice>? Of(DesignText text, string path, out string? refusal)
    {
        refusal = null;
        var (value, entry, parent) = DocPath.Find(text.Root, path)!.Value;
        if (parent is DocArray array)
        {
            if (array.IsOfHeaders)
            {
                refusal = $"{path} stands under a doubled header; delete it in the text";
                return null;
            }

            return [Item(array, array.Items.IndexOf(value))];
        }

        if (parent is DocTable { IsInline: true } inline)
        {
            return [Braced(inline, entry!)];
        }

        var splices = new List<Splice>();
        if (value is DocTable { IsInline: false } table)
        {
            Blocks(text, table, splices);
        }
        else
        {
            splices.Add(Line(text, entry!.StatementStart, entry.StatementEnd));
        }

        return splices;
    }

    private static void Blocks(DesignText text, DocTable table, List<Splice> splices)
    {
        foreach (var block in table.Blocks)
        {
            splices.Add(Line(text, block.HeaderStart, Math.Max(block.HeaderEnd, block.LastEnd)));
        }

        foreach (var entry in table.Entries)
        {
            if (entry.Value is DocTable { IsInline: false } inner)
            {
                Blocks(text, inner, splices);
            }
            else if (
                !table.Blocks.Exists(b => entry.StatementStart >= b.HeaderStart && entry.StatementEnd <= b.LastEnd)
            )
            {
                // A key of dotted writing that stands in the block of a table above.
                splices.Add(Line(text, entry.StatementStart, entry.StatementEnd));
            }
        }

        Disjoin(splices);
    }

    /// <summary>Stretches that lie within others are done with them.</summary>
    private static void Disjoin(List<Splice> splices)
    {
        var sorted = splices.Distinct().OrderBy(s => s.Start).ThenByDescending(s => s.Length).ToList();
        splices.Clear();
        var end = -1;
        foreach (var splice in sorted)
        {
            if (splice.Start < end)
            {
                continue;
            }

            splices.Add(splice);
            end = splice.Start + splice.Length;
        }
    }

    private static Splice Line(DesignText text, int start, int end)
    {
        var from = start == 0 ? 0 : text.Text.LastIndexOf('\n', start - 1) + 1;
        from = Math.Max(from, text.Text.StartsWith('\uFEFF') ? 1 : 0);
        if (!string.IsNullOrWhiteSpace(text.Text[from..start]))
        {
            from = start;
        }

        var to = Insertion.LineEnd(text.Text, end);
        to = Math.Min(text.Text.Length, to + Insertion.EolLength(text.Text, to));
        return new Splice(from, to - from, "");
    }

    private static Splice Item(DocArray array, int index)
    {
        var item = array.Items[index];
        if (array.Items.Count == 1)
        {
            return new Splice(item.Start, item.Length, "");
        }

        return index == 0
            ? new Splice(item.Start, array.Items[1].Start - item.Start, "")
            : new Splice(array.Items[index - 1].End, item.End - array.Items[index - 1].End, "");
    }

    private static Splice Braced(DocTable inline, DocEntry entry)
    {
        var order = inline.Entries.OrderBy(e => e.StatementStart).ToList();
        var index = order.IndexOf(entry);
        if (order.Count == 1)
        {
            return new Splice(inline.Start + 1, inline.Length - 2, "");
        }

        return index == 0
            ? new Splice(entry.StatementStart, order[1].StatementStart - entry.StatementStart, "")
            : new Splice(order[index - 1].StatementEnd, entry.StatementEnd - order[index - 1].StatementEnd, "");
    }
}
