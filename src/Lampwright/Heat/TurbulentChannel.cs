namespace Lampwright.Heat;

/// <summary>Turbulent air between fins, and how laminar goes over into it.</summary>
/// <remarks>
/// Validity: Re on the hydraulic diameter 2300 to 5e6. Source: Gnielinski 1976 (film), Petukhov 1970 (friction), Incropera eq. 8.21, 8.62;
/// between Re 2300 and 4000 in a straight line from the laminar to the turbulent value, as Gnielinski 1995 does for the film (memory).
/// Accuracy: 10 % beyond 4000, 30 % between (common practice); entrance effects left out, on the safe side for the film.
/// Checked by: printed (a test value of a heat transfer library, memory). Closed form: cheap enough for every draw.
/// </remarks>
public static class TurbulentChannel
{
    /// <summary>Where laminar flow ends.</summary>
    public static readonly double LaminarRe = 2300;

    /// <summary>Where turbulent flow is full.</summary>
    public static readonly double TurbulentRe = 4000;

    /// <summary>Share of the turbulent value, 0 to 1.</summary>
    /// <param name="reynolds">On the hydraulic diameter.</param>
    public static double Share(double reynolds) => Math.Clamp((reynolds - LaminarRe) / (TurbulentRe - LaminarRe), 0, 1);

    /// <summary>Fanning friction factor of smooth walls.</summary>
    /// <param name="reynolds">On the hydraulic diameter, above 2000.</param>
    public static double Friction(double reynolds)
    {
        var root = (0.790 * Math.Log(reynolds)) - 1.64;
        return 0.25 / (root * root);
    }

    /// <summary>Nusselt number on the hydraulic diameter and the mean (logarithmic) difference of temperatures.</summary>
    /// <param name="reynolds">On the hydraulic diameter, above 2000.</param>
    /// <param name="prandtl">Prandtl number.</param>
    /// <param name="fanning">Fanning friction factor.</param>
    public static double Nusselt(double reynolds, double prandtl, double fanning)
    {
        var half = fanning / 2;
        return half * (reynolds - 1000) * prandtl / (1 + (12.7 * Math.Sqrt(half) * (Math.Pow(prandtl, 2.0 / 3) - 1)));
    }

    /// <summary>Nusselt number on the gap and the inlet difference, laminar below, turbulent above, without a jump.</summary>
    /// <param name="laminar">The laminar one.</param>
    /// <param name="reStar">Channel Reynolds number of <see cref="ChannelFilm"/>.</param>
    /// <param name="reynolds">On the hydraulic diameter.</param>
    /// <param name="gapOverDiameter">Gap over hydraulic diameter.</param>
    /// <param name="prandtl">Prandtl number.</param>
    internal static double Joined(
        double laminar,
        double reStar,
        double reynolds,
        double gapOverDiameter,
        double prandtl
    )
    {
        var share = Share(reynolds);
        if (share <= 0)
        {
            return laminar;
        }

        // The air itself takes Re*·Pr/2 at most: the same step from the mean to the inlet difference as of H.FC-02.
        var capacity = 0.5 * reStar * prandtl;
        var mean = Nusselt(reynolds, prandtl, Friction(reynolds)) * gapOverDiameter;
        var turbulent = capacity * (1 - Math.Exp(-mean / capacity));

        // A long channel may hold the laminar value over the turbulent one at the start of the range; more flow never cools less.
        return laminar + (share * Math.Max(0, turbulent - laminar));
    }
}
