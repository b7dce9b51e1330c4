using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>One blank on its way onto paper; y up, zero at the blank's lower left corner, paper millimetres.</summary>
internal sealed class BlankSheet(Blank blank, BlankDrawingOptions options)
{
    private const double Same = 0.05;
    private readonly DrawingBuilder draw = new();
    private readonly double k = 1000 * options.Scale;
    private readonly double size = options.TextMm;
    private readonly IReadOnlyList<HoleGroup> groups = HoleGroup.Of(blank);

    private readonly IReadOnlyList<Finding> findings = FindingMarks.Of(options.Findings, blank.Part);

    private double W => blank.WidthM * k;

    private double H => blank.HeightM * k;

    public Drawing Drawing()
    {
        Shape();
        var labels = new BlankLabels(draw, blank, groups, k, size);
        var marks = new FindingMarks(draw, findings, k, size);
        marks.Places();
        if (options.Dimensions)
        {
            FromBottom();
            FromLeft();
        }

        if (options.HoleCoordinates)
        {
            FromTop();
            FromRight();
        }

        if (options.Legend || options.HoleCoordinates)
        {
            labels.HoleLetters();
        }

        if (options.BendLabels)
        {
            labels.BendLabels();
        }

        marks.Words();
        if (options.Legend)
        {
            labels.Face();
            BlankLegend.Draw(draw, blank, groups, labels.Keys, findings, options, size);
        }

        return draw.Finish(blank.Part, options.Scale, margin: options.Dimensions ? 2 : 1, groups);
    }

    private Vec2 P(Vec2 p) => p * k;

    private void Shape()
    {
        foreach (var hole in blank.Holes)
        {
            CentreMark(hole);
        }

        foreach (var bend in blank.Bends)
        {
            var (a, b) = (P(bend.CentreLine.A), P(bend.CentreLine.B));
            draw.Line(bend.Id, LineKind.Bend, a, b);
            draw.Crowd.Take(a, b, 3);
        }

        if (options.SetLines)
        {
            SetLines.Draw(draw, blank, k);
        }

        foreach (var mark in blank.Marks)
        {
            var kind = mark.Kind == BlankMarkKind.Letters ? LineKind.Mark : LineKind.Bend;
            foreach (var stroke in mark.Strokes)
            {
                draw.Chain(mark.Id, kind, [.. stroke.Select(P)]);
            }
        }

        foreach (var side in options.Legend ? blank.Wrap?.Sides ?? [] : [])
        {
            var at = P(new(Math.Max(side.Start.A.X, side.Start.B.X) + 0.004, side.ZeroM + side.CornerM));
            draw.Text(blank.Part, side.Side, at + new Vec2(0, 0.8), size, TextRole.Bend);
        }

        foreach (var hole in blank.Holes)
        {
            var (least, most) = hole.Outline.Box;
            draw.Crowd.Take(
                hole.DiameterM > 0
                    ? TextBox.Round(P(hole.Centre), (hole.DiameterM * k / 2) + 0.3)
                    : TextBox.Of(P(least), P(most))
            );
            if (hole.DiameterM > 0)
            {
                draw.Circle(hole.Id, LineKind.Cut, P(hole.Centre), hole.DiameterM * k / 2);
            }
            else
            {
                draw.Outline(hole.Id, LineKind.Cut, hole.Outline.Moved(P));
            }
        }

        var outline = blank.Outline.Moved(P);
        draw.Outline(blank.Part, LineKind.Cut, outline);
        var points = outline.Points(0.2);
        for (var i = 0; i < points.Count; i++)
        {
            draw.Crowd.Take(points[i], points[(i + 1) % points.Count], 8);
        }
    }

