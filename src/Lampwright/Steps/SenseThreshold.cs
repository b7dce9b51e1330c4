using System.Globalization;
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
/// <remarks>
/// <b>Validity</b>: control of the average current, V = I·R. Peak control subtracts half the ripple.
/// <b>Source</b>: published controllers in sense-thresholds.csv; the plausible range from 0.05 V to 0.5 V: common practice, no source.
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
    double? Contradiction
)
{
    /// <summary>Range that controllers of the average current are usually built in, in volts (common practice, no source).</summary>
    public static (double LeastV, double MostV) Usual => (0.05, 0.5);

    /// <summary>Range in which a threshold is still possible, in volts (common practice, no source).</summary>
    public static (double LeastV, double MostV) Possible => (0.02, 1.3);

    private static readonly (string Controller, double VoltageV)[] Published = Load();

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
        double? byParts = ohm * amps;
        var pair = sense.MeasuredPair is { } p && Sound(p.Ohm) is not null && Sound(p.CurrentA) is not null ? p : null;
        double? byPair = pair is null ? null : pair.Ohm * pair.CurrentA;
        var volts = byPair ?? byParts;
        if (volts is not { } v)
        {
            const string Missing = "Neither readable marks nor a sense resistance nor a measured pair are given.";
            return new(null, 0, 0, ThresholdBasis.None, ThresholdLikelihood.Unknown, Missing, marks, marked, null);
        }

        var basis =
            pair is not null ? ThresholdBasis.MeasuredPair
            : Sound(sense.MeasuredA) is not null ? ThresholdBasis.MeasuredCurrent
            : ThresholdBasis.RatedCurrent;
        var (likelihood, reason) = Judge(v);
        return new(
            v,
            pair?.Ohm ?? ohm!.Value,
            pair?.CurrentA ?? amps!.Value,
            basis,
            likelihood,
            reason,
            marks,
            marked,
            Contradicts(sense, driver.RatedA, ohm, marked, byParts, byPair)
        );
    }

    /// <summary>Whether controllers are built with a threshold, and the sentence that says why.</summary>
    /// <param name="voltageV">Threshold in volts.</param>
    public static (ThresholdLikelihood Likelihood, string Reason) Judge(double voltageV)
    {
        var nearest = Published.MinBy(t => Math.Abs(Math.Log(t.VoltageV / Math.Max(voltageV, 1e-9))));
        var near = string.Create(
            CultureInfo.InvariantCulture,
            $"the nearest published one is {nearest.VoltageV * 1000:0.#} mV ({nearest.Controller})"
        );
        var likelihood =
            voltageV >= Usual.LeastV && voltageV <= Usual.MostV ? ThresholdLikelihood.Plausible
            : voltageV >= Possible.LeastV && voltageV <= Possible.MostV ? ThresholdLikelihood.Unusual
            : ThresholdLikelihood.Implausible;
        var word = likelihood switch
        {
            ThresholdLikelihood.Plausible => "is a usual sense threshold",
            ThresholdLikelihood.Unusual => "is an unusual sense threshold",
            _ => "is hardly a sense threshold: a part was missed or misread",
        };
        return (likelihood, string.Create(CultureInfo.InvariantCulture, $"{voltageV * 1000:0.#} mV {word}; {near}."));
    }

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

    private static double? Sound(double? value) => value is > 0 and < 1e9 ? value : null;

    private static (string, double)[] Load()
    {
        var table = TableResource.Read("sense-thresholds.csv");
        return
        [
            .. Enumerable
                .Range(0, table.RowCount)
                .Select(i => (table.Text(i, "controller"), table.Number(i, "threshold_v"))),
        ];
    }
}
