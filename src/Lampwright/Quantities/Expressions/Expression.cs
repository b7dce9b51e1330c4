namespace Lampwright.Quantities;

/// <summary>A name that stands in an expression, and where.</summary>
/// <param name="Path">The name, for example <c>sink.main.base.across</c>.</param>
/// <param name="Offset">Where it starts in the text.</param>
/// <param name="Length">How long it is there.</param>
public readonly record struct NameUse(string Path, int Offset, int Length);

/// <summary>What a name stands for.</summary>
/// <param name="Value">The value, null where there is none.</param>
/// <param name="Message">Why there is none though the name is known; null where the name is unknown.</param>
/// <param name="Nearest">The nearest known name to an unknown one, or null.</param>
public readonly record struct NameAnswer(Derived? Value, string? Message, string? Nearest = null);

/// <summary>Says what a name stands for.</summary>
/// <param name="path">The name as written, for example <c>gap</c> or <c>sink.main.base.across</c>.</param>
public delegate NameAnswer NameLookup(string path);

/// <summary>A calculation over named values, with its units checked: <c>sink.main.base.across + 2*gap + 8 mm</c>.</summary>
/// <remarks>
/// Signs <c>+ - * / ^</c> and brackets; functions <c>min max sqrt abs sin cos tan asin acos atan round</c>; <c>pi</c>; numbers with one
/// unit behind (<c>8 mm</c>, <c>3/64 in</c>). A name that no value has is a unit where there is one of it, so <c>3 W/(m*K)</c>
/// reads as usual. <c>round(x, step)</c> rounds to whole steps. Angles of <c>sin cos tan</c> have their unit.
/// </remarks>
public sealed class Expression
{
    private readonly ExpressionNode _root;

    private Expression(string text, ExpressionNode root, IReadOnlyList<NameUse> names)
    {
        Text = text;
        _root = root;
        Names = names;
    }

    /// <summary>The text it was read from, without the braces.</summary>
    public string Text { get; }

    /// <summary>All names in it in the order of the text, units and functions left out where they cannot be names of values.</summary>
    public IReadOnlyList<NameUse> Names { get; }

    /// <summary>Reads a calculation; offsets in names and errors count from the start of the text plus <paramref name="origin"/>.</summary>
    public static bool TryParse(string text, int origin, out Expression? expression, out QuantityError? error)
    {
        var parser = new ExpressionParser(text, origin);
        var root = parser.Whole();
        error = parser.Error;
        expression = root is null ? null : new Expression(text, root, parser.Names);
        return root is not null;
    }

    /// <summary>The value, with names looked up; or why there is none.</summary>
    public bool TryEvaluate(NameLookup lookup, out Derived? value, out QuantityError? error)
    {
        var context = new ExpressionContext(lookup);
        value = _root.Evaluate(context);
        if (value is not null && !(Math.Abs(value.Nominal.Si) <= 1e40))
        {
            value = null;
            context.Fail(_root, "a value within reason", "comes out beyond all measure");
        }

        error = value is null ? context.Error : null;
        return value is not null;
    }
}
