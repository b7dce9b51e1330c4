using Lampwright.Evaluation;
using Lampwright.Web.Show;

namespace Lampwright.Tests.Web;

public sealed class NumbersTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(1.7391, "1.74")]
    [InlineData(0.16512, "0.165")]
    [InlineData(37.26, "37.3")]
    [InlineData(4236, "4\u2009240")]
    [InlineData(123456, "123\u2009000")]
    [InlineData(-0.0414, "−0.0414")]
    [InlineData(double.NaN, "–")]
    public void Three_digits_are_kept_whatever_the_size(double value, string expected) =>
        Assert.Equal(expected, Numbers.Significant(value));

    [Fact]
    public void A_rounded_zero_has_no_sign() => Assert.Equal("0.0", Numbers.Fixed(-0.04, 1));

    [Fact]
    public void A_band_with_a_minus_says_to() =>
        Assert.Equal("−36 to −28", Numbers.Band(new Predicted(-31, -36, -28), v => Numbers.Fixed(v, 0)));

    [Fact]
    public void A_band_without_a_minus_has_a_dash() =>
        Assert.Equal("1.62–1.78", Numbers.Band(new Predicted(1.7, 1.62, 1.78), v => Numbers.Fixed(v, 2)));
}
