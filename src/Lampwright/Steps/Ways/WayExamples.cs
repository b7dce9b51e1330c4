namespace Lampwright.Steps.Ways;

/// <summary>What is taken where the maker has no value yet; each is common practice, no source, and the reason says that it was taken.</summary>
internal static class WayExamples
{
    /// <summary>Mains where no supply is given, in volts.</summary>
    public static double MainsV => 230;

    /// <summary>Efficiency of a step-down converter.</summary>
    public static double ConverterEfficiency => 0.92;

    /// <summary>Output capacitor where none is known, in farad.</summary>
    public static double OutputF => 470e-6;

    /// <summary>Output capacitors that are met, in farad.</summary>
    public static Extent OutputRangeF => new(100e-6, 1000e-6);

    /// <summary>Capacitor at a driver's input, in farad.</summary>
    public static double InputF => 100e-6;

    /// <summary>Capacitors at a driver's input that are met, in farad.</summary>
    public static Extent InputRangeF => new(22e-6, 470e-6);

    /// <summary>Longest soft start of a driver's input, in seconds; the time simulation has none.</summary>
    public static double SoftStartS => 0.05;

    /// <summary>What stays across the output once its capacitor is taken out, in farad.</summary>
    public static double LeftOverF => 1e-6;

    /// <summary>Time from a trip to the next try, in seconds.</summary>
    public static double RestartS => 0.5;

    /// <summary>How often a switch chops, in hertz.</summary>
    public static double ChopHz => 200;

    /// <summary>Resistance of the switch that chops, in ohm.</summary>
    public static double SwitchOhm => 0.01;

    /// <summary>Voltage limit over the top of the window, where only that is told: it acts above what the label promises, how far is not said.</summary>
    public static Extent LimitOverWindow => new(1.0, 1.4);

    /// <summary>Voltage limit over the cold emitter's voltage, where no window is told either.</summary>
    public static Extent LimitOverCold => new(1.05, 1.75);

    /// <summary>Least share of the current that dimming reaches where nothing bounds it.</summary>
    public static double LeastShare => 0.1;

    /// <summary>Change of the light from cold to hot that still counts as held: a seventh of a stop.</summary>
    public static double Held => 0.10;

    /// <summary>Leads and contacts of a switched branch, in ohm.</summary>
    public static double BranchFloorOhm => 0.03;
}
