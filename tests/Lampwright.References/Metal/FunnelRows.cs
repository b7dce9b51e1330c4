using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>Angles between the panels of a funnel.</summary>
public sealed class FunnelRows
{
    // Tables of compound mitres for mouldings on a square corner, from memory: spring 38°, bevel 33.86° and mitre 31.62°; spring 45°, 30.00° and 35.26°.
    // Spring is the lean from the wall, that is, from the axis; the bevel is half of the turn, the mitre the side of the panel against square.
    [Theory]
    [InlineData(38, 33.86, 31.62)]
    [InlineData(45, 30.00, 35.26)]
    public void Square_corner_of_compound_mitres(double lean, double bevel, double mitre)
    {
        var a = Near.Rad(lean);
        Near.Is(bevel, FunnelPanels.Bend(a, a, 4) * 90 / Math.PI, 0.005, $"bevel at {lean}°");
        var funnel = FunnelPanels.Of(
            new(
                "f",
                new("mild", 0.001, 0.001, BendRule.Din6935),
                (0.05, 0.05),
                (0.05 + (0.2 * Math.Tan(a)), 0.05 + (0.2 * Math.Tan(a))),
                0.1
            )
        );
        var c = funnel.Panels[0].Part.Folded!.Faces[0].Nominal.Corners;
        var side = c[2].Point - c[1].Point;
        Near.Is(mitre, Math.Atan2(side.X, side.Y) * 180 / Math.PI, 0.005, $"mitre at {lean}°");
    }

    // Published solids: regular octahedron, 109.47° between faces about a point of four (faces lean atan(1/√2) from its axis);
    // regular icosahedron has five and regular tetrahedron three, which are not made; a prism of six has 120°, of eight 135°.
    [Theory]
    [InlineData(4, 0.7071067811865476, 109.4712)]
    [InlineData(6, 0, 120)]
    [InlineData(8, 0, 135)]
    public void Known_solids(int sides, double tanLean, double inside)
    {
        var a = Math.Atan(tanLean);
        Near.Is(inside, 180 - (FunnelPanels.Bend(a, a, sides) * 180 / Math.PI), 5e-5, $"{sides} faces");
    }
}
