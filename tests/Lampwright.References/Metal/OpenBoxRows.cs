using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>metal.md row M.E1, derived: open box 120 × 80 × 30 outside, DIN 6935, t 1.5, r 1.5; through the whole station.</summary>
public sealed class OpenBoxRows
{
    private static readonly Blank Box = SheetPart
        .Of(
            new PartSpec("box", new("mild", 0.0015, 0.0015, BendRule.Din6935, 7850), FaceSpec.Rectangle(0.120, 0.080))
            {
                Flanges =
                [
                    new("b", "face.bottom", 0.030),
                    new("r", "face.right", 0.030),
                    new("t", "face.top", 0.030),
                    new("l", "face.left", 0.030),
                ],
            }
        )
        .Blank!;

    [Fact]
    public void Deduction_and_allowance()
    {
        Near.Is(2.878, Box.Bends[0].DeductionM * 1000, 0.001, "M.E1 v");
        Near.Is(3.122, Box.Bends[0].AllowanceM * 1000, 0.001, "M.E1 BA");
    }

    [Fact]
    public void Size_area_and_mass()
    {
        Near.Is(174.244, Box.WidthM * 1000, 0.001, "M.E1 width");
        Near.Is(134.244, Box.HeightM * 1000, 0.001, "M.E1 height");
        Near.Is(20128.3, Box.AreaM2 * 1e6, 0.1, "M.E1 area");
        Near.Is(0.2370, Box.MassKg, 0.0001, "M.E1 mass at 7.85 g/cm³");
    }

    [Theory]
    [InlineData("l", false, 27)]
    [InlineData("l", true, 30.122)]
    [InlineData("r", true, 144.122)]
    [InlineData("r", false, 147.244)]
    public void Bend_tangents(string flange, bool inner, double at)
    {
        var bend = Box.Bends.Single(b => b.Flange == flange);
        var line = inner ? bend.InnerTangent : bend.OuterTangent;
        Near.Is(at, line.A.X * 1000, 0.001, $"M.E1 tangent of {flange}");
        Near.Is(at, line.B.X * 1000, 0.001, $"M.E1 tangent of {flange}");
    }

    [Fact]
    public void Square_notch_to_the_bend_centre()
    {
        var inside = Box.Outline.Corners.Where(c => c.Point.X < 0.05 && c.Point.Y < 0.05).ToList();
        var notch = inside.Single(c => c.Point.X > 1e-6 && c.Point.Y > 1e-6);
        Near.Is(28.561, notch.Point.X * 1000, 0.001, "M.E1 notch x");
        Near.Is(28.561, notch.Point.Y * 1000, 0.001, "M.E1 notch y");
    }
}
