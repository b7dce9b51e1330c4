using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Tubes cut to length.</summary>
internal static class SchemaTubes
{
    public static void Tube(SchemaList part)
    {
        var tube = part.Table(
            "tube",
            "A square or rectangular tube cut to length; its sides are face, top, back and bottom, on which holes are placed by x from the start and y from the side before.",
            absent: "face is used"
        );
        tube.Length(
                "size",
                "3 mm",
                "1 m",
                "Outside width (of the face) and height.",
                required: true,
                kind: KeyKind.TwoQuantities,
                example: "[\"30 mm\", \"20 mm\"]"
            )
            .Length("wall", "0.3 mm", "30 mm", "Wall.", required: true, example: "2 mm")
            .Length(
                "length",
                "1 mm",
                "10 m",
                "Length over all, between the longest points of its ends.",
                required: true
            )
            .Length(
                "corner",
                "0.3 mm",
                "100 mm",
                "Outside radius of the corners.",
                absent: "2 walls ± 0.4 walls (EN 10219-2; 2.5 ± 0.5 above 6 mm, 3 ± 0.6 above 10 mm)"
            )
            .Text(
                "material",
                "Its material, by name.",
                @default: "S235JR",
                source: "plain steel tube; common practice, no source"
            );
        End(tube, "start", "at x = 0");
        End(tube, "end", "at x = length");
    }

    private static void End(SchemaList tube, string key, string where) =>
        tube.Table(key, $"A mitred end {where}.", absent: "square")
            .Quantity(
                "angle",
                Dimension.Angle,
                "-80 deg",
                "80 deg",
                "Angle of the saw against a square cut; positive shortens the far side of the face it is seen on.",
                required: true,
                example: "45 deg"
            )
            .Choice("on", ["face", "top"], "The side on which the slant is seen.", absent: "face");
}
