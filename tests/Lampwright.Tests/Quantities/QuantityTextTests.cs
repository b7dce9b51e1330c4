using System.Globalization;
using Lampwright.Quantities;

namespace Lampwright.Tests.Quantities;

public sealed class QuantityTextTests
{
    private static Stated Read(string text, Dimension? wanted = null)
    {
        Assert.True(QuantityText.TryParse(text, wanted, out var stated, out var error), $"'{text}': {error?.Message}");
        return stated;
    }

    private static QuantityError Refused(string text, Dimension? wanted = null)
    {
        Assert.False(QuantityText.TryParse(text, wanted, out var stated, out var error), $"'{text}' read as {stated}");
        Assert.NotEqual("", error!.Message);
        Assert.InRange(error.Offset, 0, text.Length);
        return error;
    }

    [Theory]
    [InlineData("12 mm", 0.012)]
    [InlineData("12mm", 0.012)]
    [InlineData("1.2 mm", 0.0012)]
    [InlineData("  1/8 in ", 0.003175)]
    [InlineData("1 1/2 in", 0.0381)]
    [InlineData("1-1/2 in", 0.0381)]
    [InlineData("-1 1/2 in", -0.0381)]
    [InlineData("1½ in", 0.0381)]
    [InlineData("½ in", 0.0127)]
    [InlineData("3/64 in", 0.001190625)]
    [InlineData("60 um", 60e-6)]
    [InlineData("60 µm", 60e-6)]
    [InlineData("60 μm", 60e-6)]
    [InlineData("2 ft", 0.6096)]
    [InlineData("5 thou", 127e-6)]
    [InlineData("0.75 mm2", 0.75e-6)]
    [InlineData("0.75 mm^2", 0.75e-6)]
    [InlineData("0.75 mm²", 0.75e-6)]
    [InlineData("0.14 ohm", 0.14)]
    [InlineData("0.14 Ω", 0.14)]
    [InlineData("0.14 \u2126", 0.14)]
    [InlineData("12 mohm", 0.012)]
    [InlineData("12 mΩ", 0.012)]
    [InlineData("4.7 kΩ", 4700)]
    [InlineData("470 uF", 470e-6)]
    [InlineData("470 μF", 470e-6)]
    [InlineData("35 m3/h", 35.0 / 3600)]
    [InlineData("20 cfm", 20 * 0.028316846592 / 60)]
    [InlineData("20 ft3/min", 20 * 0.028316846592 / 60)]
    [InlineData("0.3 K/W", 0.3)]
    [InlineData("0.3 degC/W", 0.3)]
    [InlineData("-18 mV/K", -0.018)]
    [InlineData("\u221218 mV/K", -0.018)]
    [InlineData("3 W/(m*K)", 3)]
    [InlineData("3 W/(m K)", 3)]
    [InlineData("3 W/(m·K)", 3)]
    [InlineData("3 W/m/K", 3)]
    [InlineData("3 W m^-1 K^-1", 3)]
    [InlineData("3 W·m⁻¹·K⁻¹", 3)]
    [InlineData("100 ppm/K", 1e-4)]
    [InlineData("0.0039 1/K", 0.0039)]
    [InlineData("5 1/K", 5)]
    [InlineData("0.0039 /K", 0.0039)]
    [InlineData("22 degC", 295.15)]
    [InlineData("-18 °C", 255.15)]
    [InlineData("72 degF", 295.372222222222)]
    [InlineData("90 deg", Math.PI / 2)]
    [InlineData("90°", Math.PI / 2)]
    [InlineData("1.5 N*m", 1.5)]
    [InlineData("1.5 Nm", 1.5)]
    [InlineData("1.5 N m", 1.5)]
    [InlineData("10 lbf*in", 1.1298482902761668)]
    [InlineData("4350 lm", 4350)]
    [InlineData("5 klx", 5000)]
    [InlineData("0.1 inH2O", 24.908891)]
    [InlineData("310 g", 0.31)]
    [InlineData("1 lb", 0.45359237)]
    [InlineData("62 %", 0.62)]
    [InlineData("0.5 stops", 0.5)]
    [InlineData("1/60 s", 1.0 / 60)]
    [InlineData("20 min", 1200)]
    [InlineData("50 Hz", 50)]
    [InlineData("0.62", 0.62)]
    [InlineData("+5 V", 5)]
    [InlineData("1e-3 m", 0.001)]
    [InlineData(".5 mm", 0.0005)]
    [InlineData("7850 kg/m3", 7850)]
    [InlineData("7.85 g/cm³", 7850)]
    public void A_value_is_read_in_SI(string text, double si)
    {
        Assert.Equal(si, Read(text).Si, Math.Abs(si) * 1e-13);
    }

