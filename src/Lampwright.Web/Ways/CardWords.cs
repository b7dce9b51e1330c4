using Lampwright.Steps.Ways;
using Lampwright.Web.Show;

namespace Lampwright.Web.Ways;

/// <summary>What the board says of a way of dimming, in few words; every colour has a word and a mark beside it.</summary>
public static class CardWords
{
    /// <summary>The verdict in words.</summary>
    public static string Of(Verdict verdict) =>
        verdict switch
        {
            Verdict.Works => "works",
            Verdict.WithDrawback => "works, with a drawback",
            Verdict.AskFirst => "not known yet",
            Verdict.DoesNotWork => "does not work",
            _ => "stop: do not build",
        };

    /// <summary>Name of the verdict for the style sheet.</summary>
    public static string Style(Verdict verdict) =>
        verdict switch
        {
            Verdict.Works => "works",
            Verdict.WithDrawback => "drawback",
            Verdict.AskFirst => "ask",
            Verdict.DoesNotWork => "fails",
            _ => "stands",
        };

    /// <summary>Yes, no or not known.</summary>
    public static string Of(Told told) =>
        told switch
        {
            Told.Yes => "yes",
            Told.No => "no",
            _ => "not known",
        };

    /// <summary>Whether it blinks, starting and stopping told as such.</summary>
    public static string Blinks(Way way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return way.Hiccups == Told.Yes ? "yes, starts and stops"
            : way.Blinks == Told.No && way.Hiccups == Told.Unknown ? "may start and stop"
            : Of(way.Blinks);
    }

    /// <summary>How often it starts and stops; empty where it does not.</summary>
    public static string Rate(Way way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return way.Hiccups == Told.No ? ""
            : way.HiccupHz is { Most: > 0 } hz
                ? hz.Most < 1 ? $"every {Between(1 / hz.Most, hz.Least > 0 ? 1 / hz.Least : double.PositiveInfinity)} s"
                    : $"{Between(hz.Least, hz.Most)} times a second"
            : way.Hiccups == Told.Yes ? "how often is not known"
            : "";
    }

    /// <summary>From the least to the most, as one number where they read alike.</summary>
    public static string Between(double least, double most)
    {
        var (low, high) = (Numbers.Significant(least, 2), Numbers.Significant(most, 2));
        return !double.IsFinite(most) ? $"{low} or more"
            : low == high ? low
            : $"{low}–{high}";
    }
}
