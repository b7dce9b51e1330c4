using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Heat;
using Lampwright.Quantities;

namespace Lampwright.Tests.Evaluations;

/// <summary>Every form of sink, and what the file says of fan and air, on the whole road.</summary>
public class SinkDesignTests
{
    private static readonly LightDesign Sample = SampleLight.Design;
    private static readonly Sink Fins = Sample.Sinks[0];
    private static readonly Fan Fan = Sample.Fans[0];

    private static readonly Sink Bare = Fins with { FinCount = 0, FinHeight = null, FinThickness = null };

    private static readonly Sink Pins = Bare with { Pins = new(10, 14, V(0.003), V(0.045), true) };

    private static readonly Sink Tower = Bare with
    {
        Pipes = new(6, V(0.006), V(0.4, 0.2, "sink.main.pipes.resistance"), V(40)),
        Stack = new(40, V(0.09), V(0.05), V(0.0004), V(0.0018)),
    };

    private static Value V(double value, double half = 0, string path = "") => new(value, half, Origin.Given, path);

    private static LightDesign With(Sink sink) => Sample with { Sinks = [sink] };

    private static LightDesign With(Fan fan) => Sample with { Fans = [fan] };

    private static bool Told(LightDesign design, Lampwright.Findings.Rule rule) =>
        Evaluator.Evaluate(design, 16).Findings.Any(f => f.Rule == rule);

    [Fact]
    public void Every_form_is_evaluated_with_bands_and_its_method_is_named()
    {
        foreach (var (sink, word) in new[] { (Fins, "fins"), (Pins, "pins"), (Tower, "heat pipes"), (Bare, "fins") })
        {
            var heat = Evaluator.Evaluate(With(sink), 64).Heat!;
            Assert.Contains(word, heat.Staircase[3].Method, StringComparison.Ordinal);
            var r = heat.Scenes[0].SinkKPerW;
            Assert.True(r.Low < r.Value && r.Value < r.High, $"{word}: {r}");
            Assert.True(heat.Scenes[2].SinkKPerW.Value > r.Value, word);
        }
    }

    [Fact]
    public void Losses_of_the_air_are_listed_with_bands_and_add_up_to_the_fan()
    {
        var light = Evaluator.Evaluate(
            With(Fan with { Losses = [new("guard", null, V(0.8), null, null, null, "fan.main.losses[0]")] }),
            64
        );
        var (air, scene) = (light.Heat!.Air.Value!, light.Heat.Scenes[0]);
        Assert.Contains(air.Losses, l => l.Path == "sink.main");
        Assert.Contains(air.Losses, l => l.Path == "fan.main.losses[0]");
        Assert.Equal(scene.PressurePa.Value, air.Losses.Sum(l => l.PressurePa.Value), 1e-3 * scene.PressurePa.Value);
        Assert.All(air.Losses, l => Assert.True(l.PressurePa.Low < l.PressurePa.High, l.Path));
        Assert.Equal(air.Losses.OrderByDescending(l => l.PressurePa.Value), air.Losses);
    }

    [Fact]
    public void The_least_voltage_of_a_step_holds_its_junction_at_the_limit()
    {
        var limit = Evaluator.Evaluate(Sample, 16).Heat!.Scenes[1].Points[0].JunctionC.Value + 1.5;
        var tight = Sample with { Emitters = [Sample.Emitters[0] with { JunctionMax = V(limit + 273.15) }] };
        var light = Evaluator.Evaluate(tight, 64);
        var steps = light.Heat!.Air.Value!.FanSteps;
        Assert.Equal(light.Steps!.Combinations.Select(c => c.Switches), steps.Select(s => s.Switches));
        var some = 0;
        foreach (var step in steps.Where(s => s.LeastV is { Value: > 6.01 }))
        {
            var slow = Evaluator.Evaluate(tight with { Fans = [Fan with { RunAt = V(step.LeastV!.Value.Value) }] }, 16);
            var at = slow.Heat!.Scenes[1].Points.Single(p => p.Switches == step.Switches);
            Assert.Equal(limit, at.JunctionC.Value, 0.3);
            Assert.Equal(50 * Math.Log10(step.LeastV.Value.Value / 10), step.NoiseDb!.Value.Value, 1e-6);
            Assert.True(step.LeastV.Value.High >= step.LeastV.Value.Value);
            some++;
        }

        Assert.True(some > 0, "no step needs more than the floor: the case says nothing");
        var volts = steps.Where(s => s.LeastV is not null).Select(s => s.LeastV!.Value.Value).ToList();
        Assert.Equal(volts.OrderDescending(), volts);
    }

