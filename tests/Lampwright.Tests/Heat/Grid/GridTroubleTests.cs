using Lampwright.Heat;
using Lampwright.Heat.Grid;
using static Lampwright.Tests.Heat.Grid.GridSamples;

namespace Lampwright.Tests.Heat.Grid;

public sealed class GridTroubleTests
{
    [Fact]
    public void A_solve_that_does_not_come_to_rest_says_where_it_stood_and_gives_no_value()
    {
        var needed = Solved(Sink).Iterations;
        var answer = GridSolver.Solve(Sink, new() { MostIterations = needed - 1 });
        Assert.Null(answer.Solution);
        Assert.Equal(needed - 1, answer.Failure!.Iterations);
        Assert.InRange(answer.Failure.Residual, 1e-8, 1);
        Assert.True(double.IsFinite(answer.Failure.BalanceError));
        var finding = GridFindings.Of(answer.Failure, "sink.main", "hot");
        Assert.Equal(HeatRules.GridNotConverged, finding.Rule);
        Assert.Contains($"{needed - 1} iterations", finding.Message, StringComparison.Ordinal);
        Assert.Null(GridSolver.Solve(Sink, new() { MostIterations = needed }).Failure);
    }

    [Fact]
    public void Too_many_cells_are_told_before_they_take_memory()
    {
        var cells = Solved(Plate).Cells;
        var answer = GridSolver.Solve(Plate, new() { MostCells = cells - 1 });
        Assert.Equal(HeatRules.GridTooFine, GridFindings.Of(answer.Failure!, "sink.main").Rule);
        Assert.Null(GridSolver.Solve(Plate, new() { MostCells = cells }).Failure);
        Assert.Equal(GridTrouble.TooManyCells, GridSolver.Solve(Plate with { CellM = 1e-9 }).Failure!.Trouble);
        Assert.Equal(GridTrouble.TooManyCells, GridSolver.Influence(Plate with { CellM = 1e-9 }, []).Failure!.Trouble);
    }

    public static TheoryData<string> IllStated =>
        ["no film", "no heat", "no source", "source beyond", "fins overlap", "fins beyond", "covered"];

    [Theory]
    [MemberData(nameof(IllStated))]
    public void A_problem_without_an_answer_is_told(string what)
    {
        var spec = what switch
        {
            "no film" => Sink with { Films = new() },
            "no heat" => Sink with { Sources = [Sink.Sources[0] with { PowerW = 0 }] },
            "no source" => Sink with { Sources = [] },
            "source beyond" => Sink with { Sources = [Sink.Sources[0] with { CentreAcrossM = 0.0059 }] },
            "fins overlap" => Sink with { Fins = [new(0, 0.002), new(0.0019, 0.002)] },
            "fins beyond" => Sink with { Fins = [new(0.0401, 0.002)] },
            _ => Sink with
            {
                // One fin as wide as the base: no gap, tips without film.
                Fins = [new(0, 0.042)],
                Films = new() { BelowWPerM2K = 50, FinSidesWPerM2K = 50 },
            },
        };
        var answer = GridSolver.Solve(spec);
        Assert.Null(answer.Solution);
        Assert.Equal(HeatRules.GridIllStated, GridFindings.Of(answer.Failure!, "sink.main").Rule);
    }

    [Fact]
    public void Just_inside_the_base_and_touching_fins_are_fine()
    {
        Assert.Null(GridSolver.Solve(Sink with { Sources = [Sink.Sources[0] with { CentreAcrossM = 0.006 }] }).Failure);
        Assert.Null(
            GridSolver.Solve(Sink with { Fins = [new(0, 0.002), new(0.002, 0.002), new(0.04, 0.002)] }).Failure
        );
    }

    [Fact]
    public void Numbers_that_make_no_sense_throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => GridSolver.Solve(Plate with { BaseThicknessM = -1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => GridSolver.Solve(Plate with { AcrossM = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => GridSolver.Solve(Plate with { CellM = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            GridSolver.Solve(Plate with { Films = new() { BelowWPerM2K = -1 } })
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            GridSolver.Solve(Plate with { Sources = [Plate.Sources[0] with { PowerW = double.NaN }] })
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => GridSolver.Solve(Sink with { FinHeightM = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solved(Plate).RiseAt(0.121, 0.01));
    }

    [Fact]
    public void Work_in_parts_does_each_part_once_and_tells_what_went_wrong()
    {
        using var work = new SharedWork(withHelper: true);
        var done = new int[1000];
        for (var round = 0; round < 50; round++)
        {
            work.Do(done.Length, part => Interlocked.Increment(ref done[part]));
        }

        Assert.All(done, d => Assert.Equal(50, d));
        var told = Assert.Throws<InvalidOperationException>(() =>
            work.Do(
                10,
                part => throw new ArgumentException(part.ToString(System.Globalization.CultureInfo.InvariantCulture))
            )
        );
        Assert.IsType<ArgumentException>(told.InnerException);
    }
}
