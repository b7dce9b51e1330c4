namespace Lampwright.Steps.Ways;

/// <summary>A supply behind a resistance.</summary>
/// <param name="OpenV">Voltage without load, in volts.</param>
/// <param name="Ohm">Resistance of supply, line and what was put into it, in ohm; above 0.</param>
public sealed record SupplyBehindResistance(double OpenV, double Ohm) : SourceLine
{
    /// <summary>Inductance of supply and line in henry; 0 where it does not count. The line of the picture is the same without it.</summary>
    public double Henry { get; init; }

    /// <summary>Current in that inductance at the start, in amperes.</summary>
    public double StartA { get; init; }

    /// <inheritdoc/>
    public override double CurrentA(double volts) => Math.Max(0, (OpenV - volts) / Ohm);
}
