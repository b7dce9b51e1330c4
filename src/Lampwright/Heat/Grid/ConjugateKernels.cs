using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Lampwright.Heat.Grid;

/// <summary>Passes of the conjugate gradients in double precision over rows of the finest grid.</summary>
internal static class ConjugateKernels
{
    /// <summary>p = z + beta·p and q = A·z + beta·q (so q = A·p) in one pass.</summary>
    /// <returns>p·q over these rows.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Direct(CycleLevel level, double[] ps, double[] qs, double beta, int fromRow, int toRow)
    {
        ref var z = ref MemoryMarshal.GetArrayDataReference(level.X);
        ref var p = ref MemoryMarshal.GetArrayDataReference(ps);
        ref var q = ref MemoryMarshal.GetArrayDataReference(qs);
        var (inLow, inHigh) = Inside(level.Count);
        var last = level.Padded - 8;
        var keep = Vector256.Create(beta);
        var (dot, ends) = (Vector256<double>.Zero, 0.0);
        for (var row = fromRow; row < toRow; row++)
        {
            ref readonly var r = ref level.Grid.Balances[row];
            var own = Vector256.Create(r.Diagonal);
            var left = Vector256.Create(-r.Left);
            var right = Vector256.Create(-r.Right);
            var up = Vector256.Create(-r.Up);
            var down = Vector256.Create(-r.Down);
            var along = Vector256.Create(-r.Along);
            nuint at = level.Start(row),
                lt = level.Start(r.LeftRow),
                rt = level.Start(r.RightRow),
                u = level.Start(r.UpRow),
                d = level.Start(r.DownRow);
            for (nuint j = 0; j <= last; j += 8)
            {
                var (low, high) = Vector256.Widen(Vector256.LoadUnsafe(ref z, at + j));
                var (aLow, aHigh) = (own * low, own * high);
                Add(ref aLow, ref aHigh, left, Vector256.LoadUnsafe(ref z, lt + j));
                Add(ref aLow, ref aHigh, right, Vector256.LoadUnsafe(ref z, rt + j));
                Add(ref aLow, ref aHigh, up, Vector256.LoadUnsafe(ref z, u + j));
                Add(ref aLow, ref aHigh, down, Vector256.LoadUnsafe(ref z, d + j));
                Add(ref aLow, ref aHigh, along, Vector256.LoadUnsafe(ref z, at + j - 1));
                Add(ref aLow, ref aHigh, along, Vector256.LoadUnsafe(ref z, at + j + 1));
                var (pLow, pHigh, qLow, qHigh) = (low, high, aLow, aHigh);
                if (beta != 0)
                {
                    pLow = Vector256.FusedMultiplyAdd(keep, Vector256.LoadUnsafe(ref p, at + j), pLow);
                    pHigh = Vector256.FusedMultiplyAdd(keep, Vector256.LoadUnsafe(ref p, at + j + 4), pHigh);
                    qLow = Vector256.FusedMultiplyAdd(keep, Vector256.LoadUnsafe(ref q, at + j), qLow);
                    qHigh = Vector256.FusedMultiplyAdd(keep, Vector256.LoadUnsafe(ref q, at + j + 4), qHigh);
                }

                if (j == last)
                {
                    (pLow, pHigh, qLow, qHigh) = (pLow & inLow, pHigh & inHigh, qLow & inLow, qHigh & inHigh);
                }

                pLow.StoreUnsafe(ref p, at + j);
                pHigh.StoreUnsafe(ref p, at + j + 4);
                qLow.StoreUnsafe(ref q, at + j);
                qHigh.StoreUnsafe(ref q, at + j + 4);
                dot = Vector256.FusedMultiplyAdd(pLow, qLow, dot);
                dot = Vector256.FusedMultiplyAdd(pHigh, qHigh, dot);
            }

            if (r.End > 0)
            {
                // The cell beyond an end with a film was rounded to single precision: put right, or A would not be the same everywhere.
                ends +=
                    Mend(ref z, ref p, ref q, (nint)at, -1, r)
                    + Mend(ref z, ref p, ref q, (nint)at + level.Count - 1, 1, r);
            }
        }

        return Vector256.Sum(dot) + ends;
    }

