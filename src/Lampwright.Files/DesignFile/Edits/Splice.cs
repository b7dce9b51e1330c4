namespace Lampwright.Files.DesignFile.Edits;

/// <summary>One change of a text: a stretch of it and what stands there afterwards.</summary>
/// <param name="Start">Where the stretch starts, in characters.</param>
/// <param name="Length">How many characters are replaced; 0 inserts.</param>
/// <param name="Text">What stands there afterwards.</param>
public readonly record struct Splice(int Start, int Length, string Text)
{
    /// <summary>A text with splices done; they must not overlap.</summary>
    /// <param name="text">The text.</param>
    /// <param name="splices">The splices in any order, with places in the text as it is.</param>
    public static string Apply(string text, IEnumerable<Splice> splices)
    {
        // From the end, so that the places of those before it still hold; the sort keeps the order of two at one place.
        foreach (var splice in splices.OrderBy(s => s.Start).ThenBy(s => s.Length).Reverse())
        {
            text = string.Concat(text.AsSpan(0, splice.Start), splice.Text, text.AsSpan(splice.Start + splice.Length));
        }

        return text;
    }
}

/// <summary>What came of an edit.</summary>
/// <param name="Text">The text afterwards; the one before where the edit was refused.</param>
/// <param name="Splices">What was changed, with places in the text before.</param>
/// <param name="Refusal">Why nothing was changed, or null.</param>
public sealed record EditResult(DesignText Text, IReadOnlyList<Splice> Splices, string? Refusal)
{
    /// <summary>True where the edit was done.</summary>
    public bool IsDone => Refusal is null;
}
