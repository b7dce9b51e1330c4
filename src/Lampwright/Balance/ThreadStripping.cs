namespace Lampwright.Balance;

/// <summary>Force that strips a thread.</summary>
/// <remarks>
/// <b>Validity</b>: full flanks over the engaged length; fewer than three full threads in sheet want a rivet nut, weld nut or clinch nut
/// (common practice). <b>Source</b>: FED-STD-H28, Machinery's Handbook (same geometry in ISO and VDI). <b>Checked by</b>: K.S1, K.S3a.
/// </remarks>
public static class ThreadStripping
{
    /// <summary>Shear area of the internal thread in square metres.</summary>
    /// <param name="engagedM">Engaged length, metres, above 0.</param>
    /// <param name="pitchM">Pitch, metres, above 0.</param>
    /// <param name="screwMajorM">Least major diameter of the screw, metres.</param>
    /// <param name="nutPitchDiameterM">Greatest pitch diameter of the nut, metres.</param>
    public static double InternalAreaM2(double engagedM, double pitchM, double screwMajorM, double nutPitchDiameterM) =>
        Math.PI
        * (Guard.Positive(engagedM) / Guard.Positive(pitchM))
        * Guard.Positive(screwMajorM)
        * ((pitchM / 2) + ((screwMajorM - Guard.Positive(nutPitchDiameterM)) / Math.Sqrt(3)));

    /// <summary>Shear area of the external thread in square metres.</summary>
    /// <param name="engagedM">Engaged length, metres, above 0.</param>
    /// <param name="pitchM">Pitch, metres, above 0.</param>
    /// <param name="nutMinorM">Greatest minor diameter of the nut, metres.</param>
    /// <param name="screwPitchDiameterM">Least pitch diameter of the screw, metres.</param>
    public static double ExternalAreaM2(double engagedM, double pitchM, double nutMinorM, double screwPitchDiameterM) =>
        Math.PI
        * (Guard.Positive(engagedM) / Guard.Positive(pitchM))
        * Guard.Positive(nutMinorM)
        * ((pitchM / 2) + ((Guard.Positive(screwPitchDiameterM) - nutMinorM) / Math.Sqrt(3)));

    /// <summary>Engaged length of the internal thread in metres at which it strips at a force.</summary>
    /// <param name="forceN">Force, newtons, above 0.</param>
    /// <param name="shearPa">Shear strength of the nut's material, pascals, above 0.</param>
    /// <param name="pitchM">Pitch, metres, above 0.</param>
    /// <param name="screwMajorM">Least major diameter of the screw, metres.</param>
    /// <param name="nutPitchDiameterM">Greatest pitch diameter of the nut, metres.</param>
    public static double InternalLengthM(
        double forceN,
        double shearPa,
        double pitchM,
        double screwMajorM,
        double nutPitchDiameterM
    ) =>
        Guard.Positive(forceN)
        / Guard.Positive(shearPa)
        / InternalAreaM2(pitchM, pitchM, screwMajorM, nutPitchDiameterM)
        * pitchM;
}
