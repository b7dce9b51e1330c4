namespace Lampwright.Steps.Ways;

/// <summary>Something that happened in a time simulation.</summary>
/// <param name="AtS">When, in seconds.</param>
/// <param name="Words">What, in a few words.</param>
public sealed record TraceEvent(double AtS, string Words);

/// <summary>What a time simulation of one way found.</summary>
/// <param name="TimeS">Times in seconds, rising; the two sides of an event stand at the same time.</param>
/// <param name="VoltageV">Voltage of the node at each time, in volts.</param>
/// <param name="EmitterA">Emitter current at each time, in amperes.</param>
/// <param name="LightShare">Light at each time as a share of the light at the driver's set current.</param>
/// <param name="Events">What happened, in order; the first hundred.</param>
/// <param name="Settled">Whether the last quarter is steady (or repeats at the chopping frequency).</param>
/// <param name="MeanA">Mean emitter current over the last quarter, in amperes.</param>
/// <param name="PeakA">Greatest emitter current over the last quarter, in amperes.</param>
/// <param name="HiccupHz">How often it starts and stops at the end, in hertz; null where it does not.</param>
public sealed record WayTrace(
    IReadOnlyList<double> TimeS,
    IReadOnlyList<double> VoltageV,
    IReadOnlyList<double> EmitterA,
    IReadOnlyList<double> LightShare,
    IReadOnlyList<TraceEvent> Events,
    bool Settled,
    double MeanA,
    double PeakA,
    double? HiccupHz
);
