using Lampwright.Files.Charts;

namespace Lampwright.Tests.Files.Charts;

public sealed class ScaleTests
{
    [Theory]
    [InlineData(0.9, 1)]
    [InlineData(1.1, 2)]
    [InlineData(2.1, 2.5)]
    [InlineData(26, 50)]
    [InlineData(0.0051, 0.01)]
    public void Ticks_are_round(double rough, double expected) => Assert.Equal(expected, Scale.RoundTick(rough), 12);

    [Fact]
    public void Ends_hold_all_numbers()
    {
        var scale = Scale.Of(new("a", ""), [3.2, 97], 0, 100, 5);
        Assert.True(scale.Least <= 3.2 && scale.Most >= 97, $"{scale.Least} to {scale.Most}");
        Assert.InRange(scale.Ticks.Count, 3, 8);
    }

    [Fact]
    public void One_number_alone_has_a_scale() =>
        Assert.True(Scale.Of(new("a", ""), [5, 5], 0, 100, 5) is { Least: < 5, Most: > 5 });

    [Fact]
    public void No_number_at_all_has_a_scale() => Assert.NotEmpty(Scale.Of(new("a", ""), [], 0, 100, 5).Ticks);

    [Theory]
    [InlineData(-0.0001, 2, "0.00")]
    [InlineData(-1.5, 1, "−1.5")]
    [InlineData(1234.6, 0, "1235")]
    public void Numbers_have_a_true_minus_sign_and_no_minus_zero(double value, int decimals, string expected) =>
        Assert.Equal(expected, ChartText.Fixed(value, decimals));

    [Theory]
    [InlineData(0.25, "0.75")]
    [InlineData(2.5, "7.5")]
    [InlineData(25, "75")]
    [InlineData(0.2, "0.6")]
    [InlineData(0.001, "0.003")]
    [InlineData(500, "1500")]
    public void A_tick_is_never_rounded_to_another_number(double tick, string third)
    {
        var scale = Scale.Of(
            new("", "")
            {
                Tick = tick,
                Least = 0,
                Most = 3 * tick,
            },
            [],
            0,
            100,
            4
        );
        Assert.Equal(third, scale.Text(scale.Ticks[3]));
    }
}
