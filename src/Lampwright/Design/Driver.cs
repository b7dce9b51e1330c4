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
);

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
