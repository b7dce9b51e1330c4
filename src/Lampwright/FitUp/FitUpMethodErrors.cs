using Lampwright.Tables;

namespace Lampwright.FitUp;

/// <summary>The errors of this station's methods, as variables for the draws.</summary>
public static class FitUpMethodErrors
{
    /// <summary>How careful the hand is. Factor: <c>scatterFactor</c> of <see cref="HoleMeeting.MissM"/>.</summary>
    public static MethodError HoleScatter { get; } =
        new("fitup.hole_scatter", 0.5, "Spread between careful and hurried hands: common practice, no source");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MethodError> All { get; } = [HoleScatter];
}
