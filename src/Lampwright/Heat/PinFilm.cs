namespace Lampwright.Heat;

/// <summary>Film of air that is blown across a bank of round pins.</summary>
/// <remarks>
/// Validity: Re on the diameter and the velocity in the narrowest gap to 2e5; pins much longer than thick (short ones see the base's film:
/// <see cref="HeatMethods.PinFilm"/>). Source: Zukauskas 1972 and 1987, as in Cengel table 7-2, and the factor for few rows in table 7-3
/// (memory; form and factor as used in Kreith, 7th ed., Ex. 7.6). Between their ranges the branches go over into each other in the
/// logarithm of Re, so that nothing jumps. Accuracy: 15 % (theirs).
/// Checked by: printed (Kreith Ex. 7.6; Incropera Ex. 7.6). Closed form: cheap enough for every draw.
/// </remarks>
public static class PinFilm
{
    /// <summary>Upper end of the range of Re.</summary>
    public static readonly double MostRe = 2e5;

    private static readonly double[] Rows = [1, 2, 3, 4, 5, 7, 10, 13, 16];
    private static readonly double[] FewInLine = [0.70, 0.80, 0.86, 0.90, 0.93, 0.96, 0.98, 0.99, 1];
    private static readonly double[] FewStaggered = [0.64, 0.76, 0.84, 0.89, 0.93, 0.96, 0.98, 0.99, 1];

    /// <summary>Nusselt number on the diameter, referred to the mean (logarithmic) difference of temperatures.</summary>
    /// <param name="reynolds">On diameter and velocity in the narrowest gap, 0 or above.</param>
    /// <param name="prandtl">Prandtl number.</param>
    /// <param name="staggered">True where each row stands in the gaps of the one before.</param>
    /// <param name="pitchRatio">Pitch across over pitch along, above 0; counts for staggered pins above Re 1000.</param>
    /// <param name="rows">Rows along the air's way, 1 or more.</param>
    public static double Nusselt(double reynolds, double prandtl, bool staggered, double pitchRatio, int rows)
    {
        if (reynolds <= 0)
        {
            return 0;
        }

        double slow,
            middle,
            fast;
        double blend1,
            blend2;
        if (staggered)
        {
            slow = 1.04 * Math.Pow(reynolds, 0.4);
            middle = 0.71 * Math.Sqrt(reynolds);
            fast = 0.35 * Math.Pow(Math.Min(pitchRatio, 2), 0.2) * Math.Pow(reynolds, 0.6);
            (blend1, blend2) = (Over(reynolds, 500), Over(reynolds, 1000));
        }
        else
        {
            slow = 0.9 * Math.Pow(reynolds, 0.4);
            middle = 0.52 * Math.Sqrt(reynolds);
            fast = 0.27 * Math.Pow(reynolds, 0.63);
            (blend1, blend2) = (Over(reynolds, 100), Over(reynolds, 1000));
        }

        var lower = slow + (blend1 * (middle - slow));
        return FewRows(staggered, rows) * (lower + (blend2 * (fast - lower))) * Math.Pow(prandtl, 0.36);
    }

    /// <summary>Factor on the film of a bank of few rows.</summary>
    /// <param name="staggered">True where each row stands in the gaps of the one before.</param>
    /// <param name="rows">Rows along the air's way, 1 or more.</param>
    public static double FewRows(bool staggered, int rows)
    {
        var factors = staggered ? FewStaggered : FewInLine;
        for (var i = 1; i < Rows.Length; i++)
        {
            if (rows <= Rows[i])
            {
                var t = Math.Max(0, (rows - Rows[i - 1]) / (Rows[i] - Rows[i - 1]));
                return factors[i - 1] + (t * (factors[i] - factors[i - 1]));
            }
        }

        return 1;
    }

    // From 0 to 1 while Re goes from two thirds of a limit to one and a half of it.
    private static double Over(double reynolds, double limit) =>
        Math.Clamp((Math.Log(reynolds / limit) / (2 * Math.Log(1.5))) + 0.5, 0, 1);
}
