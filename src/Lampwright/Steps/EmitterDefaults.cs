namespace Lampwright.Steps;

/// <summary>What is taken of a white emitter when the design does not say; each with its source.</summary>
public static class EmitterDefaults
{
    /// <summary>Voltage slope per volt of forward voltage, −0.65 mV/K per volt.</summary>
    /// <remarks>Middle of −1.0 to −3.0 mV/K per die of about 3 V (Lumileds DS133, DS144, DS107).</remarks>
    public static double SlopePerVoltPerK => -0.65e-3;

    /// <summary>Relative half-width of the default slope.</summary>
    public static double SlopeHalfWidth => 0.45;

    /// <summary>Flux at 85 °C over flux at 25 °C of a white array, 0.90 (LG Innotek COB note, 0.88 to 0.90 and above).</summary>
    public static FluxHot Hot { get; } = new(358.15, 0.90);

    /// <summary>Relative half-width of the default roll-off: 0.87 to 0.93 at 85 °C.</summary>
    public static double HotHalfWidth => 0.30;

    /// <summary>s of the saturating form at the rated current where only one point is known (common practice, no source).</summary>
    public static double Droop => 0.25;
}
