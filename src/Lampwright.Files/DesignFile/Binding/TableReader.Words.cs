using Lampwright.Files.DesignFile.Document;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Texts, words to choose from, flags.</summary>
internal sealed partial class TableReader
{
    /// <summary>A text, its default, or empty.</summary>
    public string Text(string key)
    {
        var rule = Rule(key);
        var entry = table?.Find(key);
        if (entry is null)
        {
            MissingIfRequired(rule, key);
            return DefaultText(rule, key);
        }

        if (entry.Value is DocScalar { Kind: ScalarKind.Text } scalar)
        {
            return scalar.Text;
        }

        context.Wrong(entry.Value, Join(key), "is not a text", "a text in quotes");
        return rule.Default;
    }

    /// <summary>One of the accepted words, its default, or empty.</summary>
    public string Choice(string key)
    {
        var rule = Rule(key);
        var text = Text(key);
        if (text.Length == 0 || rule.Choices.Contains(text, StringComparer.Ordinal))
        {
            if (text.Length == 0 && table?.Find(key)?.Value is DocScalar { Kind: ScalarKind.Text } empty)
            {
                context.Wrong(empty, Join(key), "is empty", Words(rule));
            }

            return text;
        }

        var near = Nearest.Of(text, rule.Choices);
        var node = table!.Find(key)!.Value;
        var hint = near is null ? "" : $" Did you mean {near}?";
        context.Problem(
            node,
            node.Start,
            Join(key),
            QuantityError.Shown(text),
            Words(rule),
            $"{Join(key)}: '{QuantityError.Shown(text)}' is none of the accepted words.{hint} Accepted: {Words(rule)}."
        );
        return rule.Default;
    }

    /// <summary>true or false.</summary>
    public bool Flag(string key)
    {
        _ = Rule(key);
        switch (table?.Find(key)?.Value)
        {
            case null:
                return false;
            case DocScalar { Kind: ScalarKind.Flag } scalar:
                return scalar.Text == "true";
            case { } node:
                context.Wrong(node, Join(key), "is neither true nor false", "true or false, without quotes");
                return false;
        }
    }

    /// <summary>A list of texts.</summary>
    public IReadOnlyList<string> Texts(string key)
    {
        var rule = Rule(key);
        var texts = new List<string>();
        foreach (var (item, itemPath) in Items(key, rule, "a list of texts, as in [\"R33\", \"R33\"]"))
        {
            if (item is DocScalar { Kind: ScalarKind.Text } scalar)
            {
                texts.Add(scalar.Text);
            }
            else
            {
                context.Wrong(item, itemPath, "is not a text", "a text in quotes");
            }
        }

        return texts;
    }
}
