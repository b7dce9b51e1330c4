namespace Lampwright.Heat;

/// <summary>Round pins on a base, the air passing them across.</summary>
/// <param name="AcrossCount">Pins side by side across the air's way, 1 or more; the first and the last stand at the edges.</param>
/// <param name="AlongCount">Rows one behind another along the air's way, 1 or more.</param>
/// <param name="DiameterM">Diameter of a pin, m, above 0.</param>
/// <param name="HeightM">Height over the base, m, above 0.</param>
/// <param name="Staggered">True where each row stands in the gaps of the one before.</param>
public sealed record PinArray(int AcrossCount, int AlongCount, double DiameterM, double HeightM, bool Staggered)
{
    /// <summary>Number of pins.</summary>
    public int Count => AcrossCount * AlongCount;

    /// <summary>From pin to pin across the air's way, m.</summary>
    /// <param name="acrossM">Base across the air's way, m.</param>
    public double PitchAcrossM(double acrossM) =>
        AcrossCount < 2 ? acrossM : (acrossM - DiameterM) / (AcrossCount - 1 + (Staggered ? 0.5 : 0));

    /// <summary>From row to row, m.</summary>
    /// <param name="alongM">Base along the air's way, m.</param>
    public double PitchAlongM(double alongM) => AlongCount < 2 ? alongM : (alongM - DiameterM) / (AlongCount - 1);

    /// <summary>From a pin to the nearest of the next row, m.</summary>
    /// <param name="acrossM">Base across the air's way, m.</param>
    /// <param name="alongM">Base along the air's way, m.</param>
    public double ToNextRowM(double acrossM, double alongM)
    {
        double half = Staggered ? PitchAcrossM(acrossM) / 2 : 0,
            along = PitchAlongM(alongM);
        return Math.Sqrt((half * half) + (along * along));
    }

    /// <summary>Narrowest gap between two pins, m; zero or below where they do not fit.</summary>
    /// <param name="acrossM">Base across the air's way, m.</param>
    /// <param name="alongM">Base along the air's way, m.</param>
    public double GapM(double acrossM, double alongM) =>
        Math.Min(
            AcrossCount < 2 ? acrossM : PitchAcrossM(acrossM) - DiameterM,
            AlongCount < 2 ? alongM : ToNextRowM(acrossM, alongM) - DiameterM
        );

    /// <summary>Narrowest free area that the air passes, m²: between the pins of a row, or slantwise to the next row.</summary>
    /// <param name="acrossM">Base across the air's way, m.</param>
    /// <param name="alongM">Base along the air's way, m.</param>
    public double FreeAreaM2(double acrossM, double alongM)
    {
        var straight = acrossM - (AcrossCount * DiameterM);
        var slant =
            Staggered && AlongCount > 1 ? 2 * AcrossCount * (ToNextRowM(acrossM, alongM) - DiameterM) : straight;
        return Math.Max(0, Math.Min(straight, slant)) * HeightM;
    }
}
