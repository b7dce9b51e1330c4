using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Findings;
using Lampwright.Quantities;

namespace Lampwright.Tests.Evaluations;

public class EvaluatorTests
{
    private static readonly LightEvaluation Sample = Evaluator.Evaluate(SampleLight.Design, 128);

    [Fact]
    public void Power_in_is_heat_and_light_out_at_every_position()
    {
        var heat = Sample.Heat!.Scenes[0].Points.ToDictionary(p => p.Switches);
        var away =
            Sample.Light!.Efficiency.Value + Sample.Light.ReflectorAbsorbs.Value + Sample.Light.DiffuserAbsorbs.Value;
        foreach (var c in Sample.Steps!.Combinations)
        {
            var light = away * c.FluxLm.Value / SampleLight.Design.Emitters[0].RadiationEfficacy.Nominal;
            Assert.Equal(c.EmitterW.Value, c.CurrentA.Value * c.VoltageV.Value, 1e-9);
            Assert.Equal(c.EmitterW.Value, heat[c.Switches].HeatW.Value + light, 1e-6);
            Assert.Equal(c.InputW.Value, c.EmitterW.Value + c.DriverLossW.Value, 1e-9);
        }
    }

    [Fact]
    public void Light_that_leaves_and_light_that_is_absorbed_are_no_more_than_all_light()
    {
        var light = Sample.Light!;
        var sum = light.Efficiency.Value + light.ReflectorAbsorbs.Value + light.DiffuserAbsorbs.Value;
        Assert.InRange(sum, 0.9, 1 + 1e-9);
    }

    [Fact]
    public void Drops_from_junction_to_room_add_up_to_the_rise_of_the_junction()
    {
        var brightest = Sample.Steps!.Combinations[0];
        var drops = Sample.Heat!.Staircase.Sum(s => s.DropK.Value);
        Assert.Equal(brightest.JunctionC.Value - Sample.Heat.Scenes[0].AmbientC.Value, drops, 1e-4);
    }

    [Fact]
    public void Currents_fall_as_resistances_grow()
    {
        var combinations = Sample.Steps!.Combinations;
        Assert.Equal(16, combinations.Count);
        Assert.Equal("1111", combinations[0].Switches);
        for (var i = 1; i < combinations.Count; i++)
        {
            Assert.True(combinations[i].CurrentA.Value <= combinations[i - 1].CurrentA.Value);
            Assert.True(combinations[i].ResistanceOhm.Value >= combinations[i - 1].ResistanceOhm.Value);
        }
    }

    [Fact]
    public void A_hot_room_and_a_stopped_fan_make_the_junction_hotter()
    {
        foreach (var c in Sample.Steps!.Combinations)
        {
            Assert.True(c.JunctionHotC.Value > c.JunctionC.Value);
            Assert.True(c.JunctionFanStoppedC.Value > c.JunctionC.Value);
        }
    }

    [Fact]
    public void Every_band_holds_its_nominal_result_and_every_number_is_finite()
    {
        var numbers = PredictedNumbers.Of(Sample).ToList();
        Assert.True(numbers.Count > 500, $"{numbers.Count} numbers");
        foreach (var (path, n) in numbers)
        {
            Assert.True(double.IsFinite(n.Value) && double.IsFinite(n.Low) && double.IsFinite(n.High), path);
            Assert.True(n.Low <= n.Value && n.Value <= n.High, $"{path}: {n}");
        }
    }

    [Fact]
    public void The_nominal_result_is_there_before_the_bands_and_does_not_change_with_them()
    {
        var nominal = Evaluator.Evaluate(SampleLight.Design, 0);
        var (closed, open) = (PredictedNumbers.Of(nominal).ToList(), PredictedNumbers.Of(Sample).ToList());
        Assert.Equal(0, nominal.Draws);
        Assert.Equal(open.Select(n => n.Path), closed.Select(n => n.Path));
        Assert.All(closed.Zip(open), p => Assert.Equal(p.First.Number.Value, p.Second.Number.Value));
        Assert.All(closed, n => Assert.True(n.Number.Low == n.Number.Value && n.Number.High == n.Number.Value));
    }

    [Fact]
    public void The_same_design_gives_the_same_bands()
    {
        var again = Evaluator.Evaluate(SampleLight.Design, 128);
        Assert.Equal(
            PredictedNumbers.Of(Sample).Select(n => n.Number),
            PredictedNumbers.Of(again).Select(n => n.Number)
        );
        Assert.Equal(Sample.Influences, again.Influences);
    }