    [Fact]
    public void A_step_that_no_voltage_holds_is_told_and_others_are_not()
    {
        LightDesign Limit(double kelvin) =>
            Sample with
            {
                Emitters = [Sample.Emitters[0] with { JunctionMax = V(kelvin) }],
            };
        Assert.True(Told(Limit(318), HeatRules.NoFanSpeedHolds));
        Assert.False(Told(Sample, HeatRules.NoFanSpeedHolds));

        // Over its limit as it runs, but more voltage is left.
        var slow = Limit(345) with
        {
            Fans = [Fan with { RunAt = V(4.5) }],
        };
        Assert.False(Told(slow, HeatRules.NoFanSpeedHolds));
    }

    [Fact]
    public void An_opening_is_advised_for_a_wanted_temperature()
    {
        Assert.Null(Evaluator.Evaluate(Sample, 16).Heat!.Air.Value!.Opening);
        var hot = Evaluator.Evaluate(Sample, 16).Heat!.Scenes[1].Points[0].JunctionC.Value;
        var tight = Sample with { Emitters = [Sample.Emitters[0] with { JunctionMax = V(hot + 273.15 + 9.5) }] };
        var unasked = Evaluator.Evaluate(tight, 64).Heat!.Air.Value!.Opening!;
        Assert.True(unasked.Times.Value > 1.01, $"{unasked.Times}");
        Assert.All(unasked.Openings, o => Assert.True(o.OpenCm2 > 0));
        var now = Evaluator.Evaluate(Sample, 16).Heat!.Scenes[1].Points[0].SinkC.Value;
        var wish = With(Fins with { Wanted = V(now + 273.15 - 0.5) });
        var wider = Evaluator.Evaluate(wish, 64).Heat!.Air.Value!.Opening!;
        Assert.True(wider.Times.Value > 1.01, $"{wider.Times}");
        Assert.Equal(now - 0.5, wider.WantedC, 1e-6);
        Assert.Equal(wider.Openings[0].OpenCm2 * wider.Times.Value, wider.Openings[0].WantedCm2.Value, 1e-6);
        Assert.False(Told(wish, HeatRules.NoOpeningReaches));
        Assert.True(Told(With(Fins with { Wanted = V(306) }), HeatRules.NoOpeningReaches));
    }

    [Fact]
    public void Trials_stand_for_the_state_of_the_fan_they_were_made_in()
    {
        var both = With(
            new Sink("main") { Trials = [new(V(20), V(9), false), new(V(10), V(22), true), new(V(30), V(52), true)] }
        );
        var light = Evaluator.Evaluate(both, 32);
        Assert.Equal("measured", light.Heat!.SinkFrom);
        Assert.Equal(0.45, light.Heat.Scenes[0].SinkKPerW.Value, 1e-3);
        var still = light.Heat.Scenes[2];
        var (heat, rise) = (still.Points[0].HeatW.Value, still.Points[0].SinkC.Value - still.AmbientC.Value);
        Assert.Equal(22 * Math.Pow(heat / 10, Math.Log(52.0 / 22) / Math.Log(3)), rise, 0.01 * rise);
        Assert.DoesNotContain(light.Findings, f => f.Rule == HeatRules.MeasuredForOneFanState);
        var one = both with { Sinks = [both.Sinks[0] with { Trials = [new(V(10), V(22), true)] }] };
        var guessed = Evaluator.Evaluate(one, 16);
        Assert.Contains(guessed.Findings, f => f.Rule == HeatRules.MeasuredForOneFanState);
        Assert.Equal(
            guessed.Heat!.Scenes[2].SinkKPerW.Value,
            guessed.Heat.Scenes[0].SinkKPerW.Value,
            0.1 * guessed.Heat.Scenes[2].SinkKPerW.Value
        );
    }

    [Fact]
    public void Trials_that_contradict_each_other_are_told()
    {
        LightDesign Tried(params SinkTrial[] trials) => With(Fins with { Trials = trials });
        Assert.True(Told(Tried(new(V(20), V(9), false), new(V(20), V(12), false)), HeatRules.DataConflict));
        Assert.True(Told(Tried(new(V(20), V(30), false), new(V(20), V(20), true)), HeatRules.DataConflict));
        Assert.False(Told(Tried(new(V(20), V(9), false), new(V(20), V(11), false)), HeatRules.DataConflict));
    }

