namespace Lampwright.Steps.ChainProof;

/// <summary>What is not a position of the chain: leads, a resistor across them, a floor below branches.</summary>
/// <remarks>
/// With S the chain and the sensed part of the leads and b the part that is not sensed, a resistor B across the leads on the board makes of it
/// S·B/(B + S + b), the voltage at the sense pin over the driver's current; it rises with S. A floor is simply added.
/// </remarks>
/// <param name="SensedOhm">Leads in the sense loop, ohm.</param>
/// <param name="UnsensedOhm">Leads outside of it, ohm.</param>
/// <param name="BleedOhm">Resistor across the leads, infinite where there is none.</param>
/// <param name="FloorOhm">Resistor in series with all branches, ohm.</param>
internal readonly record struct ChainBoard(double SensedOhm, double UnsensedOhm, double BleedOhm, double FloorOhm)
{
    /// <summary>What the chain and its sensed leads count for beside the resistor across them, ohm.</summary>
    public double Seen(double ohm) => double.IsInfinity(BleedOhm) ? ohm : ohm * Share(ohm);

    /// <summary>Share of the driver's current that the chain carries.</summary>
    public double Share(double ohm) => double.IsInfinity(BleedOhm) ? 1 : BleedOhm / (BleedOhm + ohm + UnsensedOhm);

    /// <summary>The chain that counts for so many ohm; infinite from the resistor across the leads on.</summary>
    public double Unseen(double ohm) =>
        ohm <= 0 || double.IsInfinity(BleedOhm) ? ohm
        : ohm < BleedOhm ? ohm * (BleedOhm + UnsensedOhm) / (BleedOhm - ohm)
        : double.PositiveInfinity;
}
