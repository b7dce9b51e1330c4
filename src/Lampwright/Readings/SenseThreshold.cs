using Lampwright.Tables;

namespace Lampwright.Readings;

/// <summary>A sense resistance and the current measured with it.</summary>
/// <param name="Resistance">Sense resistance, ohms, with its uncertainty.</param>
/// <param name="Current">Current, amperes, with its uncertainty.</param>
public readonly record struct SensePair(Estimate Resistance, Estimate Current);

/// <summary>What a driver holds across its sense resistance, from measured pairs.</summary>
/// <remarks>
/// One pair: V = I·(R + r), r the lead and contact resistance in between. Three or more: the straight line R = V/I − r gives both.
/// Uncertainties by JCGM 100:2008, 5.1.2. <b>Validity</b>: linear sensing; a switching driver that senses the peak holds half of the ripple more.
/// </remarks>
public static class SenseThreshold
{
    /// <summary>Threshold in volts from one pair.</summary>
    /// <param name="pair">Resistance and current, both above 0.</param>
    /// <param name="between">Lead and contact resistance in between, ohms.</param>
    public static Estimate FromOne(SensePair pair, Estimate between)
    {
        var current = Guard.Positive(pair.Current.Value);
        var resistance = Guard.Positive(pair.Resistance.Value) + Guard.InRange(between.Value, 0, double.MaxValue);
        var (a, b, c) = (
            resistance * pair.Current.Uncertainty,
            current * pair.Resistance.Uncertainty,
            current * between.Uncertainty
        );
        return new(current * resistance, Math.Sqrt((a * a) + (b * b) + (c * c)));
    }

    /// <summary>Threshold in volts and the resistance in between, in ohms, from three or more pairs with different currents.</summary>
    /// <param name="pairs">The pairs.</param>
    public static (Estimate ThresholdV, Estimate BetweenOhm) FromSeveral(IReadOnlyList<SensePair> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        var line = StraightLine.Fit(
            [.. pairs.Select(p => 1 / Guard.Positive(p.Current.Value, nameof(pairs)))],
            [.. pairs.Select(p => p.Resistance.Value)]
        );
        return (new(line.Slope, line.SlopeUncertainty), new(-line.Intercept, line.InterceptUncertainty));
    }

    /// <summary>True when a threshold is possible for a controller (Tables/sense-ranges.csv); the steps station judges by the same table.</summary>
    /// <param name="thresholdV">Threshold, volts.</param>
    public static bool IsPlausible(double thresholdV) =>
        thresholdV >= PlausibleV.Least && thresholdV <= PlausibleV.Most;

    /// <summary>Limits of what is plausible, volts.</summary>
    public static (double Least, double Most) PlausibleV => SenseThresholds.Possible;
}
