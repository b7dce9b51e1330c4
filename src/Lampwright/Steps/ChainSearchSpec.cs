using Lampwright.Tables;

namespace Lampwright.Steps;

/// <summary>A resistor that may be taken, as often as wanted.</summary>
/// <param name="Ohm">Resistance in ohm.</param>
/// <param name="AllowedW">Power it may carry where it will sit, in watts.</param>
public sealed record StockPart(double Ohm, double AllowedW);

/// <summary>What the first search is told.</summary>
/// <param name="Arrangement">How the resistors stand to each other.</param>
/// <param name="WantedA">Wanted currents in amperes.</param>
/// <param name="Switches">How many switches, 0 to <see cref="ChainSpec.MostSwitches"/>.</param>
/// <param name="Stock">What may be taken.</param>
/// <param name="Driver">The driver at nominal.</param>
/// <param name="ContactOhm">Resistance of one closed contact in ohm.</param>
/// <param name="LeadOhm">Resistance of the leads in ohm.</param>
/// <param name="MostA">Current that no combination may exceed, in amperes.</param>
/// <param name="FixedOhm">The fixed resistor where it stays as it is, null where it is chosen too.</param>
/// <param name="MostBoxes">Boxes after which the search stops with the best so far.</param>
public sealed record ChainSearchSpec(
    Arrangement Arrangement,
    IReadOnlyList<double> WantedA,
    int Switches,
    IReadOnlyList<StockPart> Stock,
    DriverModel Driver,
    double ContactOhm,
    double LeadOhm,
    double MostA,
    StockPart? FixedOhm = null,
    int MostBoxes = 60_000
)
{
    /// <summary>The values of an E series that can matter for wanted currents, all with one rating.</summary>
    /// <param name="arrangement">How the resistors stand to each other.</param>
    /// <param name="series">Name of the series, for example <c>E24</c>.</param>
    /// <param name="driver">The driver.</param>
    /// <param name="wantedA">Wanted currents in amperes.</param>
    /// <param name="allowedW">Power each part may carry, in watts.</param>
    public static IReadOnlyList<StockPart> StockOf(
        Arrangement arrangement,
        string series,
        DriverModel driver,
        IReadOnlyList<double> wantedA,
        double allowedW
    )
    {
        var (least, most) = Range(arrangement, driver, wantedA);
        return least > most ? [] : [.. ESeries.Between(series, least, most).Select(r => new StockPart(r, allowedW))];
    }

    /// <summary>The values of a drawer that can matter for wanted currents, all with one rating.</summary>
    /// <param name="arrangement">How the resistors stand to each other.</param>
    /// <param name="drawerOhm">What lies in the drawer, in ohms; any may be taken more than once.</param>
    /// <param name="driver">The driver.</param>
    /// <param name="wantedA">Wanted currents in amperes.</param>
    /// <param name="allowedW">Power each part may carry, in watts.</param>
    public static IReadOnlyList<StockPart> StockOf(
        Arrangement arrangement,
        IEnumerable<double> drawerOhm,
        DriverModel driver,
        IReadOnlyList<double> wantedA,
        double allowedW
    )
    {
        var (least, most) = Range(arrangement, driver, wantedA);
        return
        [
            .. drawerOhm.Where(r => r >= least && r <= most).Distinct().Order().Select(r => new StockPart(r, allowedW)),
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

/// <summary>A wanted current and the combination that comes nearest.</summary>
/// <param name="WantedA">Wanted current in amperes.</param>
/// <param name="Switches">Combination that comes nearest.</param>
/// <param name="CurrentA">Its current in amperes.</param>
/// <param name="Error">Relative difference.</param>
public sealed record WantedStep(double WantedA, string Switches, double CurrentA, double Error);

/// <summary>What the first search found.</summary>
/// <param name="Fixed">The fixed resistor.</param>
/// <param name="Chain">The switched resistors, ascending.</param>
/// <param name="WorstError">Greatest relative difference of a wanted current from its nearest combination.</param>
/// <param name="Steps">Each wanted current with its nearest combination.</param>
/// <param name="Boxes">How many boxes of candidates were looked at.</param>
/// <param name="Complete">Whether all boxes were closed before the limit.</param>
/// <param name="Words">One sentence on what the search is worth.</param>
public sealed record ChainSearchResult(
    StockPart Fixed,
    IReadOnlyList<StockPart> Chain,
    double WorstError,
    IReadOnlyList<WantedStep> Steps,
    int Boxes,
    bool Complete,
    string Words
);
