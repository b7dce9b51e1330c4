using System.Reflection;

namespace Lampwright.Files.Packet.Fonts;

/// <summary>Weights of the one typeface of Lampwright, Inter.</summary>
public enum Weight
{
    /// <summary>For text and numbers.</summary>
    Regular,

    /// <summary>For what is read first.</summary>
    Medium,

    /// <summary>For titles.</summary>
    SemiBold,
}

/// <summary>The typeface of packet and board: Inter, carried inside the program, with tabular figures in the packet.</summary>
/// <remarks>Copyright The Inter Project Authors, SIL Open Font License 1.1; see NOTICE.</remarks>
public static class Typeface
{
    private static readonly Lazy<Face>[] faces =
    [
        .. Enum.GetValues<Weight>().Select(w => new Lazy<Face>(() => new Face(TabularFigures.Of(FileBytes(w))))),
    ];

    /// <summary>The font file of a weight as it comes, for a web page (<c>font/ttf</c>).</summary>
    public static byte[] FileBytes(Weight weight)
    {
        using var stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream($"fonts/Inter-{weight}.ttf")
            ?? throw new InvalidOperationException($"The program carries no font Inter-{weight}.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>The font file with tabular figures.</summary>
    internal static byte[] TabularBytes(Weight weight) => faces[(int)weight].Value.File.Bytes;

    /// <summary>Whether the typeface has a glyph for every character of a text.</summary>
    public static bool Has(string text) => text.All(c => faces[0].Value.File.Glyphs.ContainsKey(c));

    /// <summary>Width of a text with tabular figures, in the unit of <paramref name="size"/>; without kerning, as the PDF sets it.</summary>
    /// <param name="text">The text, one line.</param>
    /// <param name="size">Height of the em.</param>
    /// <param name="weight">Weight.</param>
    public static double WidthOf(ReadOnlySpan<char> text, double size, Weight weight = Weight.Regular) =>
        faces[(int)weight].Value.WidthOf(text) * size;

    private sealed class Face(byte[] bytes)
    {
        public FontFile File { get; } = new(bytes);

        public double WidthOf(ReadOnlySpan<char> text)
        {
            var sum = 0;
            foreach (var c in text)
            {
                sum += File.AdvanceOf(File.Glyphs.GetValueOrDefault(c));
            }

            return (double)sum / File.UnitsPerEm;
        }
    }
}
