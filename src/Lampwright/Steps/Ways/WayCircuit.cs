namespace Lampwright.Steps.Ways;

/// <summary>One way as a circuit with one capacitor: C·dV/dt = source(V) − load(V), with events that switch either on or off.</summary>
/// <param name="Source">What feeds the node.</param>
/// <param name="Load">What draws from it.</param>
/// <param name="CapacitorF">Capacitor at the node, in farad; above 0.</param>
/// <param name="StartV">Voltage of the node at the start, in volts.</param>
/// <param name="EmitterOnNode">False where the node is the driver's input, so that the emitter runs at <see cref="ConverterLine.EmitterRegulatedA"/>.</param>
public sealed record WayCircuit(
    SourceLine Source,
    LoadLine Load,
    double CapacitorF,
    double StartV = 0,
    bool EmitterOnNode = true
)
{
    /// <summary>Source line and load line for the picture.</summary>
    /// <param name="points">How many points a line has; at least 2.</param>
    public IReadOnlyList<OperatingLine> Lines(int points) => WayLines.Of(this, points);
}
