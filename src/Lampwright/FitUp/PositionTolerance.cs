namespace Lampwright.FitUp;

/// <summary>How far holes that one screw passes may be out of place.</summary>
/// <remarks>
/// A floating fastener passes clearance holes in every part: hole H = F + T. A fixed one sits in a thread of one part: H = F + 2 T
/// when both parts share the tolerance. T is the diameter of the zone in which each axis may lie, F the screw's diameter.
/// <b>Source</b>: ASME Y14.5, appendix B. <b>Validity</b>: axes stay parallel (thin parts, or a projected zone).
/// <b>Checked by</b>: K.G2, K.G3a, K.G3b, K.G4a.
/// </remarks>
public static class PositionTolerance
{
    /// <summary>Zone of each part for a floating fastener, metres; below 0 when the screw does not pass.</summary>
    public static double FloatingM(double holeM, double screwM) => Guard.Finite(holeM) - Guard.Positive(screwM);

    /// <summary>Zone of each part for a fixed fastener, metres; below 0 when the screw does not pass.</summary>
    public static double FixedM(double holeM, double screwM) => FloatingM(holeM, screwM) / 2;

    /// <summary>Limit along each axis of a square inside a round zone, metres: T / (2 √2).</summary>
    public static double PerAxisM(double zoneM) => Guard.Finite(zoneM) / (2 * Math.Sqrt(2));

    /// <summary>Round zone that a limit along each axis needs, metres: 2 √2 times the limit.</summary>
    public static double ZoneM(double perAxisM) => Guard.Finite(perAxisM) * 2 * Math.Sqrt(2);

    /// <summary>Distance between the axes of two holes at which the screw still passes both, metres.</summary>
    /// <param name="holeM">Diameter of one hole.</param>
    /// <param name="tapped">True when that hole holds the screw in its thread.</param>
    /// <param name="otherM">Diameter of the other hole.</param>
    /// <param name="otherTapped">True when the other hole holds it.</param>
    /// <param name="screwM">Diameter of the screw.</param>
    /// <remarks>Half the clearance of each hole that does not hold the screw: the formulas above, solved for the distance.</remarks>
    public static double BetweenM(double holeM, bool tapped, double otherM, bool otherTapped, double screwM) =>
        (tapped ? 0 : FloatingM(holeM, screwM) / 2) + (otherTapped ? 0 : FloatingM(otherM, screwM) / 2);
}
