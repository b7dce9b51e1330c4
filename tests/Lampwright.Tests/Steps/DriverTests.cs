using Lampwright.Steps;

namespace Lampwright.Tests.Steps;

public class DriverTests
{
    private static DriverSpec Spec(SenseSpec sense, double rated = 1.75) => new(rated, 0.3, 24, 42, 0.89, sense);

    [Fact]
    public void Threshold_is_the_parallel_parts_times_the_measured_current()
    {
        var t = SenseThreshold.From(Spec(new(["R33", "R33"], MeasuredA: 1.74)));
        Assert.Equal(0.165 * 1.74, t.VoltageV!.Value, 12);
        Assert.Equal(ThresholdBasis.MeasuredCurrent, t.Basis);
        Assert.Equal(1.74 / 1.75 - 1, t.Contradiction!.Value, 12);
    }

    [Fact]
    public void Measured_pair_goes_before_marks_and_marks_before_nothing()
    {
        var pair = SenseThreshold.From(Spec(new(["R33"], MeasuredPair: new(0.2, 1.5))));
        Assert.Equal(0.3, pair.VoltageV!.Value, 12);
        Assert.Equal(ThresholdBasis.MeasuredPair, pair.Basis);
        Assert.True(Math.Abs(pair.Contradiction!.Value) > 0.1);
        Assert.Null(SenseThreshold.From(Spec(new(["??"]))).VoltageV);
        Assert.Null(DriverModel.From(Spec(new([])), SenseThreshold.From(Spec(new([])))));
    }

    [Fact]
    public void Width_shrinks_with_what_is_measured()
    {
        var rated = Width(new(["R33", "R33"]));
        var current = Width(new(["R33", "R33"], MeasuredA: 1.74));
        var pair = Width(new([], MeasuredPair: new(0.165, 1.74)));
        Assert.True(pair < current && current < rated, $"{pair} {current} {rated}");
        static double Width(SenseSpec sense) => DriverModel.MethodErrors(SenseThreshold.From(Spec(sense)))[0].HalfWidth;
    }

    [Theory]
    [InlineData(0.0499, ThresholdLikelihood.Unusual)]
    [InlineData(0.0501, ThresholdLikelihood.Plausible)]
    [InlineData(0.4999, ThresholdLikelihood.Plausible)]
    [InlineData(0.5001, ThresholdLikelihood.Unusual)]
    [InlineData(1.25, ThresholdLikelihood.Unusual)]
    [InlineData(1.31, ThresholdLikelihood.Implausible)]
    [InlineData(0.019, ThresholdLikelihood.Implausible)]
    public void Likelihood_of_a_threshold(double volts, ThresholdLikelihood expected) =>
        Assert.Equal(expected, SenseThreshold.Judge(volts).Likelihood);

    [Fact]
    public void Current_follows_one_over_resistance_and_the_law_turns_about_the_known_point()
    {
        var d = new DriverModel(0.3, 0.2, 0, 0.9);
        Assert.Equal(d.CurrentA(0.2) / 2, d.CurrentA(0.4), 12);
        var bent = d.With(1, 0.95, 1);
        Assert.Equal(d.CurrentA(0.2), bent.CurrentA(0.2), 12);
        Assert.Equal(0.95 * d.CurrentA(0.2 * Math.E), bent.CurrentA(0.2 * Math.E), 12);
        Assert.Equal(0.25, d.SenseOhm(1.2), 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => d.SenseOhm(0));
    }

    [Fact]
    public void Input_is_output_plus_loss()
    {
        var d = new DriverModel(0.3, 0.2, 0, 0.9);
        Assert.Equal(d.InputW(50), 50 + d.LossW(50), 12);
        Assert.Equal(1.2 * d.LossW(50), d.With(1, 1, 1.2).LossW(50), 9);
        Assert.Equal(1, d.With(1, 1, -5).Efficiency);
    }
}
