using Lampwright.Heat;
using Lampwright.Heat.Grid;

namespace Lampwright.References.Heat;

/// <summary>The grid and the series against CalculiX (Debian: calculix-ccx), hexahedra on the same cells, and against derived rows.</summary>
public sealed class GridTests
{
    private static readonly GridSpec Plate = new()
    {
        AcrossM = 0.12,
        AlongM = 0.09,
        BaseThicknessM = 0.006,
        ConductivityWPerMK = 205,
        Films = new() { BelowWPerM2K = 300 },
        Sources =
        [
            new(0.036, 0.030, 0.024, 0.016, 40),
            new(0.090, 0.060, 0.016, 0.020, 30),
            new(0.062, 0.078, 0.012, 0.012, 20),
        ],
        CellM = 2e-3,
    };

    private static readonly GridSpec Finned = new()
    {
        AcrossM = 0.042,
        AlongM = 0.04,
        BaseThicknessM = 0.005,
        ConductivityWPerMK = 200,
        Fins = GridSpec.EvenFins(0.042, 0.002, 0.005),
        FinHeightM = 0.02,
        Films = new()
        {
            BelowWPerM2K = 60,
            FinSidesWPerM2K = 60,
            FinTipsWPerM2K = 60,
        },
        Sources = [new(0.015, 0.022, 0.012, 0.010, 25), new(0.032, 0.010, 0.008, 0.008, 10)],
        CellM = 1e-3,
    };

    // Three sources off the middle, 2 mm. [solver: CalculiX, DC3D8]
    [Fact]
    public void Plate_with_three_sources_agrees_with_CalculiX()
    {
        var top = Top(Plate);
        var grid = GridSolver.Solve(Plate).Solution!;
        var series = Series(Plate);
        var (peak, _, _) = series.Peak();
        var greatest = top.Cast<double>().Max();
        Check.Relative("grid, greatest rise", greatest, grid.MaxRiseK, 0.01, "plate, three sources, 2 mm");
        Check.Relative("series, greatest rise", greatest, peak, 0.01, "plate, three sources, 2 mm");
        for (var i = 0; i <= 60; i += 6)
        {
            for (var j = 0; j <= 45; j += 5)
            {
                var (x, y) = (i * 2e-3, j * 2e-3);
                Check.Absolute(
                    $"grid at {x}, {y}",
                    top[i, j],
                    grid.RiseAt(x, y),
                    0.01 * greatest,
                    "plate, three sources"
                );
                Check.Absolute(
                    $"series at {x}, {y}",
                    top[i, j],
                    series.RiseAt(x, y),
                    0.01 * greatest,
                    "plate, three sources"
                );
            }
        }
    }

    // Nine fins of 2 mm, two sources off the middle, 1 mm. [solver: CalculiX, DC3D8]
    [Fact]
    public void Sink_with_fins_agrees_with_CalculiX()
    {
        var top = Top(Finned);
        var grid = GridSolver.Solve(Finned).Solution!;
        var greatest = top.Cast<double>().Max();
        Check.Relative("grid, greatest rise", greatest, grid.MaxRiseK, 0.005, "sink with nine fins, 1 mm");
        for (var i = 0; i <= 42; i += 6)
        {
            for (var j = 0; j <= 40; j += 5)
            {
                var (x, y) = (i * 1e-3, j * 1e-3);
                Check.Absolute(
                    $"grid at {x}, {y}",
                    top[i, j],
                    grid.RiseAt(x, y),
                    0.005 * greatest,
                    "sink with nine fins"
                );
            }
        }
    }

    // Films on every face, so that no face of the two programs can be mistaken for another. [solver: CalculiX, DC3D8]
    [Fact]
    public void Films_on_all_faces_agree_with_CalculiX()
    {
        var spec = Finned with
        {
            Films = new()
            {
                BelowWPerM2K = 90,
                FinSidesWPerM2K = 30,
                FinTipsWPerM2K = 250,
                AboveWPerM2K = 40,
                AcrossEdgesWPerM2K = 400,
                AlongEdgesWPerM2K = 150,
            },
        };
        var top = Top(spec);
        var grid = GridSolver.Solve(spec).Solution!;
        Check.Relative("grid, greatest rise", top.Cast<double>().Max(), grid.MaxRiseK, 0.005, "films on all faces");
        Check.Relative("corner", top[0, 0], grid.RiseAt(0, 0), 0.01, "films on all faces");
        Check.Relative("far corner", top[42, 40], grid.RiseAt(0.042, 0.04), 0.01, "films on all faces");
    }

