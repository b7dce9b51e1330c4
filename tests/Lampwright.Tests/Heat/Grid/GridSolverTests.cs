using Lampwright.Heat;
using Lampwright.Heat.Grid;
using static Lampwright.Tests.Heat.Grid.GridSamples;

namespace Lampwright.Tests.Heat.Grid;

public sealed class GridSolverTests
{
    [Fact]
    public void Heat_over_the_whole_face_crosses_the_plate_as_through_a_wall()
    {
        var spec = Plate with { Sources = [new(0.06, 0.045, 0.12, 0.09, 50)], CellM = 3e-3 };
        var area = 0.12 * 0.09;
        var expected = 50 * (0.006 / (205 * area) + 1 / (300 * area));
        var solution = Solved(spec);
        Assert.Equal(expected, solution.MaxRiseK, 1e-6 * expected);
        Assert.Equal(expected, solution.Sources[0].MeanK, 1e-6 * expected);
    }

    [Fact]
    public void Heat_leaves_upward_too_where_the_face_has_a_film()
    {
        // Face at T: P/A = h1·T + T/(t/k + 1/h2)
        var spec = Plate with
        {
            Sources = [new(0.06, 0.045, 0.12, 0.09, 50)],
            Films = new() { BelowWPerM2K = 300, AboveWPerM2K = 900 },
            CellM = 1e-3,
        };
        var expected = 50 / (0.12 * 0.09) / (900 + 1 / (0.006 / 205 + 1.0 / 300));
        var solution = Solved(spec);
        Assert.Equal(expected, solution.MaxRiseK, 1e-4 * expected);
        Assert.Equal(50, solution.HeatOutW, 5e-5);
    }

    [Theory]
    [InlineData(2, 0.004)]
    [InlineData(1, 0.001)]
    public void Grid_agrees_with_the_series(double cellMm, double within)
    {
        var peak = Series(Plate).Peak();
        var solution = Solved(Plate with { CellM = cellMm / 1e3 });
        Assert.Equal(peak.RiseK, solution.MaxRiseK, within * peak.RiseK);
        Assert.Equal(peak.AcrossM, solution.MaxAcrossM, cellMm / 1e3);
        Assert.Equal(peak.AlongM, solution.MaxAlongM, cellMm / 1e3);
        foreach (var (x, y) in new[] { (0.0, 0.0), (0.12, 0.0), (0.06, 0.045), (0.113, 0.081) })
        {
            var expected = Series(Plate).RiseAt(x, y);
            Assert.Equal(expected, solution.RiseAt(x, y), within * peak.RiseK);
        }
    }

    [Fact]
    public void Error_falls_with_the_square_of_the_cell()
    {
        var exact = Series(Plate).Peak().RiseK;
        double Error(double cellMm) => Math.Abs(Solved(Plate with { CellM = cellMm / 1e3 }).MaxRiseK / exact - 1);
        var (coarse, fine) = (Error(2), Error(1));
        Assert.True(fine < coarse / 3, $"{coarse} to {fine}");
    }

    [Fact]
    public void Fins_converge_as_well_although_their_roots_have_edges()
    {
        var fine = Solved(Sink with { CellM = 0.25e-3 }).MaxRiseK;
        double Error(double cellMm) => Math.Abs(Solved(Sink with { CellM = cellMm / 1e3 }).MaxRiseK / fine - 1);
        Assert.InRange(Error(2), 0, 6e-3);
        Assert.InRange(Error(1), 0, 1.5e-3);
        Assert.InRange(Error(0.5), 0, 5e-4);
    }

    [Fact]
    public void Fins_under_an_evenly_heated_base_do_what_the_formula_says()
    {
        // One fin over its pitch, the half gap on each side as free base: base film and fin side by side.
        const double Film = 40,
            Height = 0.03,
            Thick = 0.002,
            Pitch = 0.008,
            K = 200;
        var m = Math.Sqrt(2 * Film / (K * Thick));
        var corrected = Height + Thick / 2;
        var perDepth = Film * (Pitch - Thick) + 2 * Film * corrected * Math.Tanh(m * corrected) / (m * corrected);
        var spec = new GridSpec
        {
            AcrossM = Pitch,
            AlongM = 0.01,
            BaseThicknessM = 0.006,
            ConductivityWPerMK = K,
            Fins = [new((Pitch - Thick) / 2, Thick)],
            FinHeightM = Height,
            Films = new()
            {
                BelowWPerM2K = Film,
                FinSidesWPerM2K = Film,
                FinTipsWPerM2K = Film,
            },
            Sources = [new(Pitch / 2, 0.005, Pitch, 0.01, 1)],
            CellM = 0.5e-3,
        };
        var expected = 1 / (perDepth * 0.01) + 0.006 / (K * Pitch * 0.01);
        Assert.Equal(expected, Solved(spec).Sources[0].MeanK, 5e-3 * expected);
    }

