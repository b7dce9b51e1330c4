using Lampwright.Heat;

namespace Lampwright.References.Heat;

public sealed class SpreadingTests
{
    // Half-space limits: Carslaw and Jaeger, HTH ch. 4, approached by a flux tube (H.SP-03). [derived]
    [Fact]
    public void Small_square_on_a_cube()
    {
        Footprint source = new(0.5, 0.5, 0.02, 0.02);
        double Spread(bool local) =>
            0.02 * new Spreading(1, 1, 1, [source], source, local).SpreadPerM(double.PositiveInfinity);
        Check.Relative("H.SP-03 mean", 0.46077, Spread(local: false), 1e-4, "unit cube, 0.02 x 0.02, h infinite");
        Check.Relative("H.SP-03 centre", 0.54861, Spread(local: true), 2e-4, "unit cube, 0.02 x 0.02, h infinite");

        // H.SP-01: the half-space lies a flux tube's correction above (0.62075·ε - 0.1198·ε³).
        const double Mean = 0.4732012;
        var flux = Mean - 0.62075 * 0.02 + 0.1198 * Math.Pow(0.02, 3);
        Check.Relative("H.SP-03 flux tube", flux, Spread(local: false), 1e-5, "series of the flux tube");
        Check.Relative("H.SP-01 mean", 0.47320, Spread(local: false) + 0.62075 * 0.02, 1e-5, "flux tube to half-space");
        Check.Relative("H.SP-01 max", 0.56110, Spread(local: true) + 0.62075 * 0.02, 1e-5, "flux tube to half-space");
    }

    // Strip: the series in one direction (4d), half-width 1. [derived]
    [Fact]
    public void Strip_source()
    {
        // half-width 1, ε 0.2, β 0.5, H 200; per unit depth of the whole strip, the half carries half of the heat
        Footprint source = new(1, 0.5, 0.4, 1);
        var r = new Spreading(2, 1, 0.5, [source], source).ResistanceKPerW(1, 200);
        Check.Relative("H.SP-04", 1.27609, 2 * r, 1e-4, "eps 0.2, beta 0.5, H 200");
    }

    // Plate 100 x 100 x 8 mm, k 200, h 500, source 20 x 20 mm centred; exact series. [derived]
    [Fact]
    public void Centred_source()
    {
        Footprint source = new(0.05, 0.05, 0.02, 0.02);
        double R(bool local) => new Spreading(0.1, 0.1, 0.008, [source], source, local).ResistanceKPerW(200, 500);
        const string Inputs = "100 x 100 x 8 mm, k 200, h 500, 20 x 20 mm centred";
        Check.Relative("H.SP-08 mean", 0.33736, R(local: false), 1e-4, Inputs);
        Check.Relative("H.SP-08 centre", 0.36628, R(local: true), 1e-4, Inputs);
    }

    // Plate 120 x 90 x 6 mm, k 205, h 300, source 25 x 15 mm at (40,30) mm. Finite volumes 0.51625. [derived]
    [Theory]
    [InlineData("H.SP-09a mean", 40, 30, 25, 15, false, 0.516188)]
    [InlineData("H.SP-09a centre", 40, 30, 25, 15, true, 0.55031)]
    [InlineData("H.SP-09b at (80,60)", 80, 60, 25, 15, true, 0.25200)]
    [InlineData("H.SP-09b mutual", 85, 60, 25, 15, false, 0.24483)]
    [InlineData("H.SP-09b corner", 0, 0, 25, 15, true, 0.38921)]
    public void Eccentric_source(string id, double x, double y, double w, double d, bool local, double expected)
    {
        Footprint source = new(0.040, 0.030, 0.025, 0.015);
        Footprint probe = new(x / 1e3, y / 1e3, w / 1e3, d / 1e3);
        var r = new Spreading(0.12, 0.09, 0.006, [source], probe, local).ResistanceKPerW(205, 300);
        Check.Relative(id, expected, r, 1e-4, $"120 x 90 x 6 mm, k 205, h 300, probe ({x},{y}) {w} x {d}");
    }

    [Fact]
    public void One_dimensional_part() =>
        Check.Relative(
            "H.SP-09a one-dimensional",
            0.311352,
            0.006 / (205 * 0.12 * 0.09) + 1 / (300 * 0.12 * 0.09),
            1e-5,
            "120 x 90 x 6 mm, k 205, h 300"
        );

    // Three-dimensional finite volumes, extrapolated. [solver]
    [Fact]
    public void Eccentric_source_against_finite_volumes()
    {
        Footprint source = new(0.040, 0.030, 0.025, 0.015);
        var r = new Spreading(0.12, 0.09, 0.006, [source], source).ResistanceKPerW(205, 300);
        Check.Relative("H.SP-09a solver", 0.51625, r, 3e-4, "120 x 90 x 6 mm, k 205, h 300");
    }
}
