using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Edits;

/// <summary>Renames a table or a named value with everything that refers to it.</summary>
internal static class Renaming
{
    public static List<Splice>? Of(DesignText text, string path, string name, out string? refusal)
    {
        refusal = Refusal(text, path, name, out var parts);
        if (refusal is not null)
        {
            return null;
        }

        var rename = new Names(text, parts!, name);
        rename.Keys();
        rename.Values(text.Root, "");
        return rename.Splices;
    }

    private static string? Refusal(DesignText text, string path, string name, out IReadOnlyList<string>? parts)
    {
        parts = DocPath.Split(path);
        if (!text.IsWhole)
        {
            return $"The file has a fault to mend first: line {text.Problems[0].Line}: {text.Problems[0].Message}";
        }

        if (parts is null || DocPath.Find(text.Root, path) is null)
        {
            return $"There is no {path}";
        }

        if (!Named(parts))
        {
            return $"{path} is a word of the file; only what you named yourself can be renamed";
        }

        if (!IsName(name))
        {
            return $"'{QuantityError.Shown(name)}' is no name: letters, digits and _ , starting with a letter";
        }

        var beside = DocPath.Join(DocPath.Parent(path), name);
        return DocPath.Find(text.Root, beside) is null ? null : $"{beside} is there already";
    }

    private static bool Named(IReadOnlyList<string> parts) =>
        parts.Count >= 2
        && !parts[^1].StartsWith('[')
        && (
            DesignSchema.OfPath(DocPath.Whole(parts.Take(parts.Count - 1)))?.Kind == KeyKind.NamedTables
            || (parts.Count == 2 && parts[0] == "given")
        );

    /// <summary>Names that expressions can use: no dash, which would subtract.</summary>
    private static bool IsName(string name) =>
        name.Length is > 0 and <= 60
        && (char.IsAsciiLetter(name[0]) || name[0] == '_')
        && name.All(c => char.IsAsciiLetterOrDigit(c) || c == '_');

    private sealed class Names(DesignText text, IReadOnlyList<string> parts, string name)
    {
        private readonly string _old = parts[^1];
        private readonly string _path = DocPath.Whole(parts);

        public List<Splice> Splices { get; } = [];

        /// <summary>Every place where the name stands as a key: headers and dotted keys.</summary>
        public void Keys()
        {
            foreach (var (start, length) in KeyPlaces.Of(text, parts))
            {
                Splices.Add(new Splice(start, length, name));
            }
        }

        public void Values(DocNode node, string path)
        {
            switch (node)
            {
                case DocTable table:
                    foreach (var entry in table.Entries)
                    {
                        Values(entry.Value, DocPath.Join(path, entry.Name));
                    }

                    break;
                case DocArray array:
                    for (var i = 0; i < array.Items.Count; i++)
                    {
                        Values(array.Items[i], DocPath.Item(path, i));
                    }

                    break;
                case DocScalar { Kind: ScalarKind.Text } scalar:
                    Value(scalar, path);
                    break;
            }
        }

        private void Value(DocScalar scalar, string path)
        {
            if (scalar.Text.Contains('{', StringComparison.Ordinal))
            {
                Expressions(scalar);
            }

            var listPath = path.EndsWith(']') ? path[..path.LastIndexOf('[')] : path;
            if (
                DesignSchema.OfPath(listPath) is { RefersTo.Length: > 0 } key
                && Renamed(scalar.Text, key.RefersTo, path) is { } renamed
            )
            {
                Splices.Add(new Splice(scalar.Start, scalar.Length, Quoted(scalar, renamed)));
            }
        }

        private void Expressions(DocScalar scalar)
        {
            // A shape holds several expressions in one text; each pair of braces is looked at by itself.
            var open = scalar.Text.IndexOf('{', StringComparison.Ordinal);
            while (open >= 0)
            {
                var close = scalar.Text.IndexOf('}', open);
                if (close < 0)
                {
                    return;
                }

                if (Expression.TryParse(scalar.Text[(open + 1)..close], open + 1, out var expression, out _))
                {
                    foreach (var use in expression!.Names)
                    {
                        if (
                            InExpression(use.Path) is { } renamed
                            && scalar.PlaceOf(use.Offset) is var place
                            && place > scalar.Start
                        )
                        {
                            Splices.Add(new Splice(place, use.Length, renamed));
                        }
                    }
                }

                open = scalar.Text.IndexOf('{', close);
            }
        }

        private string? InExpression(string use)
        {
            if (parts[0] == "given" && use == _old)
            {
                return name;
            }

            return Under(use, _path) is { } rest ? DocPath.Join(DocPath.Parent(_path), name) + rest : null;
        }

        private string? Renamed(string value, string to, string at)
        {
            // Inside a part: flanges and holes by their own names (wall_l.far, face).
            if (parts[0] == "part" && parts.Count == 4)
            {
                var samePart = DocPath.Split(at) is { Count: > 1 } where && where[0] == "part" && where[1] == parts[1];
                if (parts[2] == "flange" && to is "edge" or "panel" && samePart)
                {
                    return Under(value, _old) is { } rest ? name + rest : null;
                }

                if (parts[2] == "hole" && to is "thing" or "pattern")
                {
                    return Under(value, $"{parts[1]}.{_old}") is { } rest ? $"{parts[1]}.{name}{rest}"
                        : Under(value, _path) is { } full ? $"part.{parts[1]}.hole.{name}{full}"
                        : null;
                }

                return null;
            }

            // A pattern of a bought thing: fan.main.mount, written fan.main.holes.mount in the file.
            if (parts.Count == 4 && parts[2] == "holes")
            {
                return Under(value, $"{parts[0]}.{parts[1]}.{_old}") is { } rest ? $"{parts[0]}.{parts[1]}.{name}{rest}"
                    : parts[0] == "item" && Under(value, $"{parts[1]}.{_old}") is { } shortRest
                        ? $"{parts[1]}.{name}{shortRest}"
                    : null;
            }

            if (parts.Count != 2)
            {
                return null;
            }

            if (to == parts[0] || (to == "body" && parts[0] is "part" or "item"))
            {
                return value == _old ? name : null;
            }

            if (to is not ("thing" or "pattern"))
            {
                return null;
            }

            if (Under(value, _path) is { } behind)
            {
                return $"{parts[0]}.{name}{behind}";
            }

            return parts[0] is "part" or "item" && Under(value, _old) is { } own ? name + own : null;
        }

        /// <summary>What stands behind a path in a longer one: empty for the path itself, null where it is another.</summary>
        private static string? Under(string value, string path) =>
            value == path ? ""
            : value.StartsWith(path + ".", StringComparison.Ordinal)
            || value.StartsWith(path + "[", StringComparison.Ordinal)
                ? value[path.Length..]
            : null;

        private static string Quoted(DocScalar scalar, string value) =>
            scalar.Raw.StartsWith('\'') && !value.Contains('\'') ? $"'{value}'" : DocPath.Quoted(value);
    }
}
