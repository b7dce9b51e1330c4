using Lampwright.Design;
using Lampwright.Files.Packet.Templates;
using Lampwright.Quantities;
using UglyToad.PdfPig;

namespace Lampwright.Tests.Files.Packet;

public sealed class ProofBarTests
{
    [Theory]
    [InlineData("A4", 1)]
    [InlineData("A4", 2)]
    [InlineData("A4", 4)]
    [InlineData("Letter", 2)]
    [InlineData("Letter", 5)]
    [InlineData("A3", 2)]
    public void Both_proof_bars_measure_what_they_say_on_the_rendered_page(string paper, int page)
    {
        var raster = Poppler.Page(TemplatesPdfTests.Pdf(paper), page);
        AssertBars(raster, 1, 1);
    }

    [Fact]
    public void Both_bars_of_a_piece_of_the_roll_measure_what_they_say()
    {
        var show = new Show
        {
            Templates = new() { Paper = "roll", Roll = new Value(0.420, 0, Origin.Given, "") },
        };
        var bytes = TemplatesPdfTests.Pdf(TemplateOptions.Of(show));
        using var pdf = PdfDocument.Open(bytes);
        var piece = pdf.GetPages().First(p => p.Number > 1);
        Assert.Contains(new[] { piece.Width, piece.Height }, w => Math.Abs((w * 25.4 / 72) - 420) < 0.1);
        AssertBars(Poppler.Page(bytes, piece.Number), 1, 1);
    }

    [Fact]
    public void Bars_of_a_stretched_print_are_longer_by_what_the_measured_ones_were_short()
    {
        var show = new Show
        {
            Templates = new()
            {
                BarAcross = new Value(0.1485, 0, Origin.Given, ""),
                BarAlong = new Value(0.2508, 0, Origin.Given, ""),
            },
        };
        var options = TemplateOptions.Of(show);
        Assert.True(options.IsStretched);
        var bytes = TemplatesPdfTests.Pdf(options);
        using var pdf = PdfDocument.Open(bytes);
        var upright = pdf.GetPages().First(p => p.Number > 1 && p.Width < p.Height).Number;
        AssertBars(Poppler.Page(bytes, upright), 150 / 148.5, 250 / 250.8);
    }

    [Fact]
    public void Stretching_follows_the_paper_when_it_lies_on_its_side()
    {
        var show = new Show { Templates = new() { BarAlong = new Value(0.245, 0, Origin.Given, "") } };
        var bytes = TemplatesPdfTests.Pdf(TemplateOptions.Of(show));
        using var pdf = PdfDocument.Open(bytes);
        var lying = pdf.GetPages().First(p => p.Width > p.Height).Number;
        AssertBars(Poppler.Page(bytes, lying), 250 / 245.0, 1);
    }

    [Fact]
    public void A_printer_that_fits_to_the_page_is_not_corrected()
    {
        var show = new Show { Templates = new() { BarAcross = new Value(0.144, 0, Origin.Given, "") } };
        var options = TemplateOptions.Of(show);
        Assert.False(options.IsStretched);
        using var pdf = PdfDocument.Open(TemplatesPdfTests.Pdf(options));
        Assert.Contains("NOTcorrected", TemplatesPdfTests.Squeezed(pdf), StringComparison.Ordinal);
    }

    private static void AssertBars(Raster raster, double stretchX, double stretchY)
    {
        var paperX = raster.Mm(raster.Width);
        var paperY = raster.Mm(raster.Height);
        foreach (
            var (isLevel, length) in new[]
            {
                (true, ProofBars.LengthMm(paperX + 0.2) * stretchX),
                (false, ProofBars.LengthMm(paperY + 0.2) * stretchY),
            }
        )
        {
            var line = LongestRun(raster, isLevel, length);
            AssertMarks(Marks(raster, isLevel, line + raster.Px(2.4)), raster, isLevel ? "level" : "upright", length);
        }
    }

    /// <summary>Row (or column) on which the proof bar lies: the dark run of its length near the edge.</summary>
    private static int LongestRun(Raster raster, bool isLevel, double lengthMm)
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

                if (Math.Abs(raster.Mm(run) - lengthMm - 0.2) < 0.6)
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

    private static void AssertMarks(List<double> marks, Raster raster, string which, double lengthMm)
    {
        var best = marks.SelectMany(a => marks.Select(b => raster.Mm(b - a))).MinBy(d => Math.Abs(d - lengthMm));
        Assert.True(Math.Abs(best - lengthMm) < 0.1, $"{which} bar measures {best} mm, not {lengthMm}");
    }

    private static bool Dark(Raster raster, bool isLevel, int line, int i) =>
        isLevel ? raster.IsDark(i, line) : raster.IsDark(line, i);
}
