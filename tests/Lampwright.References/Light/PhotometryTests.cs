using Lampwright.Light;

namespace Lampwright.References.Light;

/// <summary>Rows L.P of the reference page light, section 3. A row reads: id, inputs, expected, tolerance; the source stands beside it.</summary>
public class PhotometryTests
{
    private static readonly double Degree = Math.PI / 180;

    [Theory]
    [InlineData("L.P-1a", 0, 2.5, 0.125)] // exposure-value table for C 250, K 12.5 (published, second-hand)
    [InlineData("L.P-1a", 10, 2560, 128)]
    [InlineData("L.P-1a", 15, 81920, 4096)]
    [InlineData("L.P-1b", 5, 80, 4)]
    [InlineData("L.P-1b", 12, 10240, 512)]
    public void Exposure_values_stand_for_lux_and_luminance(string id, double ev, double lux, double luminance)
    {
        Check.Near(Exposure.Lux(ev, 100, 250), lux, 1e-9 * lux, id, $"EV {ev}");
        Check.Near(Exposure.Luminance(ev, 100, 12.5), luminance, 1e-9 * luminance, id, $"EV {ev}");
        Check.Near(Exposure.ValueAtIso100(lux, Exposure.DefaultConstant), ev, 1e-12, id, $"{lux} lx");
    }

    [Theory]
    [InlineData("L.P-2a", 12.5, 250, 0.157)] // Conrad, article on exposure metering (published, second-hand)
    [InlineData("L.P-2a", 14, 250, 0.176)]
    [InlineData("L.P-2b", 12.5, 330, 0.119)]
    public void Both_kinds_of_meter_agree_at_a_reflectance(string id, double k, double c, double expected) =>
        Check.Near(Exposure.MatchingReflectance(k, c), expected, 0.001, id, $"K {k}, C {c}");

    [Theory]
    [InlineData("L.P-4a", 250, 245)] // formula (derived)
    [InlineData("L.P-4b", 330, 323)]
    public void An_aperture_asks_for_lux(string id, double c, double expected)
    {
        Check.Near(Exposure.LuxFor(2.8, 400, 1.0 / 50, c), expected, 0.5, id, $"f/2.8, 1/50 s, ISO 400, C {c}");
        Check.Near(
            Exposure.Aperture(Exposure.LuxFor(2.8, 400, 1.0 / 50, c), 400, 1.0 / 50, c),
            2.8,
            1e-12,
            id,
            $"back again"
        );
    }

    [Theory]
    [InlineData("L.P-5a", 1, 0.25)] // IES definitions 9.1.1 (published)
    [InlineData("L.P-5a", 3, 0.0278)]
    [InlineData("L.P-5a", 5, 0.01)]
    [InlineData("L.P-5a", 10, 0.0025)]
    [InlineData("L.P-5b", 2, 0.0625)]
    public void Inverse_square_reads_high_before_a_disc(string id, double diametersAway, double expected) =>
        Check.Near(
            Illuminance.ShortcutErrorOfDisc(0.2, 0.2 * diametersAway),
            expected,
            1e-4,
            id,
            $"{diametersAway} diameters"
        );

    [Theory]
    [InlineData("L.P-6a", 1, 0.3293)] // formula (derived)
    [InlineData("L.P-6a", 2, 0.0830)]
    [InlineData("L.P-6a", 5, 0.0133)]
    [InlineData("L.P-6a", 7.0710678118654755, 0.0067)] // 5 x diagonal
    public void Inverse_square_reads_high_before_a_square(string id, double sidesAway, double expected) =>
        Check.Near(
            Illuminance.ShortcutErrorOfRectangle(0.3, 0.3, 0.3 * sidesAway),
            expected,
            1e-4,
            id,
            $"{sidesAway} sides"
        );

    [Fact]
    public void Rectangle_on_its_axis() => // L.P-7, formula and numerical integral (derived)
        Check.Near(Illuminance.OnAxisOfRectangle(1, 0.4, 0.2, 0.3), 0.6568167, 1e-7, "L.P-7", $"0.4 x 0.2 m at 0.3 m");

