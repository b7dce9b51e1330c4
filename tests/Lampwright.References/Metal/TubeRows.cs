using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>Square and rectangular tube: rows of EN 10219-2:2006, annex C, from memory (section, mass per metre, second moment), corners by its table 3 (second-hand).</summary>
public sealed class TubeRows
{
    // Corners 2.0 T outside and 1.0 T inside, as the annex computes; density 7.85. Half of the last digit each.
    [Theory]
    [InlineData(40, 40, 3, 4.21, 3.30, 9.32)]
    [InlineData(50, 50, 3, 5.41, 4.25, 19.5)]
    [InlineData(60, 40, 3, 5.41, 4.25, 25.4)]
    [InlineData(100, 100, 5, 18.4, 14.4, 271)]
    public void Section_mass_and_stiffness(double h, double b, double t, double cm2, double kgPerM, double cm4)
    {
        var section = new TubeSection(b / 1000, h / 1000, t / 1000, 2 * t / 1000);
        var row = FormattableString.Invariant($"EN 10219-2 {h} × {b} × {t}");
        Near.Is(cm2, section.AreaM2 * 1e4, cm2 > 10 ? 0.05 : 0.005, row + " cm²");
        Near.Is(kgPerM, section.AreaM2 * 7850, kgPerM > 10 ? 0.05 : 0.005, row + " kg/m");
        Near.Is(
            cm4,
            section.AcrossHeightM4 * 1e8,
            cm4 > 100 ? 0.5
                : cm4 > 10 ? 0.05
                : 0.005,
            row + " cm⁴"
        );
    }

    [Theory]
    [InlineData(2, 3.2, 4.8)]
    [InlineData(6, 9.6, 14.4)]
    [InlineData(8, 16, 24)]
    [InlineData(12.5, 30, 45)]
    public void Corners_by_the_wall(double t, double least, double most)
    {
        var (low, high) = TubeCorner.Range(t / 1000);
        Near.Is(least, low * 1000, 1e-9, "EN 10219-2 table 3, least");
        Near.Is(most, high * 1000, 1e-9, "EN 10219-2 table 3, most");
    }
}
