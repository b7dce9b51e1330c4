using CsCheck;

namespace Lampwright.Tests.Heat;

/// <summary>A law asserted on the same random cases every time: a seed fixes only the first sample, so the first sample is all of them.</summary>
internal static class Law
{
    internal static void Holds<T>(Gen<T> cases, string seed, int count, Action<T> law) =>
        cases
            .Array[count]
            .Sample(
                all =>
                {
                    foreach (var one in all)
                    {
                        law(one);
                    }
                },
                seed: seed,
                iter: 1,
                threads: 1
            );
}
