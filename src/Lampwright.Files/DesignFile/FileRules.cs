using Lampwright.Findings;

namespace Lampwright.Files.DesignFile;

/// <summary>What reading a design file has to say beyond its problems.</summary>
public static class FileRules
{
    /// <summary>A value was not written and a default stands in.</summary>
    public static readonly Rule DefaultUsed = new(
        "FIL001",
        "A default stands in",
        Severity.Note,
        "Write the value if you know it; the band gets narrower.",
        "house rule: a default is a note, never silent"
    );

    /// <summary>A table stands in the design file and in the shop file.</summary>
    public static readonly Rule SaidTwice = new(
        "FIL002",
        "Said in two files",
        Severity.Warn,
        "Keep the table in one of the two files; the design file's counts.",
        "house rule: each thing is said once"
    );

    /// <summary>A rule of thumb was overridden.</summary>
    public static readonly Rule Overridden = new(
        "FIL003",
        "A rule of thumb is overridden",
        Severity.Note,
        "Nothing, if the reason still holds.",
        "house rule: an override is said wherever the design is judged"
    );

    /// <summary>A named value is used nowhere.</summary>
    public static readonly Rule Unused = new(
        "FIL004",
        "A named value is used nowhere",
        Severity.Note,
        "Delete it, or check the expression that should use it.",
        "common practice, no source"
    );

    /// <summary>A table is missing that a station cannot do without.</summary>
    public static readonly Rule NothingToCompute = new(
        "FIL005",
        "A station has nothing to compute from",
        Severity.Warn,
        "Add the table, or ignore this if the light has no such thing yet.",
        "house rule: what cannot be evaluated is said"
    );

    /// <summary>All rules of the files.</summary>
    public static IReadOnlyList<Rule> All { get; } = [DefaultUsed, SaidTwice, Overridden, Unused, NothingToCompute];
}
