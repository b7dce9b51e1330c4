using Lampwright.Tables;

namespace Lampwright.Metal;

/// <summary>Known errors of this station's methods, for the draws of Evaluation.</summary>
public static class MetalMethods
{
    /// <summary>On every bend allowance by a published rule: K scatters by about ±0.05, at R = T ±3.5 % of the allowance.</summary>
    public static MethodError Allowance { get; } =
        new("metal.allowance", 0.035, "spread of K by metal, Machinery's Handbook, 26th ed. (second-hand)");

    /// <summary>On every bend allowance by own strips: two legs and a length read to ±0.1 mm.</summary>
    public static MethodError StripAllowance { get; } =
        new("metal.allowance", 0.03, "propagated from the readings of a strip (references, M.B17)");

    /// <summary>On the density of the sheet within its grade.</summary>
    public static MethodError Density { get; } = new("metal.density", 0.01, "common practice, no source");

    /// <summary>The errors that a rule brings with it; their names are those of <see cref="MetalFactors"/>.</summary>
    public static IReadOnlyList<MethodError> MethodErrors(BendRule rule) =>
        [rule.Method == BendMethod.Strips ? StripAllowance : Allowance, Density];
}
