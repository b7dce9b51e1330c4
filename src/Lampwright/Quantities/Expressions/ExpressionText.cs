namespace Lampwright.Quantities;

/// <summary>A value that is an expression in braces, with a spread behind it if there is one: <c>{2*gap} ± 0.1 mm</c>.</summary>
public sealed class ExpressionText
{
    private readonly string _text;
    private readonly int _spreadAt;

    private ExpressionText(string text, Expression expression, int spreadAt)
    {
        _text = text;
        Expression = expression;
        _spreadAt = spreadAt;
    }

    /// <summary>What stands in the braces; offsets of its names count from the start of the whole text.</summary>
    public Expression Expression { get; }

    /// <summary>True where a text is meant as an expression.</summary>
    public static bool IsExpression(ReadOnlySpan<char> text) => text.TrimStart().StartsWith("{");

    /// <summary>Reads the text.</summary>
    public static bool TryParse(string text, out ExpressionText? read, out QuantityError? error)
    {
        read = null;
        var open = text.IndexOf('{', StringComparison.Ordinal);
        var close = text.LastIndexOf('}');
        if (open < 0 || close < open)
        {
            error = QuantityError.At(0, text, "an expression in braces, as in {2*gap + 8 mm}", "has no closing brace");
            return false;
        }

        var after = text.AsSpan(close + 1);
        var (mark, length) = QuantityText.FindMark(after);
        if (!after.Trim().IsEmpty && (mark < 0 || !after[..mark].Trim().IsEmpty))
        {
            error = QuantityError.At(
                close + 1,
                after,
                "nothing behind the brace but a spread, as in {2*gap} ± 0.1 mm; units stand inside",
                "stands behind the brace"
            );
            return false;
        }

        if (!Expression.TryParse(text[(open + 1)..close], open + 1, out var expression, out error))
        {
            return false;
        }

        read = new ExpressionText(text, expression!, mark < 0 ? -1 : close + 1 + mark + length);
        return true;
    }

    /// <summary>The value with its spread; <paramref name="path"/> names the spread that stands behind the brace.</summary>
    public bool TryEvaluate(NameLookup lookup, string path, out Derived? value, out QuantityError? error)
    {
        if (!Expression.TryEvaluate(lookup, out value, out error) || _spreadAt < 0)
        {
            return error is null;
        }

        if (
            !QuantityText.TrySpread(
                _text.AsSpan(_spreadAt),
                _spreadAt,
                value!.Nominal,
                false,
                out var halfWidth,
                out error
            )
        )
        {
            value = null;
            return false;
        }

        value = value.With(halfWidth, path);
        return true;
    }
}
