namespace Lampwright.Files.DesignFile.Schema;

/// <summary>What may stand behind a key.</summary>
public enum KeyKind
{
    /// <summary>A table whose keys are listed.</summary>
    Table,

    /// <summary>A table of tables that the maker names.</summary>
    NamedTables,

    /// <summary>A list of tables.</summary>
    ListOfTables,

    /// <summary>A value with unit, spread or expression.</summary>
    Quantity,

    /// <summary>Two values of one dimension.</summary>
    TwoQuantities,

    /// <summary>Three values of one dimension.</summary>
    ThreeQuantities,

    /// <summary>One value for a round thing, or two for a rectangle.</summary>
    OneOrTwoQuantities,

    /// <summary>Any count of values of one dimension.</summary>
    Quantities,

    /// <summary>A list whose items are a value each, or a table whose keys are listed.</summary>
    ValuesOrTables,

    /// <summary>Two values for a place, or <c>centre</c>.</summary>
    Place,

    /// <summary>A list of places.</summary>
    Places,

    /// <summary>A list of pairs of flow and pressure.</summary>
    FanCurve,

    /// <summary>A shape of a hole, for example <c>round 4.3 mm</c>.</summary>
    Shape,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>Two whole numbers.</summary>
    TwoCounts,

    /// <summary>A text.</summary>
    Text,

    /// <summary>A list of texts.</summary>
    Texts,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>true or false.</summary>
    Flag,

    /// <summary>Name of another table.</summary>
    Reference,

    /// <summary>Names of other things.</summary>
    References,

    /// <summary>A value of any dimension.</summary>
    AnyQuantity,
}
