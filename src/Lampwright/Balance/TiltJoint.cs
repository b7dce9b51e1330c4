namespace Lampwright.Balance;

/// <summary>A tilt joint held by clamped faces.</summary>
/// <remarks>
/// The axis is horizontal. The balance point is given from the axis in the drawn position, in the plane square to the axis; a positive
/// tilt lifts a point that lies forward.
/// </remarks>
/// <param name="Screws">Count of clamp screws, 1 or more.</param>
/// <param name="ScrewDiameterM">Nominal diameter of the screw, metres, above 0.</param>
/// <param name="TorqueNm">Torque on each screw, newton metres, 0 or more.</param>
/// <param name="NutFactor">Nut factor K, 0.05 to 1.</param>
/// <param name="FacesPerScrew">Rubbing faces of each screw, 1 or more.</param>
/// <param name="InnerM">Inner diameter of the rubbing faces, metres.</param>
/// <param name="OuterM">Outer diameter of the rubbing faces, metres, above the inner.</param>
/// <param name="Friction">Coefficient of friction of the faces, 0 or more.</param>
/// <param name="MassKg">Mass that tilts, kilograms, 0 or more.</param>
/// <param name="ForwardM">Balance point forward of the axis in the drawn position, metres.</param>
/// <param name="UpM">Balance point above the axis in the drawn position, metres.</param>
/// <param name="LeastTiltRad">Least tilt from the drawn position, radians, −π or more.</param>
/// <param name="MostTiltRad">Greatest tilt from the drawn position, radians, up to π.</param>
/// <param name="ClampFactor">Factor of the method error <c>balance.nut_factor</c>, on the clamp force.</param>
/// <param name="FaceFactor">Factor of <c>balance.face_wear</c>, on the holding moment.</param>
public sealed record TiltSpec(
    int Screws,
    double ScrewDiameterM,
    double TorqueNm,
    double NutFactor,
    int FacesPerScrew,
    double InnerM,
    double OuterM,
    double Friction,
    double MassKg,
    double ForwardM,
    double UpM,
    double LeastTiltRad = -Math.PI,
    double MostTiltRad = Math.PI,
    double ClampFactor = 1,
    double FaceFactor = 1
);

/// <summary>What a tilt joint does.</summary>
/// <param name="ClampForceN">Clamp force of each screw, newtons.</param>
/// <param name="HoldingNm">Moment that all faces hold together, newton metres.</param>
/// <param name="OffsetM">Distance of the balance point from the axis, metres.</param>
/// <param name="WorstMomentNm">Largest moment of the weight over all tilts, newton metres, 0 or more.</param>
/// <param name="WorstTiltRad">Tilt at which it occurs, radians; of two equal ones the nearer.</param>
/// <param name="SafetyFactor">Holding over worst moment; at most 1000 (nothing to hold).</param>
public readonly record struct TiltResult(
    double ClampForceN,
    double HoldingNm,
    double OffsetM,
    double WorstMomentNm,
    double WorstTiltRad,
    double SafetyFactor
);

/// <summary>Will the tilt joint hold? Closed form throughout; runs per draw.</summary>
/// <remarks>
/// Clamp force F = T/(K·d), holding moment by uniform wear, weight moment m·g·(forward·cos θ − up·sin θ) over all tilts.
/// <b>Validity</b>: faces dry and flat, screws tightened to the torque told. <b>Source</b>: <see cref="ScrewTightening"/>,
/// <see cref="RubbingFaces"/>. <b>Accuracy</b>: clamp ±30 %, faces ±7 %. <b>Checked by</b>: K.N11, <i>invariant</i> (no moment at balance).
/// </remarks>
public static class TiltJoint
{
    /// <summary>Standard acceleration of free fall, m/s² (CGPM 1901).</summary>
    public static double Gravity { get; } = 9.80665;

    /// <summary>Largest safety factor that is told; above it there is nothing to hold.</summary>
    public static double LargestSafetyFactor { get; } = 1000;

    /// <summary>What the joint does.</summary>
    public static TiltResult Result(TiltSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.InRange(spec.Screws, 1, 100);
        Guard.InRange(spec.FacesPerScrew, 1, 100);
        Guard.InRange(spec.MassKg, 0, 1e5);
        var clamp = spec.ClampFactor * ScrewTightening.ClampForceN(spec.TorqueNm, spec.NutFactor, spec.ScrewDiameterM);
        var holding =
            spec.FaceFactor
            * RubbingFaces.WornMomentNm(
                spec.Screws * spec.FacesPerScrew,
                Math.Max(spec.Friction, 0),
                clamp,
                spec.InnerM,
                spec.OuterM
            );
        var (worst, tilt) = Worst(spec);
        var offset = Math.Sqrt((spec.ForwardM * spec.ForwardM) + (spec.UpM * spec.UpM));
        var safety = worst * LargestSafetyFactor > holding ? holding / worst : LargestSafetyFactor;
        return new(clamp, holding, offset, worst, tilt, safety);
    }

    /// <summary>Moment of the weight about the axis at a tilt, newton metres; positive turns the front down.</summary>
    /// <param name="spec">The joint.</param>
    /// <param name="tiltRad">Tilt from the drawn position, radians.</param>
    public static double MomentNm(TiltSpec spec, double tiltRad)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var (sine, cosine) = Math.SinCos(Guard.Finite(tiltRad));
        return spec.MassKg * Gravity * ((spec.ForwardM * cosine) - (spec.UpM * sine));
    }

    private static (double Moment, double Tilt) Worst(TiltSpec spec)
    {
        var (least, most) = (Math.Max(spec.LeastTiltRad, -Math.PI), Math.Min(spec.MostTiltRad, Math.PI));
        // The balance point lies level with the axis, in front or behind.
        var front = -Math.Atan2(spec.UpM, spec.ForwardM);
        var back = front > 0 ? front - Math.PI : front + Math.PI;
        var (moment, tilt) = (-1.0, 0.0);
        ReadOnlySpan<double> candidates = [front, back, least, most];
        foreach (var candidate in candidates)
        {
            if (candidate < least - 1e-12 || candidate > most + 1e-12)
            {
                continue;
            }

            var here = Math.Abs(MomentNm(spec, candidate));
            if (here > moment + 1e-12 || (here > moment - 1e-12 && Math.Abs(candidate) < Math.Abs(tilt)))
            {
                (moment, tilt) = (here, candidate);
            }
        }

        return (Math.Max(moment, 0), tilt);
    }
}