    [Fact]
    public void Data_that_do_not_go_together_are_told()
    {
        Assert.False(Told(Sample, HeatRules.DataConflict));
        Assert.True(Told(With(Fins with { Pins = Pins.Pins }), HeatRules.DataConflict));
        Assert.True(Told(With(Fins with { Pipes = Tower.Pipes }), HeatRules.DataConflict));
        Assert.True(Told(With(Bare with { FinCount = 1 }), HeatRules.DataConflict));
        Assert.True(
            Told(
                With(Fan with { Losses = [new("filter", null, null, null, V(20), null, "x")] }),
                HeatRules.DataConflict
            )
        );
        Assert.True(
            Told(With(Fan with { Losses = [new("guard", null, null, null, null, null, "x")] }), HeatRules.DataConflict)
        );
        var second = Fins with { Emitters = [.. Fins.Emitters, new("second", new(V(0.02), V(0.02)))] };
        Assert.True(Told(With(second), HeatRules.DataConflict));
        Assert.False(Told(With(Pins), HeatRules.DataConflict));
        Assert.False(Told(With(Tower), HeatRules.DataConflict));
    }

    [Fact]
    public void Another_emitter_with_a_heat_of_its_own_warms_the_light()
    {
        double Junction(double watts) =>
            Evaluator
                .Evaluate(
                    With(Fins with { Emitters = [.. Fins.Emitters, new("second", new(V(0.02), V(0.02)), V(watts))] }),
                    16
                )
                .Heat!.Scenes[0]
                .Points[0]
                .JunctionC.Value;
        Assert.True(Junction(20) > Junction(5) + 2);
    }

    [Fact]
    public void Fans_in_opposite_order_are_told_and_a_second_one_the_same_way_is_said_not_to_count()
    {
        var other = Fan with { Name = "second", Air = [.. Fan.Air.Reverse()] };
        Assert.True(Told(Sample with { Fans = [Fan, other] }, HeatRules.FansOppose));
        var same = Sample with { Fans = [Fan, Fan with { Name = "second" }] };
        Assert.False(Told(same, HeatRules.FansOppose));
        Assert.True(Told(same, HeatRules.DataConflict));
    }

    [Fact]
    public void Air_hotter_than_the_limit_is_a_stop()
    {
        LightDesign At(double kelvin) => Sample with { Place = Sample.Place with { AmbientMax = V(kelvin) } };
        Assert.True(Told(At(393.15), HeatRules.AmbientOverLimit));
        Assert.False(Told(At(393.1), HeatRules.AmbientOverLimit));
    }

    [Fact]
    public void Heat_pipes_over_their_load_are_a_stop()
    {
        LightDesign Bears(double watts) => With(Tower with { Pipes = Tower.Pipes! with { Carries = V(watts) } });
        var heat = Evaluator.Evaluate(Bears(100), 16).Heat!.Scenes[0].Points[0].HeatW.Value;
        Assert.True(Told(Bears(0.95 * heat / 6), HeatRules.HeatPipesDry));
        Assert.False(Told(Bears(1.05 * heat / 6), HeatRules.HeatPipesDry));
    }

    [Fact]
    public void An_emitter_that_takes_no_power_is_said_to_give_no_heat()
    {
        Assert.NotNull(HeatFindings.Heatless(0, "emitter.main"));
        Assert.Null(HeatFindings.Heatless(0.01, "emitter.main"));
        Assert.Equal(HeatRules.NoHeat, HeatFindings.Heatless(0, "emitter.main")!.Rule);
    }

    [Fact]
    public void Pins_and_plates_without_a_gap_are_told_and_give_no_values()
    {
        var pins = With(Pins with { Pins = Pins.Pins! with { Across = 40 } });
        Assert.True(Told(pins, HeatRules.FinsDoNotFit));
        Assert.False(Told(With(Pins), HeatRules.FinsDoNotFit));
        var stack = With(Tower with { Pipes = Tower.Pipes! with { Count = 100, Diameter = V(0.03) } });
        Assert.True(Told(stack, HeatRules.FinsDoNotFit));
    }

