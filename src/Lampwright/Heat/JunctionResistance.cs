namespace Lampwright.Heat;

/// <summary>Resistance from junction to case, and the share of the electrical power that becomes heat.</summary>
/// <remarks>Source: JESD51-51 and -52. Checked by: definition. Closed form.</remarks>
public static class JunctionResistance
{
    /// <summary>Resistance on the heat that flows, K/W, from what the data sheet states.</summary>
    /// <remarks>
    /// A data sheet's "electrical" resistance is on the electrical power: R_real = R_el/(1 - η). It must never be combined with the
    /// reduced heat as it stands.
    /// </remarks>
    /// <param name="statedKPerW">The stated resistance, K/W, 0 or above.</param>
    /// <param name="isElectrical">True where it is on the electrical power.</param>
    /// <param name="radiantShare">Share η of the electrical power that left as light when it was measured, 0 to 0.95.</param>
    public static double RealKPerW(double statedKPerW, bool isElectrical, double radiantShare) =>
        isElectrical
            ? Guard.InRange(statedKPerW, 0, 1e6) / (1 - Guard.InRange(radiantShare, 0, 0.95))
            : Guard.InRange(statedKPerW, 0, 1e6);

    /// <summary>Share of the electrical power that leaves as light, from the efficacy: η = (lm/W)/LER, at most 0.95.</summary>
    /// <remarks>Source: LER of white light 300 to 350 lm/W (memory); 150 lm/W gives about 0.45.</remarks>
    /// <param name="efficacyLmPerW">Luminous flux over electrical power, lm/W, 0 or above.</param>
    /// <param name="radiationEfficacyLmPerW">Luminous efficacy of the radiation LER, lm/W, above 0.</param>
    public static double RadiantShare(double efficacyLmPerW, double radiationEfficacyLmPerW) =>
        Math.Clamp(efficacyLmPerW / Guard.Positive(radiationEfficacyLmPerW), 0, 0.95);

    /// <summary>Junction temperature, K, through resistances in a row.</summary>
    /// <param name="ambientK">Ambient temperature, K.</param>
    /// <param name="heatW">Heat, W.</param>
    /// <param name="resistancesKPerW">Resistances on the heat from junction to ambient, K/W.</param>
    public static double JunctionK(double ambientK, double heatW, params ReadOnlySpan<double> resistancesKPerW)
    {
        var sum = 0.0;
        foreach (var r in resistancesKPerW)
        {
            sum += r;
        }

        return ambientK + heatW * sum;
    }
}
