using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>What lies between two surfaces that pass heat.</summary>
/// <param name="Name">Name of the table.</param>
/// <param name="Between">Ids of the two things, for example <c>emitter.main</c> and <c>sink.main</c>.</param>
/// <param name="Thickness">Thickness, m.</param>
/// <param name="Conductivity">Conductivity, W/(m·K).</param>
public sealed record ThermalInterface(string Name, IReadOnlyList<string> Between, Value Thickness, Value Conductivity);

/// <summary>
/// A heat sink: of plate fins, of pins, of a stack of plates on heat pipes, a plain plate, or one of which only a resistance or trials are known.
/// </summary>
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

    /// <summary>Pins instead of fins.</summary>
    public SinkPins? Pins { get; init; }

    /// <summary>Heat pipes between the base and a stack of plates.</summary>
    public SinkPipes? Pipes { get; init; }

    /// <summary>The stack of plates on the heat pipes.</summary>
    public SinkStack? Stack { get; init; }

    /// <summary>What was measured on it in the shop.</summary>
    public IReadOnlyList<SinkTrial> Trials { get; init; } = [];

    /// <summary>True where its resistance is known from measuring.</summary>
    public bool IsMeasured => Measured is not null || Trials.Count > 0;

    /// <summary>Temperature of its base that is wanted on the hottest day, K; null asks for room below the emitter's limit.</summary>
    public Value? Wanted { get; init; }

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
/// <param name="Heat">Its heat, W, the same at every step; null for the light's own emitter, whose heat is computed.</param>
public sealed record EmitterPlace(string Emitter, Spot At, Value? Heat = null);

/// <summary>Pins on the base of a sink.</summary>
/// <param name="Across">Pins side by side across the air's way.</param>
/// <param name="Along">Rows one behind another.</param>
/// <param name="Diameter">Diameter, m.</param>
/// <param name="Height">Height above the base, m.</param>
/// <param name="Staggered">True where each row stands in the gaps of the one before.</param>
public sealed record SinkPins(int Across, int Along, Value Diameter, Value Height, bool Staggered);

/// <summary>Heat pipes of a sink.</summary>
/// <param name="Count">Legs of pipe that pass the stack.</param>
/// <param name="Diameter">Diameter, m.</param>
/// <param name="Resistance">From base to plates of one leg, K/W.</param>
/// <param name="Carries">Heat that one leg carries at most, W; null where the maker does not say.</param>
public sealed record SinkPipes(int Count, Value Diameter, Value Resistance, Value? Carries);

/// <summary>A stack of plates on heat pipes.</summary>
/// <param name="Count">Number of plates.</param>
/// <param name="Across">Plate across the air's way, m.</param>
/// <param name="Along">Plate along the air's way, m.</param>
/// <param name="Thickness">Thickness of a plate, m.</param>
/// <param name="Gap">Free gap between two plates, m.</param>
public sealed record SinkStack(int Count, Value Across, Value Along, Value Thickness, Value Gap);

/// <summary>A trial of a sink in the shop.</summary>
/// <param name="Power">Heat put in, W.</param>
/// <param name="Rise">Rise of its base over the room once nothing moved any more, K.</param>
/// <param name="FanStopped">True with the fan stopped or without one, false with the fan as set.</param>
public sealed record SinkTrial(Value Power, Value Rise, bool FanStopped);

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

    /// <summary>Least voltage at which it starts every time, V; null takes half of the rated one for advice.</summary>
    public Value? StartsAt { get; init; }

    /// <summary>What the air passes besides: guards, filters, turns, narrowings.</summary>
    public IReadOnlyList<FanLoss> Losses { get; init; } = [];

    /// <summary>Those of <see cref="Air"/> that stand side by side with their neighbours in the list.</summary>
    public IReadOnlyList<string> Beside { get; init; } = [];

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

/// <summary>Something in the air's way that is no hole of a part.</summary>
/// <param name="Kind"><c>guard</c>, <c>slots</c>, <c>grille</c>, <c>filter</c>, <c>turn</c>, <c>expansion</c>, <c>contraction</c>.</param>
/// <param name="Size">Section: of a guard, of a field of slots or a grille, of the duct that turns, of the narrower part; m.</param>
/// <param name="Open">Open area over section; for expansion and contraction the narrow section over the wide one.</param>
/// <param name="Slot">Width of a slot, m.</param>
/// <param name="Pressure">Pressure that a filter takes, Pa.</param>
/// <param name="Flow">At this flow, m³/s.</param>
/// <param name="Path">Its path in the design file.</param>
public sealed record FanLoss(
    string Kind,
    Size? Size,
    Value? Open,
    Value? Slot,
    Value? Pressure,
    Value? Flow,
    string Path
);

/// <summary>A thermal cut-out.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record CutOut(string Name)
{
    /// <summary>Where it sits: <c>sink base</c>, <c>emitter case</c>, <c>channel air</c>, <c>driver</c>, <c>compartment air</c> or a face or flange, <c>tray.face</c>.</summary>
    public string Place { get; init; } = "sink base";

    /// <summary>Temperature it opens at, K; its spread is its tolerance. Null advises one.</summary>
    public Value? Opens { get; init; }

    /// <summary>How far it lags behind its place, s; null takes a usual one.</summary>
    public Value? Lag { get; init; }

    /// <summary>What it opens: <c>driver input</c>, <c>emitter line</c> or <c>sense line</c>.</summary>
    public string In { get; init; } = "driver input";
}
