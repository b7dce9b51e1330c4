namespace Lampwright.Steps.Ways;

/// <summary>From the least to the most that a number may be, where thresholds are not known to a point.</summary>
/// <param name="Least">Least, in the unit that the member's name says.</param>
/// <param name="Most">Most, in the same unit; not below <paramref name="Least"/>.</param>
public readonly record struct Extent(double Least, double Most);
