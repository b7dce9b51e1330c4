using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Balance;

/// <summary>Limits of the station's rules of thumb; a maker may override them in the design file.</summary>
/// <param name="SafetyLeast">Safety factor of a tilt joint below which it is stopped; 1.5 (common practice, no source). Never below 1.</param>
/// <param name="SafetyGood">Safety factor from which nothing is said; 2.5 (common practice, no source).</param>
/// <param name="DroopShare">Droop over length from which it is spoken of; 0.01 (common practice, no source).</param>
/// <param name="YieldShare">Share of the yield strength that an arm may reach; 1/1.5 (common practice, no source).</param>
/// <param name="TwoFingersNm">Torque that two fingers give on a wing screw; 2 N·m (common practice, no source).</param>
/// <param name="FallingFromKg">Mass from which the caution of a falling head is told; 0.5 kg (common practice, no source).</param>
/// <param name="ProofShare">Share of the proof load that a clamp screw may reach; 0.75 (common practice, K.S8a).</param>
/// <param name="FrictionMost">Friction above which it is called hopeful; 0.2 (reference page mechanics, section 6).</param>
public sealed record BalanceLimits(
    double SafetyLeast = 1.5,
    double SafetyGood = 2.5,
    double DroopShare = 0.01,
    double YieldShare = 1 / 1.5,
    double TwoFingersNm = 2,
    double FallingFromKg = 0.5,
    double ProofShare = 0.75,
    double FrictionMost = 0.2
);

/// <summary>What a foreman would say of joints, arms and stands.</summary>
public static class BalanceFindings
{
    /// <summary>Findings of a tilt joint.</summary>
    /// <param name="path">Path of the joint in the design file.</param>
    /// <param name="spec">The joint.</param>
    /// <param name="result">What it does.</param>
    /// <param name="wing">True when the screws are turned by two fingers.</param>
    /// <param name="proofLoadN">Proof load of one screw, newtons; 0 where not known.</param>
    /// <param name="limits">Limits of the rules of thumb; null for the defaults.</param>
    public static IReadOnlyList<Finding> OfTilt(
        string path,
        TiltSpec spec,
        in TiltResult result,
        bool wing,
        double proofLoadN,
        BalanceLimits? limits = null
    )
    {
        ArgumentNullException.ThrowIfNull(spec);
        limits ??= new BalanceLimits();
        var findings = new List<Finding>();
        var least = Math.Max(limits.SafetyLeast, 1);
        if (result.SafetyFactor < limits.SafetyGood)
        {
            var rule = result.SafetyFactor < least ? BalanceRules.TiltSlips : BalanceRules.TiltMarginSmall;
            findings.Add(
                rule.At(
                    path,
                    Text(
                        $"The screws hold {result.HoldingNm:0.00} N·m; {spec.MassKg:0.00} kg with its balance point {result.OffsetM * 1000:0} mm from the axis asks for {result.WorstMomentNm:0.00} N·m: {result.SafetyFactor:0.0} times."
                    ),
                    Text($"{result.SafetyFactor:0.0}"),
                    Text($"{(rule == BalanceRules.TiltSlips ? least : limits.SafetyGood):0.0}")
                )
            );
        }

        if (wing && spec.TorqueNm > limits.TwoFingersNm)
        {
            findings.Add(
                BalanceRules.HandTorque.At(
                    path + ".torque",
                    Text($"{spec.TorqueNm:0.0} N·m is asked of a wing screw."),
                    Text($"{spec.TorqueNm:0.0} N·m"),
                    Text($"{limits.TwoFingersNm:0.0} N·m")
                )
            );
        }

        if (spec.MassKg >= limits.FallingFromKg)
        {
            findings.Add(
                BalanceRules.FallingLoad.At(
                    path,
                    Text($"{spec.MassKg:0.00} kg hang on the tilt joint."),
                    Text($"{spec.MassKg:0.00} kg")
                )
            );
        }

        if (proofLoadN > 0 && result.ClampForceN > limits.ProofShare * proofLoadN)
        {
            findings.Add(
                BalanceRules.ScrewOverloaded.At(
                    path + ".torque",
                    Text(
                        $"The torque clamps with {result.ClampForceN:0} N; the screw's proof load is {proofLoadN:0} N."
                    ),
                    Text($"{result.ClampForceN:0} N"),
                    Text($"{limits.ProofShare * proofLoadN:0} N")
                )
            );
        }

        if (spec.Friction > limits.FrictionMost)
        {
            findings.Add(
                BalanceRules.FrictionHopeful.At(
                    path + ".friction",
                    Text($"The friction is taken as {spec.Friction:0.00}."),
                    Text($"{spec.Friction:0.00}"),
                    Text($"{limits.FrictionMost:0.00}")
                )
            );
        }

        return findings;
    }

