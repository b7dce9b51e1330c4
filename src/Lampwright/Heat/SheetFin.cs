namespace Lampwright.Heat;

/// <summary>Sheet round a warm patch, as a round fin of even thickness.</summary>
/// <remarks>
/// Validity: patch and sheet round, of the same areas as the real ones; film and radiation even over the sheet; h·t/k far below 1; no heat
/// over the outer edge. Source: Incropera, Fundamentals of Heat and Mass Transfer, 3.6.4, annular fins with an adiabatic tip (memory).
/// Accuracy: 5 % for squares (common practice). Checked by: printed (Incropera Ex. 3.10), invariant (good metal, a sheet without end).
/// </remarks>
public static class SheetFin
{
    private static readonly double MostDecayLengths = 300;

    /// <summary>From the edge of the patch into the air, W/K.</summary>
    /// <param name="conductivityWPerMK">Conductivity of the sheet, W/(m·K), above 0.</param>
    /// <param name="thicknessM">Its thickness, m, above 0.</param>
    /// <param name="patchM2">Area of the patch, m², above 0.</param>
    /// <param name="restM2">Area of the sheet round it, one side, m², above 0.</param>
    /// <param name="bothSidesWPerM2K">Film and radiation of both sides together, W/(m²·K), above 0.</param>
    public static double ConductanceWPerK(
        double conductivityWPerMK,
        double thicknessM,
        double patchM2,
        double restM2,
        double bothSidesWPerM2K
    )
    {
        var along = Guard.Positive(conductivityWPerMK) * Guard.Positive(thicknessM);
        var m = Math.Sqrt(Guard.Positive(bothSidesWPerM2K) / along);
        var inner = Math.Sqrt(Guard.Positive(patchM2) / Math.PI);
        if (m * inner > MostDecayLengths)
        {
            // So far out the rim is a straight edge.
            return 2 * Math.PI * inner * along * m;
        }

        // Beyond a dozen decay lengths the rest of the sheet is as cold as the air, and Bessel's functions would overflow.
        var rim = Math.Sqrt((patchM2 + Guard.Positive(restM2)) / Math.PI);
        var outer = Math.Min(rim, inner + (12 / m));
        return bothSidesWPerM2K
            * Math.PI
            * ((outer * outer) - (inner * inner))
            * Fin.AnnularEfficiency(0.5 * bothSidesWPerM2K, conductivityWPerMK, thicknessM, inner, outer);
    }

    /// <summary>From the edge of the patch to the mean temperature of the sheet round it, W/K: what joins the two as nodes.</summary>
    /// <remarks>The same five numbers as <see cref="ConductanceWPerK"/>. Derived: the heat is film × area × mean rise.</remarks>
    public static double ToMeanWPerK(
        double conductivityWPerMK,
        double thicknessM,
        double patchM2,
        double restM2,
        double bothSidesWPerM2K
    )
    {
        var all = ConductanceWPerK(conductivityWPerMK, thicknessM, patchM2, restM2, bothSidesWPerM2K);
        var even = bothSidesWPerM2K * restM2;
        return all < even * (1 - 1e-9) ? 1 / ((1 / all) - (1 / even)) : 1e9 * even;
    }
}
