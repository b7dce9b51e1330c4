using Lampwright.Balance;
using Lampwright.Tables;

namespace Lampwright.References.Mechanics;

/// <summary>Rows K.TH and K.S of the reference page mechanics, sections 1 to 3.</summary>
public class ThreadAndScrewTests
{
    private static readonly double InchM = 0.0254;
    private static readonly double PoundForceN = 4.4482216152605;
    private static readonly double PsiPa = 6894.757293168;

    [Theory]
    // ISO 724 (published, second-hand); d2, d3, D1 in mm within 0.001, As in mm² within the last column
    [InlineData("K.TH-M2", "M2", 1.740, 1.509, 1.567, 2.07, 0.01)]
    [InlineData("K.TH-M2.5", "M2.5", 2.208, 1.948, 2.013, 3.39, 0.01)]
    [InlineData("K.TH-M3", "M3", 2.675, 2.387, 2.459, 5.03, 0.01)]
    [InlineData("K.TH-M4", "M4", 3.545, 3.141, 3.242, 8.78, 0.01)]
    [InlineData("K.TH-M6", "M6", 5.350, 4.773, 4.917, 20.1, 0.05)]
    [InlineData("K.TH-M10", "M10", 9.026, 8.160, 8.376, 58.0, 0.05)]
    public void Thread_profile(
        string id,
        string size,
        double d2,
        double d3,
        double minor,
        double area,
        double areaWithin
    )
    {
        var thread = MetricThread.Named(size)!;
        Check.Near(thread.PitchDiameterM * 1000, d2, 0.001, id, $"{size} d2");
        Check.Near(thread.RootDiameterM * 1000, d3, 0.001, id, $"{size} d3");
        Check.Near(thread.NutMinorDiameterM * 1000, minor, 0.001, id, $"{size} D1");
        Check.Near(thread.StressAreaM2 * 1e6, area, areaWithin, id, $"{size} As");
    }

    [Theory]
    // table of section 1, "computed" (derived)
    [InlineData("M2", 643, 1202)]
    [InlineData("M2.5", 1051, 1967)]
    public void Loads_that_are_not_printed(string size, double proof48, double proof88)
    {
        var thread = MetricThread.Named(size)!;
        Check.Near(thread.Proof48N, proof48, 1, "table of section 1", $"{size} 4.8");
        Check.Near(thread.Proof88N, proof88, 1, "table of section 1", $"{size} 8.8");
    }

    [Theory]
    // ISO 898-1 prints (published, second-hand) beside stress area times proof stress: they agree within their rounding, 1 %
    [InlineData("M3", 1560, 2920)]
    [InlineData("M4", 2720, 5100)]
    [InlineData("M5", 4400, 8230)]
    [InlineData("M6", 6230, 11600)]
    [InlineData("M8", 11400, 21200)]
    [InlineData("M10", 18000, 33700)]
    public void Printed_loads_are_stress_area_times_stress(string size, double proof48, double proof88)
    {
        var thread = MetricThread.Named(size)!;
        Check.Near(thread.StressAreaM2 * 310e6, proof48, 0.01 * proof48, "table of section 1", $"{size} 4.8");
        Check.Near(thread.StressAreaM2 * 580e6, proof88, 0.01 * proof88, "table of section 1", $"{size} 8.8");
        Assert.Equal(proof48, thread.Proof48N);
        Assert.Equal(proof88, thread.Proof88N);
    }

    [Fact]
    public void Length_that_strips_with_the_screw() // K.S1, doi 10.1201/9781482273786-99 (published)
    {
        var length = ThreadStripping.InternalLengthM(69600, 130e6, 1.5e-3, 9.968e-3, 9.206e-3);
        Check.Near(length * 1000, 21.6, 0.1, "K.S1", $"M10 10.9 in aluminium 310, tau 130 MPa");
        Check.Near(1200e6 * 58.0e-6, 69600, 1, "K.S1", $"1200 MPa on 58.0 mm²");
    }

    [Theory]
    // formula; 6g/6H limits of ISO 965 (memory); tau 162 MPa (derived)
    [InlineData("K.S3a", 0.5, 2.874, 2.775, 1.5, 1348, 2920, 0.46)]
    [InlineData("K.S3a", 0.7, 3.838, 3.663, 1.5, 1888, 5100, 0.37)]
    [InlineData("K.S3a", 1.0, 5.794, 5.500, 2.0, 3950, 11600, 0.34)]
    public void Tapped_sheet_strips(
        string id,
        double pitch,
        double major,
        double nutPitch,
        double sheet,
        double force,
        double proof,
        double share
    )
    {
        var area = ThreadStripping.InternalAreaM2(sheet / 1000, pitch / 1000, major / 1000, nutPitch / 1000);
        Check.Near(162e6 * area, force, 0.01 * force, id, $"P {pitch}, t {sheet} mm");
        Check.Near(162e6 * area / proof, share, 0.005, id, $"P {pitch}, t {sheet} mm");
    }

    [Theory]
    // formula (derived): size, stress area in², K, expected lbf·ft, tolerance
    [InlineData("K.S4", 0.5, 0.1419, 0.20, 81.6, 0.1)]
    [InlineData("K.S4", 0.5, 0.1419, 0.22, 89.8, 0.1)]
    [InlineData("K.S5a", 0.25, 0.0318, 0.20, 9.1, 0.5)]
    [InlineData("K.S5a", 0.25, 0.0318, 0.22, 10.1, 0.5)]
    [InlineData("K.S5a", 0.75, 0.334, 0.20, 288, 0.5)]
    [InlineData("K.S5a", 0.75, 0.334, 0.22, 317, 0.5)]
    public void Torque_of_grade_5_screws(string id, double inch, double area, double k, double poundFeet, double within)
    {
        var force = 69000 * PsiPa * area * InchM * InchM;
        var torque = ScrewTightening.TorqueNm(force, k, inch * InchM) / (PoundForceN * 12 * InchM);
        Check.Near(torque, poundFeet, within, id, $"{inch} in, As {area} in², K {k}");
        Check.Near(
            ScrewTightening.ClampForceN(torque * PoundForceN * 12 * InchM, k, inch * InchM),
            force,
            1e-6 * force,
            id,
            $"back again"
        );
    }

    [Fact]
    public void Full_form_of_the_torque() // K.S7, Shigley, ch. 8 example (memory)
    {
        var force = 25000 * PoundForceN;
        var poundInch = PoundForceN * InchM;
        var brief = ScrewTightening.TorqueNm(force, 0.2, 0.75 * InchM) / poundInch;
        var full =
            ScrewTightening.FullTorqueNm(force, 0.75 * InchM, 0.6685 * InchM, InchM / 16, 0.15, 0.15) / poundInch;
        Check.Near(brief, 3750, 1, "K.S7", $"3/4-16 UNF, K 0.2");
        Check.Near(full, 3551, 1, "K.S7", $"3/4-16 UNF, f = fc = 0.15");
    }

    [Theory]
    [InlineData("K.S8a", "M3", 1.31)] // formula (derived)
    [InlineData("K.S8a", "M6", 10.4)]
    [InlineData("K.S8b", "M4", 3.06)]
    public void Torque_of_three_quarters_of_the_proof_load(string id, string size, double expected)
    {
        var thread = MetricThread.Named(size)!;
        var torque = ScrewTightening.TorqueNm(0.75 * thread.Proof88N, 0.2, thread.DiameterM);
        Check.Near(torque, expected, 0.01 * expected, id, $"{size} 8.8, K 0.2");
    }
}
