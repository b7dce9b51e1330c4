namespace Lampwright.Heat;

/// <summary>Film of air that is blown along a flat plate.</summary>
/// <remarks>
/// Validity: Re to 1e8, transition at 5e5. Source: Incropera ch. 7 (Pohlhausen; Colburn with transition).
/// Accuracy: 15 % (common practice); the larger of the two branches is taken, which cross at Re 4.98e5, so that nothing jumps. Checked by: printed (Incropera Ex. 7.1, Cengel Ex. 7-2).
/// </remarks>
public static class ForcedPlate
{
    /// <summary>Mean Nusselt number on the plate's length.</summary>
    /// <param name="reynolds">Reynolds number on the length, 0 or above.</param>
    /// <param name="prandtl">Prandtl number.</param>
    public static double Nusselt(double reynolds, double prandtl) =>
        Math.Cbrt(prandtl) * Math.Max(0.664 * Math.Sqrt(reynolds), 0.037 * Math.Pow(reynolds, 0.8) - 871);
}
