namespace Lampwright.Steps.Ways;

/// <summary>A supply behind a resistance.</summary>
/// <param name="OpenV">Voltage without load, in volts.</param>
/// <param name="Ohm">Resistance of supply, line and what was put into it, in ohm; above 0.</param>
public sealed record SupplyBehindResistance(double OpenV, double Ohm) : SourceLine
{
    /// <inheritdoc/>
    public override double CurrentA(double volts) => Math.Max(0, (OpenV - volts) / Ohm);
}
