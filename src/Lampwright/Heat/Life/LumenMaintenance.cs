namespace Lampwright.Heat.Life;

/// <summary>A maker's test of lumen maintenance at one case temperature.</summary>
/// <param name="CaseK">Case temperature of the test, K.</param>
/// <param name="HoursH">Hours of the readings, h, growing.</param>
/// <param name="Shares">Flux of each over that at the start, above 0.</param>
/// <param name="Samples">Count of units tested.</param>
public sealed record MaintenanceTest(
    double CaseK,
    IReadOnlyList<double> HoursH,
    IReadOnlyList<double> Shares,
    int Samples
);

/// <summary>An exponential through a test: Φ = B·exp(-α·t).</summary>
/// <param name="B">Share at time 0.</param>
/// <param name="AlphaPerH">Decay, 1/h; below 0 where the flux still grew.</param>
/// <param name="CaseK">Case temperature, K.</param>
/// <param name="DurationH">Length of the test, h.</param>
/// <param name="Samples">Count of units.</param>
public sealed record MaintenanceFit(double B, double AlphaPerH, double CaseK, double DurationH, int Samples);

/// <summary>What may be said of a light's loss of flux.</summary>
/// <param name="Fit">The exponential at the light's own case temperature; null where nothing is claimed.</param>
/// <param name="CalculatedH">Hours to the wanted share by the formula, h; infinite where it never falls there.</param>
/// <param name="ReportedH">Hours that may be told: at most the cap; null where nothing is claimed.</param>
/// <param name="CapH">Longest time that may be told, h.</param>
/// <param name="IsCapped">True where the told hours are the cap: the light lasts longer than may be claimed.</param>
/// <param name="Why">Why nothing is claimed; empty where something is.</param>
public sealed record MaintenanceClaim(
    MaintenanceFit? Fit,
    double CalculatedH,
    double? ReportedH,
    double CapH,
    bool IsCapped,
    string Why
)
{
    /// <summary>Share of the first flux that is left, 0 to 1; null beyond what may be claimed.</summary>
    /// <param name="hours">Hours of burning, h, 0 or above.</param>
    public double? ShareAt(double hours) =>
        Fit is { } f && hours <= CapH ? f.B * Math.Exp(-Math.Max(f.AlphaPerH, 0) * hours) : null;
}

/// <summary>Projection of lumen maintenance from a maker's test.</summary>
/// <remarks>
/// Validity: case between the temperatures of the tests, never beyond; 10 units or more; 6000 h or more. Source: IES TM-21-11 (formulas and
/// window of 5000 h published, half of longer tests, caps for fewer units and interpolation by Arrhenius from memory); Bretschneider, IES
/// FIRES 2019 (cap of six times the test). Accuracy: the method states none. Checked by: derived rows L.T-1 to L.LD-08.
/// </remarks>
public static class LumenMaintenance
{
    /// <summary>Boltzmann's constant, eV/K (CODATA 2018, exact; the text of 2011 has 8.617385e-5).</summary>
    public static readonly double BoltzmannEvPerK = 8.617333262e-5;

    /// <summary>Least count of units that anything is claimed from.</summary>
    public static readonly int LeastSamples = 10;

    /// <summary>Shortest test that anything is claimed from, h.</summary>
    public static readonly double LeastHours = 6000;

    /// <summary>Fits a test; null where it is too short or too few readings lie in its window.</summary>
    /// <param name="test">The test.</param>
    public static MaintenanceFit? Fit(MaintenanceTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        if (test.HoursH.Count != test.Shares.Count || test.HoursH.Count < 2 || test.Shares.Any(s => !(s > 0)))
        {
            return null;
        }

        // 48 h either side of each thousand are the method's own tolerance.
        var duration = test.HoursH[^1];
        if (duration < LeastHours - 48)
        {
            return null;
        }

        var from = Math.Max(1000, duration > 10_048 ? duration / 2 : duration - 5000) - 48;
        double n = 0,
            sx = 0,
            sy = 0,
            sxx = 0,
            sxy = 0;
        for (var i = 0; i < test.HoursH.Count; i++)
        {
            if (test.HoursH[i] < from)
            {
                continue;
            }

            var (x, y) = (test.HoursH[i], Math.Log(test.Shares[i]));
            (n, sx, sy, sxx, sxy) = (n + 1, sx + x, sy + y, sxx + (x * x), sxy + (x * y));
        }

        var spread = (n * sxx) - (sx * sx);
        if (n < 3 || spread <= 0)
        {
            return null;
        }

        var slope = ((n * sxy) - (sx * sy)) / spread;
        return new(Math.Exp((sy - (slope * sx)) / n), -slope, test.CaseK, duration, test.Samples);
    }

