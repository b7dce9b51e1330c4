using Lampwright.Tables;

namespace Lampwright.Balance;

/// <summary>The errors of this station's methods, as variables for the draws.</summary>
public static class BalanceMethodErrors
{
    /// <summary>Clamp force of a torque. Factor: <see cref="TiltSpec.ClampFactor"/>.</summary>
    public static MethodError NutFactor { get; } =
        new(
            "balance.nut_factor",
            0.30,
            "Scatter of nut factors by Shigley and Bickford (second-hand); ±30 % on clamp force"
        );

    /// <summary>Uniform wear or uniform pressure. Factor: <see cref="TiltSpec.FaceFactor"/>.</summary>
    public static MethodError FaceWear { get; } =
        new(
            "balance.face_wear",
            0.07,
            "Half of the difference between uniform wear and uniform pressure (K.N11), derived"
        );

    /// <summary>Give of an arm's fixing. Factor: <see cref="ArmSpec.DeflectionFactor"/>.</summary>
    public static MethodError ArmDeflection { get; } =
        new("balance.arm_deflection", 0.10, "Clamps and welds are not rigid: common practice, no source");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MethodError> All { get; } = [NutFactor, FaceWear, ArmDeflection];
}
