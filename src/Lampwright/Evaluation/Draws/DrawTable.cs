namespace Lampwright.Evaluation.Draws;

/// <summary>All draws of one evaluation: what went in and what came out.</summary>
/// <param name="Columns">Value of each variable in every draw.</param>
/// <param name="Rows">Every predicted number of each draw.</param>
internal sealed record DrawTable(double[][] Columns, double[][] Rows)
{
    /// <summary>Draws the variables and computes a row for each draw.</summary>
    public static DrawTable Of(
        IReadOnlyList<Variable> variables,
        IReadOnlyList<IRowPart> parts,
        int numbers,
        int draws,
        CancellationToken cancel
    )
    {
        var options = new ParallelOptions { CancellationToken = cancel };
        var columns = LatinHypercube.Columns(variables, draws, cancel);
        var rows = new double[draws][];
        Parallel.For(
            0,
            draws,
            options,
            () => new double[columns.Length],
            (i, _, x) =>
            {
                for (var v = 0; v < columns.Length; v++)
                {
                    x[v] = columns[v][i];
                }

                var row = new double[numbers];
                foreach (var part in parts)
                {
                    part.Row(x, row);
                }

                rows[i] = row;
                return x;
            },
            _ => { }
        );
        return new(columns, rows);
    }

    /// <summary>One predicted number in every draw.</summary>
    public double[] Column(int place)
    {
        var values = new double[Rows.Length];
        for (var i = 0; i < Rows.Length; i++)
        {
            values[i] = Rows[i][place];
        }

        return values;
    }
}
