using System.Runtime.Intrinsics;

namespace Lampwright.Benchmarks.Problems;

/// <summary>Eight streams of random numbers side by side: xoshiro128++, begun by splitmix64 from a number.</summary>
/// <remarks><b>Source</b>: Blackman and Vigna, Scrambled linear pseudorandom number generators, 2021; Box and Muller 1958.</remarks>
internal struct EightStreams
{
    private Vector256<uint> _a;
    private Vector256<uint> _b;
    private Vector256<uint> _c;
    private Vector256<uint> _d;

    public EightStreams(ulong number)
    {
        // Numbers that follow each other begin far apart.
        var state = Mixed(number + 0x5DEECE66D1234567);
        Span<uint> words = stackalloc uint[32];
        foreach (ref var word in words)
        {
            state += 0x9E3779B97F4A7C15;
            word = (uint)(Mixed(state) >> 32);
        }

        (_a, _b, _c, _d) = (
            Vector256.Create<uint>(words[..8]),
            Vector256.Create<uint>(words[8..16]),
            Vector256.Create<uint>(words[16..24]),
            Vector256.Create<uint>(words[24..])
        );
    }

    private static ulong Mixed(ulong state)
    {
        var z = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>From 0 to below 1, in steps of 2^-24.</summary>
    public Vector256<float> Unit() =>
        Vector256.ConvertToSingle((Next() >>> 8).AsInt32()) * Vector256.Create(1f / 16777216f);

    /// <summary>From −1 to below 1.</summary>
    public Vector256<float> Symmetric() => (Unit() * Vector256.Create(2f)) - Vector256<float>.One;

    /// <summary>Two independent standard normals.</summary>
    public (Vector256<float> A, Vector256<float> B) Normals()
    {
        // Half a step off zero, so that the logarithm is finite.
        var radius = Vector256.Sqrt(Vector256.Create(-2f) * Vector256.Log(Unit() + Vector256.Create(0.5f / 16777216f)));
        var (sin, cos) = Vector256.SinCos(Vector256.Create(2 * MathF.PI) * Unit());
        return (radius * cos, radius * sin);
    }

    private Vector256<uint> Next()
    {
        var result = Turn(_a + _d, 7) + _a;
        var t = _b << 9;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= t;
        _d = Turn(_d, 11);
        return result;
    }

    private static Vector256<uint> Turn(Vector256<uint> x, int by) => (x << by) | (x >>> (32 - by));
}
