using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Reflector, diffuser and subject.</summary>
internal static class SchemaOptics
{
    public static void Add(List<SchemaKey> keys)
    {
        var top = new SchemaList(keys, "", "light");
        top.Table("reflector", "Reflectors: a folded funnel, or a shape of their own.", kind: KeyKind.NamedTables)
            .Refers("part", "part", "The folded part that is the reflector.", absent: "the sizes below")
            .Length(
                "small",
                "1 mm",
                "5 m",
                "Small opening: width and height.",
                kind: KeyKind.TwoQuantities,
                absent: "from the part"
            )
            .Length(
                "large",
                "1 mm",
                "5 m",
                "Large opening: width and height.",
                kind: KeyKind.TwoQuantities,
                absent: "from the part"
            )
            .Length("depth", "1 mm", "5 m", "Distance between the openings.", absent: "from the part")
            .Quantity(
                "reflectance",
                Dimension.None,
                "0.01",
                "0.99",
                "Share of light that a wall throws back.",
                @default: "0.6 ± 0.06",
                source: "bare stainless sheet; common practice, no source"
            )
            .Quantity(
                "specular",
                Dimension.None,
                "0",
                "1",
                "Share of that which is thrown back as by a mirror.",
                @default: "0.1 ± 0.1",
                source: "common practice, no source"
            );

        var diffuser = top.Table("diffuser", "Diffusers in front of the light.", kind: KeyKind.NamedTables);
        diffuser
            .Length("size", "1 mm", "5 m", "Width and height.", kind: KeyKind.TwoQuantities, absent: "unknown")
            .Length("thickness", "0.01 mm", "50 mm", "Thickness.", absent: "unknown")
            .Quantity(
                "transmittance",
                Dimension.None,
                "0.01",
                "0.99",
                "Share of light that passes.",
                @default: "0.6 ± 0.08",
                source: "opal sheet; common practice, no source"
            )
            .Quantity(
                "reflectance",
                Dimension.None,
                "0",
                "0.99",
                "Share of light that is thrown back.",
                @default: "0.3 ± 0.05",
                source: "opal sheet; common practice, no source"
            )
            .Quantity(
                "temperature_max",
                Dimension.Temperature,
                "30 degC",
                "500 degC",
                "Hottest it may get.",
                absent: "not checked, which is said"
            )
            .Quantity("mass", Dimension.Mass, "0.1 g", "50 kg", "Mass.", absent: "not counted, which is said");
        SchemaHoles.Patterns(diffuser);

        top.Table("subject", "What is lit and how it is photographed.")
            .Length(
                "distance",
                "1 mm",
                "100 m",
                "Distance from the last surface of the light.",
                @default: "1 m",
                source: "the distance at which lux and candela are equal"
            )
            .Length("size", "1 mm", "100 m", "Width and height.", kind: KeyKind.TwoQuantities, absent: "a point")
            .Quantity(
                "iso",
                Dimension.None,
                "1",
                "1e6",
                "Sensitivity of the camera.",
                @default: "100",
                source: "common practice, no source"
            )
            .Quantity(
                "shutter",
                Dimension.Time,
                "1 us",
                "1 h",
                "Time of exposure.",
                @default: "1/60 s",
                source: "common practice, no source"
            );
    }
}
