using Lampwright.Files.Packet;
using Lampwright.Files.Packet.Templates;
using Lampwright.Tests.Files.Fixtures;
using UglyToad.PdfPig;

namespace Lampwright.Tests.Files.Packet;

/// <summary>
/// A part of 430 × 330 mm printed on sheets that are laid on each other by their crosses: two holes 300 mm and 240 mm apart, measured in the pixels that
/// an independent program renders. The other reader only says roughly where to look.
/// </summary>
public sealed class TiledPixelTests
{
    private const double PointsPerMm = 72 / 25.4;

    [Theory]
    [InlineData("A4", 4)]
    [InlineData("Letter", 4)]
    [InlineData("A3", 2)]
    public void Over_250_mm_across_sheets_a_tenth_of_a_millimetre_is_not_lost(string paper, int count)
    {
        using var stream = new MemoryStream();
        TemplatesPdf.Write(SampleLight.Evaluation(), Paper.Of(paper), stream);
        var bytes = stream.ToArray();
        var sheets = Sheets(bytes);
        Assert.True(sheets.Count >= count, $"{sheets.Count} sheets");

        var places = new Dictionary<string, (double X, double Y)>(StringComparer.Ordinal) { ["A1"] = (0, 0) };
        var waiting = new Queue<string>(["A1"]);
        while (waiting.TryDequeue(out var name))
        {
            foreach (var isRight in (bool[])[true, false])
            {
                var next = isRight ? $"{name[0]}{(char)(name[1] + 1)}" : $"{(char)(name[0] + 1)}{name[1]}";
                if (!sheets.TryGetValue(next, out var to) || places.ContainsKey(next))
                {
                    continue;
                }

                var from = sheets[name];
                var mine = isRight
                    ? from.Crosses.OrderByDescending(c => c.X).Take(2).OrderBy(c => c.Y)
                    : from.Crosses.OrderByDescending(c => c.Y).Take(2).OrderBy(c => c.X);
                var theirs = isRight
                    ? to.Crosses.OrderBy(c => c.X).Take(2).OrderBy(c => c.Y)
                    : to.Crosses.OrderBy(c => c.Y).Take(2).OrderBy(c => c.X);
                var steps = mine.Zip(theirs, (a, b) => (X: a.X - b.X, Y: a.Y - b.Y)).ToList();
                Assert.True(
                    Math.Abs(steps[0].X - steps[1].X) < 0.1 && Math.Abs(steps[0].Y - steps[1].Y) < 0.1,
                    $"crosses of {next}"
                );
                places[next] = (places[name].X + steps.Average(s => s.X), places[name].Y + steps.Average(s => s.Y));
                waiting.Enqueue(next);
            }
        }

        var holes = sheets
            .SelectMany(s => s.Value.Holes.Select(h => (X: h.X + places[s.Key].X, Y: h.Y + places[s.Key].Y)))
            .OrderBy(h => h.X)
            .ToList();
        Assert.True(holes.Count >= 2, $"{holes.Count} holes");
        Assert.Equal(300, holes[^1].X - holes[0].X, 0.1);
        Assert.Equal(240, Math.Abs(holes[^1].Y - holes[0].Y), 0.1);
    }

    /// <summary>Middles of crosses and holes of each sheet in millimetres of the page, y down, from pixels.</summary>
    private static Dictionary<string, (List<(double X, double Y)> Crosses, List<(double X, double Y)> Holes)> Sheets(
        byte[] bytes
    )
    {
        using var pdf = PdfDocument.Open(bytes);
        var sheets = new Dictionary<string, (List<(double X, double Y)>, List<(double X, double Y)>)>(
            StringComparer.Ordinal
        );
        foreach (var page in pdf.GetPages().Where(p => p.Number > 1 && p.GetWords().Any(w => w.Text == "long")))
        {
            var name = page.GetWords()
                .Where(w => w.Text.Length == 2 && char.IsAsciiLetterUpper(w.Text[0]) && char.IsAsciiDigit(w.Text[1]))
                .MaxBy(w => w.Letters[0].PointSize)!
                .Text;
            var raster = Poppler.Page(bytes, page.Number, 300);
            List<(double X, double Y)> Rings(double diameter) =>
                [
                    .. page
                        .Paths.Select(p => p.GetBoundingRectangle())
                        .Where(b =>
                            b is { } r
                            && Math.Abs((r.Width / PointsPerMm) - diameter) < 0.05
                            && Math.Abs((r.Height / PointsPerMm) - diameter) < 0.05
                        )
                        .Select(b =>
                            (X: b!.Value.Centroid.X / PointsPerMm, Y: (page.Height - b.Value.Centroid.Y) / PointsPerMm)
                        )
                        .Select(c => Middle(raster, c.X, c.Y, diameter / 2)),
                ];
            sheets[name] = (Rings(4), Rings(8));
        }

        return sheets;
    }

    /// <summary>Middle of a drawn ring: the mean of where rays from about its middle meet its line, between two opposite ones.</summary>
    private static (double X, double Y) Middle(Raster raster, double x, double y, double radius)
    {
        var (sumX, sumY, n) = (0.0, 0.0, 0);
        for (var i = 0; i < 180; i++)
        {
            var (s, c) = Math.SinCos(Math.PI * (i + 0.5) / 180);
            if (Meets(raster, x, y, c, s, radius) is { } outward && Meets(raster, x, y, -c, -s, radius) is { } back)
            {
                sumX += c * (outward - back);
                sumY += s * (outward - back);
                n++;
            }
        }

        // A ring off by d meets opposite rays at r ± d·u: their difference along u is 2 d·u, and the mean of u·u over half a turn is a half.
        Assert.True(n > 90, $"no ring of {radius} mm at {x}, {y}: {n} of 180 rays met it");
        return (x + (sumX / n), y + (sumY / n));
    }

    private static double? Meets(Raster raster, double x, double y, double c, double s, double radius)
    {
        var (first, last) = (double.NaN, double.NaN);
        for (var at = radius - 0.5; at < radius + 0.5; at += 0.01)
        {
            if (raster.IsDark((int)((x + (c * at)) / 25.4 * raster.Dpi), (int)((y + (s * at)) / 25.4 * raster.Dpi)))
            {
                first = double.IsNaN(first) ? at : first;
                last = at;
            }
        }

        return double.IsNaN(first) || last - first > 0.5 ? null : (first + last) / 2;
    }
}
