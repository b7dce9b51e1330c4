using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Geometry;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>The light cut open: true sizes, and the temperatures of the network.</summary>
public class SectionTests
{
    private static readonly HeatAnswer Herbarium = Heat("herbarium");
    private static readonly SectionAnswer Section = Herbarium.Section.Value!;

    [Theory]
    [InlineData("across the fins", 70.0)]
    [InlineData("along the fins", 100.0)]
    public void The_base_has_the_sizes_of_the_file(string name, double widthMm)
    {
        var cut = Assert.Single(Section.Cuts, c => c.Name == name);
        var plate = Assert.Single(Assert.Single(cut.Pieces, p => p.Id == "base").Outlines);
        Assert.Equal(widthMm, plate.Max(p => p.X) - plate.Min(p => p.X), 1e-6);
        Assert.Equal(6, plate.Max(p => p.Y) - plate.Min(p => p.Y), 1e-6);
    }

    [Fact]
    public void Across_all_fins_are_cut_and_along_one_is_seen()
    {
        SectionPiece Fins(string name) => Section.Cuts.Single(c => c.Name == name).Pieces.Single(p => p.Id == "fins");
        Assert.Equal(16, Fins("across the fins").Outlines.Count);
        Assert.All(Fins("along the fins").Outlines, o => Assert.Equal(48, o.Max(p => p.Y) - o.Min(p => p.Y), 1e-6));
    }

    [Fact]
    public void The_light_shines_down_from_under_a_sink_whose_fins_stand_up()
    {
        var cut = Section.Cuts[0];
        Assert.Equal(-1, cut.Beam.Y, 1e-6);
        var fins = cut.Pieces.Single(p => p.Id == "fins").Outlines.SelectMany(o => o).Min(p => p.Y);
        var diffuser = cut.Pieces.Single(p => p.Node == "diffuser").Outlines.SelectMany(o => o).Max(p => p.Y);
        Assert.True(fins > 0 && diffuser < -50, $"fins from {fins} mm, diffuser below {diffuser} mm");
    }

    [Fact]
    public void Driver_reflector_housing_and_air_are_there_and_every_node_is_one_of_the_network()
    {
        var known = Section.At("1111", "normal")!.Nodes.Select(n => n.Name).ToHashSet(StringComparer.Ordinal);
        var cut = Section.Cuts[0];
        foreach (
            var node in new[]
            {
                "junction",
                "case",
                "base",
                "fins",
                "driver",
                "reflector",
                "diffuser",
                "channel air",
                "compartment air",
                "front air",
                "tray.face",
            }
        )
        {
            Assert.Contains(cut.Pieces, p => p.Node == node);
        }

        Assert.All(
            Section.Cuts.SelectMany(c => c.Pieces).Where(p => p.Node is not null),
            p => Assert.Contains(p.Node!, known)
        );
        Assert.All(Section.Cuts.SelectMany(c => c.Pieces).SelectMany(p => p.Outlines), o => Assert.True(o.Count >= 3));
    }

    [Fact]
    public void At_full_light_it_shows_what_the_tables_show()
    {
        var shown = Section.At("1111", "fan stopped, hot")!;
        Assert.Same(Herbarium.Box!.Scenes.Single(s => s.Name == "fan stopped, hot"), shown);
    }

    [Fact]
    public void A_dimmer_position_is_cooler_a_slower_fan_hotter_and_a_stopped_one_hotter_still()
    {
        double Base(string switches, string scene) =>
            Section.At(switches, scene)!.Nodes.Single(n => n.Name == "base").TemperatureC.Value;
        Assert.True(Base("0000", "hot") < Base("0111", "hot") - 2);
        Assert.True(Base("0111", "hot") < Base("1111", "hot") - 2);
        Assert.True(Base("1111", "hot") < Base("1111", "fan slowed") - 1);
        Assert.True(Base("1111", "fan slowed") < Base("1111", "fan stopped, hot") - 1);
    }

    [Fact]
    public void The_slowed_fan_runs_at_the_least_voltage_and_no_slower_than_it_starts()
    {
        var air = Herbarium.Air.Value!;
        var least = air.FanSteps.Single(s => s.Switches == "1111").LeastV!.Value.High;
        Assert.Equal(Math.Max(least, air.FloorV!.Value), Section.SlowedToV("1111")!.Value, 1e-9);
    }

    [Fact]
    public void A_slower_fan_in_the_file_gives_the_same_junction()
    {
        var volts = Section.SlowedToV("1111")!.Value;
        var slower = Heat(
            "herbarium",
            t =>
                t.Replace(
                    "run_at      = \"10 V\"",
                    FormattableString.Invariant($"run_at      = \"{volts:R} V\""),
                    StringComparison.Ordinal
                )
        );
        double Junction(BoxScene scene) => scene.Nodes.Single(n => n.Name == "junction").TemperatureC.Value;
        Assert.Equal(
            Junction(slower.Box!.Scenes.Single(s => s.Name == "hot")),
            Junction(Section.At("1111", "fan slowed")!),
            0.05
        );
    }

    [Fact]
    public void Without_a_fan_there_is_nothing_to_slow_or_stop()
    {
        var section = Heat("boatshed").Section.Value!;
        Assert.Equal(["normal", "hot"], section.Scenes);
        Assert.Null(section.At("11", "fan stopped"));
        Assert.Null(section.At("no such position", "normal"));
    }

    [Theory]
    [InlineData("herbarium")]
    [InlineData("boatshed")]
    [InlineData("puppet-theatre")]
    public void Each_temperature_of_the_cut_is_written_once_and_every_fill_is_of_the_scale(string example)
    {
        var heat = Heat(example);
        var section = heat.Section.Value!;
        var full = heat.Scenes[0].Points.MaxBy(p => p.HeatW.Value)!.Switches;
        foreach (var cut in section.Cuts)
        {
            var scene = section.At(full, "hot")!;
            var scale = HeatScale.Of(scene);
            var svg = SectionSvg.Of(new(cut, scene, scale, TemperatureUnit.Celsius), 720, 470, 13, false);
            foreach (var node in cut.Pieces.Select(p => p.Node).OfType<string>().Distinct())
            {
                var celsius = scene.Nodes.Single(n => n.Name == node).TemperatureC.Value;
                Assert.Contains(scale.At(celsius).Hex, svg, StringComparison.Ordinal);
                Assert.Contains($">{HeatText.PlaceName(node)}</text>", svg, StringComparison.Ordinal);
            }

            Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
        }
    }

    private static HeatAnswer Heat(string example, Func<string, string>? edit = null)
    {
        string Beside(string name) => Repository.Text($"examples/{example}/{name}");
        var text = Beside(example + ".toml");
        return OpenedLight
            .Of(DesignLoader.Parse(edit?.Invoke(text) ?? text, "light.toml", Beside), Beside)
            .Prepare()
            .Nominal()
            .Heat!;
    }
}
