namespace Lampwright.Balance;

/// <summary>From the torque on a screw to the force it clamps with, and back.</summary>
/// <remarks>
/// T = K·F·d; the full form adds lead angle, thread and collar friction. <b>Validity</b>: no prevailing torque, thread not seized.
/// <b>Source</b>: Shigley, Mechanical Engineering Design, ch. 8; Bickford (nut factors, second-hand). <b>Accuracy</b>: clamp force ±30 %.
/// <b>Checked by</b>: K.S4, K.S5a, K.S7, K.S8a, K.S8b.
/// </remarks>
public static class ScrewTightening
{
    /// <summary>Nut factor K when the state of the thread is not known: 0.20 (plain by Bickford, zinc by Shigley).</summary>
    public static double DefaultNutFactor { get; } = 0.20;

    /// <summary>Clamp force in newtons that a torque gives: T/(K·d).</summary>
    /// <param name="torqueNm">Torque, newton metres, 0 or more.</param>
    /// <param name="nutFactor">Nut factor K, 0.05 to 1.</param>
    /// <param name="diameterM">Nominal diameter, metres, above 0.</param>
    public static double ClampForceN(double torqueNm, double nutFactor, double diameterM) =>
        Math.Max(Guard.Finite(torqueNm), 0) / (Guard.InRange(nutFactor, 0.05, 1) * Guard.Positive(diameterM));

    /// <summary>Torque in newton metres that a clamp force asks for: K·F·d.</summary>
    /// <param name="forceN">Clamp force, newtons, 0 or more.</param>
    /// <param name="nutFactor">Nut factor K, 0.05 to 1.</param>
    /// <param name="diameterM">Nominal diameter, metres, above 0.</param>
    public static double TorqueNm(double forceN, double nutFactor, double diameterM) =>
        Guard.InRange(nutFactor, 0.05, 1) * Guard.InRange(forceN, 0, double.MaxValue) * Guard.Positive(diameterM);

    /// <summary>
    /// Torque by the full form: F·dm/2·(tan λ + f/cos 30°)/(1 − f·tan λ/cos 30°) + F·fc·0.625·d, dm the mean of major and minor diameter.
    /// </summary>
    /// <param name="forceN">Clamp force, newtons, 0 or more.</param>
    /// <param name="diameterM">Major diameter, metres, above 0.</param>
    /// <param name="minorM">Minor diameter, metres, above 0.</param>
    /// <param name="leadM">Lead of the thread (its pitch), metres, above 0.</param>
    /// <param name="threadFriction">Friction of the thread, 0 or more.</param>
    /// <param name="collarFriction">Friction under the head or nut, 0 or more.</param>
    public static double FullTorqueNm(
        double forceN,
        double diameterM,
        double minorM,
        double leadM,
        double threadFriction,
        double collarFriction
    )
    {
        var mean = (Guard.Positive(diameterM) + Guard.Positive(minorM)) / 2;
        var lead = Guard.Positive(leadM) / (Math.PI * mean); // tan λ
        var friction = Guard.InRange(threadFriction, 0, 2) / Math.Cos(Math.PI / 6);
        var thread = forceN * mean / 2 * (lead + friction) / (1 - (friction * lead));
        var collar = forceN * Guard.InRange(collarFriction, 0, 2) * 0.625 * diameterM;
        return thread + collar;
    }
}
