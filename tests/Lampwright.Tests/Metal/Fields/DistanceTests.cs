using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal.Fields;

/// <summary>Metal beside slots, rectangles and outlines, where the figure is known by hand.</summary>
public sealed class DistanceTests
{
    private static IReadOnlyList<Finding> Of(params HoleSpec[] holes) =>
        SheetPart.Of(new("p", Parts.Mild, FaceSpec.Rectangle(0.1, 0.08)) { Holes = holes }).Findings;

    private static HoleSpec At(string id, double x, double y, HoleShape shape, double degrees = 0) =>
        new(id, "face", new(x / 1000, y / 1000), shape) { RotationRad = degrees * Math.PI / 180 };

    // Least metal to an edge is 1.5 mm, good is 3 mm (1 T, 2 T).
    [Theory]
    [InlineData(1.499, "MET011")]
    [InlineData(1.501, "MET012")]
    [InlineData(2.999, "MET012")]
    [InlineData(3.001, "")]
    public void A_slot_at_its_round_end(double gapMm, string code) =>
        Says(Of(At("s", gapMm + 8, 40, HoleShape.Slot(0.016, 0.005))), code);

    [Theory]
    [InlineData(1.499, "MET011")]
    [InlineData(2.999, "MET012")]
    [InlineData(3.001, "")]
    public void A_rounded_rectangle_turned_by_45_degrees_at_its_corner(double gapMm, string code)
    {
        // Half the diagonal of the square through the corner's centres, and the corner's radius.
        var reach = (Math.Sqrt(2) * (10 - 3)) + 3;
        Says(Of(At("r", gapMm + reach, 40, HoleShape.Rectangle(0.020, 0.020, 0.003), 45)), code);
    }

    [Theory]
    [InlineData(1.499, "MET013")]
    [InlineData(1.501, "")]
    public void A_web_between_a_slot_and_a_hole_beside_its_end(double webMm, string code) =>
        Says(
            Of(At("s", 30, 40, HoleShape.Slot(0.016, 0.006)), At("h", 30 + 8 + webMm + 2, 40, HoleShape.Round(0.004))),
            code
        );

    [Theory]
    [InlineData(1.499, "MET013")]
    [InlineData(1.501, "")]
    public void A_web_between_two_crossed_slots(double webMm, string code) =>
        Says(
            Of(
                At("s", 30, 40, HoleShape.Slot(0.016, 0.006)),
                At("t", 30, 40 + 3 + webMm + 8, HoleShape.Slot(0.016, 0.006), 90)
            ),
            code
        );

    [Fact]
    public void A_hole_wholly_within_another_runs_into_it() =>
        Says(Of(At("r", 50, 40, HoleShape.Rectangle(0.030, 0.030)), At("h", 50, 40, HoleShape.Round(0.004))), "MET014");

    [Fact]
    public void A_small_hole_beside_a_large_one_is_seen_whatever_their_order()
    {
        HoleSpec[] holes = [At("big", 50, 40, HoleShape.Round(0.04)), At("small", 72.4, 40, HoleShape.Round(0.003))];
        Says(Of(holes), "MET013");
        Says(Of([.. holes.Reverse()]), "MET013");
    }

    private static void Says(IReadOnlyList<Finding> found, string code) =>
        Assert.Equal(
            code,
            string.Join(
                " ",
                found
                    .Select(f => f.Code)
                    .Distinct()
                    .Where(c => c is "MET010" or "MET011" or "MET012" or "MET013" or "MET014")
            )
        );
}
