namespace Lampwright.Steps.Ways;

/// <summary>The ways in the maker's words.</summary>
internal static class WayNames
{
    /// <summary>Name of a way.</summary>
    public static string Of(WayKind kind) =>
        kind switch
        {
            WayKind.SupplyResistor => "resistor in the supply line",
            WayKind.ConverterBehind => "step-down converter behind the driver",
            WayKind.SeriesResistor => "resistor in series with the emitter",
            WayKind.ShuntResistor => "resistor across the emitter",
            WayKind.FixedSense => "another fixed sense resistor",
            WayKind.SteppedChain => "chain of by-passed sense resistors",
            WayKind.ParallelBranches => "switched branches across the sense resistor",
            WayKind.SelectorShorting => "rotary selector that makes before it breaks",
            WayKind.SelectorOpening => "rotary selector that breaks before it makes",
            WayKind.ChoppedBehindCapacitor => "switch that chops behind the output capacitor",
            WayKind.ChoppedWithoutCapacitor => "the same switch, output capacitor taken out",
            WayKind.DimmingInput => "the driver's own dimming input",
            _ => "another driver, made for dimming",
        };
}
