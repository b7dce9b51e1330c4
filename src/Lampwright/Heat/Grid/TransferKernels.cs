using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Lampwright.Heat.Grid;

/// <summary>Passes between a grid and the next coarser one.</summary>
internal static class TransferKernels
{
    private static readonly Vector256<int> Evens = Vector256.Create(0, 2, 4, 6, 0, 2, 4, 6);

    /// <summary>b of the coarse grid from the fine residual, whose cells beyond the ends are copies.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Down(
        GridTransfer way,
        CycleLevel fine,
        CycleLevel coarse,
        float[] residuals,
        float[] lines,
        int line,
        int fromRow,
        int toRow
    )
    {
        ref var residual = ref MemoryMarshal.GetArrayDataReference(residuals);
        ref var sum = ref MemoryMarshal.GetArrayDataReference(lines);
        ref var b = ref MemoryMarshal.GetArrayDataReference(coarse.B);
        for (var row = fromRow; row < toRow; row++)
        {
            // The row's sum over fine rows, one number beyond each end included, in a line of its own.
            var at = (nuint)line + 8;
            Sum(
                ref residual,
                ref sum,
                at,
                fine,
                way.DownRow,
                way.DownWeight,
                way.DownStart[row],
                way.DownStart[row + 1]
            );
            Unsafe.Add(ref sum, (nint)at - 1) = Unsafe.Add(ref sum, (nint)at);
            Unsafe.Add(ref sum, (nint)at + fine.Count) = Unsafe.Add(ref sum, (nint)at + fine.Count - 1);
            var to = coarse.Start(row);
            switch (way.Along)
            {
                case GridTransfer.AlongWay.Same:
                    for (nuint j = 0; j < coarse.Padded; j += 8)
                    {
                        Vector256.LoadUnsafe(ref sum, at + j).StoreUnsafe(ref b, to + j);
                    }

                    break;
                case GridTransfer.AlongWay.Halved:
                    for (nuint j = 0; j < coarse.Padded; j += 8)
                    {
                        // 0.75·(f[2j] + f[2j+1]) + 0.25·(f[2j-1] + f[2j+2])
                        var from = at + 2 * j;
                        var pair = EvensOf(ref sum, from) + EvensOf(ref sum, from + 1);
                        var outer = EvensOf(ref sum, from - 1) + EvensOf(ref sum, from + 2);
                        (pair * 0.75f + outer * 0.25f).StoreUnsafe(ref b, to + j);
                    }

                    break;
                default:
                    for (nuint j = 0; j < coarse.Padded; j += 8)
                    {
                        Vector256<float>.Zero.StoreUnsafe(ref b, to + j);
                    }

                    for (var j = 0; j < way.Lower.Length; j++)
                    {
                        var value = Unsafe.Add(ref sum, (nint)at + j);
                        Unsafe.Add(ref b, (nint)to + way.Lower[j]) += (1 - way.UpperWeight[j]) * value;
                        Unsafe.Add(ref b, (nint)to + way.Upper[j]) += way.UpperWeight[j] * value;
                    }

                    break;
            }

            coarse.Close(ref b, to, coarse.Links[row].Beyond);
        }
    }

    /// <summary>Adds what the coarse grid found to x of the fine one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Up(
        GridTransfer way,
        CycleLevel fine,
        CycleLevel coarse,
        float[] xs,
        float[] lines,
        int line,
        int fromRow,
        int toRow
    )
    {
        ref var found = ref MemoryMarshal.GetArrayDataReference(coarse.X);
        ref var sum = ref MemoryMarshal.GetArrayDataReference(lines);
        ref var x = ref MemoryMarshal.GetArrayDataReference(xs);
        var near = Vector256.Create(1, 1, 2, 2, 3, 3, 4, 4);
        var far = Vector256.Create(0, 2, 1, 3, 2, 4, 3, 5);
        for (var row = fromRow; row < toRow; row++)
        {
            var at = (nuint)line + 8;
            Sum(ref found, ref sum, at, coarse, way.UpRow, way.UpWeight, way.UpStart[row], way.UpStart[row + 1]);
            Unsafe.Add(ref sum, (nint)at - 1) = Unsafe.Add(ref sum, (nint)at);
            Unsafe.Add(ref sum, (nint)at + coarse.Count) = Unsafe.Add(ref sum, (nint)at + coarse.Count - 1);
            var to = fine.Start(row);
            switch (way.Along)
            {
                case GridTransfer.AlongWay.Same:
                    for (nuint j = 0; j < fine.Padded; j += 8)
                    {
                        (Vector256.LoadUnsafe(ref x, to + j) + Vector256.LoadUnsafe(ref sum, at + j)).StoreUnsafe(
                            ref x,
                            to + j
                        );
                    }

                    break;
                case GridTransfer.AlongWay.Halved:
                    for (nuint j = 0; j < fine.Padded; j += 8)
                    {
                        var from = Vector256.LoadUnsafe(ref sum, at + j / 2 - 1);
                        var added = Vector256.Shuffle(from, near) * 0.75f + Vector256.Shuffle(from, far) * 0.25f;
                        (Vector256.LoadUnsafe(ref x, to + j) + added).StoreUnsafe(ref x, to + j);
                    }

                    break;
                default:
                    for (var j = 0; j < way.Lower.Length; j++)
                    {
                        Unsafe.Add(ref x, (nint)to + j) +=
                            (1 - way.UpperWeight[j]) * Unsafe.Add(ref sum, (nint)at + way.Lower[j])
                            + way.UpperWeight[j] * Unsafe.Add(ref sum, (nint)at + way.Upper[j]);
                    }

                    break;
            }

            fine.Close(ref x, to, fine.Links[row].Beyond);
        }
    }

    /// <summary>Weighted sum of rows into a line. Thirty-two cells at a time; what lies behind the last cell is never used.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Sum(
        ref float field,
        ref float line,
        nuint at,
        CycleLevel of,
        int[] rows,
        float[] weights,
        int from,
        int to
    )
    {
        for (nuint j = 0; j < of.Padded; j += 32)
        {
            Vector256<float> one = default,
                two = default,
                three = default,
                four = default;
            for (var e = from; e < to; e++)
            {
                var weight = Vector256.Create(weights[e]);
                var start = of.Start(rows[e]) + j;
                one = Vector256.FusedMultiplyAdd(weight, Vector256.LoadUnsafe(ref field, start), one);
                two = Vector256.FusedMultiplyAdd(weight, Vector256.LoadUnsafe(ref field, start + 8), two);
                three = Vector256.FusedMultiplyAdd(weight, Vector256.LoadUnsafe(ref field, start + 16), three);
                four = Vector256.FusedMultiplyAdd(weight, Vector256.LoadUnsafe(ref field, start + 24), four);
            }

            one.StoreUnsafe(ref line, at + j);
            two.StoreUnsafe(ref line, at + j + 8);
            three.StoreUnsafe(ref line, at + j + 16);
            four.StoreUnsafe(ref line, at + j + 24);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<float> EvensOf(ref float line, nuint from)
    {
        var low = Vector256.Shuffle(Vector256.LoadUnsafe(ref line, from), Evens);
        var high = Vector256.Shuffle(Vector256.LoadUnsafe(ref line, from + 8), Evens);
        return Vector256.Create(low.GetLower(), high.GetLower());
    }
}
