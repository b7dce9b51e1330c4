using System.Globalization;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>One thing to scribe or punch on a blank, from its left and bottom edge, seen on the outside.</summary>
/// <param name="Kind"><c>corner</c>, <c>bend</c>, <c>set line</c>, <c>hole</c> or <c>cut-out corner</c>; of a tube <c>end</c> and <c>hole</c>, on each side by x from its start and y from the outside of the side before.</param>
/// <param name="Id">Which one.</param>
/// <param name="AtMm">Its place; of a line one end, mm.</param>
/// <param name="ToMm">The other end of a line, mm.</param>
/// <param name="What">Size, or what to do there.</param>
public sealed record MarkingPoint(string Kind, string Id, Vec2 AtMm, Vec2? ToMm, string What);

/// <summary>
/// The coordinates by which a blank is marked out by hand: all of them from the same two edges, so that no error is carried from one mark
/// to the next.
/// </summary>
public static class MarkingOut
{
    /// <summary>Everything that is marked, in the order in which one works: outline, bends, set lines, holes.</summary>
    /// <param name="blank">The blank.</param>
    public static IReadOnlyList<MarkingPoint> Of(Blank blank)
    {
        ArgumentNullException.ThrowIfNull(blank);
        return blank.Wrap is { } wrap
            ? [.. TubeEnds(wrap), .. TubeHoles(blank, wrap)]
            : [.. Corners(blank), .. Bends(blank), .. SetLines(blank), .. Holes(blank)];
    }

    /// <summary>Both ends of each side, from the longest point of the start and from the outside of the side before.</summary>
    private static IEnumerable<MarkingPoint> TubeEnds(TubeWrap wrap) =>
        from side in wrap.Sides
        from cut in ((string Name, Segment Line)[])[("start", side.Start), ("end", side.End)]
        select new MarkingPoint(
            "end",
            $"{side.Side} {cut.Name}",
            cut.Line.A * 1000,
            cut.Line.B * 1000,
            Math.Abs(cut.Line.B.X - cut.Line.A.X) < 1e-9 ? "square" : "scribe across the side"
        );

    private static IEnumerable<MarkingPoint> TubeHoles(Blank blank, TubeWrap wrap) =>
        from @group in HoleGroup.Of(blank)
        from hole in @group.Holes
        let side = wrap.Sides.First(s => s.Side == hole.On)
        from point in (IEnumerable<MarkingPoint>)
            [
                new(
                    "hole",
                    hole.Id,
                    side.OnSide(hole.Centre) * 1000,
                    null,
                    $"{@group.Size}; on the {side.Side}, y from the {Before(wrap, side)}"
                ),
                .. hole.IsOutline && !@group.IsField ? OutlineCorners(hole, side.OnSide) : [],
            ]
        select point;

    private static string Before(TubeWrap wrap, WrapSide side)
    {
        var at = wrap.Sides.ToList().IndexOf(side);
        return wrap.Sides[(at + wrap.Sides.Count - 1) % wrap.Sides.Count].Side;
    }

    private static IEnumerable<MarkingPoint> Corners(Blank blank)
    {
        var corners = blank.Outline.Corners;
        var number = 0;
        for (var i = 0; i < corners.Count; i++)
        {
            var (before, corner, after) = (
                corners[(i + corners.Count - 1) % corners.Count],
                corners[i],
                corners[(i + 1) % corners.Count]
            );
            if (BlankSheet.IsStraight(before, corner, after))
            {
                continue;
            }

            number++;
            var what = corner.Bulge == 0 ? "" : "arc to the next, R" + Numbers.Mm(blank.Outline.Arc(i).Radius);
            yield return new("corner", number.ToString(CultureInfo.InvariantCulture), corner.Point * 1000, null, what);
        }
    }

    private static IEnumerable<MarkingPoint> Bends(Blank blank) =>
        blank.Bends.Select(b => new MarkingPoint(
            "bend",
            b.Flange,
            b.CentreLine.A * 1000,
            b.CentreLine.B * 1000,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{Degrees(b.AngleRad)} {(b.Direction == BendDirection.Down ? "down" : "up")}{(b.BendToRad is { } to ? $", bend to {Degrees(to)}" : "")}"
            )
        ));

    private static IEnumerable<MarkingPoint> SetLines(Blank blank) =>
        from bend in blank.Bends
        where bend.Set is not null
        select new MarkingPoint(
            "set line",
            bend.Flange,
            bend.Set!.Line.A * 1000,
            bend.Set.Line.B * 1000,
            (bend.Set.OnInside ? "on the inside" : "on the outside")
                + (bend.Set.NoseBackM is { } back ? $", nose back {Numbers.Mm(back)}" : "")
        );

    private static IEnumerable<MarkingPoint> Holes(Blank blank) =>
        from @group in HoleGroup.Of(blank)
        from hole in @group.Holes
        from point in (IEnumerable<MarkingPoint>)
            [
                new("hole", hole.Id, hole.Centre * 1000, null, @group.Size),
                .. hole.IsOutline && !@group.IsField ? OutlineCorners(hole, p => p) : [],
            ]
        select point;

    /// <summary>A cut-out of its own form is scribed from corner to corner; a field of them is left to the template.</summary>
    private static IEnumerable<MarkingPoint> OutlineCorners(BlankHole hole, Func<Vec2, Vec2> from) =>
        hole.Outline.Corners.Select(
            (c, i) =>
                new MarkingPoint(
                    "cut-out corner",
                    string.Create(CultureInfo.InvariantCulture, $"{hole.Id} {i + 1}"),
                    from(c.Point) * 1000,
                    null,
                    c.Bulge == 0 ? "" : "arc to the next, R" + Numbers.Mm(hole.Outline.Arc(i).Radius)
                )
        );

    private static string Degrees(double rad) =>
        (rad * 180 / Math.PI).ToString("0.#", CultureInfo.InvariantCulture) + "°";
}
