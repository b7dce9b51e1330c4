using Lampwright.Findings;

namespace Lampwright.Heat;

/// <summary>Rules of this station.</summary>
public static class HeatRules
{
    private const string Practice = "common practice, no source";

    /// <summary>The junction is hotter than the maker allows.</summary>
    public static readonly Rule JunctionTooHot = new(
        "HEA001",
        "Junction over its limit",
        Severity.Stop,
        "Lower the current of the brightest position, enlarge the sink or the air path, or cut out before this with a thermal switch at the driver's input.",
        "the emitter's data sheet"
    );

    /// <summary>The junction has little room left.</summary>
    public static readonly Rule JunctionMarginSmall = new(
        "HEA002",
        "Little margin at the junction",
        Severity.Warn,
        "Leave 10 K or more below the maker's limit: thinner interface, more air, or less current.",
        Practice
    );

    /// <summary>A surface is hotter than what may be touched.</summary>
    public static readonly Rule SurfaceTooHot = new(
        "HEA003",
        "Surface over its touch limit",
        Severity.Warn,
        "Guard it, mark it hot, give it more area or air, or lower the heat behind it.",
        "IEC 62368-1 class TS1"
    );

    /// <summary>A handle or knob burns the hand that holds it.</summary>
    public static readonly Rule HandleBurns = new(
        "HEA004",
        "Handle over the burn threshold",
        Severity.Stop,
        "Move the handle to a cooler part, stand it off, or make it of plastic or wood.",
        "ISO 13732-1, contact of 1 min and longer",
        ProtectsPeople: true
    );

    /// <summary>Fan and sink differ in size.</summary>
    public static readonly Rule FanDoesNotCoverSink = new(
        "HEA005",
        "Fan and sink differ in size",
        Severity.Note,
        "Close the gap with a duct, or expect part of the fins to see little air.",
        Practice
    );

    /// <summary>The fan has no way for its air.</summary>
    public static readonly Rule NoAirPath = new(
        "HEA006",
        "No way for the air",
        Severity.Stop,
        "Give the fan an inlet and an outlet: openings of at least its own free area.",
        Practice
    );

    /// <summary>The fan's curve rises.</summary>
    public static readonly Rule FanCurveRises = new(
        "HEA007",
        "Fan curve rises",
        Severity.Warn,
        "Check the points against the maker's diagram: pressure should fall as flow grows, save for a hump near the still end.",
        "Fox and McDonald, Introduction to Fluid Mechanics, 5th ed., ch. 10"
    );

    /// <summary>The fins do not fit on the base.</summary>
    public static readonly Rule FinsDoNotFit = new(
        "HEA008",
        "No gap between the fins",
        Severity.Stop,
        "Count and measure the fins again: count times thickness must be less than the base across them.",
        "geometry"
    );

    /// <summary>A method is used outside its range.</summary>
    public static readonly Rule OutsideRange = new(
        "HEA009",
        "Method outside its range",
        Severity.Note,
        "Turn the sink so that its channels stand upright where no fan blows, take the wider band seriously, or measure the sink in the shop.",
        "the method's source, named in docs/heat.md"
    );

    /// <summary>The driver's compartment is hot.</summary>
    public static readonly Rule DriverTooHot = new(
        "HEA010",
        "Driver hotter than it should be",
        Severity.Warn,
        "Vent the compartment, move the driver away from the sink, or screw it flat on a panel.",
        "the driver's data sheet; 70 °C at the case where none is stated (common practice, no source)"
    );

    /// <summary>A solution was not found.</summary>
    public static readonly Rule NotSolved = new(
        "HEA011",
        "Temperature not found",
        Severity.Stop,
        "Check area, fins and air path: nothing in them carries this heat away.",
        "energy balance"
    );

    /// <summary>An emitter hangs over the edge of the base.</summary>
    public static readonly Rule FootprintOverhangs = new(
        "HEA012",
        "Emitter hangs over the sink",
        Severity.Warn,
        "Move the emitter so that its whole back lies on the base.",
        "geometry"
    );

    /// <summary>The fan may not start.</summary>
    public static readonly Rule FanMayNotStart = new(
        "HEA013",
        "Fan may not start",
        Severity.Warn,
        "Run it at half of its rated voltage or more, or try in the shop that it starts every time.",
        Practice
    );

    /// <summary>The fan works in its stall.</summary>
    public static readonly Rule FanInStall = new(
        "HEA014",
        "Fan works where its curve rises",
        Severity.Note,
        "Open the air path: left of the hump the flow hunts and the fan growls.",
        "Fox and McDonald, Introduction to Fluid Mechanics, 5th ed., ch. 10"
    );

