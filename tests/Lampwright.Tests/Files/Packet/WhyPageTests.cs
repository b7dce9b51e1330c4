using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Files.Packet;
using Lampwright.Steps.Ways;
using Lampwright.Tests.Files.Fixtures;
using Lampwright.Tests.House;
using UglyToad.PdfPig;

namespace Lampwright.Tests.Files.Packet;

/// <summary>The sheet that says why the light is dimmed the way it is.</summary>
public sealed class WhyPageTests
{
    [Fact]
    public void The_chosen_way_gives_its_reason_and_every_other_says_why_not()
    {
        var page = Assert.Single(
            Pages(SampleLight.Evaluation()),
            p => p.Contains("Whythisway", StringComparison.Ordinal)
        );
        var (chosen, other) = (SampleWays.All[0].Way, SampleWays.All[1].Way);
        Assert.Contains(Packed("Works: " + chosen.Reason), page, StringComparison.Ordinal);
        Assert.Contains(Packed(other.Name), page, StringComparison.Ordinal);
        Assert.Contains(Packed("does not work" + other.Reason), page, StringComparison.Ordinal);
        Assert.Contains(Packed("Where driver and light meet, set to 1.75 A"), page, StringComparison.Ordinal);
        Assert.Contains(Packed("The first tenth of a second, set to 1.75 A"), page, StringComparison.Ordinal);
    }

    [Fact]
    public void Mains_stored_charge_and_the_lost_approval_stand_on_it()
    {
        var page = Assert.Single(
            Pages(SampleLight.Evaluation()),
            p => p.Contains("Whythisway", StringComparison.Ordinal)
        );
        foreach (var caution in Cautions.All.Where(c => c.Id is "mains" or "charge" or "sense"))
        {
            Assert.Contains(Packed(caution.Text), page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_chosen_way_that_is_a_stop_is_not_praised()
    {
        var light = SampleLight.Evaluation();
        var chosen = light.Ways[0];
        var stopped = chosen with
        {
            Way = chosen.Way with { Verdict = Verdict.Stop, Reason = "The sense part may be at mains potential." },
        };
        var pages = Pages(light with { Ways = [stopped, light.Ways[1]] });
        var page = Assert.Single(pages, p => p.Contains("Whynotthisway", StringComparison.Ordinal));
        Assert.Contains(Packed("Stop: The sense part may be at mains potential."), page, StringComparison.Ordinal);
        Assert.DoesNotContain(pages, p => p.Contains("Whythisway", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_no_way_is_chosen_there_is_no_such_sheet()
    {
        var light = SampleLight.Evaluation();
        var none = light with { Ways = [.. light.Ways.Select(w => w with { IsChosen = false })] };
        Assert.DoesNotContain(Pages(none), p => p.Contains("Whythisway", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("herbarium", "A4")]
    [InlineData("herbarium", "Letter")]
    [InlineData("boatshed", "A4")]
    [InlineData("boatshed", "Letter")]
    [InlineData("puppet-theatre", "Letter")]
    public void All_ways_of_a_whole_light_stand_on_one_sheet(string name, string paper)
    {
        var opened = OpenedLight.At(Path.Combine(Repository.Root, "examples", name, name + ".toml"));
        var light = opened.Prepare().Nominal();
        var design = opened.Loaded.Design;
        var pages = Pages(light, design with { Show = design.Show with { Paper = paper } });
        var page = Assert.Single(pages, p => p.Contains("Whythisway", StringComparison.Ordinal));
        Assert.All(
            light.Ways.Where(w => !w.IsChosen),
            w => Assert.Contains(Packed(w.Way.Reason)[..40], page, StringComparison.Ordinal)
        );
    }

    private static List<string> Pages(LightEvaluation light, LightDesign? design = null)
    {
        using var stream = new MemoryStream();
        PacketPdf.Write(design ?? SampleLight.Design(), light, "0000", stream);
        using var pdf = PdfDocument.Open(stream.ToArray());
        return [.. pdf.GetPages().Select(p => Packed(p.Text))];
    }

    private static string Packed(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