    /// <summary>A punch mark in every hole; the centre lines of a large one reach over its edge.</summary>
    private void CentreMark(BlankHole hole)
    {
        var c = P(hole.Centre);
        var (least, most) = hole.Outline.Box;
        var (rx, ry) = ((most.X - least.X) * k / 2, (most.Y - least.Y) * k / 2);
        if (Math.Min(rx, ry) < 0.99)
        {
            return;
        }

        var isLarge = Math.Min(rx, ry) > 4;
        var kind = isLarge ? LineKind.Centre : LineKind.Mark;
        var (x, y) = isLarge ? (rx + 2, ry + 2) : (Math.Clamp(rx * 0.5, 0.35, 1.2), Math.Clamp(ry * 0.5, 0.35, 1.2));
        foreach (var arm in (Vec2[])[new(x, 0), new(0, y)])
        {
            draw.Line(hole.Id, kind, c - arm, c + arm);
            draw.Crowd.Take(c - arm, c + arm, 1);
        }
    }

    private void FromBottom()
    {
        var entries = Merged([.. BendPlaces(isX: true), .. CornerPlaces(isX: true)], W);
        var chain = new CoordinateChain((u, v) => new(u, -v), Math.PI / 2, ReadsOutward: false, TextSide: -1);
        var y = -Math.Max(chain.Draw(draw, entries, W, size, holdsEnds: true) + size * 1.4, 7);
        Overall(new(0, y), new(W, y), new(0, -1), Numbers.Place(blank.WidthM * 1000), 0);
    }

    private void FromLeft()
    {
        var entries = Merged([.. BendPlaces(isX: false), .. CornerPlaces(isX: false)], H);
        var chain = new CoordinateChain((u, v) => new(-v, u), 0, ReadsOutward: false, TextSide: 1);
        var x = -Math.Max(chain.Draw(draw, entries, H, size, holdsEnds: true) + size * 1.4, 7);
        Overall(new(x, 0), new(x, H), new(-1, 0), Numbers.Place(blank.HeightM * 1000), Math.PI / 2);
    }

    /// <summary>An over-all dimension: its line between arrows, its extension lines from the part, its text above the line.</summary>
    private void Overall(Vec2 a, Vec2 b, Vec2 outward, string text, double angle)
    {
        var along = (b - a).Unit;
        foreach (var end in (Vec2[])[a, b])
        {
            var start =
                outward.X == 0 ? new Vec2(end.X, Extent(end.X, isX: true)) : new(Extent(end.Y, isX: false), end.Y);
            draw.Line(blank.Part, LineKind.Dimension, start + (outward * 1.2), end + (outward * 1.5));
        }

        var above = new Vec2(-Math.Sin(angle), Math.Cos(angle)) * (size * 0.3);
        var width = TextWidth.Of(text, size);
        var length = (b - a).Length;
        if (length < width + 7)
        {
            // Too short for text and arrows between its lines: arrows from outside, text beyond the far end.
            draw.Line(blank.Part, LineKind.Dimension, a - (along * 5), b + (along * (7 + width)));
            draw.Arrow(a, along);
            draw.Arrow(b, -along);
            draw.Text(blank.Part, text, b + (along * 5) + above, size, TextRole.Dimension, TextAnchor.Start, angle);
            return;
        }

        draw.Line(blank.Part, LineKind.Dimension, a, b);
        draw.Arrow(a, -along);
        draw.Arrow(b, along);
        draw.Text(blank.Part, text, ((a + b) / 2) + above, size, TextRole.Dimension, TextAnchor.Middle, angle);
    }

    private void FromTop()
    {
        var chain = new CoordinateChain((u, v) => new(u, H + v), Math.PI / 2, ReadsOutward: true, TextSide: -1);
        chain.Draw(draw, HolePlaces(isX: true), W, size, holdsEnds: false);
    }

    private void FromRight()
    {
        var chain = new CoordinateChain((u, v) => new(W + v, u), 0, ReadsOutward: true, TextSide: 1);
        chain.Draw(draw, HolePlaces(isX: false), H, size, holdsEnds: false);
    }

