namespace Lampwright.Evaluation.Draws;

/// <summary>Ranks the uncertain inputs by how much of a result's spread comes from each.</summary>
/// <remarks>
/// Squared Spearman rank correlation over the draws that made the bands; the inputs are drawn independently, so the squares add
/// up to about one where the result is monotone in each. Source: Saltelli and others, Sensitivity Analysis in Practice (Wiley
/// 2004), 6.6 (rank transformation).
/// </remarks>
internal sealed class InfluenceRanking
{
    private readonly IReadOnlyList<Variable> _variables;
    private readonly double[]?[] _ranks;

    // With n draws an input without any influence still correlates by chance; squares below this are noise.
    private const double NoiseDraws = 12;

    /// <summary>Ranks the inputs once for all results.</summary>
    /// <param name="variables">The variables.</param>
    /// <param name="columns">Value of each variable in every draw.</param>
    public InfluenceRanking(IReadOnlyList<Variable> variables, IReadOnlyList<double[]> columns)
    {
        _variables = variables;
        _ranks = new double[]?[variables.Count];
        Parallel.For(
            0,
            variables.Count,
            i => _ranks[i] = variables[i].Scatter == Scatter.None ? null : Ranks(columns[i])
        );
    }

    /// <summary>Inputs with the largest shares, largest first.</summary>
    /// <param name="result">Name of the result.</param>
    /// <param name="values">The result in every draw.</param>
    /// <param name="most">Count of inputs wanted.</param>
    public IEnumerable<Influence> Of(string result, double[] values, int most)
    {
        var ranked = Ranks(values);
        if (ranked is null)
        {
            return [];
        }

        var shares = new List<Influence>();
        for (var i = 0; i < _variables.Count; i++)
        {
            if (_ranks[i] is not { } column)
            {
                continue;
            }

            var r = Correlation(ranked, column);
            if (r * r > NoiseDraws / values.Length)
            {
                shares.Add(new(result, _variables[i].Name, r * r, Math.Sign(r)));
            }
        }

        return shares.OrderByDescending(s => s.Share).ThenBy(s => s.Variable, StringComparer.Ordinal).Take(most);
    }

    private static double[]? Ranks(double[] values)
    {
        var order = new int[values.Length];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        var sorted = (double[])values.Clone();
        Array.Sort(sorted, order);
        if (sorted.Length == 0 || sorted[0] == sorted[^1])
        {
            return null;
        }

        var ranks = new double[values.Length];
        for (var i = 0; i < order.Length; )
        {
            var end = i;
            while (end + 1 < order.Length && sorted[end + 1] == sorted[i])
            {
                end++;
            }

            for (var k = i; k <= end; k++)
            {
                ranks[order[k]] = (i + end) / 2.0;
            }

            i = end + 1;
        }

        return ranks;
    }

    private static double Correlation(double[] a, double[] b)
    {
        var mean = (a.Length - 1) / 2.0;
        var (ab, aa, bb) = (0.0, 0.0, 0.0);
        for (var i = 0; i < a.Length; i++)
        {
            var (x, y) = (a[i] - mean, b[i] - mean);
            ab += x * y;
            aa += x * x;
            bb += y * y;
        }

        return ab / Math.Sqrt(aa * bb);
    }
}
