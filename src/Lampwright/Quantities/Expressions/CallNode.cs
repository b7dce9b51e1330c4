namespace Lampwright.Quantities;

/// <summary>A function of values.</summary>
internal sealed record CallNode(int Offset, string Text, string Function, IReadOnlyList<ExpressionNode> Arguments)
    : ExpressionNode(Offset, Text)
{
    private static readonly string[] Known =
    [
        "min",
        "max",
        "sqrt",
        "abs",
        "sin",
        "cos",
        "tan",
        "asin",
        "acos",
        "atan",
        "round",
    ];

    /// <summary>Names of all functions.</summary>
    public static IReadOnlyList<string> Functions => Known;

    public override Derived? Evaluate(ExpressionContext context)
    {
        if (!Known.Contains(Function, StringComparer.Ordinal))
        {
            return context.Fail(this, $"one of {string.Join(", ", Known)}", $"calls {Function}, which is no function");
        }

        var (least, most) = Function switch
        {
            "min" or "max" => (1, 64),
            "round" => (1, 2),
            _ => (1, 1),
        };
        if (Arguments.Count < least || Arguments.Count > most)
        {
            return context.Fail(
                this,
                least == most ? "one value in the brackets" : $"{least} to {most} values in the brackets",
                $"has {Arguments.Count}"
            );
        }

        var values = new Derived[Arguments.Count];
        for (var i = 0; i < values.Length; i++)
        {
            if (Arguments[i].Evaluate(context) is not { } value)
            {
                return null;
            }

            values[i] = value;
        }

        return Function switch
        {
            "min" or "max" => Extreme(context, values),
            "sqrt" => Root(context, values[0]),
            "abs" => Absolute(context, values[0]),
            "sin" or "cos" or "tan" => OfAngle(context, values[0]),
            "asin" or "acos" or "atan" => ToAngle(context, values[0]),
            _ => Rounded(context, values),
        };
    }

    private Derived? Extreme(ExpressionContext context, Derived[] values)
    {
        var best = values[0];
        foreach (var value in values)
        {
            if (value.Nominal.Dimension != best.Nominal.Dimension)
            {
                return context.Fail(
                    this,
                    "values of a kind",
                    $"compares {DimensionNames.Name(best.Nominal.Dimension)} and {DimensionNames.Name(value.Nominal.Dimension)}"
                );
            }

            var wins = Function == "min" ? value.Nominal.Si < best.Nominal.Si : value.Nominal.Si > best.Nominal.Si;
            best = wins ? value : best;
        }

        return best;
    }

    private Derived? Root(ExpressionContext context, Derived x)
    {
        if (x.Nominal.Dimension.IsAbsoluteTemperature || x.Nominal.Dimension.SquareRoot() is not { } dimension)
        {
            return context.Fail(
                this,
                "an area or another square",
                $"takes the root of {DimensionNames.Name(x.Nominal.Dimension)}"
            );
        }

        if (x.Nominal.Si < 0)
        {
            return context.Fail(this, "zero or more", "takes the root of a negative value");
        }

        var root = Math.Sqrt(x.Nominal.Si);
        return x.Scaled(root, dimension, root == 0 ? 0 : 0.5 / root);
    }

    private Derived? Absolute(ExpressionContext context, Derived x) =>
        x.Nominal.Dimension.IsAbsoluteTemperature
            ? context.Fail(this, "a difference in K", "takes a temperature")
            : x.Scaled(Math.Abs(x.Nominal.Si), x.Nominal.Dimension, Math.Sign(x.Nominal.Si));

    private Derived? OfAngle(ExpressionContext context, Derived x)
    {
        if (x.Nominal.Dimension != Dimension.Angle)
        {
            return context.Fail(this, "an angle such as 30 deg", $"takes {DimensionNames.Name(x.Nominal.Dimension)}");
        }

        var (sin, cos) = Math.SinCos(x.Nominal.Si);
        return Function switch
        {
            "sin" => x.Scaled(sin, Dimension.None, cos),
            "cos" => x.Scaled(cos, Dimension.None, -sin),
            _ => Math.Abs(cos) < 1e-12
                ? context.Fail(this, "an angle other than 90 deg", "has no value")
                : x.Scaled(sin / cos, Dimension.None, 1 / (cos * cos)),
        };
    }

    private Derived? ToAngle(ExpressionContext context, Derived x)
    {
        var value = x.Nominal.Si;
        if (!x.Nominal.Dimension.IsNone || (Function != "atan" && Math.Abs(value) > 1))
        {
            return context.Fail(
                this,
                Function == "atan" ? "a ratio" : "a ratio from -1 to 1",
                $"takes {(x.Nominal.Dimension.IsNone ? x.Nominal.ToString() : DimensionNames.Name(x.Nominal.Dimension))}"
            );
        }

        var slope = Math.Sqrt(Math.Max(1 - (value * value), 1e-12));
        return Function switch
        {
            "asin" => x.Scaled(Math.Asin(value), Dimension.Angle, 1 / slope),
            "acos" => x.Scaled(Math.Acos(value), Dimension.Angle, -1 / slope),
            _ => x.Scaled(Math.Atan(value), Dimension.Angle, 1 / (1 + (value * value))),
        };
    }

    private Derived? Rounded(ExpressionContext context, Derived[] values)
    {
        var x = values[0];
        var step = values.Length > 1 ? values[1] : new Derived(1, Dimension.None);
        if (x.Nominal.Dimension.IsAbsoluteTemperature || step.Nominal.Dimension != x.Nominal.Dimension)
        {
            return context.Fail(
                this,
                "a step in the same unit, as in round(width, 0.5 mm)",
                $"rounds {DimensionNames.Name(x.Nominal.Dimension)} to {DimensionNames.Name(step.Nominal.Dimension)}"
            );
        }

        if (!(step.Nominal.Si > 0))
        {
            return context.Fail(this, "a step above zero", "has no step");
        }

        var steps = Math.Round(x.Nominal.Si / step.Nominal.Si, MidpointRounding.AwayFromZero);
        return x.Scaled(steps * step.Nominal.Si, x.Nominal.Dimension, 1);
    }
}
