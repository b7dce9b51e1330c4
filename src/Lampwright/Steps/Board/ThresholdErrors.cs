using Lampwright.Tables;

namespace Lampwright.Steps.Board;

/// <summary>The errors of a sense threshold, each by name, from what it was found with.</summary>
/// <remarks>
/// <b>Validity</b>: independent errors. <b>Source</b>: meters of Tables/meters.csv; a driver's rated current 5 %, copper and solder in the
/// loop 1.5 %, parts without a tolerance letter 1 %, three-digit codes 5 %: common practice, no source; amplifier's offset Vos/V:
/// ST DocID10124 table 5 note 1. <b>Accuracy</b>: half-widths of 5 to 95 % bands; 0.9 of a limit where values between limits are
/// equally likely (derived). <b>Checked by</b>: printed (E.D-10), invariant.
/// </remarks>
public static class ThresholdErrors
{
    private static readonly double Rated = 0.05;
    private static readonly double CopperAndSolder = 0.015;
    private static readonly string Practice = "common practice, no source";

    /// <summary>All errors of a threshold.</summary>
    /// <param name="sense">The sense circuit.</param>
    /// <param name="basis">What the threshold was found with.</param>
    /// <param name="marks">The marks as read.</param>
    /// <param name="law">The law.</param>
    public static IReadOnlyList<NamedError> Of(
        SenseSpec sense,
        ThresholdBasis basis,
        IReadOnlyList<Marking> marks,
        SenseLaw law
    )
    {
        ArgumentNullException.ThrowIfNull(sense);
        ArgumentNullException.ThrowIfNull(marks);
        ArgumentNullException.ThrowIfNull(law);
        var whole = law.ReferenceA + law.OffsetA;
        var share = whole > 0 ? law.ReferenceA / whole : 1;
        var errors = new List<NamedError> { Scaled(Current(sense, basis, law.ReferenceA), share) };
        errors.AddRange(Resistance(sense, marks, law.ReferenceOhm));
        if (law.OffsetErrorA > 0 && whole > 0)
        {
            errors.Add(
                new("ripple or offset of the law", law.OffsetErrorA / whole, CarriedBy.Law, "see the law's own error")
            );
        }

        if (sense.OffsetV is { } offset && Math.Abs(offset) is > 0 and < 1e9 && law.ThresholdV > 0)
        {
            errors.Add(
                new(
                    "offset of the sense amplifier",
                    Math.Min(1, NamedError.OfLimit(Math.Abs(offset) / law.ThresholdV)),
                    CarriedBy.Threshold,
                    "Vos/V, ST TSM1012 table 5"
                )
            );
        }

        return errors;
    }

    /// <summary>The error of the current that a threshold was found with, as a share of it.</summary>
    /// <param name="sense">The sense circuit.</param>
    /// <param name="basis">What the threshold was found with.</param>
    /// <param name="currentA">The current, in amperes.</param>
    public static NamedError Current(SenseSpec sense, ThresholdBasis basis, double currentA)
    {
        ArgumentNullException.ThrowIfNull(sense);
        return sense.CurrentSpread is { } given && given is >= 0 and <= 1
                ? new("current", NamedError.OfLimit(given), CarriedBy.Value, "given with the value")
            : basis == ThresholdBasis.RatedCurrent
                ? new(
                    "rated current",
                    Rated,
                    CarriedBy.Threshold,
                    "drivers hold their rated current to 5 %; " + Practice
                )
            : Metered(currentA);
    }

    /// <summary>The error of a current that was measured, as a share of it.</summary>
    /// <param name="currentA">The current, in amperes.</param>
    public static NamedError Metered(double currentA) =>
        new(
            "measured current",
            Math.Min(1, NamedError.OfLimit(UsualMeters.RelativeLimit("multimeter", "current", currentA))),
            CarriedBy.Threshold,
            "multimeter of meters.csv; " + Practice
        );

    private static IEnumerable<NamedError> Resistance(SenseSpec sense, IReadOnlyList<Marking> marks, double ohm)
    {
        if (sense.OhmSpread is { } given && given is >= 0 and <= 1)
        {
            yield return new("sense resistance", NamedError.OfLimit(given), CarriedBy.Value, "given with the value");
        }
        else if (sense.MeasuredPair is not null || sense.Ohm is not null)
        {
            yield return new(
                "measured resistance",
                Math.Min(1, NamedError.OfLimit(UsualMeters.RelativeLimit("milliohm meter", "resistance", ohm))),
                CarriedBy.Threshold,
                "four-wire meter of meters.csv; " + Practice
            );
        }
        else
        {
            yield return new(
                "tolerance of the parts",
                NamedError.OfLimit(Parts(marks)),
                CarriedBy.Threshold,
                "letter or code on the parts; " + Practice
            );
            yield return new(
                "copper and solder in the loop",
                CopperAndSolder,
                CarriedBy.Threshold,
                "a milliohm or two beside the parts; " + Practice
            );
        }
    }

    // Parts of one board come from one reel and err to one side: shares of the conductance, added.
    private static double Parts(IReadOnlyList<Marking> marks)
    {
        var all = marks.Sum(m => 1 / m.Ohm ?? 0);
        return all > 0 ? marks.Sum(m => m.Ohm is { } r ? m.ToleranceOrUsual / r / all : 0) : 0;
    }

    private static NamedError Scaled(NamedError error, double share) =>
        error with
        {
            HalfWidth = error.HalfWidth * Math.Clamp(share, 0, 1),
        };
}
