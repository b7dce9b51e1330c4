using Lampwright.Files.Charts;
using Lampwright.Tests.Files.Fixtures;

namespace Lampwright.Tests.Files.Charts;

public sealed class ChainChartsTests
{
    [Fact]
    public void Every_wanted_step_stands_with_its_nominal_and_its_corners()
    {
        var chain = SampleBestChain.Answer;
        var chart = ChainCharts.Errors(chain, chain.Best, "best")!;
        Assert.Equal(["1.5 A", "1 A", "0.6 A"], chart.X.Places);
        var dots = Assert.IsType<DotLayer>(Assert.Single(chart.Layers)).Points;
        for (var k = 0; k < dots.Count; k++)
        {
            var step = chain.Best.Steps[k];
            Assert.Equal(100 * ((step.CurrentA / step.WantedA) - 1), dots[k].Y.Value, 9);
            Assert.InRange(dots[k].Y.Value, dots[k].Y.Low, dots[k].Y.High);
        }

        // The end of the longest bar is the worst error that is told in words.
        Assert.Equal(100 * chain.Best.WorstError, dots.Max(d => Math.Max(Math.Abs(d.Y.Low), Math.Abs(d.Y.High))), 6);
    }

    [Theory]
    [InlineData(TradeOffAxis.Parts)]
    [InlineData(TradeOffAxis.Load)]
    [InlineData(TradeOffAxis.Switches)]
    public void Every_offer_is_a_point_at_its_cost_and_error_inside_the_drawing(TradeOffAxis along)
    {
        var chain = SampleBestChain.Answer;
        var chart = ChainCharts.TradeOff(chain, along)!;
        var pins = chart
            .Layers.OfType<PinLayer>()
            .SelectMany(l => l.Pins)
            .ToDictionary(p => p.Words, StringComparer.Ordinal);
        var places = ChainCharts.Places(chart, 720, 300, 13);
        Assert.True(chain.Offers.Count > 1);
        for (var i = 0; i < chain.Offers.Count; i++)
        {
            var found = chain.Offers[i].Choice.Found;
            if (found.WorstError > 1)
            {
                continue;
            }

            Assert.Equal(100 * found.WorstError, pins[ChainCharts.Letter(i)].Y, 9);
            Assert.InRange(places[i].X, 0, 1);
            Assert.InRange(places[i].Y, 0, 1);
        }

        // Less error lies lower in the picture.
        var seen = places.OrderBy(p => chain.Offers[p.Key].Choice.Found.WorstError).Select(p => p.Value.Y).ToList();
        Assert.Equal(seen.OrderDescending(), seen);
    }

    [Fact]
    public void Without_a_chain_there_is_no_picture()
    {
        var none = SampleBestChain.Answer with { Offers = [] };
        Assert.Null(ChainCharts.TradeOff(none, TradeOffAxis.Parts));
        Assert.Null(ChainCharts.Errors(none, none.Best with { Steps = [] }, "best"));
    }
}
