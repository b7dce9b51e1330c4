namespace Lampwright.Steps;

/// <summary>Which side of the driver's barrier the sense part is on.</summary>
public enum SenseSide
{
    /// <summary>Not known; treated as primary.</summary>
    Unknown,

    /// <summary>At mains potential.</summary>
    Primary,

    /// <summary>On the output side.</summary>
    Secondary,
}

/// <summary>What current the sense part carries.</summary>
public enum SenseCarries
{
    /// <summary>Not known; treated as pulsed.</summary>
    Unknown,

    /// <summary>Pulses of a switching stage.</summary>
    Pulsed,

    /// <summary>The smooth output current.</summary>
    Smooth,
}

/// <summary>Whether the output is separated from the mains.</summary>
public enum Isolation
{
    /// <summary>Not known; treated as not isolated.</summary>
    Unknown,

    /// <summary>Connected to the mains.</summary>
    No,

    /// <summary>Separated from the mains.</summary>
    Yes,
}

/// <summary>What a driver does at its voltage limit.</summary>
public enum OverVoltage
{
    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>Holds the voltage and lets the current fall.</summary>
    Clamps,

    /// <summary>Switches off, for good or to try again.</summary>
    Trips,
}

/// <summary>What a driver does when its output is held under its window.</summary>
public enum UnderVoltage
{
    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>Starts and stops again and again; the light blinks.</summary>
    Hiccups,

    /// <summary>Stays off.</summary>
    Stops,
}

/// <summary>What the driver's controller holds still.</summary>
public enum SenseControl
{
    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>The average of the current: linear regulators and error amplifiers.</summary>
    Average,

    /// <summary>The peak of the inductor current: the average lies half of the ripple below.</summary>
    Peak,

    /// <summary>The primary current of a flyback stage, from which the output current is inferred.</summary>
    Primary,
}

/// <summary>A sense resistance and the current that was measured with it.</summary>
/// <param name="Ohm">Sense resistance in ohm.</param>
/// <param name="CurrentA">Output current in amperes.</param>
public sealed record SensePair(double Ohm, double CurrentA);

/// <summary>What is known of a driver's sense circuit.</summary>
/// <param name="Marks">Markings of the parallel sense parts; may be empty.</param>
/// <param name="Ohm">Sense resistance where it is known otherwise, in ohm.</param>
/// <param name="MeasuredA">Output current measured with the parts as they are, in amperes.</param>
/// <param name="MeasuredPair">Another sense resistance with the current measured at it.</param>
/// <param name="Side">Side of the barrier.</param>
/// <param name="Carries">Kind of current.</param>
/// <param name="Control">What the controller holds still.</param>
/// <param name="InductorRippleA">Ripple of the inductor current, peak to peak, in amperes; null where it is not known.</param>
/// <param name="OffsetV">Greatest offset of the sense amplifier to either side, in volts; null where it is not known.</param>
/// <param name="SecondPair">A second measured pair at another sense resistance; with the first it fits threshold and offset.</param>
/// <param name="OhmSpread">Limit to either side given with the resistance, relative; null where none is given. The draws carry it.</param>
/// <param name="CurrentSpread">Limit to either side given with the current, relative; null where none is given. The draws carry it.</param>
public sealed record SenseSpec(
    IReadOnlyList<string> Marks,
    double? Ohm = null,
    double? MeasuredA = null,
    SensePair? MeasuredPair = null,
    SenseSide Side = SenseSide.Unknown,
    SenseCarries Carries = SenseCarries.Unknown,
    SenseControl Control = SenseControl.Unknown,
    double? InductorRippleA = null,
    double? OffsetV = null,
    SensePair? SecondPair = null,
    double? OhmSpread = null,
    double? CurrentSpread = null
);

/// <summary>What is known of a constant-current driver.</summary>
/// <param name="RatedA">Rated output current in amperes; above 0.</param>
/// <param name="LeastA">Least current it holds, in amperes; null where it is not known.</param>
/// <param name="WindowLeastV">Least output voltage in volts; null where it is not known.</param>
/// <param name="WindowMostV">Greatest output voltage in volts; null where it is not known.</param>
/// <param name="Efficiency">Output over input power at the rated output, 0.05 to 1.</param>
/// <param name="Sense">The sense circuit.</param>
/// <param name="Isolated">Whether the output is separated from the mains.</param>
/// <param name="OverVoltageV">Voltage at which the over-voltage protection acts; null where it is not known.</param>
/// <param name="Over">What it does there.</param>
/// <param name="Under">What it does under its window.</param>
/// <param name="Path">Path in the design file that findings lead to.</param>
/// <param name="LimitA">Greatest current its power stage gives when nothing is seen at the sense input, in amperes; null where it is not known.</param>
public sealed record DriverSpec(
    double RatedA,
    double? LeastA,
    double? WindowLeastV,
    double? WindowMostV,
    double Efficiency,
    SenseSpec Sense,
    Isolation Isolated = Isolation.Unknown,
    double? OverVoltageV = null,
    OverVoltage Over = OverVoltage.Unknown,
    UnderVoltage Under = UnderVoltage.Unknown,
    string Path = "driver",
    double? LimitA = null
);
