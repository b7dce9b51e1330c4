using System.Globalization;
using Lampwright.Findings;
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
        IReadOnlyDictionary<string, string> keys,
        IReadOnlyList<Finding> findings,
        BlankDrawingOptions options,
        double size
    )
    {
        var line = size * 1.5;
        var left = draw.Left;
        var y = draw.Bottom - line - 2;
        var x = left;
        foreach (var (kind, word) in Kinds(blank, options, draw.HasMarks))
        {
            if (x > left && x + 11 + TextWidth.Of(word, size) > Math.Max(draw.Right, left + 60))
            {
                (x, y) = (left, y - line);
            }

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

        var top = y - (size * 0.4);
        var (foot, width) = Column(draw, [Holes(groups)], left, top, size);
        Row[][] second = [Bends(blank, keys), Found(findings)];

        // Beside the first column where there is room: a drawing with a tall legend becomes a small drawing.
        var beside = left + width + 9;
        var room = Math.Max(draw.Right, left + options.LegendMm);
        var fits = beside + second.Max(rows => Width(rows, size)) <= room;
        var (low, _) = Column(draw, second, fits ? beside : left, fits ? top : foot, size);
        Column(draw, [Notes(blank, options.Scale)], left, Math.Min(foot, low), size);
    }

    /// <summary>Writes blocks of rows below each other; gives the last line and the width.</summary>
    private static (double Foot, double Width) Column(
        DrawingBuilder draw,
        IReadOnlyList<Row[]> blocks,
        double left,
        double y,
        double size
    )
    {
        var widest = 0.0;
        foreach (var rows in blocks.Where(b => b.Length > 0))
        {
            var widths = Widths(rows, size);
            foreach (var row in rows)
            {
                y -= size * 1.5;
                var x = left;
                for (var c = 0; c < row.Cells.Length; c++)
                {
                    var (text, role, line) = row.Cells[c];
                    if (text.Length > 0)
                    {
                        draw.Text(row.Id, text, new(x, y), size, role, line: line);
                    }

                    x += widths.Length > c ? widths[c] : 0;
                }
            }

            y -= size * 0.4;
            widest = Math.Max(widest, Width(rows, size));
        }

        return (y, widest);
    }

    /// <summary>A line of the legend: cells that stand below each other in its block.</summary>
    private sealed record Row(string Id, params (string Text, TextRole Role, LineKind? Line)[] Cells);

    private static double[] Widths(Row[] rows, double size) =>
        rows.Length == 0 || rows.All(r => r.Cells.Length == 1)
            ? []
            :
            [
                .. Enumerable
                    .Range(0, rows.Max(r => r.Cells.Length))
                    .Select(c =>
                        rows.Max(r => r.Cells.Length > c ? TextWidth.Of(r.Cells[c].Text, size) : 0) is var widest
                        && widest > 0
                            ? widest + 3
                            : 0
                    ),
            ];

    private static double Width(Row[] rows, double size) =>
        Widths(rows, size) is { Length: > 0 } widths
            ? widths.Sum() - 3
            : rows.Select(r => TextWidth.Of(r.Cells[0].Text, size)).DefaultIfEmpty(0).Max();

    private static Row[] Holes(IReadOnlyList<HoleGroup> groups) =>
        [
            .. groups.Select(g => new Row(
                "",
                (g.Letter, TextRole.Hole, null),
                (string.Create(CultureInfo.InvariantCulture, $"{g.Holes.Count} × {g.Size}"), TextRole.Note, null),
                (g.Purpose.Length > 0 ? g.Purpose : g.Hole, TextRole.Note, null)
            )),
        ];

    /// <summary>A row a bend: its number where its words had no room, what it does, where its middle and its set line lie.</summary>
    private static Row[] Bends(Blank blank, IReadOnlyDictionary<string, string> keys)
    {
        static Row Of(string key, string bend, string turn, string middle, string set, string on, string to) =>
            new(
                "",
                (key, TextRole.Hole, null),
                (bend, TextRole.Note, null),
                (turn, TextRole.Note, null),
                (middle, TextRole.Note, LineKind.Bend),
                (set, TextRole.Note, LineKind.Set),
                (on, TextRole.Note, null),
                (to, TextRole.Note, null)
            );
        return blank.Bends.Count == 0
            ? []
            :
            [
                Of(
                    "",
                    "bend",
                    "turn",
                    "middle",
                    "set line",
                    "on",
                    blank.Bends.Any(b => b.BendToRad is not null) ? "bend to" : ""
                ),
                .. blank.Bends.Select(b =>
                    Of(
                        keys.GetValueOrDefault(b.Flange, ""),
                        b.Flange,
                        BlankLabels.BendText(b),
                        Place(b.CentreLine),
                        b.Set is { } set ? Place(set.Line) : "none",
                        b.Set is { } face ? (face.OnInside ? "inside" : "outside") : "",
                        b.BendToRad is { } to ? Numbers.Tenths(to * 180 / Math.PI) + "°" : ""
                    )
                ),
            ];
    }

    /// <summary>Where a line lies, counted from the left or the bottom edge.</summary>
    private static string Place(Segment line)
    {
        var (a, b) = (line.A * 1000, line.B * 1000);
        return Math.Abs(a.X - b.X) < 0.01 ? "x " + Numbers.Place(a.X)
            : Math.Abs(a.Y - b.Y) < 0.01 ? "y " + Numbers.Place(a.Y)
            : "slanted";
    }

    /// <summary>A line a finding with its numbers.</summary>
    private static Row[] Found(IReadOnlyList<Finding> findings)
    {
        const int most = 10;
        return
        [
            .. findings
                .Take(most)
                .Select(f => new Row(f.Key, (FindingWords.Line(f), TextRole.Found, FindingMarks.KindOf(f.Severity)))),
            .. findings.Count > most
                ? (Row[])[new("", ($"and {findings.Count - most} more", TextRole.Note, null))]
                : [],
        ];
    }

    private static IEnumerable<(LineKind Kind, string Word)> Kinds(
        Blank blank,
        BlankDrawingOptions options,
        bool hasMarks
    )
    {
        yield return (LineKind.Cut, "cut");
        if (blank.Bends.Count > 0)
        {
            yield return (LineKind.Bend, "bend, middle of the zone");
        }

        if (options.SetLines && blank.Bends.Any(b => b.Set is { OnInside: false }))
        {
            yield return (LineKind.Set, "set line, scribed outside");
        }

        if (options.SetLines && blank.Bends.Any(b => b.Set is { OnInside: true }))
        {
            yield return (LineKind.SetInside, "set line, scribed inside; triangles under the clamp");
        }

        if (blank.Wrap is not null)
        {
            yield return (LineKind.Bend, "where a side goes over into its round corner");
        }

        if (hasMarks)
        {
            yield return (LineKind.Mark, "punch mark");
        }
    }

    private static Row[] Notes(Blank blank, double scale) =>
        [.. Sentences(blank, scale).Select(n => new Row("", (n, TextRole.Note, null)))];

    private static IEnumerable<string> Sentences(Blank blank, double scale)
    {
        var written = scale >= 1 ? $"{Numbers.Tenths(scale)}:1" : $"1:{Numbers.Tenths(1 / scale)}";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"{blank.Part}: {Numbers.Place(blank.WidthM * 1000)} × {Numbers.Place(blank.HeightM * 1000)} mm of {blank.Sheet}, {blank.ThicknessM * 1000:0.##} mm thick; scale {written}"
        );
        yield return blank.Wrap is null
            ? "outside up; mm from the lower left datum"
            : "outside of the tube laid flat, first side below; taped round it full size its first and last line meet";
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
