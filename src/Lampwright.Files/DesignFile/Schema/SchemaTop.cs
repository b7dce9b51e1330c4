using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Keys that belong to no station alone.</summary>
internal static class SchemaTop
{
    public static void Add(List<SchemaKey> keys)
    {
        var top = new SchemaList(keys, "", "all");
        top.Count("format", 1, 1, "The form of the file; this is the first.", required: true)
            .Text(
                "title",
                "What the light is called on the cover of the packet.",
                absent: "no title",
                example: "Copy light"
            )
            .Text(
                "shop",
                "A file beside this one with facts of the shop that several lights share.",
                absent: "no shop file",
                example: "shop.toml"
            );

        new SchemaList(keys, "", "all", inShop: true)
            .Table("show", "How values are shown; the file itself may mix units freely.")
            .Choice("length", ["mm", "cm", "in"], "Unit of lengths.", @default: "mm", source: "the house's choice")
            .Choice(
                "temperature",
                ["degC", "degF", "K"],
                "Unit of temperatures.",
                @default: "degC",
                source: "the house's choice"
            )
            .Choice(
                "paper",
                ["A4", "Letter", "A3"],
                "Paper of the packet.",
                @default: "A4",
                source: "the house's choice"
            )
            .Table("templates", "How the templates at full size are printed.")
            .Choice("paper", ["A4", "Letter", "A3", "roll"], "Their paper.", absent: "that of the packet")
            .Length(
                "roll",
                "150 mm",
                "2 m",
                "Width of the roll.",
                @default: "610 mm",
                source: "the common width of plotter paper; common practice, no source"
            )
            .Choice(
                "faces",
                ["both", "outside", "inside"],
                "Which faces of the sheet get a template; both prints the inside of parts whose set lines lie there.",
                @default: "both",
                source: "the house's choice"
            )
            .Length(
                "bar_across",
                "90 mm",
                "270 mm",
                "Measured length of the proof bar along the short side of the paper; the templates are stretched by what it is off.",
                absent: "not corrected"
            )
            .Length(
                "bar_along",
                "90 mm",
                "270 mm",
                "Measured length of the proof bar along the long side of the paper.",
                absent: "not corrected"
            );

        new SchemaList(keys, "", "all", inShop: true)
            .Table("given", "Named values that any expression may use by their bare names.")
            .Quantity(
                "*",
                Dimension.None,
                "",
                "",
                "A value of any dimension.",
                kind: KeyKind.AnyQuantity,
                example: "3 mm"
            );

        var place = top.Table("place", "Where the light works.");
        place
            .Quantity(
                "ambient",
                Dimension.Temperature,
                "-40 degC",
                "60 degC",
                "Usual temperature of the air.",
                @default: "20 degC",
                source: "common practice, no source"
            )
            .Quantity(
                "ambient_max",
                Dimension.Temperature,
                "-40 degC",
                "80 degC",
                "Highest temperature of the air that the light must stand.",
                @default: "35 degC",
                source: "common practice, no source"
            )
            .Quantity(
                "altitude",
                Dimension.Length,
                "-450 m",
                "6000 m",
                "Height above the sea, which thins the air.",
                @default: "0 m",
                source: "sea level"
            );
        place
            .Table("supply", "What feeds the driver.", absent: "unknown")
            .Choice("kind", ["ac", "dc"], "Alternating or direct.", required: true)
            .Quantity(
                "voltage",
                Dimension.Voltage,
                "1 V",
                "480 V",
                "Voltage; of alternating supply the effective value.",
                required: true
            )
            .Quantity(
                "frequency",
                Dimension.Frequency,
                "16 Hz",
                "1000 Hz",
                "Frequency of an alternating supply.",
                absent: "unknown"
            )
            .Quantity(
                "resistance",
                Dimension.Resistance,
                "0.1 mohm",
                "1 kohm",
                "Resistance of supply and line together, both conductors.",
                absent: "unknown",
                example: "0.2 ohm"
            );

        top.Table(
                "rules",
                "Rules of thumb that the maker overrides, each with a reason. No override lifts a stop that protects people."
            )
            .Table("*", "The rule's value by its name, as docs/findings.md gives it.")
            .Other(
                "value",
                KeyKind.AnyQuantity,
                "The value, in the rule's unit.",
                required: true,
                example: "{2*given.gap}"
            )
            .Text("because", "The maker's reason, which is printed beside every finding it changes.", required: true);

        var readings = new SchemaList(keys, "", "readings").Table("readings", "What was measured on the real light.");
        readings.Text("file", "File with the readings beside this one.", required: true, example: "readings.csv");
        readings
            .Table("meter", "What measured the light.")
            .Text("kind", "Kind of meter.", @default: "unknown", source: "nothing is known of it", example: "phone")
            .Quantity(
                "factor",
                Dimension.None,
                "0.01",
                "100",
                "What its readings are multiplied by.",
                @default: "1 ± 0.2",
                source: "common practice, no source"
            );
    }
}
