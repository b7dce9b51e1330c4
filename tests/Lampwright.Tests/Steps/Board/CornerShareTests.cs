using Lampwright.Steps;
using Lampwright.Steps.Board;

namespace Lampwright.Tests.Steps.Board;

/// <summary>How far a threshold may be off in a worst corner.</summary>
public class CornerShareTests
{
    [Fact]
    public void A_spread_given_with_the_measured_current_counts_in_full()
    {
        var (without, with) = (Of(null), Of(0.02));
        Assert.Contains(with.Errors, e => e.By == CarriedBy.Value);
        Assert.Equal(((1 + with.DrawnHalfWidth) * 1.02) - 1, with.CornerShare, 9);
        Assert.Equal(without.DrawnHalfWidth, without.CornerShare, 9);
        Assert.True(with.CornerShare > with.HalfWidth);
    }

    [Fact]
    public void A_limit_and_its_band_are_each_others_inverse() =>
        Assert.Equal(0.02, NamedError.LimitOf(NamedError.OfLimit(0.02)), 12);

    private static SenseThreshold Of(double? spread) =>
        SenseThreshold.From(Boards.With(s => s with { CurrentSpread = spread }));
}
