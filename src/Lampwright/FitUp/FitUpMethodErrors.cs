using Lampwright.Tables;

namespace Lampwright.FitUp;

/// <summary>The errors of this station's methods, as variables for the draws.</summary>
public static class FitUpMethodErrors
{
    /// <summary>How careful the hand is. Factor: <c>scatterFactor</c> of <see cref="HoleMeeting.MissM"/>.</summary>
    public static MethodError HoleScatter { get; } =
        new("fitup.hole_scatter", 0.5, "Spread between careful and hurried hands: common practice, no source");

    /// <summary>
    /// Where the weight of a bought thing sits in the box that stands for it, as a share of each side from its middle; both ways, equally likely.
    /// </summary>
    public static MethodError WeightInBox { get; } =
        new(
            "fitup.weight_in_box",
            1.0 / 6,
            "Drivers, fans and clamps are not evenly filled: common practice, no source"
        );

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MethodError> All { get; } = [HoleScatter, WeightInBox];
}
