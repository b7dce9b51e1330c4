using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Drawings;
using Lampwright.Findings;
using Lampwright.Metal;

namespace Lampwright.Tests.Evaluations;

/// <summary>Cut-outs of any outline from their keys in the design file to the blank.</summary>
public sealed class CutOutOutlineTests
{
    private static readonly string Plate =
        "format = 1\n[sheet.mild]\nthickness = \"1 mm\"\nradius = \"1 mm\"\n[part.p]\nsheet = \"mild\"\nface = { outside = [\"100 mm\", \"80 mm\"] }\n[part.p.hole.h]\non = \"face\"\n";

    private static LoadedDesign Load(string keys) => DesignLoader.Parse(Plate + keys, "light.toml", _ => null);

    private static (IReadOnlyList<MadePart> Parts, IReadOnlyList<Finding> Findings) Made(string keys)
    {
        var loaded = Load(keys);
        Assert.Empty(loaded.Problems);
        var (parts, findings) = MetalShop.Of(loaded.Design, new HolePatterns(loaded.Design));
        return ([.. parts], [.. findings]);
    }

    // A right triangle of 40 × 30 mm, written clockwise: 600 mm²; its box lies from -10, -10 to 30, 20 about the place of the hole.
    private static readonly string Triangle =
        "outline = [[\"-10 mm\", \"-10 mm\"], [\"-10 mm\", \"20 mm\"], [\"30 mm\", \"-10 mm\"]]\n";

    [Fact]
    public void An_outline_is_cut_where_its_corners_say_whichever_way_it_runs()
    {
        var (parts, findings) = Made(Triangle + "at = [\"30 mm\", \"40 mm\"]\n");
        Assert.DoesNotContain(findings, f => f.Severity >= Severity.Warn);
        var blank = Assert.Single(parts).Blank;
        var hole = Assert.Single(blank.Holes);
        Assert.True(hole.IsOutline);
        Assert.Equal(8000 - 600, blank.AreaM2 * 1e6, 6);
        Assert.Equal(360 + 40 + 30 + 50, blank.CutLengthM * 1e3, 6);
        Assert.True(hole.Outline.SignedArea > 0);
        var (least, most) = hole.Outline.Box;
        Assert.Equal((20.0, 30.0, 60.0, 60.0), (R(least.X), R(least.Y), R(most.X), R(most.Y)));
        Assert.Equal((40.0, 45.0), (R(hole.Centre.X), R(hole.Centre.Y)));

        static double R(double m) => Math.Round(m * 1000, 6);
    }

    [Fact]
    public void Its_corners_are_rounded_and_the_area_is_that_of_the_inscribed_arcs()
    {
        var blank = Made(Triangle + "round = \"4 mm\"\n").Parts.Single().Blank;
        // A radius r takes r² (cot(φ/2) - (π - φ)/2) of a corner of the angle φ; the three cots of half angles of the 3-4-5 triangle are 1, 2 and 3.
        var taken = 16 * (1 + 2 + 3 - Math.PI);
        Assert.Equal(8000 - (600 - taken), blank.AreaM2 * 1e6, 6);
        Assert.Equal(3, blank.Holes.Single().Outline.Corners.Count(c => c.Bulge != 0));
    }

    [Fact]
    public void It_is_marked_out_by_its_middle_and_from_corner_to_corner()
    {
        var blank = Made(Triangle + "at = [\"30 mm\", \"40 mm\"]\n").Parts.Single().Blank;
        var points = MarkingOut.Of(blank);
        Assert.Equal("50 × 24 outline", Assert.Single(points, p => p.Kind == "hole").What);
        var corners = points.Where(p => p.Kind == "cut-out corner").Select(p => (X: p.AtMm.X, Y: p.AtMm.Y)).ToList();
        Assert.Equal(3, corners.Count);
        foreach (var (x, y) in ((double, double)[])[(20, 30), (60, 30), (20, 60)])
        {
            Assert.Contains(corners, c => Math.Abs(c.X - x) < 1e-6 && Math.Abs(c.Y - y) < 1e-6);
        }
    }

