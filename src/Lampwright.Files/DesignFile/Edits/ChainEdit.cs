using System.Globalization;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Files.DesignFile.Edits;

/// <summary>Writes a chain into <c>[steps]</c> as the maker's choice.</summary>
/// <remarks>Two parts in a position are written as such, so that the light is judged with what is soldered.</remarks>
public static class ChainEdit
{
    /// <summary>The text with the chain chosen, and the count of switches where it is another.</summary>
    /// <param name="text">The text.</param>
    /// <param name="parts">What is soldered in each position, the fixed one first.</param>
    /// <param name="withFixed">Whether the fixed resistor is chosen too; else the parts on the board stay.</param>
    /// <param name="switches">How many switches the file has now.</param>
    public static EditResult Take(DesignText text, IReadOnlyList<PositionParts> parts, bool withFixed, int switches)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(parts);
        var chain = "[" + string.Join(", ", parts.Skip(1).Select(Written)) + "]";
        List<(string Path, string Toml)> values = [("steps.chosen.chain", chain)];
        if (withFixed)
        {
            values.Insert(0, ("steps.chosen.fixed", Written(parts[0])));
        }

        if (parts.Count - 1 != switches)
        {
            values.Insert(0, ("steps.switches", (parts.Count - 1).ToString(CultureInfo.InvariantCulture)));
        }

        var now = text;
        foreach (var (path, toml) in values)
        {
            var edited = DesignEdits.SetRaw(now, path, toml);
            if (!edited.IsDone)
            {
                return DesignEdits.Refused(text, edited.Refusal ?? path);
            }

            now = edited.Text;
        }

        return new(now, [Whole(text.Text, now.Text)], null);
    }

    // From the first sign that differs to the last: edits that follow each other have no places in the text before.
    private static Splice Whole(string before, string after)
    {
        var shorter = Math.Min(before.Length, after.Length);
        var start = before.AsSpan().CommonPrefixLength(after);
        var end = 0;
        while (end < shorter - start && before[^(end + 1)] == after[^(end + 1)])
        {
            end++;
        }

        return new(start, before.Length - start - end, after[start..^end]);
    }

    // A part with a rating or a tolerance of its own keeps them.
    private static string Written(PositionParts p)
    {
        string[] ratings =
        [
            .. new[] { p.First, p.Second }.OfType<StockPart>().Select(s => s.RatingW is { } w ? Watts(w) : ""),
        ];
        var own = ratings.All(r => r.Length > 0);
        var rating =
            !own ? ""
            : ratings.Distinct(StringComparer.Ordinal).Count() == 1 ? $", rating = \"{ratings[0]}\""
            : $", rating = [\"{ratings[0]}\", \"{ratings[1]}\"]";
        return p.Second is not { } second
            ? rating.Length == 0
                ? $"\"{Ohm(p.First)}\""
                : $"{{ value = \"{Ohm(p.First)}\"{rating} }}"
            : p.Joint == Joint.Series
                ? $"{{ series = [\"{Ohm(p.First)}\", \"{Ohm(second)}\"]{rating} }}"
                : $"{{ parallel = [\"{Ohm(p.First)}\", \"{Ohm(second)}\"]{rating} }}";
    }

    private static string Ohm(StockPart part)
    {
        var ohm = part.Ohm.ToString("0.#########", CultureInfo.InvariantCulture) + " ohm";
        return part.OwnTolerance
            ? ohm + " ± " + (part.Tolerance * 100).ToString("0.######", CultureInfo.InvariantCulture) + " %"
            : ohm;
    }

    private static string Watts(double watts) => watts.ToString("0.######", CultureInfo.InvariantCulture) + " W";
}
