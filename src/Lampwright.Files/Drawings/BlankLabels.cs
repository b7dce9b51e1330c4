using System.Globalization;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>Puts the letters of holes and the words of bends where they lie on nothing else.</summary>
/// <param name="draw">The drawing, its shape drawn.</param>
/// <param name="blank">The blank.</param>
/// <param name="groups">Its groups of holes.</param>
/// <param name="k">Paper millimetres per metre.</param>
/// <param name="size">Size of the type.</param>
internal sealed class BlankLabels(
    DrawingBuilder draw,
    Blank blank,
    IReadOnlyList<HoleGroup> groups,
    double k,
    double size
)
{
    private static readonly Vec2[] Sides =
    [
        new(1, 1),
        new(-1, 1),
        new(1, -1),
        new(-1, -1),
        new(1, 0),
        new(-1, 0),
        new(0, 1),
        new(0, -1),
    ];

    private static readonly double[] Shares = [0.5, 0.38, 0.62, 0.26, 0.74, 0.15, 0.85];
    private readonly Dictionary<string, string> keys = new(StringComparer.Ordinal);

    /// <summary>Flanges whose bend found no room for its words: the number that stands there instead.</summary>
    public IReadOnlyDictionary<string, string> Keys => keys;

    /// <summary>A letter at the first hole of each group, and at every one of a small group that has room for it.</summary>
    public void HoleLetters()
    {
        foreach (var group in groups)
        {
            var found = group
                .Holes.Take(group.Holes.Count <= 4 ? 4 : 1)
                .Select(h => (Hole: h, Place: LetterPlace(h, group.Letter)))
                .ToList();
            var least = found.Min(f => f.Place.Cost);
            var isDrawn = false;
            foreach (var (hole, _) in found.OrderBy(f => f.Place.Cost > least))
            {
                // Asked again, as the letters before it have taken room.
                var (at, cost) = LetterPlace(hole, group.Letter);
                if (cost < 1 || !isDrawn)
                {
                    draw.Text(hole.Id, group.Letter, at, size, TextRole.Hole);
                    isDrawn = true;
                }
            }
        }
    }

    /// <summary>What each bend does, along its line; a number and a line in the legend where the words have no room.</summary>
    public void BendLabels()
    {
        foreach (var bend in blank.Bends)
        {
            var (a, b) = (bend.CentreLine.A * k, bend.CentreLine.B * k);
            if ((b - a).Length < 1e-9)
            {
                continue;
            }

            var along = (b - a).Unit;
            if (along.X < -1e-9 || (Math.Abs(along.X) <= 1e-9 && along.Y < 0))
            {
                (a, b, along) = (b, a, -along);
            }

            var angle = Math.Atan2(along.Y, along.X);
            var places = LinePlaces(a, b, along);
            var text = BendText(bend);
            var best = Best(text, places, TextAnchor.Middle, angle);
            if (best.Cost >= 1)
            {
                var key = (keys.Count + 1).ToString(CultureInfo.InvariantCulture);
                keys[bend.Flange] = key;
                (text, best) = (key, Best(key, places, TextAnchor.Middle, angle));
            }

            draw.Text(bend.Id, text, best.At, size, TextRole.Bend, TextAnchor.Middle, angle);
        }
    }

    /// <summary>Which face is up and which way the sheet was rolled, in the metal where there is room.</summary>
    public void Face()
    {
        var outline = blank.Outline.Moved(p => p * k).Points(0.5);
        Put(outline, "outside up", size * 1.15, 0);
        if (blank.GrainAlongX is not { } alongX)
        {
            return;
        }

        const double half = 11;
        var turn = alongX ? 0 : Math.PI / 2;
        if (Put(outline, "grain", size, turn, half) is not { } at)
        {
            return;
        }

        var along = new Vec2(1, 0).Turned(turn);
        var on = at - (along.Left * (size * 0.4));
        draw.Line(blank.Part, LineKind.Dimension, on - (along * half), on + (along * half));
        draw.Arrow(on + (along * half), along);
        draw.Arrow(on - (along * half), -along);
    }

    /// <summary>Writes a text about the freest place in the metal; null where there is none.</summary>
    private Vec2? Put(IReadOnlyList<Vec2> outline, string text, double type, double turn, double half = 0)
    {
        var (w, h) = (blank.WidthM * k, blank.HeightM * k);
        var reach = Math.Max(half, TextWidth.Of(text, type) / 2) + 1;
        var (along, up) = (new Vec2(1, 0).Turned(turn), new Vec2(0, 1).Turned(turn));
        (Vec2 At, double Cost)? best = null;
        for (var i = 1; i < 20; i++)
        {
            for (var j = 1; j < 20; j++)
            {
                var at = new Vec2(w * i / 20, h * j / 20);
                var box = new TextBox([
                    at - (along * reach) - (up * (type * 0.8)),
                    at + (along * reach) - (up * (type * 0.8)),
                    at + (along * reach) + (up * type),
                    at - (along * reach) + (up * type),
                ]);
                if (!box.Corners.All(c => Polygon2.Contains(outline, c)))
                {
                    continue;
                }

                // Near the middle of the blank among free places.
                var cost = draw.Crowd.Cost(box) + (0.2 * (Math.Abs(i - 10) + Math.Abs(j - 10)) / 20);
                if (cost < 1 && (best is null || cost < best.Value.Cost))
                {
                    best = (at, cost);
                }
            }
        }

        if (best is { } found)
        {
            draw.Text("", text, found.At, type, TextRole.Title, TextAnchor.Middle, turn);
            return found.At;
        }

        return null;
    }

    internal static string BendText(BlankBend bend) =>
        Numbers.Tenths(bend.AngleRad * 180 / Math.PI) + "° " + (bend.Direction == BendDirection.Down ? "down" : "up");

    private (Vec2 At, double Cost) LetterPlace(BlankHole hole, string letter)
    {
        var (least, most) = hole.Outline.Box;
        var half = (most - least) * (k / 2);
        var c = hole.Centre * k;
        return Math.Min(half.X, half.Y) > size
            ? (c + new Vec2(0.9, 0.9), 0)
            : Best(letter, LetterPlaces(c, half, letter), TextAnchor.Start, 0);
    }

    private List<Vec2> LetterPlaces(Vec2 c, Vec2 half, string letter)
    {
        var width = TextWidth.Of(letter, size);
        return
        [
            .. Sides.Select(s => new Vec2(
                c.X + (s.X * (half.X + 0.5 + (width / 2))) - (width / 2),
                c.Y + (s.Y * (half.Y + 0.3 + (size / 2))) - (size * 0.36)
            )),
        ];
    }

    private List<Vec2> LinePlaces(Vec2 a, Vec2 b, Vec2 along)
    {
        var places = new List<Vec2>(2 * Shares.Length);
        foreach (var share in Shares)
        {
            var on = a + ((b - a) * share);
            places.Add(on + (along.Left * (size * 0.35)));
            places.Add(on - (along.Left * (size * 0.95)));
        }

        return places;
    }

    /// <summary>The place with the least in its way; the earlier one among equals.</summary>
    private (Vec2 At, double Cost) Best(string text, List<Vec2> places, TextAnchor anchor, double angle)
    {
        var (best, cost) = (places[0], double.PositiveInfinity);
        for (var i = 0; i < places.Count; i++)
        {
            var here = draw.Crowd.Cost(TextBox.Of(text, places[i], size, anchor, angle)) + (i * 0.01);
            if (here < cost)
            {
                (best, cost) = (places[i], here);
            }
        }

        return (best, cost);
    }
}
