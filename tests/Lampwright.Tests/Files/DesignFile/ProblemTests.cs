using System.Diagnostics;
using System.Globalization;
using Lampwright.Files.DesignFile;
using Lampwright.Quantities;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class ProblemTests
{
    private static LoadedDesign Load(string text) => DesignLoader.Parse(text, "light.toml", Sketch.Beside);

    private static FileProblem One(string text)
    {
        var problems = Load(text).Problems;
        Assert.True(problems.Count == 1, string.Join("\n", problems));
        return problems[0];
    }

    [Fact]
    public void An_empty_way_of_the_air_is_not_taken_for_free_air()
    {
        var problem = One("format = 1\n[fan.main]\nair = []\n");
        Assert.Equal("fan.main.air", problem.Path);
        Assert.Contains("the sink alone", problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void All_problems_of_a_file_are_told_at_once_and_the_rest_is_bound()
    {
        var loaded = Load(
            """
            format = 1
            titel = "x"
            [place]
            ambient = "22 C"
            altitude = "150 ohm"
            ambient_max = 30
            [emitter.main]
            reference = "25,5 degC"
            junction_max = "1e400 degC"
            beam = "400 deg"
            mass = "{gapp + 1 g}"
            [driver.main]
            current = { rated = "1.75 A", leest = "0.3 A" }
            isolated = "maybe"
            window = ["24 V"]
            [steps]
            emitter = "mian"
            driver = "main"
            switches = 2.5
            [subject]
            distance = "0.8 m"
            """
        );
        (int Line, int Column, string Path, string Accepted)[] expected =
        [
            (2, 1, "titel", "title"),
            (4, 15, "place.ambient", "degC"),
            (5, 13, "place.altitude", "a length"),
            (6, 15, "place.ambient_max", "a temperature"),
            (8, 14, "emitter.main.reference", "25.5 degC"),
            (9, 17, "emitter.main.junction_max", "1e30"),
            (10, 9, "emitter.main.beam", "1 deg to 180 deg"),
            (11, 10, "emitter.main.mass", "[given]"),
            (13, 31, "driver.main.current.leest", "least"),
            (14, 12, "driver.main.isolated", "unknown"),
            (15, 10, "driver.main.window", "two values"),
            (17, 11, "steps.emitter", "main"),
            (19, 12, "steps.switches", "whole number"),
        ];
        var told = string.Join("\n", loaded.Problems);
        Assert.True(expected.Length == loaded.Problems.Count, told);
        for (var i = 0; i < expected.Length; i++)
        {
            var problem = loaded.Problems[i];
            Assert.True(
                (problem.Line, problem.Column, problem.Path)
                    == (expected[i].Line, expected[i].Column, expected[i].Path),
                $"{problem} is not at {expected[i]}\n{told}"
            );
            Assert.Contains(expected[i].Accepted, problem.Message, StringComparison.Ordinal);
            Assert.NotEqual("", problem.Found);
            Assert.NotEqual("", problem.Accepted);
        }

        Assert.Equal(0.8, loaded.Design.Subject!.Distance.Nominal);
        Assert.Equal(1.75, loaded.Design.Drivers[0].Rated!.Nominal);
        Assert.Equal(Origin.Default, loaded.Design.Place.Ambient.Origin);
    }

    [Theory]
    [InlineData("format = 1\n[place]\nambient = 22 degC\naltitude = \"10 m\"\n", 3, "quotes")]
    [InlineData("format = 1\n[place]\nambient = \"22 degC\naltitude = \"10 m\"\n", 3, "quote")]
    [InlineData("format = 1\n[place]\nambient =\naltitude = \"10 m\"\n", 3, "no value")]
    [InlineData("format = 1\n[place\nambient = \"22 degC\"\n[subject]\n", 2, "header")]
    [InlineData("format = 1\n[place]\nsupply = { kind = \"ac\"\naltitude = \"10 m\"\n[subject]\n", 3, "never closed")]
    [InlineData("format = 1\n[place]\nwhatever\naltitude = \"10 m\"\n", 3, "cannot be read")]
    [InlineData("format = 1\nformat = 1\n", 2, "second time")]
    [InlineData("format = 1\ntitle = \"\\uD800\"\n[place]\naltitude = \"10 m\"\n", 2, "not read")]
    [InlineData("format = 1\ntitle = \"\\UFFFFFFFF\"\n[place]\naltitude = \"10 m\"\n", 2, "not read")]
    [InlineData("format = 1\ntitle = \"\\U0000DABC\"\n[place]\naltitude = \"10 m\"\n", 2, "not read")]
    public void A_broken_line_is_told_and_the_lines_after_it_are_read(string text, int line, string says)
    {
        var loaded = Load(text);
        var problem = loaded.Problems[0];
        Assert.Equal(line, problem.Line);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
        if (text.Contains("altitude = \"10 m\"\n", StringComparison.Ordinal) && loaded.Problems.Count == 1)
        {
            Assert.Equal(10, loaded.Design.Place.Altitude.Nominal);
        }
    }

    [Fact]
    public void An_unclosed_list_does_not_swallow_the_file()
    {
        var loaded = Load(
            "format = 1\n[steps]\nswitches = 2\nchosen = { chain = [\"1 ohm\",\n[subject]\ndistance = \"2 m\"\n"
        );
        Assert.Equal(4, Assert.Single(loaded.Problems).Line);
        Assert.Equal(2, loaded.Design.Subject!.Distance.Nominal);
    }

    [Fact]
    public void A_circle_is_named_by_all_that_are_in_it()
    {
        var loaded = Load("format = 1\n[given]\na = \"{b + 1 mm}\"\nb = \"{2*c}\"\nc = \"{a}\"\nd = \"{a}\"\n");
        Assert.Equal(4, loaded.Problems.Count);
        Assert.Contains(
            "given.a -> given.b -> given.c -> given.a",
            loaded.Problems[0].Message,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("format = 2\n", "1 to 1")]
    [InlineData("format = \"one\"\n", "number")]
    [InlineData("title = \"no format\"\n", "format")]
    [InlineData("format = 1\nplace = 3\n", "table")]
    [InlineData("format = 1\n[emitter]\nmain = 3\n", "[emitter.NAME]")]
    [InlineData("format = 1\nfan = []\n", "[fan.NAME]")]
    [InlineData("format = 1\nshop = \"../secret.toml\"\n", "plain file name")]
    [InlineData("format = 1\nshop = \"missing.toml\"\n", "beside")]
    [InlineData("format = 1\n[given]\na = 1979-05-27\n", "value")]
    [InlineData("format = 1\n[given]\na = nan\n", "not a number")]
    [InlineData("format = 1\n[given]\na = inf\n", "not a number")]
    [InlineData("format = 1\n[rules]\nhole_to_edge = \"5 mm\"\n", "because")]
    [InlineData("format = 1\n[rules]\nhole_to_egde = { value = \"5 mm\", because = \"x\" }\n", "hole_to_edge")]
    [InlineData("format = 1\n[rules]\nhole_to_edge = { value = \"5 ohm\", because = \"x\" }\n", "a length")]
    [InlineData(
        "format = 1\n[rules]\nhole_to_edge = { value = \"{2*thickness*radius}\", because = \"x\" }\n",
        "a length"
    )]
    [InlineData("format = 1\n[reflector.a]\npart = \"funnel\"\n", "names nothing")]
    [InlineData("format = 1\n[fan.a]\ncurve = [[\"5 m3/h\", \"3 Pa\"], [\"4 m3/h\", \"2 Pa\"]]\n", "more flow")]
    [InlineData("format = 1\n[diffuser.a]\ntransmittance = 0.8\n", "add up")]
    [InlineData(
        "format = 1\n[tilt.a]\nbetween = [\"x.a\", \"x.b\"]\nwasher = [\"30 mm\", \"12 mm\"]\n",
        "names nothing"
    )]
    [InlineData("format = 1\n[part.a]\n", "sheet")]
    [InlineData("format = 1\n[sheet.s]\nthickness = \"1 mm\"\nbend = \"strips\"\n", "strips")]
    [InlineData("format = 1\n[driver.a]\nmass = \"<b>5 g</b>\"\n", "<b>5")]
    public void A_single_mistake_says_what_would_do(string text, string says) =>
        Assert.Contains(says, string.Join("\n", Load(text).Problems), StringComparison.Ordinal);

    [Theory]
    [InlineData("[2, 1]", "[\"20 mm\", \"0 mm\"]", 0)]
    [InlineData("[2, 2]", "[\"20 mm\", \"0.4 mm\"]", 1)]
    [InlineData("[2, 2]", "[\"20 mm\", \"0.5 mm\"]", 0)]
    [InlineData("[2, 2]", "\"20 mm\"", 0)]
    public void A_grid_needs_a_pitch_only_where_there_is_more_than_one(string count, string pitch, int problems) =>
        Assert.Equal(
            problems,
            Load(
                $"format = 1\n[fan.a]\nholes.h = {{ for = \"M4 tap\", grid = {{ count = {count}, pitch = {pitch} }} }}\n"
            ).Problems.Count
        );

    [Fact]
    public void A_field_of_a_million_holes_is_refused_without_counting_them()
    {
        var problem = One(
            "format = 1\n[sheet.s]\nthickness = \"1 mm\"\n[part.a]\nsheet = \"s\"\n[part.a.hole.h]\non = \"face\"\nfield = { shape = \"round 0.4 mm\", pitch = \"0.5 mm\", within = [\"500 mm\", \"500 mm\"] }\n"
        );
        Assert.Contains("at most 20000", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   \n")]
    [InlineData("\uFEFF")]
    [InlineData("\0\u0001binary")]
    [InlineData("<html><body>no</body></html>")]
    public void What_is_no_design_is_a_problem_and_no_more(string text)
    {
        var loaded = Load(text);
        Assert.NotEmpty(loaded.Problems);
        Assert.Empty(loaded.Design.Emitters);
    }

    [Fact]
    public void A_huge_file_is_refused_at_once()
    {
        var watch = Stopwatch.StartNew();
        var loaded = Load(new string('a', 50_000_000));
        Assert.Contains("too large", Assert.Single(loaded.Problems).Message, StringComparison.Ordinal);
        var file = Path.GetTempFileName();
        try
        {
            using (var stream = File.OpenWrite(file))
            {
                stream.SetLength(50_000_000);
            }

            Assert.Contains(
                "too large",
                Assert.Single(DesignLoader.Load(file).Problems).Message,
                StringComparison.Ordinal
            );
        }
        finally
        {
            File.Delete(file);
        }

        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), $"{watch.Elapsed}");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Deep_and_wide_files_neither_hang_nor_fall(int kind)
    {
        var text = kind switch
        {
            0 => "a = " + new string('[', 100_000),
            1 => "format = 1\n[steps]\nchosen = { chain = ["
                + string.Join(", ", Enumerable.Repeat("\"1 ohm\"", 100_000))
                + "] }",
            2 => "format = 1\n[given]\n"
                + string.Concat(
                    Enumerable
                        .Range(0, 10_000)
                        .Select(i => FormattableString.Invariant($"a{i} = \"{{a{i + 1} + 1 mm}}\"\n"))
                )
                + "a10000 = \"1 mm ± 1 mm\"\n",
            3 => "format = 1\n[given]\na = \"{" + new string('(', 900) + "\"\n",
            4 => string.Concat(Enumerable.Repeat("= [ { \"\n", 20_000)),
            _ => "format = 1\n[given]\n"
                + string.Concat(
                    Enumerable
                        .Range(0, 2_000)
                        .Select(i =>
                            FormattableString.Invariant($"b{i} = \"1 mm ± 1 mm\"\na{i + 1} = \"{{a{i} + b{i}}}\"\n")
                        )
                )
                + "a0 = \"1 mm\"\n",
        };
        var watch = Stopwatch.StartNew();
        _ = Load(text);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), $"{watch.Elapsed}");
    }

    [Fact]
    public void A_comma_culture_reads_the_same_design()
    {
        var before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        var plain = Load(Sketch.Text);
        CultureInfo.CurrentCulture = comma;
        try
        {
            var other = Load(Sketch.Text);
            Assert.Equal(plain.Design.Parts[0].Face!.Width, other.Design.Parts[0].Face!.Width);
            Assert.Equal(plain.Notes.Select(n => n.Message), other.Notes.Select(n => n.Message));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_table_in_both_files_counts_as_the_design_has_it()
    {
        var loaded = DesignLoader.Parse(
            "format = 1\nshop = \"s\"\n[sheet.a]\nthickness = \"1 mm\"\n",
            "light.toml",
            _ => "[sheet.a]\nthickness = \"2 mm\"\n[sheet.b]\nthickness = \"3 mmm\"\n"
        );
        Assert.Equal(0.001, loaded.Design.Sheets[0].Thickness!.Nominal);
        Assert.Equal("FIL002", Assert.Single(loaded.Notes, n => n.Path == "sheet.a").Code);
        var problem = Assert.Single(loaded.Problems);
        Assert.Equal(("s", 4, 16), (problem.File, problem.Line, problem.Column));
    }
}
