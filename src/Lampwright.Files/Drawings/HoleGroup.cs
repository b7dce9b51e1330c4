using System.Globalization;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>Equal holes of a blank that belong together, under one letter.</summary>
/// <param name="Letter">Letter on the drawing: A, B … Z, AA …</param>
/// <param name="Hole">Id of the hole or pattern within the part.</param>
/// <param name="On"><c>face</c> or the id of the flange it lies in.</param>
/// <param name="Size">Size in words: <c>Ø4.3</c>, <c>20 × 5 slot</c>, <c>28 × 20 R2</c>, <c>40 × 25 outline R2</c>.</param>
/// <param name="Purpose">What it is for, or empty.</param>
/// <param name="Holes">The holes, in the order of the blank.</param>
public sealed record HoleGroup(
    string Letter,
    string Hole,
    string On,
    string Size,
    string Purpose,
    IReadOnlyList<BlankHole> Holes
)
{
    /// <summary>Above this many holes a group is a field: it has no coordinates on the drawing, only in lists and on the template.</summary>
    public static int MostWithCoordinates { get; } = 16;

    /// <summary>True when the group is a field of many holes.</summary>
    public bool IsField => Holes.Count > MostWithCoordinates;

    /// <summary>The group in one line: <c>4 × Ø4.3  M4 clearance</c>.</summary>
    public string Text =>
        string.Create(CultureInfo.InvariantCulture, $"{Holes.Count} × {Size}")
        + (Purpose.Length > 0 ? "  " + Purpose : "  " + Hole);

    /// <summary>The groups of a blank, in the order in which their first holes come.</summary>
    public static IReadOnlyList<HoleGroup> Of(Blank blank)
    {
        ArgumentNullException.ThrowIfNull(blank);
        var groups = new List<HoleGroup>();
        foreach (var holes in blank.Holes.GroupBy(h => (h.Hole, h.On, Size: SizeText(h), h.Purpose)))
        {
            var (hole, on, size, purpose) = holes.Key;
            groups.Add(new(LetterOf(groups.Count), hole, on, size, purpose, [.. holes]));
        }

        return groups;
    }

    private static string SizeText(BlankHole hole)
    {
        if (hole.DiameterM > 0)
        {
            return "Ø" + Numbers.Mm(hole.DiameterM);
        }

        // The longest edge gives the direction the shape lies in, so that a turned slot shows its own sizes.
        var corners = hole.Outline.Corners;
        var along = new Vec2(1, 0);
        var longest = 0.0;
        for (var i = 0; i < corners.Count; i++)
        {
            var edge = corners[(i + 1) % corners.Count].Point - corners[i].Point;
            if (corners[i].Bulge == 0 && edge.Length > longest + 1e-9)
            {
                (longest, along) = (edge.Length, edge.Unit);
            }
        }

        var (least, most) = hole
            .Outline.Moved(p => new((p - hole.Centre).Dot(along), (p - hole.Centre).Dot(along.Left)))
            .Box;
        var arcs = Enumerable.Range(0, corners.Count).Where(i => corners[i].Bulge != 0).ToList();
        var isSlot =
            corners.Count == 4
            && arcs.Count == 2
            && arcs.TrueForAll(i => Math.Abs(Math.Abs(corners[i].Bulge) - 1) < 1e-9);
        var isRounded = corners.Count == 8 && arcs.Count == 4;
        var rounded = arcs.Count > 0 ? " R" + Numbers.Mm(hole.Outline.Arc(arcs[0]).Radius) : "";
        return Numbers.Mm(most.X - least.X)
            + " × "
            + Numbers.Mm(most.Y - least.Y)
            + (
                hole.IsOutline ? " outline" + rounded
                : isSlot ? " slot"
                : isRounded ? rounded
                : ""
            );
    }

    private static string LetterOf(int index)
    {
        var text = "";
        for (var n = index; n >= 0; n = (n / 26) - 1)
        {
            text = (char)('A' + (n % 26)) + text;
        }

        return text;
    }
}
