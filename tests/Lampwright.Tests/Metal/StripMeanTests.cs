using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class StripMeanTests
{
    private static BendStrip Strip(double deductionMm, double degrees = 90, double readingMm = 0.001) =>
        new(degrees * Math.PI / 180, deductionMm / 1000) { ReadingM = readingMm / 1000 };

    [Fact]
    public void Mean_and_band_of_three_strips_by_hand()
    {
        // 4.9, 4.8, 4.7 mm: mean 4.8, s = 0.1, t(2) = 2.920: 2.920 · 0.1 / √3 = 0.1686 mm.
        var group = Assert.Single(StripMean.Of([Strip(4.9), Strip(4.8), Strip(4.7)]));
        Assert.Equal(3, group.Count);
        Assert.Equal(4.8, group.DeductionM * 1000, 9);
        Assert.Equal(0.1, group.SpreadM * 1000, 9);
        Assert.Equal(0.1686, group.HalfWidthM * 1000, 4);
    }

    [Fact]
    public void Strips_that_agree_by_luck_are_not_known_better_than_they_were_read()
    {
        var group = Assert.Single(StripMean.Of([Strip(2.8, 90, 0.1), Strip(2.8, 90, 0.1)]));
        Assert.Equal(1.645 * 0.1 / Math.Sqrt(2), group.HalfWidthM * 1000, 3);
    }

    [Fact]
    public void Every_angle_is_a_group_of_its_own()
    {
        var groups = StripMean.Of([Strip(2.8), Strip(1.4, 45), Strip(2.9)]);
        Assert.Equal([1, 2], groups.Select(g => g.Count));
        Assert.Equal(2.85, groups[1].DeductionM * 1000, 9);
    }

    [Fact]
    public void More_strips_of_equal_spread_narrow_the_band()
    {
        double Band(int pairs) =>
            StripMean
                .Of([.. Enumerable.Range(0, pairs).SelectMany(_ => new[] { Strip(2.7), Strip(2.9) })])
                .Single()
                .HalfWidthM;
        Assert.True(Band(1) > 3 * Band(2));
        Assert.True(Band(2) > Band(4));
    }

    [Fact]
    public void Blank_says_what_the_strips_said()
    {
        var sheet = Parts.Mild with { Rule = BendRule.FromStrips(Strip(2.8), Strip(2.9)) };
        var blank = SheetPart.Of(Parts.Box(120, 80, 30, sheet)).Blank!;
        Assert.Contains("2.85 ± 0.32 mm at 90° (2)", blank.Method, StringComparison.Ordinal);
        Assert.Equal(2.85, blank.Bends[0].DeductionM * 1000, 9);
    }
}
