using Lampwright.Design;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Values of several numbers: sizes, places, curves, lists.</summary>
internal sealed partial class TableReader
{
    /// <summary>Two values.</summary>
    public (Value First, Value Second)? Two(string key) =>
        Group(key, Rule(key), 2, "a list of two values") is { } values ? (values[0], values[1]) : null;

    /// <summary>Width and height.</summary>
    public Size? Size(string key) => Two(key) is var (w, h) ? new Size(w, h) : null;

    /// <summary>Width, height and depth.</summary>
    public Box? Box(string key) =>
        Group(key, Rule(key), 3, "a list of three values") is { } values
            ? new Box(values[0], values[1], values[2])
            : null;

    /// <summary>One value (a diameter, or the same both ways) or two; with whether it was one.</summary>
    public (Size Size, bool IsOne)? OneOrTwo(string key)
    {
        var rule = Rule(key);
        var node = table?.Find(key)?.Value;
        if (node is DocScalar)
        {
            return Read(rule, node, Join(key)) is { } one ? (new Size(one, one), true) : null;
        }

        return Group(key, rule, 2, "one value, or a list of two") is { } values
            ? (new Size(values[0], values[1]), false)
            : null;
    }

    /// <summary>One value or two, as they are written; empty where there is none.</summary>
    public IReadOnlyList<Value> OneOrTwoValues(string key) =>
        OneOrTwo(key) switch
        {
            null => [],
            { IsOne: true } one => [one.Size.Width],
            { } two => [two.Size.Width, two.Size.Height],
        };

    /// <summary>Items of a list that are a value each, or a table of its own keys.</summary>
    public IEnumerable<(Value? Value, TableReader? Table)> ValuesOrTables(string key, int most)
    {
        var rule = Rule(key);
        foreach (var (item, itemPath) in Items(key, rule, KeyExamples.Of(rule), most))
        {
            if (item is DocTable inner)
            {
                yield return (null, new TableReader(context, inner, itemPath, rule.Pattern + "[]"));
            }
            else if (Read(rule, item, itemPath) is { } value)
            {
                yield return (value, null);
            }
        }
    }

    /// <summary>A place; null for the centre.</summary>
    public Spot? Spot(string key)
    {
        var rule = Rule(key);
        if (table?.Find(key)?.Value is DocScalar { Kind: ScalarKind.Text } scalar)
        {
            if (scalar.Text is not ("centre" or "center"))
            {
                context.Wrong(
                    scalar,
                    Join(key),
                    "is no place",
                    $"\"centre\" or {KeyExamples.Of(rule with { Example = "" })}"
                );
            }

            return null;
        }

        var node = table?.Find(key)?.Value;
        if (node is null)
        {
            MissingIfRequired(rule, key);
            return null;
        }

        return Spot(rule, node, Join(key));
    }

    /// <summary>A list of places.</summary>
    public IReadOnlyList<Spot> Spots(string key)
    {
        var rule = Rule(key);
        var spots = new List<Spot>();
        foreach (var (item, itemPath) in Items(key, rule, KeyExamples.Of(rule)))
        {
            if (Spot(rule, item, itemPath) is { } spot)
            {
                spots.Add(spot);
            }
        }

        return spots;
    }

    /// <summary>Two coordinates, each a length or <c>centre</c>.</summary>
    private Spot? Spot(SchemaKey rule, DocNode node, string at)
    {
        if (node is not DocArray { Items.Count: 2 } pair)
        {
            context.Wrong(node, at, "is no place", "a list of two values, as in [\"12 mm\", \"centre\"]");
            return null;
        }

        var values = new Value?[2];
        for (var i = 0; i < 2; i++)
        {
            if (pair.Items[i] is DocScalar { Kind: ScalarKind.Text, Text: "centre" or "center" })
            {
                continue;
            }

            values[i] = Read(rule, pair.Items[i], DocPath.Item(at, i));
            if (values[i] is null)
            {
                return null;
            }
        }

        return new Spot(values[0], values[1]);
    }

