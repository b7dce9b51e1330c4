using Lampwright.Steps.Board;
using Lampwright.Tables;

namespace Lampwright.Steps;

/// <summary>A constant-current driver whose current is set by its sense resistance; closed form, made for the draws.</summary>
/// <remarks>
/// I = V/R − OffsetA, times <see cref="LawFactor"/> to the power of ln(R/R0): at the resistance it was found with the current
/// is known, and the error grows with the distance from there; up to a second measured point it grows slower.
/// <b>Validity</b>: continuous conduction (see <see cref="SenseLaw"/>); primary-side regulation and the least on-time bend the law.
/// <b>Source</b>: linear sense, Diodes DS31992 p. 17; peak control, TI AN-1954 p. 8; losses: Pin = Pout/η.
/// <b>Accuracy</b>: <see cref="MethodErrors"/>. <b>Checked by</b>: printed.
/// </remarks>
/// <param name="ThresholdV">Sense threshold in volts.</param>
/// <param name="ReferenceOhm">Sense resistance the threshold was found with, in ohm.</param>
/// <param name="OffsetA">Current that the law falls short by, in amperes: half of the ripple, or from a second point; 0 for control of the average.</param>
/// <param name="Efficiency">Output over input power.</param>
/// <param name="LawFactor">Current per factor e of resistance, relative; 1 at nominal.</param>
/// <param name="SecondLog">ln of the second point's resistance over the first's; 0 where there is none.</param>
/// <param name="SlopeToSecond">Share of the law's error that holds between the two points.</param>
public readonly record struct DriverModel(
    double ThresholdV,
    double ReferenceOhm,
    double OffsetA,
    double Efficiency,
    double LawFactor = 1,
    double SecondLog = 0,
    double SlopeToSecond = 1
)
{
    /// <summary>The nominal model of a driver, null where nothing tells its threshold.</summary>
    public static DriverModel? From(DriverSpec driver, SenseThreshold threshold)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(threshold);
        return threshold.Law is { } law
            ? new DriverModel(
                law.ThresholdV,
                law.ReferenceOhm,
                law.OffsetA,
                Math.Clamp(Guard.Finite(driver.Efficiency), 0.05, 1),
                1,
                law.SecondLog,
                law.SlopeToSecond
            )
            : null;
    }

    /// <summary>Output current in amperes at a total sense resistance; never below zero.</summary>
    /// <param name="senseOhm">Total resistance in the sense loop, in ohm; above 0.</param>
    public double CurrentA(double senseOhm)
    {
        var i = (ThresholdV / senseOhm) - OffsetA;
        if (LawFactor != 1)
        {
            i *= Math.Pow(LawFactor, SenseLaw.Reach(Math.Log(senseOhm / ReferenceOhm), SecondLog, SlopeToSecond));
        }

        return Math.Max(i, 0);
    }

    /// <summary>
    /// Total sense resistance in ohm for a wanted current, at nominal. A current that no resistance reaches, under an offset below zero,
    /// gives a thousand times V/I.
    /// </summary>
    /// <param name="currentA">Current in amperes; above 0.</param>
    public double SenseOhm(double currentA) =>
        ThresholdV / Math.Max(Guard.Positive(currentA) + OffsetA, currentA * 1e-3);

    /// <summary>Input power in watts.</summary>
    /// <param name="outputW">Output power in watts.</param>
    public double InputW(double outputW) => outputW / Efficiency;

    /// <summary>Power the driver turns into heat, in watts.</summary>
    /// <param name="outputW">Output power in watts.</param>
    public double LossW(double outputW) => outputW * ((1 / Efficiency) - 1);

    /// <summary>The model of one draw.</summary>
    /// <param name="threshold">Factor on the threshold (<c>steps.sense_threshold</c>).</param>
    /// <param name="law">Factor per e of resistance (<c>steps.sense_law</c>).</param>
    /// <param name="loss">Factor on the losses (<c>steps.driver_loss</c>).</param>
    public DriverModel With(double threshold, double law, double loss) =>
        this with
        {
            ThresholdV = ThresholdV * threshold,
            LawFactor = law,
            Efficiency = 1 / (1 + Math.Max(0, ((1 / Efficiency) - 1) * loss)),
        };

    /// <summary>The errors of the model, in the order of the factors of <see cref="With"/>.</summary>
    /// <param name="threshold">The threshold with its named errors and its law.</param>
    public static IReadOnlyList<MethodError> MethodErrors(SenseThreshold threshold)
    {
        ArgumentNullException.ThrowIfNull(threshold);
        var drawn = threshold.Errors.Where(e => e.By == CarriedBy.Threshold).Select(e => e.Name);
        return
        [
            new(
                "steps.sense_threshold",
                threshold.DrawnHalfWidth,
                $"joint of: {string.Join(", ", drawn)}; common practice, no source"
            ),
            new(
                "steps.sense_law",
                threshold.Law?.ErrorPerE ?? 0,
                "law of the kind of control, per factor e of resistance; common practice, no source"
            ),
            new(
                "steps.driver_loss",
                0.20,
                "efficiency read from a label, lower at part load; common practice, no source"
            ),
        ];
    }
}
