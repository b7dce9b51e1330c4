namespace Lampwright.Files.DesignFile.Document;

/// <summary>A light scan over the text that finds a bracket that was opened and never closed.</summary>
internal static class StatementScan
{
    /// <summary>A statement that is open where the next one starts.</summary>
    public readonly record struct Open(int Start, int Bracket, int End);

    /// <summary>The first statement with an open bracket at or before a place, or null.</summary>
    public static Open? UnclosedBefore(string text, int offset)
    {
        var position = 0;
        while (position < text.Length && position <= offset)
        {
            var (end, open) = Statement(text, position);
            if (open >= 0)
            {
                return new Open(position, open, end);
            }

            position = Math.Max(end, position + 1);
        }

        return null;
    }

    /// <summary>Where the next line with a header starts, or the end of the text.</summary>
    public static int NextHeader(string text, int from)
    {
        var line = from;
        while (line < text.Length)
        {
            if (text[line] == '\n')
            {
                line++;
            }

            if (text.AsSpan(line).TrimStart(" \t").StartsWith("["))
            {
                return line;
            }

            var next = text.IndexOf('\n', line);
            if (next < 0)
            {
                break;
            }

            line = next;
        }

        return text.Length;
    }

    /// <summary>Reads one statement from the start of its line; its end, and its open bracket or -1.</summary>
    private static (int End, int Open) Statement(string text, int start)
    {
        var brackets = new Stack<int>();
        var i = start;
        while (i < text.Length)
        {
            var c = text[i];
            if (c == '\n')
            {
                if (brackets.Count == 0)
                {
                    return (i + 1, -1);
                }

                if (StartsStatement(text, i + 1, text[brackets.Peek()]))
                {
                    return (i + 1, brackets.Last());
                }

                i++;
            }
            else if (c == '#')
            {
                var end = text.IndexOf('\n', i);
                i = end < 0 ? text.Length : end;
            }
            else if (c is '"' or '\'')
            {
                i = SkipText(text, i);
            }
            else
            {
                if (c is '[' or '{')
                {
                    brackets.Push(i);
                }
                else if (c is ']' or '}' && brackets.Count > 0)
                {
                    brackets.Pop();
                }

                i++;
            }
        }

        return (text.Length, brackets.Count > 0 ? brackets.Last() : -1);
    }

    /// <summary>Inside a list a line like <c>key = </c> or <c>[name.of.table]</c> can only be the next statement.</summary>
    private static bool StartsStatement(string text, int at, char bracket)
    {
        var end = text.IndexOf('\n', at);
        var line = text.AsSpan(at, (end < 0 ? text.Length : end) - at).Trim();
        if (line.IsEmpty)
        {
            return false;
        }

        if (line[0] == '[')
        {
            var close = line.IndexOf(']');
            var name = close < 0 ? [] : line[1..close].Trim('[').Trim();
            return name.Length > 0
                && (char.IsAsciiLetter(name[0]) || name[0] == '_')
                && name is not "true" and not "false" and not "inf" and not "nan"
                && !name.Contains(',');
        }

        var equal = line.IndexOf('=');
        if (equal <= 0)
        {
            return false;
        }

        // In braces the next key is legal behind a comma; without one the braces were forgotten.
        if (bracket == '{' && text.AsSpan(0, at).TrimEnd() is [.., ',' or '{'])
        {
            return false;
        }

        foreach (var c in line[..equal].TrimEnd())
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('_' or '-' or '.' or ' ' or '"' or '\''))
            {
                return false;
            }
        }

        return true;
    }

    private static int SkipText(string text, int at)
    {
        var quote = text[at];
        var triple = text.AsSpan(at).StartsWith(new string(quote, 3));
        if (triple)
        {
            var close = text.IndexOf(new string(quote, 3), at + 3, StringComparison.Ordinal);
            return close < 0 ? text.Length : close + 3;
        }

        var i = at + 1;
        while (i < text.Length && text[i] != quote && text[i] != '\n')
        {
            i += text[i] == '\\' && quote == '"' ? 2 : 1;
        }

        return i < text.Length && text[i] == quote ? i + 1 : Math.Min(i, text.Length);
    }
}
