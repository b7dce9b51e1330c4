using System.Text;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Writes the tables of keys of docs/design-file.md out of the schema.</summary>
public static class KeyTables
{
    /// <summary>All keys as Markdown: a section for each table of the first order, a row for each key.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder();
        var section = "\0";
        foreach (var key in DesignSchema.All)
        {
            var first = key.Pattern.Split('.', '[')[0];
            var isTable = DesignSchema.NamesIn(first).Count > 0 || DesignSchema.NamesIn(first + ".*").Count > 0;
            var owner = isTable ? first : "";
            if (owner != section)
            {
                section = owner;
                Head(text, owner);
            }

            if (key.Pattern != owner)
            {
                Row(text, key, owner);
            }
        }

        text.Append("\n### Rules that `[rules]` may override\n\n| NAME | takes | what it limits |\n|---|---|---|\n");
        foreach (var rule in RuleNames.All)
        {
            text.Append($"| `{rule.Name}` | {DimensionNames.Name(rule.Dimension)} | {rule.Meaning} |\n");
        }

        return text.ToString();
    }

    /// <summary>What a key takes, in a few words.</summary>
    public static string Takes(SchemaKey key)
    {
        var one = DimensionNames.Name(key.Dimension);
        return key.Kind switch
        {
            KeyKind.Quantity => one,
            KeyKind.AnyQuantity => "a value of any dimension",
            KeyKind.TwoQuantities => $"two: {one} each",
            KeyKind.ThreeQuantities => $"three: {one} each",
            KeyKind.OneOrTwoQuantities => $"{one}, or two",
            KeyKind.Quantities when key.Dimension.IsNone => "a list of values",
            KeyKind.Quantities => $"a list: {one} each",
            KeyKind.ValuesOrTables => $"a list: {one} or a table each",
            KeyKind.Place => "two lengths, each may be `centre`; or `centre`",
            KeyKind.Places => "a list of pairs of lengths",
            KeyKind.FanCurve => "a list of pairs: air flow and pressure",
            KeyKind.Shape => "a shape",
            KeyKind.Count => "a whole number",
            KeyKind.TwoCounts => "two whole numbers",
            KeyKind.Text => "a text",
            KeyKind.Texts => "a list of texts",
            KeyKind.Choice => string.Join(", ", key.Choices.Select(c => $"`{c}`")),
            KeyKind.Flag => "`true` or `false`",
            KeyKind.Reference => $"a name ({Named(key.RefersTo)})",
            KeyKind.References => $"names ({Named(key.RefersTo)})",
            KeyKind.NamedTables => "tables that you name",
            KeyKind.ListOfTables => "a list of tables",
            _ => "a table",
        };
    }

    private static void Head(StringBuilder text, string table)
    {
        if (table.Length == 0)
        {
            text.Append("### At the top of the file\n\n");
        }
        else
        {
            var key = DesignSchema.OfPattern(table)!;
            var header = key.Kind == KeyKind.NamedTables ? $"[{table}.NAME]" : $"[{table}]";
            text.Append($"\n### `{header}`\n\n{key.Meaning} Station: {key.Station}.");
            text.Append(key.InShop ? " May stand in the shop file.\n\n" : "\n\n");
        }

        text.Append("| key | takes | range | where it is not written | meaning |\n|---|---|---|---|---|\n");
    }

    private static void Row(StringBuilder text, SchemaKey key, string owner)
    {
        var name = owner.Length == 0 ? key.Pattern : key.Pattern[(owner.Length + 1)..];
        name = name.StartsWith("*.", StringComparison.Ordinal) ? name[2..] : name;
        name = name.Replace("*", "NAME", StringComparison.Ordinal);
        var absent =
            key.Required ? "**required**"
            : key.Default.Length > 0 ? $"`{key.Default}` ({key.DefaultSource})"
            : key.Absent;
        text.Append(
            $"| `{name}` | {Takes(key)} | {key.Range} | {absent} | {Example(key)} |\n".Replace(
                "  ",
                " ",
                StringComparison.Ordinal
            )
        );
    }

    private static string Example(SchemaKey key) =>
        key.Example.Length > 0 ? $"{key.Meaning} Example: `{KeyExamples.Of(key)}`" : key.Meaning;

    private static string Named(string to) =>
        to switch
        {
            "thing" => "of anything: `fan.main.mount`, `sink_tray.vents`, `sink.main`",
            "pattern" => "of a hole pattern, or a screw",
            "body" => "of a part or an item",
            "panel" => "`face` or a flange of the part",
            "edge" => "of an edge: `face.left`, `wall_l.far`",
            _ => $"of a table `[{to}.NAME]`",
        };
}
