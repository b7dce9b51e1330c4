using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Lampwright.Evaluation;
using Lampwright.Tables;
using Tomlyn;
using Tomlyn.Model;

namespace Lampwright.Tests.House;

/// <summary>Tables, sources and the named errors of methods.</summary>
public sealed partial class TableTests
{
    private static readonly TomlTable Registered = TomlSerializer.Deserialize<TomlTable>(
        Repository.Text("src/Lampwright/Tables/sources.toml")
    )!;

    public static TheoryData<string> Files =>
        new(Repository.Files("src/Lampwright/Tables", ".csv").Select(f => Path.GetFileName(f)));

    [Theory]
    [MemberData(nameof(Files))]
    public void A_table_has_as_many_rows_and_the_sum_that_it_says(string file)
    {
        var table = TableResource.Read(file);
        Assert.True(table.Notes.ContainsKey("rows"), $"{file} does not say how many rows it has.");
        Assert.True(table.Notes.ContainsKey("sum"), $"{file} does not say the sum of its numbers.");
        Assert.Equal(int.Parse(table.Notes["rows"], CultureInfo.InvariantCulture), table.RowCount);
        var sum = double.Parse(table.Notes["sum"], CultureInfo.InvariantCulture);
        Assert.True(Math.Abs(table.Sum - sum) <= 1e-9 * Math.Max(1, sum), $"{file}: {table.Sum} instead of {sum}");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_table_names_registered_sources(string file)
    {
        var table = TableResource.Read(file);
        Assert.True(table.Notes.ContainsKey("source"), $"{file} names no source.");
        var named = table.Columns.Contains("source")
            ? Enumerable.Range(0, table.RowCount).Select(r => table.Text(r, "source"))
            : table.Notes["source"].Split(',').Select(s => s.Trim());
        Repository.None(named.Where(s => !Registered.ContainsKey(s)), file + " names sources that are not registered");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_table_is_read(string file) =>
        Assert.True(
            Repository
                .Files("src/Lampwright", ".cs")
                .Concat(Repository.Files("tests/Lampwright.References", ".cs"))
                .Any(f => Repository.Text(f).Contains($"\"{file}\"", StringComparison.Ordinal)),
            $"{file} is read by nothing."
        );

    [Fact]
    public void Every_source_says_who_what_where_and_how_it_was_obtained()
    {
        string[] ways = ["published", "second-hand", "memory", "common practice", "derived"];
        var wrong = new List<string>();
        foreach (var (id, entry) in Registered)
        {
            var source = Assert.IsType<TomlTable>(entry);
            wrong.AddRange(
                new[] { "author", "title", "place", "obtained" }
                    .Where(key => !source.ContainsKey(key))
                    .Select(key => $"[{id}] has no {key}")
            );
            if (source.TryGetValue("obtained", out var way) && !ways.Contains((string)way))
            {
                wrong.Add($"[{id}] was obtained: {way}");
            }
        }

        Repository.None(wrong, "Sources");
    }

    /// <summary>A source is cited by its id, its designation (IEC 60063) or a name of its author.</summary>
    [Fact]
    public void Every_registered_source_is_cited()
    {
        var text = Cited().ToUpperInvariant();
        Repository.None(
            Registered
                .Where(s =>
                    !Names(s.Key, (TomlTable)s.Value)
                        .Any(n => text.Contains(n.ToUpperInvariant(), StringComparison.Ordinal))
                )
                .Select(s => s.Key),
            "Sources that nothing cites"
        );
    }

    [Fact]
    public void Every_standard_that_is_cited_is_registered()
    {
        var registered = Flat(Repository.Text("src/Lampwright/Tables/sources.toml"));
        var cited = Repository
            .Files("src/Lampwright", ".cs")
            .SelectMany(f => Standard().Matches(Repository.Text(f)).Select(m => (File: f, Name: m.Groups[1].Value)))
            .Where(c => !registered.Contains(Flat(c.Name), StringComparison.Ordinal))
            .Select(c => $"{c.Name} in {c.File}");
        Repository.None(cited, "Cited and not registered");
    }

    [Fact]
    public void Every_author_that_is_cited_with_a_year_is_registered()
    {
        var registered = Repository.Text("src/Lampwright/Tables/sources.toml");
        var cited = Repository
            .Files("src/Lampwright", ".cs")
            .SelectMany(f => Author().Matches(Repository.Text(f)).Select(m => (File: f, Name: m.Groups[1].Value)))
            .Where(c => !registered.Contains(c.Name, StringComparison.OrdinalIgnoreCase))
            .Select(c => $"{c.Name} in {c.File}");
        Repository.None(cited, "Cited and not registered");
    }

    [Fact]
    public void Every_error_of_a_method_has_a_name_of_its_station_a_width_and_a_source()
    {
        var errors = typeof(Evaluator)
            .Assembly.GetTypes()
            .SelectMany(t =>
                t.GetProperties(BindingFlags.Static | BindingFlags.Public).Select(p => (Type: t, Property: p))
            )
            .Where(p =>
                p.Property.GetIndexParameters().Length == 0
                && typeof(IEnumerable<MethodError>).IsAssignableFrom(p.Property.PropertyType)
            )
            .SelectMany(p =>
                ((IEnumerable)p.Property.GetValue(null)!).Cast<MethodError>().Select(e => (p.Type, Error: e))
            )
            .ToList();
        Assert.NotEmpty(errors);
        foreach (var (type, error) in errors)
        {
            var station = type.Namespace!.Split('.')[1].ToLowerInvariant();
            Assert.True(
                ErrorName().IsMatch(error.Name)
                    && error
                        .Name.Replace("_", "", StringComparison.Ordinal)
                        .StartsWith(station + ".", StringComparison.Ordinal),
                $"{type.Name}: {error.Name}"
            );
            Assert.True(error.HalfWidth is > 0 and < 1, $"{error.Name} is {error.HalfWidth} wide.");
            Assert.False(string.IsNullOrWhiteSpace(error.Source), $"{error.Name} has no source.");
        }

        Assert.Equal(errors.Count, errors.Select(e => e.Error.Name).Distinct().Count());
    }

    private static string Cited() =>
        string.Concat(
            Repository
                .Files("src", ".cs", ".csv")
                .Concat(Repository.Files("docs", ".md"))
                .Concat(Repository.Files("tests/Lampwright.References", ".cs"))
                .Select(Repository.Text)
        );

    private static IEnumerable<string> Names(string id, TomlTable source)
    {
        yield return id;
        var title = (string)source["title"];
        // Designations have digits: IEC 60063, Y14.5, FAA-H-8083-31. A year alone is none.
        foreach (
            var designation in Standard()
                .Matches(title)
                .Select(m => m.Groups[1].Value)
                .Concat(Designation().Matches(title).Select(m => m.Value).Where(d => !Year().IsMatch(d)))
        )
        {
            yield return designation;
        }

        yield return title;
        foreach (var author in Word().Matches((string)source["author"]).Select(m => m.Value))
        {
            if (
                author.Length > 4
                && author is not ("International" or "Commission" or "Institute" or "European" or "Committee")
            )
            {
                yield return author;
            }
        }
    }

    private static string Flat(string text) =>
        text.Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal).ToUpperInvariant();

    [GeneratedRegex(
        @"\b((?:IEC|ISO(?! 100\b)|EN|DIN|IEEE|ASME|VDI|JESD|JCGM)(?: (?:TR|TS|EN|ISO|IEC|Y14\.))* ?\d{2,6}(?:-\d{1,2}(?!\d))?)"
    )]
    private static partial Regex Standard();

    [GeneratedRegex(@"\b([A-Z][a-zé]{3,})(?: and [A-Z][a-z]+| et al\.)? \(?(?:19|20)\d\d\b")]
    private static partial Regex Author();

    [GeneratedRegex(@"(?<=^|[\s(])[\p{L}-]*\d[\w./-]{2,}[\w]")]
    private static partial Regex Designation();

    [GeneratedRegex(@"^(19|20)\d\d$")]
    private static partial Regex Year();

    [GeneratedRegex(@"^[a-z_]+\.[a-z0-9_]+$")]
    private static partial Regex ErrorName();

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Word();
}
