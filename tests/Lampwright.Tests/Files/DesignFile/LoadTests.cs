using Lampwright.Design;
using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class LoadTests
{
    private static LoadedDesign Load(string text) => DesignLoader.Parse(text, "light.toml", Sketch.Beside);

    private static LoadedDesign Fine(string text)
    {
        var loaded = Load(text);
        Assert.True(loaded.Problems.Count == 0, string.Join("\n", loaded.Problems));
        return loaded;
    }

    [Fact]
    public void A_whole_light_is_bound()
    {
        var design = Fine(Sketch.Text).Design;
        Assert.Equal("Copy light", design.Title);
        Assert.Equal(2, design.Emitters[0].Points.Count);
        Assert.Equal(1.8, design.Emitters[0].Points[1].Current.Nominal, 1e-12);
        Assert.Equal(-0.018, design.Emitters[0].VoltageSlope!.Nominal, 1e-12);
        Assert.Equal(0.0054, design.Emitters[0].VoltageSlope!.HalfWidth, 1e-12);
        Assert.True(design.Emitters[0].JunctionToCaseIsElectrical);
        Assert.True(design.Emitters[0].FaceIsRound);
        Assert.Equal(4000, design.Emitters[0].Cct!.Nominal);
        Assert.Equal(["R33", "R33"], design.Drivers[0].Sense!.Marks);
        Assert.Equal(SenseSide.Secondary, design.Drivers[0].Sense!.Side);
        Assert.Equal(Known.Yes, design.Drivers[0].Isolated);
        Assert.Equal(TargetKind.Stops, design.Steps!.Targets!.Kind);
        Assert.Equal(0.82, design.Steps.Chosen!.Chain[3].Parts[0].Nominal, 1e-12);
        Assert.Null(design.Sinks[0].Emitters[0].At.Y);
        Assert.Equal(
            new HolePattern("mount", null, "M4 tap", design.Sinks[0].Holes[0].Layout, null),
            design.Sinks[0].Holes[0]
        );
        Assert.Equal(3, design.Fans[0].Curve.Count);
        Assert.Equal(5, design.Parts.Count + design.Sheets.Count - 1);
        Assert.Equal("k", design.Sheets[0].Bend.Method);
        Assert.Equal("strips", design.Sheets[1].Bend.Method);
        Assert.True(design.Parts[0].FaceIsInside);
        Assert.Equal(0.106, design.Parts[0].Face!.Width.Nominal, 1e-12);
        Assert.Equal(0.0004, design.Parts[0].Face!.Width.HalfWidth, 1e-12);
        Assert.Equal(Origin.Computed, design.Parts[0].Face!.Width.Origin);
        Assert.Equal("part.sink_tray.face.inside[0]", design.Parts[0].Face!.Width.Path);
        Assert.Equal(0.086, design.Parts[0].Holes[0].Shape!.Width.Nominal, 1e-12);
        Assert.Equal(0.004, design.Parts[0].Holes[2].Shape!.Width.Nominal, 1e-12);
        Assert.True(design.Joints[0].Screw!.Nut);
        Assert.Equal("yoke", design.Assembly!.Fixed);
        Assert.Equal(0.006, design.Rules[1].Value.Nominal, 1e-12);
        Assert.Equal(0.0039, design.Rules[0].Value.Nominal, 1e-12);
        Assert.Equal(0.0025, design.Rules[0].Formula!.ForSheet(0.001, 0.0005)!.Value, 1e-12);
        Assert.Equal(0.22, design.Steps.Drawer[1].Ohm.Nominal, 1e-12);
        Assert.Equal(0.2, design.Readings!.Factor.HalfWidth, 1e-12);
        Assert.Equal(1.02, design.Brake.Length.Nominal, 1e-12);
    }

    [Fact]
    public void Every_default_is_a_note_and_marked_on_the_value()
    {
        var loaded = Fine(Sketch.Text);
        Assert.Equal(Origin.Default, loaded.Design.Place.AmbientMax.Origin);
        Assert.Equal("place.ambient_max", loaded.Design.Place.AmbientMax.Path);
        var note = Assert.Single(loaded.Notes, n => n.Path == "place.ambient_max");
        Assert.Equal("FIL001", note.Code);
        Assert.Contains("35 degC", note.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(loaded.Notes, n => n.Path == "place.ambient");
        Assert.DoesNotContain(loaded.Notes, n => n.Path.StartsWith("stand", StringComparison.Ordinal));
    }

    [Fact]
    public void The_schema_has_no_key_that_nobody_reads()
    {
        DesignLoader.Parse(DesignText.Parse(Sketch.Text, "light.toml"), Sketch.Beside, out var context);
        var everything = """
            format = 1
            [stand.a]
            [arm.a]
            [emitter.a]
            rated = {}
            maintenance = [{}]
            holes.a = { grid = {}, shape = "round 4 mm" }
            holes.b = { ring = {} }
            holes.c = { field = {} }
            holes.d = { points = [] }
            [driver.a]
            holes.a = { grid = {} }
            holes.b = { ring = {} }
            holes.c = { field = {} }
            holes.d = { points = [] }
            [sink.a]
            holes.a = { ring = {} }
            holes.c = { field = {} }
            holes.d = { points = [] }
            [sink.b]
            trials = [{}]
            [fan.a]
            losses = [{}]
            holes.b = { ring = {} }
            holes.c = { field = {} }
            holes.d = { points = [] }
            [diffuser.a]
            holes.a = { grid = {} }
            holes.b = { ring = {} }
            holes.c = { field = {} }
            holes.d = { points = [] }
            [item.a]
            holes.a = { grid = {} }
            holes.b = { ring = {} }
            holes.c = { field = {} }
            holes.d = { points = [] }
            [part.a]
            hem.a = {}
            joggle.a = {}
            tube = {}
            hole.a = { grid = {} }
            hole.b = { ring = {} }
            hole.c = { field = {} }
            hole.d = { points = [] }
            [cutout.a]
            [steps]
            targets = { list = ["1 A"] }
            chosen = { chain = [{}] }
            [drawer]
            resistors = [{}]
            """;
        DesignLoader.Parse(DesignText.Parse(everything, "light.toml"), _ => null, out var second);
        var asked = context.Asked.Concat(second.Asked).ToHashSet(StringComparer.Ordinal);
        var unread = DesignSchema.All.Select(k => k.Pattern).Where(p => !asked.Contains(p)).ToList();
        Assert.True(unread.Count == 0, "never read: " + string.Join(", ", unread));
    }

    [Fact]
    public void Defaults_of_the_schema_are_those_of_the_records()
    {
        var design = Load(
            """
            format = 1
            [emitter.a]
            [driver.a]
            [sink.a]
            [reflector.a]
            [diffuser.a]
            [subject]
            [sheet.a]
            [tilt.a]
            [steps]
            """
        ).Design;
        AssertSame(new Place(), design.Place);
        AssertSame(new Brake(), design.Brake);
        AssertSame(new Emitter("a"), design.Emitters[0]);
        AssertSame(new Driver("a"), design.Drivers[0]);
        AssertSame(new Sink("a"), design.Sinks[0]);
        AssertSame(new Reflector("a"), design.Reflectors[0]);
        AssertSame(new Diffuser("a"), design.Diffusers[0]);
        AssertSame(new Subject(), design.Subject!);
        AssertSame(new Sheet("a"), design.Sheets[0]);
        AssertSame(new Tilt("a"), design.Tilts[0]);
        AssertSame(new Lampwright.Design.Steps(), design.Steps!);
        AssertSame(new ResistorKind(), design.Steps!.Part);
    }

    [Fact]
    public void A_bare_value_may_stand_for_the_table_of_the_junction()
    {
        var design = Fine("format = 1\n[emitter.a]\njunction_to_case = \"0.3 K/W\"\n").Design;
        Assert.Equal(0.3, design.Emitters[0].JunctionToCase!.Nominal);
        Assert.False(design.Emitters[0].JunctionToCaseIsElectrical);
    }

    [Theory]
    [InlineData("[\"1.7 A\", \"1.2 A\"]", TargetKind.Currents, 1.7)]
    [InlineData("[\"2000 lx\", \"1000 lx\"]", TargetKind.Lux, 2000)]
    [InlineData("[\"100 %\", \"50 %\"]", TargetKind.Percent, 1)]
    [InlineData("{ list = [\"100 %\", \"50 %\"], from = \"1.7 A\" }", TargetKind.Percent, 1)]
    public void Steps_may_be_listed_in_amps_lux_or_percent(string targets, TargetKind kind, double first)
    {
        var steps = Load($"format = 1\n[steps]\nswitches = 2\ntargets = {targets}\n").Design.Steps!;
        Assert.Equal(kind, steps.Targets!.Kind);
        Assert.Equal(first, steps.Targets.List[0].Nominal);
        Assert.Equal(2, steps.Targets.List.Count);
    }

    [Theory]
    [InlineData("round 4.3 mm", HoleKind.Round, 4.3, 4.3)]
    [InlineData("slot 10 mm x 4.3 mm", HoleKind.Slot, 10, 4.3)]
    [InlineData("rectangle 20 mm x 10 mm", HoleKind.Rectangle, 20, 10)]
    [InlineData("rectangle 20 mm × 10 mm r 2 mm", HoleKind.Rectangle, 20, 10)]
    [InlineData("rect 20 mm x 10 mm", HoleKind.Rectangle, 20, 10)]
    [InlineData("square 1/2 in", HoleKind.Rectangle, 12.7, 12.7)]
    [InlineData("round {2*gap}", HoleKind.Round, 6, 6)]
    [InlineData("slot {max(gap, 10 mm)} x {2*gap}", HoleKind.Slot, 10, 6)]
    public void A_shape_is_read(string shape, HoleKind kind, double width, double height)
    {
        var design = Load(
            $"format = 1\n[given]\ngap = \"3 mm\"\n[sheet.s]\nthickness = \"1 mm\"\n[part.a]\nsheet = \"s\"\n[part.a.hole.h]\non = \"face\"\nshape = \"{shape}\"\n"
        );
        Assert.Empty(design.Problems);
        var read = design.Design.Parts[0].Holes[0].Shape!;
        Assert.Equal(kind, read.Kind);
        Assert.Equal(width / 1000, read.Width.Nominal, 1e-12);
        Assert.Equal(height / 1000, read.Height.Nominal, 1e-12);
    }

    [Fact]
    public void Places_of_paths_are_known_in_both_files()
    {
        var positions = Fine(Sketch.Text).Positions;
        Assert.Equal(new FilePlace("light.toml", 3, 1), positions.Find("title"));
        Assert.Equal(new FilePlace("shop.toml", 3, 1), positions.Find("brake.length"));
        Assert.Equal(positions.Find("part.sink_tray.hole.vents"), positions.Find("sink_tray.vents[3,2]") with { });
        Assert.Equal("light.toml", positions.Find("driver.main.case_max").File);
        Assert.Equal(positions.Find("driver.main").Line, positions.Find("driver.main.case_max").Line);
        Assert.Equal(1, positions.Find("nothing.at.all").Line);
    }

    private static void AssertSame(object expected, object actual)
    {
        foreach (var property in expected.GetType().GetProperties())
        {
            var (a, b) = (property.GetValue(expected), property.GetValue(actual));
            if (a is Value left && b is Value right)
            {
                Assert.True(
                    Math.Abs(left.Nominal - right.Nominal) <= 1e-12 * Math.Abs(left.Nominal)
                        && Math.Abs(left.HalfWidth - right.HalfWidth) < 1e-9,
                    $"{expected.GetType().Name}.{property.Name}: record {left}, file {right}"
                );
            }
            else if (a is string or int or double or bool or Enum || a is null != b is null)
            {
                Assert.True(Equals(a, b), $"{expected.GetType().Name}.{property.Name}: record {a}, file {b}");
            }
        }
    }
}
