namespace Lampwright.Files.DesignFile.Schema;

/// <summary>What of a brake stands in the way of a part.</summary>
internal static class SchemaBrake
{
    private static readonly string Practice = "a small hand brake with fingers; common practice, no source";

    public static void Shape(SchemaList brake)
    {
        brake.Length(
            "fingers",
            "1 mm",
            "10 m",
            "Widths of the fingers of its clamp; one as long as the brake for a clamp in one piece.",
            kind: KeyKind.Quantities,
            absent: "25, 50 and 75 mm in turn, as many as fill its length",
            example: "[\"25 mm\", \"25 mm\", \"50 mm\", \"75 mm\", \"100 mm\"]"
        );
        Usual(brake, "finger_height", "5 mm", "1 m", "Height of the fingers up to the clamp's beam.", "50 mm");
        Usual(brake, "finger_depth", "3 mm", "1 m", "Depth of the fingers from the nose back.", "50 mm");
        Usual(brake, "beam_height", "1 mm", "2 m", "Height of the clamp's beam above the fingers.", "60 mm");
        Usual(brake, "bed_depth", "5 mm", "5 m", "Depth of the bed behind the apron's axis.", "200 mm");
        Usual(brake, "apron_depth", "3 mm", "1 m", "Depth of the apron in front of its axis.", "60 mm");
        Usual(brake, "apron_thickness", "1 mm", "500 mm", "Thickness of the apron.", "30 mm");
        Usual(brake, "opening", "0 mm", "1 m", "How far the clamp lifts off the bed.", "30 mm");
        Usual(brake, "least_hold", "0 mm", "500 mm", "Least metal that the clamp must hold behind a bend.", "8 mm");
        Usual(brake, "end_gap", "0 mm", "100 mm", "What may stay without a finger at each end of a bend.", "5 mm");
        Usual(brake, "finger_gap", "0 mm", "50 mm", "What may stay open between two fingers.", "3 mm");
        Section(
            brake,
            "nose",
            "Section of a finger: corners [out, up], from the foremost edge of its nose; it stands on the sheet",
            "finger_height and finger_depth are used",
            "[[\"0 mm\", \"0 mm\"], [\"-40 mm\", \"60 mm\"], [\"-50 mm\", \"60 mm\"], [\"-50 mm\", \"0 mm\"]]"
        );
        Section(
            brake,
            "clamp",
            "Section of the beam that holds the fingers, from the same point",
            "beam_height is used",
            "[[\"-40 mm\", \"60 mm\"], [\"-50 mm\", \"110 mm\"], [\"-90 mm\", \"110 mm\"], [\"-50 mm\", \"60 mm\"]]"
        );
        Section(
            brake,
            "bed",
            "Section of the bed: corners [out, up], from the apron's axis; it lies behind it, its surface at 0",
            "bed_depth is used",
            "[[\"0 mm\", \"0 mm\"], [\"-200 mm\", \"0 mm\"], [\"-200 mm\", \"-40 mm\"], [\"-20 mm\", \"-40 mm\"]]"
        );
        Section(
            brake,
            "apron",
            "Section of the apron as it lies level, from its axis",
            "apron_depth and apron_thickness are used",
            "[[\"0 mm\", \"0 mm\"], [\"0 mm\", \"-30 mm\"], [\"60 mm\", \"-30 mm\"], [\"60 mm\", \"0 mm\"]]"
        );
    }

    private static void Usual(SchemaList brake, string key, string least, string most, string meaning, string usual) =>
        brake.Length(key, least, most, meaning, @default: usual, source: Practice);

    private static void Section(SchemaList brake, string key, string meaning, string absent, string example) =>
        brake.Length(key, "-5 m", "5 m", meaning + ".", kind: KeyKind.Places, absent: absent, example: example);
}
