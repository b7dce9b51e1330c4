using Lampwright.Findings;

namespace Lampwright.Light;

/// <summary>Rules of the station light.</summary>
public static class LightRules
{
    /// <summary>The subject is too near for the inverse-square shortcut.</summary>
    public static readonly Rule SubjectNear = new(
        "LIT001",
        "Subject nearer than five times the light's size",
        Severity.Note,
        "Do not scale lux by distance squared from far readings; use the lux told here.",
        "IES definitions 9.1.1: within 1 % at five times the largest dimension"
    );

    /// <summary>The ripple is above the low-risk line.</summary>
    public static readonly Rule FlickerRisk = new(
        "LIT002",
        "Flicker above the low-risk line",
        Severity.Warn,
        "Take a driver with less ripple, or a larger output capacitor where the driver's maker allows it.",
        "IEEE 1789-2015 (second-hand)"
    );

    /// <summary>The exposure time leaves visible bands.</summary>
    public static readonly Rule ShutterBands = new(
        "LIT003",
        "Bands or uneven frames at this exposure time",
        Severity.Warn,
        "Choose an exposure time that is a whole number of ripple periods, or a longer one, or a driver with less ripple.",
        "Average of the ripple over the exposure; the limit is common practice, no source"
    );

    /// <summary>Looking into the light from near needs care.</summary>
    public static readonly Rule LookingIn = new(
        "LIT004",
        "Do not stare into the light from near",
        Severity.Note,
        "Keep the caution on the housing and let nobody look into the light from within the distance told.",
        "IEC TR 62778, table C.2 (memory)"
    );

    /// <summary>Whoever works at the subject looks into the light from within the care distance.</summary>
    public static readonly Rule LookingInAtWork = new(
        "LIT005",
        "Blue light at the working place",
        Severity.Warn,
        "Add or thicken the diffuser, use a larger exit, move the light away, or shield it from the eyes of whoever works at the subject.",
        "IEC TR 62778, table C.2 (memory)"
    );

    /// <summary>The corners are much darker than the centre.</summary>
    public static readonly Rule Uneven = new(
        "LIT006",
        "Corners of the subject darker than its centre",
        Severity.Note,
        "Move the light away, make its exit larger, or light from two sides.",
        "Half a stop is seen in copy work: common practice, no source"
    );

    /// <summary>Shares of light that cannot be.</summary>
    public static readonly Rule MoreThanAll = new(
        "LIT007",
        "A surface gives more light than falls on it",
        Severity.Stop,
        "Correct the shares: each lies between 0 and 1, and transmittance and reflectance of a diffuser sum to at most 1.",
        "Conservation of energy"
    );

    /// <summary>The funnel's small opening does not let the emitter's face through.</summary>
    public static readonly Rule OpeningCoversEmitter = new(
        "LIT008",
        "Reflector's small opening smaller than the emitter's face",
        Severity.Stop,
        "Make the small opening larger than the emitting face; covered light only heats the reflector.",
        "Geometry"
    );

    /// <summary>The diffuser leaves a gap at the mouth.</summary>
    public static readonly Rule DiffuserTooSmall = new(
        "LIT009",
        "Diffuser smaller than the reflector's mouth",
        Severity.Warn,
        "Make the diffuser at least as large as the mouth; undiffused light would leave through the gap.",
        "Geometry"
    );

    /// <summary>A diffuser without a reflector is a coarse model.</summary>
    public static readonly Rule DiffuserAlone = new(
        "LIT010",
        "Diffuser without a reflector",
        Severity.Note,
        "Give a reflector, or take the numbers as those of a diffuser close before the emitter and lit evenly.",
        "Validity of the method"
    );

    /// <summary>An open, mirror-like funnel makes a beam that the method does not resolve.</summary>
    public static readonly Rule OpenMirror = new(
        "LIT011",
        "Open reflector that mirrors much of the light",
        Severity.Note,
        "Take the lux as an average over the mouth's beam; measure, or give a diffuser.",
        "Validity of the method"
    );

    /// <summary>The colour temperature lies outside the table of blue-light thresholds.</summary>
    public static readonly Rule ColourOutsideTable = new(
        "LIT012",
        "Colour temperature above the blue-light table",
        Severity.Note,
        "Take the care distance as too short; ask the emitter's maker for its risk group.",
        "IEC TR 62778, table C.2 (memory): up to 8000 K"
    );

    /// <summary>Moving things look chopped.</summary>
    public static readonly Rule Stroboscopic = new(
        "LIT013",
        "Moving things look chopped under the light",
        Severity.Note,
        "Take a driver with less ripple if people work with moving things under the light.",
        "SVM by IEC TR 63158 (second-hand), limit 0.4 of EU 2019/2020 (memory)"
    );

    /// <summary>A funnel too long and narrow for rings of even light.</summary>
    public static readonly Rule FunnelNarrow = new(
        "LIT014",
        "Funnel longer and narrower than the method's range",
        Severity.Note,
        "Take the share that leaves as a few percent too high, or measure it.",
        "Validity of the ring method: sides of the mouth up to 4 to 1, by comparison with a random walk"
    );

    /// <summary>All rules of the station.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        SubjectNear,
        FlickerRisk,
        ShutterBands,
        LookingIn,
        LookingInAtWork,
        Uneven,
        MoreThanAll,
        OpeningCoversEmitter,
        DiffuserTooSmall,
        DiffuserAlone,
        OpenMirror,
        ColourOutsideTable,
        Stroboscopic,
        FunnelNarrow,
    ];
}
