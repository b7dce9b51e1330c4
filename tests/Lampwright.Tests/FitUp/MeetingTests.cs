using Lampwright.FitUp;
using Lampwright.Geometry;

namespace Lampwright.Tests.FitUp;

public sealed class MeetingTests
{
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 0.5)]
    [InlineData(4, 0.790569)]
    public void Shifting_a_part_takes_up_scatter(int holes, double share) =>
        Assert.Equal(share, Meeting.Share(holes), 1e-6);

    [Fact]
    public void Share_of_the_scatter_is_that_of_many_fitted_patterns()
    {
        // An independent count: random patterns of four holes, fitted, the root mean square left over along one axis.
        var random = new Random(7);
        double Normal() =>
            Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        Vec2[] square = [new(-1, -1), new(1, -1), new(1, 1), new(-1, 1)];
        var sum = 0.0;
        const int trials = 4000;
        for (var i = 0; i < trials; i++)
        {
            var scattered = square.Select(p => p + new Vec2(0.01 * Normal(), 0.01 * Normal())).ToArray();
            var fit = PlaneFit.Of(square, scattered, 0);
            sum += fit.RmsM * fit.RmsM / 2;
        }

        Assert.Equal(Meeting.Share(4), Math.Sqrt(sum / trials) / 0.01, 0.02);
    }

    [Fact]
    public void A_draw_without_scatter_is_the_miss_as_drawn_and_grows_with_it()
    {
        var hole = new HoleMeeting(["a", "b"], new(3e-4, 4e-4), 1e-3, 2e-4);
        Assert.Equal(5e-4, hole.MissM(0, 0), 12);
        Assert.Equal(7e-4, hole.MissM(0.6, 0.8), 1e-12);
        Assert.Equal(9e-4, hole.MissM(0.6, 0.8, 2), 1e-12);
    }

    [Theory]
    [InlineData(HoleMarking.ByTemplate, 0.212132)]
    [InlineData(HoleMarking.ByHand, 0.353553)]
    [InlineData(HoleMarking.CentrePunched, 0.12)]
    [InlineData(HoleMarking.DrilledTogether, 0.03)]
    public void Two_holes_made_by_hand_scatter_by_their_marking(HoleMarking marking, double rmsMm) =>
        Assert.Equal(rmsMm, Meeting.PairRmsM(marking, true, true, new()) * 1000, 1e-6);
}
