namespace Lampwright.Findings;

/// <summary>A rule of the trade that a design is held against. Each has a paragraph in docs/findings.md.</summary>
/// <param name="Code">Three letters of the station and three digits (STP HEA LIT MET FIT BAL REA FIL); never reused.</param>
/// <param name="Title">The rule in a few words.</param>
/// <param name="Severity">How serious it is when the rule is broken.</param>
/// <param name="Remedy">What to change; a full sentence.</param>
/// <param name="Source">Where the rule comes from; "common practice, no source" where there is none.</param>
/// <param name="ProtectsPeople">True for a stop that no override in the design file lifts.</param>
public sealed record Rule(
    string Code,
    string Title,
    Severity Severity,
    string Remedy,
    string Source,
    bool ProtectsPeople = false
)
{
    /// <summary>A finding that this rule raises at a place in the design.</summary>
    /// <param name="path">Path in the design file, for example <c>part.sink_tray.hole.vents</c>.</param>
    /// <param name="message">What was seen, with the numbers and their units; a full sentence.</param>
    /// <param name="observed">The number that was seen, with its unit; empty where there is none.</param>
    /// <param name="limit">The number it was held against, with its unit; empty where there is none.</param>
    /// <param name="scene">The scene it holds in (normal, hot, fan stopped); empty where it holds in all.</param>
    public Finding At(string path, string message, string observed = "", string limit = "", string scene = "") =>
        new(this, path, message, observed, limit, scene);
}
