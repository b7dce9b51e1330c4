namespace Lampwright.Readings;

/// <summary>A meter compared with a better one.</summary>
/// <remarks>
/// Phones are often not proportional: besides the factor there is the power law ln E = a + b·ln M. <b>Validity</b>: within the span compared;
/// <see cref="Factor"/> carries the span into the meter so that readings outside it are spoken of. <b>Checked by</b>: S.N-10.
/// </remarks>
public static class MeterCalibration
{
    /// <summary>The meter with a factor from pairs of its readings and reference values.</summary>
    /// <param name="kind">Kind of meter.</param>
    /// <param name="readings">What the meter showed, two or more, SI.</param>
    /// <param name="reference">What the better meter showed.</param>
    public static Meter Factor(string kind, IReadOnlyList<double> readings, IReadOnlyList<double> reference)
    {
        var factor = StraightLine.FactorThroughOrigin(readings, reference);
        return new(kind, factor.Value, factor.HalfWidth, 0, true, readings.Min(), readings.Max());
    }

    /// <summary>The power law ln reference = a + b·ln reading, as a straight line of the logarithms.</summary>
    /// <param name="readings">What the meter showed, three or more, above 0.</param>
    /// <param name="reference">What the better meter showed, above 0.</param>
    public static StraightLine PowerLaw(IReadOnlyList<double> readings, IReadOnlyList<double> reference) =>
        StraightLine.Fit(
            [.. readings.Select(r => Math.Log(Guard.Positive(r, nameof(readings))))],
            [.. reference.Select(r => Math.Log(Guard.Positive(r, nameof(reference))))]
        );
}
