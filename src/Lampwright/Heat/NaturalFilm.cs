namespace Lampwright.Heat;

/// <summary>Nusselt numbers of natural convection: fin channels and plates.</summary>
/// <remarks>
/// Accuracy: channel 10 % against Elenbaas's and later measurements (memory); plates 10 to 15 % (common practice).
/// Checked by: printed (Incropera, Cengel, Lienhard). Closed forms: cheap enough for every draw.
/// </remarks>
public static class NaturalFilm
{
    /// <summary>Elenbaas number Ra_s·s/L of a vertical channel.</summary>
    /// <param name="air">Air at the film temperature.</param>
    /// <param name="riseK">Wall over the air, K.</param>
    /// <param name="gapM">Gap s, m.</param>
    /// <param name="lengthM">Length L along the rise, m.</param>
    public static double Elenbaas(in Air air, double riseK, double gapM, double lengthM) =>
        air.Rayleigh(riseK, gapM) * gapM / lengthM;

    /// <summary>Nusselt number on the gap of a channel between symmetric isothermal plates.</summary>
    /// <remarks>
    /// Validity: 0.1 &lt; El &lt; 1e5. Source: Bar-Cohen and Rohsenow 1984, J. Heat Transfer 106:116-123, C1 = 576, C2 = 2.873.
    /// </remarks>
    /// <param name="elenbaas">Elenbaas number, 0 or above.</param>
    public static double Channel(double elenbaas)
    {
        if (elenbaas <= 0)
        {
            return 0;
        }

        return 1 / Math.Sqrt(576 / (elenbaas * elenbaas) + 2.873 / Math.Sqrt(elenbaas));
    }

    /// <summary>Nusselt number on the height of a vertical plate, all Rayleigh numbers.</summary>
    /// <remarks>Validity: Ra to 1e12. Source: Churchill and Chu 1975, IJHMT 18:1323.</remarks>
    /// <param name="rayleigh">Rayleigh number on the height.</param>
    /// <param name="prandtl">Prandtl number.</param>
    public static double VerticalPlate(double rayleigh, double prandtl) =>
        VerticalPlateWith(rayleigh, VerticalPlateTerm(prandtl));

    /// <summary>The part of <see cref="VerticalPlate"/> that hangs on the Prandtl number alone; the draws keep it, air's hardly moves.</summary>
    internal static double VerticalPlateTerm(double prandtl) =>
        0.387 / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);

    /// <summary><see cref="VerticalPlate"/> with its Prandtl term at hand.</summary>
    internal static double VerticalPlateWith(double rayleigh, double prandtlTerm)
    {
        var root = 0.825 + prandtlTerm * Math.Cbrt(Math.Sqrt(rayleigh));
        return root * root;
    }

    /// <summary>Nusselt number on the height of a vertical plate, laminar, a little more exact below Ra 1e9.</summary>
    /// <remarks>Validity: Ra ≤ 1e9. Source: Churchill and Chu 1975, IJHMT 18:1323.</remarks>
    /// <param name="rayleigh">Rayleigh number on the height.</param>
    /// <param name="prandtl">Prandtl number.</param>
    public static double VerticalPlateLaminar(double rayleigh, double prandtl) =>
        0.68 + 0.670 * Fourth(rayleigh) / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 4.0 / 9);

    /// <summary>Nusselt number on the diameter of a level cylinder.</summary>
    /// <remarks>Validity: Ra to 1e12. Source: Churchill and Chu 1975, IJHMT 18:1049. Checked by: printed (Incropera Ex. 9.4).</remarks>
    /// <param name="rayleigh">Rayleigh number on the diameter, 0 or above.</param>
    /// <param name="prandtl">Prandtl number.</param>
    public static double LevelCylinder(double rayleigh, double prandtl)
    {
        var root =
            0.60
            + (0.387 * Math.Cbrt(Math.Sqrt(rayleigh)) / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27));
        return root * root;
    }

    /// <summary>Nusselt number of a horizontal plate, hot face up, on the length area/perimeter.</summary>
    /// <remarks>
    /// Validity: 1e4 to 1e11. Source: McAdams; Lloyd and Moran. The two branches meet at Ra 1e7 within 3 %; the larger is
    /// taken, so that nothing jumps.
    /// </remarks>
    /// <param name="rayleigh">Rayleigh number on area/perimeter.</param>
    public static double HotFaceUp(double rayleigh) => Math.Max(0.54 * Fourth(rayleigh), 0.15 * Math.Cbrt(rayleigh));

    /// <summary>Nusselt number of a horizontal plate, hot face down, on the length area/perimeter.</summary>
    /// <remarks>Validity: 1e5 to 1e10. Source: McAdams.</remarks>
    /// <param name="rayleigh">Rayleigh number on area/perimeter.</param>
    public static double HotFaceDown(double rayleigh) => 0.27 * Fourth(rayleigh);

    /// <summary>Gap that gives the most heat from a given volume of thin fins, m.</summary>
    /// <remarks>Source: Bar-Cohen and Rohsenow 1984, s = 2.714·L/Ra_L^¼.</remarks>
    /// <param name="lengthM">Length of the channel, m.</param>
    /// <param name="rayleighOnLength">Rayleigh number on that length, above 0.</param>
    public static double BestGapM(double lengthM, double rayleighOnLength) =>
        2.714 * lengthM / Fourth(rayleighOnLength);

    private static double Fourth(double x) => Math.Sqrt(Math.Sqrt(x));
}
