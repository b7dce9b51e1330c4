using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>Sight line of the aircraft rule (FAA-H-8083-31, chapter 4, memory) and the nose's setback of a hand brake (M.H1, published).</summary>
public sealed class SetLineRows
{
    [Fact]
    public void Sight_line_of_the_aircraft_channel_lies_one_radius_from_the_tangent_under_the_nose()
    {
        // Part of M.B11: 0.040 in 2024-T3, R 0.16 in, base 2 in, one leg of 1 in.
        var inch = 0.0254;
        var part = SheetPart.Of(
            new PartSpec(
                "channel",
                new("alclad", 0.040 * inch, 0.16 * inch, BendRule.WithK(0.4475)),
                FaceSpec.Rectangle(2 * inch, 2 * inch)
            )
            {
                Flanges = [new("leg", "face.right", 1 * inch)],
                Brake = new() { NoseRadiusM = 0.16 * inch },
            }
        );
        var bend = part.Blank!.Bends[0];
        Near.Is(
            0.16,
            (bend.Set!.Line.A.X - bend.InnerTangent.A.X) / inch,
            1e-6,
            "sight line, in from the bend tangent line"
        );

        // The flat of the base ends a setback (0.200 in) short of its mould line.
        Near.Is(2 - 0.200 + 0.16, bend.Set.Line.A.X / inch, 1e-6, "sight line, in from the edge of the base");
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.0015)]
    public void Nose_set_one_and_a_half_thicknesses_back_makes_half_a_thickness_more_than_its_radius(double thickness)
    {
        // M.H1: finger edge to apron about 1.5 T or more; with R = Rn + T / 2 the derived place of the nose is exactly that.
        var nose = 0.001;
        Near.Is(
            1.5 * thickness,
            SetLine.NoseBack(Math.PI / 2, nose + (thickness / 2), thickness, nose)!.Value,
            1e-12,
            "M.H1"
        );
    }
}
