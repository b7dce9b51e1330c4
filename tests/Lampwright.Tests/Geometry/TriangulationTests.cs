using CsCheck;
using Lampwright.Geometry;

namespace Lampwright.Tests.Geometry;

public sealed class TriangulationTests
{
    private static double Area(Triangulation cut)
    {
        var area = 0.0;
        for (var i = 0; i < cut.Triangles.Count; i += 3)
        {
            var (a, b, c) = (
                cut.Points[cut.Triangles[i]],
                cut.Points[cut.Triangles[i + 1]],
                cut.Points[cut.Triangles[i + 2]]
            );
            var own = (b - a).Cross(c - a) / 2;
            Assert.True(own >= 0, "a triangle is turned over");
            area += own;
        }

        return area;
    }

    private static double Area(IReadOnlyList<Vec2> points) => Math.Abs(HoleBridges.Area2(points)) / 2;

    [Fact]
    public void Triangles_of_a_perforated_sheet_cover_it_once()
    {
        var sheet = Outline.Rectangle(new(0.1, 0.1), 0.2, 0.2, 0.02).Points(1e-5);
        var holes = new List<IReadOnlyList<Vec2>>();
        for (var i = 0; i < 12; i++)
        {
            for (var j = 0; j < 12; j++)
            {
                holes.Add(Outline.Circle(new(0.03 + (0.012 * i), 0.03 + (0.012 * j)), 0.004).Points(5e-5));
            }
        }

        Assert.Equal(Area(sheet) - holes.Sum(Area), Area(Triangulation.Of(sheet, holes)), 1e-12);
        Assert.NotNull(HoleBridges.Join(sheet, holes));
    }

    [Fact]
    public void Bridges_hold_for_holes_anywhere() =>
        Gen.Double[0.001, 0.011]
            .Select(Gen.Double[0.001, 0.011], Gen.Double[0, 6], (x, y, t) => (X: x, Y: y, Turn: t))
            .Array[20]
            .Sample(
                places =>
                {
                    // One hole in each cell of a board, of any turn and place.
                    var sheet = Outline.Rectangle(new(0.05, 0.04), 0.1, 0.08).Points(1e-5);
                    var holes = places
                        .Select(
                            (p, i) =>
                                new Placement2(
                                    new((0.02 * (i % 5)) + p.X + 0.004, (0.02 * (i / 5)) + p.Y + 0.004),
                                    new Vec2(1, 0).Turned(p.Turn)
                                )
                                    .Out(Outline.Slot(default, 0.007, 0.003))
                                    .Points(1e-5)
                        )
                        .ToList();
                    var joined = HoleBridges.Join(sheet, holes)!;
                    var wanted = Area(sheet) - holes.Sum(Area);
                    return Math.Abs(Area(joined) - wanted) < 1e-12
                        && Math.Abs(Area(Triangulation.Of(sheet, holes)) - wanted) < 1e-12;
                },
                seed: "0000KOIKFUr2",
                iter: 100
            );

    [Fact]
    public void A_hole_outside_is_left_out_and_a_crossing_outline_has_no_triangles()
    {
        var sheet = Outline.Rectangle(default, 1, 1).Points(1e-3);
        Assert.Equal(1, Area(Triangulation.Of(sheet, [Outline.Circle(new(3, 3), 0.2).Points(1e-3)])), 1e-12);
        Assert.Empty(Triangulation.Of([new(0, 0), new(1, 1), new(1, 0), new(0, 1)], []).Triangles);
        Assert.Empty(Triangulation.Of([], []).Triangles);
    }
}
