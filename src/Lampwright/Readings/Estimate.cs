namespace Lampwright.Readings;

/// <summary>A measured value with its standard uncertainty.</summary>
/// <param name="Value">Value in SI units.</param>
/// <param name="Uncertainty">Standard uncertainty in the same unit, 0 or more.</param>
public readonly record struct Estimate(double Value, double Uncertainty)
{
    /// <summary>Half-width of the rectangular spread with the same standard uncertainty: what is written behind ± in the design file.</summary>
    /// <remarks>JCGM 100:2008, 4.3.7: a half-width a stands for a/√3.</remarks>
    public double HalfWidth => Uncertainty * Math.Sqrt(3);

    /// <summary>The estimate that a value between stated limits stands for.</summary>
    /// <param name="value">Value in SI units.</param>
    /// <param name="halfWidth">Half-width of the limits, 0 or more.</param>
    public static Estimate Between(double value, double halfWidth) =>
        new(Guard.Finite(value), Guard.InRange(halfWidth, 0, double.MaxValue) / Math.Sqrt(3));
}