    /// <summary>Distance of the outline's nearest corner at a place from the bottom (or the left) edge, paper mm.</summary>
    private double Extent(double at, bool isX) =>
        blank
            .Outline.Corners.Select(c => P(c.Point))
            .Where(p => Math.Abs((isX ? p.X : p.Y) - at) < Same)
            .Select(p => isX ? p.Y : p.X)
            .DefaultIfEmpty(0)
            .Min();

    private IEnumerable<ChainEntry> BendPlaces(bool isX)
    {
        foreach (var bend in blank.Bends)
        {
            var (a, b) = (P(bend.CentreLine.A), P(bend.CentreLine.B));
            var (ua, ub, va, vb) = isX ? (a.X, b.X, a.Y, b.Y) : (a.Y, b.Y, a.X, b.X);
            if (Math.Abs(ua - ub) < Same)
            {
                yield return new(ua, -Math.Min(va, vb), Numbers.Place(ua / options.Scale), bend.Id, 0);
            }
        }
    }

    private IEnumerable<ChainEntry> CornerPlaces(bool isX)
    {
        var corners = blank.Outline.Corners;
        for (var i = 0; i < corners.Count; i++)
        {
            var (before, corner, after) = (
                corners[(i + corners.Count - 1) % corners.Count],
                corners[i],
                corners[(i + 1) % corners.Count]
            );
            if (IsStraight(before, corner, after))
            {
                continue;
            }

            var p = P(corner.Point);
            var (u, v) = isX ? (p.X, p.Y) : (p.Y, p.X);
            yield return new(u, -v, Numbers.Place(u / options.Scale), corner.EdgeId, 1);
        }
    }

    /// <summary>Whether the outline runs on through a corner, which then only parts two named edges.</summary>
    internal static bool IsStraight(Corner before, Corner corner, Corner after)
    {
        var (a, b) = (corner.Point - before.Point, after.Point - corner.Point);
        return before.Bulge == 0
            && corner.Bulge == 0
            && Math.Abs(a.Cross(b)) <= 0.005 * a.Length * b.Length
            && a.Dot(b) > 0;
    }

    /// <summary>One entry a place, bends before corners, without the two ends that the over-all dimension has.</summary>
    private static IReadOnlyList<ChainEntry> Merged(IReadOnlyList<ChainEntry> entries, double length)
    {
        var merged = new List<ChainEntry>();
        foreach (
            var e in entries.Where(e => e.At > Same && e.At < length - Same).OrderBy(e => e.At).ThenBy(e => e.Rank)
        )
        {
            if (
                merged.Count > 0
                && (e.At - merged[^1].At < Same || string.Equals(merged[^1].Text, e.Text, StringComparison.Ordinal))
            )
            {
                var last = merged[^1];
                var best = e.Rank < last.Rank ? e : last;
                merged[^1] = best with { From = Math.Max(e.From, last.From) };
            }
            else
            {
                merged.Add(e);
            }
        }

        return merged;
    }

    private IReadOnlyList<ChainEntry> HolePlaces(bool isX)
    {
        var places = new SortedDictionary<double, (SortedSet<string> Letters, string Id, int Rank)>();
        foreach (var (group, rank) in groups.Select((g, i) => (g, i)))
        {
            if (group.IsField)
            {
                continue;
            }

            foreach (var hole in group.Holes)
            {
                var at = Numbers.Rounded((isX ? hole.Centre.X : hole.Centre.Y) * 1000);
                if (!places.TryGetValue(at, out var place))
                {
                    place = (new SortedSet<string>(StringComparer.Ordinal), hole.Id, rank);
                    places.Add(at, place);
                }

                place.Letters.Add(group.Letter);
            }
        }

        return
        [
            .. places.Select(p => new ChainEntry(
                p.Key * options.Scale,
                0,
                Numbers.Place(p.Key) + " " + string.Concat(p.Value.Letters),
                p.Value.Id,
                p.Value.Rank
            )),
        ];
    }
}
