using Lampwright.Findings;
using Lampwright.Readings;

namespace Lampwright.Tests.Readings;

public class ReadingsTests
{
    private static readonly Meter Good = new("lux meter", 1, 0, 0, true);

    private static Reading Lux(double value, int line = 2, string switches = "1111") =>
        new(line, ReadingKind.Illuminance, switches, "", value, "lux meter");

    private static Comparison Compared(double value, Meter? meter = null, int line = 2) =>
        Comparison.Of(Lux(value, line), meter ?? Good, new Prediction(1000, 900, 1200));

    private static bool Raises(IEnumerable<Finding> findings, Rule rule) => findings.Any(f => f.Rule == rule);

    private static IReadOnlyList<Finding> Found(Meter meter, params Comparison[] comparisons) =>
        ReadingsFindings.Of("readings", comparisons, _ => meter);

    [Theory]
    [InlineData(1000, 0, 0)]
    [InlineData(1100, 0.1, 0.5)]
    [InlineData(1200, 0.2, 1)]
    [InlineData(950, -0.05, -0.5)]
    [InlineData(800, -0.2, -2)]
    public void Bands_are_counted_on_the_side_of_the_reading(double value, double difference, double bands)
    {
        var comparison = Compared(value);
        Assert.Equal(difference, comparison.Difference!.Value, 1e-12);
        Assert.Equal(bands, comparison.InBands!.Value, 1e-12);
        Assert.Equal(bands, comparison.InJointBands!.Value, 1e-12);
    }

    [Fact]
    public void A_meter_spread_widens_the_band_that_is_judged_by()
    {
        var comparison = Compared(1300, Good with { FactorHalfWidth = 0.2 });
        Assert.True(comparison.InJointBands < comparison.InBands);
    }

    [Fact]
    public void A_meter_factor_is_applied_before_comparing() =>
        Assert.Equal(0, Compared(800, Good with { Factor = 1.25 }).Difference!.Value, 1e-12);

    [Fact]
    public void A_prediction_without_band_gives_no_nonsense()
    {
        var sharp = Comparison.Of(Lux(1001), Good, new Prediction(1000, 1000, 1000));
        Assert.Equal(999, sharp.InBands);
        Assert.Equal(0, Comparison.Of(Lux(1000), Good, new Prediction(1000, 1000, 1000)).InBands);
    }

    [Fact]
    public void Temperatures_are_compared_by_their_rise()
    {
        var reading = new Reading(3, ReadingKind.Temperature, "1111", "sink", 333.15, "thermocouple");
        var comparison = Comparison.Of(reading, Good, new Prediction(328.15, 323.15, 333.15), 293.15);
        Assert.Equal(5.0 / 35, comparison.Difference!.Value, 1e-12);
    }

    [Fact]
    public void Band_rules_speak_at_one_and_two_bands()
    {
        Assert.False(Raises(Found(Good, Compared(1199)), ReadingsRules.OutsideBand));
        Assert.True(Raises(Found(Good, Compared(1201)), ReadingsRules.OutsideBand));
        Assert.False(Raises(Found(Good, Compared(1399)), ReadingsRules.FarOutsideBand));
        Assert.True(Raises(Found(Good, Compared(1401)), ReadingsRules.FarOutsideBand));
    }

    [Fact]
    public void A_reading_without_prediction_is_told()
    {
        var none = Comparison.Of(Lux(5), Good, null);
        Assert.Null(none.Difference);
        Assert.True(Raises(Found(Good, none), ReadingsRules.NothingPredicted));
        Assert.False(Raises(Found(Good, Compared(1000)), ReadingsRules.NothingPredicted));
    }

    [Fact]
    public void A_meter_outside_its_span_is_told()
    {
        var meter = Good with { Least = 50, Most = 1000 };
        Assert.True(Raises(Found(meter, Compared(1001, meter)), ReadingsRules.MeterExtrapolated));
        Assert.False(Raises(Found(meter, Compared(1000, meter)), ReadingsRules.MeterExtrapolated));
    }

    [Fact]
    public void An_uncalibrated_rough_meter_is_told_once()
    {
        var phone = Meter.Usual("phone", ReadingKind.Illuminance);
        var findings = Found(phone, Compared(1000, phone), Compared(1010, phone, 3));
        Assert.Single(findings, f => f.Rule == ReadingsRules.MeterUncalibrated);
        Assert.False(
            Raises(
                Found(phone with { FactorHalfWidth = 0.099 }, Compared(1000, phone)),
                ReadingsRules.MeterUncalibrated
            )
        );
        Assert.False(
            Raises(Found(phone with { Calibrated = true }, Compared(1000, phone)), ReadingsRules.MeterUncalibrated)
        );
    }

    [Fact]
    public void An_outlier_among_readings_is_told()
    {
        double[] even = [1000, 1004, 996, 1002, 998, 1001];
        double[] odd = [1000, 1004, 996, 1002, 998, 1101];
        Assert.False(Raises(Found(Good, [.. even.Select((v, i) => Compared(v, null, i + 2))]), ReadingsRules.Outlier));
        Assert.True(Raises(Found(Good, [.. odd.Select((v, i) => Compared(v, null, i + 2))]), ReadingsRules.Outlier));
    }

