namespace Lampwright.Quantities;

/// <summary>What one evaluation knows: the names, and the first thing that went wrong.</summary>
internal sealed class ExpressionContext(NameLookup lookup)
{
    public NameLookup Lookup { get; } = lookup;

    public QuantityError? Error { get; private set; }

    public Derived? Fail(ExpressionNode node, string accepted, string why)
    {
        Error ??= QuantityError.At(node.Offset, node.Text, accepted, why);
        return null;
    }
}
