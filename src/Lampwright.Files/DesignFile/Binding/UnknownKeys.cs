using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Finds keys that the schema does not know and names the nearest one.</summary>
internal static class UnknownKeys
{
    public static void Tell(LoadContext context) => Table(context, context.Root, "", "");

    private static void Table(LoadContext context, DocTable table, string path, string pattern)
    {
        var known = DesignSchema.NamesIn(pattern);
        foreach (var entry in table.Entries)
        {
            var inner = DocPath.Join(path, entry.Name);
            var own = known.Contains("*", StringComparer.Ordinal) ? "*" : entry.Name;
            var full = pattern.Length == 0 ? own : $"{pattern}.{own}";
            if (DesignSchema.OfPattern(full) is not { } key)
            {
                Unknown(context, entry, inner, known, pattern);
                continue;
            }

            Value(context, entry.Value, inner, key);
        }
    }

    private static void Value(LoadContext context, DocNode node, string path, SchemaKey key)
    {
        switch (key.Kind, node)
        {
            case (KeyKind.NamedTables, DocTable named):
                foreach (var entry in named.Entries)
                {
                    if (entry.Value is DocTable inner)
                    {
                        Table(context, inner, DocPath.Join(path, entry.Name), key.Pattern + ".*");
                    }
                }

                break;
            case (KeyKind.ListOfTables or KeyKind.ValuesOrTables, DocArray list):
                for (var i = 0; i < list.Items.Count; i++)
                {
                    if (list.Items[i] is DocTable inner)
                    {
                        Table(context, inner, DocPath.Item(path, i), key.Pattern + "[]");
                    }
                }

                break;
            case (KeyKind.Table, DocTable inner):
                Table(context, inner, path, key.Pattern);
                break;
        }
    }

    private static void Unknown(
        LoadContext context,
        DocEntry entry,
        string path,
        IReadOnlyList<string> known,
        string pattern
    )
    {
        var near = Nearest.Of(entry.Name, known);
        var where = pattern.Length == 0 ? "at the top of the file" : "here";
        var accepted = near ?? string.Join(", ", known);
        var message = near is null
            ? $"{path}: no such key {where}. Accepted: {accepted}."
            : $"{path}: no such key {where}. Did you mean {near}?";
        context.Problem(entry.Value, entry.KeyStart, path, QuantityError.Shown(entry.Name), accepted, message);
    }
}
