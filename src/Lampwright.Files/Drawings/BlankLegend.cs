using System.Globalization;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>The legend below a blank: what the lines mean, which holes there are, what the sizes count from.</summary>
internal static class BlankLegend
{
    public static void Draw(
        DrawingBuilder draw,
        Blank blank,
        IReadOnlyList<HoleGroup> groups,
        IReadOnlyList<(string Key, string Text)> bends,
        double scale,
        double size
    )
    {
        var line = size * 1.5;
        var left = draw.Left;
        var y = draw.Bottom - line - 2;
        var x = left;
        foreach (var (kind, word) in Kinds(blank, draw.HasMarks))
        {
            var middle = y + (size * 0.36);
            if (kind == LineKind.Mark)
            {
                var c = new Vec2(x + 2, middle);
                draw.Line("", kind, c - new Vec2(1.2, 0), c + new Vec2(1.2, 0));
                draw.Line("", kind, c - new Vec2(0, 1.2), c + new Vec2(0, 1.2));
                x += 5.5;
            }
            else
            {
                draw.Line("", kind, new(x, middle), new(x + 9, middle));
                x += 11;
            }

            draw.Text("", word, new(x, y), size, TextRole.Note);
            x += TextWidth.Of(word, size) + 6;
        }

        y -= groups.Count > 0 ? size * 0.4 : 0;
        var counts = groups
            .Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Holes.Count} × {g.Size}"))
            .ToList();
        var column = counts.Select(c => TextWidth.Of(c, size)).DefaultIfEmpty(0).Max() + 11;
        foreach (var (group, count) in groups.Zip(counts))
        {
            y -= line;
            draw.Text("", group.Letter, new(left, y), size, TextRole.Hole);
            draw.Text("", count, new(left + 7, y), size, TextRole.Note);
            draw.Text(
                "",
                group.Purpose.Length > 0 ? group.Purpose : group.Hole,
                new(left + column, y),
                size,
                TextRole.Note
            );
        }

        foreach (var (key, text) in bends)
        {
            y -= line;
            draw.Text("", key, new(left, y), size, TextRole.Hole);
            draw.Text("", text, new(left + 7, y), size, TextRole.Note);
        }

        y -= line + (size * 0.4);
        foreach (var note in Notes(blank, scale))
        {
            draw.Text("", note, new(left, y), size, TextRole.Note);
            y -= line;
        }
    }

    private static IEnumerable<(LineKind Kind, string Word)> Kinds(Blank blank, bool hasMarks)
    {
        yield return (LineKind.Cut, "cut");
        if (blank.Bends.Count > 0)
        {
            yield return (LineKind.Bend, "bend, middle of the zone");
        }

        if (hasMarks)
        {
            yield return (LineKind.Mark, "punch mark");
        }
    }

    private static IEnumerable<string> Notes(Blank blank, double scale)
    {
        var written = scale >= 1 ? $"{Numbers.Tenths(scale)}:1" : $"1:{Numbers.Tenths(1 / scale)}";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"{blank.Part}: {Numbers.Place(blank.WidthM * 1000)} × {Numbers.Place(blank.HeightM * 1000)} mm of {blank.Sheet}, {blank.ThicknessM * 1000:0.##} mm thick; scale {written}"
        );
        yield return "seen on the outside; mm from the lower left datum";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"area {blank.AreaM2 * 1e4:0.0} cm², outline {blank.OutlineLengthM * 1000:0} mm, {blank.MassKg * 1000:0} g"
        );
        if (blank.GrainAlongX is { } alongX)
        {
            yield return alongX
                ? "rolling direction of the sheet: left to right"
                : "rolling direction of the sheet: upwards";
        }

        if (blank.Bends.Count > 0)
        {
            var radii = string.Join(
                ", ",
                blank
                    .Bends.Select(b => (b.InsideRadiusM * 1000).ToString("0.##", CultureInfo.InvariantCulture))
                    .Distinct(StringComparer.Ordinal)
            );
            yield return $"inside radius {radii} mm; blank by {blank.Method}";
        }
    }
}
