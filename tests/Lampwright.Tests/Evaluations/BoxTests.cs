using Lampwright.Evaluation;
using Lampwright.Evaluation.Boxes;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Lampwright.Heat.Time;
using Lampwright.Tests.Heat.Network;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>The box of the herbarium light, and each finding of it from both sides.</summary>
public sealed class BoxTests
{
    private static readonly string Text = Repository.Text("examples/herbarium/herbarium.toml");

    private static readonly Lazy<LightEvaluation> Banded = new(() => Prepared("").WithBands(64));

    [Fact]
    public void Its_junction_and_base_are_those_of_the_scenes()
    {
        var heat = Banded.Value.Heat!;
        foreach (var scene in heat.Scenes)
        {
            var box = heat.Box!.Scenes.First(s => s.Name == scene.Name);
            var full = scene.Points.MaxBy(p => p.HeatW.Value)!;
            Assert.Equal(full.JunctionC.Value, box.Nodes.First(n => n.Name == "junction").TemperatureC.Value, 0.2);
            Assert.Equal(full.SinkC.Value, box.Nodes.First(n => n.Name == "base").TemperatureC.Value, 0.2);
        }
    }

    [Fact]
    public void Every_part_round_the_light_has_skins_with_bands()
    {
        var box = Banded.Value.Heat!.Box!;
        foreach (var scene in box.Scenes)
        {
            var skins = scene.Nodes.Where(n => n.Kind == "skin").ToList();
            foreach (var part in new[] { "hood", "tray", "tray_lid", "driver_box", "driver_lid", "frame" })
            {
                Assert.Contains(skins, s => s.Name.StartsWith(part + ".", StringComparison.Ordinal));
            }

            Assert.All(
                skins,
                s =>
                {
                    Assert.True(
                        s.TemperatureC.Low <= s.TemperatureC.Value && s.TemperatureC.Value <= s.TemperatureC.High
                    );
                    Assert.True(s.TemperatureC.Value >= scene.AmbientC - 1e-6, s.Name);
                    Assert.NotNull(s.LimitC);
                }
            );
        }

        Assert.InRange(
            box.Flows.Where(f => f.To == "room").Sum(f => f.HeatW)
                / box.Flows.Where(f => f.From == "junction").Sum(f => f.HeatW),
            1,
            3
        );
    }

    [Fact]
    public void Curves_start_and_end_where_they_must()
    {
        var box = Banded.Value.Heat!.Box!;
        var warm = box.WarmUp.Lines.First(l => l.Node == "junction");
        Assert.Equal(box.Scenes[0].AmbientC, warm.ValueC[0], 1e-6);
        Assert.Equal(box.Scenes[0].Nodes.First(n => n.Name == "junction").TemperatureC.Value, warm.ValueC[^1], 0.2);
        Assert.All(warm.ValueC.Zip(warm.ValueC.Skip(1)), p => Assert.True(p.Second > p.First - 0.01));
        Assert.True(box.WarmUp.To90S.Low < box.WarmUp.To90S.Value && box.WarmUp.To90S.Value < box.WarmUp.To90S.High);
        Assert.All(warm.ValueC.Zip(warm.HighC), p => Assert.True(p.Second >= p.First));
        var stop = box.FanStop!;
        Assert.Equal(
            box.Scenes[1].Nodes.First(n => n.Name == "junction").TemperatureC.Value,
            stop.Curves.Lines[0].ValueC[0],
            1e-3
        );
        Assert.Null(stop.JunctionLimitS);
        Assert.True(stop.LightLossStops > 0);
        var lower = Light(Text.Replace("= \"120 degC\"", "= \"85 degC\"", StringComparison.Ordinal)).WithBands(16);
        Assert.InRange(lower.Heat!.Box!.FanStop!.JunctionLimitS!.Value.Value, 100, 7200);
        Assert.Equal("the fan stops", stop.Events[0].What);
        Assert.Equal(stop.Events.Select(e => e.TimeS).Order(), stop.Events.Select(e => e.TimeS));
    }

    [Fact]
    public void The_advised_cut_out_protects_when_it_is_built_in()
    {
        var best = Banded.Value.Heat!.Box!.CutOuts.Single(c => c.Best);
        Assert.True(best.LeastC <= best.SettingC && best.SettingC <= best.MostC && best.TripsAfterS < best.HarmAfterS);
        var built = Prepared($"[cutout.main]\nplace = \"{best.Place}\"\nopens = \"{best.SettingC:0} degC ± 5 K\"\n")
            .WithBands(16);
        var played = Assert.Single(built.Heat!.Box!.Played);
        Assert.Equal("protects", played.Verdict);
        Assert.True(played.JunctionAtTripC < 120);
        Assert.DoesNotContain(
            built.Findings,
            f => f.Rule == BoxRules.CutOutTooLate || f.Rule == BoxRules.CutOutTripsInUse
        );
    }

    [Fact]
    public void A_dimmer_position_bears_a_hotter_room()
    {
        var rooms = Banded.Value.Heat!.Box!.RoomLimits;
        Assert.Equal(Banded.Value.Steps!.Combinations.Count, rooms.Count);
        Assert.True(
            rooms[^1].AmbientC.Value > rooms[0].AmbientC.Value || rooms[0].AmbientC.Value > rooms[^1].AmbientC.Value
        );
        Assert.All(rooms, r => Assert.True(r.AmbientC.Low <= r.AmbientC.Value && r.AmbientC.Value <= r.AmbientC.High));
        Assert.Equal(1, Banded.Value.Heat!.Box!.Duty.Share);
    }

