using System.Diagnostics;
using System.Text;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Cli;

/// <summary>Files that are no design, or one that nobody would build: a sentence with its place, no hang, the right number at the end.</summary>
public sealed class BadInputTests
{
    private static readonly string Text = Repository.Text("examples/herbarium/herbarium.toml");

    [Theory]
    [InlineData("no-such-file.toml", "There is no file")]
    [InlineData("/", "folder")]
    [InlineData("/dev/null", "empty")]
    [InlineData("/dev/zero", "too large")]
    public async Task What_is_no_file_is_told(string path, string says)
    {
        Assert.SkipWhen(
            path.StartsWith("/dev", StringComparison.Ordinal) && OperatingSystem.IsWindows(),
            "there is no /dev here"
        );
        var run = await Run.Of("evaluate", path);
        Assert.Equal(2, run.Code);
        Assert.Contains(says, run.Answer, StringComparison.Ordinal);
        Assert.Equal(1, (await Run.Of("evaluate", path, "--json")).Json.GetProperty("problems").GetArrayLength());
    }

    [Fact]
    public async Task Binary_is_told()
    {
        var bytes = new byte[4096];
        new Random(1).NextBytes(bytes);
        await Told(bytes, "UTF-8");
        await Told([0x66, 0x3d, 0x00, 0x31], "not a text");
    }

    [Fact]
    public async Task Fifty_megabytes_are_told_at_once()
    {
        var since = Stopwatch.StartNew();
        await Told(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("# nothing\n", 5_000_000))), "too large");
        Assert.True(since.Elapsed.TotalSeconds < 10, $"took {since.Elapsed.TotalSeconds} s");
    }

    [Fact]
    public async Task A_million_holes_are_told_and_not_drilled()
    {
        var since = Stopwatch.StartNew();
        var run = await Of(
            Text.Replace(
                "field = { shape = \"round 5 mm\", pitch = \"7 mm\", layout = \"staggered\", within = [\"58 mm\", \"46 mm\"] }",
                "field = { shape = \"round 0.5 mm\", pitch = \"0.6 mm\", layout = \"staggered\", within = [\"1800 mm\", \"1800 mm\"] }",
                StringComparison.Ordinal
            )
        );
        Assert.InRange(run.Code, 1, 2);
        Assert.True(since.Elapsed.TotalSeconds < 15, $"took {since.Elapsed.TotalSeconds} s");
    }

    [Theory]
    [InlineData("\"1,75 A\"", "comma")]
    [InlineData("\"NaN A\"", "")]
    [InlineData("nan", "")]
    [InlineData("inf", "")]
    [InlineData("\"1e400 A\"", "")]
    [InlineData("\"1e30 A\"", "")]
    [InlineData("\"-1.75 A\"", "")]
    [InlineData("\"1.75 V\"", "")]
    [InlineData("1.75", "unit")]
    [InlineData("\"\"", "")]
    [InlineData("[]", "")]
    [InlineData("\"{driver.main.current.rated}\"", "")]
    public async Task A_value_that_is_none_is_told_with_its_place_and_the_rest_is_evaluated(string value, string says)
    {
        var run = await Of(Text.Replace("rated = \"1.75 A\"", $"rated = {value}", StringComparison.Ordinal));
        Assert.Equal(2, run.Code);
        Assert.Matches(@"light\.toml:\d+:\d+  driver\.main\.current", run.Answer);
        Assert.Contains(says, run.Answer, StringComparison.Ordinal);
        Assert.Contains("blanks to cut", run.Answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Markup_and_signs_that_steer_a_terminal_are_shown_as_text()
    {
        var run = await Of(
            Text.Replace(
                "title  = \"Herbarium copy light\"",
                "title  = \"[red]<b>ink</b>[/] \\u001b[2J\\u202ebad\"",
                StringComparison.Ordinal
            )
        );
        Assert.Contains("[red]<b>ink</b>[/]", run.Answer, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', run.Answer);
        Assert.DoesNotContain('\u202e', run.Answer);
    }

    [Fact]
    public async Task An_unknown_key_is_told_with_the_nearest_known_one()
    {
        var run = await Of(Text.Replace("ambient     =", "ambiemt     =", StringComparison.Ordinal));
        Assert.Equal(2, run.Code);
        Assert.Contains("ambient", run.Answer, StringComparison.Ordinal);
    }

    private static async Task Told(byte[] bytes, string says)
    {
        using var folder = new Folder();
        var run = await Run.Of("evaluate", folder.With("light.toml", bytes));
        Assert.Equal(2, run.Code);
        Assert.Contains(says, run.Answer, StringComparison.Ordinal);
    }

    private static async Task<Run> Of(string text)
    {
        Assert.NotEqual(Text, text);
        using var folder = new Folder();
        foreach (var beside in new[] { "shop.toml", "readings.csv" })
        {
            folder.With(beside, Repository.Text("examples/herbarium/" + beside));
        }

        return await Run.Of("evaluate", folder.With("light.toml", text), "--draws", "16");
    }
}
