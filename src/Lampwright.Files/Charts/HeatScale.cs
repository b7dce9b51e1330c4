using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Charts;

/// <summary>Colours for temperatures: from deep blue over rose to pale yellow, evenly in lightness, so that they can be told apart without seeing hues.</summary>
/// <remarks>
/// A path through Oklab (Ottosson, A perceptual color space for image processing, 2020), walked by its length: equal differences of temperature are equal steps of colour.
/// What is hotter is lighter, on white paper as on dark. Checked by: CIE lightness and the colour-blind, in the tests.
/// </remarks>
/// <param name="LowC">Temperature of the first colour, °C.</param>
/// <param name="HighC">Temperature of the last one, °C, above the first; what is hotter has the last one too.</param>
public sealed record HeatScale(double LowC, double HighC)
{
    private static readonly int Samples = 96;
    private static readonly double[] Lengths = Walked();

    /// <summary>The scale of one scene: from its room to its hottest place, in whole tens.</summary>
    /// <param name="scene">The scene.</param>
    public static HeatScale Of(BoxScene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        return Over([scene]);
    }

    /// <summary>One scale for all scenes of a light, so that their colours can be compared.</summary>
    /// <param name="box">The light.</param>
    public static HeatScale Of(BoxAnswer box)
    {
        ArgumentNullException.ThrowIfNull(box);
        return Over(box.Scenes);
    }

    private static HeatScale Over(IReadOnlyList<BoxScene> scenes)
    {
        var low = Math.Floor(scenes.Min(s => s.AmbientC) / 10) * 10;
        var high = Math.Ceiling(scenes.SelectMany(s => s.Nodes).Max(n => n.TemperatureC.Value) / 10) * 10;
        return new(low, Math.Max(high, low + 10));
    }

    /// <summary>The colour of a temperature, °C.</summary>
    public Tint At(double celsius)
    {
        var rgb = Colour(Math.Clamp((celsius - LowC) / (HighC - LowC), 0, 1));
        return new("none", rgb);
    }

    /// <summary>The colour at a share of the scale, 0 to 1, as 0xRRGGBB.</summary>
    public static int Colour(double share)
    {
        var length = Math.Clamp(share, 0, 1) * Lengths[^1];
        var i = Math.Clamp(Array.FindIndex(Lengths, l => l >= length), 1, Samples);
        var between = (length - Lengths[i - 1]) / Math.Max(Lengths[i] - Lengths[i - 1], 1e-12);
        return Rgb(Path((i - 1 + between) / Samples));
    }

    private static (double L, double A, double B) Path(double t) =>
        (0.29 + (0.62 * t), 0.125 * Math.Sin(Math.PI * t), -0.105 + (0.215 * t));

    private static double[] Walked()
    {
        var lengths = new double[Samples + 1];
        for (var i = 1; i <= Samples; i++)
        {
            var (p, q) = (Path((i - 1.0) / Samples), Path((double)i / Samples));
            lengths[i] =
                lengths[i - 1] + Math.Sqrt(Math.Pow(q.L - p.L, 2) + Math.Pow(q.A - p.A, 2) + Math.Pow(q.B - p.B, 2));
        }

        return lengths;
    }

    private static int Rgb((double L, double A, double B) lab)
    {
        var l = Math.Pow(lab.L + (0.3963377774 * lab.A) + (0.2158037573 * lab.B), 3);
        var m = Math.Pow(lab.L - (0.1055613458 * lab.A) - (0.0638541728 * lab.B), 3);
        var s = Math.Pow(lab.L - (0.0894841775 * lab.A) - (1.2914855480 * lab.B), 3);
        return (Byte((4.0767416621 * l) - (3.3077115913 * m) + (0.2309699292 * s)) << 16)
            | (Byte((-1.2684380046 * l) + (2.6097574011 * m) - (0.3413193965 * s)) << 8)
            | Byte((-0.0041960863 * l) - (0.7034186147 * m) + (1.7076147010 * s));
    }

    // IEC 61966-2-1.
    private static int Byte(double linear)
    {
        var c = Math.Clamp(linear, 0, 1);
        return (int)Math.Round(255 * (c <= 0.0031308 ? 12.92 * c : (1.055 * Math.Pow(c, 1 / 2.4)) - 0.055));
    }
}
