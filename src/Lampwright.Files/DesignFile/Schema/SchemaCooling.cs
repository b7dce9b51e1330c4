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
            "Heat sinks with plate fins, or with a measured resistance.",
            kind: KeyKind.NamedTables
        );
        sink.Text(
            "material",
            "Its material, by name.",
            @default: "aluminium 6063",
            source: "what sinks are drawn from"
        );
        sink.Table("base", "The plate the fins stand on.", absent: "measured is used")
            .Length("across", "5 mm", "2 m", "Size across the fins.", required: true)
            .Length("along", "5 mm", "2 m", "Size along the fins, the way of the air.", required: true)
            .Length("thickness", "0.3 mm", "100 mm", "Thickness.", required: true);
        sink.Table("fins", "Its fins.", absent: "a plain plate")
            .Count("count", 1, 1000, "Count.", required: true)
            .Length("height", "0.5 mm", "500 mm", "Height above the base.", required: true)
            .Length("thickness", "0.05 mm", "50 mm", "Thickness of one.", required: true);
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
            );
        sink.Quantity(
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
            );
        SchemaHoles.Patterns(fan);
    }
}
