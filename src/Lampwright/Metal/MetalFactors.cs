namespace Lampwright.Metal;

/// <summary>Factors that the draws of Evaluation put on the methods of this station; 1 is nominal.</summary>
/// <param name="Allowance">On every bend allowance (<c>metal.allowance</c>).</param>
/// <param name="Density">On the density of the sheet (<c>metal.density</c>).</param>
public sealed record MetalFactors(double Allowance, double Density)
{
    /// <summary>All factors 1.</summary>
    public static MetalFactors Nominal { get; } = new(1, 1);
}
