namespace Lampwright.Quantities;

/// <summary>A piece of an expression.</summary>
/// <param name="Offset">Where it starts in the text.</param>
/// <param name="Text">Its text.</param>
internal abstract record ExpressionNode(int Offset, string Text)
{
    /// <summary>The value, or null after the context was told why not.</summary>
    public abstract Derived? Evaluate(ExpressionContext context);
}

/// <summary>A number with its unit.</summary>
internal sealed record NumberNode(int Offset, string Text, Quantity Quantity) : ExpressionNode(Offset, Text)
{
    public override Derived Evaluate(ExpressionContext context) => new(Quantity.Si, Quantity.Dimension);
}

/// <summary>A name.</summary>
internal sealed record NameNode(int Offset, string Text, string Path) : ExpressionNode(Offset, Text)
{
    public override Derived? Evaluate(ExpressionContext context)
    {
        var answer = context.Lookup(Path);
        if (answer.Value is not null)
        {
            return answer.Value;
        }

        if (answer.Message is not null)
        {
            return context.Fail(this, answer.Message, "has no value");
        }

        if (Path == "pi")
        {
            return new Derived(Math.PI, Dimension.None);
        }

        if (UnitText.TryTerm(Path, out var unit, out var length) && length == Path.Length && unit.Offset == 0)
        {
            return new Derived(unit.Factor, unit.Dimension.AsDifference);
        }

        var hint = answer.Nearest is null
            ? "a value under [given] or a path such as sink.main.base.across"
            : $"did you mean {answer.Nearest}?";
        return context.Fail(this, hint, "names nothing");
    }
}

/// <summary>A sign before a value.</summary>
internal sealed record MinusNode(int Offset, string Text, ExpressionNode Of) : ExpressionNode(Offset, Text)
{
    public override Derived? Evaluate(ExpressionContext context)
    {
        if (Of.Evaluate(context) is not { } value)
        {
            return null;
        }

        return value.Nominal.Dimension.IsAbsoluteTemperature
            ? context.Fail(this, "a difference in K", "turns a temperature round")
            : value.Scaled(-value.Nominal.Si, value.Nominal.Dimension, -1);
    }
}

/// <summary>Two values and a sign between them.</summary>
internal sealed record BinaryNode(int Offset, string Text, char Sign, ExpressionNode Left, ExpressionNode Right)
    : ExpressionNode(Offset, Text)
{
    public override Derived? Evaluate(ExpressionContext context)
    {
        // Both sides are looked at only when the first is fine: one mistake gives one message.
        if (Left.Evaluate(context) is not { } a || Right.Evaluate(context) is not { } b)
        {
            return null;
        }

        return Sign switch
        {
            '+' or '-' => Sum(context, a, b, Sign == '+' ? 1 : -1),
            '*' => Product(context, a, b),
            '/' => Quotient(context, a, b),
            _ => Power(context, a, b),
        };
    }

    private Derived? Sum(ExpressionContext context, Derived a, Derived b, int sign)
    {
        var (da, db) = (a.Nominal.Dimension, b.Nominal.Dimension);
        if (da.AsDifference != db.AsDifference)
        {
            return context.Fail(
                this,
                "two of a kind",
                $"{(sign > 0 ? "adds" : "subtracts")} {DimensionNames.Name(sign > 0 ? da : db)} "
                    + $"{(sign > 0 ? "and" : "from")} {DimensionNames.Name(sign > 0 ? db : da)}"
            );
        }

        Dimension? result = (da.IsAbsoluteTemperature, db.IsAbsoluteTemperature, sign) switch
        {
            (false, false, _) => da,
            (true, false, _) => da,
            (false, true, > 0) => db,
            (true, true, < 0) => da.AsDifference,
            _ => null,
        };
        return result is { } dimension
            ? Derived.Of(a.Nominal.Si + (sign * b.Nominal.Si), dimension, a, 1, b, sign)
            : context.Fail(
                this,
                "a temperature and a difference in K, or two temperatures subtracted",
                "adds temperatures"
            );
    }

    private Derived? Product(ExpressionContext context, Derived a, Derived b) =>
        Scalable(context, a, b) && Combined(context, a, b, 1) is { } dimension
            ? Derived.Of(a.Nominal.Si * b.Nominal.Si, dimension, a, b.Nominal.Si, b, a.Nominal.Si)
            : null;

    private Derived? Quotient(ExpressionContext context, Derived a, Derived b)
    {
        if (!Scalable(context, a, b) || Combined(context, a, b, -1) is not { } dimension)
        {
            return null;
        }

        if (b.Nominal.Si == 0)
        {
            return context.Fail(Right, "a value other than zero to divide by", "is zero");
        }

        var ratio = a.Nominal.Si / b.Nominal.Si;
        return Derived.Of(ratio, dimension, a, 1 / b.Nominal.Si, b, -ratio / b.Nominal.Si);
    }

    private Derived? Power(ExpressionContext context, Derived a, Derived b)
    {
        if (!Scalable(context, a, b))
        {
            return null;
        }

        if (!b.Nominal.Dimension.IsNone || b.Parts.Length > 0)
        {
            return context.Fail(Right, "a plain number as the power", "is no power");
        }

        var (x, n) = (a.Nominal.Si, b.Nominal.Si);
        var dimension = Dimension.None;
        if (!a.Nominal.Dimension.IsNone)
        {
            var half = n == 0.5 ? a.Nominal.Dimension.SquareRoot() : null;
            if (
                half is null
                && (n != Math.Round(n) || Math.Abs(n) > 60 || !a.Nominal.Dimension.TryToPower((int)n, out dimension))
            )
            {
                return context.Fail(Right, "a whole power from -60 to 60", "is no power of a value with a unit");
            }

            dimension = half ?? dimension;
        }

        var value = Math.Pow(x, n);
        return double.IsFinite(value)
            ? a.Scaled(value, dimension, x == 0 ? 0 : n * value / x)
            : context.Fail(this, "a power that exists", "has no value");
    }

    private bool Scalable(ExpressionContext context, Derived a, Derived b)
    {
        if (!a.Nominal.Dimension.IsAbsoluteTemperature && !b.Nominal.Dimension.IsAbsoluteTemperature)
        {
            return true;
        }

        context.Fail(this, "a difference in K", "multiplies a temperature");
        return false;
    }

    private Dimension? Combined(ExpressionContext context, Derived a, Derived b, int sign)
    {
        if (Dimension.TryCombine(a.Nominal.Dimension, b.Nominal.Dimension, sign, out var dimension))
        {
            return dimension;
        }

        context.Fail(this, "a unit with powers from -60 to 60", "has too high a power");
        return null;
    }
}
