using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>Where the light works.</summary>
public sealed record Place
{
    /// <summary>Usual air temperature, K.</summary>
    public Value Ambient { get; init; } = new(293.15, 0, Origin.Default, "place.ambient");

    /// <summary>Highest air temperature the light must stand, K.</summary>
    public Value AmbientMax { get; init; } = new(308.15, 0, Origin.Default, "place.ambient_max");

    /// <summary>Altitude, m.</summary>
    public Value Altitude { get; init; } = new(0, 0, Origin.Default, "place.altitude");

    /// <summary>What feeds the driver.</summary>
    public Supply? Supply { get; init; }
}

/// <summary>What feeds the driver.</summary>
/// <param name="Kind">Alternating or direct.</param>
/// <param name="Voltage">Voltage, V (rms for alternating).</param>
/// <param name="Frequency">Frequency, Hz; null for direct.</param>
/// <param name="Resistance">Resistance of supply and line, ohm; null where it is not known.</param>
public sealed record Supply(SupplyKind Kind, Value Voltage, Value? Frequency, Value? Resistance = null);

/// <summary>Kind of supply.</summary>
public enum SupplyKind
{
    /// <summary>Alternating, <c>ac</c>.</summary>
    Ac,

    /// <summary>Direct, <c>dc</c>.</summary>
    Dc,
}

/// <summary>Units the maker likes to read; a file may mix units freely.</summary>
/// <param name="Length">Unit of lengths, <c>mm</c> or <c>in</c>.</param>
/// <param name="Temperature">Unit of temperatures, <c>degC</c> or <c>degF</c>.</param>
/// <param name="Paper">Paper of the packet, <c>A4</c>, <c>A3</c> or <c>Letter</c>.</param>
public sealed record Show(string Length = "mm", string Temperature = "degC", string Paper = "A4")
{
    /// <summary>How the 1:1 templates are printed.</summary>
    public TemplatePrint Templates { get; init; } = new();
}

/// <summary>How the 1:1 templates are printed.</summary>
public sealed record TemplatePrint
{
    /// <summary>Their paper, <c>A4</c>, <c>A3</c>, <c>Letter</c> or <c>roll</c>; empty takes the packet's.</summary>
    public string Paper { get; init; } = "";

    /// <summary>Width of the roll, m.</summary>
    public Value Roll { get; init; } = new(0.610, 0, Origin.Default, "show.templates.roll");

    /// <summary>Which faces of the sheet get a template: <c>both</c>, <c>outside</c> or <c>inside</c>.</summary>
    public string Faces { get; init; } = "both";

    /// <summary>Measured length of the proof bar along the short side of the paper (across a roll), m; null where not measured.</summary>
    public Value? BarAcross { get; init; }

    /// <summary>Measured length of the proof bar along the long side of the paper (along a roll), m; null where not measured.</summary>
    public Value? BarAlong { get; init; }
}
