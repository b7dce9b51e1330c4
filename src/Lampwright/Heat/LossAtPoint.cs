namespace Lampwright.Heat;

/// <summary>What the air loses at one place at the working point.</summary>
/// <param name="Path">Path in the design file; empty for the sink's own channels.</param>
/// <param name="OpenM2">Open area, m²; 0 for what has a size of its own.</param>
/// <param name="PressurePa">Pressure lost, Pa.</param>
public sealed record LossAtPoint(string Path, double OpenM2, double PressurePa);
