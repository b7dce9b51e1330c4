using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>metal.md sections 4, 7 and 8.</summary>
public sealed class StockAndPerforationRows
{
    // M.M1a, M.M1b, derived: steel sheet at 7.85 g/cm³, kg/m²; through a flat part of one square metre.
    [Theory]
    [InlineData(1.63, 12.80)] // M.M1a
    [InlineData(0.91, 7.14)] // M.M1a
    [InlineData(2.03, 15.94)] // M.M1b
    [InlineData(2.95, 23.16)] // M.M1b
    public void Mass_of_a_square_metre(double mm, double kg)
    {
        var sheet = new SheetSpec("steel", mm / 1000, 0.001, BendRule.Din6935, 7850);
        var blank = SheetPart.Of(new PartSpec("plate", sheet, FaceSpec.Rectangle(1, 1))).Blank!;
        Near.Is(kg, blank.MassKg, 0.005 * kg, $"M.M1 {mm} mm");
    }

    // EN 10131:2006 table 1, EN 10259, EN 485-4, published, second-hand: normal tolerance of narrow sheet, mm.
    [Theory]
    [InlineData("steel", 1.2, 0.06)]
    [InlineData("steel", 1.5, 0.08)]
    [InlineData("stainless", 1.0, 0.055)]
    [InlineData("aluminium", 1.6, 0.06)]
    public void Thickness_tolerances(string metal, double mm, double half) =>
        Near.Is(half, ThicknessTolerance.HalfWidthM(metal, mm / 1000)!.Value * 1000, 1e-9, $"{metal} {mm} mm");

    // Strengths of DC01 (published, second-hand) and densities (memory).
    [Theory]
    [InlineData("DC01", 7850, 270, 410)]
    [InlineData("1.4301", 7900, 540, 750)]
    [InlineData("5754-H22", 2670, 220, 270)]
    public void Grades(string grade, double density, double least, double most)
    {
        var found = SheetGrade.Find(grade)!;
        Near.Is(density, found.DensityKgPerM3, 1e-6, $"{grade} density");
        Near.Is(least, found.TensileLeastPa / 1e6, 1e-6, $"{grade} least Rm");
        Near.Is(most, found.TensileMostPa / 1e6, 1e-6, $"{grade} greatest Rm");
    }

    // M.Q1, published, second-hand: DIN 24041 on a perforator's page: 4 on 6 mm, 60° staggered.
    // M.Q3, memory: Industrial Perforators Association standard perforations, inches.
    [Theory]
    [InlineData(4, 6, 40.31, 0.5)] // M.Q1
    [InlineData(0.0625, 0.125, 23, 0.5)] // M.Q3
    [InlineData(0.125, 0.1875, 40, 0.5)] // M.Q3
    [InlineData(0.1875, 0.25, 51, 0.5)] // M.Q3
    [InlineData(0.066, 0.125, 25.28, 0.02)] // M.Q2 with the exact sine
    public void Open_area_at_60_degrees(double d, double p, double percent, double tolerance) =>
        Near.Is(percent, 100 * Perforation.StaggeredShare(d, p), tolerance, $"M.Q {d} on {p}");

    // M.Q2, published: Industrial Perforators Association handbook, example 2: 25.16 %, 73.6 holes per square inch. The source takes
    // 0.87 for sin 60°, which explains half a percent of both.
    [Fact]
    public void Open_area_of_the_perforators_example()
    {
        Near.Is(
            25.16,
            100 * Perforation.StaggeredShare(0.066, 0.125) * (Math.Sqrt(3) / 2) / 0.87,
            0.02,
            "M.Q2 open area"
        );
        Near.Is(73.6, Perforation.StaggeredHolesPerArea(0.125) * (Math.Sqrt(3) / 2) / 0.87, 0.1, "M.Q2 holes per in²");
    }

    // M.Q1 through the station: the open share of a large field comes to the endless field's value.
    [Fact]
    public void Field_of_a_part_has_the_open_area_of_the_pattern()
    {
        var sheet = new SheetSpec("steel", 0.001, 0.001, BendRule.Din6935);
        var part = new PartSpec("plate", sheet, FaceSpec.Rectangle(0.6, 0.6))
        {
            Holes =
            [
                new("vents", "face", default, HoleShape.Round(0.004), HoleAnchor.Centre)
                {
                    Pattern = HolePattern.Field(0.006, 0.5, 0.5, staggered: true),
                },
            ],
        };
        var open = SheetPart.Of(part).Blank!.Holes.Sum(h => h.Outline.Area);
        Near.Is(40.31, 100 * open / 0.25, 0.5, "M.Q1 field of 500 × 500 mm");
    }

    // M.X2, derived: bulge = tan(included angle / 4).
    [Fact]
    public void Bulges()
    {
        Near.Is(1, Outline.Circle(default, 1).Corners[0].Bulge, 1e-6, "M.X2 semicircle");
        Near.Is(0.414214, Outline.Rectangle(default, 2, 2, 0.5).Corners[1].Bulge, 1e-6, "M.X2 quarter circle");
    }

    // M.X1, derived: slot with vertices (0,0), (20,0) bulge 1, (20,6), (0,6) bulge 1: area and perimeter.
    [Fact]
    public void Slot_of_the_drawing_row()
    {
        var slot = new Outline([new(new(0, 0)), new(new(20, 0), 1), new(new(20, 6)), new(new(0, 6), 1)]);
        Near.Is(148.274, slot.Area, 0.01, "M.X1 area");
        Near.Is(58.850, slot.Perimeter, 0.01, "M.X1 perimeter");
    }
}
