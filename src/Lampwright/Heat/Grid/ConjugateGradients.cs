using System.Buffers;

namespace Lampwright.Heat.Grid;

/// <summary>Conjugate gradients in double precision, preconditioned by one V-cycle in single precision.</summary>
/// <remarks>
/// Source: Hestenes and Stiefel 1952; multigrid as preconditioner: Tatebe 1993. Sums are taken part by part in order, so that the result does not
/// hang on who computed which part.
/// </remarks>
internal sealed class ConjugateGradients : IDisposable
{
    private readonly GridModel model;
    private readonly GridEffort effort;
    private readonly CycleLevel level;
    private readonly (double One, double Two)[] partial;
    private readonly double[] x;
    private readonly double[] r;
    private readonly double[] p;
    private readonly double[] q;

    internal ConjugateGradients(GridModel model, GridEffort effort)
    {
        (this.model, this.effort, level) = (model, effort, model.Cycle.Finest);
        partial = new (double, double)[level.Parts];
        x = ArrayPool<double>.Shared.Rent(level.Grid.Length);
        r = ArrayPool<double>.Shared.Rent(level.Grid.Length);
        p = ArrayPool<double>.Shared.Rent(level.Grid.Length);
        q = ArrayPool<double>.Shared.Rent(level.Grid.Length);
    }

    /// <summary>Rises of the cells, K, until this is disposed of.</summary>
    internal double[] Rises => x;

    /// <summary>Iterations done in the last solve.</summary>
    internal int Iterations { get; private set; }

    /// <summary>Root of squares of what is left, over that of what enters; from the answer itself.</summary>
    internal double Residual { get; private set; }

    /// <summary>Heat that leaves through films, W.</summary>
    internal double FilmW { get; private set; }

    /// <summary>Solves; true when it came to rest.</summary>
    /// <param name="work">Who helps.</param>
    /// <param name="heat">Heat that enters, W, by row.</param>
    internal bool Solve(SharedWork work, Dictionary<int, double[]> heat)
    {
        // Sums of squares and heat are taken in the order of rows, so that they are the same every time.
        double square = 0,
            enters = 0;
        foreach (var (_, cells) in heat.OrderBy(h => h.Key))
        {
            foreach (var watts in cells)
            {
                square += watts * watts;
                enters += watts;
            }
        }

        // The cycle sees numbers near 1, whatever the power.
        var (start, scale) = (Math.Sqrt(square), 1 / Math.Sqrt(square));
        Over(
            work,
            (from, to) =>
            {
                ConjugateKernels.Begin(level, x, r, heat, scale, from, to);
                return default;
            }
        );
        double rho = 0,
            left = start;
        for (Iterations = 0; Iterations < effort.MostIterations; )
        {
            model.Cycle.Run(work);
            var next = Over(work, (from, to) => (ConjugateKernels.Dot(level, r, from, to), 0)).One;
            var beta = Iterations == 0 ? 0 : next / rho;
            rho = next;
            var curve = Over(work, (from, to) => (ConjugateKernels.Direct(level, p, q, beta, from, to), 0)).One;
            if (!(rho > 0) || !(curve > 0))
            {
                break;
            }

            var alpha = rho / curve;
            var (squares, sum) = Over(
                work,
                (from, to) => ConjugateKernels.Advance(level, x, r, p, q, alpha, scale, from, to)
            );
            left = Math.Sqrt(squares);
            Iterations++;
            if (left <= effort.Residual * start && Math.Abs(sum) <= 1e-7 * enters)
            {
                break;
            }
        }

        // What counts is the answer itself, not what the recurrence held it to be.
        var (true2, film) = Over(work, (from, to) => ConjugateKernels.Check(level, x, q, heat, from, to));
        (Residual, FilmW) = (Math.Sqrt(true2) / start, film);
        return left <= effort.Residual * start
            && Residual <= 10 * effort.Residual
            && Math.Abs(film - enters) <= 1e-6 * enters;
    }

    /// <summary>Gives the fields back.</summary>
    public void Dispose()
    {
        foreach (var field in new[] { x, r, p, q })
        {
            ArrayPool<double>.Shared.Return(field);
        }
    }

    private (double One, double Two) Over(SharedWork work, Func<int, int, (double, double)> pass)
    {
        work.Do(
            level.Parts,
            part =>
                partial[part] = pass(part * level.RowsAPart, Math.Min((part + 1) * level.RowsAPart, level.Grid.Rows))
        );
        var (one, two) = (0.0, 0.0);
        foreach (var (a, b) in partial)
        {
            (one, two) = (one + a, two + b);
        }

        return (one, two);
    }
}
