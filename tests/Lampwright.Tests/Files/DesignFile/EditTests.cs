using CsCheck;
using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Edits;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class EditTests
{
    private static DesignText Read(string text) => DesignText.Parse(text, "light.toml");

    private static string Done(EditResult result)
    {
        Assert.True(result.IsDone, result.Refusal);
        return result.Text.Text;
    }

    [Fact]
    public void A_value_is_set_and_nothing_else_moves()
    {
        var text = Read(
            "# top\r\n[driver.main]\r\ncurrent    = { rated = \"1.75 A\" , least = \"0.3 A\" }   # as bought\r\nefficiency = 0.89\r\n"
        );
        Assert.Equal(
            text.Text.Replace("1.75 A", "1.6 A", StringComparison.Ordinal),
            Done(DesignEdits.Set(text, "driver.main.current.rated", "1.6 A"))
        );
        Assert.Equal(
            text.Text.Replace("0.89", "0.9", StringComparison.Ordinal),
            Done(DesignEdits.Set(text, "driver.main.efficiency", "0.9"))
        );
        Assert.Contains(
            "efficiency = \"0.9 ± 0.02\"\r\n",
            Done(DesignEdits.Set(text, "driver.main.efficiency", "0.9 ± 0.02")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_expression_is_overwritten_by_a_value_and_back()
    {
        var text = Read("[part.a]\nface = { inside = [\"{2*gap}\", \"5 mm\"] } # face\n");
        var set = DesignEdits.Set(text, "part.a.face.inside[0]", "12 mm");
        Assert.Equal("[part.a]\nface = { inside = [\"12 mm\", \"5 mm\"] } # face\n", Done(set));
        Assert.Equal(text.Text, Done(DesignEdits.Set(set.Text, "part.a.face.inside[0]", "{2*gap}")));
    }

    [Theory]
    [InlineData(
        "[place]\nambient  = \"22 degC\" # warm\n\n[show]\n",
        "place.altitude",
        "150 m",
        "[place]\nambient  = \"22 degC\" # warm\naltitude = \"150 m\"\n\n[show]\n"
    )]
    [InlineData("[place]\n\n[show]\n", "place.altitude", "150 m", "[place]\naltitude = \"150 m\"\n\n[show]\n")]
    [InlineData(
        "[driver.main]\nover = { voltage = \"46 V\" }\n",
        "driver.main.over.then",
        "trips",
        "[driver.main]\nover = { voltage = \"46 V\", then = \"trips\" }\n"
    )]
    [InlineData(
        "[driver.main]\nover = {}\n",
        "driver.main.over.then",
        "trips",
        "[driver.main]\nover = { then = \"trips\" }\n"
    )]
    [InlineData(
        "[driver.main]\nunder = \"stops\"\n",
        "driver.main.over.then",
        "trips",
        "[driver.main]\nunder = \"stops\"\nover.then = \"trips\"\n"
    )]
    [InlineData("format = 1\n", "place.altitude", "150 m", "format = 1\n\n[place]\naltitude = \"150 m\"\n")]
    [InlineData("format = 1", "place.altitude", "150 m", "format = 1\n\n[place]\naltitude = \"150 m\"\n")]
    [InlineData(
        "[fan.a]\nmass = \"1 g\"\n\n[subject]\n",
        "fan.b.mass",
        "2 g",
        "[fan.a]\nmass = \"1 g\"\n\n[fan.b]\nmass = \"2 g\"\n\n[subject]\n"
    )]
    [InlineData("# remark\n[place]\n", "title", "New", "# remark\ntitle = \"New\"\n\n[place]\n")]
    [InlineData(
        "[part.a]\nsheet = \"m\"\n\n[part.b]\n",
        "part.a.flange.f.on",
        "face.left",
        "[part.a]\nsheet = \"m\"\n\n[part.a.flange.f]\non = \"face.left\"\n\n[part.b]\n"
    )]
    [InlineData(
        "[steps]\nchosen = { chain = [\"1 ohm\"] }\n",
        "steps.chosen.chain[1]",
        "2 ohm",
        "[steps]\nchosen = { chain = [\"1 ohm\", \"2 ohm\"] }\n"
    )]
    [InlineData("", "title", "New", null)]
    public void A_missing_key_goes_to_the_sensible_place(string before, string path, string value, string? after)
    {
        var result = DesignEdits.Set(Read(before), path, value);
        if (after is not null)
        {
            Assert.Equal(after, Done(result));
        }
        else
        {
            Assert.True(result.IsDone);
        }
    }

    [Fact]
    public void A_list_with_an_item_on_each_line_goes_on_that_way()
    {
        var text = Read("[emitter.a]\npoints = [\n  { current = \"1 A\" },\n]\n");
        Assert.Equal(
            "[emitter.a]\npoints = [\n  { current = \"1 A\" },\n  { current = \"2 A\" },\n]\n",
            Done(DesignEdits.SetRaw(text, "emitter.a.points[1]", "{ current = \"2 A\" }"))
        );
    }

    [Theory]
    [InlineData("[a]\nb = 1\nc = 2\n", "a.b", "[a]\nc = 2\n")]
    [InlineData("[a]\nb = { x = 1, y = 2 }\n", "a.b.x", "[a]\nb = { y = 2 }\n")]
    [InlineData("[a]\nb = { x = 1, y = 2 }\n", "a.b.y", "[a]\nb = { x = 1 }\n")]
    [InlineData("[a]\nb = [1, 2, 3]\n", "a.b[1]", "[a]\nb = [1, 3]\n")]
    [InlineData("[a]\nb = [1, 2, 3]\n", "a.b[0]", "[a]\nb = [2, 3]\n")]
    [InlineData("[p.a]\nb = 1\n[p.a.f.x]\nc = 1\n[p.b]\nd = 1\n", "p.a", "[p.b]\nd = 1\n")]
    public void A_key_or_table_is_deleted_with_its_line(string before, string path, string after) =>
        Assert.Equal(after, Done(DesignEdits.Delete(Read(before), path)));

    [Fact]
    public void A_renamed_table_takes_all_that_refers_to_it_along()
    {
        var before = DesignLoader.Parse(Sketch.Text, "light.toml", Sketch.Beside);
        foreach (
            var (path, name) in new[]
            {
                ("emitter.main", "led"),
                ("driver.main", "supply"),
                ("sink.main", "cooler"),
                ("fan.main", "blower"),
                ("part.sink_tray", "tray"),
                ("part.funnel", "cone"),
                ("part.yoke", "fork"),
                ("given.gap", "clearance"),
                ("part.sink_tray.flange.wall_l", "left_wall"),
                ("part.sink_tray.hole.vents", "slots"),
                ("fan.main.holes.mount", "screws"),
            }
        )
        {
            var result = DesignEdits.Rename(before.Text, path, name);
            var text = Done(result);
            var after = DesignLoader.Parse(text, "light.toml", Sketch.Beside);
            Assert.True(after.Problems.Count == 0, $"{path} -> {name}: " + string.Join("\n", after.Problems));
            var renamed = DocPath.Join(DocPath.Parent(path), name);
            Assert.NotNull(result.Text.Find(renamed));
            var back = DesignEdits.Rename(result.Text, renamed, path[(path.LastIndexOf('.') + 1)..]);
            Assert.Equal(before.Text.Text, Done(back));
        }
    }

    [Theory]
    [InlineData("fan.nobody", "x", "no fan.nobody")]
    [InlineData("fan.main", "two words", "no name")]
    [InlineData("part.yoke", "funnel", "there already")]
    [InlineData("place.ambient", "x", "word of the file")]
    [InlineData("fan", "x", "word of the file")]
    public void A_rename_that_cannot_be_is_refused_with_the_reason(string path, string name, string why) =>
        Assert.Contains(why, DesignEdits.Rename(Read(Sketch.Text), path, name).Refusal, StringComparison.Ordinal);

    [Theory]
    [InlineData("title", "\"x\"\ny = 1\n = ")]
    [InlineData("title", "[")]
    [InlineData("title", "")]
    public void An_edit_that_breaks_the_file_is_refused(string path, string toml)
    {
        var text = Read(Sketch.Text);
        var result = DesignEdits.SetRaw(text, path, toml);
        Assert.False(result.IsDone);
        Assert.NotEqual("", result.Refusal);
        Assert.Same(text, result.Text);
    }

    [Fact]
    public void What_is_typed_is_never_read_as_anything_but_a_value()
    {
        var text = Read(Sketch.Text);
        Gen.String.Sample(
            typed =>
            {
                var result = DesignEdits.Set(text, "title", typed);
                if (result.IsDone)
                {
                    Assert.Equal(typed.Trim(), ((DocScalar)result.Text.Find("title")!).Text);
                    Assert.Equal(text.Root.Entries.Count, result.Text.Root.Entries.Count);
                }
            },
            seed: "0N0XIzNsQ0O2",
            iter: 300
        );
    }

    [Fact]
    public void All_outside_of_the_splice_stays_byte_for_byte()
    {
        foreach (
            var source in new[]
            {
                Sketch.Text,
                Sketch.Text.Replace("\n", "\r\n", StringComparison.Ordinal),
                "\uFEFF" + Sketch.Text,
            }
        )
        {
            var text = Read(source);
            var paths = Scalars(text.Root, "").ToArray();
            Gen.Select(Gen.Int[0, paths.Length - 1], Gen.Double[0.1, 99])
                .Sample(
                    (index, number) =>
                    {
                        var typed = FormattableString.Invariant($"{number:0.###} mm");
                        var result = DesignEdits.Set(text, paths[index], typed);
                        Assert.True(result.IsDone, result.Refusal);
                        var splice = Assert.Single(result.Splices);
                        Assert.StartsWith(source[..splice.Start], result.Text.Text, StringComparison.Ordinal);
                        Assert.EndsWith(
                            source[(splice.Start + splice.Length)..],
                            result.Text.Text,
                            StringComparison.Ordinal
                        );
                        Assert.Equal(source.Length - splice.Length + splice.Text.Length, result.Text.Text.Length);
                        Assert.Equal(typed, ((DocScalar)result.Text.Find(paths[index])!).Text);
                    },
                    seed: "0N0XIzNsQ0O2",
                    iter: 150
                );
        }
    }

    [Fact]
    public void Deleting_what_was_inserted_gives_the_text_back()
    {
        var text = Read(Sketch.Text);
        foreach (
            var path in new[]
            {
                "place.altitude",
                "driver.main.power_factor",
                "subject.iso",
                "driver.main.over.note",
                "emitter.main.mass",
            }
        )
        {
            var inserted = DesignEdits.Set(text, path, "1");
            Assert.True(inserted.IsDone, inserted.Refusal);
            Assert.Equal(text.Text, Done(DesignEdits.Delete(inserted.Text, path)));
        }
    }

    private static IEnumerable<string> Scalars(DocNode node, string path) =>
        node switch
        {
            DocTable table => table.Entries.SelectMany(e => Scalars(e.Value, DocPath.Join(path, e.Name))),
            DocArray array => array.Items.SelectMany((item, i) => Scalars(item, DocPath.Item(path, i))),
            _ => [path],
        };
}
