using Lampwright.Files.Drawings;
using Lampwright.Findings;
using Lampwright.Metal;
using Lampwright.Tests.Metal;

namespace Lampwright.Tests.Files.Drawings;

/// <summary>Findings stand in the drawing where they bite, and set lines where the nose sits.</summary>
public sealed class FindingMarkTests
{
    private static readonly PartResult Part = SheetPart.Of(
        Parts.Box(120, 80, 30) with
        {
            Holes = [new("h", "face", new(0.008, 0.04), HoleShape.Round(0.006))],
            GrainAlongX = true,
        }
    );

    private static Drawing Drawn(double scale, IReadOnlyList<Finding> findings) =>
        BlankDrawing.Of(Part.Blank!, new() { Scale = scale, Findings = findings });

    [Theory]
    [InlineData(1)]
    [InlineData(0.2)]
    public void A_finding_has_its_ring_where_it_bites_and_its_words_beside_it(double scale)
    {
        var finding = Part.Findings.First(f => f.Rule == MetalRules.HoleNearBend);
        var drawing = Drawn(scale, Part.Findings);
        var ring = Assert.Single(drawing.Items.OfType<DrawnCircle>(), c => c.Id == finding.Key);
        Assert.Equal(0, (ring.Centre - drawing.OnPaper(finding.Place!.Middle)).Length, 1e-9);
        var words = drawing.Items.OfType<DrawnText>().Where(t => t.Id == finding.Key).ToList();
        Assert.Equal(2, words.Count);
        Assert.All(words, w => Assert.StartsWith("MET008", w.Text, StringComparison.Ordinal));
        Assert.InRange((words[0].At - ring.Centre).Length, 0, 60);
    }

    [Fact]
    public void Without_findings_nothing_is_marked() =>
        Assert.DoesNotContain(Drawn(1, []).Items.OfType<DrawnText>(), t => t.Role == TextRole.Found);

    [Fact]
    public void Findings_of_another_part_are_not_marked_here()
    {
        var other = Part.Findings.Select(f => f with { Place = f.Place is { } p ? p with { Part = "other" } : null });
        Assert.DoesNotContain(Drawn(1, [.. other]).Items.OfType<DrawnText>(), t => t.Role == TextRole.Found);
    }

    [Fact]
    public void The_set_line_lies_where_the_blank_has_it_and_says_on_which_face()
    {
        var drawing = Drawn(1, []);
        var set = Part.Blank!.Bends[0].Set!;
        Assert.True(set.OnInside);
        Assert.Contains(
            drawing.Items.OfType<DrawnPath>(),
            p =>
                p.Line == LineKind.SetInside
                && !p.Filled
                && (p.Start - drawing.OnPaper(set.Line.A)).Length < 1e-9
                && (p.Steps[0].To - drawing.OnPaper(set.Line.B)).Length < 1e-9
        );
        Assert.DoesNotContain(
            drawing.Items.OfType<DrawnPath>(),
            p => p.Line == LineKind.Set && !p.Filled && p.Id.Length > 0
        );
        Assert.Equal(8, drawing.Items.OfType<DrawnPath>().Count(p => p.Line == LineKind.SetInside && p.Filled));
    }

    [Fact]
    public void The_face_that_is_up_and_the_grain_are_written_in_the_metal()
    {
        var texts = Drawn(1, []).Items.OfType<DrawnText>().Select(t => t.Text).ToList();
        Assert.Contains("outside up", texts);
        Assert.Contains("grain", texts);
        var unknown = BlankDrawing.Of(Part.Blank! with { GrainAlongX = null });
        Assert.DoesNotContain("grain", unknown.Items.OfType<DrawnText>().Select(t => t.Text));
    }

    [Fact]
    public void On_a_page_words_are_links_and_in_a_file_they_are_not()
    {
        var drawing = Drawn(1, Part.Findings);
        Assert.Contains("role=\"link\"", SvgDrawing.Element(drawing), StringComparison.Ordinal);
        Assert.DoesNotContain("role=\"link\"", SvgDrawing.File(drawing), StringComparison.Ordinal);
    }

    [Fact]
    public void Few_words_are_there_for_rules_that_exist()
    {
        var known = MetalRules.All.Select(r => r.Code).ToHashSet(StringComparer.Ordinal);
        Assert.All(FindingWords.Codes, c => Assert.Contains(c, known));
    }

    [Fact]
    public void A_part_without_blank_is_drawn_with_its_fault()
    {
        var part = SheetPart.Of(
            Parts.Box(120, 80, 30) with
            {
                Flanges = [new("a", "face.top", 0.03), new("b", "face.top", 0.02)],
            }
        );
        var drawing = SketchDrawing.Fitting(part.Sketch!, part.Findings, 240, 190);
        Assert.True(drawing.WidthMm <= 240 && drawing.HeightMm <= 190);
        Assert.Contains(
            drawing.Items.OfType<DrawnText>(),
            t => t.Role == TextRole.Found && t.Text == "MET002 edge taken twice"
        );
    }
}
