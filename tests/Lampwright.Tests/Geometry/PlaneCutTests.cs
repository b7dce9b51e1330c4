using Lampwright.Geometry;

namespace Lampwright.Tests.Geometry;

public class PlaneCutTests
{
    // Looks along -y: x to the right, z up.
    private static readonly Frame Upright = new(new(0, 0.5, 0), new(1, 0, 0), new(0, 0, 1), new(0, -1, 0));

    [Fact]
    public void A_box_is_cut_to_its_section_and_missed_where_the_plane_passes_it()
    {
        Assert.Equal(2 * 3, Area(PlaneCut.Box(Upright, Frame.World, new(2, 1, 3))), 1e-6);
        Assert.Empty(PlaneCut.Box(Upright, Frame.World, new(2, 0.49, 3)));
    }

    [Fact]
    public void A_cube_cut_across_its_diagonal_gives_the_regular_hexagon()
    {
        var n = new Vec3(1, 1, 1).Unit;
        var x = new Vec3(1, -1, 0).Unit;
        var cut = PlaneCut.Box(new(new(0.5, 0.5, 0.5), x, n.Cross(x), n), Frame.World, new(1, 1, 1));
        Assert.Equal(6, cut.Count);

        // Sides of √2/2: area 3√3/2 · side².
        Assert.Equal(3 * Math.Sqrt(3) / 2 * 0.5, Area(cut), 1e-6);
    }

    [Fact]
    public void A_plate_with_a_hole_in_the_way_is_cut_in_two_and_one_beside_the_way_leaves_it_whole()
    {
        var plate = Outline.Rectangle(new(0.5, 0.5), 1, 1);
        IReadOnlyList<IReadOnlyList<Vec2>> Cut(Vec2 hole) =>
            PlaneCut.Plate(Upright, Frame.World, plate, [Outline.Circle(hole, 0.1)], 0.01);
        var two = Cut(new(0.4, 0.5));
        Assert.Equal(2, two.Count);
        Assert.Equal((1 - 0.2) * 0.01, two.Sum(Area), 1e-5);
        Assert.Equal(1 * 0.01, Assert.Single(Cut(new(0.4, 0.7))) is var whole ? Area(whole) : 0, 1e-9);
        Assert.All(two.SelectMany(p => p), p => Assert.InRange(p.Y, -0.01 - 1e-9, 1e-9));
    }

    [Fact]
    public void A_leaning_plate_is_cut_longer_than_it_is_thick()
    {
        // Turned about x by 30°: an upright cut meets it over thickness / cos 30°.
        var lean = new Frame(
            default,
            new(1, 0, 0),
            new(0, Math.Cos(Math.PI / 6), Math.Sin(Math.PI / 6)),
            new(0, -Math.Sin(Math.PI / 6), Math.Cos(Math.PI / 6))
        );
        var cut = Assert.Single(PlaneCut.Plate(Upright, lean, Outline.Rectangle(new(0.5, 0.5), 1, 1), [], 0.01));
        Assert.Equal(0.01 / Math.Cos(Math.PI / 6), Area(cut), 1e-6);
    }

    [Fact]
    public void A_plate_along_the_plane_gives_nothing() =>
        Assert.Empty(
            PlaneCut.Plate(
                Upright,
                new(new(0, 0.5, 0), new(1, 0, 0), new(0, 0, 1), new(0, -1, 0)),
                Outline.Rectangle(default, 1, 1),
                [],
                0.01
            )
        );

    private static double Area(IReadOnlyList<Vec2> o) =>
        Math.Abs(Enumerable.Range(0, o.Count).Sum(i => o[i].Cross(o[(i + 1) % o.Count]))) / 2;
}
