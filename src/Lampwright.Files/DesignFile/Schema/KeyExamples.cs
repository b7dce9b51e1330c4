using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>How a key is written.</summary>
public static class KeyExamples
{
    /// <summary>What may stand behind the equals sign, as one writes it.</summary>
    public static string Of(SchemaKey key)
    {
        if (key.Example.Length > 0)
        {
            return key.Example[0] is '"' or '[' or '{' or 't' ? key.Example : $"\"{key.Example}\"";
        }

        var one = One(key);
        return key.Kind switch
        {
            KeyKind.Table => "{ ... }",
            KeyKind.NamedTables => $"[{key.Pattern}.NAME]",
            KeyKind.ListOfTables => "[{ ... }]",
            KeyKind.Count => key.Least is "" ? "4"
            : key.Default.Length > 0 ? key.Default
            : key.Least,
            KeyKind.TwoCounts => "[2, 2]",
            KeyKind.TwoQuantities or KeyKind.Place or KeyKind.OneOrTwoQuantities => $"[{one}, {one}]",
            KeyKind.ThreeQuantities => $"[{one}, {one}, {one}]",
            KeyKind.Quantities or KeyKind.ValuesOrTables => $"[{one}, {one}]",
            KeyKind.Choice => string.Join(" | ", key.Choices.Select(c => $"\"{c}\"")),
            KeyKind.Flag => "true",
            KeyKind.Reference => "\"main\"",
            KeyKind.Text => "\"...\"",
            _ => one,
        };
    }

    private static string One(SchemaKey key)
    {
        var text = key.Default.Length > 0 ? key.Default : DimensionNames.Examples(key.Dimension).Split(" or ")[0];
        return
            key.Dimension.IsNone
            && !text.Contains('%', StringComparison.Ordinal)
            && !text.Contains('±', StringComparison.Ordinal)
            ? text
            : $"\"{text}\"";
    }
}
