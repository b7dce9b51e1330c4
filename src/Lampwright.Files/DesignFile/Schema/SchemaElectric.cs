using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Emitter and driver.</summary>
internal static class SchemaElectric
{
    public static void Add(List<SchemaKey> keys)
    {
        Emitter(new SchemaList(keys, "", "steps"));
        Driver(new SchemaList(keys, "", "steps"));
    }

    private static void Emitter(SchemaList top)
    {
        var emitter = top.Table(
            "emitter",
            "Light-emitting modules, from their data sheets.",
            kind: KeyKind.NamedTables
        );
        emitter
            .Table(
                "points",
                "Forward voltage and flux at the reference temperature; one point is enough, with a wide band.",
                kind: KeyKind.ListOfTables,
                absent: "rated is used"
            )
            .Quantity("current", Dimension.Current, "1 uA", "200 A", "Current of the point.", required: true)
            .Quantity("voltage", Dimension.Voltage, "0.1 V", "1000 V", "Forward voltage at it.", required: true)
            .Quantity("flux", Dimension.LuminousFlux, "0.01 lm", "1e6 lm", "Luminous flux at it.", required: true);
        emitter
            .Table("rated", "All that is known where there are no points.", absent: "points are used")
            .Quantity("current", Dimension.Current, "1 uA", "200 A", "Rated current.", required: true)
            .Quantity(
                "voltage",
                Dimension.Voltage,
                "0.1 V",
                "1000 V",
                "Least and most forward voltage at it.",
                required: true,
                kind: KeyKind.TwoQuantities
            )
            .Quantity("flux", Dimension.LuminousFlux, "0.01 lm", "1e6 lm", "Flux at it.", required: true);
        emitter
            .Quantity(
                "reference",
                Dimension.Temperature,
                "-40 degC",
                "150 degC",
                "Junction temperature of the points.",
                @default: "25 degC",
                source: "common practice, no source"
            )
            .Quantity(
                "voltage_slope",
                Dimension.VoltagePerTemperature,
                "-2 V/K",
                "0 V/K",
                "Change of the whole module's voltage over temperature.",
                absent: "a usual share of the voltage, in a wide band"
            );
        emitter
            .Table("flux_hot", "Flux of a hot junction.", absent: "a usual fall, in a wide band")
            .Quantity("at", Dimension.Temperature, "0 degC", "200 degC", "Junction temperature.", required: true)
            .Quantity(
                "factor",
                Dimension.None,
                "0.1",
                "1.2",
                "Flux there as a share of the flux at the reference.",
                required: true
            );
        emitter
            .Quantity(
                "current_max",
                Dimension.Current,
                "1 uA",
                "200 A",
                "Most current it may carry.",
                absent: "not checked, which is said"
            )
            .Quantity(
                "junction_max",
                Dimension.Temperature,
                "30 degC",
                "250 degC",
                "Hottest junction allowed.",
                absent: "not checked, which is said"
            );
        emitter
            .Table(
                "junction_to_case",
                "Thermal resistance from junction to case.",
                absent: "the junction is not computed, which is said"
            )
            .Quantity("value", Dimension.ThermalResistance, "1e-4 K/W", "1000 K/W", "The resistance.", required: true)
            .Choice(
                "kind",
                ["real", "electrical"],
                "Whether it counts on heat alone (real) or on electrical power.",
                @default: "real",
                source: "the cautious reading"
            );
        emitter
            .Length(
                "body",
                "0.5 mm",
                "500 mm",
                "The back that touches the sink: width and height.",
                kind: KeyKind.TwoQuantities,
                absent: "the face's size"
            )
            .Length(
                "face",
                "0.1 mm",
                "500 mm",
                "The light-emitting surface: its diameter, or width and height.",
                kind: KeyKind.OneOrTwoQuantities,
                absent: "a point",
                example: "\"22 mm\""
            )
            .Quantity(
                "beam",
                Dimension.Angle,
                "1 deg",
                "180 deg",
                "Full width of the beam at half of its peak.",
                @default: "120 deg",
                source: "a flat emitter that follows the cosine law"
            )
            .Quantity(
                "cct",
                Dimension.Temperature,
                "1000 K",
                "20000 K",
                "Correlated colour temperature.",
                absent: "unknown"
            )
            .Quantity(
                "radiation_efficacy",
                Dimension.LuminousFlux / Dimension.Power,
                "100 lm/W",
                "683 lm/W",
                "Lumens in a watt of the light itself, which turns flux into watts that leave.",
                @default: "320 lm/W ± 25 lm/W",
                source: "common practice, no source"
            )
            .Quantity("mass", Dimension.Mass, "0.01 g", "50 kg", "Mass.", absent: "not counted, which is said");
        SchemaHoles.Patterns(emitter);
    }

    private static void Driver(SchemaList top)
    {
        var driver = top.Table("driver", "Constant-current drivers.", kind: KeyKind.NamedTables);
        driver
            .Table("current", "Output current.")
            .Quantity("rated", Dimension.Current, "1 mA", "200 A", "Rated output current.", required: true)
            .Quantity(
                "least",
                Dimension.Current,
                "0 A",
                "200 A",
                "Least current that it regulates.",
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
}
