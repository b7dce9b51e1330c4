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

    [Theory]
    [InlineData(6)]
    [InlineData(8)]
    public void Equal_sizes_make_a_regular_outline(int sides)
    {
        var distances = FunnelOutline.Distances(sides, 0.1, 0.1);
        Assert.All(distances, d => Assert.Equal(0.05, d, 12));
        var edge = 0.1 * Math.Tan(Math.PI / sides);
        Assert.All(
            Enumerable.Range(0, sides),
            i => Assert.Equal(edge, FunnelOutline.Reach(distances, i).ToM - FunnelOutline.Reach(distances, i).FromM, 12)
        );
        Assert.Equal(sides * edge * 0.05 / 2, FunnelOutline.AreaM2(distances), 12);
    }

    [Theory]
    [InlineData(6, 0.060, 0.050, 0.150, 0.200)]
    [InlineData(8, 0.060, 0.050, 0.150, 0.200)]
    [InlineData(8, 0.060, 0.060, 0.200, 0.200)]
    public void Neighbours_of_six_and_eight_share_their_inside_corner_lines_and_turn_as_told(
        int sides,
        double w,
        double h,
        double largeW,
        double largeH
    )
    {
        var funnel = FunnelPanels.Of(Funnel with { Sides = sides, Small = (w, h), Large = (largeW, largeH) });
        Assert.Equal(sides, funnel.Panels.Count);
        Vec3 Inside(PanelResult p, int corner)
        {
            var c = p.Part.Folded!.Faces[0].Nominal.Corners[corner].Point;
            return p.Place.Out(new(c.X, c.Y, -Parts.Mild.ThicknessM));
        }

        for (var i = 0; i < sides; i++)
        {
            var (a, b) = (funnel.Panels[i], funnel.Panels[(i + 1) % sides]);
            Assert.True((Inside(a, 1) - Inside(b, 0)).Length < 1e-12, $"small corner of {a.Id} and {b.Id}");
            Assert.True((Inside(a, 2) - Inside(b, 3)).Length < 1e-12, $"large corner of {a.Id} and {b.Id}");
            Assert.Equal(a.Place.Z.Dot(b.Place.Z), Math.Cos(a.BendRad), 1e-12);
            Assert.Equal(0, Inside(a, 0).Z, 1e-12);
            Assert.Equal(0.150, Inside(a, 2).Z, 1e-12);
        }
    }

    /// <summary>Each lip, folded, lies with its outside the gap beneath the inside of the next panel and within its edges.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(8)]
    public void A_lip_lies_under_the_next_panel(int sides)
    {
        var funnel = FunnelPanels.Of(
            Funnel with
            {
                Sides = sides,
                Small = (0.090, 0.080),
                Large = (0.200, 0.220),
                LipM = 0.012,
            }
        );
        Assert.DoesNotContain(funnel.Findings, f => f.Severity == Severity.Stop);
        for (var i = 0; i < sides; i++)
        {
            var (panel, next) = (funnel.Panels[i], funnel.Panels[(i + 1) % sides]);
            var lip = panel.Part.Folded!.Faces.Single(f => f.Face == "lip");
            Assert.Equal(panel.BendRad, panel.Part.Blank!.Bends.Single().AngleRad, 1e-12);
            var corners = next.Part.Folded!.Faces[0].Nominal.Corners;
            var over = new Outline(corners).Points(1e-5);

            // At a blunt corner the lip comes from beyond its neighbour's edge by the depth it lies at over the tangent of the turn.
            var inward = (corners[0].Point - corners[3].Point).Unit.Left;
            var beyond = (Parts.Mild.ThicknessM + 0.0002) / Math.Tan(panel.BendRad);
            foreach (var corner in lip.Flat.Corners)
            {
                var p = next.Place.In(panel.Place.Out(lip.Frame.Out(new(corner.Point.X, corner.Point.Y, 0))));
                Assert.Equal(-Parts.Mild.ThicknessM - 0.0002, p.Z, 1e-10);
                Assert.True(Polygon2.Contains(over, new Vec2(p.X, p.Y) + (inward * beyond)), $"{panel.Id}: {p}");
            }
        }
    }

    [Theory]
    [InlineData(6, 0.1, 0.199, true)]
    [InlineData(6, 0.1, 0.201, false)]
    [InlineData(5, 0.1, 0.1, false)]
    public void An_opening_has_all_its_flats(int sides, double w, double h, bool can) =>
        Assert.Equal(
            can,
            FunnelPanels.Of(Funnel with { Sides = sides, Small = (w, h), Large = (w + 0.1, h + 0.1) }).Panels.Count > 0
        );
}
