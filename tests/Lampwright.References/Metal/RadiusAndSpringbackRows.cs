using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>metal.md sections 2 and 3.</summary>
public sealed class RadiusAndSpringbackRows
{
    // M.R1, published, second-hand: DIN 6935 summary, p. 1. QSt 42-2 (Rm 410 to 530: column 390-490), s 6, across the rolling direction.
    [Theory]
    [InlineData(90, 10)]
    [InlineData(120, 10)]
    [InlineData(121, 12)]
    public void Least_radius_of_QSt_42_2(double turned, double mm) =>
        Near.Is(
            mm,
            LeastRadius.Din6935(0.006, 410e6, Near.Rad(turned))!.Value * 1000,
            1e-9,
            $"M.R1 s 6, turned {turned}°"
        );

    // DIN 6935:1975, table of smallest inside radii, published, second-hand: corners and middle of the table, mm.
    [Theory]
    [InlineData(1, 390, 1)]
    [InlineData(1, 640, 1.6)]
    [InlineData(1.2, 390, 1.6)]
    [InlineData(2.5, 490, 3)]
    [InlineData(3, 640, 5)]
    [InlineData(10, 390, 16)]
    [InlineData(10, 640, 20)]
    public void Least_radii_of_the_table(double s, double rm, double mm) =>
        Near.Is(
            mm,
            LeastRadius.Din6935(s / 1000, rm * 1e6, Math.PI / 2)!.Value * 1000,
            1e-9,
            $"DIN 6935 s {s}, Rm {rm}"
        );

    // M.R6a, memory: Kalpakjian and Schmid. Reduction of area 25; 50 %.
    [Theory]
    [InlineData(25, 1)]
    [InlineData(50, 0)]
    [InlineData(60, 0)]
    public void Least_radius_from_ductility(double percent, double t) =>
        Near.Is(t, LeastRadius.FromDuctility(percent), 1e-12, $"M.R6a q {percent} %");

    // M.P1, memory: Kalpakjian and Schmid: 0.0359 in, Ri 0.5 in, Y 40 ksi, E 29e6 psi.
    [Fact]
    public void Elastic_springback()
    {
        var ratio = Springback.ElasticRatio(0.5, 0.0359, 40e3, 29e6);
        Near.Is(0.942, ratio, 0.001, "M.P1 Ri/Rf");
        Near.Is(0.531, 0.5 / ratio, 0.001, "M.P1 Rf, in");
    }

    // M.P2, derived: DC01, r/s 4, wanted 90°: bend to 92.8°.
    [Fact]
    public void Overbend_of_DC01() =>
        Near.Is(92.8, Springback.BendTo(90, Springback.Factor("DC01", 4)!.Value), 0.1, "M.P2 DC01, r/s 4");

    // Tabellenbuch Metall, springback factor kR: published row values at their heads (heads from memory).
    [Theory]
    [InlineData("DC04", 100, 0.83)]
    [InlineData("DC01", 1, 0.99)]
    [InlineData("DC01", 63, 0.77)]
    [InlineData("18_8", 40, 0.63)]
    [InlineData("Al99", 25, 0.97)]
    [InlineData("AlSiMgMn", 2.5, 0.97)]
    public void Springback_factors(string metal, double ratio, double factor) =>
        Near.Is(factor, Springback.Factor(metal, ratio)!.Value, 1e-12, $"kR {metal}, r/s {ratio}");

    // M.H5a, derived: from mild Rm 340 to 304 Rm 600 MPa.
    [Fact]
    public void Derating_of_a_brake() => Near.Is(0.753, BrakeForce.Derating(340, 600), 1e-3, "M.H5a 340 to 600 MPa");
}
