using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Files.DesignFile;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal.Fields;

/// <summary>Perforated fields that leave holes out near edges and bends.</summary>
public sealed class FieldEdgeTests
{
    private static PartSpec Plate(FaceSpec face, double? edgeM, params FlangeSpec[] flanges) =>
        new("p", Parts.Mild with { ThicknessM = 0.001, InsideRadiusM = 0.001 }, face)
        {
            Flanges = flanges,
            Holes =
            [
                new("v", "face", default, HoleShape.Round(0.004), HoleAnchor.Centre)
                {
                    Pattern = HolePattern.Field(0.010, 0.2, 0.2, staggered: false) with { EdgeM = edgeM },
                },
            ],
        };

    private static FaceSpec Triangle => new(new Outline([new(default), new(new(0.1, 0)), new(new(0, 0.1))]));

    // 20 × 20 places 10 mm apart about the centre of the 100 × 80 plate; a hole of Ø4 stays where its centre is 2 + 3 mm off every edge:
    // x at 5, 15 … 95 and y at 5, 15 … 75.
    [Fact]
    public void Of_a_field_larger_than_its_plate_the_holes_stay_that_leave_the_metal_that_is_asked()
    {
        var result = SheetPart.Of(Plate(FaceSpec.Rectangle(0.1, 0.08), 0.003));
        Assert.Equal(10 * 8, result.Blank!.Holes.Count);
        var told = Assert.Single(result.Findings, f => f.Rule == MetalRules.FieldLosesHoles);
        Assert.Equal("part.p.hole.v.field", told.Path);
        Assert.Contains($"{400 - 80} of 400", told.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(result.Findings, f => f.Rule == MetalRules.HoleOutside);
        // A tenth more and the outer rows and columns are gone.
        Assert.Equal(8 * 6, SheetPart.Of(Plate(FaceSpec.Rectangle(0.1, 0.08), 0.0031)).Blank!.Holes.Count);
    }

    [Fact]
    public void Every_hole_that_stays_leaves_it_to_a_slanted_edge_and_every_hole_left_out_would_not()
    {
        var all = new HashSet<(int, int)>();
        for (var i = 0; i < 20; i++)
        {
            for (var j = 0; j < 20; j++)
            {
                var (x, y) = (50 + ((i - 9.5) * 10), 50 + ((j - 9.5) * 10));
                var metal = Math.Min(Math.Min(x, y), (100 - x - y) / Math.Sqrt(2)) - 2;
                if (metal >= 2.5)
                {
                    all.Add(((int)Math.Round(x), (int)Math.Round(y)));
                }
            }
        }

        var blank = SheetPart.Of(Plate(Triangle, 0.0025)).Blank!;
        Assert.NotEmpty(all);
        Assert.Equal(
            all.Order(),
            blank.Holes.Select(h => ((int)Math.Round(h.Centre.X * 1000), (int)Math.Round(h.Centre.Y * 1000))).Order()
        );
    }

    [Fact]
    public void Holes_keep_off_a_bend_as_far_as_off_an_edge()
    {
        var spec = Plate(FaceSpec.Rectangle(0.1, 0.08), 0.003, new FlangeSpec("w", "face.left", 0.02));
        var blank = SheetPart.Of(spec).Blank!;
        var tangent = Assert.Single(blank.Bends).InnerTangent.A.X;
        var least = blank.Holes.Min(h => h.Centre.X);
        Assert.InRange(least - 0.002 - tangent, 0.003 - 1e-9, 0.013);
        // A bend of R 1 in 1 mm takes 2 mm of the face: the column 5 mm from its outside is lost.
        Assert.Equal(9 * 8, blank.Holes.Count);
    }

    [Fact]
    public void Without_the_rule_none_are_left_out_and_with_room_nothing_is_told()
    {
        var without = SheetPart.Of(Plate(FaceSpec.Rectangle(0.3, 0.3), null));
        var with = SheetPart.Of(Plate(FaceSpec.Rectangle(0.3, 0.3), 0.003));
        Assert.Equal((400, 400), (without.Blank!.Holes.Count, with.Blank!.Holes.Count));
        Assert.DoesNotContain(with.Findings, f => f.Rule == MetalRules.FieldLosesHoles);
    }

    // A flange's tangent moves with thickness and radius; a column that stands just there must not come and go in the slopes.
    [Fact]
    public void The_slopes_of_area_and_mass_keep_the_holes_of_the_nominal_part()
    {
        var flange = new FlangeSpec("w", "face.left", 0.02);
        double Slope(double edge) =>
            PartSensitivities.Of(Plate(FaceSpec.Rectangle(0.1, 0.08), edge, flange))!.Area.PerThickness;
        Assert.Equal(Slope(0.0002), Slope(0.001), 9);
    }

    [Fact]
    public void The_rule_is_read_from_the_file()
    {
        var loaded = DesignLoader.Parse(
            """
            format = 1
            [sheet.mild]
            thickness = "1 mm"
            [part.p]
            sheet = "mild"
            face = { outside = ["100 mm", "80 mm"] }
            [part.p.hole.v]
            on = "face"
            field = { shape = "round 4 mm", pitch = "10 mm", layout = "square", within = ["200 mm", "200 mm"], edge = "3 mm" }

            """,
            "light.toml",
            _ => null
        );
        Assert.Empty(loaded.Problems);
        var (parts, _) = MetalShop.Of(loaded.Design, new HolePatterns(loaded.Design));
        Assert.Equal(80, parts.Single().Blank.Holes.Count);
    }
}
