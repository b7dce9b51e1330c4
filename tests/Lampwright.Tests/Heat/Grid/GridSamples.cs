using Lampwright.Heat.Grid;

namespace Lampwright.Tests.Heat.Grid;

/// <summary>Plates and sinks that several tests use.</summary>
internal static class GridSamples
{
    /// <summary>A plate with two sources off its middle.</summary>
    internal static readonly GridSpec Plate = new()
    {
        AcrossM = 0.12,
        AlongM = 0.09,
        BaseThicknessM = 0.006,
        ConductivityWPerMK = 205,
        Films = new() { BelowWPerM2K = 300 },
        Sources = [new(0.04, 0.03, 0.024, 0.016, 40), new(0.09, 0.06, 0.016, 0.02, 30)],
        CellM = 2e-3,
    };

    /// <summary>A small sink with fins 2 mm thick.</summary>
    internal static readonly GridSpec Sink = new()
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
        Sources = [new(0.015, 0.022, 0.012, 0.01, 25)],
        CellM = 1e-3,
    };

    internal static GridSolution Solved(GridSpec spec, GridEffort? effort = null)
    {
        var answer = GridSolver.Solve(spec, effort);
        Assert.Null(answer.Failure);
        return answer.Solution!;
    }
}
