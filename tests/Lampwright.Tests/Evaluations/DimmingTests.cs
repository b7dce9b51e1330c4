using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Draws;
using Lampwright.Files.Opening;
using Lampwright.Quantities;
using Lampwright.Steps;
using Lampwright.Steps.Ways;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>Ways of dimming and the driver's board on the one road: what they are told, their bands, and that they answer where no chain does.</summary>
public sealed class DimmingTests
{
    private static readonly LightDesign Sample = SampleLight.Design;

    [Theory]
    [InlineData("herbarium", WayKind.SteppedChain)]
    [InlineData("boatshed", WayKind.ParallelBranches)]
    [InlineData("puppet-theatre", WayKind.SteppedChain)]
    public void Every_example_has_all_ways_and_the_one_it_chose_works(string name, WayKind chosen)
    {
        var opened = OpenedLight.At(Path.Combine(Repository.Root, "examples", name, name + ".toml"));
        Assert.Empty(opened.Problems);
        var light = opened.Prepare().WithBands(64, TestContext.Current.CancellationToken);
        Assert.Equal(Enum.GetValues<WayKind>(), light.Ways.Select(w => w.Way.Kind));
        var own = Assert.Single(light.Ways, w => w.IsChosen);
        Assert.Equal(chosen, own.Way.Kind);
        Assert.Equal(Verdict.Works, own.Way.Verdict);
        Assert.True(light.Board!.Reading.IsPlausible);
        Assert.Empty(light.Board.Reading.Stops);
        Assert.Equal(light.Steps!.SenseThresholdV, light.Board.ThresholdV);
        Assert.False(light.HasStop);
    }

    [Fact]
    public void Nominal_numbers_are_those_of_the_judge_and_bands_hold_them()
    {
        var light = Evaluator.Evaluate(Sample, 256, TestContext.Current.CancellationToken);
        foreach (var (way, answer) in light.Ways.Select(w => (w.Way, w)))
        {
            Same(way.LightShare?.Least, answer.LeastShare);
            Same(way.LightShare?.Most, answer.MostShare);
            Same(way.EfficiencyAtHalf, answer.EfficiencyAtHalf);
            Same(way.HeatAtHalfW, answer.HeatAtHalfW);
            Same(way.AddedHeatAtHalfW, answer.AddedHeatAtHalfW);
        }

        static void Same(double? told, Predicted? predicted)
        {
            Assert.Equal(told is null, predicted is null);
            if (told is { } value && predicted is { } p)
            {
                Assert.Equal(value, p.Value, 1e-9 * Math.Abs(value));
                Assert.True(p.Low <= p.Value && p.Value <= p.High);
            }
        }
    }

    [Fact]
    public void Efficiency_of_a_sense_way_scatters_as_the_driver_does_and_not_at_all_with_a_certain_driver()
    {
        // Input over output of every position hangs on the driver's efficiency alone, and so does that of a way in its sense path.
        var light = Evaluator.Evaluate(Sample, 512, TestContext.Current.CancellationToken);
        var way = light.Ways.Single(w => w.Way.Kind == WayKind.SteppedChain).EfficiencyAtHalf!.Value;
        Assert.Equal(0.89, way.Value, 1e-9);
        Assert.InRange(way.High - way.Low, 0.02, 0.06);
        var nominal = Evaluator.Evaluate(Sample, 0, TestContext.Current.CancellationToken);
        Assert.All(
            nominal.Ways,
            w => Assert.True(w.EfficiencyAtHalf is not { } p || (p.Low == p.Value && p.High == p.Value))
        );
    }

    [Fact]
    public void The_judge_is_told_the_junction_that_the_light_came_to_rest_at()
    {
        var light = Evaluator.Evaluate(Sample, 0, TestContext.Current.CancellationToken);
        var warm = light.Steps!.Combinations[0].JunctionC.Value + 273.15;
        var circuit = light.Ways.Single(w => w.Way.Kind == WayKind.SeriesResistor).Way.Circuit;
        Assert.Equal(warm, Assert.IsType<EmitterLine>(circuit.Load).JunctionK, 1e-6);
    }

    [Fact]
    public void Ways_and_board_answer_where_nothing_tells_the_threshold()
    {
        var driver = Sample.Drivers[0] with { Sense = null };
        var light = Evaluator.Evaluate(Sample with { Drivers = [driver] }, 64, TestContext.Current.CancellationToken);
        Assert.Null(light.Steps);
        Assert.Equal(13, light.Ways.Count);
        Assert.Null(light.Board!.ThresholdV);
        Assert.Equal(["STP001", "STP003"], light.Board.Reading.Stops);
        Assert.Contains(light.Findings, f => f.Code == "STP020");
        Assert.Contains(light.Findings, f => f.Code == "STP001");
        var chain = light.Ways.Single(w => w.Way.Kind == WayKind.SteppedChain);
        Assert.True(chain.IsChosen);
        Assert.Equal(Verdict.Stop, chain.Way.Verdict);
        Assert.NotNull(light.Ways.Single(w => w.Way.Kind == WayKind.OtherDriver).EfficiencyAtHalf);
    }

