using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Lampwright.Heat.Grid;

/// <summary>Passes over rows of a grid in single precision, eight cells at a time.</summary>
/// <remarks>
/// Each row has a number before its first and one after its last cell, the cells beyond the ends; every pass that writes a row writes them too, and
/// zeros in the rest of the last eight.
/// </remarks>
internal static class SmoothKernels
{
    /// <summary>Two steps of smoothing from zero in one pass: x from b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void FirstTwo(
        CycleLevel level,
        float[] bs,
        float[] xs,
        float firstGamma,
        float beta,
        float gamma,
        int fromRow,
        int toRow
    )
    {
        ref var b = ref MemoryMarshal.GetArrayDataReference(bs);
        ref var x = ref MemoryMarshal.GetArrayDataReference(xs);
        for (var row = fromRow; row < toRow; row++)
        {
            ref readonly var r = ref level.Links[row];
            var s = gamma * firstGamma * r.Inverse;
            var own = Vector256.Create(((1 + beta) * firstGamma + gamma - gamma * firstGamma) * r.Inverse);
            var left = Vector256.Create(s * r.Left * level.Links[r.LeftRow].Inverse);
            var right = Vector256.Create(s * r.Right * level.Links[r.RightRow].Inverse);
            var up = Vector256.Create(s * r.Up * level.Links[r.UpRow].Inverse);
            var down = Vector256.Create(s * r.Down * level.Links[r.DownRow].Inverse);
            var along = Vector256.Create(s * r.Along * r.Inverse);
            nuint at = level.Start(row),
                l = level.Start(r.LeftRow),
                rt = level.Start(r.RightRow),
                u = level.Start(r.UpRow),
                d = level.Start(r.DownRow);
            for (nuint j = 0; j < level.Padded; j += 8)
            {
                var one = own * Vector256.LoadUnsafe(ref b, at + j);
                var two = left * Vector256.LoadUnsafe(ref b, l + j);
                one = Vector256.FusedMultiplyAdd(right, Vector256.LoadUnsafe(ref b, rt + j), one);
                two = Vector256.FusedMultiplyAdd(up, Vector256.LoadUnsafe(ref b, u + j), two);
                one = Vector256.FusedMultiplyAdd(down, Vector256.LoadUnsafe(ref b, d + j), one);
                var ends = Vector256.LoadUnsafe(ref b, at + j - 1) + Vector256.LoadUnsafe(ref b, at + j + 1);
                two = Vector256.FusedMultiplyAdd(along, ends, two);
                (one + two).StoreUnsafe(ref x, at + j);
            }

            level.Close(ref x, at, r.Beyond);
        }
    }

    /// <summary>y = firstGamma · b over the diagonal: the state one step before <see cref="FirstTwo"/>'s.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void First(CycleLevel level, float[] bs, float[] ys, float firstGamma, int fromRow, int toRow)
    {
        ref var b = ref MemoryMarshal.GetArrayDataReference(bs);
        ref var y = ref MemoryMarshal.GetArrayDataReference(ys);
        for (var row = fromRow; row < toRow; row++)
        {
            var own = Vector256.Create(firstGamma * level.Links[row].Inverse);
            var at = level.Start(row);
            for (nuint j = 0; j < level.Padded; j += 8)
            {
                (own * Vector256.LoadUnsafe(ref b, at + j)).StoreUnsafe(ref y, at + j);
            }

            level.Close(ref y, at, level.Links[row].Beyond);
        }
    }

    /// <summary>One step of smoothing: next = x + beta·(x - next) + gamma·(b - A·x)/diagonal, over what next held.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Step(
        CycleLevel level,
        float[] bs,
        float[] xs,
        float[] nexts,
        float beta,
        float gamma,
        int fromRow,
        int toRow
    )
    {
        ref var b = ref MemoryMarshal.GetArrayDataReference(bs);
        ref var x = ref MemoryMarshal.GetArrayDataReference(xs);
        ref var next = ref MemoryMarshal.GetArrayDataReference(nexts);
        var own = Vector256.Create(1 + beta - gamma);
        var before = Vector256.Create(-beta);
        for (var row = fromRow; row < toRow; row++)
        {
            ref readonly var r = ref level.Links[row];
            var s = gamma * r.Inverse;
            var push = Vector256.Create(s);
            var left = Vector256.Create(s * r.Left);
            var right = Vector256.Create(s * r.Right);
            var up = Vector256.Create(s * r.Up);
            var down = Vector256.Create(s * r.Down);
            var along = Vector256.Create(s * r.Along);
            nuint at = level.Start(row),
                l = level.Start(r.LeftRow),
                rt = level.Start(r.RightRow),
                u = level.Start(r.UpRow),
                d = level.Start(r.DownRow);
            for (nuint j = 0; j < level.Padded; j += 8)
            {
                var one = own * Vector256.LoadUnsafe(ref x, at + j);
                var two = push * Vector256.LoadUnsafe(ref b, at + j);
                one = Vector256.FusedMultiplyAdd(left, Vector256.LoadUnsafe(ref x, l + j), one);
                two = Vector256.FusedMultiplyAdd(right, Vector256.LoadUnsafe(ref x, rt + j), two);
                one = Vector256.FusedMultiplyAdd(up, Vector256.LoadUnsafe(ref x, u + j), one);
                two = Vector256.FusedMultiplyAdd(down, Vector256.LoadUnsafe(ref x, d + j), two);
                var ends = Vector256.LoadUnsafe(ref x, at + j - 1) + Vector256.LoadUnsafe(ref x, at + j + 1);
                one = Vector256.FusedMultiplyAdd(along, ends, one);
                if (beta != 0)
                {
                    two = Vector256.FusedMultiplyAdd(before, Vector256.LoadUnsafe(ref next, at + j), two);
                }

                (one + two).StoreUnsafe(ref next, at + j);
            }

            level.Close(ref next, at, r.Beyond);
        }
    }

    /// <summary>y = b - A·x; the cells beyond the ends are copies of the last ones, as the way down wants them.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Residual(CycleLevel level, float[] bs, float[] xs, float[] ys, int fromRow, int toRow)
    {
        ref var b = ref MemoryMarshal.GetArrayDataReference(bs);
        ref var x = ref MemoryMarshal.GetArrayDataReference(xs);
        ref var y = ref MemoryMarshal.GetArrayDataReference(ys);
        for (var row = fromRow; row < toRow; row++)
        {
            ref readonly var r = ref level.Links[row];
            var own = Vector256.Create(-r.Diagonal);
            var left = Vector256.Create(r.Left);
            var right = Vector256.Create(r.Right);
            var up = Vector256.Create(r.Up);
            var down = Vector256.Create(r.Down);
            var along = Vector256.Create(r.Along);
            nuint at = level.Start(row),
                l = level.Start(r.LeftRow),
                rt = level.Start(r.RightRow),
                u = level.Start(r.UpRow),
                d = level.Start(r.DownRow);
            for (nuint j = 0; j < level.Padded; j += 8)
            {
                var one = Vector256.FusedMultiplyAdd(
                    own,
                    Vector256.LoadUnsafe(ref x, at + j),
                    Vector256.LoadUnsafe(ref b, at + j)
                );
                var two = left * Vector256.LoadUnsafe(ref x, l + j);
                one = Vector256.FusedMultiplyAdd(right, Vector256.LoadUnsafe(ref x, rt + j), one);
                two = Vector256.FusedMultiplyAdd(up, Vector256.LoadUnsafe(ref x, u + j), two);
                one = Vector256.FusedMultiplyAdd(down, Vector256.LoadUnsafe(ref x, d + j), one);
                var ends = Vector256.LoadUnsafe(ref x, at + j - 1) + Vector256.LoadUnsafe(ref x, at + j + 1);
                two = Vector256.FusedMultiplyAdd(along, ends, two);
                (one + two).StoreUnsafe(ref y, at + j);
            }

            level.Close(ref y, at, 1);
        }
    }
}
