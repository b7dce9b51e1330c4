namespace Lampwright.Quantities;

/// <summary>Why a text is no quantity, as a value: nothing is thrown for what somebody typed.</summary>
/// <param name="Offset">Where in the text the trouble starts, counted from 0.</param>
/// <param name="Length">How many characters are concerned; may be 0 at the end of the text.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Accepted">What would be accepted.</param>
/// <param name="Message">Both in one sentence.</param>
public sealed record QuantityError(int Offset, int Length, string Found, string Accepted, string Message)
{
    private static readonly int Longest = 60;

    /// <summary>The error for a piece of a text.</summary>
    internal static QuantityError At(int offset, ReadOnlySpan<char> found, string accepted, string why)
    {
        var shown = Shown(found);
        var what = shown.Length == 0 ? "Nothing stands here" : $"'{shown}' {why}".TrimEnd();
        return new(offset, found.Length, shown, accepted, $"{what}: {accepted}.");
    }

    /// <summary>A piece of somebody's text, cut to a length that fits a message, control characters made visible.</summary>
    public static string Shown(ReadOnlySpan<char> text)
    {
        var cut = text.Length > Longest ? text[..Longest] : text;
        if (cut.Length > 0 && char.IsHighSurrogate(cut[^1]))
        {
            cut = cut[..^1];
        }

        return string.Create(
            cut.Length + (text.Length > Longest ? 1 : 0),
            (cut.ToString(), text.Length > Longest),
            static (span, state) =>
            {
                for (var i = 0; i < state.Item1.Length; i++)
                {
                    var c = state.Item1[i];
                    span[i] = char.IsControl(c) ? '\uFFFD' : c;
                }

                if (state.Item2)
                {
                    span[^1] = '…';
                }
            }
        );
    }
}
