using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class SetLineTests
{
    [Fact]
    public void Set_line_lies_a_nose_radius_beyond_the_tangent_of_the_clamped_flat()
    {
        var spec = Parts.Box(120, 80, 30) with { Brake = new() { NoseRadiusM = 0.001 } };
        foreach (var bend in SheetPart.Of(spec).Blank!.Bends)
        {
            var left = (bend.CentreLine.B - bend.CentreLine.A).Unit.Left;
            var outward = left.Dot(bend.OuterTangent.A - bend.InnerTangent.A) > 0 ? left : -left;
            Assert.Equal(0.001, (bend.Set!.Line.A - bend.InnerTangent.A).Dot(outward), 12);
            Assert.Equal(0.001, (bend.Set.Line.B - bend.InnerTangent.B).Dot(outward), 12);
            Assert.Equal(bend.CentreLine.LengthM, bend.Set.Line.LengthM, 12);
        }
    }

    [Fact]
    public void Without_a_nose_it_is_the_inside_radius_that_counts()
    {
        var bend = SheetPart.Of(Parts.Box(120, 80, 30)).Blank!.Bends[0];
        Assert.Equal(bend.InsideRadiusM, bend.Set!.NoseRadiusM);
        Assert.Equal(0.0015, bend.Set.NoseBackM!.Value, 12);
    }

    [Theory]
    [InlineData(30, 29.036805)] // by hand: S = 2.7·tan …, DIN k = 0.65, BA = α·(1.5 + 0.65·0.75), nose 1.2
    [InlineData(90, 28.921958)]
    [InlineData(120, 29.962610)]
    public void It_lies_as_far_from_the_edge_of_the_flange_as_by_hand(double degrees, double mm)
    {
        var spec = Parts.Box(120, 80, 30, angle: degrees * Math.PI / 180) with
        {
            Brake = new() { NoseRadiusM = 0.0012 },
        };
        var blank = SheetPart.Of(spec).Blank!;
        var bend = blank.Bends.Single(b => b.Flange == "wall_l");
        Assert.Equal(mm, bend.Set!.Line.A.X * 1000, 5);
    }

    [Fact]
    public void Bend_away_from_the_viewer_is_scribed_on_the_inside()
    {
        var spec = Parts.Box(120, 80, 30);
        spec = spec with { Flanges = [spec.Flanges[1], spec.Flanges[3] with { AngleRad = -Math.PI / 2 }] };
        var bends = SheetPart.Of(spec).Blank!.Bends;
        Assert.True(bends[0].Set!.OnInside);
        Assert.False(bends[1].Set!.OnInside);
    }

    [Fact]
    public void Mirror_image_of_a_part_has_the_mirror_image_of_its_line()
    {
        var spec = Parts.Box(120, 80, 30) with { Brake = new() { NoseRadiusM = 0.001 } };
        spec = spec with { Flanges = [spec.Flanges[1]] };
        var (blank, mirror) = (SheetPart.Of(spec).Blank!, SheetPart.Of(spec with { Mirrored = true }).Blank!);
        Assert.Equal(blank.WidthM - blank.Bends[0].Set!.Line.A.X, mirror.Bends[0].Set!.Line.A.X, 12);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(135)]
    public void Nose_set_for_a_radius_makes_that_radius(double degrees)
    {
        var angle = degrees * Math.PI / 180;
        var back = SetLine.NoseBack(angle, 0.0025, 0.0015, 0.001)!.Value;
        Assert.Equal(0.0025, SetLine.RadiusMade(angle, back, 0.0015, 0.001), 12);
    }

    [Fact]
    public void Flange_bent_about_that_radius_lies_on_the_apron()
    {
        // The apron turns about (0, 0) on the surface of the bed; the sheet lies on the bed from -x, its outer skin at y = 0. The bend begins
        // at the tangent, a nose radius behind the foremost edge of the nose, and turns up about a point R + T above the bed.
        var (angle, radius, t, nose) = (100 * Math.PI / 180, 0.0025, 0.0015, 0.001);
        var tangent = -SetLine.NoseBack(angle, radius, t, nose)!.Value - nose;
        var centre = new Vec2(tangent, radius + t);
        var end = centre + new Vec2(0, -(radius + t)).Turned(angle);
        var alongFlange = new Vec2(1, 0).Turned(angle);
        Assert.Equal(0, alongFlange.Cross(end), 12);
    }

    [Fact]
    public void Closed_bend_has_no_place_on_the_apron() =>
        Assert.Null(SetLine.NoseBack(SetLine.FurthestRad + 0.01, 0.001, 0.001, 0.001));

    [Fact]
    public void Nonsense_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SetLine.NoseBack(double.NaN, 0.001, 0.001, 0.001));
}
