namespace Lampwright.Steps.Faults;

/// <summary>Where the circuit comes to rest with one fault at one position of the switches.</summary>
/// <param name="EmitterA">Current through the emitter in amperes; the least it can be where the driver's limit is not known.</param>
/// <param name="EmitterMostA">The greatest it can be; infinite where nothing that is known holds it.</param>
/// <param name="DriverA">Output current of the driver in amperes, at <paramref name="EmitterA"/>.</param>
/// <param name="DriverMostA">Output current at <paramref name="EmitterMostA"/>.</param>
/// <param name="SenseV">Voltage at the sense input in volts.</param>
/// <param name="OutputV">Output voltage of the driver in volts; NaN where nothing known holds it.</param>
/// <param name="EmitterV">Voltage across the emitter in volts, negative when it is the wrong way round.</param>
/// <param name="Regulated">Whether the driver holds its threshold.</param>
/// <param name="AtVoltageLimit">Whether its output voltage is what stops it.</param>
/// <param name="SenseFollowsLow">Whether the sense input hangs at the pad LED − with no path to ground: what leaks through the emitter reaches it.</param>
public readonly record struct FaultPoint(
    double EmitterA,
    double EmitterMostA,
    double DriverA,
    double DriverMostA,
    double SenseV,
    double OutputV,
    double EmitterV,
    bool Regulated,
    bool AtVoltageLimit,
    bool SenseFollowsLow
);
