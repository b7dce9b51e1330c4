namespace Lampwright.Steps.Ways;

/// <summary>Output of a constant-current driver, averaged over its switching.</summary>
/// <param name="SetA">Current it is set to, in amperes.</param>
/// <param name="LeastV">Voltage under which it does not hold the current, in volts; null where it is not known.</param>
/// <param name="LimitV">Voltage at which its protection acts, in volts; infinite where there is none.</param>
/// <param name="Over">What it does at that limit.</param>
/// <param name="Under">What it does under <paramref name="LeastV"/>.</param>
/// <param name="RestartS">Time from a trip to the next try, in seconds.</param>
public sealed record DriverOutput(
    double SetA,
    double? LeastV,
    double LimitV,
    OverVoltage Over,
    UnderVoltage Under,
    double RestartS
) : SourceLine
{
    /// <summary>Ripple of the current it gives, as a share of <see cref="SetA"/> (1: from nothing to twice, as behind a single power-factor stage); 0 to 1.</summary>
    public double RippleShare { get; init; }

    /// <summary>Frequency of that ripple in hertz (twice the mains); 0 where there is none.</summary>
    public double RippleHz { get; init; }

    /// <summary>Width over which a clamp turns from current to voltage, in volts; the rounding of the circuit in the reference decks.</summary>
    public static double SoftV => 0.05;

    /// <inheritdoc/>
    public override double CurrentA(double volts) => SetA * (0.5 + (0.5 * Math.Tanh((LimitV - volts) / SoftV)));
}
