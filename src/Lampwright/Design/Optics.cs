using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>A reflector: a folded funnel or a shape of its own.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Reflector(string Name)
{
    /// <summary>The folded part that is the reflector; null when the sizes are given here.</summary>
    public string? Part { get; init; }

    /// <summary>Small opening, m.</summary>
    public Size? Small { get; init; }

    /// <summary>Large opening, m.</summary>
    public Size? Large { get; init; }

    /// <summary>Distance between the openings, m.</summary>
    public Value? Depth { get; init; }

    /// <summary>Share of light that a wall throws back.</summary>
    public Value Reflectance { get; init; } = new(0.6, 0.06, Origin.Default, "reflectance");

    /// <summary>Share of that which is thrown back as by a mirror.</summary>
    public Value Specular { get; init; } = new(0.1, 0.1, Origin.Default, "specular");
}

/// <summary>A diffuser in front of the light.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Diffuser(string Name)
{
    /// <summary>Width and height, m.</summary>
    public Size? Size { get; init; }

    /// <summary>Thickness, m.</summary>
    public Value? Thickness { get; init; }

    /// <summary>Share of light that passes.</summary>
    public Value Transmittance { get; init; } = new(0.6, 0.08, Origin.Default, "transmittance");

    /// <summary>Share of light that is thrown back.</summary>
    public Value Reflectance { get; init; } = new(0.3, 0.05, Origin.Default, "reflectance");

    /// <summary>Hottest it may get, K.</summary>
    public Value? TemperatureMax { get; init; }

    /// <summary>Mass, kg.</summary>
    public Value? Mass { get; init; }

    /// <summary>Hole patterns.</summary>
    public IReadOnlyList<HolePattern> Holes { get; init; } = [];
}

/// <summary>What is lit and how it is photographed.</summary>
public sealed record Subject
{
    /// <summary>Distance from the last surface of the light, m.</summary>
    public Value Distance { get; init; } = new(1, 0, Origin.Default, "subject.distance");

    /// <summary>Width and height, m.</summary>
    public Size? Size { get; init; }

    /// <summary>Sensitivity of the camera, ISO.</summary>
    public double Iso { get; init; } = 100;

    /// <summary>Exposure time, s.</summary>
    public Value Shutter { get; init; } = new(1.0 / 60, 0, Origin.Default, "subject.shutter");
}
