namespace Lampwright.Heat;

/// <summary>A sink at one heat, in one scene, solved exactly. Rises are over the ambient air.</summary>
public sealed record SinkResult
{
    /// <summary>Heat that enters, W.</summary>
    public required double HeatW { get; init; }

    /// <summary>Mean rise of the face of the base that the fins stand on, K.</summary>
    public required double BaseRiseK { get; init; }

    /// <summary>Mean rise of the roots of the fins, K: that of the base but for the drop along heat pipes.</summary>
    public required double RootRiseK { get; init; }

    /// <summary>Mean rise under each footprint, K, in the order of the spec.</summary>
    public required IReadOnlyList<double> SourceRiseK { get; init; }

    /// <summary>Rise in the middle of each footprint, K.</summary>
    public required IReadOnlyList<double> SourcePeakRiseK { get; init; }

    /// <summary>Heat given to air, W.</summary>
    public required double ConvectedW { get; init; }

    /// <summary>Heat radiated, W.</summary>
    public required double RadiatedW { get; init; }

    /// <summary>Flow of the fan, m³/s of ambient air; 0 with the fan stopped.</summary>
    public required double FlowM3PerS { get; init; }

    /// <summary>Velocity of the air in the channels, m/s.</summary>
    public required double ChannelVelocityMPerS { get; init; }

    /// <summary>Static pressure the fan makes, Pa.</summary>
    public required double PressurePa { get; init; }

    /// <summary>Of that, lost in the channels, Pa.</summary>
    public required double ChannelLossPa { get; init; }

    /// <summary>What the air loses where, the costliest first; an empty path is the sink's own channels. Empty with the fan stopped.</summary>
    public required IReadOnlyList<LossAtPoint> Losses { get; init; }

    /// <summary>Mean rise of the air that leaves the fan's path, K; 0 with the fan stopped.</summary>
    public required double AirRiseK { get; init; }

    /// <summary>Film coefficient of the forced air in the channels, W/(m²·K).</summary>
    public required double ForcedFilmWPerM2K { get; init; }

    /// <summary>Efficiency of the fins under that film, or under the natural one with the fan stopped.</summary>
    public required double FinEfficiency { get; init; }

    /// <summary>Channel Reynolds number Re*; 0 with the fan stopped.</summary>
    public required double ReStar { get; init; }

    /// <summary>Reynolds number on the hydraulic diameter; 0 with the fan stopped.</summary>
    public required double ReDiameter { get; init; }

    /// <summary>Elenbaas number of the channels.</summary>
    public required double Elenbaas { get; init; }

    /// <summary>Angle between the channels and the upright, rad.</summary>
    public double ChannelTiltRad { get; init; }

    /// <summary>True where the fan works where its curve rises.</summary>
    public required bool InStall { get; init; }

    /// <summary>Names of the method errors whose method is used outside its range.</summary>
    public required IReadOnlyList<string> OutsideRange { get; init; }

    /// <summary>The fan's curve as it runs, for the picture; empty with the fan stopped.</summary>
    public required IReadOnlyList<FanPoint> FanLine { get; init; }

    /// <summary>What the air path costs over the same flows; empty with the fan stopped.</summary>
    public required IReadOnlyList<FanPoint> PathLine { get; init; }

    /// <summary>Heat in less heat out over heat in.</summary>
    public required double BalanceError { get; init; }

    /// <summary>Evaluations of the search for the temperature.</summary>
    public required int Iterations { get; init; }

    /// <summary>Resistance of the base's mean rise, K/W.</summary>
    public double ResistanceKPerW => HeatW > 0 ? BaseRiseK / HeatW : 0;
}
