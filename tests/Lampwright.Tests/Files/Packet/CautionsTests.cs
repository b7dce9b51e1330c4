using System.Runtime.CompilerServices;
using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.Packet;
using Lampwright.Quantities;
using Lampwright.Tests.Files.Fixtures;

namespace Lampwright.Tests.Files.Packet;

public sealed class CautionsTests
{
    private static readonly LightEvaluation nothing = new() { Title = "", Draws = 0 };

    [Fact]
    public void Page_and_list_say_the_same()
    {
        var page = File.ReadAllText(Page());
        var wanted = Cautions.All.Select(c =>
            $"## {c.Title}\n\n{c.Text}\n\nApplies {(c.Where == "always" ? "" : "when ")}{c.Where}. (`{c.Id}`)"
        );
        foreach (var section in wanted)
        {
            Assert.Contains(section, page, StringComparison.Ordinal);
        }

        Assert.Equal(Cautions.All.Count, page.Split("\n## ").Length - 1);
    }

    [Fact]
    public void Ids_are_all_different() => Assert.Equal(Cautions.All.Count, Cautions.All.DistinctBy(c => c.Id).Count());

    [Fact]
    public void Unknown_supply_is_taken_for_mains() =>
        Assert.Contains(Cautions.For(new(), nothing), c => c.Id == "mains");

    [Fact]
    public void Direct_supply_has_the_caution_of_batteries_and_none_of_mains()
    {
        var design = new LightDesign { Place = new() { Supply = new(SupplyKind.Dc, Value.Exact(12), null) } };
        var ids = Cautions.For(design, nothing).Select(c => c.Id).ToList();
        Assert.Contains("battery", ids);
        Assert.DoesNotContain("mains", ids);
    }

    [Fact]
    public void What_hangs_can_fall_and_what_does_not_cannot()
    {
        Assert.Contains(Cautions.For(SampleLight.Design(), nothing), c => c.Id == "falling");
        Assert.DoesNotContain(Cautions.For(new(), nothing), c => c.Id == "falling");
    }

    [Fact]
    public void Bending_is_cautioned_where_a_blank_has_bends()
    {
        Assert.Contains(Cautions.For(new(), SampleLight.Evaluation()), c => c.Id == "brake");
        Assert.DoesNotContain(Cautions.For(new(), nothing), c => c.Id == "brake");
    }

    private static string Page([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "../../../../docs/cautions.md");
}
