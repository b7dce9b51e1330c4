namespace Lampwright.Heat;

/// <summary>Pressure that the air loses in the channels between plate fins.</summary>
/// <remarks>
/// Validity: laminar, Re on the hydraulic diameter below about 2300, 0 &lt; gap/height ≤ 1; beyond it <see cref="TurbulentChannel"/>, without a jump.
/// Source: Shah and London 1978 (f·Re of rectangular ducts, polynomial); Muzychka and Yovanovich, J. Fluids Eng. 131, 111105 (2009)
/// (developing flow); Kays and London (ends, flat profile). Fanning friction factors: a quarter of Darcy's.
/// Accuracy: friction 10 % (theirs), ends 23 to 34 % of their share between equal ducts and 5 % between plenums.
/// Checked by: printed (Shah and London table 42). Closed form: cheap enough for every draw.
/// </remarks>
public static class ChannelFriction
{
    /// <summary>f·Re of developed laminar flow in a rectangular duct.</summary>
    /// <param name="aspect">Short side over long side, 0 to 1.</param>
    public static double DevelopedFRe(double aspect)
    {
        var a = Math.Clamp(aspect, 0, 1);
        return 24 * (1 + a * (-1.3553 + a * (1.9467 + a * (-1.7012 + a * (0.9564 - a * 0.2537)))));
    }

    /// <summary>Apparent f·Re of flow that develops from the entrance.</summary>
    /// <param name="xPlus">L/(Dh·Re), above 0.</param>
    /// <param name="developedFRe">f·Re of the developed flow.</param>
    public static double ApparentFRe(double xPlus, double developedFRe) =>
        Math.Sqrt(3.44 * 3.44 / xPlus + developedFRe * developedFRe);

    /// <summary>Entrance loss on the channel's velocity head, flat profile: 0.42·(1 - σ²).</summary>
    /// <param name="openRatio">Free area over frontal area σ, 0 to 1.</param>
    public static double EntranceK(double openRatio) => 0.42 * (1 - openRatio * openRatio);

    /// <summary>Exit loss on the channel's velocity head, flat profile: (1 - σ)² (Borda-Carnot).</summary>
    /// <param name="openRatio">Free area over frontal area σ, 0 to 1.</param>
    public static double ExitK(double openRatio) => (1 - openRatio) * (1 - openRatio);

    /// <summary>Entrance loss where the profile is developed, laminar, between parallel plates: 0.8 - 0.4·σ².</summary>
    /// <remarks>For long channels; goes with the friction of developed flow, not with <see cref="ApparentFRe"/>.</remarks>
    /// <param name="openRatio">Free area over frontal area σ, 0 to 1.</param>
    public static double DevelopedEntranceK(double openRatio) => 0.8 - (0.4 * openRatio * openRatio);

    /// <summary>Exit loss where the profile is developed, laminar, between parallel plates: 1 - 2.4·σ + σ².</summary>
    /// <remarks>For long channels; goes with the friction of developed flow, not with <see cref="ApparentFRe"/>.</remarks>
    /// <param name="openRatio">Free area over frontal area σ, 0 to 1.</param>
    public static double DevelopedExitK(double openRatio) => 1 - (2.4 * openRatio) + (openRatio * openRatio);

    /// <summary>Hydraulic diameter of a rectangular channel 2bH/(b + H), m.</summary>
    /// <param name="gapM">Gap b, m.</param>
    /// <param name="heightM">Height H, m.</param>
    public static double HydraulicDiameterM(double gapM, double heightM) => 2 * gapM * heightM / (gapM + heightM);

    /// <summary>Pressure lost in a channel with both of its ends, Pa.</summary>
    /// <param name="air">The air in the channel.</param>
    /// <param name="velocityMPerS">Mean velocity in the channel, m/s, 0 or above.</param>
    /// <param name="gapM">Gap, m.</param>
    /// <param name="heightM">Height, m.</param>
    /// <param name="lengthM">Length along the flow, m.</param>
    /// <param name="endsK">Sum of the losses at the ends, on the channel's velocity head.</param>
    public static double LossPa(
        in Air air,
        double velocityMPerS,
        double gapM,
        double heightM,
        double lengthM,
        double endsK
    ) =>
        DuctLossPa(
            air,
            velocityMPerS,
            HydraulicDiameterM(gapM, heightM),
            lengthM,
            DevelopedFRe(Math.Min(gapM, heightM) / Math.Max(gapM, heightM)),
            endsK
        );

    /// <summary>The same with the hydraulic diameter and f·Re at hand, for the inner loop.</summary>
    internal static double DuctLossPa(
        in Air air,
        double velocityMPerS,
        double diameterM,
        double lengthM,
        double developedFRe,
        double endsK
    )
    {
        if (velocityMPerS <= 0)
        {
            return 0;
        }

        var re = velocityMPerS * diameterM / air.KinematicViscosity;
        var xPlus = lengthM / (diameterM * re);
        var laminar = ApparentFRe(xPlus, developedFRe) / re;
        var turbulent = TurbulentChannel.Share(re);
        var fApparent =
            turbulent > 0 ? laminar + (turbulent * Math.Max(0, TurbulentChannel.Friction(re) - laminar)) : laminar;
        return (endsK + 4 * fApparent * lengthM / diameterM) * 0.5 * air.Density * velocityMPerS * velocityMPerS;
    }
}
