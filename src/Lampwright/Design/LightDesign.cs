namespace Lampwright.Design;

/// <summary>A whole light as its maker gives it: everything the design file says, nothing computed.</summary>
/// <remarks>
/// Numbers are <see cref="Quantities.Value"/>s in SI units. Named tables keep the order of the file. What the file does not
/// say is absent (null or empty) where no documented default exists.
/// </remarks>
public sealed record LightDesign
{
    /// <summary>Title of the light.</summary>
    public string Title { get; init; } = "";

    /// <summary>Units the maker likes to read.</summary>
    public Show Show { get; init; } = new();

    /// <summary>Where the light works: air and supply.</summary>
    public Place Place { get; init; } = new();

    /// <summary>Emitters, <c>[emitter.NAME]</c>.</summary>
    public IReadOnlyList<Emitter> Emitters { get; init; } = [];

    /// <summary>Constant-current drivers, <c>[driver.NAME]</c>.</summary>
    public IReadOnlyList<Driver> Drivers { get; init; } = [];

    /// <summary>How the light is dimmed, <c>[steps]</c>.</summary>
    public Steps? Steps { get; init; }

    /// <summary>Thermal interfaces, <c>[interface.NAME]</c>.</summary>
    public IReadOnlyList<ThermalInterface> Interfaces { get; init; } = [];

    /// <summary>Heat sinks, <c>[sink.NAME]</c>.</summary>
    public IReadOnlyList<Sink> Sinks { get; init; } = [];

    /// <summary>Fans, <c>[fan.NAME]</c>.</summary>
    public IReadOnlyList<Fan> Fans { get; init; } = [];

    /// <summary>Thermal cut-outs, <c>[cutout.NAME]</c>.</summary>
    public IReadOnlyList<CutOut> CutOuts { get; init; } = [];

    /// <summary>Reflectors, <c>[reflector.NAME]</c>.</summary>
    public IReadOnlyList<Reflector> Reflectors { get; init; } = [];

    /// <summary>Diffusers, <c>[diffuser.NAME]</c>.</summary>
    public IReadOnlyList<Diffuser> Diffusers { get; init; } = [];

    /// <summary>What is lit and how it is photographed, <c>[subject]</c>.</summary>
    public Subject? Subject { get; init; }

    /// <summary>Sheet stock, <c>[sheet.NAME]</c>.</summary>
    public IReadOnlyList<Sheet> Sheets { get; init; } = [];

    /// <summary>The brake that bends it, <c>[brake]</c>.</summary>
    public Brake Brake { get; init; } = new();

    /// <summary>Folded parts, <c>[part.NAME]</c>.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>Bought things that are not sinks, fans, drivers or emitters, <c>[item.NAME]</c>.</summary>
    public IReadOnlyList<Item> Items { get; init; } = [];

    /// <summary>What is fastened to what, <c>[joint.NAME]</c>.</summary>
    public IReadOnlyList<Joint> Joints { get; init; } = [];

    /// <summary>From which part the others are placed, <c>[assembly]</c>.</summary>
    public Assembly? Assembly { get; init; }

    /// <summary>Tilt joints, <c>[tilt.NAME]</c>.</summary>
    public IReadOnlyList<Tilt> Tilts { get; init; } = [];

    /// <summary>Arms, <c>[arm.NAME]</c>.</summary>
    public IReadOnlyList<Arm> Arms { get; init; } = [];

    /// <summary>Stands, <c>[stand.NAME]</c>.</summary>
    public IReadOnlyList<Stand> Stands { get; init; } = [];

    /// <summary>Rules of thumb that the maker overrides, <c>[rules]</c>.</summary>
    public IReadOnlyList<RuleOverride> Rules { get; init; } = [];

    /// <summary>Where the readings stand, <c>[readings]</c>.</summary>
    public ReadingsSource? Readings { get; init; }
}
