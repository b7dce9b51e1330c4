namespace Lampwright.Evaluation.Answers;

/// <summary>Answer of the station balance.</summary>
/// <param name="Tilts">Tilt joints.</param>
/// <param name="Arms">Arms.</param>
/// <param name="Stands">Stands.</param>
public sealed record BalanceAnswer(
    IReadOnlyList<TiltAnswer> Tilts,
    IReadOnlyList<ArmAnswer> Arms,
    IReadOnlyList<StandAnswer> Stands
);

/// <summary>A tilt joint.</summary>
public sealed record TiltAnswer
{
    /// <summary>Name of the joint.</summary>
    public required string Name { get; init; }

    /// <summary>Mass that tilts, kg.</summary>
    public required Predicted TiltingMassKg { get; init; }

    /// <summary>Distance of its balance point from the axis, mm.</summary>
    public required Predicted OffsetMm { get; init; }

    /// <summary>Largest moment over all angles, N·m.</summary>
    public required Predicted WorstMomentNm { get; init; }

    /// <summary>Tilt at which it occurs, degrees from the drawn position.</summary>
    public required Predicted WorstAngleDeg { get; init; }

    /// <summary>Moment that the clamp screws hold together, N·m.</summary>
    public required Predicted HoldingNm { get; init; }

    /// <summary>Holding over worst moment.</summary>
    public required Predicted SafetyFactor { get; init; }

    /// <summary>Moment at tilts of -180° to 180° in steps of 10°, nominal, N·m; for the drawing.</summary>
    public required IReadOnlyList<double> MomentPicture { get; init; }
}

/// <summary>An arm.</summary>
/// <param name="Name">Name of the arm.</param>
/// <param name="DroopMm">How far its end goes down under the light, mm.</param>
/// <param name="StressMPa">Largest bending stress, MPa.</param>
public sealed record ArmAnswer(string Name, Predicted DroopMm, Predicted StressMPa);

/// <summary>A stand.</summary>
/// <param name="Name">Name of the stand.</param>
/// <param name="TipsAtDeg">Slope at which it tips, degrees.</param>
/// <param name="FootNeededMm">Distance from column to tipping edge that stands on a slope of 6°, mm.</param>
public sealed record StandAnswer(string Name, Predicted TipsAtDeg, Predicted FootNeededMm);
