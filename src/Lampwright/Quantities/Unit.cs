namespace Lampwright.Quantities;

/// <summary>One unit of measure.</summary>
/// <param name="Symbol">How it is shown and preferably written, for example <c>mm</c>.</param>
/// <param name="Factor">How many SI units one of it is.</param>
/// <param name="Offset">What is added after the factor, in SI units; other than 0 only for temperatures.</param>
/// <param name="Dimension">What it measures.</param>
public sealed record Unit(string Symbol, double Factor, double Offset, Dimension Dimension)
{
    /// <summary>The SI value of a number in this unit.</summary>
    public double ToSi(double number) => (number * Factor) + Offset;

    /// <summary>The number in this unit of an SI value.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;
}
