using Lampwright.Findings;

namespace Lampwright.Steps.Board;

/// <summary>The least current that a driver can go down to, as far as it is known.</summary>
/// <param name="CurrentA">In amperes; null where it is not known.</param>
/// <param name="Words">Where it comes from, or what would tell.</param>
public sealed record LeastCurrent(double? CurrentA, string Words);

/// <summary>What can be known of a driver's sense circuit from its board.</summary>
/// <param name="Threshold">Threshold with marks, basis, likelihood, law and named errors.</param>
/// <param name="ParallelOhm">The sense parts in parallel, in ohm: as given, else as marked; null where it is not known.</param>
/// <param name="LeastV">Lower end of the threshold's 5 to 95 % band, in volts; null where there is no threshold.</param>
/// <param name="MostV">Upper end, in volts.</param>
/// <param name="Model">The driver's model, null where there is no threshold.</param>
/// <param name="Least">The least current.</param>
/// <param name="Stops">Codes of the stops that stand against wires from this driver, STP001 to STP003.</param>
/// <param name="Questions">What to ask the maker, with how to find out.</param>
/// <param name="Findings">All that is to be said of the board, the stops first.</param>
/// <remarks>
/// <b>Validity</b>: see <see cref="SenseThreshold"/> and <see cref="SenseLaw"/>. The reading never clears anything for work on mains;
/// it defers to local codes and licensed practice. <b>Checked by</b>: printed (section 3 of the electrical references), invariant.
/// </remarks>
public sealed record BoardReading(
    SenseThreshold Threshold,
    double? ParallelOhm,
    double? LeastV,
    double? MostV,
    DriverModel? Model,
    LeastCurrent Least,
    IReadOnlyList<string> Stops,
    IReadOnlyList<BoardQuestion> Questions,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>How the current follows the sense resistance; null where there is no threshold.</summary>
    public SenseLaw? Law => Threshold.Law;

    /// <summary>Whether controllers are built with such a threshold without a second look.</summary>
    public bool IsPlausible => Threshold.Likelihood == ThresholdLikelihood.Plausible;

    /// <summary>The reading of a driver's board.</summary>
    /// <param name="driver">What is known of the driver.</param>
    /// <param name="limits">Rules of thumb, null for the house's own; none of them touches a stop.</param>
    public static BoardReading Of(DriverSpec driver, StepsLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(driver);
        var threshold = SenseThreshold.From(driver);
        var stops = BoardStops.Of(driver);
        string[] codes = [.. stops.Select(s => s.Code)];
        return new(
            threshold,
            driver.Sense.Ohm is > 0 and < 1e9 ? driver.Sense.Ohm : threshold.MarkedOhm,
            threshold.VoltageV * Math.Max(0, 1 - threshold.HalfWidth),
            threshold.VoltageV * (1 + threshold.HalfWidth),
            DriverModel.From(driver, threshold),
            LeastOf(driver, threshold.Law),
            codes,
            BoardQuestions.Of(driver, codes),
            [.. stops, .. BoardFindings.Of(driver, threshold, limits ?? new StepsLimits())]
        );
    }

    private static LeastCurrent LeastOf(DriverSpec driver, SenseLaw? law)
    {
        double? given = driver.LeastA is > 0 and < 1e9 ? driver.LeastA : null;
        var ends = law?.EndsBelowA;
        return (given, ends) switch
        {
            ({ } g, var e) when !(e > g) => new(g, "The least current is the driver's own."),
            (_, { } e) => new(
                e,
                "Below half of the ripple the coil runs empty between pulses, and the average falls otherwise."
            ),
            _ => new(
                null,
                "Not known: the controller's least on-time ends the law somewhere; its data sheet tells, or a second measured point near the dimmest step."
            ),
        };
    }
}
