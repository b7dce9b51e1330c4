using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Steps and the drawer that they pick from.</summary>
internal static class SchemaSteps
{
    public static void Add(List<SchemaKey> keys)
    {
        Steps(new SchemaList(keys, "", "steps"));
        var drawer = new SchemaList(keys, "", "steps", inShop: true).Table(
            "drawer",
            "What lies in the shop's drawers."
        );
        drawer.Quantity(
            "resistors",
            Dimension.Resistance,
            "1 mohm",
            "10 Mohm",
            "Resistors at hand, which steps.stock = \"drawer\" takes from: a value each, or a table that says how many there are. A spread is the part's own tolerance.",
            kind: KeyKind.ValuesOrTables,
            absent: "none",
            example: "[\"0.1 ohm\", { value = \"0.22 ohm\", count = 2 }]"
        );
        drawer
            .Items("resistors")
            .Quantity("value", Dimension.Resistance, "1 mohm", "10 Mohm", "Resistance of the part.", required: true)
            .Count("count", 0, 100000, "How many there are.", absent: "as many as wanted")
            .Quantity(
                "rating",
                Dimension.Power,
                "10 mW",
                "1000 W",
                "Its own rated power.",
                absent: "that of steps.part.rating"
            );
    }

    private static void Steps(SchemaList top)
    {
        var steps = top.Table("steps", "How the light is dimmed: resistors in the driver's sense path.");
        steps
            .Refers("emitter", "emitter", "Which emitter.", @default: "main", source: "the usual name")
            .Refers("driver", "driver", "Which driver.", @default: "main", source: "the usual name")
            .Choice(
                "arrangement",
                ["series chain", "parallel branches", "selector"],
                "How the resistors are connected.",
                @default: "series chain",
                source: "the house's choice"
            )
            .Choice(
                "thrown",
                ["freely", "one after another"],
                "How the switches are thrown: one after another, each wanted step, brightest first, has one more of them open in the order of the chain. Not for a selector.",
                @default: "freely",
                source: "the house's choice"
            )
            .Count("switches", 0, 8, "Count of switches.", required: true)
            .Choice(
                "selector",
                ["make before break", "break before make", "unknown"],
                "What a rotary switch does between two positions.",
                @default: "unknown",
                source: "nobody has looked"
            )
            .Choice(
                "taps",
                ["on the board", "at the chain's ends"],
                "Where the sense input takes its voltage; parallel branches are always sensed on the board.",
                @default: "on the board",
                source: "the house's choice"
            )
            .Quantity(
                "bleed",
                Dimension.Resistance,
                "1 mohm",
                "10 Mohm",
                "Resistor on the driver's board across the two leads, so that a loose lead falls to the dimmest step; series chain and selector.",
                absent: "none"
            )
            .Quantity(
                "floor",
                Dimension.Resistance,
                "0 ohm",
                "10 Mohm",
                "Resistor on the driver's board in series with all parallel branches.",
                absent: "none"
            )
            .Quantity(
                "fallback",
                Dimension.Resistance,
                "1 mohm",
                "10 Mohm",
                "Resistor on the driver's board from the sense input to the pad beside it, for taps at the chain's ends.",
                absent: "none"
            );
        var targets = steps.Table(
            "targets",
            "Wanted steps of light; instead of the table a list of currents, lux or percent may stand here.",
            absent: "whatever the chain gives"
        );
        targets
            .Quantity(
                "every",
                Dimension.Stops,
                "0.05 stops",
                "5 stops",
                "Distance of two steps in stops of light; a bare number is taken as stops.",
                absent: "list is used"
            )
            .Choice("of", ["light"], "What the stops are of.", absent: "light")
            .Quantity(
                "from",
                Dimension.Current,
                "1 mA",
                "200 A",
                "Current of the brightest step.",
                absent: "the driver's own current"
            )
            .Count("count", 1, 256, "Count of steps.", absent: "every combination")
            .Other(
                "list",
                KeyKind.Quantities,
                "The steps one by one: currents, lux or percent of the brightest.",
                absent: "every is used",
                example: "[\"100 %\", \"50 %\"]"
            );
        steps.Text(
            "stock",
            "Values that may be picked: an E series from E3 to E192, or drawer for the shop file's.",
            @default: "E24",
            source: "what shops have",
            example: "E24"
        );
        steps
            .Table("part", "What every resistor of the chain is rated for.")
            .Quantity(
                "tolerance",
                Dimension.None,
                "0",
                "0.3",
                "Tolerance.",
                @default: "1 %",
                source: "common practice, no source"
            )
            .Quantity(
                "tempco",
                Dimension.PerTemperature,
                "0 ppm/K",
                "10000 ppm/K",
                "Change over temperature.",
                @default: "100 ppm/K",
                source: "common practice, no source"
            )
            .Quantity(
                "rating",
                Dimension.Power,
                "10 mW",
                "1000 W",
                "Rated power.",
                @default: "3 W",
                source: "common practice, no source"
            )
            .Quantity(
                "full_to",
                Dimension.Temperature,
                "0 degC",
                "200 degC",
                "Full power up to this temperature.",
                @default: "70 degC",
                source: "common practice, no source"
            )
            .Quantity(
                "zero_at",
                Dimension.Temperature,
                "50 degC",
                "400 degC",
                "No power at this temperature.",
                @default: "155 degC",
                source: "common practice, no source"
            )
            .Choice(
                "fails",
                ["open", "short or open", "unknown"],
                "How the resistors can fail; metal strip, metal film and wirewound parts fail open. `open` takes their shorts out of the stops on your word (STP056).",
                @default: "unknown",
                source: "nobody has looked"
            )
            .Quantity(
                "least",
                Dimension.Resistance,
                "0 ohm",
                "10 ohm",
                "Least resistance that the search takes for a switched position: below that of its own worn contact more current stays in the resistor than its closed switch takes.",
                absent: "that of a worn contact (steps.contact.most); for a selector none"
            );
        steps
            .Table("contact", "Resistance of a closed switch.")
            .Quantity(
                "typical",
                Dimension.Resistance,
                "0 ohm",
                "10 ohm",
                "When new.",
                @default: "10 mohm",
                source: "most of small silver toggle switches when new, NKK M and A series"
            )
            .Quantity(
                "most",
                Dimension.Resistance,
                "0 ohm",
                "10 ohm",
                "When worn.",
                @default: "50 mohm",
                source: "common practice, no source"
            )
            .Quantity(
                "rating",
                Dimension.Current,
                "1 mA",
                "200 A",
                "Greatest direct current the switches are rated for.",
                absent: "unknown"
            );
        steps
            .Table("lead", "Wires between driver and switches.")
            .Length(
                "length",
                "0 m",
                "100 m",
                "Length of one lead; there and back count twice.",
                @default: "0.3 m",
                source: "common practice, no source"
            )
            .Quantity(
                "area",
                Dimension.Area,
                "0.01 mm2",
                "100 mm2",
                "Cross-section of the copper.",
                @default: "0.75 mm2",
                source: "common practice, no source"
            )
            .Other("tinned", KeyKind.Flag, "Whether its strands are tinned.", absent: "false", example: "true")
            .Other(
                "apart",
                KeyKind.Flag,
                "Whether the emitter's leads run apart from the chain's, with plugs that cannot be exchanged. `true` takes their touching out of the stops on your word (STP056).",
                absent: "false",
                example: "true"
            );
        Chosen(steps.Table("chosen", "Resistors that the maker has chosen.", absent: "the search picks them"));
    }

