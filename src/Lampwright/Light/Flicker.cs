namespace Lampwright.Light;

/// <summary>Shape of the light's ripple.</summary>
public enum RippleForm
{
    /// <summary>Sine: what a smoothed mains driver leaves.</summary>
    Sine,

    /// <summary>Square, on half of the time.</summary>
    Square,

    /// <summary>Triangle: what a switching driver's inductor leaves.</summary>
    Triangle,
}

/// <summary>The ripple of the light.</summary>
/// <param name="Modulation">(max − min)/(max + min), 0 to 1.</param>
/// <param name="FrequencyHz">Frequency in hertz, above 0.</param>
/// <param name="Form">Shape; sine where it is not known.</param>
public sealed record RippleSpec(double Modulation, double FrequencyHz, RippleForm Form = RippleForm.Sine);

/// <summary>What eye and camera make of a ripple.</summary>
/// <param name="PercentFlicker">(max − min)/(max + min) as a share, 0 to 1.</param>
/// <param name="FlickerIndex">Area above the mean over total area, 0 to 1.</param>
/// <param name="LowRiskLimit">Modulation up to which IEEE 1789 sees low risk; infinite where it sees none at this frequency.</param>
/// <param name="NoEffectLimit">Modulation up to which IEEE 1789 sees no observable effect; infinite where there is none.</param>
/// <param name="ShutterResidual">Modulation that the exposure time leaves between frames or bands, 0 to 1.</param>
/// <param name="VisibilityMeasure">Stroboscopic visibility measure SVM, 0 or more; 1 is just visible to half of the observers.</param>
public readonly record struct FlickerResult(
    double PercentFlicker,
    double FlickerIndex,
    double LowRiskLimit,
    double NoEffectLimit,
    double ShutterResidual,
    double VisibilityMeasure
);

/// <summary>Flicker of the light and what is left of it in a picture.</summary>
/// <remarks>
/// The light is taken to follow the current: the emitter's flux is a little less than proportional to it, so that this is on the safe side.
/// <b>Source</b>: IES definitions 5.9.9.4 (percent flicker, flicker index); IEEE 1789-2015 (second-hand; below 90 Hz and from 1250 Hz
/// on memory). <b>Checked by</b>: L.F-1a to L.F-10a.
/// </remarks>
public static class Flicker
{
    /// <summary>Everything about one ripple at one exposure time. Closed form; cheap enough for draws.</summary>
    /// <param name="ripple">The ripple.</param>
    /// <param name="shutterS">Exposure time in seconds, above 0.</param>
    public static FlickerResult Of(RippleSpec ripple, double shutterS)
    {
        ArgumentNullException.ThrowIfNull(ripple);
        var modulation = Guard.InRange(ripple.Modulation, 0, 1);
        var frequency = Guard.Positive(ripple.FrequencyHz);
        return new(
            modulation,
            Index(ripple.Form, modulation),
            LowRiskLimit(frequency),
            NoEffectLimit(frequency),
            ShutterResidual(ripple.Form, modulation, frequency, shutterS),
            StroboscopicVisibility.Of(ripple.Form, modulation, frequency)
        );
    }

    /// <summary>Flicker index of a shape at a modulation: sine m/π, square m/2, triangle m/4.</summary>
    /// <param name="form">Shape.</param>
    /// <param name="modulation">(max − min)/(max + min), 0 to 1.</param>
    public static double Index(RippleForm form, double modulation) =>
        Guard.InRange(modulation, 0, 1)
        * form switch
        {
            RippleForm.Square => 0.5,
            RippleForm.Triangle => 0.25,
            _ => 1 / Math.PI,
        };

    /// <summary>Flicker index of light that is switched on for a share of each period: 1 − duty.</summary>
    /// <param name="duty">Share of the period that is lit, above 0 to 1.</param>
    public static double IndexOfPulses(double duty) => 1 - Guard.InRange(duty, 1e-9, 1);

