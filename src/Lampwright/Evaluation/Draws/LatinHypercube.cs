using MathNet.Numerics;

namespace Lampwright.Evaluation.Draws;

/// <summary>Draws of all variables: every variable is cut into as many equally likely slices as there are draws, each used once.</summary>
/// <remarks>
/// <para>The order of a variable's slices is a permutation seeded by its name, so adding a variable to a design leaves the draws
/// of the others as they were, and the same design always gives the same bands.</para>
/// <para>Source: McKay, Beckman, Conover, A comparison of three methods for selecting values of input variables,
/// Technometrics 21 (1979) 239-245.</para>
/// </remarks>
internal static class LatinHypercube
{
    private static readonly double NormalQuantile95 = 1.6448536269514722;

    /// <summary>Value of one variable in every draw.</summary>
    /// <param name="variable">The variable.</param>
    /// <param name="count">Count of draws.</param>
    /// <returns>One value for each draw, in the unit of the variable.</returns>
    public static double[] Column(Variable variable, int count)
    {
        var column = new double[count];
        if (variable.Scatter == Scatter.None)
        {
            Array.Fill(column, variable.Nominal);
            return column;
        }

        var order = Permutation(variable.Name, count);
        for (var i = 0; i < count; i++)
        {
            column[i] = AtProbability(variable, (order[i] + 0.5) / count);
        }

        return column;
    }

    /// <summary>Values of all variables in every draw: the quantiles of a slice are found once and shared.</summary>
    /// <param name="variables">The variables.</param>
    /// <param name="count">Count of draws.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>One column for each variable.</returns>
    public static double[][] Columns(IReadOnlyList<Variable> variables, int count, CancellationToken cancel)
    {
        var normal = new double[count];
        for (var i = 0; i < count; i++)
        {
            normal[i] = NormalQuantile((i + 0.5) / count) / NormalQuantile95;
        }

        var columns = new double[variables.Count][];
        Parallel.For(
            0,
            columns.Length,
            new ParallelOptions { CancellationToken = cancel },
            v =>
            {
                var variable = variables[v];
                if (variable.Scatter is Scatter.None or Scatter.Rectangular)
                {
                    columns[v] = Column(variable, count);
                    return;
                }

                var order = Permutation(variable.Name, count);
                var column = new double[count];
                var log = Math.Log(1 + variable.HalfWidth);
                for (var i = 0; i < count; i++)
                {
                    var z = normal[order[i]];
                    column[i] =
                        variable.Scatter == Scatter.LogNormal
                            ? variable.Nominal * Math.Exp(log * z)
                            : variable.Nominal + (variable.HalfWidth * z);
                }

                columns[v] = column;
            }
        );
        return columns;
    }

    /// <summary>Value of a variable that is not exceeded with a probability.</summary>
    internal static double AtProbability(Variable variable, double probability) =>
        variable.Scatter switch
        {
            Scatter.Rectangular => variable.Nominal + (variable.HalfWidth * ((2 * probability) - 1)),
            Scatter.LogNormal => variable.Nominal
                * Math.Exp(Math.Log(1 + variable.HalfWidth) * NormalQuantile(probability) / NormalQuantile95),
            Scatter.Normal => variable.Nominal + (variable.HalfWidth * NormalQuantile(probability) / NormalQuantile95),
            _ => variable.Nominal,
        };

    private static double NormalQuantile(double probability) =>
        Math.Sqrt(2) * SpecialFunctions.ErfInv((2 * probability) - 1);

    private static int[] Permutation(string name, int count)
    {
        var state = Seed(name);
        var order = new int[count];
        for (var i = 0; i < count; i++)
        {
            order[i] = i;
        }

        for (var i = count - 1; i > 0; i--)
        {
            var j = (int)(Next(ref state) % (ulong)(i + 1));
            (order[i], order[j]) = (order[j], order[i]);
        }

        return order;
    }

    // FNV-1a: the same name gives the same seed on every machine, which string.GetHashCode does not.
    private static ulong Seed(string name)
    {
        var hash = 14695981039346656037UL;
        foreach (var c in name)
        {
            hash = (hash ^ c) * 1099511628211UL;
        }

        return hash;
    }

    // SplitMix64 (Steele, Lea, Flood, OOPSLA 2014).
    private static ulong Next(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
