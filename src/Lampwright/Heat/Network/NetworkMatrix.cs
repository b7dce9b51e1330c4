namespace Lampwright.Heat.Network;

/// <summary>The slopes of a network and their split into two triangles; made once and used for every pass.</summary>
/// <remarks>
/// Without a search for pivots, as a network's diagonal nearly always is the largest. Where it clearly is not,
/// <see cref="Elimination"/> takes over, which searches.
/// </remarks>
internal sealed class NetworkMatrix(NetworkPattern pattern)
{
    // A pivot smaller than that part of what stands below it costs three of sixteen digits.
    private static readonly double LeastPivot = 1e-3;

    private readonly double[] split = new double[pattern.Size];
    private readonly double[] work = new double[pattern.Count];
    private Elimination? dense;
    private bool isDense;

    /// <summary>The slopes, by the slots of the pattern, W/K.</summary>
    internal double[] Values { get; } = new double[pattern.Size];

    /// <summary>Sign of the determinant of what was split last: +1 or -1.</summary>
    internal int Sign { get; private set; } = 1;

    /// <summary>Splits the slopes, times a number and with something added to the diagonal; false where there is no inverse.</summary>
    /// <param name="times">The number.</param>
    /// <param name="diagonal">What is added, by unknown; empty adds nothing.</param>
    internal bool Factor(double times = 1, ReadOnlySpan<double> diagonal = default)
    {
        var n = pattern.Count;
        Fill(times, diagonal);
        (Sign, isDense) = (1, false);
        var (v, starts, targets, t) = (split, pattern.Starts, pattern.Targets, 0);
        var below = n + pattern.Later.Length;
        for (var k = 0; k < n; k++)
        {
            var (head, from, count) = (v[k], starts[k], starts[k + 1] - starts[k]);
            var largest = 0.0;
            for (var a = 0; a < count; a++)
            {
                largest = Math.Max(largest, Math.Abs(v[below + from + a]));
            }

            if (head == 0 || !double.IsFinite(head) || !(Math.Abs(head) >= LeastPivot * largest))
            {
                return FactorDense(times, diagonal);
            }

            Sign = head < 0 ? -Sign : Sign;
            var right = v.AsSpan(n + from, count);
            for (var a = 0; a < count; a++, t += count)
            {
                var share = v[below + from + a];
                if (share == 0)
                {
                    continue;
                }

                share /= head;
                v[below + from + a] = share;
                var to = targets.AsSpan(t, count);
                for (var b = 0; b < to.Length; b++)
                {
                    v[to[b]] -= share * right[b];
                }
            }
        }

        return true;
    }

    /// <summary>Solves for one right side, in place.</summary>
    /// <param name="x">The right side by unknown; becomes the solution.</param>
    internal void Solve(Span<double> x)
    {
        if (isDense)
        {
            dense!.Solve(x);
            return;
        }

        var n = pattern.Count;
        var (y, v, starts, later, order) = (work, split, pattern.Starts, pattern.Later, pattern.Order);
        var below = n + later.Length;
        for (var k = 0; k < n; k++)
        {
            y[k] = x[order[k]];
        }

        for (var k = 0; k < n; k++)
        {
            var head = y[k];
            for (var a = starts[k]; head != 0 && a < starts[k + 1]; a++)
            {
                y[later[a]] -= v[below + a] * head;
            }
        }

        for (var k = n - 1; k >= 0; k--)
        {
            var sum = y[k];
            for (var a = starts[k]; a < starts[k + 1]; a++)
            {
                sum -= v[n + a] * y[later[a]];
            }

            x[order[k]] = y[k] = sum / v[k];
        }
    }

    private void Fill(double times, ReadOnlySpan<double> diagonal)
    {
        for (var i = 0; i < split.Length; i++)
        {
            split[i] = times * Values[i];
        }

        for (var i = 0; i < diagonal.Length; i++)
        {
            split[pattern.Place[i]] += diagonal[i];
        }
    }

    private bool FactorDense(double times, ReadOnlySpan<double> diagonal)
    {
        Fill(times, diagonal);
        var n = pattern.Count;
        var matrix = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                var slot = pattern.SlotOf(i, j);
                matrix[(i * n) + j] = slot < 0 ? 0 : split[slot];
            }
        }

        dense ??= new(n);
        isDense = true;
        var found = dense.Factor(matrix);
        Sign = dense.Sign;
        return found;
    }
}
