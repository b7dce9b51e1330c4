using Lampwright.Evaluation;
using Lampwright.Files.Packet;
using Lampwright.Files.Packet.Templates;
using Lampwright.Tests.Files.Fixtures;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

namespace Lampwright.Tests.Files.Packet;

public sealed class TemplatesPdfTests
{
    private const double PointsPerMm = 72 / 25.4;
    private static readonly Dictionary<string, byte[]> written = [];

    [Theory]
    [InlineData("A4", 1)]
    [InlineData("A4", 2)]
    [InlineData("A4", 4)]
    [InlineData("Letter", 2)]
    [InlineData("Letter", 5)]
    public void Both_proof_bars_measure_100_mm_on_the_rendered_page(string paper, int page)
    {
        var raster = Poppler.Page(Pdf(paper), page);
        var level = LongestRun(raster, isLevel: true);
        var upright = LongestRun(raster, isLevel: false);
        AssertMarks(Marks(raster, isLevel: true, level + raster.Px(2.4)), raster, "level");
        AssertMarks(Marks(raster, isLevel: false, upright + raster.Px(2.4)), raster, "upright");
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void Holes_on_different_sheets_lie_at_their_distance_once_the_crosses_are_laid_on_each_other(string paper)
    {
        using var pdf = PdfDocument.Open(Pdf(paper));
        var sheets = pdf.GetPages()
            .Where(p => p.GetWords().Any(w => w.Text == "long") && p.Number > 1)
            .ToDictionary(NameInLargestType);
        Assert.True(sheets.Count > 2, $"{sheets.Count} sheets");
        var places = new Dictionary<string, (double X, double Y)> { ["A1"] = (0, 0) };
        var waiting = new Queue<string>(["A1"]);
        while (waiting.TryDequeue(out var name))
        {
            foreach (var (dx, dy) in new[] { (1, 0), (0, 1) })
            {
                var next = $"{(char)(name[0] + dy)}{(char)(name[1] + dx)}";
                if (!sheets.TryGetValue(next, out var sheet) || places.ContainsKey(next))
                {
                    continue;
                }

                var (from, to) =
                    dx == 1
                        ? (Crosses(sheets[name]).TakeRight(), Crosses(sheet).TakeLeft())
                        : (Crosses(sheets[name]).TakeLow(), Crosses(sheet).TakeHigh());
                Assert.Equal(2, from.Count);
                for (var i = 0; i < 2; i++)
                {
                    var at = places[name];
                    var step = (X: at.X + from[i].X - to[i].X, Y: at.Y + from[i].Y - to[i].Y);
                    Assert.True(
                        !places.TryGetValue(next, out var seen) || Distance(seen, step) < 0.01,
                        $"crosses of {next} disagree: {seen} {step}"
                    );
                    places[next] = step;
                }

                waiting.Enqueue(next);
            }
        }

        var holes = sheets
            .SelectMany(s => Circles(s.Value, 8).Select(c => (X: c.X + places[s.Key].X, Y: c.Y + places[s.Key].Y)))
            .OrderBy(c => c.X)
            .ToList();
        Assert.Equal(300, holes[^1].X - holes[0].X, 2);
        Assert.Equal(240, Math.Abs(holes[^1].Y - holes[0].Y), 2);
    }

    [Fact]
    public void Reader_is_asked_not_to_scale()
    {
        using var pdf = PdfDocument.Open(Pdf("A4"));
        var reference = (IndirectReferenceToken)pdf.Structure.Catalog.CatalogDictionary.Data["ViewerPreferences"];
        var preferences = (DictionaryToken)pdf.Structure.GetObject(reference.Data).Data;
        Assert.Equal("None", ((NameToken)preferences.Data["PrintScaling"]).Data);
    }

    [Fact]
    public void Pages_have_the_size_of_the_paper()
    {
        using var pdf = PdfDocument.Open(Pdf("Letter"));
        foreach (var page in pdf.GetPages())
        {
            Assert.Equal(612 + 792, page.Width + page.Height, 1);
        }
    }

    [Fact]
    public void Every_part_is_named_with_its_bends_and_holes()
    {
        using var pdf = PdfDocument.Open(Pdf("A4"));
        var text = string.Concat(pdf.GetPages().Select(p => p.Text)).Replace(" ", "", StringComparison.Ordinal);
        foreach (
            var expected in new[]
            {
                "tray",
                "plate",
                "long",
                "wall_l: 90° down",
                "wall_r: 90° up",
                "Ø4.3",
                "36 × Ø4",
                "100.0 mm",
                "make 2",
            }
        )
        {
            Assert.Contains(expected.Replace(" ", "", StringComparison.Ordinal), text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_blank_as_large_as_a_house_gets_words_and_no_sheets()
    {
        var part = SampleParts.Plate();
        var house = new LightEvaluation
        {
            Title = "house",
            Draws = 0,
            Metal = new([part.With(part.Blank with { WidthM = 20, HeightM = 20 })]),
        };
        using var stream = new MemoryStream();
        TemplatesPdf.Write(house, Paper.A4, stream);
        using var pdf = PdfDocument.Open(stream.ToArray());
        Assert.Equal(1, pdf.NumberOfPages);
    }

    /// <summary>The sheet's own name; neighbours are named in smaller type.</summary>
    private static string NameInLargestType(Page page) =>
        page.GetWords()
            .Where(w => w.Text.Length == 2 && char.IsAsciiLetterUpper(w.Text[0]) && char.IsAsciiDigit(w.Text[1]))
            .MaxBy(w => w.Letters[0].PointSize)!
            .Text;

    private static byte[] Pdf(string paper)
    {
        lock (written)
        {
            if (!written.TryGetValue(paper, out var bytes))
            {
                using var stream = new MemoryStream();
                TemplatesPdf.Write(SampleLight.Evaluation(), Paper.Of(paper), stream);
                bytes = stream.ToArray();
                written[paper] = bytes;
            }

            return bytes;
        }
    }

    /// <summary>Row (or column) on which the proof bar lies: the longest dark run of 99 to 101 mm near the edge.</summary>
    private static int LongestRun(Raster raster, bool isLevel)
    {
        var (lines, length) = isLevel ? (raster.Height, raster.Width) : (raster.Width, raster.Height);
        var (first, last) = isLevel ? (lines - raster.Px(25), lines) : (0, raster.Px(25));
        for (var line = first; line < last; line++)
        {
            var run = 0;
            for (var i = 0; i <= length; i++)
            {
                if (i < length && Dark(raster, isLevel, line, i))
                {
                    run++;
                    continue;
                }

                if (Math.Abs(raster.Mm(run) - 100.2) < 0.6)
                {
                    return line;
                }

                run = 0;
            }
        }

        Assert.Fail($"no {(isLevel ? "level" : "upright")} proof bar");
        return -1;
    }

    /// <summary>Middles of the dark runs along a line that crosses only the end marks of the bar.</summary>
    private static List<double> Marks(Raster raster, bool isLevel, int line)
    {
        var marks = new List<double>();
        var start = -1;
        var length = isLevel ? raster.Width : raster.Height;
        for (var i = 0; i <= length; i++)
        {
            var dark = i < length && Dark(raster, isLevel, line, i);
            if (dark && start < 0)
            {
                start = i;
            }
            else if (!dark && start >= 0)
            {
                marks.Add((start + i - 1) / 2.0);
                start = -1;
            }
        }

        return marks;
    }

    private static void AssertMarks(List<double> marks, Raster raster, string which)
    {
        var best = marks.SelectMany(a => marks.Select(b => raster.Mm(b - a))).MinBy(d => Math.Abs(d - 100));
        Assert.True(Math.Abs(best - 100) < 0.1, $"{which} bar measures {best} mm");
    }

    private static bool Dark(Raster raster, bool isLevel, int line, int i) =>
        isLevel ? raster.IsDark(i, line) : raster.IsDark(line, i);

    private static double Distance((double X, double Y) a, (double X, double Y) b) =>
        Math.Max(Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));

    private static List<(double X, double Y)> Crosses(Page page) => Circles(page, 4);

    private static List<(double X, double Y)> Circles(Page page, double diameter) =>
        [
            .. page
                .Paths.Select(p => p.GetBoundingRectangle())
                .Where(b =>
                    b is { } r
                    && Math.Abs((r.Width / PointsPerMm) - diameter) < 0.02
                    && Math.Abs((r.Height / PointsPerMm) - diameter) < 0.02
                )
                .Select(b => (X: b!.Value.Centroid.X / PointsPerMm, Y: b.Value.Centroid.Y / PointsPerMm)),
        ];
}

file static class Ends
{
    public static List<(double X, double Y)> TakeRight(this List<(double X, double Y)> all) =>
        [.. all.OrderByDescending(c => c.X).Take(2).OrderBy(c => c.Y)];

    public static List<(double X, double Y)> TakeLeft(this List<(double X, double Y)> all) =>
        [.. all.OrderBy(c => c.X).Take(2).OrderBy(c => c.Y)];

    public static List<(double X, double Y)> TakeLow(this List<(double X, double Y)> all) =>
        [.. all.OrderBy(c => c.Y).Take(2).OrderBy(c => c.X)];

    public static List<(double X, double Y)> TakeHigh(this List<(double X, double Y)> all) =>
        [.. all.OrderByDescending(c => c.Y).Take(2).OrderBy(c => c.X)];

    public static global::Lampwright.Evaluation.Answers.PartAnswer With(
        this global::Lampwright.Evaluation.Answers.PartAnswer part,
        global::Lampwright.Metal.Blank blank
    ) => part with { Blank = blank };
}
