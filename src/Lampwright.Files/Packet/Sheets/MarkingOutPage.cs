using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Drawings;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>Outline, bends and set lines of each blank by coordinates from two datum edges; holes are in the drill list.</summary>
internal static class MarkingOutPage
{
    public static void Draw(PacketBook book)
    {
        var parts = book.Evaluation.Metal?.Parts ?? [];
        if (parts.Count == 0)
        {
            return;
        }

        var flow = new Flow(book, new("Marking out")).Begun();
        flow.Title("Marking out by hand", "x from the left, y from the bottom edge, outside up; square these first");
        var unit = book.Units.LengthSign;
        var table = new Table(
            [
                new("", "", 19),
                new("", "", 27),
                new("x", unit, 16, 13),
                new("y", unit, 16, 13),
                new("to x", unit, 16, 13),
                new("to y", unit, 16, 13),
                new("what", "", 60),
            ],
            4.6,
            2.7
        );
        foreach (var part in parts)
        {
            flow.Head(part.Name, part.Blank.Wrap is null ? Words(part) : TubeWords(part));
            table.Draw(
                flow,
                [
                    .. MarkingOut
                        .Of(part.Blank)
                        .Where(p => p.Kind != "hole" || part.Blank.Wrap is not null)
                        .Select(p => Row(book, p)),
                ]
            );
        }
    }

    private static string Words(PartAnswer part) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{part.ThicknessMm:0.##} mm {part.Material}; {part.Blank.AreaM2 * 1e4:0.0} cm², outline {part.Blank.OutlineLengthM * 1000:0} mm; by {part.Blank.Method}"
        );

    private static string TubeWords(PartAnswer part) =>
        $"{part.Sheet}, {part.Material}; on each side x from the longest point of the start, y from the side before";

    private static IReadOnlyList<Cell> Row(PacketBook book, MarkingPoint point)
    {
        Cell At(double? mm) => new(mm is { } value ? book.Units.Length(value) : "");
        return
        [
            point.Kind,
            point.Id,
            At(point.AtMm.X).Strong,
            At(point.AtMm.Y).Strong,
            At(point.ToMm?.X),
            At(point.ToMm?.Y),
            point.What,
        ];
    }
}
