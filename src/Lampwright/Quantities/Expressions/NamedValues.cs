namespace Lampwright.Quantities;

/// <summary>The text behind a name.</summary>
/// <param name="Path">The one full path of the value, whatever short name led to it.</param>
/// <param name="Text">Its text: a value with unit, or an expression in braces.</param>
public readonly record struct NamedText(string Path, string Text);

/// <summary>A value that was asked for by its path: there, or why not.</summary>
/// <param name="Value">The value, null where there is none.</param>
/// <param name="Error">Why there is none, with offsets in its own text.</param>
public readonly record struct NamedValue(Derived? Value, QuantityError? Error);

/// <summary>Named values that hang on each other, computed by need and each once.</summary>
/// <param name="find">The text behind a name, or null where there is no such value.</param>
/// <param name="names">All names, to find the nearest to one that is unknown.</param>
/// <remarks>
/// The order of the file does not matter. Values that hang on each other in a circle all say so and name the circle. The walk
/// keeps its own stack, so that a chain of any length does no harm. Not safe for several threads at once.
/// </remarks>
public sealed class NamedValues(Func<string, NamedText?> find, Func<IEnumerable<string>> names)
{
    private readonly Dictionary<string, NamedValue> _done = new(StringComparer.Ordinal);
    private readonly HashSet<string> _open = new(StringComparer.Ordinal);

    /// <summary>Paths that some expression asked for.</summary>
    public ISet<string> Used { get; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>The value of a text that stands at a path.</summary>
    /// <param name="named">Path and text.</param>
    public NamedValue Resolve(NamedText named)
    {
        if (_done.TryGetValue(named.Path, out var known))
        {
            return known;
        }

        var stack = new List<Frame>();
        Open(stack, named);
        while (stack.Count > 0)
        {
            var top = stack[^1];
            if (top.Read is { } read && top.Next < read.Expression.Names.Count)
            {
                var name = read.Expression.Names[top.Next++].Path;
                if (find(name) is not { } dependency)
                {
                    continue;
                }

                Used.Add(dependency.Path);
                if (_open.Contains(dependency.Path))
                {
                    CloseCircle(stack, dependency.Path);
                }
                else if (!_done.ContainsKey(dependency.Path))
                {
                    Open(stack, dependency);
                }

                continue;
            }

            // A circle may have closed this one already.
            if (!_done.ContainsKey(top.Named.Path))
            {
                _done[top.Named.Path] = Close(top);
            }

            _open.Remove(top.Named.Path);
            stack.RemoveAt(stack.Count - 1);
        }

        return _done[named.Path];
    }

    /// <summary>What a name stands for, in the words that an expression asks in.</summary>
    public NameAnswer Lookup(string name)
    {
        if (find(name) is not { } named)
        {
            // Units are names too; the list of all names is only gone through for what is not even that.
            return UnitTable.Find(name) is not null || name == "pi"
                ? default
                : new NameAnswer(null, null, Nearest.Of(name, names()));
        }

        var value = Resolve(named);
        return value.Value is not null
            ? new NameAnswer(value.Value, null)
            : new NameAnswer(null, value.Error!.Message.TrimEnd('.'));
    }

    private void Open(List<Frame> stack, NamedText named)
    {
        ExpressionText? read = null;
        QuantityError? error = null;
        if (ExpressionText.IsExpression(named.Text))
        {
            _ = ExpressionText.TryParse(named.Text, out read, out error);
        }

        _open.Add(named.Path);
        stack.Add(new Frame(named, read, error));
    }

    private NamedValue Close(Frame frame)
    {
        if (frame.Error is not null)
        {
            return new NamedValue(null, frame.Error);
        }

        if (frame.Read is { } expression)
        {
            return expression.TryEvaluate(Lookup, frame.Named.Path, out var value, out var error)
                ? new NamedValue(value, null)
                : new NamedValue(null, error);
        }

        return QuantityText.TryParse(frame.Named.Text, out var stated, out var wrong)
            ? new NamedValue(Derived.From(stated, frame.Named.Path), null)
            : new NamedValue(null, wrong);
    }

    private void CloseCircle(List<Frame> stack, string path)
    {
        var first = stack.FindIndex(f => f.Named.Path == path);
        var circle = stack.Skip(first).Select(f => f.Named.Path).Append(path).ToList();
        var shown = circle.Count <= 8 ? circle : [.. circle.Take(4), "…", .. circle.TakeLast(3)];
        foreach (var frame in stack.Skip(first).Where(f => !_done.ContainsKey(f.Named.Path)))
        {
            _done[frame.Named.Path] = new NamedValue(
                null,
                QuantityError.At(
                    0,
                    frame.Named.Text,
                    "a value that does not come back to itself",
                    $"goes in a circle ({string.Join(" -> ", shown)})"
                )
            );
        }
    }

    private sealed class Frame(NamedText named, ExpressionText? read, QuantityError? error)
    {
        public NamedText Named { get; } = named;

        public ExpressionText? Read { get; } = read;

        public QuantityError? Error { get; } = error;

        public int Next { get; set; }
    }
}
