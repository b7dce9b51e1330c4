namespace Lampwright.Files.Packet;

/// <summary>A size of paper, upright unless it lies.</summary>
/// <param name="Name">Its name.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Height, mm.</param>
/// <remarks>Source: ISO 216 (A4, A3), ANSI/ASME Y14.1 (Letter, 8.5 in × 11 in).</remarks>
public sealed record Paper(string Name, double WidthMm, double HeightMm)
{
    /// <summary>A4.</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>A3.</summary>
    public static Paper A3 { get; } = new("A3", 297, 420);

    /// <summary>Letter.</summary>
    public static Paper Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>Longest piece cut from a roll, mm: what a PDF page may measure at most (200 in).</summary>
    public static double LongestRollMm { get; } = 5000;

    /// <summary>True when it lies on its side: its first printed axis then runs upwards.</summary>
    public bool Lies { get; init; }

    /// <summary>True for paper from a roll, whose length follows from what is printed.</summary>
    public bool IsRoll { get; init; }

    /// <summary>The paper of that name; A4 for any other name.</summary>
    public static Paper Of(string name) =>
        name.Equals("Letter", StringComparison.OrdinalIgnoreCase) ? Letter
        : name.Equals("A3", StringComparison.OrdinalIgnoreCase) ? A3
        : A4;

    /// <summary>A piece of a roll.</summary>
    /// <param name="rollMm">Width of the roll, mm.</param>
    /// <param name="lengthMm">Length of the piece, mm.</param>
    public static Paper Roll(double rollMm, double lengthMm) => new("roll", rollMm, lengthMm) { IsRoll = true };

    /// <summary>The same paper lying on its side.</summary>
    public Paper OnItsSide => this with { WidthMm = HeightMm, HeightMm = WidthMm, Lies = !Lies };
}
