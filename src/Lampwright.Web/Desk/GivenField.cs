using Lampwright.Quantities;

namespace Lampwright.Web.Desk;

/// <summary>One value that the maker gives or could give, as a field of the board shows it.</summary>
/// <param name="Path">Path in the design file, for example <c>driver.main.current.rated</c>.</param>
/// <param name="Label">Key below its table in words, for example <c>current rated</c>.</param>
/// <param name="Text">What the file says, without quotes; empty where it says nothing.</param>
/// <param name="Origin">Where the value in force comes from.</param>
public sealed record GivenField(string Path, string Label, string Text, Origin Origin)
{
    /// <summary>What the key means, for the reader.</summary>
    public string Help { get; init; } = "";

    /// <summary>What would be accepted, in words with an example.</summary>
    public string Accepts { get; init; } = "";

    /// <summary>The value in force when the file says nothing; empty where there is none.</summary>
    public string Default { get; init; } = "";

    /// <summary>Where the default comes from.</summary>
    public string DefaultSource { get; init; } = "";

    /// <summary>What holds when the file says nothing and there is no default: <c>needed</c>, <c>computed</c> …; empty otherwise.</summary>
    public string Absent { get; init; } = "";

    /// <summary>What an expression comes to, with its unit; empty for a plain value.</summary>
    public string ComesTo { get; init; } = "";

    /// <summary>Line in the design file, 0 where it says nothing.</summary>
    public int Line { get; init; }

    /// <summary>The words that are accepted, where only some words are.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>True when the value is an expression over other values.</summary>
    public bool IsExpression => Text.StartsWith('{');
}

/// <summary>A table of the design file with its fields.</summary>
/// <param name="Path">Path of the table, for example <c>part.sink_tray.flange.wall_l</c>.</param>
/// <param name="Fields">Its fields in the order of the file, then those it does not mention.</param>
public sealed record GivenTable(string Path, IReadOnlyList<GivenField> Fields)
{
    /// <summary>What the table is for.</summary>
    public string Help { get; init; } = "";

    /// <summary>First word of the path, which decides the page it stands on.</summary>
    public string Kind => Path.Split('.', 2)[0];
}
