namespace Lampwright.Heat.Grid;

/// <summary>One V-cycle over all grids, from the finest down to one that is solved directly and back: the preconditioner.</summary>
/// <remarks>
/// Geometric multigrid of cell centres: the balance is set up anew on each grid, the ways up and down are transposes of each other, the smoother is
/// the same before and after. So the cycle is symmetric, as the conjugate gradients need it. Cells are joined by twos in the directions in which
/// they are bound tightest, within the faces of the shape: metal is never joined with air, nor a fin with its neighbour.
/// Source: Trottenberg, Oosterlee and Schüller 2001, ch. 2 and 5; Wesseling 1988 (cell-centred).
/// </remarks>
internal sealed class GridCycle : IDisposable
{
    private readonly List<CycleLevel> levels = [];
    private readonly List<GridTransfer> ways = [];
    private readonly BandedFactor coarsest;

    internal GridCycle(GridSpec spec, GridLevel finest)
    {
        for (var grid = finest; ; )
        {
            levels.Add(new CycleLevel(grid));
            if (grid.Cells * BandedFactor.Band(grid) <= DirectWork || Coarser(spec, grid) is not { } coarse)
            {
                coarsest = new BandedFactor(grid);
                break;
            }

            ways.Add(new GridTransfer(grid, coarse));
            levels[^1].Steps = Smoothing.Steps(grid, coarse);
            grid = coarse;
        }
    }

    /// <summary>Multiplications that a direct solve of the coarsest grid may take each way.</summary>
    private static int DirectWork => 20_000;

    /// <summary>The finest grid: B goes in, X comes out.</summary>
    internal CycleLevel Finest => levels[0];

    /// <summary>Grids, finest first, as cells across, down, along.</summary>
    internal IEnumerable<(int Across, int Down, int Along)> Grids =>
        levels.Select(l => (l.Grid.Across.Count, l.Grid.Down.Count, l.Grid.Along.Count));

    /// <summary>Gives the fields of all grids back.</summary>
    public void Dispose() => levels.ForEach(l => l.Dispose());

    /// <summary>X = M·B.</summary>
    internal void Run(SharedWork work) => Run(work, 0);

    private static GridLevel? Coarser(GridSpec spec, GridLevel grid)
    {
        GridAxis[] axes = [grid.Across, grid.Down, grid.Along];
        var open = axes.Where(a => a.CanJoin).ToList();
        if (open.Count == 0)
        {
            return null;
        }

        // Cells much longer one way are bound so loosely that way that joining them gains nothing yet.
        var most = 1.5 * open.Min(a => a.LeastJoinable);
        GridAxis Next(GridAxis axis) => axis.CanJoin && axis.LeastJoinable <= most ? axis.Joined() : axis;
        return new GridLevel(spec, grid.FinStretch, Next(axes[0]), Next(axes[1]), Next(axes[2]));
    }

    private void Run(SharedWork work, int depth)
    {
        var level = levels[depth];
        if (depth == ways.Count)
        {
            coarsest.Solve(level);
            return;
        }

        var (way, coarse, steps) = (ways[depth], levels[depth + 1], level.Steps);
        void Rows(CycleLevel of, Action<int, int, int> pass) =>
            work.Do(
                of.Parts,
                part => pass(part, part * of.RowsAPart, Math.Min((part + 1) * of.RowsAPart, of.Grid.Rows))
            );

        Rows(
            level,
            (_, from, to) =>
                SmoothKernels.FirstTwo(level, level.B, level.X, steps[0].Gamma, steps[1].Beta, steps[1].Gamma, from, to)
        );
        if (steps.Count > 2)
        {
            Rows(level, (_, from, to) => SmoothKernels.First(level, level.B, level.Y, steps[0].Gamma, from, to));
        }

        for (var n = 2; n < steps.Count; n++)
        {
            Step(n);
        }

        Rows(level, (_, from, to) => SmoothKernels.Residual(level, level.B, level.X, level.Y, from, to));
        Rows(
            coarse,
            (part, from, to) =>
                TransferKernels.Down(way, level, coarse, level.Y, coarse.Lines, part * coarse.LineLength, from, to)
        );
        Run(work, depth + 1);
        Rows(
            level,
            (part, from, to) =>
                TransferKernels.Up(way, level, coarse, level.X, level.Lines, part * level.LineLength, from, to)
        );
        for (var n = 0; n < steps.Count; n++)
        {
            Step(n);
        }

        void Step(int n)
        {
            Rows(
                level,
                (_, from, to) =>
                    SmoothKernels.Step(level, level.B, level.X, level.Y, steps[n].Beta, steps[n].Gamma, from, to)
            );
            level.Turn();
        }
    }
}
