using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>A light-emitting module, from its data sheet.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Emitter(string Name)
{
    /// <summary>Forward voltage and flux at currents, at the reference junction temperature.</summary>
    public IReadOnlyList<EmitterPoint> Points { get; init; } = [];

    /// <summary>All that is known when there are no points: rated current, voltage range and flux.</summary>
    public EmitterRating? Rated { get; init; }

    /// <summary>Junction temperature of the points, K.</summary>
    public Value Reference { get; init; } = new(298.15, 0, Origin.Default, "reference");

    /// <summary>Slope of the whole module's voltage over temperature, V/K, negative; null takes a default share of the voltage.</summary>
    public Value? VoltageSlope { get; init; }

    /// <summary>Flux at a hot junction as a share of the flux at the reference.</summary>
    public FluxHot? FluxHot { get; init; }

    /// <summary>Most current, A.</summary>
    public Value? CurrentMax { get; init; }

    /// <summary>Hottest junction allowed, K.</summary>
    public Value? JunctionMax { get; init; }

    /// <summary>Resistance from junction to case, K/W.</summary>
    public Value? JunctionToCase { get; init; }

    /// <summary>True when the resistance counts on electrical power, false when on heat alone.</summary>
    public bool JunctionToCaseIsElectrical { get; init; }

    /// <summary>The back that touches the sink: width and height, m.</summary>
    public Size? Body { get; init; }

    /// <summary>Light-emitting surface: width and height, m; both the diameter when round.</summary>
    public Size? Face { get; init; }

    /// <summary>True when the light-emitting surface is a disc.</summary>
    public bool FaceIsRound { get; init; }

    /// <summary>Full width of the beam at half of the peak, rad.</summary>
    public Value Beam { get; init; } = new(2.0943951023931953, 0, Origin.Default, "beam");

    /// <summary>Correlated colour temperature, K; null when unknown.</summary>
    public Value? Cct { get; init; }

    /// <summary>Share of its power that leaves as light; null finds it from flux and efficacy of the radiation.</summary>
    public Value? LightShare { get; init; }

    /// <summary>Luminous efficacy of the radiation, lm/W: turns flux into radiant watts.</summary>
    public Value RadiationEfficacy { get; init; } = new(320, 25, Origin.Default, "radiation_efficacy");

    /// <summary>The maker's tests of how the flux holds over the years; empty where none are given.</summary>
    public IReadOnlyList<MaintenanceReadings> Maintenance { get; init; } = [];

    /// <summary>Mass, kg.</summary>
    public Value? Mass { get; init; }

    /// <summary>Hole patterns, from the corner of its body.</summary>
    public IReadOnlyList<HolePattern> Holes { get; init; } = [];
}

/// <summary>One point of an emitter's curves.</summary>
/// <param name="Current">Current, A.</param>
/// <param name="Voltage">Forward voltage, V.</param>
/// <param name="Flux">Luminous flux, lm.</param>
public sealed record EmitterPoint(Value Current, Value Voltage, Value Flux);

/// <summary>A maker's test of lumen maintenance.</summary>
/// <param name="Case">Case temperature, K.</param>
/// <param name="Samples">Count of units.</param>
/// <param name="Hours">Hours of the readings, s.</param>
/// <param name="Shares">Flux of each as a share of that at the start.</param>
public sealed record MaintenanceReadings(
    Value Case,
    int Samples,
    IReadOnlyList<Value> Hours,
    IReadOnlyList<Value> Shares
);

/// <summary>What a bare rating tells of an emitter.</summary>
/// <param name="Current">Rated current, A.</param>
/// <param name="VoltageLeast">Least forward voltage at it, V.</param>
/// <param name="VoltageMost">Most forward voltage at it, V.</param>
/// <param name="Flux">Flux at it, lm.</param>
public sealed record EmitterRating(Value Current, Value VoltageLeast, Value VoltageMost, Value Flux);

/// <summary>Flux of a hot emitter as a share of its flux at the reference temperature.</summary>
/// <param name="At">Junction temperature, K.</param>
/// <param name="Factor">Share.</param>
public sealed record FluxHot(Value At, Value Factor);

/// <summary>Two lengths of a rectangle, m.</summary>
/// <param name="Width">Along x.</param>
/// <param name="Height">Along y.</param>
public sealed record Size(Value Width, Value Height);

/// <summary>Outer sizes of a bought thing, m; x and y lie in the plane of its back, z stands out from it.</summary>
/// <param name="Width">Along x.</param>
/// <param name="Height">Along y.</param>
/// <param name="Depth">Along z.</param>
public sealed record Box(Value Width, Value Height, Value Depth);

/// <summary>A place on a surface, m; written <c>["12 mm", "centre"]</c>.</summary>
/// <param name="X">Along x; null is the middle.</param>
/// <param name="Y">Along y; null is the middle.</param>
public sealed record Spot(Value? X, Value? Y);
