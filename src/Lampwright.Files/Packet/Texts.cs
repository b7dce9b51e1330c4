using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet;

/// <summary>Breaks text into lines.</summary>
internal static class Texts
{
    /// <summary>Lines of a text that are no wider than <paramref name="width"/>; a word wider than that is cut.</summary>
    public static IReadOnlyList<string> Lines(string text, double width, double size, Weight weight = Weight.Regular)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var rest = word;
            while (true)
            {
                var longer = line.Length == 0 ? rest : $"{line} {rest}";
                if (Typeface.WidthOf(longer, size, weight) <= width)
                {
                    line = longer;
                    break;
                }

                if (line.Length > 0)
                {
                    lines.Add(line);
                    line = "";
                    continue;
                }

                var fits = FittingLength(rest, width, size, weight);
                lines.Add(rest[..fits]);
                rest = rest[fits..];
                if (rest.Length == 0)
                {
                    break;
                }
            }
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    /// <summary>The text, cut with three dots where it is too wide.</summary>
    public static string Fitting(string text, double width, double size, Weight weight = Weight.Regular)
    {
        if (Typeface.WidthOf(text, size, weight) <= width)
        {
            return text;
        }

        var length = FittingLength(text, width - Typeface.WidthOf("…", size, weight), size, weight);
        return text[..length].TrimEnd() + "…";
    }

    /// <summary>How many signs of a text fit, at least one.</summary>
    private static int FittingLength(string text, double width, double size, Weight weight)
    {
        var sum = 0.0;
        for (var i = 0; i < text.Length; i++)
        {
            sum += Typeface.WidthOf(text.AsSpan(i, 1), size, weight);
            if (sum > width)
            {
                return Math.Max(1, i);
            }
        }

        return text.Length;
    }
}
