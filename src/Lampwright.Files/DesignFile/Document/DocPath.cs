using System.Globalization;
using System.Text;

namespace Lampwright.Files.DesignFile.Document;

/// <summary>Paths of keys: names with dots between, positions in lists in brackets (<c>emitter.main.points[0].current</c>).</summary>
/// <remarks>A name with other signs than letters, digits, <c>_</c> and <c>-</c> stands in quotes, as in TOML.</remarks>
public static class DocPath
{
    /// <summary>A path with one more name.</summary>
    public static string Join(string path, string name)
    {
        var shown = IsBare(name) ? name : Quoted(name);
        return path.Length == 0 ? shown : path + "." + shown;
    }

    /// <summary>A path with a position in a list.</summary>
    public static string Item(string path, int index) =>
        path + "[" + index.ToString(CultureInfo.InvariantCulture) + "]";

    /// <summary>The path without its last name or position; empty at the top.</summary>
    public static string Parent(string path)
    {
        var parts = Split(path);
        return parts is null || parts.Count < 2 ? "" : Whole(parts.Take(parts.Count - 1));
    }

    /// <summary>The path put together of names and positions (<c>[0]</c>).</summary>
    public static string Whole(IEnumerable<string> parts)
    {
        var path = "";
        foreach (var part in parts)
        {
            path = part.StartsWith('[') ? path + part : Join(path, part);
        }

        return path;
    }

    /// <summary>Names and positions (<c>[0]</c>) of a path, or null where it is none.</summary>
    public static IReadOnlyList<string>? Split(string path)
    {
        var parts = new List<string>();
        var i = 0;
        while (i < path.Length)
        {
            if (path[i] == '[')
            {
                var close = path.IndexOf(']', i);
                if (
                    close < 0
                    || !int.TryParse(
                        path.AsSpan(i + 1, close - i - 1),
                        NumberStyles.None,
                        CultureInfo.InvariantCulture,
                        out _
                    )
                )
                {
                    return null;
                }

                parts.Add(path[i..(close + 1)]);
                i = close + 1;
            }
            else if (path[i] == '"')
            {
                var name = new StringBuilder();
                for (i++; i < path.Length && path[i] != '"'; i++)
                {
                    i += path[i] == '\\' && i + 1 < path.Length ? 1 : 0;
                    name.Append(path[i]);
                }

                parts.Add(name.ToString());
                i++;
            }
            else
            {
                var end = path.AsSpan(i).IndexOfAny('.', '[');
                end = end < 0 ? path.Length : i + end;
                if (end == i)
                {
                    return null;
                }

                parts.Add(path[i..end]);
                i = end;
            }

            if (i < path.Length && path[i] == '.')
            {
                i++;
                if (i == path.Length)
                {
                    return null;
                }
            }
            else if (i < path.Length && path[i] != '[')
            {
                return null;
            }
        }

        return parts.Count == 0 ? null : parts;
    }

    /// <summary>True where a name needs no quotes.</summary>
    public static bool IsBare(string name)
    {
        foreach (var c in name)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('_' or '-'))
            {
                return false;
            }
        }

        return name.Length > 0;
    }

    /// <summary>A text in quotes as TOML writes it.</summary>
    public static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            _ = c switch
            {
                '"' => quoted.Append("\\\""),
                '\\' => quoted.Append("\\\\"),
                '\n' => quoted.Append("\\n"),
                '\r' => quoted.Append("\\r"),
                '\t' => quoted.Append("\\t"),
                _ when char.IsControl(c) => quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}"),
                _ => quoted.Append(c),
            };
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>What stands at a path below a table: the value and, where it is no list item, its entry.</summary>
    internal static (DocNode Value, DocEntry? Entry, DocNode Parent)? Find(DocTable root, string path)
    {
        if (Split(path) is not { } parts)
        {
            return null;
        }

        DocNode node = root;
        DocNode parent = root;
        DocEntry? entry = null;
        foreach (var part in parts)
        {
            parent = node;
            if (
                part.StartsWith('[')
                && part.EndsWith(']')
                && int.TryParse(
                    part.AsSpan(1, part.Length - 2),
                    NumberStyles.None,
                    CultureInfo.InvariantCulture,
                    out var index
                )
            )
            {
                if (node is not DocArray array || index >= array.Items.Count)
                {
                    return null;
                }

                (node, entry) = (array.Items[index], null);
            }
            else
            {
                entry = (node as DocTable)?.Find(part);
                if (entry is null)
                {
                    return null;
                }

                node = entry.Value;
            }
        }

        return (node, entry, parent);
    }
}
