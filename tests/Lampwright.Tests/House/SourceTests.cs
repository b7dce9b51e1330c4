using System.Text;
using System.Text.RegularExpressions;

namespace Lampwright.Tests.House;

/// <summary>Rules that are read in the sources themselves.</summary>
public sealed partial class SourceTests
{
    private static readonly string[] Sources = [".cs", ".razor", ".js", ".css"];

    [Fact]
    public void The_core_knows_no_file_console_clock_environment_culture_or_chance()
    {
        foreach (var file in Repository.Files("src/Lampwright", ".cs"))
        {
            // The two readers of tables that lie inside the program itself are the only ones that open a stream.
            var code = RoomTests.Code(file);
            var named = Impure().Match(code);
            Assert.True(!named.Success, $"{file}: {named.Value}");
            var stream = Stream().Match(code);
            Assert.True(
                !stream.Success || file.StartsWith("src/Lampwright/Tables/", StringComparison.Ordinal),
                $"{file}: {stream.Value}"
            );
        }
    }

    /// <summary>What lays out and shows has no formulas: no roots, powers of physics, angles or temperatures of its own making.</summary>
    [Theory]
    [InlineData("src/Lampwright.Cli")]
    [InlineData("src/Lampwright.Files/Json")]
    [InlineData("src/Lampwright.Files/DesignFile")]
    [InlineData("src/Lampwright.Web/Pages")]
    [InlineData("src/Lampwright.Web/Ledger")]
    [InlineData("src/Lampwright.Web/Desk")]
    [InlineData("src/Lampwright.Web/Fields")]
    public void What_shows_computes_nothing_physical(string folder)
    {
        foreach (var file in Repository.Files(folder, ".cs", ".razor"))
        {
            var named = Formula().Match(RoomTests.Code(file));
            Assert.True(!named.Success, $"{file}: {named.Value}");
        }
    }

    [Fact]
    public void No_file_of_sources_is_longer_than_400_lines()
    {
        var wrong = new List<string>();
        foreach (var folder in new[] { "src", "tests", "benchmarks" })
        {
            foreach (var file in Repository.Files(folder, Sources))
            {
                var lines = Repository.Text(file).AsSpan().Count('\n');
                if (lines > 400)
                {
                    wrong.Add($"{file}: {lines}");
                }
            }
        }

        Repository.None(wrong, "A file holds one idea");
    }

    [Fact]
    public void Warnings_are_not_silenced_without_a_reason()
    {
        foreach (var file in Repository.Files("src", ".cs", ".razor").Concat(Repository.Files("tests", ".cs")))
        {
            var lines = Repository.Text(file).Split('\n');
            for (var i = 0; i < lines.Length; i++)
            {
                var silenced = lines[i].Contains(Decoded("I3ByYWdtYSB3YXJuaW5nIGRpc2FibGU="), StringComparison.Ordinal);
                Assert.True(
                    !silenced
                        || lines[i].Contains("//", StringComparison.Ordinal)
                        || (i > 0 && lines[i - 1].Contains("//", StringComparison.Ordinal)),
                    $"{file}:{i + 1} silences a warning without saying why."
                );
            }
        }
    }

    /// <summary>Left-overs and what has no place in the project. They are written encoded, so that this file does not hold them.</summary>
    [Fact]
    public void No_file_has_words_that_do_not_belong_in_the_project()
    {
        string[] words =
        [
            "dHJhbnNjcmlwdA==",
            "c2VlZCBkb2N1bWVudA==",
            "L3dvcmsv",
            "L3Jvb3Qv",
            "LmxpYnJhcnk=",
            "Tm90SW1wbGVtZW50ZWRFeGNlcHRpb24=",
            "VE9ETw==",
            "RklYTUU=",
            "bG9yZW0gaXBzdW0=",
        ];
        var forbidden = words.Select(Decoded).ToArray();
        foreach (var file in Repository.Files("").Where(IsText))
        {
            var text = Repository.Text(file);
            foreach (var word in forbidden)
            {
                // Words that people write in capitals as a mark are found as such only.
                var how = word.All(char.IsUpper) ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
                Assert.True(!text.Contains(word, how), $"{file} has the words \"{word}\".");
            }
        }
    }

    [Fact]
    public void Documents_that_readers_look_for_are_there()
    {
        string[] documents =
        [
            "README.md",
            "CONTRIBUTING.md",
            "CHANGELOG.md",
            "LICENSE",
            "NOTICE",
            "docs/map.md",
            "docs/command-line.md",
            "docs/design-file.md",
            "docs/evaluation-json.md",
            "docs/findings.md",
            "docs/performance.md",
            "docs/steps.md",
            "docs/heat.md",
            "docs/light.md",
            "docs/metal.md",
            "docs/fit-up.md",
            "docs/balance.md",
            "docs/readings.md",
        ];
        Repository.None(documents.Where(d => !File.Exists(Path.Combine(Repository.Root, d))), "Missing documents");
    }

    [Fact]
    public void Links_between_documents_lead_somewhere()
    {
        foreach (var file in Repository.Files("", ".md"))
        {
            foreach (Match link in Link().Matches(Repository.Text(file)))
            {
                var target = link.Groups[1].Value.Split('#')[0];
                if (target.Length == 0 || target.Contains("://", StringComparison.Ordinal))
                {
                    continue;
                }

                var path = Path.Combine(Repository.Root, Path.GetDirectoryName(file)!, target);
                Assert.True(Path.Exists(path), $"{file} leads to {target}, which is not there.");
            }
        }
    }

    [Fact]
    public void Station_readmes_are_short()
    {
        foreach (var file in Repository.Files("src/Lampwright", "README.md"))
        {
            var lines = Repository.Text(file).AsSpan().Count('\n');
            Assert.True(lines <= 30, $"{file} has {lines} lines; the long form is in docs/.");
        }
    }

    private static bool IsText(string file) =>
        Path.GetExtension(file)
            is ".cs"
                or ".razor"
                or ".js"
                or ".css"
                or ".md"
                or ".toml"
                or ".csv"
                or ".csproj"
                or ".props"
                or ".targets"
                or ".json"
                or ".sh"
                or ".svg"
                or "";

    private static string Decoded(string word) => Encoding.UTF8.GetString(Convert.FromBase64String(word));

    [GeneratedRegex(
        @"\bConsole\.|\b(File|Directory)\.[A-Z]|\bPath\.(Combine|Join|Get)|\bDateTime(Offset)?\.(Utc)?Now|\bTimeProvider\b|\bStopwatch\b|\bEnvironment\.|\bCultureInfo\.Current|\bRandom\.Shared|new Random\(\)|\bGuid\.NewGuid|\bProcess\.|\bHttpClient\b|\bThread\.Sleep"
    )]
    private static partial Regex Impure();

    [GeneratedRegex(@"\bGetManifestResourceStream|\bFileStream\b|\bStreamReader\b")]
    private static partial Regex Stream();

    [GeneratedRegex(@"\bMath\.(Sqrt|Exp|Pow|Sin|Cos|Tan|Atan2?|Asin|Acos|Log|Log2)\b|\b273\.15\b|\b9\.80?6?65?\b")]
    private static partial Regex Formula();

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();
}
