namespace Lampwright.Heat;

/// <summary>One point of a fan's curve, or of what the air path costs.</summary>
/// <param name="FlowM3PerS">Volume flow, m³/s, 0 or above.</param>
/// <param name="PressurePa">Static pressure, Pa, 0 or above.</param>
public readonly record struct FanPoint(double FlowM3PerS, double PressurePa);
