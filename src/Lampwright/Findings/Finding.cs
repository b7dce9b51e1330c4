namespace Lampwright.Findings;

/// <summary>What a good foreman would say of a design at one place.</summary>
/// <param name="Rule">The rule that raised it.</param>
/// <param name="Path">Path in the design file that the reader is led to.</param>
/// <param name="Message">What was seen, with numbers and units.</param>
/// <param name="Observed">The number that was seen, with its unit, or empty.</param>
/// <param name="Limit">The number it was held against, with its unit, or empty.</param>
/// <param name="Scene">The scene it holds in, or empty.</param>
public sealed record Finding(
    Rule Rule,
    string Path,
    string Message,
    string Observed = "",
    string Limit = "",
    string Scene = ""
)
{
    /// <summary>The rule's code.</summary>
    public string Code => Rule.Code;

    /// <summary>How serious it is.</summary>
    public Severity Severity => Rule.Severity;

    /// <summary>Where on a blank it bites; null where it speaks of no one place.</summary>
    public FindingPlace? Place { get; init; }

    /// <summary>What tells it from other findings: code and path.</summary>
    public string Key => Code + "@" + Path;
}
