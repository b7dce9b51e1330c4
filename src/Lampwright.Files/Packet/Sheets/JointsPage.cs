using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>What is fastened to what, with which screw, and whether it will line up.</summary>
internal static class JointsPage
{
    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.FitUp is not { Joints.Count: > 0 } fit)
        {
            return;
        }

        var flow = new Flow(book, new("Joints and screws")).Begun();
        flow.Title("Joints and screws", "stacked in the order from the screw's head on");
        var unit = book.Units.LengthSign;
        new Table(
            [
                new("joint", "", 24),
                new("holes", "", 10, 7),
                new("screw", "", 39),
                new("grip", unit, 20, 8),
                new("engaged", unit, 20, 10),
                new("stands out", unit, 24, 12),
                new("miss", unit, 18, 8),
                new("allowed", unit, 15, 11),
            ],
            6,
            2.8
        ).Draw(flow, [.. fit.Joints.Select(j => Row(book, j))]);
        flow.Head("Stacks");
        foreach (var joint in fit.Joints)
        {
            flow.Paragraph($"{joint.Name}: {string.Join(" → ", joint.Stack)}{Marked(book, joint.Name)}", 2.8);
        }

        if (fit.Unplaced.Count > 0)
        {
            flow.Head("Reached by no joint");
            flow.Paragraph(string.Join(", ", fit.Unplaced), 2.8, Palette.Warn);
        }
    }

    private static IReadOnlyList<Cell> Row(PacketBook book, JointAnswer joint)
    {
        Cell Length(Evaluation.Predicted? p) => p is { } known ? book.Units.Length(known) : new("–");
        var worst = joint.Holes.Count == 0 ? null : joint.Holes.MaxBy(h => h.MissMm.High - h.AllowsMm.Value);
        var tight = worst is not null && worst.MissMm.High > worst.AllowsMm.Value;
        return
        [
            ((Cell)joint.Name).Strong,
            joint.Holes.Count.ToString(CultureInfo.InvariantCulture),
            ((Cell)(joint.Screw.Length == 0 ? "none" : joint.Screw)).Strong,
            Length(joint.GripMm),
            Length(joint.EngagedMm),
            Length(joint.SparesMm),
            worst is null
                ? "–"
                : new Cell(
                    book.Units.Length(worst.MissMm.Value, 2),
                    $"≤ {book.Units.Length(worst.MissMm.High, 2)}",
                    tight ? Palette.Warn : null
                ),
            worst is null ? "–" : book.Units.Length(worst.AllowsMm.Value, 2),
        ];
    }

    private static string Marked(PacketBook book, string name) =>
        book.Design.Joints.FirstOrDefault(j => j.Name == name)?.Marked switch
        {
            Marking.ByTemplate => "; marked by template",
            Marking.ByHand => "; marked by hand",
            Marking.CentrePunched => "; punched through the mating part",
            Marking.DrilledTogether => "; clamped and drilled together",
            _ => "",
        };
}
