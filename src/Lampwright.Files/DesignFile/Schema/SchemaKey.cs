using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>One key of the design file: what it means and what it takes.</summary>
/// <param name="Pattern">Its path, <c>*</c> for names that the maker gives, <c>[]</c> for positions in lists.</param>
/// <param name="Kind">What may stand behind it.</param>
/// <param name="Meaning">What it says, in one sentence.</param>
public sealed record SchemaKey(string Pattern, KeyKind Kind, string Meaning)
{
    /// <summary>Dimension of its values.</summary>
    public Dimension Dimension { get; init; }

    /// <summary>Least accepted value as it is shown, empty for no limit.</summary>
    public string Least { get; init; } = "";

    /// <summary>Greatest accepted value as it is shown, empty for no limit.</summary>
    public string Most { get; init; } = "";

    /// <summary>True where its table makes no sense without it.</summary>
    public bool Required { get; init; }

    /// <summary>The value that stands in where nothing is written, as one would write it; empty for none.</summary>
    public string Default { get; init; } = "";

    /// <summary>Where the default comes from.</summary>
    public string DefaultSource { get; init; } = "";

    /// <summary>What it means when nothing is written and there is no default.</summary>
    public string Absent { get; init; } = "";

    /// <summary>The words that are accepted.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>What its names refer to: a kind of table (<c>emitter</c>) or <c>thing</c> for any id.</summary>
    public string RefersTo { get; init; } = "";

    /// <summary>The station it serves.</summary>
    public string Station { get; init; } = "";

    /// <summary>An example of how it is written.</summary>
    public string Example { get; init; } = "";

    /// <summary>True where it may stand in a shop file.</summary>
    public bool InShop { get; init; }

    /// <summary>Last part of the pattern.</summary>
    public string Name => Pattern[(Pattern.LastIndexOf('.') + 1)..];

    /// <summary>Pattern of the table it belongs to.</summary>
    public string Table => Pattern.LastIndexOf('.') is var dot && dot < 0 ? "" : Pattern[..dot];

    /// <summary>Least accepted value in SI units.</summary>
    public double LeastSi { get; init; } = double.NegativeInfinity;

    /// <summary>Greatest accepted value in SI units.</summary>
    public double MostSi { get; init; } = double.PositiveInfinity;

    /// <summary>The accepted range in words, empty where there is none.</summary>
    public string Range =>
        (Least, Most) switch
        {
            ("", "") => "",
            ("", _) => $"at most {Most}",
            (_, "") => $"at least {Least}",
            _ => $"{Least} to {Most}",
        };
}
