using System.Collections.Immutable;

namespace Lampwright.Quantities;

/// <summary>An expression over the <c>thickness</c> and <c>radius</c> of a sheet, which get their values where it is used.</summary>
/// <remarks>Immutable; all other names were looked up when it was made. Two are equal when text and those values are.</remarks>
public sealed class Formula : IEquatable<Formula>
{
    private static readonly string[] Open = ["thickness", "radius"];
    private readonly ExpressionText _text;
    private readonly ImmutableSortedDictionary<string, NameAnswer> _others;

    private Formula(ExpressionText text, ImmutableSortedDictionary<string, NameAnswer> others)
    {
        _text = text;
        _others = others;
    }

    /// <summary>The formula of an expression, or null where it uses neither name.</summary>
    /// <param name="text">The expression.</param>
    /// <param name="lookup">Says what all other names stand for.</param>
    public static Formula? Of(ExpressionText text, NameLookup lookup)
    {
        var names = text.Expression.Names.Select(n => n.Path).Distinct(StringComparer.Ordinal).ToList();
        return names.Exists(n => Open.Contains(n, StringComparer.Ordinal))
            ? new Formula(
                text,
                names
                    .Where(n => !Open.Contains(n, StringComparer.Ordinal))
                    .ToImmutableSortedDictionary(n => n, n => lookup(n), StringComparer.Ordinal)
            )
            : null;
    }

    /// <summary>The value for a sheet.</summary>
    /// <param name="thicknessM">Thickness of the sheet, m.</param>
    /// <param name="radiusM">Inside radius, m.</param>
    /// <param name="value">The value.</param>
    /// <param name="error">Why there is none.</param>
    public bool TryEvaluate(double thicknessM, double radiusM, out Derived? value, out QuantityError? error) =>
        _text.TryEvaluate(
            name =>
                name switch
                {
                    "thickness" => new NameAnswer(new Derived(thicknessM, Dimension.Length), null),
                    "radius" => new NameAnswer(new Derived(radiusM, Dimension.Length), null),
                    _ => _others.GetValueOrDefault(name),
                },
            "",
            out value,
            out error
        );

    /// <summary>The value for a sheet in SI units; null where it has none.</summary>
    /// <param name="thicknessM">Thickness of the sheet, m.</param>
    /// <param name="radiusM">Inside radius, m.</param>
    public double? ForSheet(double thicknessM, double radiusM) =>
        TryEvaluate(thicknessM, radiusM, out var value, out _) ? value!.Nominal.Si : null;

    /// <inheritdoc/>
    public bool Equals(Formula? other) =>
        other is not null
        && other._text.Expression.Text == _text.Expression.Text
        && other
            ._others.Select(o => (o.Key, o.Value.Value?.Nominal))
            .SequenceEqual(_others.Select(o => (o.Key, o.Value.Value?.Nominal)));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Formula);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(_text.Expression.Text);
}
