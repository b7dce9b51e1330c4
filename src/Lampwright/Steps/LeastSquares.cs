namespace Lampwright.Steps;

/// <summary>Linear least squares for two or three unknowns, by modified Gram-Schmidt on scaled columns.</summary>
internal static class LeastSquares
{
    /// <summary>The unknowns that make the columns' sum nearest to the right side; null when the columns hang together.</summary>
    public static double[]? Solve(double[][] columns, double[] right)
    {
        var n = columns.Length;
        var q = new double[n][];
        var r = new double[n, n];
        var c = new double[n];
        var rest = (double[])right.Clone();
        for (var j = 0; j < n; j++)
        {
            q[j] = (double[])columns[j].Clone();
            var before = Math.Sqrt(Dot(q[j], q[j]));

            // Twice, so that nearly parallel columns lose no digits.
            for (var pass = 0; pass < 2; pass++)
            {
                for (var k = 0; k < j; k++)
                {
                    var along = Dot(q[k], q[j]);
                    r[k, j] += along;
                    Subtract(q[j], q[k], along);
                }
            }

            var length = Math.Sqrt(Dot(q[j], q[j]));
            if (!(length > 1e-10 * before))
            {
                return null;
            }

            r[j, j] = length;
            for (var i = 0; i < q[j].Length; i++)
            {
                q[j][i] /= length;
            }

            c[j] = Dot(q[j], rest);
            Subtract(rest, q[j], c[j]);
        }

        for (var j = n - 1; j >= 0; j--)
        {
            for (var k = j + 1; k < n; k++)
            {
                c[j] -= r[j, k] * c[k];
            }

            c[j] /= r[j, j];
        }

        return c.All(double.IsFinite) ? c : null;
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    private static void Subtract(double[] a, double[] b, double times)
    {
        for (var i = 0; i < a.Length; i++)
        {
            a[i] -= times * b[i];
        }
    }
}
