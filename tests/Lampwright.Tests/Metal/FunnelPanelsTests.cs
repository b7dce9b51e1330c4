using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class FunnelPanelsTests
{
    private static readonly PanelsSpec Funnel = new("funnel", Parts.Mild, (0.044, 0.040), (0.280, 0.180), 0.150);

    [Fact]
    public void Panels_are_the_trapezoids_of_the_openings()
    {
        var bottom = FunnelPanels.Of(Funnel).Panels[0];
        var slant = Math.Sqrt((0.070 * 0.070) + (0.150 * 0.150));

        Assert.Equal("funnel.bottom", bottom.Id);
        Assert.Equal((0.044 + 0.280) / 2 * slant, bottom.Part.Blank!.AreaM2, 1e-12);
        Assert.Equal(Math.Atan2(0.070, 0.150), bottom.LeanRad, 1e-12);
    }

    [Fact]
    public void Neighbours_share_their_inside_corner_lines()
    {
        var funnel = FunnelPanels.Of(Funnel);
        Vec3 Inside(PanelResult p, int corner)
        {
            var c = p.Part.Folded!.Faces[0].Nominal.Corners[corner].Point;
            return p.Place.Out(new(c.X, c.Y, -Parts.Mild.ThicknessM));
        }

        for (var i = 0; i < 4; i++)
        {
            var (a, b) = (funnel.Panels[i], funnel.Panels[(i + 1) % 4]);
            Assert.True((Inside(a, 1) - Inside(b, 0)).Length < 1e-12, $"small corner of {a.Id} and {b.Id}");
            Assert.True((Inside(a, 2) - Inside(b, 3)).Length < 1e-12, $"large corner of {a.Id} and {b.Id}");
            Assert.True(a.Place.X.Cross(a.Place.Y).Dot(a.Place.Z) > 0.999999);
        }
    }

    [Fact]
    public void Upright_panels_meet_at_a_right_angle_and_leaning_ones_wider()
    {
        var tube = FunnelPanels.Of(Funnel with { Large = Funnel.Small });
        Assert.Equal(Math.PI / 2, tube.CornerRad, 1e-12);
        Assert.True(FunnelPanels.Of(Funnel).CornerRad > Math.PI / 2);
        Assert.Equal(0, tube.CentreOfMass.X, 1e-12);
        Assert.Equal(0.075, tube.CentreOfMass.Z, 1e-12);
    }

    [Fact]
    public void Outside_openings_are_a_wall_larger()
    {
        var outside = FunnelPanels.Of(
            Funnel with
            {
                Small = (0.047, 0.043),
                Large = (0.047, 0.043),
                Side = DimensionSide.Outside,
            }
        );
        Assert.Equal(0.044, outside.Panels[0].Part.Blank!.WidthM, 1e-12);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(1e9)]
    public void Absurd_funnels_are_a_finding(double depth)
    {
        var result = FunnelPanels.Of(Funnel with { DepthM = depth });
        Assert.Empty(result.Panels);
        Assert.Equal(Severity.Stop, Assert.Single(result.Findings).Severity);
    }
}