    [Theory]
    [InlineData("1.2 mm ± 0.05 mm", 0.0012, 0.00005)]
    [InlineData("1.2 mm +- 0.05 mm", 0.0012, 0.00005)]
    [InlineData("1.2 mm +/- 0.05 mm", 0.0012, 0.00005)]
    [InlineData("1.2 ± 0.05 mm", 0.0012, 0.00005)]
    [InlineData("0.165 ohm ± 5 %", 0.165, 0.00825)]
    [InlineData("0.165 ohm ±5%", 0.165, 0.00825)]
    [InlineData("-18 mV/K ± 30 %", -0.018, 0.0054)]
    [InlineData("22 degC ± 3 K", 295.15, 3)]
    [InlineData("0.15 ± 0.03", 0.15, 0.03)]
    [InlineData("0.89 ± 2 %", 0.89, 0.0178)]
    [InlineData("1e+3 mm ± 1 mm", 1, 0.001)]
    [InlineData("60 um ± 30 um", 60e-6, 30e-6)]
    public void A_spread_is_read_as_half_width(string text, double si, double halfWidth)
    {
        var stated = Read(text);
        Assert.Equal(si, stated.Si, Math.Abs(si) * 1e-13);
        Assert.Equal(halfWidth, stated.HalfWidth, halfWidth * 1e-12);
    }

