using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.Packet;
using Lampwright.Files.Packet.Templates;
using Lampwright.Metal;
using Lampwright.Quantities;
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
    [InlineData("A4")]
    [InlineData("A3")]
    [InlineData("roll")]
    public void Holes_measure_their_distance_on_whatever_paper(string name)
    {
        var paper = name == "roll" ? Paper.Roll(610, 1220) : Paper.Of(name);
        using var pdf = PdfDocument.Open(Pdf(new TemplateOptions(paper)));
        var sheets = pdf.GetPages().Where(p => p.Number > 1 && p.GetWords().Any(w => w.Text == "long")).ToList();
        Assert.Equal(name == "roll", sheets.Count == 1);
        if (name == "roll")
        {
            var holes = Circles(sheets[0], 8).OrderBy(c => c.X).ToList();
            Assert.Equal(300, holes[^1].X - holes[0].X, 2);
            Assert.Contains(
                610,
                new[] { sheets[0].Width, sheets[0].Height }.Select(l => Math.Round(l / PointsPerMm, 1))
            );
        }
    }

    [Fact]
    public void Inside_of_a_part_is_printed_where_its_set_lines_lie_and_mirrored()
    {
        var spec = new PartSpec("angle", new("mild", 0.0015, 0.0015, BendRule.Din6935), FaceSpec.Rectangle(0.1, 0.06))
        {
            Flanges = [new("leg", "face.left", 0.03)],
            Holes = [new("a", "face", new(0.08, 0.03), Lampwright.Metal.HoleShape.Round(0.008))],
            Brake = new() { NoseRadiusM = 0.001 },
        };
        var part = SampleParts.Plate().With(SheetPart.Of(spec).Blank!);
        var light = new LightEvaluation
        {
            Title = "angle",
            Draws = 0,
            Metal = new([part with { Name = "angle" }]),
        };
        byte[] Of(string faces)
        {
            using var stream = new MemoryStream();
            TemplatesPdf.Write(light, new TemplateOptions(Paper.A4) { Faces = faces }, stream);
            return stream.ToArray();
        }

        using var both = PdfDocument.Open(Of("both"));
        using var inside = PdfDocument.Open(Of("inside"));
        using var outside = PdfDocument.Open(Of("outside"));
        Assert.Equal((3, 2, 2), (both.NumberOfPages, inside.NumberOfPages, outside.NumberOfPages));
        var (front, back) = (both.GetPage(2), both.GetPage(3));
        Assert.Contains("OUTSIDE", front.Text, StringComparison.Ordinal);
        Assert.Contains("INSIDE", back.Text, StringComparison.Ordinal);

        // Both windows are equally wide, so hole and mirror image lie at equal distances from opposite sides of the blank.
        var middle = (TileGrid.WindowLeft + Paper.A4.WidthMm - TileGrid.EdgeMm) / 2;
        var (a, b) = (Assert.Single(Circles(front, 8)), Assert.Single(Circles(back, 8)));
        Assert.Equal(a.X - middle, middle - b.X, 2);
        Assert.Equal(a.Y, b.Y, 2);

        // The set line is a dashed line of its own: only on the face it is scribed on.
        Assert.Empty(Dashed(front));
        var set = Assert.Single(Dashed(back));
        var hole = b.X;
        var bend = SheetPart.Of(spec).Blank!;
        var expected = (bend.Holes[0].Centre.X - bend.Bends[0].Set!.Line.A.X) * 1000;
        Assert.Equal(expected, Math.Abs(set - hole), 2);
    }

    [Fact]
    public void Neighbours_have_a_glue_edge_and_a_cut_edge()
    {
        using var pdf = PdfDocument.Open(Pdf("A4"));
        var text = Squeezed(pdf);
        Assert.Contains("glueedge,A2liesoverit", text, StringComparison.Ordinal);
        Assert.Contains("cuthere,layoverA1", text, StringComparison.Ordinal);
    }

    internal static string Squeezed(PdfDocument pdf) =>
        string.Concat(pdf.GetPages().Select(p => p.Text)).Replace(" ", "", StringComparison.Ordinal);

    /// <summary>Places across the page of the upright green lines: set lines.</summary>
    private static List<double> Dashed(Page page) =>
        [
            .. page
                .Paths.Where(p =>
                    p.IsStroked && p.StrokeColor is { } c && Math.Abs(c.ToRGBValues().g - (0x6F / 255.0)) < 0.01
                )
                .Select(p => p.GetBoundingRectangle())
                .Where(b => b is { } r && r.Height > 100 && r.Width < 1)
                .Select(b => b!.Value.Centroid.X / PointsPerMm),
        ];

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
                "150.0 mm",
                "250.0 mm",
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

    internal static byte[] Pdf(TemplateOptions options)
    {
        using var stream = new MemoryStream();
        TemplatesPdf.Write(SampleLight.Evaluation(), options, stream);
        return stream.ToArray();
    }

    internal static byte[] Pdf(string paper)
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
