using System.Globalization;
using Lampwright.Files.Charts;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Files.Charts;

/// <summary>What the page and the packet say of the bands of temperatures is what was measured.</summary>
public class HeatTextTests
{
    [Fact]
    public void How_far_bands_can_be_trusted_is_told_with_the_figures_of_the_second_truth()
    {
        var rows = Repository.Text("docs/heat.md").Split("### A second truth")[1].Split('\n');
        var all = Cells(rows, "| all | 4000 ");
        var stopped = Cells(rows, "| fins in a housing, fan stopped ");
        string[] told =
        [
            $"held {Percent(all[2])} % at the sink's base",
            $"{Percent(all[5])} % at the junction",
            $"{Percent(all[6].Split(',')[1])} % of junctions were hotter",
            $"in a housing {Percent(stopped[6].Split(',')[1])} %",
        ];

        Assert.All(told, words => Assert.Contains(words, HeatText.HowSure, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("docs/guide.md")]
    [InlineData("docs/first-light.md")]
    [InlineData("src/Lampwright.Files/Charts/StepCharts.cs")]
    public void No_page_promises_that_nine_of_ten_lights_lie_in_a_band(string path)
    {
        var said = Repository.Text(path);

        Assert.DoesNotContain("nine of ten such lights would", said, StringComparison.Ordinal);
        Assert.DoesNotContain("where nine of ten", said, StringComparison.Ordinal);
    }

    private static string[] Cells(string[] rows, string start) =>
        [
            .. Assert
                .Single(rows, r => r.StartsWith(start, StringComparison.Ordinal))
                .Trim('|')
                .Split('|')
                .Select(c => c.Trim()),
        ];

    private static string Percent(string cell) =>
        Math.Round(
                double.Parse(cell.Replace("%", "", StringComparison.Ordinal), CultureInfo.InvariantCulture),
                MidpointRounding.AwayFromZero
            )
            .ToString("0", CultureInfo.InvariantCulture);
}
