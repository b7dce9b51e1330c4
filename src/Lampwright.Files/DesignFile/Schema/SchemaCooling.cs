using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Interfaces, sinks and fans.</summary>
internal static class SchemaCooling
{
    public static void Add(List<SchemaKey> keys)
    {
        var top = new SchemaList(keys, "", "heat");
        top.Table("interface", "What lies between two surfaces that pass heat.", kind: KeyKind.NamedTables)
            .Refers(
                "between",
                "thing",
                "The two things.",
                required: true,
                kind: KeyKind.References,
                example: "[\"emitter.main\", \"sink.main\"]"
            )
            .Length("thickness", "0.1 um", "20 mm", "Its thickness.", required: true)
            .Quantity(
                "conductivity",
                Dimension.ThermalConductivity,
                "0.01 W/(m*K)",
                "2000 W/(m*K)",
                "Its conductivity.",
                required: true
            );

        var sink = top.Table(
            "sink",
            "Heat sinks: fins, pins, a stack on heat pipes, a plain plate, or what was measured.",
            kind: KeyKind.NamedTables
        );
        sink.Text(
            "material",
            "Its material, by name.",
            @default: "aluminium 6063",
            source: "what sinks are drawn from"
        );
        sink.Table("base", "The plate that all stands on.", absent: "measured is used")
            .Length("across", "5 mm", "2 m", "Size across the fins.", required: true)
            .Length("along", "5 mm", "2 m", "Size along the fins, the way of the air.", required: true)
            .Length("thickness", "0.3 mm", "100 mm", "Thickness.", required: true);
        sink.Table("fins", "Its fins.", absent: "a plain plate")
            .Count("count", 1, 1000, "Count.", required: true)
            .Length("height", "0.5 mm", "500 mm", "Height above the base.", required: true)
            .Length("thickness", "0.05 mm", "50 mm", "Thickness of one.", required: true);
        sink.Table("pins", "Round pins instead of fins.", absent: "none")
            .Count("across", 1, 500, "Pins side by side across the air's way, to both edges.", required: true)
            .Count("along", 1, 500, "Rows one behind another, to both edges.", required: true)
            .Length("diameter", "0.3 mm", "50 mm", "Diameter of one.", required: true)
            .Length("height", "0.5 mm", "500 mm", "Height above the base.", required: true)
            .Choice(
                "rows",
                ["in line", "staggered"],
                "How the rows stand behind one another.",
                @default: "in line",
                source: "what most pin sinks are"
            );
        sink.Table("pipes", "Heat pipes from the base to a stack of plates.", absent: "none")
            .Count("count", 1, 100, "Legs that pass the stack; a pipe bent to a U has two.", required: true)
            .Length("diameter", "2 mm", "30 mm", "Diameter.", required: true)
            .Quantity(
                "resistance",
                Dimension.ThermalResistance,
                "0.01 K/W",
                "5 K/W",
                "From base to plates, of one leg.",
                @default: "0.4 K/W ± 0.2 K/W",
                source: "sintered copper of 6 mm; common practice, no source"
            )
            .Quantity(
                "carries",
                Dimension.Power,
                "1 W",
                "1000 W",
                "Heat that one leg carries before it runs dry, by its maker, as it lies.",
                absent: "not judged"
            );
        sink.Table("stack", "The plates on the heat pipes.", absent: "none")
            .Count("count", 2, 500, "Number of plates.", required: true)
            .Length("across", "5 mm", "1 m", "Size of a plate across the air's way.", required: true)
            .Length("along", "5 mm", "1 m", "Size of a plate along the air's way.", required: true)
            .Length("thickness", "0.05 mm", "10 mm", "Thickness of a plate.", required: true)
            .Length("gap", "0.1 mm", "100 mm", "Free gap between two plates.", required: true);
        sink.Quantity(
            "emissivity",
            Dimension.None,
            "0.01",
            "1",
            "Emissivity of its surface.",
            @default: "0.08 ± 0.05",
            source: "bright aluminium; common practice, no source"
        );
        sink.Table(
                "emitters",
                "Which emitters sit on it and where.",
                kind: KeyKind.ListOfTables,
                absent: "one in the middle"
            )
            .Refers("emitter", "emitter", "The emitter.", required: true)
            .Length(
                "at",
                "0 mm",
                "2 m",
                "Its centre from the corner of the base: across, along.",
                required: true,
                kind: KeyKind.Place
            )
            .Quantity(
                "heat",
                Dimension.Power,
                "0 W",
                "10 kW",
                "Heat of another emitter than the light's, the same at every step.",
                absent: "computed for the light's emitter, not counted for others, which is said"
            );
        sink.Table(
                "trials",
                "What was measured on it in the shop; replaces what is computed for that state of the fan.",
                kind: KeyKind.ListOfTables,
                absent: "none"
            )
            .Quantity("power", Dimension.Power, "0.1 W", "10 kW", "Heat put in.", required: true)
            .Quantity(
                "rise",
                Dimension.TemperatureDifference,
                "0.1 K",
                "300 K",
                "Rise of its base over the room once nothing moved any more.",
                required: true
            )
            .Choice(
                "fan",
                ["as set", "stopped"],
                "State of the fan.",
                @default: "as set",
                source: "a trial with the fan as the light runs it"
            );
        sink.Quantity(
                "wanted",
                Dimension.Temperature,
                "0 degC",
                "200 degC",
                "Temperature of its base that is wanted on the hottest day; the opening that would give it is told.",
                absent: "10 K below the emitter's limit, at its junction"
            )
            .Quantity(
                "measured",
                Dimension.ThermalResistance,
                "1e-3 K/W",
                "1000 K/W",
                "Measured resistance from base to air with the fan as set; replaces the computed one.",
                absent: "computed"
            )
            .Quantity("mass", Dimension.Mass, "0.1 g", "100 kg", "Mass.", absent: "from its sizes");
        SchemaHoles.Patterns(sink);

        var fan = top.Table("fan", "Fans.", kind: KeyKind.NamedTables);
        fan.Length(
                "box",
                "5 mm",
                "1 m",
                "Outer sizes: width, height, depth.",
                kind: KeyKind.ThreeQuantities,
                absent: "unknown"
            )
            .Quantity("mass", Dimension.Mass, "0.1 g", "50 kg", "Mass.", absent: "not counted, which is said")
            .Other(
                "curve",
                KeyKind.FanCurve,
                "Flow and pressure at rated voltage, from no flow to no pressure.",
                absent: "the air is not computed, which is said",
                example: "[[\"0 m3/h\", \"34 Pa\"], [\"62 m3/h\", \"0 Pa\"]]"
            )
            .Quantity("rated", Dimension.Voltage, "1 V", "480 V", "Rated voltage.", absent: "run_at is taken for it")
            .Quantity("run_at", Dimension.Voltage, "0 V", "480 V", "Voltage it runs at.", absent: "its rated voltage")
            .Quantity(
                "starts_at",
                Dimension.Voltage,
                "0.1 V",
                "480 V",
                "Least voltage at which it starts every time; below it, it is taken to stand.",
                absent: "half of its rated voltage, for advice only"
            )
            .Quantity(
                "current",
                Dimension.Current,
                "0.1 mA",
                "50 A",
                "Current at rated voltage.",
                absent: "not counted, which is said"
            )
            .Refers(
                "air",
                "thing",
                "What the air passes, in order: hole fields and sinks.",
                kind: KeyKind.References,
                absent: "the sink alone",
                example: "[\"sink_tray.vents\", \"sink.main\"]"
            )
            .Refers(
                "beside",
                "thing",
                "Those of air that stand side by side with their neighbours in that list.",
                kind: KeyKind.References,
                absent: "one behind another",
                example: "[\"sink_tray.left\", \"sink_tray.right\"]"
            );
        fan.Table(
                "losses",
                "What else the air passes: guards, filters, turns.",
                kind: KeyKind.ListOfTables,
                absent: "none"
            )
            .Choice(
                "kind",
                ["guard", "slots", "grille", "filter", "turn", "expansion", "contraction"],
                "What it is: a wire guard, slots in thin sheet, a thick grille, a filter, a sharp turn, a sudden widening, a sudden narrowing.",
                required: true
            )
            .Length(
                "size",
                "1 mm",
                "2 m",
                "Its section; of a widening or narrowing the narrow one.",
                kind: KeyKind.OneOrTwoQuantities,
                absent: "the box of the fan"
            )
            .Quantity(
                "open",
                Dimension.None,
                "0",
                "1",
                "Open area over the section; of a widening or narrowing the narrow section over the wide one.",
                absent: "needed but for a filter and a turn",
                example: "0.75"
            )
            .Length("slot", "0.2 mm", "200 mm", "Width of a slot.", absent: "5 mm")
            .Quantity(
                "pressure",
                Dimension.Pressure,
                "0.1 Pa",
                "10 kPa",
                "Pressure that a filter takes.",
                absent: "needed for a filter"
            )
            .Quantity(
                "flow",
                Dimension.VolumeFlow,
                "0.01 m3/h",
                "10000 m3/h",
                "Flow at which it takes it.",
                absent: "needed for a filter"
            );
        SchemaHoles.Patterns(fan);
        CutOuts(top);
    }

    private static void CutOuts(SchemaList top) =>
        top.Table("cutout", "Thermal cut-outs in the driver's input.", kind: KeyKind.NamedTables)
            .Text(
                "place",
                "Where it sits: sink base, emitter case, channel air, driver, compartment air, or a face or flange of a part.",
                @default: "sink base",
                source: "metal near the emitter that a hand can reach with a screwdriver; common practice, no source"
            )
            .Quantity(
                "opens",
                Dimension.Temperature,
                "30 degC",
                "200 degC",
                "Temperature it opens at; its spread is its tolerance.",
                absent: "one is advised",
                example: "75 degC ± 5 K"
            )
            .Quantity("lag", Dimension.Time, "0 s", "1 h", "How far it lags behind its place.", absent: "15 s")
            .Choice(
                "in",
                ["driver input", "emitter line", "sense line"],
                "What it opens.",
                @default: "driver input",
                source: "the only line it may open"
            );
}
