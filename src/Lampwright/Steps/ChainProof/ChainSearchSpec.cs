using Lampwright.Tables;

namespace Lampwright.Steps.ChainProof;

/// <summary>What a chain is to be best in.</summary>
public enum ChainObjective
{
    /// <summary>The worst relative error with every tolerance, drift, contact and lead at the end of its range that hurts most.</summary>
    WorstCorner,

    /// <summary>The worst relative error at nominal values.</summary>
    Nominal,
}

/// <summary>What the search for a chain is told. Currents in amperes, resistances in ohm, temperatures in kelvin.</summary>
/// <param name="Arrangement">How the resistors stand to each other.</param>
/// <param name="WantedA">Wanted currents.</param>
/// <param name="Switches">How many switches, or positions of a selector, 0 to <see cref="ChainSpec.MostSwitches"/>.</param>
/// <param name="Stock">What may be taken.</param>
/// <param name="Driver">The driver at nominal.</param>
/// <param name="ContactOhm">Resistance of one closed contact; ≥ 0.</param>
/// <param name="LeadOhm">Resistance of the leads in the sense loop; ≥ 0.</param>
/// <param name="MostA">Nominal current that no combination may exceed.</param>
public sealed record ChainSearchSpec(
    Arrangement Arrangement,
    IReadOnlyList<double> WantedA,
    int Switches,
    IReadOnlyList<StockPart> Stock,
    DriverModel Driver,
    double ContactOhm,
    double LeadOhm,
    double MostA
)
{
    /// <summary>Parts beyond this count are left aside, with a finding.</summary>
    public static int MostStock => 20_000;

    /// <summary>Distinct values of the stock up to which two parts are joined; beyond it each position takes one part.</summary>
    public static int MostJoinedStock => 400;

    /// <summary>What the chain is to be best in.</summary>
    public ChainObjective Objective { get; init; } = ChainObjective.WorstCorner;

    /// <summary>Switches are thrown one after another: the k-th wanted current, brightest first, is met with the first k − 1 switches open. Not for a selector.</summary>
    public bool OneAfterAnother { get; init; }

    /// <summary>The fixed resistor where it stays as it is, null where it is chosen too.</summary>
    public StockPart? Fixed { get; init; }

    /// <summary>Resistor on the board across the leads, series chain and selector; null where there is none.</summary>
    public double? BleedOhm { get; init; }

    /// <summary>Resistance of the leads that carry the chain's current beside a resistor across them, but are not sensed.</summary>
    public double UnsensedLeadOhm { get; init; }

    /// <summary>Resistor on the board in series with all parallel branches; 0 where there is none.</summary>
    public double FloorOhm { get; init; }

    /// <summary>Greatest relative deviation of that resistor; 0 to below 1.</summary>
    public double FloorTolerance { get; init; }

    /// <summary>Whether a position may take two parts, in series or side by side.</summary>
    public bool Joined { get; init; }

    /// <summary>Least resistance of a position.</summary>
    public double LeastOhm { get; init; } = 1e-9;

    /// <summary>
    /// Least resistance of a switched position. A closed switch takes the share R/(R + rc) of the current: below the resistance rc of a worn contact
    /// more stays in the resistor than the switch takes, and the step that the switch makes, R²/(R + rc), is less than half of R.
    /// </summary>
    public double LeastSwitchedOhm { get; init; }

    /// <summary>Greatest resistance of a position.</summary>
    public double MostOhm { get; init; } = 1e9;

    /// <summary>Current below which no combination may fall, null where there is none.</summary>
    public double? LeastA { get; init; }

    /// <summary>Current that must not be exceeded with everything at its worst end, null where only the nominal limit holds.</summary>
    public double? CornerMostA { get; init; }

    /// <summary>Current below which no combination may fall with everything at its worst end and contacts worn, null where there is none.</summary>
    public double? CornerLeastA { get; init; }

    /// <summary>
    /// Whether powers and the rating of the switches hold with everything at its worst end: a part at its greatest resistance carries the
    /// greatest current of its worst combination. Else at stated values. Not for nominal values.
    /// </summary>
    public bool CornerLimits { get; init; }

    /// <summary>Greatest resistance of a worn contact, which limits count with; null for <see cref="ContactMostOhm"/>.</summary>
    public double? ContactWornOhm { get; init; }

    /// <summary>
    /// Least resistance of a closed contact that limits of the greatest current count with; null for <see cref="ContactLeastOhm"/>. What can
    /// hurt a part takes a contact without any resistance, as faults do; what is only a wrong step takes one that is new.
    /// </summary>
    public double? ContactBareOhm { get; init; }

    /// <summary>
    /// Whether the threshold was found by a current measured with <see cref="Fixed"/> itself: its tolerance t then stands in the threshold too and
    /// moves a step of R by t·(1 − R0/R) instead of t·R0/R. Errors count it so; limits stay with the greater current.
    /// </summary>
    public bool ThresholdByFixed { get; init; }

    internal bool LimitsAtCorner => CornerLimits && Objective == ChainObjective.WorstCorner;

    /// <summary>Rating of one switch, null where it is not known.</summary>
    public double? SwitchA { get; init; }

    /// <summary>Greatest relative deviation of the driver's threshold that counts in the worst corner; 0 to below 1.</summary>
    public double ThresholdTolerance { get; init; }

    /// <summary>Least resistance of a closed contact; null for <see cref="ContactOhm"/>.</summary>
    public double? ContactLeastOhm { get; init; }

    /// <summary>Greatest resistance of a closed contact; null for <see cref="ContactOhm"/>.</summary>
    public double? ContactMostOhm { get; init; }

    /// <summary>Greatest relative deviation of the leads; 0 to below 1.</summary>
    public double LeadTolerance { get; init; }

    /// <summary>Air round the resistors at nominal.</summary>
    public double AirK { get; init; } = ResistorPart.ReferenceK;

    /// <summary>Coolest air round the resistors; null for <see cref="AirK"/>.</summary>
    public double? AirLeastK { get; init; }

    /// <summary>Hottest air round the resistors; null for <see cref="AirK"/>.</summary>
    public double? AirMostK { get; init; }

    /// <summary>True when temperature coefficients are limits to both sides, so that they count in the worst corner only.</summary>
    public bool TempcoIsLimit { get; init; } = true;

    /// <summary>About how many boxes are looked at before the search stops with the best so far; it never takes more than three times as many.</summary>
    public long MostBoxes { get; init; } = 20_000_000;

    /// <summary>How many threads take part; the answer is the same for any count.</summary>
    public int Workers { get; init; } = 2;

    /// <summary>Whether the result carries the list of closed cases for an independent check.</summary>
    public bool WithCertificate { get; init; }

    /// <summary>Combinations of the switches that can be thrown.</summary>
    public int CombinationCount =>
        Arrangement == Arrangement.Selector ? Math.Max(1, Switches)
        : OneAfterAnother ? Switches + 1
        : 1 << Switches;

    /// <summary>Place of a combination in the order of <see cref="ChainNetwork"/>.</summary>
    /// <param name="combination">0 to <see cref="CombinationCount"/> − 1.</param>
    public int NetworkIndex(int combination) =>
        Arrangement == Arrangement.Selector || !OneAfterAnother
            ? combination
            : ((1 << combination) - 1) << (Switches - combination);

    /// <summary>The values of an E series that can matter for wanted currents, all of one kind.</summary>
    /// <param name="arrangement">How the resistors stand to each other.</param>
    /// <param name="series">Name of the series, for example <c>E24</c>.</param>
    /// <param name="driver">The driver.</param>
    /// <param name="wantedA">Wanted currents.</param>
    /// <param name="kind">What each part is like; its resistance does not matter.</param>
    public static IReadOnlyList<StockPart> StockOf(
        Arrangement arrangement,
        string series,
        DriverModel driver,
        IReadOnlyList<double> wantedA,
        StockPart kind
    )
    {
        var (least, most) = Range(arrangement, driver, wantedA);
        return least > most ? [] : [.. ESeries.Between(series, least, most).Select(r => kind with { Ohm = r })];
    }

    /// <summary>The parts of a drawer that can matter for wanted currents. What cannot be used at all stays in, so that it is told.</summary>
    /// <param name="arrangement">How the resistors stand to each other.</param>
    /// <param name="drawer">What lies in the drawer.</param>
    /// <param name="driver">The driver.</param>
    /// <param name="wantedA">Wanted currents.</param>
    public static IReadOnlyList<StockPart> StockOf(
        Arrangement arrangement,
        IReadOnlyList<StockPart> drawer,
        DriverModel driver,
        IReadOnlyList<double> wantedA
    )
    {
        var (least, most) = Range(arrangement, driver, wantedA);
        return
        [
            .. drawer
                .Where(p => !p.Usable || (p.Ohm >= least && p.Ohm <= most))
                .GroupBy(p => p with { Count = null })
                .Select(g => g.Key with { Count = g.Any(p => p.Count is null) ? null : g.Sum(p => p.Count) })
                .OrderBy(p => p.Ohm),
        ];
    }

    // The least and the greatest resistance that can matter; the least above the greatest where no current is wanted.
    private static (double Least, double Most) Range(
        Arrangement arrangement,
        DriverModel driver,
        IReadOnlyList<double> wantedA
    )
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(wantedA);
        double[] sound = [.. wantedA.Where(a => a is > 0 and < 1e9)];
        if (sound.Length == 0)
        {
            return (1, 0);
        }

        // In series a part far below the brightest step's resistance is lost among contacts, and one above the dimmest's is of no
        // use. A branch is never smaller than the brightest step's resistance, and one far above the dimmest's does nothing.
        var (bright, dim) = (driver.SenseOhm(sound.Max()), driver.SenseOhm(sound.Min()));
        var (from, to) =
            arrangement == Arrangement.ParallelBranches ? (bright / 1.2, dim * 20) : (bright / 25, dim * 1.2);
        var least = Math.Clamp(from, 1e-6, 1e9);
        return (least, Math.Clamp(to, least, 1e9));
    }
}