    /// <summary>A measured resistance says nothing of the other fan state.</summary>
    public static readonly Rule MeasuredForOneFanState = new(
        "HEA015",
        "Sink measured in one fan state only",
        Severity.Warn,
        "Measure it again with the fan stopped, or give its sizes so that this scene can be computed.",
        Practice
    );

    /// <summary>The fan's points make no curve.</summary>
    public static readonly Rule FanCurveUnusable = new(
        "HEA016",
        "Fan points make no curve",
        Severity.Stop,
        "Give two points or more with flow growing from one to the next, none below zero.",
        "definition"
    );

    /// <summary>Much of the fan's air does not pass the fins.</summary>
    public static readonly Rule AirBesideFins = new(
        "HEA017",
        "Air passes beside the fins",
        Severity.Note,
        "Close the way beside and over the fins with strips of sheet, or take a sink that fills its duct: that air cools nothing.",
        Practice
    );

    /// <summary>The grid's iteration did not come to rest.</summary>
    public static readonly Rule GridNotConverged = new(
        "HEA018",
        "Grid did not come to rest",
        Severity.Warn,
        "Take a cell nearer to the thickness of base and fins, so that cells are not much longer one way; no temperature of this grid is used.",
        "numerical: residual and heat balance"
    );

    /// <summary>More cells than are computed.</summary>
    public static readonly Rule GridTooFine = new(
        "HEA019",
        "Grid too fine",
        Severity.Warn,
        "Take a larger cell: a quarter of the fin's thickness and a twentieth of the smallest source are enough.",
        Practice
    );

    /// <summary>The grid's problem has no answer.</summary>
    public static readonly Rule GridIllStated = new(
        "HEA020",
        "Nothing to compute on the grid",
        Severity.Warn,
        "Give the sink a source of heat inside its base, fins that fit side by side and a face that air or liquid cools.",
        "definition"
    );

    /// <summary>What is said of sink or fan does not go together.</summary>
    public static readonly Rule DataConflict = new(
        "HEA021",
        "Data of sink or fan do not go together",
        Severity.Warn,
        "Keep what is true and take out the other; what is left out of the sum is said.",
        "definition"
    );

    /// <summary>Two fans blow against each other.</summary>
    public static readonly Rule FansOppose = new(
        "HEA022",
        "Fans work against each other",
        Severity.Warn,
        "Turn one of them round, or write its air in the order in which it passes.",
        Practice
    );

    /// <summary>No voltage that the fan bears keeps the junction below its limit.</summary>
    public static readonly Rule NoFanSpeedHolds = new(
        "HEA023",
        "No fan speed holds the junction",
        Severity.Warn,
        "Lower the current of that step, open the air's way, or take a stronger fan or a larger sink.",
        "fan laws; the emitter's data sheet"
    );

    /// <summary>The room is hotter than what it has to cool may be.</summary>
    public static readonly Rule AmbientOverLimit = new(
        "HEA024",
        "Air hotter than the limit",
        Severity.Stop,
        "Check ambient_max and junction_max: no sink cools below the air around it.",
        "second law of thermodynamics"
    );

    /// <summary>There is nothing to cool.</summary>
    public static readonly Rule NoHeat = new(
        "HEA025",
        "No heat to carry",
        Severity.Note,
        "Check the emitter's points, its driver and its light_share: at the brightest position it takes no power.",
        "energy balance"
    );

    /// <summary>No opening gives the temperature that is wanted.</summary>
    public static readonly Rule NoOpeningReaches = new(
        "HEA026",
        "No opening gives the wanted temperature",
        Severity.Warn,
        "Raise the fan's voltage, take a larger sink, or want less: wider openings alone do not bring it down.",
        "energy balance"
    );

    /// <summary>Heat pipes carry more than they can.</summary>
    public static readonly Rule HeatPipesDry = new(
        "HEA027",
        "Heat pipes over their load",
        Severity.Stop,
        "Take more or thicker pipes, or less heat: a pipe that runs dry carries next to nothing.",
        "the pipe's data sheet"
    );

    /// <summary>All rules.</summary>
    public static readonly IReadOnlyList<Rule> All =
    [
        JunctionTooHot,
        JunctionMarginSmall,
        SurfaceTooHot,
        HandleBurns,
        FanDoesNotCoverSink,
        NoAirPath,
        FanCurveRises,
        FinsDoNotFit,
        OutsideRange,
        DriverTooHot,
        NotSolved,
        FootprintOverhangs,
        FanMayNotStart,
        FanInStall,
        MeasuredForOneFanState,
        FanCurveUnusable,
        AirBesideFins,
        GridNotConverged,
        GridTooFine,
        GridIllStated,
        DataConflict,
        FansOppose,
        NoFanSpeedHolds,
        AmbientOverLimit,
        NoHeat,
        NoOpeningReaches,
        HeatPipesDry,
    ];
}
