using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class PartSensitivitiesTests
{
    // A channel of two 90° bends with K: width = A + B + C - 4 (R + T) + π (R + K T).
    [Fact]
    public void Width_of_a_channel_follows_its_closed_form()
    {
        var spec = new PartSpec("u", new("s", 0.0012, 0.0015, BendRule.WithK(0.44)), FaceSpec.Rectangle(0.1, 0.2))
        {
            Flanges = [new("a", "face.left", 0.03), new("b", "face.right", 0.03)],
        };
        var s = PartSensitivities.Of(spec)!;

        Assert.Equal(-4 + (Math.PI * 0.44), s.Width.PerThickness, 1e-6);
        Assert.Equal(-4 + Math.PI, s.Width.PerRadius, 1e-6);
        Assert.Equal(Math.PI * (0.0015 + (0.44 * 0.0012)), s.Width.PerAllowance, 1e-9);
        Assert.Equal(0, s.Height.PerThickness, 1e-9);
    }

    [Fact]
    public void Coefficients_carry_to_another_thickness()
    {
        var spec = Parts.Tray();
        var s = PartSensitivities.Of(spec)!;
        var before = SheetPart.Of(spec);
        var after = SheetPart.Of(spec with { Sheet = spec.Sheet with { ThicknessM = 0.00158 } });
        var mass = before.Blank!.MassKg + s.Mass.Change(0.00008, 0, 0);
        var z = before.Folded!.CentreOfMass.Z + s.CentreZ.Change(0.00008, 0, 0);

        Assert.Equal(after.Blank!.MassKg, mass, 0.002 * mass);
        Assert.Equal(after.Folded!.CentreOfMass.Z, z, 1e-6);
    }

    [Fact]
    public void A_part_that_cannot_be_folded_has_none() => Assert.Null(PartSensitivities.Of(Parts.Box(120, 80, 1)));

    [Fact]
    public void Own_strips_err_less_than_a_published_rule_once_there_are_several()
    {
        double Error(params double[] deductionsMm) =>
            MetalMethods
                .MethodErrors(
                    Parts.Mild with
                    {
                        Rule = BendRule.FromStrips([
                            .. deductionsMm.Select(d => new BendStrip(Math.PI / 2, d / 1000) { ReadingM = 0.00005 }),
                        ]),
                    }
                )[0]
                .HalfWidth;
        var published = MetalMethods.MethodErrors(Parts.Mild)[0].HalfWidth;
        Assert.True(Error(2.80, 2.85, 2.82, 2.84) < published);
        Assert.True(Error(2.80, 3.30) > published);
        Assert.Equal(
            0.03,
            MetalMethods
                .MethodErrors(
                    Parts.Mild with
                    {
                        Rule = BendRule.FromStrips(new BendStrip(Math.PI / 2, 0.0028) { ReadingM = 1e-6 }),
                    }
                )[0]
                .HalfWidth,
            12
        );
    }
}
