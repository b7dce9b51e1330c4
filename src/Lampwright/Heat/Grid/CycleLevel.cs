using System.Buffers;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Lampwright.Heat.Grid;

/// <summary>One grid of the preconditioner: its coefficients and three fields in single precision.</summary>
internal sealed class CycleLevel : IDisposable
{
    private readonly Vector256<float> tail;
    private readonly bool hasTail;

    internal CycleLevel(GridLevel grid)
    {
        Grid = grid;
        Links = [.. grid.Balances.Select(RowLink.Of)];
        Count = grid.Along.Count;
        Padded = (nuint)((Count + 7) / 8 * 8);
        hasTail = Count % 8 != 0;
        tail = Vector256.LessThan(Vector256.Create(0, 1, 2, 3, 4, 5, 6, 7), Vector256.Create(Count % 8)).AsSingle();
        // Fields are borrowed, and hold anything at first: every pass writes what the next one reads.
        B = ArrayPool<float>.Shared.Rent(grid.Length);
        X = ArrayPool<float>.Shared.Rent(grid.Length);
        Y = ArrayPool<float>.Shared.Rent(grid.Length);
        RowsAPart = Math.Max(1, CellsAPart / Count);
        Parts = (int)((grid.Rows + (long)RowsAPart - 1) / RowsAPart);

        // A line for each part: a worker sums rows in it on the way between grids.
        LineLength = (int)Padded * 2 + 80;
        Lines = ArrayPool<float>.Shared.Rent(Parts * LineLength);
    }

    /// <summary>Cells a part: enough that claiming it costs nothing, few enough that nobody waits long for one.</summary>
    private static int CellsAPart => 8192;

    internal GridLevel Grid { get; }

    internal RowLink[] Links { get; }

    /// <summary>Cells in a row.</summary>
    internal int Count { get; }

    /// <summary>Cells in a row, up to whole vectors.</summary>
    internal nuint Padded { get; }

    internal int RowsAPart { get; }

    internal int Parts { get; }

    internal float[] Lines { get; }

    internal int LineLength { get; }

    /// <summary>What is to be balanced.</summary>
    internal float[] B { get; }

    /// <summary>What is found.</summary>
    internal float[] X { get; private set; }

    /// <summary>The state before, or a residual.</summary>
    internal float[] Y { get; private set; }

    /// <summary>Coefficients of the smoother on the way down, in order; the way up takes the same.</summary>
    internal IReadOnlyList<(float Beta, float Gamma)> Steps { get; set; } = [];

    /// <summary>Gives the fields back.</summary>
    public void Dispose()
    {
        foreach (var field in new[] { B, X, Y, Lines })
        {
            ArrayPool<float>.Shared.Return(field);
        }
    }

    internal void Turn() => (X, Y) = (Y, X);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal nuint Start(int row) => (nuint)(GridLevel.Pad + row * Grid.Pitch);

    /// <summary>Zeros behind the last cell of a row, and the cells beyond its ends.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Close(ref float field, nuint at, float beyond)
    {
        if (hasTail)
        {
            var last = at + Padded - 8;
            (Vector256.LoadUnsafe(ref field, last) & tail).StoreUnsafe(ref field, last);
        }

        Unsafe.Add(ref field, (nint)at - 1) = beyond * Unsafe.Add(ref field, (nint)at);
        Unsafe.Add(ref field, (nint)at + Count) = beyond * Unsafe.Add(ref field, (nint)at + Count - 1);
    }
}

/// <summary>The balance of a row's cells in single precision.</summary>
internal readonly record struct RowLink(
    int LeftRow,
    int RightRow,
    int UpRow,
    int DownRow,
    float Left,
    float Right,
    float Up,
    float Down,
    float Along,
    float Diagonal,
    float Inverse,
    float Beyond
)
{
    internal static RowLink Of(RowBalance r) =>
        new(
            r.LeftRow,
            r.RightRow,
            r.UpRow,
            r.DownRow,
            (float)r.Left,
            (float)r.Right,
            (float)r.Up,
            (float)r.Down,
            (float)r.Along,
            (float)r.Diagonal,
            (float)(1 / r.Diagonal),
            (float)r.Beyond
        );
}
