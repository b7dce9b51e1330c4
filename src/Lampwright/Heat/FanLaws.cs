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
}