    [Fact]
    public void Mirrored_problem_has_the_mirrored_answer()
    {
        var mirrored = Sink with
        {
            Fins = [.. Sink.Fins.Select(f => f with { FromM = Sink.AcrossM - f.FromM - f.ThicknessM })],
            Sources =
            [
                .. Sink.Sources.Select(s =>
                    s with
                    {
                        CentreAcrossM = Sink.AcrossM - s.CentreAcrossM,
                        CentreAlongM = Sink.AlongM - s.CentreAlongM,
                    }
                ),
            ],
        };
        var (one, other) = (Solved(Sink), Solved(mirrored));
        Assert.Equal(one.MaxRiseK, other.MaxRiseK, 1e-6);
        Assert.Equal(one.RiseAt(0.01, 0.03), other.RiseAt(0.032, 0.01), 1e-6);
    }

    [Fact]
    public void Influence_is_mutual_and_adds_up_to_the_solution()
    {
        var influence = GridSolver.Influence(Plate, [(0.1, 0.02)]).Solution!;
        Assert.Equal(influence.SourceMeans[0, 1], influence.SourceMeans[1, 0], 2e-4 * influence.SourceMeans[0, 1]);
        var whole = Solved(Plate);
        double Sum(double[,] of, int row) => 40 * of[row, 0] + 30 * of[row, 1];
        Assert.Equal(whole.Sources[1].MeanK, Sum(influence.SourceMeans, 1), 1e-6 * whole.MaxRiseK);
        Assert.Equal(whole.Sources[0].CentreK, Sum(influence.SourceCentres, 0), 1e-6 * whole.MaxRiseK);
        Assert.Equal(whole.RiseAt(0.1, 0.02), Sum(influence.Points, 0), 1e-6 * whole.MaxRiseK);
    }

    [Fact]
    public void More_film_higher_fins_better_metal_are_cooler_and_twice_the_heat_is_twice_the_rise()
    {
        var rise = Solved(Sink).MaxRiseK;
        Assert.True(Solved(Sink with { Films = Sink.Films with { FinSidesWPerM2K = 70 } }).MaxRiseK < rise);
        Assert.True(Solved(Sink with { FinHeightM = 0.025 }).MaxRiseK < rise);
        Assert.True(Solved(Sink with { ConductivityWPerMK = 230, FinConductivityWPerMK = 200 }).MaxRiseK < rise);
        Assert.True(Solved(Sink with { FinConductivityWPerMK = 60 }).MaxRiseK > rise);
        Assert.Equal(2 * rise, Solved(Sink with { Sources = [Sink.Sources[0] with { PowerW = 50 }] }).MaxRiseK, 1e-6);
    }

    [Fact]
    public void A_helper_changes_no_bit()
    {
        var spec = Plate with { CellM = 0.9e-3 };
        var (with, without) = (Solved(spec), Solved(spec, new() { WithHelper = false }));
        Assert.Equal(without.MaxRiseK, with.MaxRiseK, 0.0);
        Assert.Equal(without.HeatOutW, with.HeatOutW, 0.0);
        Assert.Equal(without.Residual, with.Residual, 0.0);
    }

    [Fact]
    public void A_section_shows_the_fins_and_no_air()
    {
        var section = GridSolver.Solve(Sink, sectionsAlongM: [0.022]).Solution!.Sections[0];
        var across = section.AcrossM.Count - 1;
        Assert.Equal(42, across);
        Assert.Equal(25, section.DownM.Count - 1);
        Assert.True(double.IsNaN(section.RisesK[10 * across + 3]));
        Assert.InRange(section.RisesK[10 * across + 1], 1, section.RisesK[1]);
    }

    [Fact]
    public void Many_cells_take_no_more_iterations_than_few()
    {
        Assert.InRange(Solved(Plate).Iterations, 2, 12);
        Assert.InRange(Solved(Plate with { CellM = 0.5e-3 }).Iterations, 2, 12);
        Assert.InRange(Solved(Sink with { CellM = 0.5e-3 }).Iterations, 2, 15);
    }

    private static SpreadingPeak Series(GridSpec spec) =>
        new(
            spec.AcrossM,
            spec.AlongM,
            spec.BaseThicknessM,
            spec.ConductivityWPerMK,
            spec.Films.BelowWPerM2K,
            [.. spec.Sources.Select(s => new Footprint(s.CentreAcrossM, s.CentreAlongM, s.WidthM, s.DepthM, s.PowerW))]
        );
}
