using Lampwright.Balance;

namespace Lampwright.References.Mechanics;

/// <summary>Rows K.N and K.ST of the reference page mechanics, sections 5 and 6.</summary>
public class BalanceTests
{
    [Fact]
    public void Plate_clutch() // K.N3, Shigley, ch. 16 problem (memory)
    {
        Check.Near(RubbingFaces.WornMomentNm(1, 0.30, 4000, 0.175, 0.250), 127.5, 0.1, "K.N3", $"wear");
        Check.Near(RubbingFaces.WornPressurePa(4000, 0.175, 0.250) / 1000, 194, 0.5, "K.N3", $"wear, p_max in kPa");
        Check.Near(RubbingFaces.NewMomentNm(1, 0.30, 4000, 0.175, 0.250), 128.8, 0.1, "K.N3", $"pressure");
        Check.Near(RubbingFaces.NewPressurePa(4000, 0.175, 0.250) / 1000, 159.8, 0.1, "K.N3", $"pressure, p in kPa");
    }

    [Fact]
    public void Two_faces_at_their_greatest_pressure() // K.N4a, formula (derived)
    {
        var force = 13190.0;
        Check.Near(RubbingFaces.WornPressurePa(force, 0.140, 0.200) / 1e6, 1, 0.001, "K.N4a", $"F 13.19 kN");
        Check.Near(RubbingFaces.WornMomentNm(2, 0.5, force, 0.140, 0.200), 1121.5, 1.1, "K.N4a", $"F 13.19 kN");
    }

    [Fact]
    public void Strip_as_a_cantilever() // K.N9a, formula (derived)
    {
        var section = Section.Bar(0.025, 0.003);
        Check.Near(
            Bending.StressPa(20 * 0.150, section.ModulusM3) / 1e6,
            80,
            0.01,
            "K.N9a",
            $"strip 25 x 3, L 150, 20 N"
        );
        Check.Near(
            Bending.EndDeflectionM(20, 0.150, 210e9, section.SecondMomentM4) * 1000,
            1.905,
            0.01,
            "K.N9a",
            $"strip 25 x 3, L 150, 20 N"
        );
    }

    [Fact]
    public void Folded_angle() // K.N6, exact integration (derived), 0.1 %
    {
        // L 30 x 30 x 1.5, inner radius 1.5: straight parts 30 − 1.5 − 1.5 = 27 mm
        var angle = new FoldedSection(1.5e-3, 1.5e-3).Leg(27e-3).Bend(Math.PI / 2).Leg(27e-3);
        var section = angle.Bending;
        var offset = angle.Centroid.YM + 0.75e-3; // from the outside of the first leg
        Check.Near(section.AreaM2 * 1e6, 86.30, 0.0863, "K.N6", $"L 30 x 30 x 1.5, r 1.5");
        Check.Near(offset * 1e3, 8.188, 0.0082, "K.N6", $"e");
        Check.Near(section.SecondMomentM4 * 1e12, 7746, 7.7, "K.N6", $"I");
        Check.Near(section.ModulusM3 * 1e9, 355.1, 0.36, "K.N6", $"Zmin");
    }

    [Fact]
    public void Lipped_channel() // K.N5, Gardner and Nethercot, 2nd ed., p. 139 (published), 0.1 %
    {
        // C 200 x 65 x 15, t 1.56, inner radius 1.2: straight parts less 2 or 4 times (1.2 + 1.56)
        const double setback = 2.76e-3;
        var channel = new FoldedSection(1.56e-3, 1.2e-3)
            .Leg(15e-3 - setback)
            .Bend(Math.PI / 2)
            .Leg(65e-3 - (2 * setback))
            .Bend(Math.PI / 2)
            .Leg(200e-3 - (2 * setback))
            .Bend(Math.PI / 2)
            .Leg(65e-3 - (2 * setback))
            .Bend(Math.PI / 2)
            .Leg(15e-3 - setback);
        Check.Near(channel.AreaM2 * 1e6, 546.6, 0.55, "K.N5", $"C 200 x 65 x 15, t 1.56, r 1.2");
    }

    [Fact]
    public void Sharp_angle_beside_the_rolled_one() // K.N8, EN 10056 (memory), 4 %
    {
        var angle = new FoldedSection(5e-3, 0).Leg(45e-3).Bend(Math.PI / 2).Leg(45e-3);
        var section = angle.Bending;
        Check.Near(section.AreaM2 * 1e6, 480, 0.04 * 480, "K.N8", $"L 50 x 50 x 5");
        Check.Near((angle.Centroid.YM + 2.5e-3) * 1e3, 14.0, 0.04 * 14, "K.N8", $"e");
        Check.Near(section.SecondMomentM4 * 1e8, 11.0, 0.04 * 11, "K.N8", $"I");
        Check.Near(section.ModulusM3 * 1e6, 3.05, 0.04 * 3.05, "K.N8", $"Z");
    }

    [Fact]
    public void L_frame() // K.N10, formula (derived)
    {
        var second = Section.Bar(0.025, 0.003).SecondMomentM4;
        var (down, sideways) = Bending.TipOfLFrame(30, 0.150, 0.200, 210e9, second, second);
        Check.Near(down * 1000, 14.286, 0.01, "K.N10", $"a 150, h 200, 30 N");
        Check.Near(sideways * 1000, 7.619, 0.01, "K.N10", $"a 150, h 200, 30 N");
    }

    [Fact]
    public void Wing_screw() // K.N11, formula (derived), 1 %
    {
        var spec = new TiltSpec(1, 0.006, 1.5, 0.2, 2, 0.0066, 0.030, 0.15, 3, 0.08, 0);
        var result = TiltJoint.Result(spec);
        Check.Near(result.ClampForceN, 1250, 12.5, "K.N11", $"{spec}");
        Check.Near(result.HoldingNm, 3.43, 0.0343, "K.N11", $"wear, {spec}");
        Check.Near(RubbingFaces.NewMomentNm(2, 0.15, 1250, 0.0066, 0.030), 3.90, 0.039, "K.N11", $"pressure");
        Check.Near(result.WorstMomentNm, 2.35, 0.0235, "K.N11", $"{spec}");
    }

    [Theory]
    // formula (derived): height m, slope degrees, foot mm
    [InlineData("K.ST1a", 0.6, 6, 63.1)]
    [InlineData("K.ST1a", 0.6, 15, 160.8)]
    [InlineData("K.ST1a", 1.5, 6, 157.7)]
    [InlineData("K.ST1a", 1.5, 15, 401.9)]
    public void Foot_that_stands_on_a_slope(string id, double height, double degrees, double footMm)
    {
        var slope = degrees * Math.PI / 180;
        Check.Near(
            Stability.LeastEdgeDistanceM(height, slope) * 1000,
            footMm,
            0.1,
            id,
            $"{height} m, {degrees} degrees"
        );
        Check.Near(Stability.TippingSlopeRad(footMm / 1000, height), slope, 1e-3, id, $"back again");
    }

    [Theory]
    [InlineData("K.ST2", 6, 0.315)] // formula (derived), 1 mm
    [InlineData("K.ST3", 10, 0.529)]
    public void Three_legged_stand(string id, double degrees, double radius)
    {
        var least = Stability.LeastEdgeDistanceM(1.5, degrees * Math.PI / 180);
        Check.Near(Stability.EdgeDistanceOfLegsM(radius, 3), least, 0.001, id, $"R {radius} m, {degrees} degrees");
    }
}
