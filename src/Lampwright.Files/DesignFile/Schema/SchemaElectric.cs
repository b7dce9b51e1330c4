using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Emitter.</summary>
internal static class SchemaElectric
{
    public static void Add(List<SchemaKey> keys)
    {
        Emitter(new SchemaList(keys, "", "steps"));
        SchemaDriver.Add(new SchemaList(keys, "", "steps"));
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
                "maintenance",
                "The maker's tests of how the flux holds over the years.",
                kind: KeyKind.ListOfTables,
                absent: "nothing is said of life"
            )
            .Quantity(
                "case",
                Dimension.Temperature,
                "0 degC",
                "150 degC",
                "Case temperature of the test.",
                required: true
            )
            .Count("samples", 1, 10_000, "Count of units tested.", required: true)
            .Quantity(
                "hours",
                Dimension.Time,
                "0 h",
                "200000 h",
                "Hours of the readings.",
                required: true,
                kind: KeyKind.Quantities,
                example: "[\"0 h\", \"1000 h\", \"6000 h\"]"
            )
            .Quantity(
                "shares",
                Dimension.None,
                "0.01",
                "2",
                "Flux of each as a share of that at the start.",
                required: true,
                kind: KeyKind.Quantities,
                example: "[1.0, 1.002, 0.981]"
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
            .Quantity(
                "light_share",
                Dimension.None,
                "0",
                "0.9",
                "Share of its power that leaves as light, where it was measured.",
                absent: "from flux and radiation_efficacy",
                example: "0.38 ± 0.04"
            )
            .Quantity("mass", Dimension.Mass, "0.01 g", "50 kg", "Mass.", absent: "not counted, which is said");
        SchemaHoles.Patterns(emitter);
    }
}
