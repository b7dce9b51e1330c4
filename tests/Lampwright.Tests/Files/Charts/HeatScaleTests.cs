using Lampwright.Files.Charts;

namespace Lampwright.Tests.Files.Charts;

/// <summary>The scale of colours, judged by another model of sight than it is made with: CIE lightness, and the eyes of the colour-blind.</summary>
public class HeatScaleTests
{
    private static readonly double[][] Steps =
    [
        .. Enumerable.Range(0, 21).Select(i => Linear(HeatScale.Colour(i / 20.0))),
    ];

    [Fact]
    public void What_is_hotter_is_lighter_by_even_steps()
    {
        var light = Steps.Select(Lightness).ToList();
        var rises = light.Zip(light.Skip(1), (a, b) => b - a).ToList();

        // A step of one in CIE lightness is just seen; here a twentieth of the scale is at least two.
        Assert.All(rises, r => Assert.InRange(r, 2, 6));
        Assert.True(light[^1] - light[0] > 65);
    }

    [Theory]
    [InlineData("protan", 0.11238, 0.88762, 0.0, 0.11238, 0.88762, 0.0, 0.00401, -0.00401, 1.0)]
    [InlineData("deutan", 0.29275, 0.70725, 0.0, 0.29275, 0.70725, 0.0, -0.02234, 0.02234, 1.0)]
    public void Whoever_does_not_tell_red_from_green_sees_the_same_order(
        string who,
        double a,
        double b,
        double c,
        double d,
        double e,
        double f,
        double g,
        double h,
        double i
    )
    {
        // Viénot, Brettel, Mollon, Digital video colourmaps for checking the legibility of displays by dichromats, 1999; numbers from memory.
        var light = Steps
            .Select(s =>
                Lightness([
                    (a * s[0]) + (b * s[1]) + (c * s[2]),
                    (d * s[0]) + (e * s[1]) + (f * s[2]),
                    (g * s[0]) + (h * s[1]) + (i * s[2]),
                ])
            )
            .ToList();
        Assert.All(light.Zip(light.Skip(1), (p, q) => q - p), r => Assert.True(r > 1.5, who));
    }

    [Fact]
    public void Beyond_the_ends_the_end_colours_stand()
    {
        var scale = new HeatScale(20, 80);
        Assert.Equal(scale.At(20), scale.At(-40));
        Assert.Equal(scale.At(80), scale.At(300));
        Assert.NotEqual(scale.At(50), scale.At(52));
    }

    private static double[] Linear(int rgb) =>
        [
            .. new[] { 16, 8, 0 }
                .Select(s => ((rgb >> s) & 255) / 255.0)
                .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)),
        ];

    // CIE 15: L* = 116·∛Y − 16 for Y above 0.008856.
    private static double Lightness(double[] linear)
    {
        var y = (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
        return y > 0.008856 ? (116 * Math.Cbrt(y)) - 16 : 903.3 * y;
    }
}