    /// <summary>Any count of values of one dimension.</summary>
    public IReadOnlyList<Value> Quantities(string key)
    {
        var rule = Rule(key);
        var values = new List<Value>();
        foreach (var (item, itemPath) in Items(key, rule, KeyExamples.Of(rule)))
        {
            if (Read(rule, item, itemPath) is { } value)
            {
                values.Add(value);
            }
        }

        return values;
    }

    /// <summary>Points of a fan's curve, sorted as they are written.</summary>
    public IReadOnlyList<FanPoint> Curve(string key)
    {
        var rule = Rule(key);
        var flow = rule with
        {
            Dimension = Dimension.VolumeFlow,
            Least = "0 m3/h",
            LeastSi = 0,
            Most = "10000 m3/h",
            MostSi = 10000.0 / 3600,
        };
        var pressure = rule with
        {
            Dimension = Dimension.Pressure,
            Least = "0 Pa",
            LeastSi = 0,
            Most = "10 kPa",
            MostSi = 1e4,
        };
        var points = new List<FanPoint>();
        DocNode? last = null;
        foreach (var (item, itemPath) in Items(key, rule, KeyExamples.Of(rule)))
        {
            if (
                Group(
                    item,
                    itemPath,
                    [flow, pressure],
                    "a pair of flow and pressure, as in [\"35 m3/h\", \"22 Pa\"]"
                ) is
                { } pair
            )
            {
                points.Add(new FanPoint(pair[0], pair[1]));
                last = item;
            }
        }

        for (var i = 1; i < points.Count; i++)
        {
            if (
                points[i].Flow.Nominal <= points[i - 1].Flow.Nominal
                || points[i].Pressure.Nominal > points[i - 1].Pressure.Nominal
            )
            {
                context.Wrong(
                    last!,
                    points[i].Flow.Path,
                    "does not go on from the point before it",
                    "more flow and no more pressure than the point before"
                );
                return [];
            }
        }

        return points;
    }

    /// <summary>Two whole numbers.</summary>
    public (int X, int Y)? TwoCounts(string key)
    {
        if (Group(key, Rule(key), 2, "a list of two whole numbers, as in [2, 2]") is not { } values)
        {
            return null;
        }

        var wrong = values.Find(v => v.Nominal != Math.Round(v.Nominal));
        if (wrong is not null)
        {
            context.Wrong(table!.Find(key)!.Value, wrong.Path, "is no whole number", "a whole number such as 2");
            return null;
        }

        return ((int)values[0].Nominal, (int)values[1].Nominal);
    }

    /// <summary>A list of values whose dimension decides what they are.</summary>
    public IReadOnlyList<(Value Value, Dimension Dimension)> Mixed(string key, DocNode? at = null)
    {
        var rule = Rule(key) with { Kind = KeyKind.AnyQuantity };
        var found = new List<(Value, Dimension)>();
        var items = at is DocArray own
            ? own.Items.Take(MostItems).Select((item, i) => (item, DocPath.Item(path, i)))
            : Items(key, rule, KeyExamples.Of(rule));
        foreach (var (item, itemPath) in items)
        {
            if (Read(rule, item, itemPath) is { } value && item is DocScalar scalar)
            {
                found.Add((value, context.Evaluate(scalar, itemPath)!.Nominal.Dimension));
            }
        }

        return found;
    }

    private List<Value>? Group(string key, SchemaKey rule, int count, string accepted)
    {
        var node = table?.Find(key)?.Value;
        if (node is null)
        {
            MissingIfRequired(rule, key);
            return null;
        }

        return Group(node, Join(key), [.. Enumerable.Repeat(rule, count)], accepted);
    }

    private List<Value>? Group(DocNode node, string at, SchemaKey[] rules, string accepted)
    {
        if (node is not DocArray array || array.Items.Count != rules.Length)
        {
            var why = node is DocArray wrong ? $"has {wrong.Items.Count} values" : "is not a list";
            context.Wrong(node, at, why, $"{accepted}, as in {KeyExamples.Of(rules[0])}");
            return null;
        }

        var values = new List<Value>();
        for (var i = 0; i < rules.Length; i++)
        {
            if (Read(rules[i], array.Items[i], DocPath.Item(at, i)) is { } value)
            {
                values.Add(value);
            }
        }

        return values.Count == rules.Length ? values : null;
    }
}
