using Lampwright.Quantities;
using Lampwright.Tables;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Bought items, joints, tilt, arm and stand.</summary>
internal static class SchemaFitUp
{
    public static void Add(List<SchemaKey> keys)
    {
        var fit = new SchemaList(keys, "", "fit-up");
        var item = fit.Table("item", "Other bought things.", kind: KeyKind.NamedTables);
        item.Length(
                "box",
                "0.1 mm",
                "5 m",
                "Outer sizes: width, height, depth.",
                kind: KeyKind.ThreeQuantities,
                absent: "unknown"
            )
            .Quantity("mass", Dimension.Mass, "0.01 g", "200 kg", "Mass.", absent: "not counted, which is said")
            .Choice(
                "cutout",
                [.. StandardCutOut.All.Select(c => c.Name)],
                "The standard cut-out that it needs; its patterns are cutout and, where it has screws, screws.",
                absent: "none"
            )
            .Text("note", "What the maker notes beside it.", absent: "nothing");
        SchemaHoles.Patterns(item);

        var joint = fit.Table(
            "joint",
            "What is fastened to what, how it lies, in which order it stacks.",
            kind: KeyKind.NamedTables
        );
        joint
            .Refers(
                "stack",
                "thing",
                "Hole patterns in the order of the stack, from the screw's head on.",
                required: true,
                kind: KeyKind.References,
                example: "[\"fan.main.mount\", \"sink_tray.fan\"]"
            )
            .Other(
                "sides",
                KeyKind.Texts,
                "Which side of each touches its neighbour.",
                absent: "outside on back",
                example: "[\"back\", \"outside\"]"
            )
            .Quantity(
                "turn",
                Dimension.Angle,
                "-360 deg",
                "360 deg",
                "Turn of the second on the first about the axis of the pattern.",
                absent: "0 deg"
            );
        joint
            .Table("screw", "The screw and what goes with it.", absent: "glued, welded or clipped")
            .Text("size", "Thread.", required: true, example: "M4")
            .Length("length", "1 mm", "500 mm", "Length under the head.", required: true)
            .Other("nut", KeyKind.Flag, "Whether there is a nut.", absent: "false", example: "true")
            .Count("washers", 0, 20, "Count of washers.", absent: "0");
        joint.Choice(
            "marked",
            ["by template", "by hand", "centre punched", "drilled together"],
            "How the holes were marked, which decides how far they may miss.",
            @default: "by template",
            source: "the packet prints templates"
        );

        fit.Table("assembly", "From which part the others are placed.")
            .Refers("fixed", "body", "The part or item that stands still.", required: true)
            .Choice(
                "gravity",
                ["-x", "+x", "-y", "+y", "-z", "+z"],
                "Direction of gravity in the frame of that part.",
                @default: "-y",
                source: "the house's choice"
            );

        var balance = new SchemaList(keys, "", "balance");
        balance
            .Table("tilt", "Tilt joints that friction holds.", kind: KeyKind.NamedTables)
            .Refers(
                "between",
                "thing",
                "The two patterns on the axis: what holds and what tilts.",
                required: true,
                kind: KeyKind.References,
                example: "[\"yoke.pivot\", \"sink_tray.pivot\"]"
            )
            .Count("screws", 1, 16, "Count of screws on the axis.", @default: "2", source: "one on each side")
            .Text(
                "screw",
                "Thread and kind of the screw.",
                @default: "M6 wing",
                source: "common practice, no source",
                example: "M6 wing"
            )
            .Quantity(
                "torque",
                Dimension.Torque,
                "0.01 N*m",
                "500 N*m",
                "Torque that the hand gives each.",
                @default: "1.5 N*m ± 0.5 N*m",
                source: "common practice, no source"
            )
            .Count("faces", 1, 16, "Rubbing faces per screw.", @default: "2", source: "one on each side of the arm")
            .Length(
                "washer",
                "1 mm",
                "500 mm",
                "Inner and outer diameter of the rubbing faces.",
                kind: KeyKind.TwoQuantities,
                absent: "a usual washer of the thread"
            )
            .Quantity(
                "friction",
                Dimension.None,
                "0.01",
                "2",
                "Coefficient of friction of the faces.",
                @default: "0.135 ± 0.03",
                source: "common practice, no source"
            );
        balance
            .Table("arm", "Arms that carry the light at their end.", kind: KeyKind.NamedTables)
            .Length("length", "1 mm", "20 m", "Free length.", required: true)
            .Length("width", "0.5 mm", "1 m", "Outer width of the section.", required: true)
            .Length("height", "0.5 mm", "1 m", "Outer height of the section in the plane of bending.", required: true)
            .Length("wall", "0.1 mm", "100 mm", "Thickness of its wall.", absent: "a solid bar")
            .Text(
                "material",
                "Its material, by name.",
                @default: "S235JR",
                source: "plain steel section; common practice, no source"
            );
        balance
            .Table("stand", "Stands.", kind: KeyKind.NamedTables)
            .Length("height", "1 mm", "50 m", "Height of the tilt axis above floor or table.", required: true)
            .Length(
                "foot",
                "1 mm",
                "20 m",
                "Distance from the foot of the column to the nearest tipping edge.",
                required: true
            )
            .Quantity("mass", Dimension.Mass, "1 g", "2000 kg", "Mass of the stand itself.", required: true)
            .Length(
                "offset",
                "0 mm",
                "20 m",
                "Horizontal distance of the light's axis from the column.",
                @default: "0 mm",
                source: "the light stands over the column"
            );
    }
}
