using Lampwright.Files.DesignFile.Document;
using Lampwright.Findings;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>What one reading of a design shares: the merged tree, its named values, problems and notes so far.</summary>
internal sealed class LoadContext
{
    private static readonly int MostProblems = 500;
    private static readonly int MostNames = 20_000;
    private readonly List<FileProblem> _problems = [];
    private readonly HashSet<(string File, int Line, int Column, string Message)> _told = [];
    private readonly Dictionary<string, DocScalar> _names = new(StringComparer.Ordinal);

    public LoadContext(DocTable root)
    {
        Root = root;
        Collect(root, "");
        Values = new NamedValues(FindName, () => _names.Keys.Select(Short));
        Ids = new ThingIds(root);
    }

    public DocTable Root { get; }

    public NamedValues Values { get; }

    public ThingIds Ids { get; }

    public List<Finding> Notes { get; } = [];

    public IReadOnlyList<FileProblem> Problems => _problems;

    /// <summary>Patterns of keys that were asked for; a test holds it against the schema.</summary>
    public HashSet<string> Asked { get; } = new(StringComparer.Ordinal);

    public void Problem(DocNode at, int place, string path, string found, string accepted, string message)
    {
        if (_problems.Count >= MostProblems)
        {
            return;
        }

        var (line, column) = at.Source.At(place);
        if (_told.Add((at.Source.FileName, line, column, message)))
        {
            _problems.Add(new FileProblem(at.Source.FileName, line, column, path, found, accepted, message));
        }
    }

    /// <summary>A problem with what a value's text says.</summary>
    public void Problem(DocScalar scalar, string path, QuantityError error) =>
        Problem(scalar, scalar.PlaceOf(error.Offset), path, error.Found, error.Accepted, $"{path}: {error.Message}");

    /// <summary>A problem with what stands at a node as a whole.</summary>
    public void Wrong(DocNode node, string path, string why, string accepted)
    {
        var found = QuantityError.Shown(node.Length > 0 ? node.Raw : "");
        Problem(node, node.Start, path, found, accepted, $"{path}: {why}. Accepted: {accepted}.");
    }

    /// <summary>The value of a scalar, names looked up; null after the problem was told.</summary>
    public Derived? Evaluate(DocScalar scalar, string path)
    {
        var value = Values.Resolve(new NamedText(path, scalar.Text));
        if (value.Error is { } error)
        {
            Problem(scalar, path, error);
        }

        return value.Value;
    }

    private NamedText? FindName(string name)
    {
        if (_names.TryGetValue("given." + name, out var given))
        {
            return new NamedText("given." + name, given.Text);
        }

        return _names.TryGetValue(name, out var scalar) ? new NamedText(name, scalar.Text) : null;
    }

    private static string Short(string path) =>
        path.StartsWith("given.", StringComparison.Ordinal) ? path["given.".Length..] : path;

    private void Collect(DocNode node, string path)
    {
        if (_names.Count > MostNames)
        {
            return;
        }

        switch (node)
        {
            case DocScalar { Kind: ScalarKind.Text or ScalarKind.Integer or ScalarKind.Float } scalar:
                _names.TryAdd(path, scalar);
                break;
            case DocArray array:
                for (var i = 0; i < array.Items.Count; i++)
                {
                    Collect(array.Items[i], DocPath.Item(path, i));
                }

                break;
            case DocTable table:
                foreach (var entry in table.Entries)
                {
                    Collect(entry.Value, DocPath.Join(path, entry.Name));
                }

                break;
        }
    }
}
