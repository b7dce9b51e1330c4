using System.Globalization;
using Lampwright.Tables;

namespace Lampwright.Tests.Steps;

public class SeriesAndTablesTests
{
    [Theory]
    [InlineData("e-series.csv")]
    [InlineData("copper-class5.csv")]
    [InlineData("sense-thresholds.csv")]
    [InlineData("contact-resistance.csv")]
    public void Table_has_the_rows_and_the_sum_it_says(string file)
    {
        var t = TableResource.Read(file);
        Assert.Equal(int.Parse(t.Notes["rows"], CultureInfo.InvariantCulture), t.RowCount);
        Assert.Equal(double.Parse(t.Notes["sum"], CultureInfo.InvariantCulture), t.Sum, 6);
        Assert.NotEmpty(t.Notes["source"]);
    }

    [Theory]
    [InlineData("E48", 48)]
    [InlineData("E96", 96)]
    [InlineData("E192", 192)]
    public void Fine_series_follow_the_formula_but_for_one_value(string name, int n)
    {
        var values = ESeries.Decade(name);
        Assert.Equal(n, values.Count);
        for (var i = 0; i < n; i++)
        {
            var formula = Math.Round(100 * Math.Pow(10, (double)i / n), MidpointRounding.AwayFromZero);
            Assert.Equal(formula == 919 && n == 192 ? 920 : formula, Math.Round(values[i] * 100));
        }
    }

    [Fact]
    public void Values_over_decades_are_exact_and_ascending()
    {
        var values = ESeries.Between("E24", 0.09, 20);
        Assert.Equal(0.091, values[0]);
        Assert.Contains(0.39, values);
        Assert.Equal(20, values[^1]);
        Assert.Equal(values.Order(), values);
        Assert.Throws<ArgumentException>(() => ESeries.Between("E5", 1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => ESeries.Between("E24", 0, 2));
    }

    [Fact]
    public void Copper_between_the_sizes_lies_between_them()
    {
        Assert.InRange(CopperWire.OhmPerMetre(0.6), CopperWire.OhmPerMetre(0.75), CopperWire.OhmPerMetre(0.5));
        Assert.Equal(1.91e-3 * 10 / 20, CopperWire.OhmPerMetre(20), 9);
        Assert.Equal(1, CopperWire.TemperatureFactor(293.15), 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => CopperWire.OhmPerMetre(0));
    }

    [Fact]
    public void Unknown_table_is_the_callers_bug() =>
        Assert.Throws<ArgumentException>(() => TableResource.Read("none.csv"));
}