    [Fact]
    public void Cut_out_too_late_or_too_early()
    {
        Assert.Contains(BoxRules.CutOutTooLate, With("[cutout.main]\nopens = \"115 degC ± 5 K\"\n"));
        Assert.DoesNotContain(BoxRules.CutOutTooLate, With("[cutout.main]\nopens = \"65 degC ± 5 K\"\n"));
        Assert.Contains(BoxRules.CutOutTripsInUse, With("[cutout.main]\nopens = \"55 degC ± 5 K\"\n"));
        Assert.DoesNotContain(BoxRules.CutOutTripsInUse, With("[cutout.main]\nopens = \"65 degC ± 5 K\"\n"));
    }

    [Fact]
    public void Cut_out_in_the_wrong_line_or_place()
    {
        var wrong = With("[cutout.main]\nopens = \"75 degC ± 5 K\"\nin = \"sense line\"\n");
        Assert.Contains(BoxRules.CutOutInWrongLine, wrong);
        Assert.Contains(BoxRules.CutOutInWrongLine, With("[cutout.main]\nin = \"emitter line\"\n"));
        Assert.DoesNotContain(BoxRules.CutOutInWrongLine, With("[cutout.main]\nopens = \"75 degC\"\n"));
        Assert.Contains(BoxRules.CutOutPlaceUnknown, With("[cutout.main]\nplace = \"the moon\"\n"));
        Assert.DoesNotContain(BoxRules.CutOutPlaceUnknown, With("[cutout.main]\nplace = \"tray.vent_end\"\n"));
    }

    [Fact]
    public void No_setting_where_use_comes_near_to_harm()
    {
        Assert.Contains(BoxRules.NoCutOutSetting, Changed("= \"120 degC\"", "= \"68 degC\""));
        Assert.DoesNotContain(BoxRules.NoCutOutSetting, Changed("= \"120 degC\"", "= \"100 degC\""));
    }

    [Fact]
    public void It_must_rest_where_the_hottest_day_is_too_hot()
    {
        Assert.Contains(BoxRules.MustRest, Changed("= \"120 degC\"", "= \"58 degC\""));
        Assert.DoesNotContain(BoxRules.MustRest, Changed("= \"120 degC\"", "= \"66 degC\""));
    }

    [Fact]
    public void A_driver_may_be_too_hot_only_for_its_neighbours()
    {
        Assert.Contains(
            BoxRules.DriverHeatedByNeighbours,
            Changed("case_max         = \"90 degC\"", "case_max         = \"70 degC\"")
        );
        Assert.DoesNotContain(
            BoxRules.DriverHeatedByNeighbours,
            Changed("case_max         = \"90 degC\"", "case_max         = \"75 degC\"")
        );
    }

    [Fact]
    public void Life_is_claimed_from_tests_alone()
    {
        Assert.Null(Banded.Value.Heat!.Box!.Life);
        string Test(string last) =>
            $"maintenance = [{{ case = \"85 degC\", samples = 20, hours = [\"0 h\", \"1000 h\", \"2000 h\", \"3000 h\", \"4000 h\", \"5000 h\", \"{last}\"], shares = [1, 0.999, 0.995, 0.992, 0.988, 0.985, 0.981] }}]\ncct              = \"4000 K\"";
        Assert.Contains(BoxRules.LifeNotClaimed, Changed("cct              = \"4000 K\"", Test("5500 h")));
        var told = Light(Text.Replace("cct              = \"4000 K\"", Test("6000 h"), StringComparison.Ordinal))
            .WithBands(16);
        Assert.DoesNotContain(told.Findings, f => f.Rule == BoxRules.LifeNotClaimed);
        Assert.Equal(36000, told.Heat!.Box!.Life!.Hours);
        Assert.Equal(25, told.Heat.Box.Life.Curve.Count);
    }

    [Fact]
    public void A_box_that_comes_to_no_rest_says_where_it_stood()
    {
        var spec = NetworkSamples.Light(true);
        var state = new BoxState("hot", spec with { EmitterWPerK = 200 }, true);
        Assert.Null(state.Kelvin);
        var finding = BoxFindings.NotSolved("sink.main", state);
        Assert.Equal(BoxRules.NotSolved, finding.Rule);
        Assert.Contains("keeps", finding.Message, StringComparison.Ordinal);
        Assert.NotNull(new BoxState("hot", spec, true).Kelvin);
    }

    private static List<Rule> With(string table) => [.. Prepared(table).WithBands(16).Findings.Select(f => f.Rule)];

    private static List<Rule> Changed(string before, string after)
    {
        Assert.Contains(before, Text, StringComparison.Ordinal);
        return
        [
            .. Light(Text.Replace(before, after, StringComparison.Ordinal)).WithBands(16).Findings.Select(f => f.Rule),
        ];
    }

    private static PreparedEvaluation Prepared(string table) => Light(Text + "\n" + table);

    private static PreparedEvaluation Light(string text) =>
        OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare();

    private static string Beside(string name) => Repository.Text("examples/herbarium/" + name);
}