    [Fact]
    public void A_given_share_of_light_sets_the_heat()
    {
        var share = Sample with { Emitters = [Sample.Emitters[0] with { LightShare = V(0.3) }] };
        var light = Evaluator.Evaluate(share, 16);
        var (heat, power) = (light.Heat!.Scenes[0].Points[0].HeatW.Value, light.Steps!.Combinations[0].EmitterW.Value);

        // What comes back to the emitter's base is heat as well.
        Assert.InRange(heat / power, 0.7, 0.78);
        var less = Evaluator.Evaluate(Sample with { Emitters = [Sample.Emitters[0] with { LightShare = V(0) }] }, 16);
        Assert.Equal(
            less.Steps!.Combinations[0].EmitterW.Value,
            less.Heat!.Scenes[0].Points[0].HeatW.Value,
            1e-6 * power
        );
    }

    [Fact]
    public void Openings_side_by_side_let_more_air_through_than_one_behind_another()
    {
        double Flow(params string[] beside) =>
            Evaluator
                .Evaluate(With(Fan with { Air = ["tray.air_in", "tray.air_out", "sink.main"], Beside = beside }), 16)
                .Heat!.Scenes[0]
                .FlowM3PerH.Value;
        Assert.True(Flow("tray.air_in", "tray.air_out") > Flow());
    }

    [Fact]
    public void A_fan_that_gets_less_than_it_starts_at_stands()
    {
        var heat = Evaluator.Evaluate(With(Fan with { StartsAt = V(10.5) }), 16).Heat!;
        Assert.Equal(0, heat.Scenes[0].FlowM3PerH.Value);
        Assert.True(Evaluator.Evaluate(With(Fan with { StartsAt = V(9.5) }), 16).Heat!.Scenes[0].FlowM3PerH.Value > 0);
    }

    [Fact]
    public void Every_key_of_these_forms_is_read_from_a_file()
    {
        const string Text = """
            [emitter.main]
            light_share = "0.35 ± 0.03"
            [emitter.second]
            [sink.pins]
            base = { across = "80 mm", along = "80 mm", thickness = "5 mm" }
            pins = { across = 10, along = 12, diameter = "3 mm", height = "40 mm", rows = "staggered" }
            emitters = [{ emitter = "main", at = ["20 mm", "40 mm"] }, { emitter = "second", at = ["60 mm", "40 mm"], heat = "8 W" }]
            wanted = "60 degC"
            [sink.tower]
            base = { across = "40 mm", along = "40 mm", thickness = "3 mm" }
            pipes = { count = 8, diameter = "6 mm", carries = "35 W" }
            stack = { count = 45, across = "120 mm", along = "50 mm", thickness = "0.4 mm", gap = "2 mm" }
            [sink.tried]
            trials = [{ power = "20 W", rise = "9 K" }, { power = "10 W", rise = "22 K", fan = "stopped" }]
            [fan.main]
            starts_at = "5 V"
            beside = ["tray.left", "tray.right"]
            losses = [
              { kind = "filter", pressure = "20 Pa", flow = "40 m3/h" },
              { kind = "slots", size = ["60 mm", "30 mm"], open = 0.4, slot = "3 mm" },
            ]
            """;
        var design = DesignLoader.Parse(DesignText.Parse(Text, "light.toml"), _ => null).Design!;
        Assert.Equal(0.35, design.Emitters[0].LightShare!.Nominal);
        var (pins, tower, tried) = (design.Sinks[0], design.Sinks[1], design.Sinks[2]);
        Assert.Equal(new(10, 12, true), (pins.Pins!.Across, pins.Pins.Along, pins.Pins.Staggered));
        Assert.Equal(0.04, pins.Pins.Height.Nominal, 1e-12);
        Assert.Equal(8, pins.Emitters[1].Heat!.Nominal);
        Assert.Null(pins.Emitters[0].Heat);
        Assert.Equal(333.15, pins.Wanted!.Nominal, 1e-9);
        Assert.Equal(0.4, tower.Pipes!.Resistance.Nominal, 1e-12);
        Assert.Equal(Origin.Default, tower.Pipes.Resistance.Origin);
        Assert.Equal(35, tower.Pipes.Carries!.Nominal);
        Assert.Equal(45, tower.Stack!.Count);
        Assert.Equal([false, true], tried.Trials.Select(t => t.FanStopped));
        var fan = design.Fans[0];
        Assert.Equal(5, fan.StartsAt!.Nominal);
        Assert.Equal(["tray.left", "tray.right"], fan.Beside);
        Assert.Equal(["fan.main.losses[0]", "fan.main.losses[1]"], fan.Losses.Select(l => l.Path));
        Assert.Equal(0.003, fan.Losses[1].Slot!.Nominal, 1e-12);
    }
}