    /// <summary>Percent flicker (as a share) and flicker index of one period given as evenly spaced samples.</summary>
    /// <param name="samples">Two or more samples of one period, 0 or more, not all 0.</param>
    public static (double PercentFlicker, double Index) OfSamples(ReadOnlySpan<double> samples)
    {
        Guard.InRange(samples.Length, 2, int.MaxValue);
        var (least, most, sum) = (double.PositiveInfinity, double.NegativeInfinity, 0.0);
        foreach (var sample in samples)
        {
            Guard.InRange(sample, 0, double.MaxValue);
            least = Math.Min(least, sample);
            most = Math.Max(most, sample);
            sum += sample;
        }

        var mean = Guard.Positive(sum) / samples.Length;
        var above = 0.0;
        foreach (var sample in samples)
        {
            above += Math.Max(sample - mean, 0);
        }

        return ((most - least) / (most + least), above / sum);
    }

    /// <summary>Largest modulation of low risk by IEEE 1789 (a share; infinite above 1250 Hz).</summary>
    /// <param name="frequencyHz">Frequency in hertz, above 0.</param>
    public static double LowRiskLimit(double frequencyHz) =>
        Guard.Positive(frequencyHz) < 90 ? 0.00025 * frequencyHz
        : frequencyHz <= 1250 ? 0.0008 * frequencyHz
        : double.PositiveInfinity;

    /// <summary>Largest modulation without observable effect by IEEE 1789 (a share; infinite above 3000 Hz).</summary>
    /// <param name="frequencyHz">Frequency in hertz, above 0.</param>
    public static double NoEffectLimit(double frequencyHz) =>
        Guard.Positive(frequencyHz) < 90 ? 0.0001 * frequencyHz
        : frequencyHz <= 3000 ? 0.000333 * frequencyHz
        : double.PositiveInfinity;

    /// <summary>
    /// Modulation that an exposure time leaves: that of the light averaged over the exposure, at the worst moment of release. For a
    /// sine m·|sinc(f·t)|; for square and triangle the same of their components, the sum taken at its largest.
    /// </summary>
    /// <param name="form">Shape.</param>
    /// <param name="modulation">(max − min)/(max + min) of the light, 0 to 1.</param>
    /// <param name="frequencyHz">Frequency in hertz, above 0.</param>
    /// <param name="shutterS">Exposure time in seconds, above 0.</param>
    public static double ShutterResidual(RippleForm form, double modulation, double frequencyHz, double shutterS)
    {
        var periods = Guard.Positive(frequencyHz) * Guard.Positive(shutterS);
        return form switch
        {
            RippleForm.Square => Guard.InRange(modulation, 0, 1) * ResidualOfPulses(0.5, periods) / 2,
            RippleForm.Triangle => Guard.InRange(modulation, 0, 1) * ResidualOfTriangle(periods),
            _ => Guard.InRange(modulation, 0, 1) * Math.Abs(Sinc(periods)),
        };
    }

    /// <summary>Peak to peak over mean that an exposure leaves of light switched on for a share of each period.</summary>
    /// <param name="duty">Share of the period that is lit, above 0 to 1.</param>
    /// <param name="frequencyHz">Frequency in hertz, above 0.</param>
    /// <param name="shutterS">Exposure time in seconds, above 0.</param>
    public static double ResidualOfPulses(double duty, double frequencyHz, double shutterS) =>
        ResidualOfPulses(Guard.InRange(duty, 1e-9, 1), Guard.Positive(frequencyHz) * Guard.Positive(shutterS));

    private static double ResidualOfPulses(double duty, double periods)
    {
        // A whole number of periods within rounding leaves nothing.
        var part = periods - Math.Floor(periods + 1e-12);
        part = Math.Max(part, 0);
        return Math.Min(Math.Min(part, duty), Math.Min(1 - part, 1 - duty)) / (duty * periods);
    }

    private static double ResidualOfTriangle(double periods)
    {
        // Unit triangle 1 − 4|τ| about its crest: the average over e of a period, centred on the crest, is largest there and smallest
        // at the trough by symmetry, so that the residual is that average's share of the whole exposure.
        var part = Math.Max(periods - Math.Floor(periods + 1e-12), 0);
        return part * (1 - part) / periods;
    }

    private static double Sinc(double n) => Math.Abs(n) < 1e-12 ? 1 : Math.Sin(Math.PI * n) / (Math.PI * n);
}
