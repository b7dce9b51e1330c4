using Lampwright.Files.DesignFile.Schema;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class DocumentationTests
{
    private static readonly string Mark = "<!-- keys: written from the schema; a test holds them together -->\n";

    [Fact]
    public void The_keys_in_the_document_are_those_of_the_schema()
    {
        var file = Path.Combine(Root(), "docs", "design-file.md");
        var written = File.ReadAllText(file);
        var at = written.IndexOf(Mark, StringComparison.Ordinal);
        Assert.True(at >= 0, "docs/design-file.md has lost its mark");
        var expected = written[..(at + Mark.Length)] + "\n" + KeyTables.Markdown();
        if (expected != written && Environment.GetEnvironmentVariable("LAMPWRIGHT_WRITE_DOCS") == "1")
        {
            File.WriteAllText(file, expected);
            return;
        }

        Assert.True(
            expected == written,
            "docs/design-file.md is behind the schema: run the tests once with LAMPWRIGHT_WRITE_DOCS=1"
        );
    }

    [Fact]
    public void Every_key_says_what_it_means_and_what_happens_without_it()
    {
        foreach (var key in DesignSchema.All)
        {
            Assert.EndsWith(".", key.Meaning, StringComparison.Ordinal);
            Assert.NotEqual("", key.Station);
            Assert.True(
                key.Required || key.Default.Length > 0 == key.DefaultSource.Length > 0,
                $"{key.Pattern} has a default without a source"
            );
            Assert.True(
                key.Required
                    || key.Default.Length > 0
                    || key.Absent.Length > 0
                    || key.Kind is KeyKind.Table or KeyKind.NamedTables or KeyKind.AnyQuantity,
                $"{key.Pattern} does not say what happens where it is not written"
            );
            Assert.NotEqual("", KeyExamples.Of(key));
        }
    }

    [Fact]
    public void A_path_finds_its_key()
    {
        Assert.Equal("emitter.*.points[].current", DesignSchema.OfPath("emitter.main.points[0].current")!.Pattern);
        Assert.Equal("part.*.flange.*.height.outside", DesignSchema.OfPath("part.a.flange.b.height.outside")!.Pattern);
        Assert.Equal("given.*", DesignSchema.OfPath("given.gap")!.Pattern);
        Assert.Equal("rules.*.because", DesignSchema.OfPath("rules.x.because")!.Pattern);
        Assert.Null(DesignSchema.OfPath("emitter.main.nothing"));
        Assert.Null(DesignSchema.OfPath("..."));
    }

    [Fact]
    public void The_rules_that_may_be_overridden_are_those_the_evaluation_asks_for()
    {
        var maps = Path.Combine(Root(), "src", "Lampwright", "Evaluation", "Maps");
        var asked = Directory
            .EnumerateFiles(maps, "*.cs")
            .SelectMany(f =>
                System.Text.RegularExpressions.Regex.Matches(File.ReadAllText(f), "\\bOf\\(\"([a-z_]+)\"\\)")
            )
            .Select(m => m.Groups[1].Value)
            .Order(StringComparer.Ordinal);
        Assert.Equal(RuleNames.All.Select(r => r.Name).Order(StringComparer.Ordinal), asked);
    }

    internal static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Lampwright.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
