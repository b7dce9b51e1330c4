using CsCheck;
using Lampwright.Evaluation.Draws;

namespace Lampwright.Tests.Evaluations;

public class DrawsTests
{
    [Fact]
    public void Every_slice_of_a_variable_is_drawn_once()
    {
        var column = LatinHypercube.Column(new("a", 10, 2, Scatter.Rectangular), 64);
        var slices = column.Select(v => (int)Math.Floor((v - 8) / 4 * 64)).Order();
        Assert.Equal(Enumerable.Range(0, 64), slices);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    public void A_factor_has_its_half_width_at_the_95th_percentile(double halfWidth)
    {
        var factor = new Variable("f", 1, halfWidth, Scatter.LogNormal);
        Assert.Equal(1 + halfWidth, LatinHypercube.AtProbability(factor, 0.95), 1e-9);
        Assert.Equal(1 / (1 + halfWidth), LatinHypercube.AtProbability(factor, 0.05), 1e-9);
        Assert.Equal(1, LatinHypercube.AtProbability(factor, 0.5), 1e-12);
    }

    [Fact]
    public void A_standard_normal_has_mean_0_and_deviation_1()
    {
        var variables = new Variables();
        variables.StandardNormal("hand");
        var column = LatinHypercube.Column(variables.All[0], 4096);
        Assert.Equal(0, column.Average(), 1e-9);
        Assert.Equal(1, Math.Sqrt(column.Average(v => v * v)), 2e-3);
    }

    [Fact]
    public void A_variable_named_twice_is_one_variable()
    {
        var variables = new Variables();
        var first = variables.Between("t", 1, 0.1);
        Assert.Equal(first, variables.Between("t", 1, 0.1));
        Assert.Single(variables.All);
    }

    [Fact]
    public void Draws_of_two_variables_do_not_go_together()
    {
        var (a, b) = (
            LatinHypercube.Column(new("sheet.mild.thickness", 0, 1, Scatter.Rectangular), 512),
            LatinHypercube.Column(new("sheet.mild.radius", 0, 1, Scatter.Rectangular), 512)
        );
        var r = a.Zip(b, (x, y) => x * y).Average() / a.Average(x => x * x);
        Assert.InRange(r, -0.15, 0.15);
    }

    [Fact]
    public void Selected_percentiles_are_those_of_the_sorted_values()
    {
        Gen.Double[-1e3, 1e3]
            .Array[1, 600]
            .Sample(
                values =>
                {
                    var sorted = values.Order().ToArray();
                    double At(double share)
                    {
                        var at = Math.Clamp((share * sorted.Length) - 0.5, 0, sorted.Length - 1);
                        var below = (int)at;
                        var above = Math.Min(below + 1, sorted.Length - 1);
                        return sorted[below] + ((at - below) * (sorted[above] - sorted[below]));
                    }

                    var (low, high) = OrderStatistics.Between((double[])values.Clone(), 0.05, 0.95);
                    Assert.Equal(At(0.05), low, 1e-9);
                    Assert.Equal(At(0.95), high, 1e-9);
                },
                seed: "0000KOIPqFc0",
                iter: 300
            );
    }

    [Fact]
    public void All_columns_at_once_are_the_single_columns()
    {
        Variable[] variables =
        [
            new("a", 10, 2, Scatter.Rectangular),
            new("b", 1, 0.3, Scatter.LogNormal),
            new("c", 0, 1.645, Scatter.Normal),
            new("d", 5, 0, Scatter.None),
        ];
        var columns = LatinHypercube.Columns(variables, 100, default);
        for (var v = 0; v < variables.Length; v++)
        {
            var one = LatinHypercube.Column(variables[v], 100);
            Assert.All(one.Zip(columns[v]), p => Assert.Equal(p.First, p.Second, 1e-12));
        }
    }

    [Fact]
    public void Percentiles_are_those_of_the_draws()
    {
        var rows = Enumerable.Range(1, 1000).Select(i => (double[])[i]).Reverse().ToArray();
        var number = Bands.Of([500], rows, default).At(0);
        Assert.Equal(50.5, number.Low, 0.51);
        Assert.Equal(950.5, number.High, 0.51);
        Assert.Equal(500, number.Value);
    }

    [Fact]
    public void Shares_follow_the_variance_that_an_input_brings()
    {
        Variable[] variables =
        [
            new("large", 0, 3, Scatter.Rectangular),
            new("small", 0, 1, Scatter.Rectangular),
            new("idle", 0, 1, Scatter.Rectangular),
        ];
        double[][] columns = [.. variables.Select(v => LatinHypercube.Column(v, 2048))];
        var values = columns[0].Zip(columns[1], (a, b) => a - b).ToArray();
        var ranked = new InfluenceRanking(variables, columns).Of("sum", values, 5).ToList();
        Assert.Equal(["large", "small"], ranked.Select(i => i.Variable));
        Assert.Equal(0.9, ranked[0].Share, 0.03);
        Assert.Equal(0.1, ranked[1].Share, 0.03);
        Assert.Equal((1, -1), (ranked[0].Direction, ranked[1].Direction));
    }
}
