using System.Text;

namespace Lampwright.Files.Drawings;

/// <summary>Names of a design made fit for file names and for the names inside plain-text files.</summary>
public static class SafeName
{
    private static readonly HashSet<string> Reserved = new(
        ["con", "prn", "aux", "nul", .. Enumerable.Range(1, 9).SelectMany(i => (string[])[$"com{i}", $"lpt{i}"])],
        StringComparer.OrdinalIgnoreCase
    );

    /// <summary>Letters, digits, minus and underscore of ASCII, at most 80 of them; everything else becomes an underscore.</summary>
    /// <remarks>Never empty, never a path, never a device's name, so it can be joined to a folder as it is.</remarks>
    public static string Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var safe = new StringBuilder(Math.Min(name.Length, 80));
        foreach (var c in name.AsSpan(0, Math.Min(name.Length, 80)))
        {
            safe.Append(char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '_');
        }

        var text = safe.ToString();
        return text.Length == 0 || Reserved.Contains(text) ? "_" + text : text;
    }

    /// <summary>Safe names of several things, each its own: a number is added where two would be the same.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var safe = new List<string>(names.Count);
        foreach (var name in names)
        {
            var wish = Of(name);
            var text = wish;
            for (var n = 2; !taken.Add(text); n++)
            {
                text = wish + "_" + n.ToString(System.Globalization.CultureInfo.InvariantCulture);
            }

            safe.Add(text);
        }

        return safe;
    }
}
