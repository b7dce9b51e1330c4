using Lampwright.Steps;

namespace Lampwright.Tests.Steps;

public class MarkingTests
{
    [Theory]
    [InlineData("r33", 0.33)]
    [InlineData(" R330F ", 0.33)]
    [InlineData("0R18", 0.18)]
    [InlineData("22R", 22)]
    [InlineData("4K7", 4700)]
    [InlineData("5L0", 0.005)]
    [InlineData("0.18", 0.18)]
    [InlineData("0.18 Ω", 0.18)]
    [InlineData("1R00", 1)]
    [InlineData("01Z", 0.1)]
    [InlineData("22Y", 1.65)]
    public void Reads(string text, double ohm) => Assert.Equal(ohm, Marking.Read(text).Ohm!.Value, 12);

    [Theory]
    [InlineData("")]
    [InlineData("000")]
    [InlineData("12")]
    [InlineData("12345")]
    [InlineData("0,18")]
    [InlineData("R")]
    [InlineData("RR1")]
    [InlineData("97A")]
    [InlineData("1M5")]
    [InlineData("<b>R33</b>")]
    [InlineData("R0")]
    [InlineData("1.2.3")]
    [InlineData(".")]
    [InlineData("R3333333333333333333333333333333")]
    public void Unreadable_is_a_described_problem(string text)
    {
        var read = Marking.Read(text);
        Assert.Null(read.Ohm);
        Assert.NotEmpty(read.Problem);
    }

    [Fact]
    public void Second_meaning_is_told() => Assert.Contains("1.65", Marking.Read("22R").How, StringComparison.Ordinal);

    [Fact]
    public void Two_equal_parts_in_parallel_are_half()
    {
        Assert.Equal(0.165, Marking.Parallel([0.33, 0.33])!.Value, 12);
        Assert.Null(Marking.Parallel([]));
        Assert.Null(Marking.Parallel([0.33, 0]));
    }
}
