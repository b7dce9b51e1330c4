namespace Lampwright.Files.DesignFile.Document;

/// <summary>What a scalar of the file is.</summary>
public enum ScalarKind
{
    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Integer,

    /// <summary>A number with decimals.</summary>
    Float,

    /// <summary>true or false.</summary>
    Flag,

    /// <summary>A date or time, which no key takes.</summary>
    Date,
}

/// <summary>A piece of a file with its place.</summary>
/// <param name="source">The text it stands in.</param>
/// <param name="start">Where it starts, in characters.</param>
/// <param name="length">How long it is.</param>
public abstract class DocNode(DesignText source, int start, int length)
{
    /// <summary>The text it stands in.</summary>
    public DesignText Source { get; } = source;

    /// <summary>Where it starts, in characters from the start of the text.</summary>
    public int Start { get; } = start;

    /// <summary>How many characters it has.</summary>
    public int Length { get; } = length;

    /// <summary>Where it ends, one past its last character.</summary>
    public int End => Start + Length;

    /// <summary>The characters as written.</summary>
    public string Raw => Source.Text.Substring(Start, Length);
}

/// <summary>One value: a text, a number, true or false.</summary>
public sealed class DocScalar(DesignText source, int start, int length, ScalarKind kind, string text)
    : DocNode(source, start, length)
{
    /// <summary>What it is.</summary>
    public ScalarKind Kind { get; } = kind;

    /// <summary>The text without quotes and escapes, or the number as written.</summary>
    public string Text { get; } = text;

    /// <summary>The place in the file of a place in the text; the start of the value where escapes stand between.</summary>
    /// <param name="offset">Offset in <see cref="Text"/>.</param>
    public int PlaceOf(int offset)
    {
        if (Kind != ScalarKind.Text)
        {
            return Start;
        }

        return Text.Length == Length - 2 ? Start + 1 + Math.Clamp(offset, 0, Text.Length) : Start;
    }
}

/// <summary>A list in brackets, or the tables under one doubled header.</summary>
public sealed class DocArray(DesignText source, int start, int length) : DocNode(source, start, length)
{
    /// <summary>The items in order.</summary>
    public List<DocNode> Items { get; } = [];

    /// <summary>True for tables under doubled headers <c>[[name]]</c>.</summary>
    public bool IsOfHeaders { get; init; }
}

/// <summary>A key with its value.</summary>
/// <param name="Name">The key.</param>
/// <param name="KeyStart">Where the key starts.</param>
/// <param name="KeyLength">How long it is as written.</param>
/// <param name="Value">Its value.</param>
/// <param name="StatementStart">Where the statement it is set by starts (key, header or inline item).</param>
/// <param name="StatementEnd">Where that statement ends, before what follows on the line.</param>
public sealed record DocEntry(
    string Name,
    int KeyStart,
    int KeyLength,
    DocNode Value,
    int StatementStart,
    int StatementEnd
);

/// <summary>A stretch of a file that sets keys of one table.</summary>
/// <param name="HeaderStart">Where its header starts; 0 for the top of the file.</param>
/// <param name="HeaderEnd">Where the header's line ends, before the line break; -1 for the top of the file.</param>
/// <param name="LastEnd">Where its last key's value ends; -1 where it has none.</param>
public sealed record DocBlock(int HeaderStart, int HeaderEnd, int LastEnd);

/// <summary>A table: of a header, in braces, or only named by dotted keys.</summary>
public sealed class DocTable(DesignText source, int start, int length) : DocNode(source, start, length)
{
    private readonly Dictionary<string, DocEntry> _entries = new(StringComparer.Ordinal);
    private readonly List<DocEntry> _order = [];

    /// <summary>The entries in the order of the file.</summary>
    public IReadOnlyList<DocEntry> Entries => _order;

    /// <summary>True for a table in braces.</summary>
    public bool IsInline { get; init; }

    /// <summary>Headers or the top of the file where keys of this table are set; empty for one in braces or of dotted keys.</summary>
    public List<DocBlock> Blocks { get; } = [];

    /// <summary>The entry of a key, or null.</summary>
    public DocEntry? Find(string name) => _entries.GetValueOrDefault(name);

    /// <summary>Adds an entry; false where the key is there already.</summary>
    internal bool Add(DocEntry entry)
    {
        if (!_entries.TryAdd(entry.Name, entry))
        {
            return false;
        }

        _order.Add(entry);
        return true;
    }
}
