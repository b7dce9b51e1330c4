using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Lampwright.Files.DesignFile.Edits;

/// <summary>Finds every place where a path's last name is written as a key: in headers, in dotted keys, in braces.</summary>
internal static class KeyPlaces
{
    public static List<(int Start, int Length)> Of(DesignText text, IReadOnlyList<string> parts)
    {
        var shift = text.Text.StartsWith('\uFEFF') ? 1 : 0;
        var places = new List<(int, int)>();
        var document = SyntaxParser.Parse(text.Text[shift..], "", validate: false);
        Pairs(document.KeyValues, []);
        foreach (var table in document.Tables)
        {
            if (table.Name is null)
            {
                continue;
            }

            var header = Take(table.Name, []);
            Pairs(table.Items, header);
        }

        return places;

        void Pairs(IEnumerable<KeyValueSyntax> pairs, List<string> above)
        {
            foreach (var pair in pairs)
            {
                if (pair.Key is null)
                {
                    continue;
                }

                var path = Take(pair.Key, above);
                if (pair.Value is InlineTableSyntax inline && path.Count < parts.Count)
                {
                    Pairs(inline.Items.Select(i => i.KeyValue).OfType<KeyValueSyntax>(), path);
                }
            }
        }

        List<string> Take(KeySyntax key, List<string> above)
        {
            var path = new List<string>(above);
            Name(key.Key);
            foreach (var dotted in key.DotKeys)
            {
                Name(dotted.Key);
            }

            return path;

            void Name(BareKeyOrStringValueSyntax? part)
            {
                path.Add(
                    part is StringValueSyntax quoted ? quoted.Value ?? "" : (part as BareKeySyntax)?.Key?.Text ?? ""
                );
                if (part is not null && path.Count == parts.Count && path.SequenceEqual(parts, StringComparer.Ordinal))
                {
                    places.Add((part.Span.Offset + shift, part.Span.Length));
                }
            }
        }
    }
}
