using System.Globalization;
using Lampwright.Steps.Board;
using Lampwright.Tables;

namespace Lampwright.Steps;

/// <summary>Whether a sense threshold is one that controllers are built with.</summary>
public enum ThresholdLikelihood
{
    /// <summary>No threshold is known.</summary>
    Unknown,

    /// <summary>In the range controllers use.</summary>
    Plausible,

    /// <summary>Found with a reference used directly, or with very low thresholds; worth a second look.</summary>
    Unusual,

    /// <summary>Hardly a threshold; a part was missed or misread.</summary>
    Implausible,
}

/// <summary>Where a sense threshold comes from.</summary>
public enum ThresholdBasis
{
    /// <summary>Nothing to compute it from.</summary>
    None,

    /// <summary>Sense resistance times the rated current.</summary>
    RatedCurrent,

    /// <summary>Sense resistance as marked times a measured current.</summary>
    MeasuredCurrent,

    /// <summary>A measured pair of sense resistance and current.</summary>
    MeasuredPair,
}

/// <summary>The voltage a driver holds across its sense resistance, and how far it is to be believed.</summary>
/// <param name="VoltageV">Threshold in volts, null where nothing is known.</param>
/// <param name="Ohm">Sense resistance it was found with, in ohm.</param>
/// <param name="CurrentA">Current it was found with, in amperes.</param>
/// <param name="Basis">Where it comes from.</param>
/// <param name="Likelihood">Whether controllers are built with such a threshold.</param>
/// <param name="Reason">One sentence that says why, with the nearest published one.</param>
/// <param name="Marks">The markings as read.</param>
/// <param name="MarkedOhm">Resistance of the marked parts in parallel, null where one cannot be read.</param>
/// <param name="Contradiction">Ratio of two ways to the threshold minus 1; null where there is only one.</param>
/// <param name="Law">How the current follows the sense resistance; null where nothing is known.</param>
/// <param name="Errors">What the threshold may be off by, by name.</param>
/// <param name="Second">The fit through the second point with its problem if it has one; null where there is none.</param>
/// <remarks>
/// <b>Validity</b>: V = (I + I_off)·R; the offset is that of <see cref="SenseLaw"/>, half of the ripple for control of the peak.
/// <b>Source</b>: published controllers in sense-thresholds.csv; the ranges of sense-ranges.csv: common practice, no source.
/// <b>Checked by</b>: printed thresholds; about 2.1 A through 0.18 Ω is plausible (common practice, no source).
/// </remarks>
public sealed record SenseThreshold(
    double? VoltageV,
    double Ohm,
    double CurrentA,
    ThresholdBasis Basis,
    ThresholdLikelihood Likelihood,
    string Reason,
    IReadOnlyList<Marking> Marks,
    double? MarkedOhm,
    double? Contradiction,
    SenseLaw? Law,
    IReadOnlyList<NamedError> Errors,
    SecondPoint? Second = null
)
{
    /// <summary>Half-width of the threshold's 5 to 95 % band, relative.</summary>
    public double HalfWidth => NamedError.Joint(Errors);

    /// <summary>The part of it that <c>steps.sense_threshold</c> carries in the draws.</summary>
    public double DrawnHalfWidth => NamedError.Joint(Errors.Where(e => e.By == CarriedBy.Threshold));

    /// <summary>
    /// How far the threshold may be off in a worst corner, relative: what the draws carry under its name, and on top of it each spread that the maker
    /// has given with a value of the sense circuit, in full. What belongs to the law is the law's.
    /// </summary>
    public double CornerShare
    {
        get
        {
            var off = 1 + DrawnHalfWidth;
            foreach (var given in Errors.Where(e => e.By == CarriedBy.Value))
            {
                off *= 1 + NamedError.LimitOf(given.HalfWidth);
            }

            return Math.Min(0.5, off - 1);
        }
    }

    /// <summary>The threshold that follows from what is known of a driver.</summary>
    public static SenseThreshold From(DriverSpec driver)
    {
        ArgumentNullException.ThrowIfNull(driver);
        var sense = driver.Sense;
        Marking[] marks = [.. sense.Marks.Select(Marking.Read)];
        var marked =
            marks.Length > 0 && marks.All(m => m.Ohm is not null)
                ? Marking.Parallel(marks.Select(m => m.Ohm!.Value))
                : null;
        var ohm = Sound(sense.Ohm) ?? marked;
        var amps = Sound(sense.MeasuredA) ?? Sound(driver.RatedA);
        var pair = Sound(sense.MeasuredPair);
        if ((pair ?? (ohm is null || amps is null ? null : new(ohm.Value, amps.Value))) is not { } first)
        {
            const string Missing = "Neither readable marks nor a sense resistance nor a measured pair are given.";
            return new(
                null,
                0,
                0,
                ThresholdBasis.None,
                ThresholdLikelihood.Unknown,
                Missing,
                marks,
                marked,
                null,
                null,
                []
            );
        }

        var basis =
            pair is not null ? ThresholdBasis.MeasuredPair
            : Sound(sense.MeasuredA) is not null ? ThresholdBasis.MeasuredCurrent
            : ThresholdBasis.RatedCurrent;
        var firstError = ThresholdErrors.Current(sense, basis, first.CurrentA).HalfWidth;
        var other = Sound(sense.SecondPair);
        var secondError = other is null ? 0 : ThresholdErrors.Metered(other.CurrentA).HalfWidth;
        var second = other is null ? null : SecondPoint.Fit(first, firstError, other, secondError);
        var law = SenseLaw.Of(sense, first, firstError, second, secondError);
        var volts = law.ThresholdV;
        var (likelihood, reason) = law.Control == SenseControl.Primary ? BehindTurns : Judge(volts);
        double? byParts = ohm * (amps + law.OffsetA);
        double? byPair = pair is null ? null : volts;
        return new(
            volts,
            first.Ohm,
            first.CurrentA,
            basis,
            likelihood,
            reason,
            marks,
            marked,
            Contradicts(sense, driver.RatedA, ohm, marked, byParts, byPair),
            law,
            ThresholdErrors.Of(sense, basis, marks, law),
            second
        );
    }

    /// <summary>Whether controllers are built with a threshold, and the sentence that says why.</summary>
    /// <param name="voltageV">Threshold in volts.</param>
    public static (ThresholdLikelihood Likelihood, string Reason) Judge(double voltageV)
    {
        var (usual, possible) = (SenseThresholds.Usual, SenseThresholds.Possible);
        var nearest = SenseThresholds.Nearest(voltageV);
        var near = string.Create(
            CultureInfo.InvariantCulture,
            $"the nearest published one is {nearest.VoltageV * 1000:0.#} mV ({nearest.Controller})"
        );
        var likelihood =
            voltageV >= usual.LeastV && voltageV <= usual.MostV ? ThresholdLikelihood.Plausible
            : voltageV >= possible.LeastV && voltageV <= possible.MostV ? ThresholdLikelihood.Unusual
            : ThresholdLikelihood.Implausible;
        var word = likelihood switch
        {
            ThresholdLikelihood.Plausible => "is a usual sense threshold",
            ThresholdLikelihood.Unusual => "is an unusual sense threshold",
            _ => "is hardly a sense threshold: a part was missed or misread",
        };
        return (likelihood, string.Create(CultureInfo.InvariantCulture, $"{voltageV * 1000:0.#} mV {word}; {near}."));
    }

    // I = N·K·Vcs·sqrt(η)/(2·Rcs), TI SLUSBL5A: the turns ratio stands between.
    private static (ThresholdLikelihood, string) BehindTurns =>
        (
            ThresholdLikelihood.Unknown,
            "A controller on the primary side compares its own pulses: resistance times output current is no threshold, the turns ratio stands between."
        );

    private static double? Contradicts(
        SenseSpec sense,
        double ratedA,
        double? ohm,
        double? marked,
        double? byParts,
        double? byPair
    )
    {
        double?[] ratios =
        [
            byPair / byParts,
            sense.Ohm is not null ? ohm / marked : null,
            Sound(sense.MeasuredA) / Sound(ratedA),
        ];
        var known = ratios.Where(r => r is not null).Select(r => r!.Value - 1).ToArray();
        return known.Length == 0 ? null : known.MaxBy(Math.Abs);
    }

    // What is no number above zero, or beyond all sense, counts as not known.
    private static double? Sound(double? value) => value is > 0 and < 1e9 ? value : null;

    private static SensePair? Sound(SensePair? pair) =>
        pair is not null && Sound(pair.Ohm) is not null && Sound(pair.CurrentA) is not null ? pair : null;
}
