using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Lampwright.Files.DesignFile.Document;

/// <summary>Reads as much of a broken file as can be read: each broken statement is told and blanked out, the rest is read again.</summary>
/// <remarks>
/// Without this, one missing quote would swallow everything below it. Blanks keep every place where it was. The count of
/// rounds is limited by the size of the text, so that a file that is broken everywhere takes no longer than one that is fine.
/// </remarks>
internal static class TomlRecovery
{
    private static readonly int MostRounds = 40;
    private static readonly int MostCharactersRead = 4_000_000;

    /// <summary>What could be read, and what was wrong with the rest: offset, length, found, accepted.</summary>
    public static (DocumentSyntax? Document, List<TextTrouble> Troubles) Read(string text)
    {
        var troubles = new List<TextTrouble>();
        var buffer = text;
        if (text.EndsWith('\\'))
        {
            // The reader throws at an escape that the end of the file cuts off.
            troubles.Add(
                new TextTrouble(
                    text.Length - 1,
                    1,
                    "\\",
                    "nothing",
                    "A '\\' stands at the very end. Accepted: nothing."
                )
            );
            buffer = text[..^1] + ' ';
        }

        for (var round = 0; ; round++)
        {
            DocumentSyntax document;
            try
            {
                document = SyntaxParser.Parse(buffer, "", validate: true);
            }
            catch (TomlException)
            {
                troubles.Add(
                    new TextTrouble(0, 0, "", "brackets at most 60 deep", "Brackets stand too deep in one another.")
                );
                return (null, troubles);
            }
            catch (Exception e) when (e is ArgumentException or InvalidOperationException or IndexOutOfRangeException)
            {
                // A fault of the reader itself must not end in a stack trace on a maker's screen.
                troubles.Add(
                    new TextTrouble(0, 0, "", "a text in TOML", $"The file cannot be read: {Sentence(e.Message)}")
                );
                return (null, troubles);
            }

            var errors = document.Diagnostics.OrderBy(d => d.Span.Offset).ToList();
            foreach (var twice in errors.Where(IsRepetition))
            {
                Repetition(buffer, twice, troubles);
            }

            var broken = errors.Find(e => !IsRepetition(e));
            if (broken is null)
            {
                return (document, troubles);
            }

            troubles.RemoveAll(t => t.IsRepetition);
            if (round >= MostRounds || (long)buffer.Length * (round + 1) > MostCharactersRead)
            {
                troubles.Add(
                    new TextTrouble(
                        broken.Span.Offset,
                        0,
                        "",
                        "a file in TOML",
                        $"More is wrong from here on: {Sentence(broken.Message)}"
                    )
                );
                return (document, troubles);
            }

            var (start, end, trouble) = Broken(buffer, broken);
            troubles.Add(trouble);
            buffer = Blank(buffer, start, end);
        }
    }

    private static bool IsRepetition(DiagnosticMessage message) =>
        message.Message.Contains("is already defined at", StringComparison.Ordinal);

    private static void Repetition(string text, DiagnosticMessage message, List<TextTrouble> troubles)
    {
        var offset = message.Span.Offset;
        var line = LineOf(text, offset);
        var name = message.Message.Split('`') is { Length: > 1 } parts ? parts[1] : "this key";
        troubles.Add(
            new TextTrouble(
                offset,
                line.End - offset,
                name,
                "each key once in its table",
                $"'{name}' is written a second time; the first one counts. Accepted: each key once in its table."
            )
            {
                IsRepetition = true,
            }
        );
    }

    private static (int Start, int End, TextTrouble Trouble) Broken(string text, DiagnosticMessage message)
    {
        var offset = Math.Clamp(message.Span.Offset, 0, text.Length);
        var open = StatementScan.UnclosedBefore(text, offset);
        if (open is { } header && string.IsNullOrWhiteSpace(text[header.Start..header.Bracket]))
        {
            // A header without its end; what follows is told below.
            offset = header.Bracket;
        }
        else if (open is { } list)
        {
            var shown = text[list.Bracket];
            return (
                list.Start,
                list.End,
                new TextTrouble(
                    list.Bracket,
                    1,
                    shown.ToString(),
                    $"the closing {(shown == '[' ? ']' : '}')}",
                    $"The '{shown}' that opens here is never closed. Accepted: the closing '{(shown == '[' ? ']' : '}')}'."
                )
            );
        }

        var (start, end) = LineOf(text, offset);

        // The reader names the line break where a text was not closed; the trouble is on the line before it.
        if (offset > 0 && offset == start && (offset >= text.Length || text[offset] is '\n' or '\r'))
        {
            (start, end) = LineOf(text, offset - 1);
        }

        if (text[start..end].Trim().Length == 0 && start > 0)
        {
            (start, end) = LineOf(text, start - 1);
        }

        var line = text[start..end].Trim();
        var (accepted, why) = Guess(line, message.Message);
        if (line.StartsWith('['))
        {
            // Keys under a broken header would land in the table above it; they are left out with it.
            end = StatementScan.NextHeader(text, end);
        }

        var shownLine = Quantities.QuantityError.Shown(line);
        return (
            start,
            end,
            new TextTrouble(offset, 1, shownLine, accepted, $"'{shownLine}' {why}. Accepted: {accepted}.")
        );
    }

    private static (string Accepted, string Why) Guess(string line, string message)
    {
        if (line.StartsWith('['))
        {
            return ("a header such as [emitter.main]", "is no header; the keys under it were not read");
        }

        var equal = line.IndexOf('=', StringComparison.Ordinal);
        if (equal <= 0)
        {
            return ("key = \"value\", [table] or # remark", "cannot be read");
        }

        var key = line[..equal].Trim();
        var value = line[(equal + 1)..].Trim();
        if (value.Length == 0 || value.StartsWith('#'))
        {
            return ($"{key} = \"value\"", "has no value");
        }

        if (value.StartsWith('"') || value.StartsWith('\''))
        {
            return ($"the text closed by the quote it opens with", $"is not read ({Sentence(message).TrimEnd('.')})");
        }

        return char.IsLetterOrDigit(value[0]) || value[0] is '-' or '+' or '.' or '±'
            ? ($"values with a unit in quotes: {key} = \"{value}\"", "has a value without quotes")
            : ("key = \"value\"", $"is not read ({Sentence(message).TrimEnd('.')})");
    }

    private static (int Start, int End) LineOf(string text, int offset)
    {
        var at = Math.Min(offset, text.Length);
        var start = at == 0 ? 0 : text.LastIndexOf('\n', at - 1) + 1;
        var end = text.IndexOf('\n', at);
        return (start, end < 0 ? text.Length : end);
    }

    private static string Blank(string text, int start, int end) =>
        string.Create(
            text.Length,
            (text, start, end),
            static (span, state) =>
            {
                state.text.CopyTo(span);
                for (var i = state.start; i < state.end; i++)
                {
                    span[i] = span[i] is '\n' or '\r' ? span[i] : ' ';
                }
            }
        );

    private static string Sentence(string message)
    {
        var clean = Quantities.QuantityError.Shown(message.Replace('␤', ' '));
        return clean.EndsWith('.') ? clean : clean + ".";
    }
}

/// <summary>Something that is wrong with a text as TOML.</summary>
internal sealed record TextTrouble(int Offset, int Length, string Found, string Accepted, string Message)
{
    public bool IsRepetition { get; init; }
}
