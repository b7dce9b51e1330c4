namespace Lampwright.Quantities;

/// <summary>The nearest known word to one that was mistyped.</summary>
public static class Nearest
{
    private static readonly int LongestWord = 64;

    /// <summary>The candidate with the fewest slips from the word, or null where none is near.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="candidates">What is known.</param>
    /// <remarks>
    /// Edit distance with neighbours swapped as one slip; a difference of case alone is no slip, so it wins. One slip is allowed in
    /// words of up to four letters, two up to eight, three beyond. Ties go to the first in ordinal order, so the answer is stable.
    /// </remarks>
    public static string? Of(string word, IEnumerable<string> candidates)
    {
        if (word.Length is 0 || word.Length > LongestWord)
        {
            return null;
        }

        var lower = word.ToLowerInvariant();
        var allowed =
            word.Length <= 1 ? 0
            : word.Length <= 4 ? 1
            : word.Length <= 8 ? 2
            : 3;
        string? best = null;
        var least = allowed + 1;
        foreach (var candidate in candidates)
        {
            if (candidate.Length > LongestWord || Math.Abs(candidate.Length - word.Length) > allowed)
            {
                continue;
            }

            var slips = Slips(lower, candidate.ToLowerInvariant());
            if (slips < least || (slips == least && best is not null && string.CompareOrdinal(candidate, best) < 0))
            {
                (best, least) = (candidate, slips);
            }
        }

        return best;
    }

    /// <summary>How many letters must be changed, added, dropped or swapped with the neighbour.</summary>
    internal static int Slips(string a, string b)
    {
        Span<int> before = stackalloc int[LongestWord + 1];
        Span<int> previous = stackalloc int[LongestWord + 1];
        Span<int> current = stackalloc int[LongestWord + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            previous[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                var least = Math.Min(Math.Min(current[j - 1], previous[j]) + 1, previous[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    least = Math.Min(least, before[j - 2] + 1);
                }

                current[j] = least;
            }

            previous.CopyTo(before);
            current.CopyTo(previous);
        }

        return previous[b.Length];
    }
}