    [Fact]
    public void An_outline_too_near_the_edge_is_told_like_any_hole()
    {
        var (_, findings) = Made(Triangle + "at = [\"10.5 mm\", \"40 mm\"]\n");
        Assert.Contains(findings, f => f.Rule == MetalRules.HoleAtEdge && f.Path == "part.p.hole.h");
    }

    [Fact]
    public void A_field_of_outlines_lies_within_wherever_their_zero_is()
    {
        var (parts, _) = Made(
            "outline = [[\"0 mm\", \"0 mm\"], [\"6 mm\", \"0 mm\"], [\"0 mm\", \"6 mm\"]]\nfield = { pitch = \"10 mm\", layout = \"square\", within = [\"40 mm\", \"30 mm\"] }\n"
        );
        var holes = parts.Single().Blank.Holes;
        Assert.Equal(12, holes.Count);
        Assert.Equal(50, 500 * (holes.Min(h => h.Outline.Box.Least.X) + holes.Max(h => h.Outline.Box.Most.X)), 9);
        Assert.Equal(40, 500 * (holes.Min(h => h.Outline.Box.Least.Y) + holes.Max(h => h.Outline.Box.Most.Y)), 9);
    }

    [Theory]
    [InlineData("[[\"-20 mm\", \"-10 mm\"], [\"20 mm\", \"15 mm\"], [\"20 mm\", \"-10 mm\"], [\"-20 mm\", \"20 mm\"]]")]
    [InlineData("[[\"-10 mm\", \"-10 mm\"], [\"10 mm\", \"10 mm\"], [\"10 mm\", \"-10 mm\"], [\"-10 mm\", \"10 mm\"]]")]
    public void An_outline_that_crosses_itself_is_a_stop_at_its_key(string outline)
    {
        var stop = Assert.Single(Made($"outline = {outline}\n").Findings, f => f.Severity == Severity.Stop);
        Assert.Equal((MetalRules.OutlineCrosses, "part.p.hole.h.outline"), (stop.Rule, stop.Path));
    }

    [Theory]
    [InlineData("outline = [[\"0 mm\", \"0 mm\"], [\"6 mm\", \"0 mm\"]]\n", "part.p.hole.h.outline", "three corners")]
    [InlineData(
        "outline = [[\"0 mm\", \"0 mm\"], [\"6 mm\", \"centre\"], [\"0 mm\", \"6 mm\"]]\n",
        "part.p.hole.h.outline",
        "three corners"
    )]
    [InlineData("shape = \"round 5 mm\"\nround = \"1 mm\"\n", "part.p.hole.h.round", "outline beside it")]
    public void What_is_no_outline_is_told_at_its_key(string keys, string path, string accepted) =>
        Assert.Contains(
            Load(keys).Problems,
            p => p.Path == path && p.Message.Contains(accepted, StringComparison.Ordinal)
        );

    [Fact]
    public void An_outline_beside_a_shape_is_told() =>
        Assert.Contains(Load(Triangle + "shape = \"round 5 mm\"\n").Problems, p => p.Path == "part.p.hole.h.outline");

    // The incircle of the 3-4-5 triangle of 30, 40 and 50 mm has the radius (30 + 40 - 50)/2 = 10 mm.
    [Theory]
    [InlineData("9.9 mm", false)]
    [InlineData("10.1 mm", true)]
    public void A_radius_that_leaves_nothing_of_an_edge_is_told_with_the_largest_that_fits(string round, bool told)
    {
        var problems = Load(Triangle + $"round = \"{round}\"\n").Problems;
        Assert.Equal(
            told,
            problems.Any(p => p.Path == "part.p.hole.h.round" && p.Message.Contains("10 mm", StringComparison.Ordinal))
        );
    }
}