    /// <summary>x += alpha·p, r -= alpha·q, and r in single precision, scaled, as the next cycle's B.</summary>
    /// <returns>r·r and the sum of r over these rows.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static (double Square, double Sum) Advance(
        CycleLevel level,
        double[] xs,
        double[] rs,
        double[] ps,
        double[] qs,
        double alpha,
        double scale,
        int fromRow,
        int toRow
    )
    {
        ref var x = ref MemoryMarshal.GetArrayDataReference(xs);
        ref var r = ref MemoryMarshal.GetArrayDataReference(rs);
        ref var p = ref MemoryMarshal.GetArrayDataReference(ps);
        ref var q = ref MemoryMarshal.GetArrayDataReference(qs);
        ref var b = ref MemoryMarshal.GetArrayDataReference(level.B);
        var step = Vector256.Create(alpha);
        var back = Vector256.Create(-alpha);
        var size = Vector256.Create(scale);
        var (square, sum) = (Vector256<double>.Zero, Vector256<double>.Zero);
        for (var row = fromRow; row < toRow; row++)
        {
            var at = level.Start(row);
            for (nuint j = 0; j < level.Padded; j += 8)
            {
                var low = Vector256.FusedMultiplyAdd(
                    back,
                    Vector256.LoadUnsafe(ref q, at + j),
                    Vector256.LoadUnsafe(ref r, at + j)
                );
                var high = Vector256.FusedMultiplyAdd(
                    back,
                    Vector256.LoadUnsafe(ref q, at + j + 4),
                    Vector256.LoadUnsafe(ref r, at + j + 4)
                );
                low.StoreUnsafe(ref r, at + j);
                high.StoreUnsafe(ref r, at + j + 4);
                Vector256
                    .FusedMultiplyAdd(step, Vector256.LoadUnsafe(ref p, at + j), Vector256.LoadUnsafe(ref x, at + j))
                    .StoreUnsafe(ref x, at + j);
                Vector256
                    .FusedMultiplyAdd(
                        step,
                        Vector256.LoadUnsafe(ref p, at + j + 4),
                        Vector256.LoadUnsafe(ref x, at + j + 4)
                    )
                    .StoreUnsafe(ref x, at + j + 4);
                Vector256.Narrow(low * size, high * size).StoreUnsafe(ref b, at + j);
                square = Vector256.FusedMultiplyAdd(low, low, square);
                square = Vector256.FusedMultiplyAdd(high, high, square);
                sum += low + high;
            }

            level.Close(ref b, at, level.Links[row].Beyond);
        }

        return (Vector256.Sum(square), Vector256.Sum(sum));
    }

    /// <summary>z·r over rows; r is zero behind the last cell of a row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Dot(CycleLevel level, double[] rs, int fromRow, int toRow)
    {
        ref var z = ref MemoryMarshal.GetArrayDataReference(level.X);
        ref var r = ref MemoryMarshal.GetArrayDataReference(rs);
        var (one, two) = (Vector256<double>.Zero, Vector256<double>.Zero);
        for (var row = fromRow; row < toRow; row++)
        {
            var at = level.Start(row);
            for (nuint j = 0; j < level.Padded; j += 8)
            {
                var (low, high) = Vector256.Widen(Vector256.LoadUnsafe(ref z, at + j));
                one = Vector256.FusedMultiplyAdd(low, Vector256.LoadUnsafe(ref r, at + j), one);
                two = Vector256.FusedMultiplyAdd(high, Vector256.LoadUnsafe(ref r, at + j + 4), two);
            }
        }

        return Vector256.Sum(one + two);
    }

    /// <summary>x = 0, r = what enters, and r in single precision, scaled, as the first cycle's B.</summary>
    internal static void Begin(
        CycleLevel level,
        double[] xs,
        double[] rs,
        IReadOnlyDictionary<int, double[]> heat,
        double scale,
        int fromRow,
        int toRow
    )
    {
        for (var row = fromRow; row < toRow; row++)
        {
            var at = (int)level.Start(row);

            // What lies before and behind a row too: the check at the end reads it and takes it out again.
            xs.AsSpan(at - GridLevel.Pad, (int)level.Padded + 2 * GridLevel.Pad).Clear();
            rs.AsSpan(at, (int)level.Padded).Clear();
            level.B.AsSpan(at, (int)level.Padded).Clear();
            if (heat.TryGetValue(row, out var cells))
            {
                cells.CopyTo(rs, at);
                for (var j = 0; j < cells.Length; j++)
                {
                    level.B[at + j] = (float)(cells[j] * scale);
                }
            }

            level.Close(ref level.B[0], (nuint)at, level.Links[row].Beyond);
        }
    }

    /// <summary>Square of b - A·x and the heat that leaves through films, from x alone: how good the answer is, not how good it was held to be.</summary>
    /// <param name="level">The finest grid.</param>
    /// <param name="xs">Rises.</param>
    /// <param name="qs">A field to work in.</param>
    /// <param name="heat">Heat that enters each cell, W; only rows of the top layer have any.</param>
    /// <param name="fromRow">First row.</param>
    /// <param name="toRow">Behind the last row.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static (double Square, double FilmW) Check(
        CycleLevel level,
        double[] xs,
        double[] qs,
        IReadOnlyDictionary<int, double[]> heat,
        int fromRow,
        int toRow
    )
    {
        ref var x = ref MemoryMarshal.GetArrayDataReference(xs);
        ref var q = ref MemoryMarshal.GetArrayDataReference(qs);
        var (square, film) = (0.0, 0.0);
        for (var row = fromRow; row < toRow; row++)
        {
            ref readonly var r = ref level.Grid.Balances[row];
            nuint at = level.Start(row),
                lt = level.Start(r.LeftRow),
                rt = level.Start(r.RightRow),
                u = level.Start(r.UpRow),
                d = level.Start(r.DownRow);
            var diagonal = Vector256.Create(r.Diagonal);
            var left = Vector256.Create(r.Left);
            var right = Vector256.Create(r.Right);
            var up = Vector256.Create(r.Up);
            var down = Vector256.Create(r.Down);
            var (along, sums) = (Vector256.Create(r.Along), Vector256<double>.Zero);
            for (nuint j = 0; j < level.Padded; j += 4)
            {
                var own = Vector256.LoadUnsafe(ref x, at + j);
                sums += own;
                var a = diagonal * own - left * Vector256.LoadUnsafe(ref x, lt + j);
                a -= right * Vector256.LoadUnsafe(ref x, rt + j);
                a -= up * Vector256.LoadUnsafe(ref x, u + j);
                a -= down * Vector256.LoadUnsafe(ref x, d + j);
                a -= along * Vector256.LoadUnsafe(ref x, at + j - 1);
                a -= along * Vector256.LoadUnsafe(ref x, at + j + 1);
                a.StoreUnsafe(ref q, at + j);
            }

            // The ends read what lies beyond the row: put right here, as the heat that enters is.
            var line = qs.AsSpan((int)at, level.Count);
            double first = xs[at],
                final = xs[at + (nuint)level.Count - 1];
            line[0] += r.Along * (xs[at - 1] - first) + r.End * first;
            line[^1] += r.Along * (xs[at + (nuint)level.Count] - final) + r.End * final;
            if (heat.TryGetValue(row, out var enters))
            {
                for (var j = 0; j < enters.Length; j++)
                {
                    line[j] -= enters[j];
                }
            }

            square += SquareOf(line);

            film += r.Film * Vector256.Sum(sums) + r.End * (first + final);
        }

        return (square, film);
    }

    private static double Mend(ref float z, ref double p, ref double q, nint cell, nint outward, in RowBalance r)
    {
        var missing = r.Along * (Unsafe.Add(ref z, cell + outward) - r.Beyond * Unsafe.Add(ref z, cell));
        Unsafe.Add(ref q, cell) += missing;
        return Unsafe.Add(ref p, cell) * missing;
    }

    private static double SquareOf(ReadOnlySpan<double> line)
    {
        var (sum, j) = (Vector256<double>.Zero, 0);
        for (; j + 4 <= line.Length; j += 4)
        {
            var four = Vector256.Create(line.Slice(j, 4));
            sum = Vector256.FusedMultiplyAdd(four, four, sum);
        }

        var rest = 0.0;
        for (; j < line.Length; j++)
        {
            rest += line[j] * line[j];
        }

        return Vector256.Sum(sum) + rest;
    }

    private static (Vector256<double> Low, Vector256<double> High) Inside(int count)
    {
        var cells = Vector256.Create((double)(count % 8 == 0 ? 8 : count % 8));
        return (
            Vector256.LessThan(Vector256.Create(0.0, 1, 2, 3), cells),
            Vector256.LessThan(Vector256.Create(4.0, 5, 6, 7), cells)
        );
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Add(
        ref Vector256<double> low,
        ref Vector256<double> high,
        Vector256<double> factor,
        Vector256<float> value
    )
    {
        var (l, h) = Vector256.Widen(value);
        low = Vector256.FusedMultiplyAdd(factor, l, low);
        high = Vector256.FusedMultiplyAdd(factor, h, high);
    }
}
