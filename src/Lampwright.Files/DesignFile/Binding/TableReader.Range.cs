using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <content>Holding values and their spreads against what a key takes.</content>
internal sealed partial class TableReader
{
    private bool InRange(SchemaKey rule, Value value, DocScalar scalar, string at)
    {
        // A limit is written in decimals and a value may be written in other units: the last bits are nobody's mistake.
        var slack = 1e-12 * Math.Abs(value.Nominal);
        if (value.Nominal >= rule.LeastSi - slack && value.Nominal <= rule.MostSi + slack)
        {
            return true;
        }

        var shown = ExpressionText.IsExpression(scalar.Text)
            ? $"{QuantityError.Shown(scalar.Text)} = {ShowAs.Metric.Show(value.Nominal, rule.Dimension, 4)}"
            : QuantityError.Shown(scalar.Text);
        context.Problem(
            scalar,
            scalar.PlaceOf(0),
            at,
            shown,
            rule.Range,
            $"{at}: {shown} is out of range. Accepted: {rule.Range}."
        );
        return false;
    }

    /// <summary>A spread that reaches beyond what the key takes is told and cut there: no draw may lie where no value may.</summary>
    private Value Narrowed(SchemaKey rule, Value value, DocScalar scalar, string at)
    {
        var room = Math.Max(0, Math.Min(value.Nominal - rule.LeastSi, rule.MostSi - value.Nominal));
        if (value.HalfWidth <= room + (1e-12 * Math.Abs(value.Nominal)))
        {
            return value;
        }

        var shown = QuantityError.Shown(scalar.Text);
        context.Problem(
            scalar,
            scalar.PlaceOf(0),
            at,
            shown,
            $"a spread that stays within {rule.Range}",
            $"{at}: the spread of {shown} reaches out of the range. Accepted: a spread that stays within {rule.Range}."
        );
        return value with { HalfWidth = room };
    }
}
