namespace Lampwright.Steps.Ways;

/// <summary>Ways to dim an emitter on a constant-current driver, in the order they are compared.</summary>
public enum WayKind
{
    /// <summary>A resistor in the supply line, before the driver.</summary>
    SupplyResistor,

    /// <summary>A step-down converter between driver and emitter.</summary>
    ConverterBehind,

    /// <summary>A resistor in series with the emitter.</summary>
    SeriesResistor,

    /// <summary>A resistor across the emitter.</summary>
    ShuntResistor,

    /// <summary>Another fixed resistance in the sense path.</summary>
    FixedSense,

    /// <summary>By-passed resistors in series in the sense path.</summary>
    SteppedChain,

    /// <summary>Switched branches across the fixed resistor in the sense path.</summary>
    ParallelBranches,

    /// <summary>A rotary selector that makes before it breaks, in the sense path.</summary>
    SelectorShorting,

    /// <summary>A rotary selector that breaks before it makes, in the sense path.</summary>
    SelectorOpening,

    /// <summary>A switch that chops the emitter's current behind the driver's output capacitor.</summary>
    ChoppedBehindCapacitor,

    /// <summary>The same switch with the output capacitor taken out.</summary>
    ChoppedWithoutCapacitor,

    /// <summary>The driver's own dimming input.</summary>
    DimmingInput,

    /// <summary>Another driver, made for dimming.</summary>
    OtherDriver,
}
