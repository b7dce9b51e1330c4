using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Reliefs, hems, joggles and the short forms of brackets.</summary>
internal static class SchemaBends
{
    public static void Bracket(SchemaList part)
    {
        var bracket = part.Table(
            "bracket",
            "An L, U or Z in short: a web (the face, width by length) and legs leg_a on its left edge and leg_b on its right.",
            absent: "face is used"
        );
        bracket
            .Choice(
                "shape",
                ["L", "U", "Z"],
                "L: leg_a alone; U: both legs to the inside; Z: leg_b turns the other way.",
                required: true
            )
            .Length("length", "1 mm", "10 m", "Length along the bends.", required: true);
        bracket
            .Table("web", "Width of the web, inside or outside.", required: true)
            .Length("inside", "0.1 mm", "5 m", "Width between the bends, inside.", absent: "outside is used")
            .Length("outside", "0.1 mm", "5 m", "Width outside.", absent: "inside is used");
        bracket
            .Table("legs", "Height of the legs, inside or outside: one for all, or leg_a and leg_b.", required: true)
            .Length(
                "inside",
                "0.1 mm",
                "5 m",
                "Height inside.",
                kind: KeyKind.OneOrTwoQuantities,
                absent: "outside is used"
            )
            .Length(
                "outside",
                "0.1 mm",
                "5 m",
                "Height outside.",
                kind: KeyKind.OneOrTwoQuantities,
                absent: "inside is used"
            );
    }

    public static void Relief(SchemaList part) =>
        part.Table("relief", "What is cut away at the ends of bends.", absent: "a square notch")
            .Choice(
                "corner",
                ["notch", "clear", "hole", "slit", "overlap"],
                "Where two bends meet: a square notch; both flanges shortened so that they clear (for an outside weld); a round hole; a slit beside "
                    + "flanges; the flange given first over the edge of its neighbour.",
                absent: "notch"
            )
            .Length(
                "hole",
                "0.5 mm",
                "50 mm",
                "Diameter of the relief hole.",
                absent: "the bend radius, 1/8 in or more"
            )
            .Length(
                "width",
                "0.1 mm",
                "50 mm",
                "Width of a notch beside a flange.",
                absent: "the thickness, 1.5 mm or more"
            )
            .Length("depth", "0.1 mm", "50 mm", "Depth of that notch past the bend.", absent: "radius and thickness")
            .Length("gap", "0 mm", "10 mm", "Gap of corners and mitres, for the weld.", absent: "0.2 mm");

    public static void Hems(SchemaList part)
    {
        var hem = part.Table(
            "hem",
            "Closed hems: edges folded back flat, safe for hands.",
            kind: KeyKind.NamedTables,
            absent: "none"
        );
        hem.Refers("on", "edge", "The edge that is folded.", required: true, example: "face.top")
            .Length("width", "0.1 mm", "1 m", "Width over all, from the outside of the fold.", required: true)
            .Choice("side", ["inside", "outside"], "Which side of its parent it lies on.", absent: "inside");
        Offsets(hem);
    }

    public static void Joggles(SchemaList part)
    {
        var joggle = part.Table(
            "joggle",
            "Strips along an edge set off by a step; the step itself is NAME_step.",
            kind: KeyKind.NamedTables,
            absent: "none"
        );
        joggle
            .Refers("on", "edge", "The edge it stands on.", required: true, example: "face.top")
            .Length("lap", "0.1 mm", "5 m", "Width of the flat strip beyond the step.", required: true)
            .Length("offset", "0.05 mm", "0.5 m", "The step, skin to skin.", absent: "one thickness")
            .Quantity(
                "angle",
                Dimension.Angle,
                "1 deg",
                "90 deg",
                "Angle of both bends.",
                absent: "45 deg, or less where the step is too low for it"
            )
            .Choice("side", ["inside", "outside"], "Which way the strip is set off.", absent: "inside");
        Offsets(joggle);
    }

    private static void Offsets(SchemaList owner) =>
        owner
            .Length("start", "0 mm", "10 m", "Distance of its start from the start of the edge.", absent: "0 mm")
            .Length("end", "0 mm", "10 m", "Distance of its end from the end of the edge.", absent: "0 mm");
}
