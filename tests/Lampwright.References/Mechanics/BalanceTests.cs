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
