using System.Text.Json;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Cli;

public sealed class VerbTests
{
    private static readonly string Herbarium = Path.Combine(Repository.Root, "examples/herbarium/herbarium.toml");

    public static TheoryData<string, string> Stations =>
        new()
        {
            { "steps", "steps" },
            { "heat", "heat" },
            { "light", "light" },
            { "metal", "metal" },
            { "fit-up", "fitUp" },
            { "balance", "balance" },
            { "readings", "readings" },
        };

    [Fact]
    public async Task Evaluate_shows_the_light_at_a_glance_and_its_findings()
    {
        var run = await Run.Of("evaluate", Herbarium, "--draws", "32");
        Assert.Equal(0, run.Code);
        Assert.Contains("Herbarium copy light", run.Answer, StringComparison.Ordinal);
        Assert.Contains("lx", run.Answer, StringComparison.Ordinal);
        Assert.Contains("1111", run.Answer, StringComparison.Ordinal);
        Assert.Matches(@"herbarium\.toml:\d+  \S", run.Answer);
        Assert.Empty(run.Error);
    }

    [Fact]
    public async Task Many_findings_of_one_rule_take_the_room_of_few()
    {
        var run = await Run.Of(
            "evaluate",
            Path.Combine(Repository.Root, "examples/boatshed/boatshed.toml"),
            "--nominal"
        );
        Assert.Matches(@"\d+ more of FIL001 \(A default stands in\) at boatshed\.toml:\d+, \d+", run.Answer);
        Assert.Equal(3, run.Answer.Split("note FIL001").Length - 1);
        Assert.Contains("no fan, hottest room", run.Answer, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Stations))]
    public async Task A_station_answers_in_tables(string verb, string field)
    {
        _ = field;
        var run = await Run.Of(verb, Herbarium, "--draws", "32");
        Assert.Equal(0, run.Code);
        Assert.DoesNotContain("does not say enough", run.Answer, StringComparison.Ordinal);
        Assert.Contains("5th to the 95th percentile of 32 draws", run.Answer, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Stations))]
    public async Task A_station_answers_alone_in_json(string verb, string field)
    {
        var run = await Run.Of(verb, Herbarium, "--json", "--draws", "32");
        Assert.Equal(0, run.Code);
        foreach (var (_, other) in Stations.Select(s => s.Data))
        {
            Assert.Equal(
                other == field ? JsonValueKind.Object : JsonValueKind.Null,
                run.Json.GetProperty(other).ValueKind
            );
        }
    }

    [Fact]
    public async Task Evaluate_in_json_is_the_whole_document_and_nothing_else()
    {
        var run = await Run.Of("evaluate", Herbarium, "--json", "--draws", "32");
        Assert.Equal(0, run.Code);
        Assert.Equal(32, run.Json.GetProperty("draws").GetInt32());
        Assert.Equal(16, run.Json.GetProperty("steps").GetProperty("combinations").GetArrayLength());
        Assert.Empty(run.Error);
    }

    [Fact]
    public async Task Nominal_has_no_draws() =>
        Assert.Equal(0, (await Run.Of("steps", Herbarium, "--json", "--nominal")).Json.GetProperty("draws").GetInt32());

    [Fact]
    public async Task A_stop_ends_with_1()
    {
        using var folder = new Folder();
        var text = Repository
            .Text("examples/herbarium/herbarium.toml")
            .Replace("isolated         = \"yes\"", "isolated         = \"unknown\"", StringComparison.Ordinal);
        File.Copy(Path.Combine(Path.GetDirectoryName(Herbarium)!, "shop.toml"), folder.At("shop.toml"));
        File.Copy(Path.Combine(Path.GetDirectoryName(Herbarium)!, "readings.csv"), folder.At("readings.csv"));
        var run = await Run.Of("evaluate", folder.With("light.toml", text), "--draws", "16");
        Assert.Equal(1, run.Code);
        Assert.Contains("Do not build or power it", run.Answer, StringComparison.Ordinal);
        Assert.Contains("STP002", run.Answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_writes_a_light_that_evaluates_without_a_problem_or_a_stop()
    {
        using var folder = new Folder();
        var written = await Run.Of("new", folder.At("shed-lamp"), "--json");
        Assert.Equal(0, written.Code);
        Assert.Equal(folder.At("shed-lamp.toml"), written.Json.GetProperty("written")[0].GetString());
        var run = await Run.Of("evaluate", folder.At("shed-lamp.toml"), "--json", "--draws", "16");
        Assert.Equal(0, run.Code);
        Assert.Equal("Shed lamp", run.Json.GetProperty("title").GetString());
        Assert.Equal(4, run.Json.GetProperty("steps").GetProperty("combinations").GetArrayLength());
    }

    [Fact]
    public async Task New_never_writes_over_what_is_there()
    {
        using var folder = new Folder();
        var path = folder.With("mine.toml", "# mine\n");
        var run = await Run.Of("new", path);
        Assert.Equal(2, run.Code);
        Assert.Equal("# mine\n", await File.ReadAllTextAsync(path));
        Assert.Contains("stays as it is", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no/such/folder/lamp")]
    [InlineData(".toml")]
    public async Task New_refuses_a_place_that_is_none_in_a_sentence(string name)
    {
        var run = await Run.Of("new", name);
        Assert.Equal(2, run.Code);
        Assert.EndsWith(".\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Packet_writes_its_files_and_names_them()
    {
        using var folder = new Folder();
        var run = await Run.Of("packet", Herbarium, "--out", folder.At("packet"), "--json", "--draws", "16");
        Assert.Equal(0, run.Code);
        var names = run.Json.GetProperty("written").EnumerateArray().Select(n => n.GetString()!).ToList();
        Assert.Contains("packet.pdf", names);
        Assert.All(names, n => Assert.True(File.Exists(Path.Combine(folder.At("packet"), n)), n));
    }

    [Fact]
    public async Task Packet_into_a_place_that_is_a_file_says_so()
    {
        using var folder = new Folder();
        var file = folder.With("packet", "not a folder");
        var run = await Run.Of("packet", Herbarium, "--out", file, "--nominal");
        Assert.Equal(2, run.Code);
        Assert.NotEmpty(run.Error);
        Assert.Equal("not a folder", await File.ReadAllTextAsync(file));
    }

    [Fact]
    public async Task Help_names_every_verb()
    {
        var run = await Run.Of("--help");
        Assert.Equal(0, run.Code);
        foreach (var verb in Stations.Select(s => s.Data.Item1).Concat(["new", "evaluate", "packet", "serve"]))
        {
            Assert.Contains($"    {verb} ", run.Answer, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("frobnicate")]
    [InlineData("evaluate", "")]
    [InlineData("evaluate")]
    [InlineData("evaluate", "a.toml", "--draws", "3")]
    [InlineData("evaluate", "a.toml", "--draws", "many")]
    [InlineData("evaluate", "a.toml", "--nominal", "--draws", "64")]
    [InlineData("evaluate", "a.toml", "--colour")]
    [InlineData("packet", "a.toml")]
    [InlineData("serve", "a.toml", "--port", "99999")]
    public async Task What_is_not_understood_ends_with_4_and_a_sentence(params string[] words)
    {
        var run = await Run.Of(words);
        Assert.Equal(4, run.Code);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public async Task Every_verb_in_the_document_is_there_and_every_exit_code()
    {
        var document = Repository.Text("docs/command-line.md");
        var help = (await Run.Of("--help")).Answer;
        foreach (var verb in Stations.Select(s => s.Data.Item1).Concat(["new", "evaluate", "packet", "serve"]))
        {
            Assert.Contains($"`{verb}", document, StringComparison.Ordinal);
            Assert.Contains(verb, help, StringComparison.Ordinal);
        }

        foreach (var code in new[] { 0, 1, 2, 3, 4, 130 })
        {
            Assert.Contains($"| {code} |", document, StringComparison.Ordinal);
        }
    }
}
