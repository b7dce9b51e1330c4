using System.Globalization;

namespace Lampwright.References.Heat;

/// <summary>Comparison of a computed value with a published one; the message carries all inputs.</summary>
internal static class Check
{
    /// <summary>Within a relative tolerance.</summary>
    internal static void Relative(string id, double expected, double actual, double tolerance, string inputs) =>
        Absolute(id, expected, actual, tolerance * Math.Abs(expected), inputs);

    /// <summary>Within an absolute tolerance.</summary>
    internal static void Absolute(string id, double expected, double actual, double tolerance, string inputs) =>
        Assert.True(
            Math.Abs(actual - expected) <= tolerance,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{id}: expected {expected} ± {tolerance}, computed {actual}; inputs: {inputs}"
            )
        );
}
