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

    [Theory]
    [InlineData(0.0015, 0.004, 0, 0)] // 1.5 mm along the slot, 2 mm of travel to either side
    [InlineData(0.0025, 0.004, 0, 0.0005)]
    [InlineData(0.0015, 0.004, 90, 0.0015)] // the slot lies across
    [InlineData(0.0015, 0, 0, 0.0015)]
    public void A_slot_takes_up_a_miss_along_itself(double miss, double travel, double slotDegrees, double leftM)
    {
        // Two pivots hold the bodies where they are; a third joint misses along x.
        var (s, c) = Math.SinCos(slotDegrees * Math.PI / 180);
        var a = new BodySpec(
            "a",
            1,
            default,
            [
                Bodies.Grid("a.p", 2, 1, 0.1, 0),
                Bodies.Grid("a.q", 1, 1, 0, 0, new(0, 0.05, 0)) with
                {
                    SlideM = travel,
                    SlideAlong = new(c, s, 0),
                },
            ]
        );
        var b = new BodySpec(
            "b",
            1,
            default,
            [Bodies.Grid("b.p", 2, 1, 0.1, 0), Bodies.Grid("b.q", 1, 1, 0, 0, new(miss, -0.05, 0))]
        );
        JointSpec Joint(string name) =>
            new(
                name,
                ["a." + name, "b." + name],
                ["near", "near"],
                0,
                new("M4", 0.01, true, 0),
                HoleMarking.DrilledTogether
            );
        var result = Fit.Of(new("a", [a, b], [Joint("p"), Joint("q")]));
        Assert.Equal(leftM, result.Joints[1].Holes[0].DrawnMissM, 1e-9);
    }
}
