using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>What lies between two surfaces that pass heat.</summary>
/// <param name="Name">Name of the table.</param>
/// <param name="Between">Ids of the two things, for example <c>emitter.main</c> and <c>sink.main</c>.</param>
/// <param name="Thickness">Thickness, m.</param>
/// <param name="Conductivity">Conductivity, W/(m·K).</param>
public sealed record ThermalInterface(string Name, IReadOnlyList<string> Between, Value Thickness, Value Conductivity);

/// <summary>A heat sink with plate fins, or one of which only a measured resistance is known.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Sink(string Name)
{
    /// <summary>Material, by its name in the table of materials.</summary>
    public string Material { get; init; } = "aluminium 6063";

    /// <summary>Base across the fins, m.</summary>
    public Value? Across { get; init; }

    /// <summary>Base along the fins, which is the way of the air, m.</summary>
    public Value? Along { get; init; }

    /// <summary>Thickness of the base, m.</summary>
    public Value? BaseThickness { get; init; }

    /// <summary>Count of fins.</summary>
    public int FinCount { get; init; }

    /// <summary>Height of the fins above the base, m.</summary>
    public Value? FinHeight { get; init; }

    /// <summary>Thickness of a fin, m.</summary>
    public Value? FinThickness { get; init; }

    /// <summary>Emissivity of its surface.</summary>
    public Value Emissivity { get; init; } = new(0.08, 0.05, Origin.Default, "emissivity");

    /// <summary>Emitters on its base: emitter name and centre from the corner of the base, m.</summary>
    public IReadOnlyList<EmitterPlace> Emitters { get; init; } = [];

    /// <summary>Measured resistance from base to air with the fan as set, K/W; replaces the computed one.</summary>
    public Value? Measured { get; init; }

    /// <summary>Mass, kg; null computes it from the sizes.</summary>
    public Value? Mass { get; init; }

    /// <summary>Hole patterns; x across, y along, on the base's outside (<c>back</c>, z = 0; fins stand along +z).</summary>
    public IReadOnlyList<HolePattern> Holes { get; init; } = [];
}

/// <summary>An emitter on a sink.</summary>
/// <param name="Emitter">Name of the emitter.</param>
/// <param name="At">Centre from the corner of the base: across, along, m.</param>
public sealed record EmitterPlace(string Emitter, Spot At);

/// <summary>A fan.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Fan(string Name)
{
    /// <summary>Outer sizes.</summary>
    public Box? Box { get; init; }

    /// <summary>Mass, kg.</summary>
    public Value? Mass { get; init; }

    /// <summary>Flow and pressure points at rated voltage and standard air, from still to free flow.</summary>
    public IReadOnlyList<FanPoint> Curve { get; init; } = [];

    /// <summary>Rated voltage, V.</summary>
    public Value? Rated { get; init; }

    /// <summary>Voltage it runs at, V.</summary>
    public Value? RunAt { get; init; }

    /// <summary>Current at rated voltage, A.</summary>
    public Value? Current { get; init; }

    /// <summary>What the air passes, in order: hole ids and sinks.</summary>
    public IReadOnlyList<string> Air { get; init; } = [];

    /// <summary>Hole patterns; through the frame.</summary>
    public IReadOnlyList<HolePattern> Holes { get; init; } = [];
}

/// <summary>A point of a fan curve.</summary>
/// <param name="Flow">Flow, m³/s.</param>
/// <param name="Pressure">Static pressure, Pa.</param>
public sealed record FanPoint(Value Flow, Value Pressure);
