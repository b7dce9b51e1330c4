using System.Globalization;
using System.Xml.Linq;
using Lampwright.Files.Drawings;
using Lampwright.Geometry;

namespace Lampwright.Tests.Files.Drawings;

public sealed class BlankDrawingTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void No_two_texts_of_a_drawing_overlap_at_any_scale()
    {
        foreach (var scale in BlankDrawing.Scales.Where(s => s >= 0.2))
        {
            var drawing = BlankDrawing.Of(SampleBlanks.Tray(), new() { Scale = scale });
            var texts = drawing.Items.OfType<DrawnText>().ToList();
            // The typeface of the page is narrower than the estimate, so the estimate itself may touch by a hair.
            var boxes = texts.ConvertAll(t =>
                TextBox.Of(t.Text, new(t.At.X, -t.At.Y), t.SizeMm * 0.96, t.Anchor, -t.AngleRad)
            );
            for (var i = 0; i < texts.Count; i++)
            {
                var crowd = new Crowd();
                crowd.Take(boxes[i]);
                for (var j = i + 1; j < texts.Count; j++)
                {
                    Assert.True(
                        crowd.Cost(boxes[j]) == 0,
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"At scale {scale} '{texts[i].Text}' at {texts[i].At} overlaps '{texts[j].Text}' at {texts[j].At}."
                        )
                    );
                }
            }
        }
    }

    [Fact]
    public void Everything_lies_on_the_paper()
    {
        var drawing = BlankDrawing.Of(SampleBlanks.Tray());
        foreach (var text in drawing.Items.OfType<DrawnText>())
        {
            foreach (
                var p in TextBox
                    .Of(text.Text, new(text.At.X, -text.At.Y), text.SizeMm, text.Anchor, -text.AngleRad)
                    .Corners
            )
            {
                Assert.InRange(p.X, 0, drawing.WidthMm);
                Assert.InRange(-p.Y, 0, drawing.HeightMm);
            }
        }
    }

    [Fact]
    public void Bend_places_and_overall_sizes_are_written_from_the_datum()
    {
        var texts = BlankDrawing.Of(SampleBlanks.Tray()).Items.OfType<DrawnText>().Select(t => t.Text).ToHashSet();
        Assert.Superset(
            new HashSet<string> { "0", "14", "54", "174", "214", "228", "40", "150", "190", "72.75 B" },
            texts
        );
    }

    [Fact]
    public void A_fitting_drawing_fits_its_field_and_is_as_large_as_it_can()
    {
        var drawing = BlankDrawing.Fitting(SampleBlanks.Tray(), 180, 200);
        Assert.True(drawing.WidthMm <= 180 && drawing.HeightMm <= 200, $"{drawing.WidthMm} × {drawing.HeightMm}");
        var larger = BlankDrawing.Scales.Last(s => s > drawing.Scale + 1e-9);
        var next = BlankDrawing.Of(SampleBlanks.Tray(), new() { Scale = larger });
        Assert.True(next.WidthMm > 180 || next.HeightMm > 200, $"{larger} would fit as well");
        Assert.Equal("1:2.5", drawing.ScaleText);
    }

    [Fact]
    public void A_plain_drawing_has_full_size_and_nothing_but_the_shape()
    {
        var drawing = BlankDrawing.Of(SampleBlanks.Plate(), BlankDrawingOptions.Plain);
        Assert.Empty(drawing.Items.OfType<DrawnText>());
        Assert.Equal(62, drawing.WidthMm, 9);
        Assert.Equal(42, drawing.HeightMm, 9);
        Assert.Equal(new Vec2(61, 1), drawing.OnPaper(new(0.060, 0.040)));
    }

    [Fact]
    public void An_svg_has_the_size_of_the_paper_and_a_circle_for_a_round_hole()
    {
        var root = XDocument
            .Parse(SvgDrawing.File(BlankDrawing.Of(SampleBlanks.Plate(), BlankDrawingOptions.Plain)))
            .Root!;
        Assert.Equal("62mm", (string?)root.Attribute("width"));
        Assert.Equal("0 0 62 42", (string?)root.Attribute("viewBox"));
        var circle = Assert.Single(root.Elements(Svg + "circle"));
        Assert.Equal("2.15", (string?)circle.Attribute("r"));
        Assert.Equal("plate.face.mount", (string?)circle.Attribute("data-id"));
    }

    [Fact]
    public void Markup_in_a_name_stays_text()
    {
        var drawing = BlankDrawing.Of(SampleBlanks.Plate("<script>alert(1)</script>\u0001"));
        var svg = SvgDrawing.File(drawing);
        Assert.DoesNotContain("<script", svg, StringComparison.Ordinal);
        Assert.Contains("<script>", XDocument.Parse(svg).Root!.Element(Svg + "title")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blank_with_a_thousand_holes_has_no_thousand_coordinates()
    {
        var holes = Enumerable
            .Range(0, 1000)
            .Select(i =>
                SampleBlanks.Round(
                    $"p.face.v[{i}]",
                    "v",
                    new(0.01 + (i % 40 * 0.005), 0.01 + (i / 40 * 0.005)),
                    0.003,
                    ""
                )
            )
            .ToList();
        var blank = SampleBlanks.Of("p", Outline.Rectangle(new(0.11, 0.07), 0.22, 0.14), holes, []);
        Assert.InRange(BlankDrawing.Of(blank).Items.OfType<DrawnText>().Count(), 5, 20);
    }

    [Fact]
    public void Groups_of_holes_are_told_by_letter_count_and_size()
    {
        var groups = HoleGroup.Of(SampleBlanks.Tray());
        Assert.Equal(
            ["A 1 × Ø86", "B 4 × Ø4.5", "C 40 × Ø4", "D 1 × 16 × 5 slot", "E 1 × 27.5 × 20 R3"],
            groups.Select(g => $"{g.Letter} {g.Holes.Count} × {g.Size}")
        );
        Assert.Equal(["C"], groups.Where(g => g.IsField).Select(g => g.Letter));
    }

    [Fact]
    public void A_scale_of_zero_is_the_callers_bug() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BlankDrawing.Of(SampleBlanks.Plate(), new() { Scale = 0 }));
}
