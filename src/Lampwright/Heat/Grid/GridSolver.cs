namespace Lampwright.Heat.Grid;

/// <summary>Steady conduction in a base plate, with or without fins, on a grid of cells.</summary>
/// <remarks>
/// Finite volumes, one even film a face, one conductivity for the base and one for the fins; heat enters evenly through rectangles on the top face.
/// Validity: straight fins along the whole base; films do not hang on the temperature.
/// Source: Patankar, Numerical Heat Transfer and Fluid Flow, 1980, ch. 4 (finite volumes, half-cell resistances).
/// Accuracy: of second order in the cell; 0.1 % of the greatest rise where a source is 20 cells wide (docs/heat.md).
/// Checked by: solver (CalculiX), the exact series, invariant (heat in = heat out, reciprocity).
/// Findings: HEA018 to HEA020 through <see cref="GridFindings"/>.
/// </remarks>
public static class GridSolver
{
    /// <summary>Solves one problem.</summary>
    /// <param name="spec">The shape, its films and its sources.</param>
    /// <param name="effort">How hard to try; null for the usual.</param>
    /// <param name="sectionsAlongM">Where sections across the fins are wanted, m from the edge y = 0.</param>
    /// <returns>The solution, or why there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above zero, a film or a power below zero, or one is no number.</exception>
    public static GridAnswer<GridSolution> Solve(
        GridSpec spec,
        GridEffort? effort = null,
        IReadOnlyList<double>? sectionsAlongM = null
    )
    {
        var tries = effort ?? new GridEffort();
        var (laid, failure) = GridModel.Of(spec, tries);
        using var model = laid;
        if (model is null)
        {
            return new() { Failure = failure };
        }

        using var work = new SharedWork(tries.WithHelper && model.Grid.Cells > LeastToShare);
        return Solve(spec, tries, model, work, [.. spec.Sources.Select(s => s.PowerW)], sectionsAlongM ?? []);
    }

    /// <summary>Rise at each source and point per watt of each source: what draws need instead of a grid of their own.</summary>
    /// <remarks>Conduction is linear in the heat: the rise of a place is the sum over sources of influence times watts.</remarks>
    /// <param name="spec">The shape, its films and its sources; powers are not used.</param>
    /// <param name="points">Points of the top face, m from the edges x = 0 and y = 0.</param>
    /// <param name="effort">How hard to try; null for the usual.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above zero, a film below zero, or a point is not on the base.</exception>
    public static GridAnswer<GridInfluence> Influence(
        GridSpec spec,
        IReadOnlyList<(double AcrossM, double AlongM)> points,
        GridEffort? effort = null
    )
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(points);
        var tries = effort ?? new GridEffort();
        var unit = spec with { Sources = [.. spec.Sources.Select(s => s with { PowerW = 1 })] };
        var (laid, failure) = GridModel.Of(unit, tries);
        using var model = laid;
        if (model is null)
        {
            return new() { Failure = failure };
        }

        using var work = new SharedWork(tries.WithHelper && model.Grid.Cells > LeastToShare);
        var count = unit.Sources.Count;
        var (means, centres, places) = (
            new double[count, count],
            new double[count, count],
            new double[points.Count, count]
        );
        for (var s = 0; s < count; s++)
        {
            var powers = new double[count];
            powers[s] = 1;
            var one = Solve(unit, tries, model, work, powers, []);
            if (one.Solution is not { } solution)
            {
                return new() { Failure = one.Failure };
            }

            for (var to = 0; to < count; to++)
            {
                (means[to, s], centres[to, s]) = (solution.Sources[to].MeanK, solution.Sources[to].CentreK);
            }

            for (var to = 0; to < points.Count; to++)
            {
                places[to, s] = solution.RiseAt(points[to].AcrossM, points[to].AlongM);
            }
        }

        return new() { Solution = new(means, centres, places) };
    }

    /// <summary>Below this a second processor comes too late.</summary>
    private static long LeastToShare => 12_000;

    private static GridAnswer<GridSolution> Solve(
        GridSpec spec,
        GridEffort effort,
        GridModel model,
        SharedWork work,
        double[] powersW,
        IReadOnlyList<double> sectionsAlongM
    )
    {
        var heat = model.Heat(powersW);
        using var gradients = new ConjugateGradients(model, effort);
        var power = powersW.Sum();
        var rest = gradients.Solve(work, heat);
        var outW = gradients.FilmW + (1 - model.ShareInward) * power;
        if (!rest)
        {
            return new()
            {
                Failure = new(
                    GridTrouble.NotConverged,
                    string.Create(
                        System.Globalization.CultureInfo.InvariantCulture,
                        $"After {gradients.Iterations} iterations on {model.Grid.Cells} cells a part of {gradients.Residual:0.0e+0} is still unbalanced."
                    ),
                    model.Grid.Cells,
                    gradients.Iterations,
                    gradients.Residual,
                    (power - outW) / power
                ),
            };
        }

        var surface = new GridSurface(spec, model, gradients.Rises, heat);
        var (max, across, along) = surface.Summit();
        return new()
        {
            Solution = new(surface)
            {
                MaxRiseK = max,
                MaxAcrossM = across,
                MaxAlongM = along,
                Sources =
                [
                    .. spec.Sources.Select(s => new GridSourceRise(
                        surface.Mean(s.CentreAcrossM, s.CentreAlongM, s.WidthM, s.DepthM),
                        surface.RiseAt(s.CentreAcrossM, s.CentreAlongM)
                    )),
                ],
                Cells = model.Grid.Cells,
                Iterations = gradients.Iterations,
                Residual = gradients.Residual,
                PowerW = power,
                HeatOutW = outW,
                Grids = [.. model.Cycle.Grids],
                Sections = [.. sectionsAlongM.Select(y => surface.Section(gradients.Rises, y))],
            },
        };
    }
}

/// <summary>Rise per watt of each source, K/W. First index: where; second: which source heats.</summary>
/// <param name="SourceMeans">Mean over each source.</param>
/// <param name="SourceCentres">Centre of each source.</param>
/// <param name="Points">The points asked for.</param>
public sealed record GridInfluence(double[,] SourceMeans, double[,] SourceCentres, double[,] Points);
