using Lampwright.Files.DesignFile.Document;

namespace Lampwright.Files.DesignFile;

/// <summary>The text of a design file or a shop file with its tree and places; the text is the only state.</summary>
/// <remarks>Immutable, safe for any number of threads. Reading never throws: what is wrong is in <see cref="Problems"/>.</remarks>
public sealed class DesignText
{
    private static readonly int MostCharacters = 4_000_000;
    private static readonly int MostProblems = 200;
    private readonly List<FileProblem> _problems = [];

    private DesignText(string text, string fileName)
    {
        Text = text;
        FileName = fileName;
        var refused = Refusal(text);
        Lines = new TextLines(refused is null ? text : "");
        if (refused is not null)
        {
            _problems.Add(refused);
            Root = Empty();
            return;
        }

        // The mark at the start of some editors' files is no part of TOML; it stays in the text.
        var shift = text.StartsWith('\uFEFF') ? 1 : 0;
        var (document, troubles) = TomlRecovery.Read(text[shift..]);
        Root = document is null ? Empty() : new TreeBuilder(this, shift).Build(document);
        foreach (var trouble in troubles.OrderBy(t => t.Offset).Take(MostProblems))
        {
            var (line, column) = Lines.At(trouble.Offset + shift);
            _problems.Add(
                new FileProblem(fileName, line, column, "", trouble.Found, trouble.Accepted, trouble.Message)
            );
        }
    }

    /// <summary>The whole text as it stands in the file, byte order mark and line ends included.</summary>
    public string Text { get; }

    /// <summary>Name of the file, for problems.</summary>
    public string FileName { get; }

    /// <summary>What could be read of it.</summary>
    public DocTable Root { get; }

    /// <summary>What is wrong with it as TOML, in the order of the text.</summary>
    public IReadOnlyList<FileProblem> Problems => _problems;

    /// <summary>True where it is TOML without a fault; only such a text is ever made by an edit.</summary>
    public bool IsWhole => _problems.Count == 0;

    internal TextLines Lines { get; }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">Name of the file, for problems.</param>
    public static DesignText Parse(string text, string fileName) => new(text, fileName);

    /// <summary>Line and column of a place, both from 1.</summary>
    public (int Line, int Column) At(int offset) => Lines.At(offset);

    /// <summary>What stands at a path such as <c>emitter.main.points[0].current</c>, or null.</summary>
    public DocNode? Find(string path) => DocPath.Find(Root, path)?.Value;

    private DocTable Empty()
    {
        var root = new DocTable(this, 0, 0);
        root.Blocks.Add(new DocBlock(0, -1, -1));
        return root;
    }

    private FileProblem? Refusal(string text)
    {
        if (text.Length > MostCharacters)
        {
            return Refused(
                $"{text.Length} characters",
                $"at most {MostCharacters} characters",
                "The file is too large to be a design"
            );
        }

        if (text.Contains('\0', StringComparison.Ordinal))
        {
            return Refused("zero bytes", "a text in TOML", "The file is not a text");
        }

        return string.IsNullOrWhiteSpace(text.TrimStart('\uFEFF'))
            ? Refused("an empty file", "format = 1 and the tables of a light", "The file is empty")
            : null;
    }

    private FileProblem Refused(string found, string accepted, string message) =>
        new(FileName, 1, 1, "", found, accepted, $"{message}. Accepted: {accepted}.");
}
