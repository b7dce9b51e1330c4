using Lampwright.Findings;

namespace Lampwright.Web.Layout;

/// <summary>One of the eight stations as the board names it.</summary>
/// <param name="Word">The word that names it everywhere.</param>
/// <param name="Href">Address of its page.</param>
/// <param name="Question">What it answers.</param>
/// <param name="Tables">First words of the tables whose values are given on its page.</param>
/// <param name="Code">Three letters that its findings begin with.</param>
public sealed record Station(string Word, string Href, string Question, IReadOnlyList<string> Tables, string Code);

/// <summary>The eight stations in the order in which the work passes them.</summary>
public static class Stations
{
    /// <summary>All eight.</summary>
    public static IReadOnlyList<Station> All { get; } =
    [
        new(
            "steps",
            "steps",
            "Which resistors and switches give which brightness?",
            ["steps", "emitter", "driver"],
            "STP"
        ),
        new("heat", "heat", "How hot does everything get?", ["sink", "fan", "cutout", "interface", "place"], "HEA"),
        new(
            "light",
            "light",
            "How much light leaves, and what lands on the subject?",
            ["subject", "reflector", "diffuser"],
            "LIT"
        ),
        new("metal", "metal", "What is the blank of each part, and can it be bent?", ["part", "sheet", "brake"], "MET"),
        new("fit-up", "fit-up", "Do the parts meet, and what does it weigh?", ["assembly", "joint", "item"], "FIT"),
        new("balance", "balance", "Will the joint hold and the stand stay?", ["tilt", "arm", "stand"], "BAL"),
        new("readings", "readings", "What was measured, and what does it change?", ["readings"], "REA"),
        new("packet", "packet", "What goes to the shop?", ["", "show", "given", "rules"], "FIL"),
    ];

    /// <summary>The station on whose page a table is given; the packet's for what belongs to none.</summary>
    public static Station Of(string path)
    {
        var kind = path.Split('.', '[')[0];
        return All.FirstOrDefault(s => s.Tables.Contains(kind, StringComparer.Ordinal)) ?? All[^1];
    }

    /// <summary>The station that a finding belongs to: the one that raised it, or for one of the file the page its path is given on.</summary>
    public static Station Of(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        var raised = All.FirstOrDefault(s => finding.Code.StartsWith(s.Code, StringComparison.Ordinal)) ?? All[^1];
        return raised == All[^1] ? Of(finding.Path) : raised;
    }
}
