using System.Globalization;

namespace Lampwright.Files.Charts;

/// <summary>A colour with a meaning. On the page it is the style variable <c>--lw-NAME</c>, so that a dark page can give it another value.</summary>
/// <param name="Name">Name of the style variable without its prefix.</param>
/// <param name="Rgb">The colour on white paper, 0xRRGGBB.</param>
public sealed record Tint(string Name, int Rgb)
{
    /// <summary>The colour on paper as <c>#rrggbb</c>.</summary>
    public string Hex => string.Create(CultureInfo.InvariantCulture, $"#{Rgb:x6}");

    /// <summary>The colour for a style sheet: the variable, and the colour on paper where it is not set.</summary>
    public string Css => $"var(--lw-{Name}, {Hex})";
}

/// <summary>The few colours of packet and board, each for one meaning.</summary>
public static class Palette
{
    /// <summary>Ink of lines and text.</summary>
    public static Tint Ink { get; } = new("ink", 0x1B2430);

    /// <summary>What is read second: units, bands, notes.</summary>
    public static Tint Soft { get; } = new("soft", 0x5E6873);

    /// <summary>Rules of tables and grids.</summary>
    public static Tint Rule { get; } = new("rule", 0xC3C9CE);

    /// <summary>A ground just darker than paper.</summary>
    public static Tint Faint { get; } = new("faint", 0xF1F2F0);

    /// <summary>Paper.</summary>
    public static Tint Paper { get; } = new("paper", 0xFFFFFF);

    /// <summary>Light: lumens, lux.</summary>
    public static Tint Light { get; } = new("light", 0xB97A00);

    /// <summary>Heat: temperatures, watts of loss.</summary>
    public static Tint Heat { get; } = new("heat", 0xB23A1E);

    /// <summary>Current, air, what flows; also bends, which are not cut.</summary>
    public static Tint Flow { get; } = new("flow", 0x1F6594);

    /// <summary>What holds: limits that are kept, the moment a clamp can take.</summary>
    public static Tint Hold { get; } = new("hold", 0x2F6F4F);

    /// <summary>Do not build or power this; a limit.</summary>
    public static Tint Stop { get; } = new("stop", 0xA80F22);

    /// <summary>Likely to disappoint.</summary>
    public static Tint Warn { get; } = new("warn", 0x9A5B00);
}
