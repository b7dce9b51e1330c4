using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Heat;
using Lampwright.Quantities;
using Lampwright.Steps;

namespace Lampwright.Tests.Evaluations;

/// <summary>What is not known of a light is said, and stands on the cautious side.</summary>
public class MeasuredSinkTests
{
    private static readonly Value HalfKPerW = new(0.5, 0.05, Origin.Given, "sink.main.measured");
    private static readonly LightDesign Sample = SampleLight.Design;

    private static LightDesign With(Sink sink) => Sample with { Sinks = [sink] };

    [Fact]
    public void A_sink_known_only_with_its_fan_is_guessed_and_told_for_the_stopped_fan()
    {
        var light = Evaluator.Evaluate(With(new Sink("main") { Measured = HalfKPerW }), 64);
        Assert.Contains(light.Findings, f => f.Rule == HeatRules.MeasuredForOneFanState);
        Assert.Contains(light.Findings, f => f.Rule == EvaluationRules.NeedsCutOut);
        var scenes = light.Heat!.Scenes;
        Assert.Equal(0.5, scenes[0].SinkKPerW.Value, 1e-6);
        Assert.Equal(4, scenes[2].SinkKPerW.Value, 1e-6);
        Assert.InRange(scenes[2].SinkKPerW.High / scenes[2].SinkKPerW.Low, 2.5, 6);
    }

    [Fact]
    public void A_measured_sink_whose_sizes_are_known_is_computed_for_the_stopped_fan()
    {
        var sized = Evaluator.Evaluate(With(Sample.Sinks[0] with { Measured = HalfKPerW }), 64);
        Assert.DoesNotContain(sized.Findings, f => f.Rule == HeatRules.MeasuredForOneFanState);
        Assert.Equal(0.5, sized.Heat!.Scenes[0].SinkKPerW.Value, 1e-6);
        Assert.InRange(sized.Heat.Scenes[0].FlowM3PerH.Value, 1, 36);
        var computed = Evaluator.Evaluate(Sample, 64);
        Assert.Equal(
            computed.Heat!.Scenes[2].SinkKPerW.Value,
            sized.Heat.Scenes[2].SinkKPerW.Value,
            1e-2 * sized.Heat.Scenes[2].SinkKPerW.Value
        );
    }

    [Fact]
    public void A_hot_sink_without_a_housing_is_told_as_hot_to_touch_and_one_in_a_housing_is_not()
    {
        static bool Told(LightDesign d) =>
            Evaluator.Evaluate(d, 16).Findings.Any(f => f.Rule == HeatRules.SurfaceTooHot && f.Path == "sink.main");
        Assert.False(Told(Sample));
        Assert.True(Told(Sample with { Fans = [Sample.Fans[0] with { Air = ["sink.main"] }] }));
        Assert.True(Told(Sample with { Fans = [] }));
    }

    [Fact]
    public void A_finding_tells_the_same_current_as_the_table()
    {
        var over = Sample with { Emitters = [Sample.Emitters[0] with { CurrentMax = new(1, 0, Origin.Given, "x") }] };
        var light = Evaluator.Evaluate(over, 16);
        var told = light.Findings.First(f => f.Rule == StepsRules.OverEmitter).Observed;
        var shown = light.Steps!.Combinations[0].CurrentA.Value;
        Assert.Equal(shown, double.Parse(told!.Split(' ')[0], CultureInfo.InvariantCulture), 2e-3);
    }
}
