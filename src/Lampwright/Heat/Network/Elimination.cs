namespace Lampwright.Heat.Network;

/// <summary>Gauss's elimination with the largest pivot, which passes over the zeros of a network.</summary>
internal sealed class Elimination(int count)
{
    private readonly double[] lower = new double[count * count];
    private readonly int[] swaps = new int[count];

    /// <summary>Sign of the determinant of the matrix that was split last: +1 or -1.</summary>
    internal int Sign { get; private set; } = 1;

    /// <summary>Splits a matrix, given by rows; false where it has no inverse.</summary>
    internal bool Factor(double[] matrix)
    {
        var n = count;
        Sign = 1;
        Array.Copy(matrix, lower, n * n);
        for (var k = 0; k < n; k++)
        {
            var pivot = k;
            for (var i = k + 1; i < n; i++)
            {
                // A network's diagonal is nearly always the largest; it moves only where it clearly is not.
                if (Math.Abs(lower[(i * n) + k]) > 4 * Math.Abs(lower[(pivot * n) + k]))
                {
                    pivot = i;
                }
            }

            swaps[k] = pivot;
            if (pivot != k)
            {
                Sign = -Sign;

                // Whole rows move, with what is already split, so that the same order holds for every right side.
                lower.AsSpan(k * n, n).CopyTo(Row(n));
                lower.AsSpan(pivot * n, n).CopyTo(lower.AsSpan(k * n, n));
                row.AsSpan(0, n).CopyTo(lower.AsSpan(pivot * n, n));
            }

            var head = lower[(k * n) + k];
            if (head == 0 || !double.IsFinite(head))
            {
                return false;
            }

            Sign = head < 0 ? -Sign : Sign;
            var from = lower.AsSpan(k * n, n);
            for (var i = k + 1; i < n; i++)
            {
                var at = lower.AsSpan(i * n, n);
                if (at[k] == 0)
                {
                    continue;
                }

                var share = at[k] / head;
                at[k] = share;
                for (var j = k + 1; j < n; j++)
                {
                    at[j] -= share * from[j];
                }
            }
        }

        return true;
    }

    /// <summary>Solves for one right side, in place.</summary>
    internal void Solve(Span<double> x)
    {
        var n = count;
        for (var k = 0; k < n; k++)
        {
            (x[k], x[swaps[k]]) = (x[swaps[k]], x[k]);
        }

        for (var i = 1; i < n; i++)
        {
            var sum = x[i];
            var at = lower.AsSpan(i * n, n);
            for (var j = 0; j < i; j++)
            {
                sum -= at[j] * x[j];
            }

            x[i] = sum;
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var sum = x[i];
            var at = lower.AsSpan(i * n, n);
            for (var j = i + 1; j < n; j++)
            {
                sum -= at[j] * x[j];
            }

            x[i] = sum / at[i];
        }
    }

    private double[] row = [];

    private Span<double> Row(int n)
    {
        row = row.Length >= n ? row : new double[n];
        return row;
    }
}
