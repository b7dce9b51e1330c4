namespace Lampwright.Light;

/// <summary>Gaussian elimination without pivoting, in place: for matrices whose columns are dominated by their diagonal.</summary>
/// <remarks>The matrices of reflected light are (a column's other entries sum to at most its diagonal), for which this is stable.</remarks>
internal static class Elimination
{
    /// <summary>Solves matrix · x = right; the answer replaces <paramref name="right"/>.</summary>
    public static void Solve(Span<double> matrix, Span<double> right, int count)
    {
        for (var p = 0; p < count; p++)
        {
            var pivotRow = matrix.Slice(p * count, count);
            var inverse = 1 / pivotRow[p];
            for (var r = p + 1; r < count; r++)
            {
                var row = matrix.Slice(r * count, count);
                var factor = row[p] * inverse;
                if (factor == 0)
                {
                    continue;
                }

                for (var c = p + 1; c < count; c++)
                {
                    row[c] -= factor * pivotRow[c];
                }

                right[r] -= factor * right[p];
            }
        }

        for (var p = count - 1; p >= 0; p--)
        {
            var row = matrix.Slice(p * count, count);
            var sum = right[p];
            for (var c = p + 1; c < count; c++)
            {
                sum -= row[c] * right[c];
            }

            right[p] = sum / row[p];
        }
    }
}
