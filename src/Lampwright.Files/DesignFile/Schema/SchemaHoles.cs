using Lampwright.Tables;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Holes of parts and hole patterns of bought things.</summary>
internal static class SchemaHoles
{
    /// <summary>Hole patterns that a bought thing brings along.</summary>
    public static void Patterns(SchemaList thing)
    {
        var pattern = thing.Table(
            "holes",
            "Hole patterns that it brings along, by name.",
            kind: KeyKind.NamedTables,
            absent: "none"
        );
        pattern
            .Other(
                "shape",
                KeyKind.Shape,
                "What the holes are: round, slot or rectangle with sizes.",
                absent: "for says it",
                example: "\"round 4.3 mm\""
            )
            .Text("for", "What goes through or in.", absent: "shape says it", example: "M4 tap");
        Layouts(pattern);
        pattern
            .Length(
                "at",
                "-2 m",
                "2 m",
                "Centre of the pattern from the corner of the side it is on, or centre.",
                kind: KeyKind.Place,
                absent: "centre",
                example: "\"centre\""
            )
            .Choice(
                "on",
                ["back", "front", "left", "right", "bottom", "top"],
                "Which side of its box the pattern is on.",
                absent: "back"
            )
            .Length(
                "through",
                "0.1 mm",
                "1 m",
                "Material that a screw passes there.",
                absent: "the depth of a fan or diffuser, the base of a sink, else 2 mm",
                example: "3 mm"
            );
    }

    /// <summary>Holes that are cut in a folded part.</summary>
    public static void Holes(SchemaList part)
    {
        var hole = part.Table(
            "hole",
            "Holes, patterns and fields of holes.",
            kind: KeyKind.NamedTables,
            absent: "none"
        );
        hole.Refers("on", "panel", "The face or flange it is in.", required: true, example: "face")
            .Length(
                "at",
                "-10 m",
                "10 m",
                "Centre of hole or pattern in the frame of its face or flange, or centre.",
                kind: KeyKind.Place,
                absent: "centre",
                example: "\"centre\""
            )
            .Other(
                "shape",
                KeyKind.Shape,
                "What is cut: round, slot or rectangle with sizes.",
                absent: "for says it",
                example: "\"slot 10 mm x 4.3 mm\""
            )
            .Length(
                "outline",
                "-5 m",
                "5 m",
                "Corners of a cut-out of any form instead of a shape, from the place of the hole, either way round; it closes itself.",
                kind: KeyKind.Places,
                absent: "shape or for says it",
                example: "[[\"-20 mm\", \"-10 mm\"], [\"20 mm\", \"-10 mm\"], [\"10 mm\", \"15 mm\"]]"
            )
            .Length("round", "0.1 mm", "1 m", "Radius of the corners of an outline.", absent: "sharp")
            .Refers(
                "for",
                "pattern",
                "What it is for: a pattern of a bought thing (fan.main.mount), the cut-out of an item (inlet.cutout), or a screw (M4 clearance, M4 tap).",
                absent: "shape says it",
                example: "fan.main.mount"
            )
            .Choice(
                "cutout",
                [.. StandardCutOut.All.Select(c => c.Name)],
                "A standard cut-out instead of a shape: its opening, and as NAME.screws the holes of its screws.",
                absent: "shape or for says it"
            )
            .Quantity(
                "turn",
                Quantities.Dimension.Angle,
                "-360 deg",
                "360 deg",
                "Turn of shape and pattern, counter-clockwise seen on the outside.",
                absent: "not turned"
            )
            .Length(
                "live",
                "0 mm",
                "2 m",
                "Distance to live parts behind this opening, which is then held against finger and wire, also where something stands in it.",
                absent: "what the part says; nothing where something stands in it"
            );
        Layouts(hole);
    }

    private static void Layouts(SchemaList owner)
    {
        owner
            .Table("grid", "Rows and columns about the centre.", absent: "a single hole")
            .Count("count", 1, 500, "Count along x and y.", required: true, kind: KeyKind.TwoCounts)
            .Length(
                "pitch",
                "0 mm",
                "2 m",
                "Pitch along x and y, or one for both; at least 0.5 mm where there is more than one.",
                required: true,
                kind: KeyKind.OneOrTwoQuantities,
                example: "[\"76 mm\", \"60 mm\"]"
            );
        owner
            .Table("ring", "Holes on a circle about the centre, the first on +x.", absent: "a single hole")
            .Count("count", 1, 500, "Count of holes.", required: true)
            .Length("diameter", "1 mm", "2 m", "Diameter of the circle.", required: true);
        owner
            .Table(
                "field",
                "A perforated field about the centre: as many holes as lie wholly within.",
                absent: "a single hole"
            )
            .Other(
                "shape",
                KeyKind.Shape,
                "What the holes are.",
                absent: "the shape beside the field",
                example: "\"round 4 mm\""
            )
            .Length("pitch", "0.5 mm", "1 m", "Distance of neighbours.", required: true)
            .Choice(
                "layout",
                ["staggered", "square"],
                "Rows shifted by half a pitch, or a square grid.",
                absent: "staggered"
            )
            .Length(
                "within",
                "1 mm",
                "5 m",
                "Width and height of the field.",
                required: true,
                kind: KeyKind.TwoQuantities
            )
            .Length(
                "edge",
                "0 mm",
                "1 m",
                "Least metal between its holes and the edges and bends of the face or flange; holes that come nearer are left out.",
                absent: "none are left out"
            );
        owner.Length(
            "points",
            "-5 m",
            "5 m",
            "Single places from the centre of the pattern.",
            kind: KeyKind.Places,
            absent: "a single hole",
            example: "[[\"0 mm\", \"0 mm\"], [\"20 mm\", \"0 mm\"]]"
        );
    }
}
