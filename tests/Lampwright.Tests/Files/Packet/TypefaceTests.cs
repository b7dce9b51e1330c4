using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Tests.Files.Packet;

public sealed class TypefaceTests
{
    [Theory]
    [InlineData(Weight.Regular)]
    [InlineData(Weight.Medium)]
    [InlineData(Weight.SemiBold)]
    public void Every_figure_is_as_wide_as_every_other(Weight weight)
    {
        // Two units of 2816 is what rounding leaves in the font's own instances.
        var zero = Typeface.WidthOf("0", 10, weight);
        foreach (var figure in "123456789")
        {
            Assert.Equal(zero, Typeface.WidthOf(figure.ToString(), 10, weight), 0.02);
        }
    }

    [Fact]
    public void Figures_of_the_file_as_it_comes_are_proportional()
    {
        var file = new FontFile(Typeface.FileBytes(Weight.Regular));
        Assert.NotEqual(file.AdvanceOf(file.Glyphs['1']), file.AdvanceOf(file.Glyphs['0']));
    }

    [Fact]
    public void Width_grows_with_size_and_length()
    {
        var one = Typeface.WidthOf("mΩ", 8);
        Assert.Equal(2 * one, Typeface.WidthOf("mΩ", 16), 9);
        Assert.Equal(2 * one, Typeface.WidthOf("mΩmΩ", 8), 9);
        Assert.InRange(one, 4, 24);
    }

    [Fact]
    public void The_signs_of_the_trade_are_there() => Assert.True(Typeface.Has("ΩµµØ°±×·²³−–½≤≥→↑↓√πη"));

    [Fact]
    public void A_sign_that_is_not_there_is_known_to_be_missing() => Assert.False(Typeface.Has("⌀"));
}
