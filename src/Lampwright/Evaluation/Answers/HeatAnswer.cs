namespace Lampwright.Evaluation.Answers;

/// <summary>Answer of the station heat: three scenes at every switch position.</summary>
public sealed record HeatAnswer
{
    private readonly BoxAnswer? _box;

    /// <summary>Scenes <c>normal</c>, <c>hot</c>, <c>fan stopped</c>, in this order.</summary>
    public required IReadOnlyList<HeatScene> Scenes { get; init; }

    /// <summary>Drops of temperature from junction to room at the brightest position in the scene normal, junction first.</summary>
    public required IReadOnlyList<HeatStep> Staircase { get; init; }

    /// <summary>The fan's own curve at the voltage it runs at and the curve of what it blows through, for the drawing; empty without a fan.</summary>
    public required FanPicture? Fan { get; init; }

    /// <summary>What the fan's air passes and what would be better; null without a fan or a computed sink. Computed when first read.</summary>
    public Lazy<AirAnswer?> Air { get; init; } = new((AirAnswer?)null);

    /// <summary>What limits, and what one change helps most; null where no limit is known. Computed when first read.</summary>
    public Lazy<HeatAdvice?> Advice { get; init; } = new((HeatAdvice?)null);

    /// <summary>The light cut open, for a drawing coloured by temperature; null where it has no sink of known sizes. Computed when first read.</summary>
    public Lazy<SectionAnswer?> Section { get; init; } = new((SectionAnswer?)null);

    /// <summary>How the sink's resistance was found: <c>computed</c> or <c>measured</c>.</summary>
    public required string SinkFrom { get; init; }

    /// <summary>The box as a network, over time; computed when it is first asked for. Null where the light says too little for it.</summary>
    public BoxAnswer? Box
    {
        get => _box ?? BoxWhenAsked?.Value;
        init => _box = value;
    }

    /// <summary>How <see cref="Box"/> is found.</summary>
    internal Lazy<BoxAnswer?>? BoxWhenAsked { get; init; }

    /// <summary>Whether a fan runs in any scene; without one the scene of its stop is the scene normal over again.</summary>
    public bool HasFan => Scenes.Any(s => s.FanRuns);

    /// <summary>The scenes that differ: all with a fan, without one those before its stop.</summary>
    public IEnumerable<HeatScene> TellingScenes => HasFan ? Scenes : Scenes.Take(2);
}

/// <summary>Temperatures in one scene.</summary>
/// <param name="Name"><c>normal</c>, <c>hot</c> or <c>fan stopped</c>.</param>
/// <param name="AmbientC">Air around the light, °C.</param>
/// <param name="FanRuns">Whether the fan runs.</param>
/// <param name="FlowM3PerH">Flow of the fan, m³/h.</param>
/// <param name="PressurePa">Pressure of the fan at that flow, Pa.</param>
/// <param name="SinkKPerW">From the base of the sink to the air, at the brightest position, K/W.</param>
/// <param name="Points">One for each switch position, in the order of the combinations.</param>
public sealed record HeatScene(
    string Name,
    Predicted AmbientC,
    bool FanRuns,
    Predicted FlowM3PerH,
    Predicted PressurePa,
    Predicted SinkKPerW,
    IReadOnlyList<HeatPoint> Points
);

/// <summary>Temperatures at one switch position.</summary>
public sealed record HeatPoint
{
    /// <summary>Switch position.</summary>
    public required string Switches { get; init; }

    /// <summary>Heat that leaves the emitter through its back, W.</summary>
    public required Predicted HeatW { get; init; }

    /// <summary>Junction, °C.</summary>
    public required Predicted JunctionC { get; init; }

    /// <summary>Case of the emitter, °C.</summary>
    public required Predicted CaseC { get; init; }

    /// <summary>Base of the sink, mean, °C.</summary>
    public required Predicted SinkC { get; init; }

    /// <summary>Case of the driver, °C.</summary>
    public required Predicted DriverC { get; init; }

    /// <summary>Air in the driver's compartment, where the chain's resistors sit, °C.</summary>
    public required Predicted CompartmentC { get; init; }

    /// <summary>Skin of the front, warmed by what reflector and diffuser absorb, °C.</summary>
    public required Predicted FrontC { get; init; }
}

/// <summary>One drop of temperature on the way from junction to room.</summary>
/// <param name="From">Where it starts, for example <c>junction</c>.</param>
/// <param name="To">Where it ends, for example <c>case</c>.</param>
/// <param name="DropK">The drop, K.</param>
/// <param name="Method">How it was found.</param>
public sealed record HeatStep(string From, string To, Predicted DropK, string Method);

/// <summary>Fan and system, for a drawing; nominal.</summary>
/// <param name="FlowM3PerH">Flows, m³/h.</param>
/// <param name="FanPa">Pressure the fan gives at each, Pa.</param>
/// <param name="SystemPa">Pressure the air path takes at each, Pa.</param>
public sealed record FanPicture(
    IReadOnlyList<double> FlowM3PerH,
    IReadOnlyList<double> FanPa,
    IReadOnlyList<double> SystemPa
);
