namespace Lampwright.Balance;

/// <summary>An arm that carries the light at its end, on a post where there is one.</summary>
/// <param name="LengthM">Free length, metres, above 0.</param>
/// <param name="Section">Cross-section of the arm.</param>
/// <param name="ModulusPa">Modulus of elasticity, pascals, above 0.</param>
/// <param name="DensityKgPerM3">Density of the arm, kg/m³, 0 or more.</param>
/// <param name="TipMassKg">Mass at the end, kilograms, 0 or more.</param>
/// <param name="PostM">Height of the post, metres; 0 for a wall or a rigid column.</param>
/// <param name="PostSection">Cross-section of the post; the arm's where null.</param>
/// <param name="DeflectionFactor">Factor of the method error <c>balance.arm_deflection</c>, on the deflections.</param>
public sealed record ArmSpec(
    double LengthM,
    Section Section,
    double ModulusPa,
    double DensityKgPerM3,
    double TipMassKg,
    double PostM = 0,
    Section? PostSection = null,
    double DeflectionFactor = 1
);

/// <summary>How an arm gives way.</summary>
/// <param name="DroopM">How far its end goes down, metres.</param>
/// <param name="SidewaysM">How far its end moves sideways by the post's bending, metres.</param>
/// <param name="StressPa">Largest bending stress of the arm or the post, pascals.</param>
public readonly record struct ArmResult(double DroopM, double SidewaysM, double StressPa);

/// <summary>Is the arm stiff enough? Closed form; runs per draw.</summary>
/// <remarks>See <see cref="Bending"/>. Own weight of the arm bends the arm; on the post it acts as half of it at the tip, which is on the safe side for the droop.</remarks>
public static class Arm
{
    /// <summary>How the arm gives way.</summary>
    public static ArmResult Result(ArmSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var force = Guard.InRange(spec.TipMassKg, 0, 1e5) * TiltJoint.Gravity;
        var weight = Guard.InRange(spec.DensityKgPerM3, 0, 1e5) * spec.Section.AreaM2 * TiltJoint.Gravity;
        var own = weight * Guard.Positive(spec.LengthM);
        var post = spec.PostSection ?? spec.Section;
        var arm = Bending.EndDeflectionM(force, spec.LengthM, spec.ModulusPa, spec.Section.SecondMomentM4);
        var (down, sideways) = Bending.TipOfLFrame(
            force + (own / 2),
            spec.LengthM,
            spec.PostM,
            spec.ModulusPa,
            spec.Section.SecondMomentM4,
            post.SecondMomentM4
        );
        // The post's part of the droop, then the arm's own bending by tip load and by its weight.
        down -= Bending.EndDeflectionM(force + (own / 2), spec.LengthM, spec.ModulusPa, spec.Section.SecondMomentM4);
        down += arm + Bending.OwnDeflectionM(weight, spec.LengthM, spec.ModulusPa, spec.Section.SecondMomentM4);
        var moment = (force + (own / 2)) * spec.LengthM;
        var stress = Math.Max(
            Bending.StressPa(moment, spec.Section.ModulusM3),
            spec.PostM > 0 ? Bending.StressPa(moment, post.ModulusM3) : 0
        );
        return new(spec.DeflectionFactor * down, spec.DeflectionFactor * sideways, stress);
    }
}
