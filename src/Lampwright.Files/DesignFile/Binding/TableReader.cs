using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Reads the keys of one table by the schema and tells every problem it meets; a wrong value never stops the next.</summary>
/// <param name="context">What the reading shares.</param>
/// <param name="table">The table; null where it is not written.</param>
/// <param name="path">Its path.</param>
/// <param name="pattern">Its pattern in the schema.</param>
/// <param name="silent">True where an absent table means that there is no such thing, so that no default is noted.</param>
internal sealed partial class TableReader(
    LoadContext context,
    DocTable? table,
    string path,
    string pattern,
    bool silent = false
)
{
    public LoadContext Context => context;

    public string Path => path;

    public string Name { get; init; } = "";

    public bool IsThere => table is not null;

    /// <summary>The table itself, or null.</summary>
    public DocTable? Written => table;

    /// <summary>Names of all that is written in it.</summary>
    public IEnumerable<string> Names => table?.Entries.Select(e => e.Name) ?? [];

    /// <summary>True where the key is written, well or not.</summary>
    public bool Has(string key) => table?.Find(key) is not null;

    /// <summary>A value, its default where there is one, or null.</summary>
    public Value? Optional(string key)
    {
        var rule = Rule(key);
        var entry = table?.Find(key);
        if (entry is null)
        {
            MissingIfRequired(rule, key);
            return Default(rule, key);
        }

        return Read(rule, entry.Value, Join(key)) ?? DefaultOf(rule, key);
    }

    /// <summary>A value of a key that has a default or is required; of a required one that is missing or wrong, NaN never leaves: null says so.</summary>
    public Value WithDefault(string key) =>
        Optional(key)
        ?? throw new InvalidOperationException($"The schema has no default for {pattern}.{key}; ask with Optional.");

    /// <summary>A whole number, its default, or <paramref name="otherwise"/>.</summary>
    public int Count(string key, int otherwise)
    {
        var value = Optional(key);
        if (value is null)
        {
            return otherwise;
        }

        if (value.Nominal != Math.Round(value.Nominal) || value.HalfWidth != 0)
        {
            context.Wrong(table!.Find(key)!.Value, Join(key), "is no whole number", "a whole number such as 4");
            return otherwise;
        }

        return (int)value.Nominal;
    }

    /// <summary>The value of one node by a rule; null after its problem was told.</summary>
    private Value? Read(SchemaKey rule, DocNode node, string at)
    {
        if (node is not DocScalar scalar || scalar.Kind is ScalarKind.Flag or ScalarKind.Date)
        {
            context.Wrong(node, at, "is not a value", DimensionNames.Wanted(rule.Dimension));
            return null;
        }

        var any = rule.Kind == KeyKind.AnyQuantity;
        var isText = scalar.Kind == ScalarKind.Text;
        var dimension = rule.Dimension;
        if (!isText && !any && !dimension.IsNone && dimension != Dimension.Stops)
        {
            context.Problem(
                scalar,
                scalar.Start,
                at,
                scalar.Text,
                DimensionNames.Wanted(dimension),
                $"{at}: {scalar.Text} has no unit. Accepted: {DimensionNames.Wanted(dimension)}, in quotes."
            );
            return null;
        }

        if (context.Evaluate(scalar, at) is not { } derived)
        {
            return null;
        }

        var isExpression = ExpressionText.IsExpression(scalar.Text);
        if (!any && !Fits(dimension, derived.Nominal, isExpression))
        {
            context.Problem(scalar, at, QuantityText.WrongDimension(scalar.Text, derived.Nominal.Dimension, dimension));
            return null;
        }

        var value = new Value(derived.Nominal.Si, derived.HalfWidth, isExpression ? Origin.Computed : Origin.Given, at);
        return InRange(rule, value, scalar, at) ? Narrowed(rule, value, scalar, at) : null;
    }

    private static bool Fits(Dimension wanted, Quantity found, bool isExpression) =>
        found.Dimension == wanted
        || (
            wanted.IsAbsoluteTemperature
            && found.Dimension == Dimension.TemperatureDifference
            && !isExpression
            && found.Si >= 0
        )
        || (wanted == Dimension.Stops && found.Dimension.IsNone);

    private Value? Default(SchemaKey rule, string key)
    {
        if (rule.Default.Length == 0)
        {
            return null;
        }

        Note(rule, key);
        return DefaultOf(rule, key);
    }

    private string DefaultText(SchemaKey rule, string key)
    {
        if (rule.Default.Length > 0)
        {
            Note(rule, key);
        }

        return rule.Default;
    }

    private Value? DefaultOf(SchemaKey rule, string key) =>
        rule.Default.Length > 0 && QuantityText.TryParse(rule.Default, rule.Dimension, out var stated, out _)
            ? new Value(stated.Si, stated.HalfWidth, Origin.Default, Join(key))
            : null;

    private void Note(SchemaKey rule, string key)
    {
        if (!silent)
        {
            context.Notes.Add(
                FileRules.DefaultUsed.At(
                    Join(key),
                    $"{Join(key)} is not written; {rule.Default} stands in ({rule.DefaultSource}).",
                    rule.Default
                )
            );
        }
    }

    private void MissingIfRequired(SchemaKey rule, string key)
    {
        if (!rule.Required || table is null)
        {
            return;
        }

        context.Problem(
            table,
            table.Start,
            Join(key),
            "nothing",
            Example(rule),
            $"{Join(key)} is missing. Accepted: {key} = {Example(rule)}. It says: {rule.Meaning}"
        );
    }

    private IEnumerable<(DocNode Item, string Path)> Items(
        string key,
        SchemaKey rule,
        string accepted,
        int? most = null
    )
    {
        var node = table?.Find(key)?.Value;
        if (node is null)
        {
            MissingIfRequired(rule, key);
            yield break;
        }

        if (node is not DocArray array)
        {
            context.Wrong(node, Join(key), "is not a list", accepted);
            yield break;
        }

        if (array.Items.Count > (most ?? MostItems))
        {
            context.Wrong(node, Join(key), $"has {array.Items.Count} items", $"at most {most ?? MostItems}");
            yield break;
        }

        for (var i = 0; i < array.Items.Count; i++)
        {
            yield return (array.Items[i], DocPath.Item(Join(key), i));
        }
    }

    private SchemaKey Rule(string key)
    {
        var full = pattern.Length == 0 ? key : $"{pattern}.{key}";
        context.Asked.Add(full);
        return DesignSchema.OfPattern(full) ?? throw new InvalidOperationException($"The schema has no key {full}.");
    }

    private string Join(string key) => DocPath.Join(path, key);

    private static int MostItems => 5000;

    private static string Words(SchemaKey rule) => string.Join(", ", rule.Choices.Select(c => $"\"{c}\""));

    private static string Example(SchemaKey rule) => KeyExamples.Of(rule);
}
