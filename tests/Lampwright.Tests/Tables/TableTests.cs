using System.Globalization;
using System.Text.RegularExpressions;
using Lampwright.Tables;

namespace Lampwright.Tests.Tables;

/// <summary>Every table with a heading of <c># rows:</c> keeps what it says, and every source it names is registered.</summary>
public partial class TableTests
{
    public static TheoryData<string> Files =>
        [
            .. typeof(TableResource)
                .Assembly.GetManifestResourceNames()
                .Where(name => name.EndsWith(".csv", StringComparison.Ordinal))
                .Select(name => name["Tables/".Length..])
                .Where(file => TableResource.Read(file).Notes.ContainsKey("rows")),
        ];

    [Theory]
    [MemberData(nameof(Files))]
    public void Table_has_the_rows_the_sum_and_the_sources_it_says(string file)
    {
        var table = TableResource.Read(file);
        Assert.Equal(int.Parse(table.Notes["rows"], CultureInfo.InvariantCulture), table.RowCount);
        Assert.Equal(double.Parse(table.Notes["sum"], CultureInfo.InvariantCulture), table.Sum, 1e-6);
        var registered = Registered();
        string[] named = table.Columns.Contains("source")
            ? [.. Enumerable.Range(0, table.RowCount).Select(i => table.Text(i, "source"))]
            : table.Notes["source"].Split(',', StringSplitOptions.TrimEntries);
        Assert.All(named, id => Assert.Contains(id, registered));
    }

    [Fact]
    public void Every_source_is_registered_once()
    {
        var ids = Registered();
        Assert.Equal(
            ids.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
            ids.Order(StringComparer.Ordinal)
        );
    }

    private static string[] Registered()
    {
        using var stream = typeof(TableResource).Assembly.GetManifestResourceStream("Tables/sources.toml")!;
        using var reader = new StreamReader(stream);
        return [.. Heading().Matches(reader.ReadToEnd()).Select(m => m.Groups["id"].Value)];
    }

    [GeneratedRegex(@"^\[(?<id>[^\]]+)\]", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Heading();
}