    [Fact]
    public void Ways_and_board_answer_where_the_junction_finds_no_rest()
    {
        var emitter = Sample.Emitters[0] with { JunctionToCase = Value.Exact(1000) };
        var light = Evaluator.Evaluate(Sample with { Emitters = [emitter] }, 64, TestContext.Current.CancellationToken);
        Assert.Null(light.Steps);
        Assert.Equal(13, light.Ways.Count);
        Assert.NotNull(light.Board!.ThresholdV);
        var circuit = light.Ways.Single(w => w.Way.Kind == WayKind.SeriesResistor).Way.Circuit;
        Assert.Equal(338.15, Assert.IsType<EmitterLine>(circuit.Load).JunctionK, 1e-9);
        Assert.All(light.Ways, w => Assert.True(w.EfficiencyAtHalf is not { } p || p.High - p.Low < 0.2));
    }

    [Fact]
    public void A_driver_alone_has_a_board_and_no_ways_and_nothing_has_neither()
    {
        var cancel = TestContext.Current.CancellationToken;
        var alone = Evaluator.Evaluate(Sample with { Emitters = [] }, 64, cancel);
        Assert.Empty(alone.Ways);
        Assert.Equal(0.195 * 1.74, alone.Board!.ThresholdV!.Value.Value, 1e-9);
        Assert.True(alone.Board.ThresholdV.Value.High > alone.Board.ThresholdV.Value.Low);
        var nothing = Evaluator.Evaluate(Sample with { Drivers = [] }, 0, cancel);
        Assert.Empty(nothing.Ways);
        Assert.Null(nothing.Board);
    }

    [Theory]
    [InlineData(0, Lampwright.Design.Arrangement.SeriesChain, WayKind.FixedSense)]
    [InlineData(2, Lampwright.Design.Arrangement.SeriesChain, WayKind.SteppedChain)]
    [InlineData(2, Lampwright.Design.Arrangement.ParallelBranches, WayKind.ParallelBranches)]
    [InlineData(2, Lampwright.Design.Arrangement.Selector, WayKind.SelectorOpening)]
    public void The_chosen_way_is_what_steps_says(int switches, Lampwright.Design.Arrangement arrangement, WayKind kind)
    {
        var steps = Sample.Steps! with { Switches = switches, Arrangement = arrangement, Chosen = null };
        var light = Evaluator.Evaluate(Sample with { Steps = steps }, 0, TestContext.Current.CancellationToken);
        Assert.Equal(kind, Assert.Single(light.Ways, w => w.IsChosen).Way.Kind);
    }

    [Fact]
    public void Without_steps_no_way_is_chosen()
    {
        var light = Evaluator.Evaluate(Sample with { Steps = null }, 0, TestContext.Current.CancellationToken);
        Assert.Equal(13, light.Ways.Count);
        Assert.DoesNotContain(light.Ways, w => w.IsChosen);
    }

    [Fact]
    public void A_number_that_some_draws_lack_has_the_band_of_those_that_have_it()
    {
        var rows = Enumerable.Range(1, 1000).Select(i => (double[])[i % 2 == 0 ? i : double.NaN, double.NaN]).ToArray();
        var bands = Bands.Of([500, 7], rows, default);
        Assert.Equal(51, bands.At(0).Low, 2.0);
        Assert.Equal(951, bands.At(0).High, 2.0);
        Assert.Equal(new Predicted(7, 7, 7), bands.At(1));
    }

    [Fact]
    public void Supply_and_input_reach_the_judge_and_what_it_finds_is_a_finding()
    {
        var driver = Sample.Drivers[0] with { InputLeast = Value.Exact(180), InputMost = Value.Exact(264) };
        var enough = Supplied(driver, 230);
        Assert.DoesNotContain(enough.Findings, f => f.Code is "STP026" or "STP027");
        var low = Supplied(driver, 110);
        Assert.Contains(low.Findings, f => f.Code == "STP026");
        Assert.True(low.HasStop);
        Assert.Contains(Supplied(driver, 277).Findings, f => f.Code == "STP027");
    }

    private static LightEvaluation Supplied(Driver driver, double volts) =>
        Evaluator.Evaluate(
            Sample with
            {
                Drivers = [driver],
                Place = Sample.Place with { Supply = new(SupplyKind.Ac, Value.Exact(volts), Value.Exact(50)) },
            },
            0,
            TestContext.Current.CancellationToken
        );
}