    [Theory]
    [InlineData("1,2 mm", 0, "decimal comma", "write 1.2 mm")]
    [InlineData("1,200 mm", 0, "comma", "1200 mm")]
    [InlineData("0,125 mm", 0, "decimal comma", "write 0.125 mm")]
    [InlineData(",5 mm", 0, "decimal comma", "write .5 mm")]
    [InlineData("1.2 mm ± 0,05 mm", 9, "decimal comma", "0.05 mm")]
    [InlineData("1.2 mmm", 4, "not a unit", "mm")]
    [InlineData("1.2 MM", 4, "not a unit", "mm")]
    [InlineData("25 C", 3, "not a unit", "degC")]
    [InlineData("3 W/mK", 4, "not a unit", "m*K")]
    [InlineData("3 W/m*K", 2, "two ways", "W/(m*K)")]
    [InlineData("abc", 0, "not a number", "12")]
    [InlineData("", 0, "Nothing", "12 mm")]
    [InlineData("   ", 3, "Nothing", "12 mm")]
    [InlineData("NaN", 0, "not a number", "12")]
    [InlineData("nan mm", 0, "not a number", "12")]
    [InlineData("Infinity", 0, "not a number", "12")]
    [InlineData("-inf", 0, "not a number", "12")]
    [InlineData("1e400 mm", 0, "out of all measure", "1e30")]
    [InlineData("1e31", 0, "out of all measure", "1e30")]
    [InlineData("5 m^99", 3, "no power", "m^2")]
    [InlineData("5 m^", 3, "no power", "m^2")]
    [InlineData("5 (m", 2, "not closed", "bracket")]
    [InlineData("5 m)", 3, "closes", "bracket")]
    [InlineData("5 mm ± 0.1", 7, "no unit", "percent")]
    [InlineData("5 mm ± -0.1 mm", 7, "negative", "above zero")]
    [InlineData("5 mm ± 3 K", 7, "temperature difference", "percent")]
    [InlineData("22 degC ± 3 degC", 10, "temperature", "± 3 K")]
    [InlineData("22 degC ± 5 %", 10, "temperature", "± 3 K")]
    [InlineData("62 % ± 3 %", 7, "two ways", "0.62 ± 0.03")]
    [InlineData("5 mm ± 1 mm ± 1 mm", 6, "second", "one spread")]
    [InlineData("5 mm ±", 6, "Nothing", "number")]
    [InlineData("-300 degC", 0, "absolute zero", "-273.15")]
    [InlineData("1/0 in", 0, "divides by zero", "fraction")]
    [InlineData("1.2.3 mm", 0, "point too many", "number")]
    [InlineData("5 mm 3", 5, "part of a unit", "mm")]
    [InlineData("5 m 20 cm", 4, "part of a unit", "mm")]
    [InlineData("<b>5 mm</b>", 0, "not a number", "12")]
    public void A_wrong_text_says_what_is_wrong_and_what_would_do(
        string text,
        int offset,
        string found,
        string accepted
    )
    {
        var error = Refused(text);
        Assert.Contains(found, error.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(accepted, error.Message, StringComparison.Ordinal);
        Assert.Equal(offset, error.Offset);
    }

    [Theory]
    [InlineData("5 mm", "a length", "ohm")]
    [InlineData("5", "no unit", "ohm")]
    public void A_wrong_dimension_is_named_with_the_wanted_one(string text, string found, string accepted)
    {
        var error = Refused(text, Dimension.Resistance);
        Assert.Contains(found, error.Message, StringComparison.Ordinal);
        Assert.Contains(accepted, error.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Kelvins_serve_as_temperature_where_one_is_wanted_but_a_temperature_is_no_difference()
    {
        Assert.Equal(4000, Read("4000 K", Dimension.Temperature).Si);
        Assert.Equal(Dimension.Temperature, Read("4000 K", Dimension.Temperature).Dimension);
        Assert.Contains("3 K", Refused("3 degC", Dimension.TemperatureDifference).Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lumen_is_not_a_candela_and_an_angle_is_not_a_number()
    {
        Refused("5 cd", Dimension.LuminousFlux);
        Refused("5 rad", Dimension.None);
        Assert.Equal(5, Read("5 cd*sr", Dimension.LuminousFlux).Si);
        Assert.Equal(5, Read("5 lm/m2", Dimension.Illuminance).Si);
    }

    [Fact]
    public void The_unit_is_found_as_it_was_written()
    {
        Assert.Equal("mm", QuantityText.UnitOf("1.2 mm ± 0.05 mm"));
        Assert.Equal("in", QuantityText.UnitOf("1 1/2 in"));
        Assert.Equal("", QuantityText.UnitOf("0.15 ± 0.03"));
        Assert.Equal("", QuantityText.UnitOf("nonsense"));
    }

    [Fact]
    public void A_comma_culture_changes_nothing()
    {
        var before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        comma.NumberFormat.NumberGroupSeparator = ".";
        CultureInfo.CurrentCulture = comma;
        try
        {
            Assert.Equal(0.0012, Read("1.2 mm").Si, 1e-15);
            Refused("1,2 mm");
            Assert.Equal("1.25 mm", ShowAs.Metric.Show(0.00125, Dimension.Length));
            Assert.Equal("1.25 mm", QuantityFormat.Exact(0.00125, "mm"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Reading_usual_texts_allocates_nothing()
    {
        string[] texts = ["1.2 mm", "0.165 ohm ± 5 %", "35 m3/h", "3 W/(m*K)", "22 degC ± 3 K", "1 1/2 in"];
        foreach (var text in texts)
        {
            Read(text);
        }

        var before = GC.GetAllocatedBytesForCurrentThread();
        foreach (var text in texts)
        {
            for (var i = 0; i < 100; i++)
            {
                Assert.True(QuantityText.TryParse(text, out _, out _));
            }
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
