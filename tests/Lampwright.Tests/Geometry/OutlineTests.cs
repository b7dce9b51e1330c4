using Lampwright.Geometry;

namespace Lampwright.Tests.Geometry;

public sealed class OutlineTests
{
    private static readonly Outline Half = new([new(new(-1, 0), 0, "flat"), new(new(1, 0), 1, "round")]);

    [Fact]
    public void Centre_of_a_half_disc_lies_at_4_r_over_3_pi()
    {
        Assert.Equal(0, Half.Centroid.X, 1e-12);
        Assert.Equal(4 / (3 * Math.PI), Half.Centroid.Y, 1e-12);
        Assert.Equal(Math.PI / 2, Half.Area, 1e-12);
    }

    [Fact]
    public void Box_takes_the_backs_of_arcs_and_only_of_those_there()
    {
        var (least, most) = Half.Box;
        Assert.Equal(new Vec2(-1, 0), least);
        Assert.Equal(1, most.Y, 1e-12);
        var (l, m) = Outline.Rectangle(new(1, 2), 4, 2, 0.5).Box;
        Assert.Equal(-1, l.X, 1e-12);
        Assert.Equal(3, m.Y, 1e-12);
        Assert.Equal(0.004, Outline.Circle(default, 0.002).Box.Most.X * 2, 1e-15);
    }

    [Fact]
    public void Run_backwards_an_outline_keeps_its_edges()
    {
        var back = Half.Reversed;
        Assert.Equal(-Half.SignedArea, back.SignedArea, 1e-12);
        Assert.Equal(-1, back.Corners.Single(c => c.EdgeId == "round").Bulge);
        Assert.Equal(Half.Perimeter, back.Perimeter, 1e-12);
        Assert.Equal(Half.Corners, back.Reversed.Corners);
    }

    [Fact]
    public void A_mirror_keeps_area_and_turning()
    {
        var mirror = Half.MirroredX(3);
        Assert.Equal(Half.SignedArea, mirror.SignedArea, 1e-12);
        Assert.Equal(3, mirror.Centroid.X, 1e-12);
    }

    [Fact]
    public void Placements_undo_themselves()
    {
        var place = new Placement2(new(1, 2), new Vec2(1, 0).Turned(0.7));
        var p = place.In(place.Out(new Vec2(3, 4)));
        Assert.True((p - new Vec2(3, 4)).Length < 1e-12);
        Assert.Equal(Half.SignedArea, place.Out(Half).SignedArea, 1e-12);
    }

    [Fact]
    public void Lines_cross_where_they_should()
    {
        var a = new Line2(default, new(1, 0));
        Assert.Equal(new Vec2(2, 0), a.Crossing(new(new(2, 5), new(0, 1))));
        Assert.Null(a.Crossing(a.MovedLeft(1)));
        Assert.Equal(new Vec2(0.5, 0.5), Polygon2.SelfCrossing([new(0, 0), new(1, 1), new(1, 0), new(0, 1)]));
        Assert.Null(Polygon2.SelfCrossing([new(0, 0), new(1, 0), new(1, 1), new(0, 1)]));
    }
}
