using System.Globalization;
using System.Text.RegularExpressions;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Drawings;
using Lampwright.Metal;
using Lampwright.Tables;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>What to drill and tap, part by part and hole by hole, from the datum edges of the blank.</summary>
internal static partial class DrillPage
{
    public static void Draw(PacketBook book)
    {
        var parts = (book.Evaluation.Metal?.Parts ?? []).Where(p => p.Blank.Holes.Count > 0).ToList();
        if (parts.Count == 0)
        {
            return;
        }

        var flow = new Flow(book, new("Drill and tap list")).Begun();
        flow.Title("Drill and tap list", "x from the left edge, y from the bottom edge of the blank, outside up");
        var unit = book.Units.LengthSign;
        var table = new Table(
            [
                new("", "", 6),
                new("hole", "", 43),
                new("on", "", 20),
                new("x", unit, 16, 13),
                new("y", unit, 16, 13),
                new("cut", unit, 22),
                new("what for", "", 47),
            ],
            4.9,
            2.8
        );
        foreach (var part in parts)
        {
            flow.Head(
                part.Name,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{part.ThicknessMm:0.##} mm {part.Material}, make {part.Count}"
                )
            );
            var rows = new List<IReadOnlyList<Cell>>();
            foreach (var group in HoleGroup.Of(part.Blank))
            {
                rows.AddRange(Rows(book, part, group));
            }

            table.Draw(flow, rows);
        }
    }

    private static IEnumerable<IReadOnlyList<Cell>> Rows(PacketBook book, PartAnswer part, HoleGroup group)
    {
        var letter = new Cell(group.Letter, Weight: Fonts.Weight.SemiBold);
        if (group.IsField)
        {
            // A field is punched through the template; its corners are enough to lay it right.
            var (low, high) = Corners(group);
            yield return
            [
                letter,
                $"{Short(part, group.Holes[0].Id, group.On)} … {group.Holes.Count}",
                group.On,
                "from",
                "from",
                CutOf(book, group),
                WhatFor(group),
            ];
            yield return ["", "lowest, leftmost centre", "", At(book, low.X), At(book, low.Y), "", "by template"];
            yield return ["", "highest, rightmost centre", "", At(book, high.X), At(book, high.Y), "", ""];
            yield break;
        }

        foreach (var hole in group.Holes)
        {
            yield return
            [
                letter,
                Short(part, hole.Id, hole.On),
                hole.On,
                At(book, hole.Centre.X).Strong,
                At(book, hole.Centre.Y).Strong,
                CutOf(book, group),
                WhatFor(group),
            ];
        }
    }

    private static Cell At(PacketBook book, double metres) => new(book.Units.Length(metres * 1000));

    /// <summary>The id without what the head and the column beside it say already.</summary>
    private static string Short(PartAnswer part, string id, string on)
    {
        foreach (var known in new[] { part.Name + ".", on + "." })
        {
            id = id.StartsWith(known, StringComparison.Ordinal) ? id[known.Length..] : id;
        }

        return id;
    }

    private static Cell CutOf(PacketBook book, HoleGroup group) =>
        group.Holes[0].DiameterM > 0 ? $"Ø {book.Units.Diameter(group.Holes[0].DiameterM * 1000)}" : group.Size;

    private static Cell WhatFor(HoleGroup group)
    {
        var match = Tap().Match(group.Purpose);
        if (match.Success && MetricThread.Named(match.Groups[1].Value) is { } thread)
        {
            return new(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{match.Groups[1].Value} tap: drill {thread.TapDrillM * 1000:0.0#} mm"
                ),
                Tint: Palette.Flow,
                Weight: Fonts.Weight.Medium
            );
        }

        return group.Purpose;
    }

    private static (Geometry.Vec2 Low, Geometry.Vec2 High) Corners(HoleGroup group)
    {
        BlankHole Extreme(Func<BlankHole, double> by) => group.Holes.MinBy(by)!;
        return (
            Extreme(h => h.Centre.Y + (h.Centre.X * 1e-3)).Centre,
            Extreme(h => -h.Centre.Y - (h.Centre.X * 1e-3)).Centre
        );
    }

    [GeneratedRegex(@"\b(M\d+(?:\.\d+)?) tap\b")]
    private static partial Regex Tap();
}
