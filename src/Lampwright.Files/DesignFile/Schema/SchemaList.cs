using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Collects the keys of one table; the words in which the schema is written.</summary>
internal sealed class SchemaList(List<SchemaKey> keys, string table, string station, bool inShop = false)
{
    public List<SchemaKey> Keys => keys;

    public SchemaList Quantity(
        string name,
        Dimension dimension,
        string least,
        string most,
        string meaning,
        bool required = false,
        string @default = "",
        string source = "",
        string absent = "",
        KeyKind kind = KeyKind.Quantity,
        string example = ""
    ) =>
        Add(
            new SchemaKey(Path(name), kind, meaning)
            {
                Dimension = dimension,
                Least = least,
                Most = most,
                LeastSi = Si(least, dimension, double.NegativeInfinity),
                MostSi = Si(most, dimension, double.PositiveInfinity),
                Required = required,
                Default = @default,
                DefaultSource = source,
                Absent = absent,
                Example = example,
            }
        );

    public SchemaList Length(
        string name,
        string least,
        string most,
        string meaning,
        bool required = false,
        string @default = "",
        string source = "",
        string absent = "",
        KeyKind kind = KeyKind.Quantity,
        string example = ""
    ) => Quantity(name, Dimension.Length, least, most, meaning, required, @default, source, absent, kind, example);

    public SchemaList Count(
        string name,
        int least,
        int most,
        string meaning,
        bool required = false,
        string @default = "",
        string source = "",
        string absent = "",
        KeyKind kind = KeyKind.Count
    ) => Quantity(name, Dimension.None, $"{least}", $"{most}", meaning, required, @default, source, absent, kind);

    public SchemaList Text(
        string name,
        string meaning,
        bool required = false,
        string @default = "",
        string source = "",
        string absent = "",
        string example = ""
    ) =>
        Add(
            new SchemaKey(Path(name), KeyKind.Text, meaning)
            {
                Required = required,
                Default = @default,
                DefaultSource = source,
                Absent = absent,
                Example = example,
            }
        );

    public SchemaList Choice(
        string name,
        string[] choices,
        string meaning,
        bool required = false,
        string @default = "",
        string source = "",
        string absent = ""
    ) =>
        Add(
            new SchemaKey(Path(name), KeyKind.Choice, meaning)
            {
                Choices = choices,
                Required = required,
                Default = @default,
                DefaultSource = source,
                Absent = absent,
            }
        );

    public SchemaList Refers(
        string name,
        string to,
        string meaning,
        bool required = false,
        string @default = "",
        string source = "",
        KeyKind kind = KeyKind.Reference,
        string absent = "",
        string example = ""
    ) =>
        Add(
            new SchemaKey(Path(name), kind, meaning)
            {
                RefersTo = to,
                Required = required,
                Default = @default,
                DefaultSource = source,
                Absent = absent,
                Example = example,
            }
        );

    public SchemaList Other(
        string name,
        KeyKind kind,
        string meaning,
        bool required = false,
        string absent = "",
        string example = ""
    ) =>
        Add(
            new SchemaKey(Path(name), kind, meaning)
            {
                Required = required,
                Absent = absent,
                Example = example,
            }
        );

    public SchemaList Table(
        string name,
        string meaning,
        bool required = false,
        string absent = "",
        KeyKind kind = KeyKind.Table
    )
    {
        Other(name, kind, meaning, required, absent);
        return new SchemaList(
            keys,
            kind switch
            {
                KeyKind.NamedTables => Path(name) + ".*",
                KeyKind.ListOfTables => Path(name) + "[]",
                _ => Path(name),
            },
            station,
            inShop
        );
    }

    /// <summary>The keys of tables that may stand in a list of values.</summary>
    public SchemaList Items(string name) => new(keys, Path(name) + "[]", station, inShop);

    private SchemaList Add(SchemaKey key)
    {
        keys.Add(key with { Station = station, InShop = inShop });
        return this;
    }

    private string Path(string name) => table.Length == 0 ? name : table + "." + name;

    private static double Si(string text, Dimension dimension, double none) =>
        text.Length == 0 ? none
        : QuantityText.TryParse(text, dimension.IsNone ? null : dimension, out var stated, out var error) ? stated.Si
        : throw new ArgumentException(error!.Message, nameof(text));
}
