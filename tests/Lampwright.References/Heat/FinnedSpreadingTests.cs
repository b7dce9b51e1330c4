using Lampwright.Heat;
using Lampwright.Heat.Grid;
using Xunit;

namespace Lampwright.References.Heat;

/// <summary>Spreading over fins that carry heat along themselves, against the grid, which knows nothing of waves.</summary>
public class FinnedSpreadingTests
{
    private static readonly double Side = 0.1;
    private static readonly double PowerW = 50;

    public static TheoryData<double, double, int, double, double, double, double, double> Sinks =>
        new()
        {
            // base, fin, count, height, film, conductivity, source centre across and along; the source is 20 × 20 mm
            { 0.012, 0.002, 11, 0.032, 60, 200, 0.05, 0.05 },
            { 0.008, 0.002, 21, 0.032, 60, 200, 0.05, 0.05 },
            { 0.006, 0.002, 11, 0.032, 60, 200, 0.05, 0.05 },
            { 0.004, 0.002, 21, 0.032, 60, 200, 0.05, 0.05 },
            { 0.003, 0.001, 21, 0.032, 60, 200, 0.05, 0.05 },
            { 0.002, 0.001, 21, 0.032, 60, 200, 0.05, 0.05 },
            { 0.003, 0.001, 21, 0.032, 60, 200, 0.025, 0.03 },
            { 0.004, 0.001, 11, 0.032, 60, 200, 0.05, 0.05 },
            { 0.004, 0.001, 33, 0.050, 6, 200, 0.05, 0.05 },
            { 0.003, 0.0015, 26, 0.025, 40, 140, 0.05, 0.05 },
        };

    [Theory]
    [MemberData(nameof(Sinks))]
    public void Rises_under_a_source_agree_with_the_grid_within_1_percent(
        double baseM,
        double finM,
        int count,
        double heightM,
        double film,
        double conductivity,
        double across,
        double along
    )
    {
        var (mean, centre) = Grid(baseM, finM, count, heightM, film, conductivity, across, along);
        var gap = (Side - count * finM) / (count - 1);
        var efficiency = Fin.PlateEfficiency(film, conductivity, finM, heightM);
        var outline = film * (count - 1) * (gap + 2 * heightM * efficiency) / Side;
        var foot = new Footprint(across, along, 0.02, 0.02);
        var fins = new SpreadingFins(Side, count, finM, heightM);

        Assert.InRange(Series(foot, fins, false) / mean, 0.99, 1.01);
        Assert.InRange(Series(foot, fins, true) / centre, 0.99, 1.01);

        // The even film, which this replaces, lies above: that is why it was on the safe side, and why it was not good enough.
        Assert.True(Series(foot, null, false) > 1.009 * mean);

        double Series(Footprint probe, SpreadingFins? under, bool local) =>
            PowerW
            * new Spreading(Side, Side, baseM, [probe], probe, local, under).ResistanceKPerW(conductivity, outline);
    }

    [Fact]
    public void A_sink_says_which_film_its_spreading_took()
    {
        var plate = new SinkSpec
        {
            AcrossM = Side,
            AlongM = Side,
            BaseThicknessM = 0.004,
            ConductivityWPerMK = 200,
            Footprints = [new(0.05, 0.05, 0.02, 0.02)],
        };
        Assert.Equal("series, even film", SinkModel.Prepare(plate).SpreadingMethod);
        var finned = plate with { FinCount = 21, FinHeightM = 0.03, FinThicknessM = 0.001 };
        Assert.Equal("series, fins that carry heat along", SinkModel.Prepare(finned).SpreadingMethod);
    }

    [Fact]
    public void An_even_wave_and_fins_without_height_feel_the_even_film()
    {
        Span<double> films = stackalloc double[2];
        new SpreadingFins(Side, 20, 0.001, 0.03).Films(3.5, [0, 200], films);
        Assert.Equal(3.5, films[0]);
        Assert.True(films[1] > 3.5);
        new SpreadingFins(Side, 20, 0.001, 1e-9).Films(3.5, [0, 200], films);
        Assert.Equal(3.5, films[1], 1e-3);
    }

    private static (double Mean, double Centre) Grid(
        double baseM,
        double finM,
        int count,
        double heightM,
        double film,
        double conductivity,
        double across,
        double along
    )
    {
        var spec = new GridSpec
        {
            AcrossM = Side,
            AlongM = Side,
            BaseThicknessM = baseM,
            ConductivityWPerMK = conductivity,
            Fins = GridSpec.EvenFins(Side, finM, (Side - finM) / (count - 1)),
            FinHeightM = heightM,
            Films = new() { BelowWPerM2K = film, FinSidesWPerM2K = film },
            Sources = [new(across, along, 0.02, 0.02, PowerW)],
            CellM = 0.0008,
        };
        var solution = GridSolver.Solve(spec).Solution;
        Assert.NotNull(solution);
        Assert.Equal(count, spec.Fins.Count);
        return (solution.Sources[0].MeanK, solution.Sources[0].CentreK);
    }
}
