using Lampwright.Geometry;

namespace Lampwright.References.Geometry;

/// <summary>Rows M.X of the reference page metal, section 8.</summary>
public class OutlineTests
{
    [Fact]
    public void Slot_of_arcs_as_bulges() // M.X1, formula (derived): vertices (0,0), (20,0) bulge 1, (20,6), (0,6) bulge 1
    {
        var slot = new Outline([new(new(0, 0)), new(new(20, 0), 1), new(new(20, 6)), new(new(0, 6), 1)]);
        Assert.True(Math.Abs(slot.Area - 148.274) <= 0.01, $"M.X1: area 148.274 mm² expected, {slot.Area} found");
        Assert.True(
            Math.Abs(slot.Perimeter - 58.850) <= 0.01,
            $"M.X1: perimeter 58.850 mm expected, {slot.Perimeter} found"
        );
        Assert.True(slot.SignedArea > 0, "M.X1: a positive bulge runs counter-clockwise");
    }

    [Fact]
    public void Quarter_arc_ends_where_it_must() // M.X1, formula (derived): radius 5 from 270 to 0 degrees ends in (5, 0)
    {
        var arc = new Outline([new(new(0, -5), Math.Tan(Math.PI / 8)), new(new(5, 0)), new(new(0, 0))]);
        var (centre, radius) = arc.Arc(0);
        Assert.True(centre.Length <= 0.01 && Math.Abs(radius - 5) <= 0.01, $"M.X1: centre {centre}, radius {radius}");
    }

    [Fact]
    public void Bulges_of_a_half_and_a_quarter_circle() // M.X2, formula (derived)
    {
        var half = Outline.Circle(default, 1).Corners[0].Bulge;
        var quarter = Outline.Rectangle(default, 4, 4, 1).Corners[1].Bulge;
        Assert.True(Math.Abs(half - 1) <= 1e-6, $"M.X2: bulge 1 expected, {half} found");
        Assert.True(Math.Abs(quarter - 0.414214) <= 1e-6, $"M.X2: bulge 0.414214 expected, {quarter} found");
    }
}
