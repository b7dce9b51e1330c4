namespace Lampwright.Cli.Verbs;

/// <summary>A station of the work as a verb.</summary>
/// <param name="Verb">Its word.</param>
/// <param name="Field">Its field in the JSON document; empty for all of them.</param>
/// <param name="Code">The three letters of its findings; empty for all.</param>
/// <param name="Question">What it answers.</param>
internal sealed record Station(string Verb, string Field, string Code, string Question)
{
    /// <summary>All stations at once.</summary>
    public static Station All { get; } = new("evaluate", "", "", "");

    /// <summary>The station steps, which has a verb of its own.</summary>
    public static Station Steps { get; } =
        new("steps", "steps", "STP", "Which resistors and switches give which brightness");

    /// <summary>The stations in the order of the work.</summary>
    public static IReadOnlyList<Station> Each { get; } =
    [
        Steps,
        new("heat", "heat", "HEA", "How hot junction, sink, driver and skin get, at each step, in three scenes"),
        new("light", "light", "LIT", "How much light leaves, what lands on the subject, which aperture that is"),
        new("metal", "metal", "MET", "The blank of each folded part, and whether shop and sheet can make it"),
        new("fit-up", "fitUp", "FIT", "Whether the parts meet, holes line up and screws reach; mass and balance point"),
        new("balance", "balance", "BAL", "Whether the tilt holds, the arm is stiff enough, the stand stays up"),
        new("readings", "readings", "REA", "What was measured beside what was predicted, and what it would correct"),
    ];
}
