namespace Lampwright.Quantities;

/// <summary>What one text states: a nominal value and the half-width of its spread.</summary>
/// <param name="Nominal">The nominal value.</param>
/// <param name="HalfWidth">Half of the spread in the SI unit of the nominal value, 0 where none was stated; never negative.</param>
public readonly record struct Stated(Quantity Nominal, double HalfWidth)
{
    /// <summary>The nominal value in SI units.</summary>
    public double Si => Nominal.Si;

    /// <summary>What kind of quantity it is.</summary>
    public Dimension Dimension => Nominal.Dimension;
}
