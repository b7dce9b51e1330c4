using Lampwright.Tables;

namespace Lampwright.Steps;

/// <summary>The errors of this station's methods that do not hang on what is known of emitter and driver.</summary>
/// <remarks>
/// An emitter fit and a driver model name their own, because their width hangs on what they were made from:
/// <see cref="EmitterFit.MethodErrors"/> and <see cref="DriverModel.MethodErrors"/>.
/// </remarks>
public static class StepsMethods
{
    /// <summary>Lead resistance and self-heating of the resistors, in the order of the factors of a chain draw.</summary>
    public static IReadOnlyList<MethodError> MethodErrors { get; } =
    [
        new(
            "steps.lead_resistance",
            0.07,
            "IEC 60228 gives a greatest value; plain copper of the same area is up to 13 % below it (derived)"
        ),
        new(
            "steps.resistor_rise",
            0.30,
            "rise from the slope of the derating line; mounting decides the rest (common practice, no source)"
        ),
    ];
}
