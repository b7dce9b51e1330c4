using Lampwright.Findings;

namespace Lampwright.Heat.Time;

/// <summary>Rules of the box, of time and of life.</summary>
public static class BoxRules
{
    private const string Practice = "common practice, no source";

    /// <summary>A stopped fan does harm, and no cut-out at any place would be in time without tripping in normal use.</summary>
    public static readonly Rule NoCutOutSetting = new(
        "HEA028",
        "No cut-out setting would do",
        Severity.Warn,
        "Lower the brightest position, enlarge the sink, or cool the place of the cut-out in normal use, so that there is room between use and harm.",
        "definition: highest normal temperature + margin + tolerance lies above what is felt at the first limit"
    );

    /// <summary>The cut-out trips after the harm.</summary>
    public static readonly Rule CutOutTooLate = new(
        "HEA029",
        "Cut-out trips too late",
        Severity.Stop,
        "Take a lower setting or a place nearer to the emitter; docs/heat.md says how the window is found.",
        "definition: its upper end, behind its lag, is reached after the first limit"
    );

    /// <summary>The cut-out trips although nothing is wrong.</summary>
    public static readonly Rule CutOutTripsInUse = new(
        "HEA030",
        "Cut-out trips in normal use",
        Severity.Warn,
        "Take a higher setting, a closer tolerance or a cooler place.",
        "definition: the lower end of its tolerance lies within 5 K of the highest normal temperature (margin: common practice, no source)"
    );

    /// <summary>The cut-out opens a line that it must not open.</summary>
    public static readonly Rule CutOutInWrongLine = new(
        "HEA031",
        "Cut-out in the wrong line",
        Severity.Stop,
        "Put it into the driver's input: an opened sense line drives the current up without end, an opened emitter line throws the driver to its highest voltage and draws an arc.",
        Practice,
        ProtectsPeople: true
    );

    /// <summary>The driver is hot because of what stands round it.</summary>
    public static readonly Rule DriverHeatedByNeighbours = new(
        "HEA032",
        "Driver heated by its neighbours",
        Severity.Warn,
        "Part its box from the hood or the sink: distance pieces, a strip of board, or another wall.",
        "the driver's data sheet; 70 °C at the case where none is stated (common practice, no source)"
    );

    /// <summary>The light may not burn for ever on the hottest day.</summary>
    public static readonly Rule MustRest = new(
        "HEA033",
        "Light must rest in a hot room",
        Severity.Warn,
        "Keep to the run and rest that are told, take a dimmer position, or cool better.",
        "limits of the data sheets"
    );

    /// <summary>Nothing is claimed of the years.</summary>
    public static readonly Rule LifeNotClaimed = new(
        "HEA034",
        "Nothing can be said of life",
        Severity.Note,
        "Give a test of 6000 h or more on ten units or more, at a case temperature at least as high as this light's.",
        "IES TM-21-11"
    );

    /// <summary>The network came to no rest.</summary>
    public static readonly Rule NotSolved = new(
        "HEA035",
        "Temperatures of the box not found",
        Severity.Stop,
        "Look at the part that is named: nothing carries its heat away, or its sizes are out of all proportion.",
        "energy balance"
    );

    /// <summary>The place of a cut-out is not known.</summary>
    public static readonly Rule CutOutPlaceUnknown = new(
        "HEA036",
        "Place of the cut-out not known",
        Severity.Warn,
        "Name a place that is computed: sink base, emitter case, channel air, driver, compartment air, or a face or flange of a part round the light.",
        "definition"
    );

    /// <summary>Steps and heat move each other without end.</summary>
    public static readonly Rule NoCommonRest = new(
        "HEA037",
        "Steps and heat find no common rest",
        Severity.Stop,
        "Look at the part that is named: its losses, its housing and its temperature coefficient drive each other; no number that hangs on it is shown.",
        "energy balance"
    );

    /// <summary>An error of a method could not be followed, and the bands are too narrow by it.</summary>
    public static readonly Rule BandLeavesOut = new(
        "HEA045",
        "Bands of the box leave out an error",
        Severity.Warn,
        "Take the bands of the box as too narrow; look at the part of the light that the named error acts on, whose sizes are likely out of proportion.",
        "GUM, JCGM 100:2008, 5.1.2 (memory): every error counts"
    );

    /// <summary>Much of the heat takes a way that no formula knows.</summary>
    public static readonly Rule ContactIsGuess = new(
        "HEA046",
        "Much heat leaves over a contact that nobody knows",
        Severity.Note,
        "Measure the base with the fan running and stopped and write both as trials of the sink; flat faces with paste between them pass more.",
        "the contact, a gap of 0.1 mm, is common practice without a source"
    );

    /// <summary>All rules.</summary>
    public static readonly IReadOnlyList<Rule> All =
    [
        NoCutOutSetting,
        CutOutTooLate,
        CutOutTripsInUse,
        CutOutInWrongLine,
        DriverHeatedByNeighbours,
        MustRest,
        LifeNotClaimed,
        NotSolved,
        CutOutPlaceUnknown,
        NoCommonRest,
        BandLeavesOut,
        ContactIsGuess,
    ];
}
