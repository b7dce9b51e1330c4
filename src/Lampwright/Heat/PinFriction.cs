namespace Lampwright.Heat;

/// <summary>Pressure that air loses across a bank of round pins.</summary>
/// <remarks>
/// Δp = (f/2)·G²·L/(Dv·ρ)·(Dv/ST)^0.4·(SL/ST)^0.6 with G in the narrowest gap, Dv four times the free volume over the surface of the pins,
/// f/2 = 90/Re or 0.96·Re^-0.145, whichever is larger (they meet at Re 202, so that nothing jumps).
/// Validity: Re on Dv from 0.01 to 3e5, pitch over diameter 1.25 to 5. Source: Gunter and Shaw 1945; as used in
/// Brodkey and Hershey, Transport Phenomena, Ex. 12.17 p. 630. Accuracy: 25 % (memory).
/// Checked by: printed. Closed form: cheap enough for every draw.
/// </remarks>
public static class PinFriction
{
    /// <summary>Volumetric diameter Dv, m.</summary>
    /// <param name="pitchAcrossM">Pitch across, m.</param>
    /// <param name="pitchAlongM">Pitch from row to row, m.</param>
    /// <param name="diameterM">Diameter of a pin, m.</param>
    public static double VolumetricDiameterM(double pitchAcrossM, double pitchAlongM, double diameterM) =>
        4 * ((pitchAcrossM * pitchAlongM) - (Math.PI * diameterM * diameterM / 4)) / (Math.PI * diameterM);

    /// <summary>Factor of the arrangement (Dv/ST)^0.4·(SL/ST)^0.6.</summary>
    /// <param name="volumetricM">Volumetric diameter, m.</param>
    /// <param name="pitchAcrossM">Pitch across, m.</param>
    /// <param name="toNextRowM">To the nearest pin of the next row, m.</param>
    public static double Arrangement(double volumetricM, double pitchAcrossM, double toNextRowM) =>
        Math.Pow(volumetricM / pitchAcrossM, 0.4) * Math.Pow(toNextRowM / pitchAcrossM, 0.6);

    /// <summary>Half of the friction factor.</summary>
    /// <param name="reynolds">On the volumetric diameter and the velocity in the narrowest gap, above 0.</param>
    public static double HalfFactor(double reynolds) => Math.Max(90 / reynolds, 0.96 * Math.Pow(reynolds, -0.145));

    /// <summary>Pressure lost, Pa.</summary>
    /// <param name="air">The air between the pins.</param>
    /// <param name="velocityMPerS">Velocity in the narrowest gap, m/s, 0 or above.</param>
    /// <param name="volumetricM">Volumetric diameter, m.</param>
    /// <param name="arrangement">Factor of the arrangement.</param>
    /// <param name="lengthM">Length of the bank along the air's way, m.</param>
    public static double LossPa(
        in Air air,
        double velocityMPerS,
        double volumetricM,
        double arrangement,
        double lengthM
    ) =>
        velocityMPerS <= 0
            ? 0
            : HalfFactor(velocityMPerS * volumetricM / air.KinematicViscosity)
                * air.Density
                * velocityMPerS
                * velocityMPerS
                * lengthM
                / volumetricM
                * arrangement;
}
