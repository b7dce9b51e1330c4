using System.Reflection;
using System.Text.RegularExpressions;
using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Findings;

namespace Lampwright.Tests.House;

/// <summary>The foreman's rules, all of them.</summary>
public sealed partial class RuleTests
{
    private static readonly (string Type, string Name, Rule Rule)[] All =
    [
        .. new[] { typeof(Evaluator).Assembly, typeof(DesignLoader).Assembly }
            .SelectMany(a => a.GetTypes())
            .SelectMany(t =>
                t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
                    .Where(f => f.FieldType == typeof(Rule) && !f.Name.StartsWith('<'))
                    .Select(f => (t.Name, f.Name, (Rule)f.GetValue(null)!))
                    .Concat(
                        t.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
                            .Where(p => p.PropertyType == typeof(Rule))
                            .Select(p => (t.Name, p.Name, (Rule)p.GetValue(null)!))
                    )
            ),
    ];

    [Fact]
    public void Every_rule_has_a_code_of_its_own()
    {
        Assert.NotEmpty(All);
        foreach (var same in All.GroupBy(r => r.Rule.Code))
        {
            Assert.True(same.Count() == 1, $"{same.Key}: {string.Join(", ", same.Select(r => $"{r.Type}.{r.Name}"))}");
        }
    }

    [Fact]
    public void Codes_titles_remedies_and_sources_are_well_formed()
    {
        foreach (var (type, name, rule) in All)
        {
            var who = $"{type}.{name} ({rule.Code})";
            Assert.True(Code().IsMatch(rule.Code), who);
            Assert.True(rule.Title.Length is > 5 and < 80 && !rule.Title.EndsWith('.'), $"{who}: title {rule.Title}");
            Assert.True(
                rule.Remedy.Length > 10 && rule.Remedy.EndsWith('.') && char.IsUpper(rule.Remedy[0]),
                $"{who}: a remedy is a full sentence, not: {rule.Remedy}"
            );
            Assert.False(string.IsNullOrWhiteSpace(rule.Source), $"{who} has no source.");
            Assert.True(
                !rule.ProtectsPeople || rule.Severity == Severity.Stop,
                $"{who} protects people and is no stop."
            );
        }
    }

    [Fact]
    public void The_list_of_a_station_holds_every_rule_of_it()
    {
        var all = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;
        var lists = new[] { typeof(Evaluator).Assembly, typeof(DesignLoader).Assembly }
            .SelectMany(a => a.GetTypes())
            .SelectMany(t =>
                new[] { t.GetProperty("All", all)?.GetValue(null), t.GetField("All", all)?.GetValue(null) }
            )
            .OfType<IEnumerable<Rule>>()
            .SelectMany(list => list)
            .Select(r => r.Code)
            .ToHashSet();
        Repository.None(All.Select(r => r.Rule.Code).Where(c => !lists.Contains(c)), "Rules that stand in no list");
    }

    /// <summary>A code that was once given is never given to another rule: the list only grows. A rule that is gone keeps its line, with "retired".</summary>
    [Fact]
    public void Codes_are_those_of_the_approved_list()
    {
        var approved = Repository
            .Text("tests/Lampwright.Tests/House/approved-codes.txt")
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .ToList();
        var living = approved.Where(l => !l.EndsWith(" (retired)", StringComparison.Ordinal));
        var now = All.Select(r => $"{r.Rule.Code} {r.Rule.Title}").Order(StringComparer.Ordinal).ToList();
        Assert.True(
            living.SequenceEqual(now),
            "The rules differ from approved-codes.txt. Not approved:\n"
                + string.Join('\n', now.Except(living))
                + "\nApproved and gone (mark as retired, never delete):\n"
                + string.Join('\n', living.Except(now))
        );
        Assert.Equal(approved.Count, approved.Select(l => l[..6]).Distinct().Count());
    }

    [Fact]
    public void Every_rule_has_a_paragraph_and_every_paragraph_a_rule()
    {
        var headings = Heading().Matches(Repository.Text("docs/findings.md")).Select(m => m.Groups[1].Value).ToList();
        var codes = All.Select(r => r.Rule.Code).ToList();
        Repository.None(codes.Except(headings), "Rules without a paragraph in docs/findings.md");
        Repository.None(headings.Except(codes), "Paragraphs in docs/findings.md without a rule");
        Assert.Equal(headings.Count, headings.Distinct().Count());
    }

    /// <summary>A rule that no test names has no test that raises it.</summary>
    [Fact]
    public void Every_rule_is_named_by_a_test()
    {
        var tests = string.Concat(
            Repository
                .Files("tests", ".cs")
                .Where(f => !f.Contains("/House/", StringComparison.Ordinal))
                .Select(Repository.Text)
        );
        var unnamed = All.Where(r =>
                !tests.Contains(r.Rule.Code, StringComparison.Ordinal)
                && !Regex.IsMatch(tests, $@"\b{r.Type}\.{r.Name}\b")
                && !Regex.IsMatch(tests, $@"using static [A-Za-z.]*{r.Type};[\s\S]*\b{r.Name}\b")
            )
            .Select(r => $"{r.Rule.Code} {r.Type}.{r.Name}");
        Repository.None(unnamed, "Rules that no test names");
    }

    [GeneratedRegex(@"^(STP|HEA|LIT|MET|FIT|BAL|REA|FIL)\d{3}$")]
    private static partial Regex Code();

    [GeneratedRegex(@"^###? ([A-Z]{3}\d{3})\b", RegexOptions.Multiline)]
    private static partial Regex Heading();
}
