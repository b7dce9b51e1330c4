namespace Lampwright.Steps.Ways;

/// <summary>Where a source line and a load line cross.</summary>
/// <param name="VoltageV">Voltage of the crossing, in volts.</param>
/// <param name="CurrentA">Current there, in amperes.</param>
/// <param name="Stable">Whether the circuit stays there.</param>
/// <param name="Words">What it is, in a few words.</param>
public sealed record Crossing(double VoltageV, double CurrentA, bool Stable, string Words);

/// <summary>A line of the picture: current over voltage.</summary>
/// <param name="Name">What it is, in the maker's words.</param>
/// <param name="VoltageV">Voltages in volts, rising or equal.</param>
/// <param name="CurrentA">Current at each, in amperes.</param>
public sealed record OperatingLine(string Name, IReadOnlyList<double> VoltageV, IReadOnlyList<double> CurrentA);

/// <summary>The operating-point picture of one way; its lines are sampled only when <see cref="Lines"/> is called.</summary>
/// <param name="Circuit">The circuit the lines belong to.</param>
/// <param name="Crossings">Every crossing, by rising voltage.</param>
public sealed record OperatingPicture(WayCircuit Circuit, IReadOnlyList<Crossing> Crossings)
{
    /// <summary>The source line first, then the load line.</summary>
    /// <param name="points">How many points a line has; at least 2.</param>
    public IReadOnlyList<OperatingLine> Lines(int points = 200) => Circuit.Lines(points);
}