    [Fact]
    public void A_spread_elsewhere_leaves_the_other_bands_as_they_were()
    {
        var design = SampleLight.Design;
        var driver = design.Drivers[0] with { Mass = new Value(0.26, 0.05, Origin.Given, "driver.main.mass") };
        var other = Evaluator.Evaluate(design with { Drivers = [driver] }, 128);
        Assert.NotEqual(Sample.FitUp!.TotalMassKg, other.FitUp!.TotalMassKg);
        Assert.Equal(
            Sample.Steps!.Combinations.Select(c => c.JunctionHotC),
            other.Steps!.Combinations.Select(c => c.JunctionHotC)
        );
    }

    [Fact]
    public void A_wider_spread_makes_a_wider_band()
    {
        var design = SampleLight.Design;
        var place = design.Place with { Ambient = new Value(294.15, 12, Origin.Given, "place.ambient") };
        var wide = Evaluator.Evaluate(design with { Place = place }, 128);
        double Width(LightEvaluation e) => e.Steps!.Combinations[0].JunctionC is var p ? p.High - p.Low : 0;
        Assert.True(Width(wide) > 1.3 * Width(Sample), $"{Width(wide)} against {Width(Sample)}");
    }

    [Fact]
    public void Whatever_is_missing_is_told_and_the_rest_is_still_computed()
    {
        var design = SampleLight.Design;
        var without = new (string What, LightDesign Design)[]
        {
            ("emitter", design with { Emitters = [] }),
            ("driver", design with { Drivers = [] }),
            ("steps", design with { Steps = null }),
            ("interface", design with { Interfaces = [] }),
            ("sink", design with { Sinks = [] }),
            ("fan", design with { Fans = [] }),
            ("reflector", design with { Reflectors = [] }),
            ("diffuser", design with { Diffusers = [] }),
            ("subject", design with { Subject = null }),
            ("sheet", design with { Sheets = [] }),
            ("part", design with { Parts = [] }),
            ("everything", new LightDesign()),
        };
        foreach (var (what, left) in without)
        {
            var e = Evaluator.Evaluate(left, 32);
            Assert.All(PredictedNumbers.Of(e), n => Assert.True(double.IsFinite(n.Number.Value), $"{what}: {n.Path}"));
            Assert.Equal(what is not ("emitter" or "driver" or "everything"), e.Steps is not null);
            Assert.Equal(what is not ("sheet" or "part" or "everything"), e.Metal is not null);
        }

        Assert.Contains(
            Evaluator.Evaluate(design with { Emitters = [] }, 0).Findings,
            f => f.Rule == EvaluationRules.NoEmitter
        );
        Assert.Contains(
            Evaluator.Evaluate(design with { Drivers = [] }, 0).Findings,
            f => f.Rule == EvaluationRules.NoDriver
        );
        Assert.Contains(
            Evaluator.Evaluate(design with { Sinks = [] }, 0).Findings,
            f => f.Rule == EvaluationRules.NoSink
        );
    }

    [Fact]
    public void Stops_come_first_among_the_findings()
    {
        var driver = SampleLight.Design.Drivers[0] with { Isolated = Known.Unknown };
        var findings = Evaluator.Evaluate(SampleLight.Design with { Drivers = [driver] }, 0).Findings;
        Assert.Equal(Severity.Stop, findings[0].Severity);
        Assert.True(findings[0].Rule.ProtectsPeople);
        Assert.Equal(findings.Select(f => f.Severity).OrderDescending(), findings.Select(f => f.Severity));
    }

    [Theory]
    [InlineData(TargetKind.Lux, 4000.0, 2000.0, 1000.0)]
    [InlineData(TargetKind.Percent, 1.0, 0.5, 0.25)]
    [InlineData(TargetKind.Currents, 1.4, 0.7, 0.35)]
    public void A_chain_that_is_not_chosen_is_searched_for_the_wanted_steps(TargetKind kind, params double[] wanted)
    {
        var from = kind == TargetKind.Percent ? new Value(1.4, 0, Origin.Given, "from") : null;
        var list = wanted.Select((w, i) => new Value(w, 0, Origin.Given, $"w{i}")).ToList();
        var steps = SampleLight.Design.Steps! with { Chosen = null, Targets = new(kind, from, 0, 0, list) };
        var answer = Evaluator.Evaluate(SampleLight.Design with { Steps = steps }, 0).Steps!;
        Assert.Equal("first search", answer.ChosenBy);
        Assert.Equal(3, answer.Targets.Count);
        Assert.All(answer.Targets, t => Assert.InRange(t.ErrorStops.Value, -0.34, 0.34));
    }
}
