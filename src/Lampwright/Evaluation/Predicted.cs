namespace Lampwright.Evaluation;

/// <summary>A predicted number with its band.</summary>
/// <param name="Value">Nominal result.</param>
/// <param name="Low">5th percentile of the draws; the nominal result while the band has not been computed.</param>
/// <param name="High">95th percentile of the draws; the nominal result while the band has not been computed.</param>
public readonly record struct Predicted(double Value, double Low, double High)
{
    /// <summary>A number whose band is not computed yet, or has no width because nothing it hangs on is uncertain.</summary>
    public static Predicted Sharp(double value) => new(value, value, value);

    /// <summary>The same number in another unit.</summary>
    /// <param name="factor">What it is multiplied by; positive.</param>
    /// <param name="offset">What is added after that.</param>
    public Predicted In(double factor, double offset = 0) =>
        new((Value * factor) + offset, (Low * factor) + offset, (High * factor) + offset);
}
