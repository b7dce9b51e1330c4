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

                var fits = Math.Max(
                    1,
                    Enumerable.Range(1, rest.Length).Count(n => Typeface.WidthOf(rest[..n], size, weight) <= width)
                );
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

        var length = text.Length;
        while (length > 1 && Typeface.WidthOf(text[..length] + "…", size, weight) > width)
        {
            length--;
        }

        return text[..length].TrimEnd() + "…";
    }
}