    private static void Chosen(SchemaList chosen)
    {
        Position(
            chosen.Table(
                "fixed",
                "The resistor that is never by-passed, in place of the sense parts; instead of the table its resistance may stand here.",
                absent: "the sense parts stay as they are"
            )
        );
        chosen.Quantity(
            "chain",
            Dimension.Resistance,
            "0 ohm",
            "10 Mohm",
            "The switched resistors in the order of the chain: a value each, or a table for two parts in one position. A spread is the part's own tolerance.",
            required: true,
            kind: KeyKind.ValuesOrTables,
            example: "[\"0.15 ohm\", { series = [\"0.33 ohm\", \"0.022 ohm\"] }]"
        );
        Position(chosen.Items("chain"));
    }

    // What is soldered in one position.
    private static void Position(SchemaList position) =>
        position
            .Quantity(
                "value",
                Dimension.Resistance,
                "0 ohm",
                "10 Mohm",
                "One part.",
                absent: "series or parallel is used"
            )
            .Quantity(
                "series",
                Dimension.Resistance,
                "0 ohm",
                "10 Mohm",
                "Two parts, one after the other.",
                absent: "one part",
                kind: KeyKind.TwoQuantities,
                example: "[\"0.33 ohm\", \"0.022 ohm\"]"
            )
            .Quantity(
                "parallel",
                Dimension.Resistance,
                "0 ohm",
                "10 Mohm",
                "Two parts, side by side.",
                absent: "one part",
                kind: KeyKind.TwoQuantities,
                example: "[\"0.33 ohm\", \"0.39 ohm\"]"
            )
            .Quantity(
                "rating",
                Dimension.Power,
                "10 mW",
                "1000 W",
                "Rated power of each part; one value is that of both.",
                absent: "that of steps.part.rating",
                kind: KeyKind.OneOrTwoQuantities,
                example: "[\"3 W\", \"1 W\"]"
            );
}
