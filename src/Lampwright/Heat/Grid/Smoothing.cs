namespace Lampwright.Heat.Grid;

/// <summary>How many steps of smoothing a grid needs before the next coarser one can take over, and their coefficients.</summary>
/// <remarks>
/// Chebyshev's polynomial over the part of the spectrum that the coarser grid does not carry. Where cells are long in one direction because the
/// fins keep the others from being joined, that part reaches lower and more steps are taken.
/// Source: Adams, Brezina, Hu and Tuminaro 2003, J. Comput. Phys. 188:593 (polynomial smoothers), from memory.
/// </remarks>
internal static class Smoothing
{
    // Every row of a balance is dominated by its diagonal: no eigenvalue of the scaled balance is above 2.
    private static readonly double Highest = 2;
    private static readonly double Wanted = 0.36;
    private static readonly int Most = 8;

    /// <summary>Coefficients (beta, gamma) of each step.</summary>
    internal static IReadOnlyList<(float Beta, float Gamma)> Steps(GridLevel fine, GridLevel coarse)
    {
        var lowest = Lowest(fine, coarse);
        double middle = (Highest + lowest) / 2,
            half = (Highest - lowest) / 2,
            sigma = middle / half;
        var degree = 2;
        while (degree < Most && 1 / Math.Cosh(degree * Math.Acosh(sigma)) > Wanted)
        {
            degree++;
        }

        var steps = new (float, float)[degree];
        steps[0] = (0, (float)(1 / middle));
        var rho = 1 / sigma;
        for (var n = 1; n < degree; n++)
        {
            var next = 1 / (2 * sigma - rho);
            steps[n] = ((float)(next * rho), (float)(2 * next / half));
            rho = next;
        }

        return steps;
    }

    /// <summary>Least eigenvalue, of the balance over its diagonal, of a pattern that the coarser grid cannot show.</summary>
    private static double Lowest(GridLevel fine, GridLevel coarse)
    {
        var lowest = 1.0;
        void See(double one, double other, double diagonal)
        {
            // At a face the neighbour beyond is taken as if it were there.
            var (both, all) =
                one > 0 && other > 0 ? (one + other, diagonal) : (2 * (one + other), diagonal + one + other);
            lowest = both > 0 ? Math.Min(lowest, both / all) : lowest;
        }

        for (var row = 0; row < fine.Rows; row++)
        {
            var (r, (i, k)) = (fine.Balances[row], fine.Places[row]);
            if (coarse.Along.Count < fine.Along.Count)
            {
                See(r.Along, r.Along, r.Diagonal);
            }

            if (coarse.Across.Count < fine.Across.Count && Joins(fine.Across, i))
            {
                See(r.Left, r.Right, r.Diagonal);
            }

            if (coarse.Down.Count < fine.Down.Count && Joins(fine.Down, k))
            {
                See(r.Up, r.Down, r.Diagonal);
            }
        }

        return lowest;
    }

    private static bool Joins(GridAxis axis, int cell) =>
        (cell > 0 && axis.Stretch[cell - 1] == axis.Stretch[cell])
        || (cell + 1 < axis.Count && axis.Stretch[cell + 1] == axis.Stretch[cell]);
}