    /// <summary>Finding of rubbing faces that have no width; call before <see cref="TiltJoint.Result"/>, which refuses them.</summary>
    /// <param name="path">Path of the joint in the design file.</param>
    /// <param name="innerM">Inner diameter, metres.</param>
    /// <param name="outerM">Outer diameter, metres.</param>
    public static Finding? OfFaces(string path, double innerM, double outerM) =>
        innerM >= 0 && innerM < outerM
            ? null
            : BalanceRules.FacesImpossible.At(
                path + ".washer",
                Text($"The rubbing faces go from {innerM * 1000:0.#} mm to {outerM * 1000:0.#} mm."),
                Text($"{innerM * 1000:0.#} mm"),
                Text($"{outerM * 1000:0.#} mm")
            );

    /// <summary>Findings of a stand.</summary>
    /// <param name="path">Path of the stand in the design file.</param>
    /// <param name="spec">The stand.</param>
    /// <param name="result">How it stands.</param>
    public static IReadOnlyList<Finding> OfStand(string path, StandSpec spec, in StandResult result)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return result.TipsAtRad >= Stability.TestSlopeRad
            ? []
            :
            [
                BalanceRules.StandTips.At(
                    path + ".foot",
                    Text(
                        $"The stand tips at {result.TipsAtRad * 180 / Math.PI:0.0} degrees; with the balance point {result.BalanceHeightM:0.00} m high the foot must reach {result.FootNeededM * 1000:0} mm, it reaches {spec.FootM * 1000:0} mm."
                    ),
                    Text($"{result.TipsAtRad * 180 / Math.PI:0.0}°"),
                    "6°"
                ),
            ];
    }

    /// <summary>Findings of an arm.</summary>
    /// <param name="path">Path of the arm in the design file.</param>
    /// <param name="spec">The arm.</param>
    /// <param name="result">How it gives way.</param>
    /// <param name="yieldPa">Yield strength, pascals; 0 where not known.</param>
    /// <param name="limits">Limits of the rules of thumb; null for the defaults.</param>
    public static IReadOnlyList<Finding> OfArm(
        string path,
        ArmSpec spec,
        in ArmResult result,
        double yieldPa,
        BalanceLimits? limits = null
    )
    {
        ArgumentNullException.ThrowIfNull(spec);
        limits ??= new BalanceLimits();
        var findings = new List<Finding>();
        if (result.DroopM > limits.DroopShare * spec.LengthM)
        {
            findings.Add(
                BalanceRules.ArmDroops.At(
                    path,
                    Text($"The arm's end goes down {result.DroopM * 1000:0.0} mm over {spec.LengthM * 1000:0} mm."),
                    Text($"{result.DroopM * 1000:0.0} mm"),
                    Text($"{limits.DroopShare * spec.LengthM * 1000:0.0} mm")
                )
            );
        }

        if (yieldPa > 0 && result.StressPa > limits.YieldShare * yieldPa)
        {
            findings.Add(
                BalanceRules.ArmYields.At(
                    path,
                    Text($"The arm is stressed to {result.StressPa / 1e6:0} MPa; it yields at {yieldPa / 1e6:0} MPa."),
                    Text($"{result.StressPa / 1e6:0} MPa"),
                    Text($"{limits.YieldShare * yieldPa / 1e6:0} MPa")
                )
            );
        }

        return findings;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
