using Lampwright.Evaluation;
using Lampwright.Files.Charts;

namespace Lampwright.Tests.Files.Charts;

/// <summary>Numbers on a label, which shows no band.</summary>
public class RoundedTests
{
    [Theory]
    [InlineData(4481, 3887, 5047, "4500")]
    [InlineData(133.1, 116.1, 150.2, "130")]
    [InlineData(1578, 1540, 1620, "1580")]
    [InlineData(0.0447, 0.03, 0.06, "0.045")]
    [InlineData(9.96, 9.96, 9.96, "10.0")]
    [InlineData(120, -100, 5000, "120")]
    public void No_figure_is_finer_than_half_of_the_band(double value, double low, double high, string text) =>
        Assert.Equal(text, ChartText.Rounded(new(value, low, high)));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(0)]
    public void What_is_no_number_is_not_rounded(double value) =>
        Assert.Equal(ChartText.Number(value, 2), ChartText.Rounded(new(value, value, value)));
}