    /// <summary>Hours to a share of the first flux: ln(B/p)/α; infinite where the flux does not fall.</summary>
    /// <param name="fit">The exponential.</param>
    /// <param name="share">The share, 0 to 1.</param>
    public static double HoursTo(MaintenanceFit fit, double share)
    {
        ArgumentNullException.ThrowIfNull(fit);
        Guard.InRange(share, 0.01, 1);
        return fit.AlphaPerH > 0 ? Math.Max(0, Math.Log(fit.B / share) / fit.AlphaPerH) : double.PositiveInfinity;
    }

    /// <summary>Exponential at a temperature between two tests, by Arrhenius.</summary>
    /// <param name="a">One test.</param>
    /// <param name="b">The other.</param>
    /// <param name="caseK">Wanted case temperature, K.</param>
    /// <returns>The exponential, or null outside both or where one did not fall.</returns>
    public static MaintenanceFit? Between(MaintenanceFit a, MaintenanceFit b, double caseK)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var (cool, warm) = a.CaseK <= b.CaseK ? (a, b) : (b, a);
        if (caseK < cool.CaseK || caseK > warm.CaseK || warm.CaseK - cool.CaseK < 1e-6)
        {
            return null;
        }

        if (cool.AlphaPerH <= 0 || warm.AlphaPerH <= 0)
        {
            return null;
        }

        var activation = Math.Log(cool.AlphaPerH / warm.AlphaPerH) / ((1 / warm.CaseK) - (1 / cool.CaseK));
        var alpha = cool.AlphaPerH * Math.Exp(activation * ((1 / cool.CaseK) - (1 / caseK)));
        return new(
            Math.Sqrt(cool.B * warm.B),
            alpha,
            caseK,
            Math.Min(cool.DurationH, warm.DurationH),
            Math.Min(cool.Samples, warm.Samples)
        );
    }

    // A reading counts for its hour within 48 h of it, as the tests' method allows.
    private static readonly double SlackH = 48;

    /// <summary>Longest time that may be told: six times the test in whole thousands of hours, five and a half with 10 to 19 units, h.</summary>
    /// <param name="fit">The exponential.</param>
    public static double CapH(MaintenanceFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return (fit.Samples >= 20 ? 6 : 5.5) * Math.Floor((fit.DurationH + SlackH) / 1000) * 1000;
    }

    /// <summary>What may be told at a case temperature.</summary>
    /// <param name="tests">The maker's tests.</param>
    /// <param name="caseK">Case of the emitter, K.</param>
    /// <param name="share">Wanted share, 0.7 for L70.</param>
    public static MaintenanceClaim Claim(IReadOnlyList<MaintenanceTest> tests, double caseK, double share = 0.7)
    {
        ArgumentNullException.ThrowIfNull(tests);
        if (tests.Any(t => t.Samples < LeastSamples))
        {
            return None($"fewer than {LeastSamples} units were tested");
        }

        var fits = tests.Select(Fit).OfType<MaintenanceFit>().OrderBy(f => f.CaseK).ToList();
        if (fits.Count == 0)
        {
            return None("no test is long enough");
        }

        // Below the coolest test its own values hold: the method never extrapolates, and cooler is not worse.
        var cooler = fits.LastOrDefault(f => f.CaseK <= caseK + 1e-9);
        var warmer = fits.FirstOrDefault(f => f.CaseK >= caseK - 1e-9);
        if (warmer is null)
        {
            return None("the case is hotter than in any test");
        }

        var fit =
            cooler is null || ReferenceEquals(cooler, warmer) ? warmer
            : Between(cooler, warmer, caseK) is { } between ? between
            : cooler.AlphaPerH > warmer.AlphaPerH ? cooler
            : warmer;
        var calculated = HoursTo(fit, share);
        var cap = CapH(fit);
        return new(fit, calculated, Math.Min(calculated, cap), cap, calculated > cap, "");
    }

    private static MaintenanceClaim None(string why) => new(null, double.NaN, null, 0, false, why);
}
