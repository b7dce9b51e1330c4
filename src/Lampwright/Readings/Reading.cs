namespace Lampwright.Readings;

/// <summary>What a reading is of.</summary>
public enum ReadingKind
{
    /// <summary>Current through the emitter, amperes.</summary>
    Current,

    /// <summary>Voltage across the emitter, volts.</summary>
    Voltage,

    /// <summary>Power drawn, watts.</summary>
    Power,

    /// <summary>Illuminance at the subject, lux.</summary>
    Illuminance,

    /// <summary>Temperature at a place, kelvin.</summary>
    Temperature,

    /// <summary>Resistance of the chain, ohms.</summary>
    Resistance,
}

/// <summary>One reading on the real light.</summary>
/// <param name="Line">Line in the readings file, from 1.</param>
/// <param name="What">What it is of.</param>
/// <param name="Switches">Switch position, in the order of the chain, 1 = closed; empty where it does not matter.</param>
/// <param name="Place">Where, for temperatures (<c>sink</c>, <c>driver</c>, <c>front</c> …); empty otherwise.</param>
/// <param name="Value">What the meter showed, in SI units (temperatures in kelvin).</param>
/// <param name="Meter">Kind of meter, for example <c>phone</c>; empty where not told.</param>
public sealed record Reading(int Line, ReadingKind What, string Switches, string Place, double Value, string Meter);
