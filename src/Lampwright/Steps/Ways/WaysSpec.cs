namespace Lampwright.Steps.Ways;

/// <summary>What feeds the driver.</summary>
/// <param name="Alternating">True for mains, false for direct current.</param>
/// <param name="VoltageV">Voltage in volts (rms for alternating).</param>
/// <param name="FrequencyHz">Frequency in hertz; null for direct current.</param>
/// <param name="Ohm">Resistance of supply and line, in ohm; null where it is not known.</param>
/// <param name="Path">Path in the design file that findings lead to.</param>
public sealed record SupplySpec(
    bool Alternating,
    double VoltageV,
    double? FrequencyHz = null,
    double? Ohm = null,
    string Path = "place.supply"
);

/// <summary>What kind of dimming input a driver has.</summary>
public enum DimmingInput
{
    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>None.</summary>
    None,

    /// <summary>A control voltage, 1 V to 10 V (IEC 60929 annex E).</summary>
    OneToTenVolts,

    /// <summary>A logic signal that is chopped.</summary>
    Chopped,

    /// <summary>A control voltage of the driver's own range.</summary>
    Voltage,
}

/// <summary>What is known of a driver beyond its sense circuit; null is not known.</summary>
/// <param name="InputLeastV">Least input voltage in volts.</param>
/// <param name="InputMostV">Greatest input voltage in volts.</param>
/// <param name="InputOnV">Input voltage at which it starts, in volts.</param>
/// <param name="InputOffV">Input voltage at which it stops, in volts.</param>
/// <param name="OutputCapacitorF">Output capacitor in farad.</param>
/// <param name="PowerFactor">Power factor at full load, 0 to 1.</param>
/// <param name="RestartS">Time from a trip to the next try, in seconds.</param>
/// <param name="Dimming">Its dimming input.</param>
/// <param name="DimmingLeast">Least share of the current that the dimming input reaches.</param>
/// <param name="RestartHalfS">How far <paramref name="RestartS"/> may be off to either side, in seconds; ≥ 0.</param>
/// <param name="OutputCapacitorHalfF">How far <paramref name="OutputCapacitorF"/> may be off to either side, in farad; ≥ 0.</param>
public sealed record DriverSurroundings(
    double? InputLeastV = null,
    double? InputMostV = null,
    double? InputOnV = null,
    double? InputOffV = null,
    double? OutputCapacitorF = null,
    double? PowerFactor = null,
    double? RestartS = null,
    DimmingInput Dimming = DimmingInput.Unknown,
    double? DimmingLeast = null,
    double RestartHalfS = 0,
    double OutputCapacitorHalfF = 0
);

/// <summary>What the comparison of ways is told.</summary>
/// <param name="Model">The emitter's curve.</param>
/// <param name="EmitterMostA">Greatest current the emitter takes, in amperes; null where it is not known.</param>
/// <param name="Driver">The driver and its sense circuit.</param>
/// <param name="Surroundings">What else is known of the driver.</param>
/// <param name="Supply">What feeds it; null where it is not known.</param>
/// <param name="Chain">The chain to be built; null where none is chosen.</param>
/// <param name="WarmJunctionK">Junction temperature at full current, in kelvin.</param>
/// <param name="ColdJunctionK">Coldest junction the light starts from, in kelvin.</param>
/// <param name="HotJunctionK">Hottest junction it runs at, in kelvin.</param>
public sealed record WaysSpec(
    EmitterModel Model,
    double? EmitterMostA,
    DriverSpec Driver,
    DriverSurroundings Surroundings,
    SupplySpec? Supply,
    ChainSpec? Chain,
    double WarmJunctionK = 338.15,
    double ColdJunctionK = 283.15,
    double HotJunctionK = 373.15
);