    [Theory]
    [InlineData("L.P-8a", 1, 1, 0.199825, 1e-4)] // Siegel and Howell, 4th ed. p. 843 (published, second-hand)
    [InlineData("L.P-8a", 2, 2, 0.415253, 1e-4)]
    [InlineData("L.P-8b", 1, 2, 0.285875, 1e-6)] // formula (derived)
    public void Equal_parallel_rectangles(string id, double x, double y, double expected, double tolerance)
    {
        Check.Near(ViewFactors.EqualParallelRectangles(x, y, 1), expected, tolerance, id, $"X {x}, Y {y}");
        Check.Near(
            ViewFactors.CoaxialExchangeM2(x / 2, y / 2, x / 2, y / 2, 1) / x / y,
            expected,
            tolerance,
            id + " by the general form",
            $"X {x}, Y {y}"
        );
    }

    [Fact]
    public void Coaxial_discs() => // L.P-9a, Siegel and Howell, 4th ed. p. 845 (published, second-hand)
        Check.Near(ViewFactors.CoaxialDiscs(0.1, 0.2, 0.5), 0.133931, 1e-4, "L.P-9a", $"r1 0.1, r2 0.2, h 0.5");

    [Fact]
    public void Faces_of_a_cube_see_all_there_is() // L.P-10, formulas (derived)
    {
        var adjacent = ViewFactors.PerpendicularRectangles(1, 1, 1);
        Check.Near(adjacent, 0.200044, 1e-6, "L.P-10", $"unit cube");
        Check.Near(ViewFactors.EqualParallelRectangles(1, 1, 1) + (4 * adjacent), 1, 1e-6, "L.P-10", $"unit cube");
    }

    [Theory]
    [InlineData("L.P-11a", 0.98, 0.05, 14.203)] // Labsphere, technical guide on integrating spheres, 1.2.1 (derived)
    [InlineData("L.P-11a", 0.99, 0.02, 33.22)]
    [InlineData("L.P-11a", 0.80, 0.05, 3.333)]
    public void Cavity_multiplier(string id, double reflectance, double port, double expected) =>
        Check.Near(
            IntegratingCavity.Multiplier(reflectance, port),
            expected,
            expected > 20 ? 5e-3 : 1e-3,
            id,
            $"ρ {reflectance}, f {port}"
        );

    [Theory]
    [InlineData("L.P-12a", 0.60, 0.4545)] // formula (derived)
    [InlineData("L.P-12a", 0.95, 0.8696)]
    [InlineData("L.P-12b", 0.85, 0.6897)]
    [InlineData("L.P-12b", 0.98, 0.9434)]
    public void Cavity_exit(string id, double reflectance, double expected) =>
        Check.Near(IntegratingCavity.ExitFraction(reflectance, 0.25), expected, 1e-4, id, $"f 0.25, ρ {reflectance}");

    [Theory]
    [InlineData("L.P-13a", 120, 1.0000, 0.31831)] // formula (derived)
    [InlineData("L.P-13a", 60, 4.8188, 0.92610)]
    public void Beam_of_a_width(string id, double width, double exponent, double intensity)
    {
        var m = Emission.BeamExponent(width * Degree);
        Check.Near(m, exponent, 1e-4, id, $"{width} degrees");
        Check.Near(Emission.PeakIntensityPerLumen(m), intensity, 1e-4, id, $"{width} degrees");
    }

    [Fact]
    public void Ten_thousand_lumens_at_two_metres() // L.P-13c, formula (derived)
    {
        var candela = 10000 * Emission.PeakIntensityPerLumen(1);
        Check.Near(candela, 3183, 3.2, "L.P-13c", $"10000 lm Lambertian");
        Check.Near(candela / 4, 796, 0.8, "L.P-13c", $"at 2 m");
        Check.Near(Exposure.ValueAtIso100(candela / 4, 250), 8.31, 0.005, "L.P-13c", $"at 2 m");
    }

    [Theory]
    [InlineData("L.P-14a", 10, 0.9406)] // formula (derived)
    [InlineData("L.P-14a", 30, 0.5625)]
    [InlineData("L.P-14a", 45, 0.2500)]
    [InlineData("L.P-14b", 20, 0.7797)]
    [InlineData("L.P-14b", 60, 0.0625)]
    public void Flat_source_falls_off_with_the_fourth_power(string id, double degrees, double expected) =>
        Check.Near(Emission.RelativeIlluminanceOnPlane(degrees * Degree), expected, 1e-4, id, $"{degrees} degrees");
}
