namespace Lampwright.Light;

/// <summary>Stroboscopic visibility measure (SVM): whether moving things look chopped under the light.</summary>
/// <remarks>
/// SVM = [Σ (Cm/Tm)^3.7]^(1/3.7), Cm the amplitude of component m over the mean, T(f) = 2.865e-5·f^1.543 + 0.225, up to 2000 Hz.
/// <b>Validity</b>: 80 to 2000 Hz, above 100 lx. <b>Source</b>: IEC TR 63158 (second-hand). <b>Checked by</b>: L.F-6a to L.F-8b.
/// </remarks>
public static class StroboscopicVisibility
{
    private static readonly double Norm = 3.7;
    private static readonly double HighestHz = 2000;

    /// <summary>Amplitude relative to the mean at which a sine of this frequency is just visible.</summary>
    /// <param name="frequencyHz">Frequency in hertz, above 0.</param>
    public static double Threshold(double frequencyHz) =>
        (2.865e-5 * Math.Pow(Guard.Positive(frequencyHz), 1.543)) + 0.225;

    /// <summary>SVM of a ripple; 0 where its frequency is above 2000 Hz.</summary>
    /// <param name="form">Shape.</param>
    /// <param name="modulation">(max − min)/(max + min), 0 to 1.</param>
    /// <param name="frequencyHz">Frequency in hertz, above 0.</param>
    public static double Of(RippleForm form, double modulation, double frequencyHz)
    {
        Guard.InRange(modulation, 0, 1);
        var sum = 0.0;
        for (var m = 1; m * Guard.Positive(frequencyHz) <= HighestHz; m++)
        {
            var amplitude = modulation * Component(form, m);
            if (amplitude > 0)
            {
                sum += Math.Pow(amplitude / Threshold(m * frequencyHz), Norm);
            }

            if (form == RippleForm.Sine)
            {
                break;
            }
        }

        return Math.Pow(sum, 1 / Norm);
    }

    /// <summary>Largest modulation of a sine that stays at an SVM.</summary>
    /// <param name="visibility">SVM, 0 or more.</param>
    /// <param name="frequencyHz">Frequency in hertz, above 0.</param>
    public static double LargestSine(double visibility, double frequencyHz) =>
        Guard.InRange(visibility, 0, 1e6) * Threshold(frequencyHz);

    /// <summary>Amplitude of a Fourier component over the mean, at full modulation.</summary>
    private static double Component(RippleForm form, int m) =>
        form switch
        {
            RippleForm.Square => m % 2 == 0 ? 0 : 4 / (Math.PI * m),
            RippleForm.Triangle => m % 2 == 0 ? 0 : 8 / (Math.PI * Math.PI * m * m),
            _ => m == 1 ? 1 : 0,
        };
}
