using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>A constant-current driver.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Driver(string Name)
{
    /// <summary>Rated output current, A.</summary>
    public Value? Rated { get; init; }

    /// <summary>Least output current that it regulates, A.</summary>
    public Value? Least { get; init; }

    /// <summary>Greatest current that its power stage gives when it sees nothing at its sense input, A.</summary>
    public Value? Limit { get; init; }

    /// <summary>Least output voltage, V.</summary>
    public Value? WindowLeast { get; init; }

    /// <summary>Most output voltage, V.</summary>
    public Value? WindowMost { get; init; }

    /// <summary>Voltage at which the over-voltage protection acts, V.</summary>
    public Value? OverVoltage { get; init; }

    /// <summary>What the over-voltage protection does: <c>clamps</c>, <c>trips</c> or <c>unknown</c>.</summary>
    public string OverThen { get; init; } = "unknown";

    /// <summary>What happens below the window: <c>hiccups</c>, <c>stops</c> or <c>unknown</c>.</summary>
    public string Under { get; init; } = "unknown";

    /// <summary>Share of input power that leaves at the output.</summary>
    public Value Efficiency { get; init; } = new(0.88, 0.04, Origin.Default, "efficiency");

    /// <summary>Least input voltage, V.</summary>
    public Value? InputLeast { get; init; }

    /// <summary>Most input voltage, V.</summary>
    public Value? InputMost { get; init; }

    /// <summary>Input voltage at which it starts, V.</summary>
    public Value? InputOn { get; init; }

    /// <summary>Input voltage at which it stops, V; not above <see cref="InputOn"/>.</summary>
    public Value? InputOff { get; init; }

    /// <summary>Time from a trip to the next try, s.</summary>
    public Value? Restart { get; init; }

    /// <summary>What kind of dimming input it has.</summary>
    public DimmingKind Dimming { get; init; } = DimmingKind.Unknown;

    /// <summary>Least share of the rated current that the dimming input reaches, 0 to 1.</summary>
    public Value? DimmingLeast { get; init; }

    /// <summary>What sets the current.</summary>
    public Sense? Sense { get; init; }

    /// <summary>Whether the output is isolated from the supply.</summary>
    public Known Isolated { get; init; } = Known.Unknown;

    /// <summary>Output capacitor, F.</summary>
    public Value? OutputCapacitor { get; init; }

    /// <summary>Modulation depth of the output current: (max - min)/(max + min).</summary>
    public Value? RippleDepth { get; init; }

    /// <summary>Frequency of the ripple, Hz.</summary>
    public Value? RippleFrequency { get; init; }

    /// <summary>Power factor at full load.</summary>
    public Value? PowerFactor { get; init; }

    /// <summary>Outer sizes.</summary>
    public Box? Box { get; init; }

    /// <summary>Mass, kg.</summary>
    public Value? Mass { get; init; }

    /// <summary>Hottest case allowed, K.</summary>
    public Value? CaseMax { get; init; }

    /// <summary>Hole patterns.</summary>
    public IReadOnlyList<HolePattern> Holes { get; init; } = [];
}

/// <summary>The sense parts of a driver as found on its board.</summary>
/// <param name="Marks">What is printed on the parallel parts, one entry each.</param>
/// <param name="Resistance">Resistance of the parts together when it was measured or is known, ohm.</param>
/// <param name="MeasuredAt">Current that was measured with these parts, A; null takes the rated current.</param>
/// <param name="Side">Which side of the isolation the part is on.</param>
/// <param name="Carries">What current the part carries.</param>
public sealed record Sense(
    IReadOnlyList<string> Marks,
    Value? Resistance,
    Value? MeasuredAt,
    SenseSide Side,
    SenseCurrent Carries
)
{
    /// <summary>What of the current the driver holds.</summary>
    public SenseControl Control { get; init; } = SenseControl.Unknown;

    /// <summary>Ripple of the inductor's current, from peak to peak, A.</summary>
    public Value? InductorRipple { get; init; }

    /// <summary>Greatest offset of the comparator or amplifier at the sense parts, to either side, V.</summary>
    public Value? Offset { get; init; }

    /// <summary>A second resistance at which the current was measured.</summary>
    public SensePoint? Second { get; init; }
}

/// <summary>A resistance in the sense path and the current that was measured with it.</summary>
/// <param name="Resistance">Resistance of the whole sense path, ohm.</param>
/// <param name="Current">Output current, A.</param>
public sealed record SensePoint(Value Resistance, Value Current);

/// <summary>What of its current a driver holds.</summary>
public enum SenseControl
{
    /// <summary>Nobody has looked.</summary>
    Unknown,

    /// <summary>The average.</summary>
    Average,

    /// <summary>The peak of each switching period.</summary>
    Peak,

    /// <summary>What the primary side sees of it.</summary>
    Primary,
}

/// <summary>What kind of dimming input a driver has.</summary>
public enum DimmingKind
{
    /// <summary>Nobody has looked.</summary>
    Unknown,

    /// <summary>None.</summary>
    None,

    /// <summary>A control voltage from 1 V to 10 V.</summary>
    OneToTenVolts,

    /// <summary>A logic signal that is chopped.</summary>
    Chopped,

    /// <summary>A control voltage of another range.</summary>
    Voltage,
}

/// <summary>Yes, no, or nobody has looked.</summary>
public enum Known
{
    /// <summary>Nobody has looked.</summary>
    Unknown,

    /// <summary>Yes.</summary>
    Yes,

    /// <summary>No.</summary>
    No,
}

/// <summary>Which side of the isolation the sense part is on.</summary>
public enum SenseSide
{
    /// <summary>Nobody has looked.</summary>
    Unknown,

    /// <summary>Output side.</summary>
    Secondary,

    /// <summary>Mains side.</summary>
    Primary,
}

/// <summary>What current the sense part carries.</summary>
public enum SenseCurrent
{
    /// <summary>Nobody has looked.</summary>
    Unknown,

    /// <summary>The smooth output current.</summary>
    Smooth,

    /// <summary>The switch's pulses.</summary>
    Pulsed,
}
