using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Findings;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>The shop file: facts that several lights share, read beside the design and laid under it.</summary>
internal static class ShopFile
{
    /// <summary>The shop file that a design names.</summary>
    public static (DesignText? Shop, FileProblem? Problem) Read(DesignText text, Func<string, string?> readBeside)
    {
        if (text.Root.Find("shop")?.Value is not DocScalar { Kind: ScalarKind.Text } scalar)
        {
            return (null, null);
        }

        // Only a plain name beside the design: a design from somebody else must not reach into other folders.
        var name = scalar.Text;
        var plain =
            name.Length is > 0 and < 200
            && name.AsSpan().IndexOfAny("/\\:*?\"<>|") < 0
            && !name.Any(char.IsControl)
            && name is not "." and not "..";
        var content = plain ? readBeside(name) : null;
        if (content is not null)
        {
            return (DesignText.Parse(content, name), null);
        }

        var (line, column) = text.At(scalar.Start);
        var shown = QuantityError.Shown(name);
        var accepted = plain ? "a file that can be read beside this one" : "a plain file name such as shop.toml";
        return (
            null,
            new FileProblem(
                text.FileName,
                line,
                column,
                "shop",
                shown,
                accepted,
                $"shop: '{shown}' cannot be read. Accepted: {accepted}."
            )
        );
    }

    /// <summary>Design over shop: a named table in both counts as the design has it.</summary>
    public static DocTable Merge(DesignText design, DesignText shop, List<Finding> notes)
    {
        var merged = new DocTable(design, design.Root.Start, design.Root.Length);
        foreach (var entry in design.Root.Entries)
        {
            merged.Add(entry);
        }

        foreach (var entry in shop.Root.Entries)
        {
            var own = design.Root.Find(entry.Name);
            var key = DesignSchema.OfPattern(entry.Name);
            if (own is null)
            {
                merged.Add(entry);
            }
            else if (own.Value is DocTable mine && entry.Value is DocTable theirs && Layered(key))
            {
                var both = Layer(mine, theirs, entry.Name, shop.FileName, notes);
                merged = Replaced(merged, own with { Value = both });
            }
            else if (entry.Name is not ("format" or "title"))
            {
                Twice(notes, entry.Name, shop.FileName);
            }
        }

        return merged;
    }

    /// <summary>One table over another; how the papers are printed is laid key by key, since the printer's part of it belongs to the shop.</summary>
    private static DocTable Layer(DocTable mine, DocTable theirs, string path, string shop, List<Finding> notes)
    {
        // An entry of a name cannot be replaced, so the merged table is put together anew.
        var both = new DocTable(mine.Source, mine.Start, mine.Length);
        foreach (var own in mine.Entries)
        {
            both.Add(
                Nested(own.Name) && own.Value is DocTable inner && theirs.Find(own.Name)?.Value is DocTable below
                    ? own with
                    {
                        Value = Layer(inner, below, DocPath.Join(path, own.Name), shop, notes),
                    }
                    : own
            );
        }

        foreach (var entry in theirs.Entries.Where(e => !both.Add(e)))
        {
            if (!Nested(entry.Name) || entry.Value is not DocTable || mine.Find(entry.Name)?.Value is not DocTable)
            {
                Twice(notes, DocPath.Join(path, entry.Name), shop);
            }
        }

        return both;

        bool Nested(string name) => path == "show" && name == "templates";
    }

    private static bool Layered(SchemaKey? key) =>
        key is { Kind: KeyKind.NamedTables } || key?.Pattern is "given" or "rules" or "brake" or "drawer" or "show";

    private static void Twice(List<Finding> notes, string path, string shop) =>
        notes.Add(FileRules.SaidTwice.At(path, $"{path} stands here and in {shop}; what stands here counts."));

    private static DocTable Replaced(DocTable table, DocEntry entry)
    {
        var replaced = new DocTable(table.Source, table.Start, table.Length);
        foreach (var old in table.Entries)
        {
            replaced.Add(old.Name == entry.Name ? entry : old);
        }

        return replaced;
    }
}
