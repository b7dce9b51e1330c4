using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class SheetPartTests
{
    [Fact]
    public void Open_box_has_the_blank_of_the_hand_computation()
    {
        var result = SheetPart.Of(Parts.Box(120, 80, 30));
        var blank = result.Blank!;

        Assert.Equal(174.244, blank.WidthM * 1000, 0.001);
        Assert.Equal(134.244, blank.HeightM * 1000, 0.001);
        Assert.Equal(20128.3, blank.AreaM2 * 1e6, 0.1);
        Assert.Equal(0.2370, blank.MassKg, 0.00005);
        Assert.Equal(12, blank.Outline.Corners.Count);
        var corner = blank.Outline.Corners.Min(c => c.Point.X + c.Point.Y);
        Assert.Equal(28.561, corner * 1000, 0.001);
    }

    [Fact]
    public void Area_of_the_blank_is_that_of_its_flats_and_bends()
    {
        foreach (var spec in (PartSpec[])[Parts.Box(120, 80, 30), Parts.Tray(), Parts.Box(120, 80, 30, angle: 2.0)])
        {
            var result = SheetPart.Of(spec);
            var regions =
                result.Folded!.Faces.Sum(f => f.Flat.SignedArea) + result.Folded.Bends.Sum(b => b.Zone.SignedArea);
            Assert.Equal(result.Blank!.Outline.SignedArea, regions, 1e-9);
        }
    }

    [Fact]
    public void Outside_of_the_folded_box_is_the_box()
    {
        var folded = SheetPart.Of(Parts.Box(120, 80, 30)).Folded!;

        Assert.Equal(new Vec3(0, 0, -0.030), Round(folded.BoxLeast));
        Assert.Equal(new Vec3(0.120, 0.080, 0), Round(folded.BoxMost));
        Assert.Equal(0.060, folded.CentreOfMass.X, 1e-9);
        Assert.Equal(0.040, folded.CentreOfMass.Y, 1e-9);
    }

    private static Vec3 Round(Vec3 v) => new(Math.Round(v.X, 9), Math.Round(v.Y, 9), Math.Round(v.Z, 9));
}
