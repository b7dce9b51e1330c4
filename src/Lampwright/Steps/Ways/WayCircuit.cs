namespace Lampwright.Steps.Ways;

/// <summary>What drives the node between source and load.</summary>
public abstract record SourceLine
{
    /// <summary>Current it gives at a voltage of the node while it runs, in amperes; never below zero.</summary>
    /// <param name="volts">Voltage of the node, in volts.</param>
    public abstract double CurrentA(double volts);
}

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
    /// <summary>Width over which a clamp turns from current to voltage, in volts; the rounding of the published test circuit.</summary>
    public static double SoftV => 0.05;

    /// <inheritdoc/>
    public override double CurrentA(double volts) => SetA * (0.5 + (0.5 * Math.Tanh((LimitV - volts) / SoftV)));
}

/// <summary>A supply behind a resistance.</summary>
/// <param name="OpenV">Voltage without load, in volts.</param>
/// <param name="Ohm">Resistance of supply, line and what was put into it, in ohm; above 0.</param>
public sealed record SupplyBehindResistance(double OpenV, double Ohm) : SourceLine
{
    /// <inheritdoc/>
    public override double CurrentA(double volts) => Math.Max(0, (OpenV - volts) / Ohm);
}

/// <summary>What takes current from the node.</summary>
public abstract record LoadLine
{
    /// <summary>Current it takes at a voltage of the node while it is on, in amperes; never below zero.</summary>
    /// <param name="volts">Voltage of the node, in volts.</param>
    public abstract double CurrentA(double volts);

    /// <summary>Emitter current at a voltage of the node while it is on, in amperes.</summary>
    /// <param name="volts">Voltage of the node, in volts.</param>
    public abstract double EmitterA(double volts);
}

/// <summary>The emitter, with a resistor in series and one across it where there are any.</summary>
/// <param name="Model">The emitter's curve.</param>
/// <param name="JunctionK">Its junction temperature, in kelvin.</param>
/// <param name="SeriesOhm">Resistance in series, in ohm; 0 where there is none.</param>
/// <param name="ShuntOhm">Resistance across the emitter, in ohm; infinite where there is none.</param>
public sealed record EmitterLine(
    EmitterModel Model,
    double JunctionK,
    double SeriesOhm = 0,
    double ShuntOhm = double.PositiveInfinity
) : LoadLine
{
    /// <inheritdoc/>
    public override double CurrentA(double volts) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override double EmitterA(double volts) => throw new NotSupportedException();
}

/// <summary>A converter (or the input of a driver): constant power while it is on, with a lock-out at low voltage.</summary>
/// <param name="PowerW">Power it takes when it regulates, in watts.</param>
/// <param name="OnV">Voltage at which it starts, in volts.</param>
/// <param name="OffV">Voltage at which it stops, in volts; not above <paramref name="OnV"/>.</param>
/// <param name="EmitterRegulatedA">Emitter current while it regulates, in amperes.</param>
/// <param name="DropOut">The emitter behind it once its input is too low to regulate (a switch that is always on); null where it has none.</param>
public sealed record ConverterLine(
    double PowerW,
    double OnV,
    double OffV,
    double EmitterRegulatedA,
    EmitterLine? DropOut = null
) : LoadLine
{
    /// <inheritdoc/>
    public override double CurrentA(double volts) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override double EmitterA(double volts) => throw new NotSupportedException();
}

/// <summary>An emitter behind a switch that opens and closes.</summary>
/// <param name="Emitter">The emitter.</param>
/// <param name="FrequencyHz">How often it closes, in hertz.</param>
/// <param name="Duty">Share of the time that it is closed, 0 to 1.</param>
/// <param name="SwitchOhm">Resistance of the closed switch, in ohm.</param>
public sealed record ChoppedLine(EmitterLine Emitter, double FrequencyHz, double Duty, double SwitchOhm) : LoadLine
{
    /// <inheritdoc/>
    public override double CurrentA(double volts) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override double EmitterA(double volts) => throw new NotSupportedException();
}

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
    /// <param name="points">How many points a line has.</param>
    public IReadOnlyList<OperatingLine> Lines(int points) => throw new NotSupportedException();
}
