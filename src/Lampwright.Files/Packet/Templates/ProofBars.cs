using System.Globalization;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Templates;

/// <summary>The bars that show whether a printer printed at full size: one along the bottom, one up the left side, a mark every 10 mm.</summary>
internal static class ProofBars
{
    private static readonly Stroke thin = new(Palette.Ink, 0.18);
    private static readonly double[] lengths = [250, 200, 150, 100];

    // From the edges of the paper: 7 mm that printers leave white on both ends, 11 mm for the other bar.
    private static readonly double round = 25;

    /// <summary>Length of the bar along a side of the paper: the longest of 250, 200, 150, 100 mm that it has room for.</summary>
    public static double LengthMm(double sideMm) => lengths.FirstOrDefault(l => l <= sideMm - round, lengths[^1]);

    /// <summary>Both bars of a page.</summary>
    public static void Draw(PaperInk ink, Paper paper, double edge)
    {
        var (level, upright) = (LengthMm(paper.WidthMm), LengthMm(paper.HeightMm));
        var (x, y) = (edge + 11, paper.HeightMm - edge - 5);
        ink.Line(x, y, x + level, y, thin);
        for (var i = 0; i <= level / 10; i++)
        {
            var half = Half(i, level);
            ink.Line(x + (10 * i), y - half, x + (10 * i), y + half, thin);
        }

        var style = new TextStyle(2.6, Palette.Ink, Anchor.Middle, Weight.Medium);
        ink.Text(Words(level), x + 25, y - 1.6, style);
        var (u, v) = (edge + 4.5, paper.HeightMm - edge - 11);
        ink.Line(u, v, u, v - upright, thin);
        for (var i = 0; i <= upright / 10; i++)
        {
            var half = Half(i, upright);
            ink.Line(u - half, v - (10 * i), u + half, v - (10 * i), thin);
        }

        ink.Text(Words(upright), u - 1.6, v - 25, style with { TurnDeg = 90 });
    }

    /// <summary>The length as it stands beside a bar.</summary>
    public static string Words(double lengthMm) => string.Create(CultureInfo.InvariantCulture, $"{lengthMm:0.0} mm");

    private static double Half(int mark, double length) =>
        mark == 0 || 10 * mark == length ? 3
        : mark % 10 == 0 ? 2
        : mark % 5 == 0 ? 1.4
        : 0.9;
}