    // H.SP-08, H.SP-09a, H.SP-09b: exact series; the grid of 1 mm within what its cell allows. [derived]
    [Theory]
    [InlineData("H.SP-08", 100, 100, 8, 200, 500, 50, 50, 20, 20, 0.33736, 0.36628)]
    [InlineData("H.SP-09a", 120, 90, 6, 205, 300, 40, 30, 25, 15, 0.516188, 0.55031)]
    public void Rows_of_spreading(
        string id,
        double a,
        double b,
        double t,
        double k,
        double h,
        double x,
        double y,
        double w,
        double d,
        double mean,
        double centre
    )
    {
        GridSpec spec = new()
        {
            AcrossM = a / 1e3,
            AlongM = b / 1e3,
            BaseThicknessM = t / 1e3,
            ConductivityWPerMK = k,
            Films = new() { BelowWPerM2K = h },
            Sources = [new(x / 1e3, y / 1e3, w / 1e3, d / 1e3, 1)],
            CellM = 1e-3,
        };
        var inputs = $"{a} x {b} x {t} mm, k {k}, h {h}, {w} x {d} mm at ({x},{y})";
        var grid = GridSolver.Solve(spec).Solution!;
        Check.Relative($"{id} grid, mean", mean, grid.Sources[0].MeanK, 3e-3, inputs);
        Check.Relative($"{id} grid, centre", centre, grid.Sources[0].CentreK, 2e-3, inputs);
        Check.Relative($"{id} series, centre", centre, Series(spec).RiseAt(x / 1e3, y / 1e3), 2e-5, inputs);
    }

    // H.SP-09b: mutual, at a point, at the corner; exact series. [derived]
    [Fact]
    public void Rows_of_mutual_spreading()
    {
        const string Inputs = "120 x 90 x 6 mm, k 205, h 300, 25 x 15 mm at (40,30)";
        GridSpec spec = new()
        {
            AcrossM = 0.12,
            AlongM = 0.09,
            BaseThicknessM = 0.006,
            ConductivityWPerMK = 205,
            Films = new() { BelowWPerM2K = 300 },
            Sources = [new(0.04, 0.03, 0.025, 0.015, 1), new(0.085, 0.06, 0.025, 0.015, 0)],
            CellM = 1e-3,
        };
        var influence = GridSolver.Influence(spec, [(0.08, 0.06), (0, 0)]).Solution!;
        Check.Relative("H.SP-09b mutual", 0.24483, influence.SourceMeans[1, 0], 1e-3, Inputs);
        Check.Relative("H.SP-09b at (80,60)", 0.25200, influence.Points[0, 0], 1e-3, Inputs);
        Check.Relative("H.SP-09b corner", 0.38921, influence.Points[1, 0], 1e-3, Inputs);
    }

    // Plate 100 x 100 x 8 mm, k 200, film 1500 below, 100 W over 20 x 20 mm in the middle: Fourier series. [published with the project's problems]
    [Fact]
    public void Centred_plate()
    {
        SpreadingPeak series = new(0.1, 0.1, 0.008, 200, 1500, [new(0.05, 0.05, 0.02, 0.02, 100)]);
        Check.Relative("greatest rise", 22.42671, series.Peak().RiseK, 1e-6, "100 W over 20 x 20 mm");
        Check.Relative("corner", 4.374726, series.RiseAt(0, 0), 1e-6, "100 W over 20 x 20 mm");
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

    private static double[,] Top(GridSpec spec)
    {
        Assert.SkipUnless(File.Exists(CalculixDeck.Program), "CalculiX is not installed (Debian: calculix-ccx).");
        var folder = Directory.CreateTempSubdirectory("lampwright-calculix-").FullName;
        try
        {
            CalculixDeck.Write(spec, Path.Combine(folder, "grid.inp"), spec.CellM);
            CalculixDeck.Run(folder, "grid");
            return CalculixDeck.Top(spec, Path.Combine(folder, "grid.dat"), spec.CellM);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
