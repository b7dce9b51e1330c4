namespace Lampwright.Heat;

/// <summary>How flow, pressure and power of one family of fans go with speed, size and density.</summary>
/// <remarks>
/// Q ~ n·D³; p ~ ρ·n²·D²; P ~ ρ·n³·D⁵. Validity: the same shape, Re not much lower.
/// Source: Fox and McDonald, 5th ed., ch. 10. Checked by: printed (Ex. 10.11; Abulencia and Theodore Ex. 17.2).
/// </remarks>
public static class FanLaws
{
    /// <summary>Factor on the flow.</summary>
    /// <param name="speedRatio">New speed over old.</param>
    /// <param name="diameterRatio">New diameter over old.</param>
    public static double FlowFactor(double speedRatio, double diameterRatio = 1) =>
        speedRatio * diameterRatio * diameterRatio * diameterRatio;

    /// <summary>Factor on the pressure.</summary>
    /// <param name="speedRatio">New speed over old.</param>
    /// <param name="densityRatio">New density over old.</param>
    /// <param name="diameterRatio">New diameter over old.</param>
    public static double PressureFactor(double speedRatio, double densityRatio = 1, double diameterRatio = 1) =>
        densityRatio * speedRatio * speedRatio * diameterRatio * diameterRatio;

    /// <summary>Factor on the shaft power.</summary>
    /// <param name="speedRatio">New speed over old.</param>
    /// <param name="densityRatio">New density over old.</param>
    /// <param name="diameterRatio">New diameter over old.</param>
    public static double PowerFactor(double speedRatio, double densityRatio = 1, double diameterRatio = 1) =>
        FlowFactor(speedRatio, diameterRatio) * PressureFactor(speedRatio, densityRatio, diameterRatio);

    /// <summary>Difference of noise of the same fan at another speed, dB: 50·log10 of the ratio of the speeds.</summary>
    /// <remarks>
    /// Validity: one fan at the same point of its curve, where its blades make the noise; far below half speed bearings and motor are heard.
    /// Source: common form of the fan laws for sound power. Accuracy: ±3 dB from half to twice the speed (common practice).
    /// Checked by: printed (a fan maker's circular: 12 V to 7 V 11.7 dB, to 9 V 6.25 dB).
    /// </remarks>
    /// <param name="speedRatio">New speed over old, above 0.</param>
    public static double NoiseDifferenceDb(double speedRatio) => 50 * Math.Log10(Guard.Positive(speedRatio));
}
