using CsCheck;
using Lampwright.Quantities;

namespace Lampwright.Tests.Quantities;

public sealed class ShowTests
{
    [Theory]
    [InlineData("0.14 ohm", "140 mohm")]
    [InlineData("1.5 ohm", "1.5 ohm")]
    [InlineData("12345 mm", "12300 mm")]
    [InlineData("22 degC", "22 degC")]
    [InlineData("0.9999 A", "1 A")]
    [InlineData("0.02 A", "20 mA")]
    [InlineData("20 cfm", "34 m3/h")]
    [InlineData("1.5 N*m", "1.5 N*m")]
    [InlineData("0.000012 mm", "1.2e-5 mm")]
    [InlineData("1.2 mm ± 0.05 mm", "1.2 mm ± 0.05 mm")]
    [InlineData("0.5", "0.5")]
    public void A_value_is_shown_in_a_handy_unit(string text, string shown)
    {
        Assert.True(QuantityText.TryParse(text, out var stated, out _));
        Assert.Equal(shown, ShowAs.Metric.Show(stated));
    }

    [Fact]
    public void The_makers_unit_wins()
    {
        var inch = ShowAs.Metric.With("in")!.With("degF")!;
        Assert.Equal("1.5 in", inch.Show(0.0381, Dimension.Length));
        Assert.Equal("72 degF", inch.Show(295.372222, Dimension.Temperature));
        Assert.Null(ShowAs.Metric.With("parsec"));
    }

    [Fact]
    public void What_is_not_finite_is_shown_as_a_question_mark()
    {
        Assert.Equal("? mm", ShowAs.Metric.Show(double.NaN, Dimension.Length));
    }

    [Fact]
    public void Every_spelling_is_read_and_every_dimension_shows_its_own_example()
    {
        foreach (var spelling in UnitTable.Spellings)
        {
            Assert.True(UnitText.TryParse(spelling, out _, out var error), $"{spelling}: {error?.Message}");
        }

        foreach (var dimension in DimensionNames.All)
        {
            foreach (var example in DimensionNames.Examples(dimension).Split(" or "))
            {
                Assert.True(QuantityText.TryParse(example, dimension, out _, out var error), error?.Message);
            }
        }
    }

    [Fact]
    public void What_is_written_for_the_file_reads_back_as_the_same_value()
    {
        var units = UnitTable.All.Select(u => u.Symbol).Concat(["W/(m*K)", "m3/h", "K/W", "ppm/K"]).ToArray();
        Gen.Select(Gen.Int[0, units.Length - 1].Select(i => units[i]), Gen.Double[-1e6, 1e6], Gen.Double[-12, 6])
            .Sample(
                (unit, mantissa, power) =>
                {
                    Assert.True(UnitText.TryParse(unit, out var value, out _));
                    var si = mantissa * Math.Pow(10, power);
                    if (value.Dimension.IsAbsoluteTemperature && si < 0)
                    {
                        return;
                    }

                    var text = QuantityFormat.Exact(si, unit);
                    Assert.True(
                        QuantityText.TryParse(text, out var stated, out var error),
                        $"{text}: {error?.Message}"
                    );
                    var slack = 1e-15 * Math.Max(Math.Abs(si), Math.Abs(value.Offset)) * 4;
                    Assert.True(Math.Abs(stated.Si - si) <= slack, $"{text} is {stated.Si:R}, not {si:R}");
                },
                seed: "0N0XIzNsQ0O2",
                iter: 2000
            );
    }

    [Fact]
    public void Tidy_numbers_stay_tidy()
    {
        Assert.Equal("1.2 mm", QuantityFormat.Exact(0.0012, "mm"));
        Assert.Equal("0.1 mm", QuantityFormat.Exact(0.0001, "mm"));
        Assert.Equal("22 degC", QuantityFormat.Exact(295.15, "degC"));
        Assert.Equal("90 deg", QuantityFormat.Exact(Math.PI / 2, "deg"));
        Assert.Equal("60 um", QuantityFormat.Exact(60e-6, "um"));
    }
}
