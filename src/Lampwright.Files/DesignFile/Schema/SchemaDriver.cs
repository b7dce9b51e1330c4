using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Driver.</summary>
internal static class SchemaDriver
{
    public static void Add(SchemaList top)
    {
        var driver = top.Table("driver", "Constant-current drivers.", kind: KeyKind.NamedTables);
        driver
            .Table("current", "Output current.")
            .Quantity("rated", Dimension.Current, "1 mA", "200 A", "Rated output current.", required: true)
            .Quantity("least", Dimension.Current, "0 A", "200 A", "Least current that it regulates.", absent: "unknown")
            .Quantity(
                "limit",
                Dimension.Current,
                "1 mA",
                "1000 A",
                "Greatest current its power stage gives when it sees nothing at its sense input.",
                absent: "unknown"
            );
        driver.Quantity(
            "window",
            Dimension.Voltage,
            "0 V",
            "1000 V",
            "Least and most output voltage.",
            kind: KeyKind.TwoQuantities,
            absent: "unknown"
        );
        driver.Quantity(
            "input",
            Dimension.Voltage,
            "0 V",
            "1000 V",
            "Least and most input voltage; of alternating supply the effective value.",
            kind: KeyKind.TwoQuantities,
            absent: "unknown",
            example: "[\"100 V\", \"264 V\"]"
        );
        driver
            .Table("lockout", "Input voltages at which it starts and stops.", absent: "unknown")
            .Quantity(
                "on",
                Dimension.Voltage,
                "0.1 V",
                "1000 V",
                "Rising, it starts here.",
                required: true,
                example: "9.0 V"
            )
            .Quantity(
                "off",
                Dimension.Voltage,
                "0.1 V",
                "1000 V",
                "Falling, it stops here; not above on.",
                required: true,
                example: "8.2 V"
            );
        driver
            .Table("over", "Protection against too much voltage.")
            .Quantity("voltage", Dimension.Voltage, "1 V", "2000 V", "Voltage at which it acts.", absent: "unknown")
            .Choice(
                "then",
                ["clamps", "trips", "unknown"],
                "What it does.",
                @default: "unknown",
                source: "nobody has looked"
            );
        driver
            .Choice(
                "under",
                ["hiccups", "stops", "unknown"],
                "What happens below the window.",
                @default: "unknown",
                source: "nobody has looked"
            )
            .Quantity(
                "efficiency",
                Dimension.None,
                "0.3",
                "0.99",
                "Share of input power that leaves at the output.",
                @default: "0.88 ± 0.04",
                source: "common practice, no source"
            );
        driver.Quantity(
            "restart",
            Dimension.Time,
            "0.1 ms",
            "100 s",
            "Time from a trip of the protection to the next try.",
            absent: "unknown",
            example: "0.6 s"
        );
        Dimming(driver);
        Sense(driver);
        driver
            .Choice(
                "isolated",
                ["yes", "no", "unknown"],
                "Whether the output is isolated from the supply.",
                @default: "unknown",
                source: "nobody has looked"
            )
            .Quantity(
                "output_capacitor",
                Dimension.Capacitance,
                "1 pF",
                "1 F",
                "Capacitor across the output.",
                absent: "unknown"
            );
        driver
            .Table("ripple", "Ripple of the output current.", absent: "unknown")
            .Quantity(
                "depth",
                Dimension.None,
                "0",
                "1",
                "Depth of modulation: (most - least)/(most + least).",
                required: true
            )
            .Quantity("frequency", Dimension.Frequency, "1 Hz", "10 MHz", "Its frequency.", required: true);
        driver
            .Quantity("power_factor", Dimension.None, "0.3", "1", "Power factor at full load.", absent: "unknown")
            .Length(
                "box",
                "1 mm",
                "2 m",
                "Outer sizes: width, height, depth.",
                kind: KeyKind.ThreeQuantities,
                absent: "unknown"
            )
            .Quantity("mass", Dimension.Mass, "0.01 g", "50 kg", "Mass.", absent: "not counted, which is said")
            .Quantity(
                "case_max",
                Dimension.Temperature,
                "30 degC",
                "150 degC",
                "Hottest case allowed.",
                absent: "not checked, which is said"
            );
        SchemaHoles.Patterns(driver);
    }

    private static void Dimming(SchemaList driver) =>
        driver
            .Table("dimming", "Its own dimming input.", absent: "unknown")
            .Choice(
                "kind",
                ["1-10 V", "chopped", "voltage", "none", "unknown"],
                "What it takes: a control voltage from 1 V to 10 V, a chopped logic signal, another control voltage, or none.",
                @default: "unknown",
                source: "nobody has looked"
            )
            .Quantity(
                "least",
                Dimension.None,
                "0",
                "1",
                "Least share of the rated current that it reaches.",
                absent: "unknown",
                example: "10 %"
            );

    private static void Sense(SchemaList driver)
    {
        var sense = driver.Table("sense", "The parts on its board that set the current.", absent: "unknown");
        sense
            .Other(
                "marks",
                KeyKind.Texts,
                "What is printed on the parallel parts, one entry each.",
                absent: "not read",
                example: "[\"R33\", \"R33\"]"
            )
            .Quantity(
                "resistance",
                Dimension.Resistance,
                "0.1 mohm",
                "1 Mohm",
                "Resistance of the parts together, where it was measured or is known.",
                absent: "read from the marks"
            );
        sense
            .Table("measured", "What was measured with these parts in place.", absent: "the rated current")
            .Quantity("at", Dimension.Current, "1 mA", "200 A", "Current.", required: true);
        sense
            .Choice(
                "side",
                ["secondary", "primary", "unknown"],
                "Which side of the isolation the parts are on.",
                @default: "unknown",
                source: "nobody has looked"
            )
            .Choice(
                "carries",
                ["smooth", "pulsed", "unknown"],
                "What current they carry.",
                @default: "unknown",
                source: "nobody has looked"
            );
        sense
            .Choice(
                "control",
                ["average", "peak", "primary", "unknown"],
                "What of its current the driver holds: the average, the peak, or what the primary side sees.",
                @default: "unknown",
                source: "nobody has looked"
            )
            .Quantity(
                "inductor_ripple",
                Dimension.Current,
                "0 A",
                "200 A",
                "Ripple of the inductor's current from peak to peak; control of the peak gives half of it less.",
                absent: "unknown",
                example: "0.3 A"
            )
            .Quantity(
                "offset",
                Dimension.Voltage,
                "0 V",
                "100 mV",
                "Greatest offset of the comparator or amplifier at these parts, to either side.",
                absent: "unknown",
                example: "2 mV"
            );
        sense
            .Table(
                "second",
                "A second point: another sense resistance and the current measured with it.",
                absent: "unknown"
            )
            .Quantity(
                "resistance",
                Dimension.Resistance,
                "0.1 mohm",
                "1 Mohm",
                "Resistance of the whole sense path.",
                required: true
            )
            .Quantity("current", Dimension.Current, "1 mA", "200 A", "Output current.", required: true);
    }
}
