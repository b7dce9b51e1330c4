namespace Lampwright.Readings;

/// <summary>A prediction with its band.</summary>
/// <param name="Nominal">Nominal result, SI.</param>
/// <param name="Low">5th percentile.</param>
/// <param name="High">95th percentile.</param>
public readonly record struct Prediction(double Nominal, double Low, double High);

/// <summary>A reading beside its prediction.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Measured">Value after the meter's factor, with its uncertainty.</param>
/// <param name="Predicted">The prediction; null where nothing is predicted for it.</param>
/// <param name="Difference">Measured over predicted less 1 (of rises over the base for temperatures); null where nothing is predicted.</param>
/// <param name="InBands">Distance from nominal in half-widths of the band on that side, held to ±999; null where nothing is predicted.</param>
/// <param name="InJointBands">The same with the meter's own spread joined to the band; this is what the findings judge by.</param>
public sealed record Comparison(
    Reading Reading,
    Estimate Measured,
    Prediction? Predicted,
    double? Difference,
    double? InBands,
    double? InJointBands
)
{
    // Normal quantile of 95 %: a standard uncertainty as half-width of a 5 to 95 % band.
    private static readonly double BandOfUncertainty = 1.6448536269514722;
    private static readonly double MostBands = 999;

    /// <summary>Compares a reading with its prediction.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="meter">What is known of the meter.</param>
    /// <param name="predicted">The prediction; null where there is none.</param>
    /// <param name="baseValue">What differences are counted from: the ambient for temperatures in kelvin, else 0.</param>
    public static Comparison Of(Reading reading, Meter meter, Prediction? predicted, double baseValue = 0)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(meter);
        var measured = meter.Corrected(reading.Value);
        if (predicted is not { } p)
        {
            return new(reading, measured, null, null, null, null);
        }

        var expected = p.Nominal - Guard.Finite(baseValue);
        var away = measured.Value - p.Nominal;
        double? difference = Math.Abs(expected) > 1e-12 ? away / expected : null;
        var half = Math.Max(away >= 0 ? p.High - p.Nominal : p.Nominal - p.Low, 0);
        var own = BandOfUncertainty * measured.Uncertainty;
        return new(
            reading,
            measured,
            p,
            difference,
            Bands(away, half),
            Bands(away, Math.Sqrt((half * half) + (own * own)))
        );
    }

    private static double Bands(double away, double half) =>
        away == 0 ? 0
        : half <= 0 ? Math.CopySign(MostBands, away)
        : Math.Clamp(away / half, -MostBands, MostBands);
}