    [Fact]
    public void One_sided_readings_are_told()
    {
        double[] high = [1110, 1120, 1130, 1140];
        double[] mixed = [1110, 1120, 1130, 1090];
        Assert.True(Raises(Found(Good, [.. high.Select((v, i) => Compared(v, null, i + 2))]), ReadingsRules.OneSided));
        Assert.False(
            Raises(Found(Good, [.. mixed.Select((v, i) => Compared(v, null, i + 2))]), ReadingsRules.OneSided)
        );
    }

    [Fact]
    public void Rows_counts_and_thresholds_are_told()
    {
        Assert.Equal(ReadingsRules.Unreadable, ReadingsFindings.OfRow("readings", 7, "'abc' is not a number.").Rule);
        Assert.Equal(ReadingsRules.TooFew, ReadingsFindings.OfCount("readings", "sink", 2)?.Rule);
        Assert.Null(ReadingsFindings.OfCount("readings", "sink", 3));
        var (least, most) = SenseThreshold.PlausibleV;
        Assert.Equal(
            ReadingsRules.ThresholdImplausible,
            ReadingsFindings.OfThreshold("driver.main.sense", most * 1.001)?.Rule
        );
        Assert.Equal(
            ReadingsRules.ThresholdImplausible,
            ReadingsFindings.OfThreshold("driver.main.sense", least * 0.999)?.Rule
        );
        Assert.Null(ReadingsFindings.OfThreshold("driver.main.sense", most * 0.999));
        Assert.Null(ReadingsFindings.OfThreshold("driver.main.sense", least * 1.001));
    }

    [Fact]
    public void One_pair_gives_the_threshold_with_its_uncertainty()
    {
        // 0.165 ohm ± 0.5 mohm and 1.74 A ± 20 mA as standard uncertainties: 287.1 mV, u² = (0.165·0.02)² + (1.74·0.0005)²
        var v = SenseThreshold.FromOne(new(new(0.165, 0.0005), new(1.74, 0.02)), new(0, 0));
        Assert.Equal(0.2871, v.Value, 1e-12);
        Assert.Equal(Math.Sqrt((0.0033 * 0.0033) + (0.00087 * 0.00087)), v.Uncertainty, 1e-12);
    }

    [Fact]
    public void Several_pairs_give_threshold_and_the_resistance_between()
    {
        SensePair[] pairs =
        [
            .. new[] { 0.1, 0.2, 0.4, 0.8 }.Select(r => new SensePair(new(r, 0), new(0.3 / (r + 0.02), 0))),
        ];
        var (threshold, between) = SenseThreshold.FromSeveral(pairs);
        Assert.Equal(0.3, threshold.Value, 1e-9);
        Assert.Equal(0.02, between.Value, 1e-9);
    }

    [Fact]
    public void Sink_resistance_is_rise_over_heat()
    {
        // 60 W, 30 % of it light, 34 K rise: 0.8095 K/W
        var reading = new SinkReading(new(60, 0.6), new(0.3, 0.03), new(329, 1), new(295, 0.5));
        var r = SinkResistance.KelvinPerWatt(reading);
        Assert.Equal(34 / 42.0, r.Value, 1e-12);
        var expected = Math.Sqrt(
            Math.Pow(1 / 42.0, 2)
                + Math.Pow(0.5 / 42, 2)
                + Math.Pow(r.Value * 0.01, 2)
                + Math.Pow(r.Value * 0.03 / 0.7, 2)
        );
        Assert.Equal(expected, r.Uncertainty, 1e-12);
        Assert.Equal(r.Value, SinkResistance.KelvinPerWatt([reading, reading]).Value, 1e-12);
    }

    [Fact]
    public void A_spread_goes_to_an_uncertainty_and_back() =>
        Assert.Equal(0.05, Estimate.Between(1, 0.05).HalfWidth, 1e-15);

    [Theory]
    [InlineData("phone", 0.25)]
    [InlineData("Lux meter", 0.08)]
    [InlineData("tea leaves", 0.25)]
    public void An_unknown_meter_is_taken_as_the_poorest(string kind, double half) =>
        Assert.Equal(half, Meter.Usual(kind, ReadingKind.Illuminance).FactorHalfWidth);

    [Fact]
    public void Bad_arguments_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StraightLine.Fit([1, 2], [1, 2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => StraightLine.Fit([1, 1, 1], [1, 2, 3]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outliers.Grubbs([1, double.NaN, 3]));
        Assert.Throws<ArgumentOutOfRangeException>(() => SenseThreshold.FromOne(new(new(0, 0), new(1, 0)), new(0, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Good.Corrected(double.NaN));
    }

    [Fact]
    public void Every_rule_is_numbered_once() =>
        Assert.Equal(
            Enumerable.Range(1, ReadingsRules.All.Count).Select(i => $"REA{i:000}"),
            ReadingsRules.All.Select(r => r.Code)
        );
}
