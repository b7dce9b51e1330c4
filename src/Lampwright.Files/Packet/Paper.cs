namespace Lampwright.Files.Packet;

/// <summary>A size of paper, upright.</summary>
/// <param name="Name">Its name.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Height, mm.</param>
/// <remarks>Source: ISO 216 (A4), ANSI/ASME Y14.1 (Letter, 8.5 in × 11 in).</remarks>
public sealed record Paper(string Name, double WidthMm, double HeightMm)
{
    /// <summary>A4.</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>Letter.</summary>
    public static Paper Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>The paper of that name; A4 for any other name.</summary>
    public static Paper Of(string name) => name.Equals("Letter", StringComparison.OrdinalIgnoreCase) ? Letter : A4;

    /// <summary>The same paper lying on its side.</summary>
    public Paper OnItsSide => new(Name, HeightMm, WidthMm);
}
