using Lampwright.Evaluation;
using Lampwright.Files.Packet;
using Lampwright.Tests.Files.Fixtures;
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
    public void Where_no_way_is_chosen_there_is_no_such_sheet()
    {
        var light = SampleLight.Evaluation();
        var none = light with { Ways = [.. light.Ways.Select(w => w with { IsChosen = false })] };
        Assert.DoesNotContain(Pages(none), p => p.Contains("Whythisway", StringComparison.Ordinal));
    }

    private static List<string> Pages(LightEvaluation light)
    {
        using var stream = new MemoryStream();
        PacketPdf.Write(SampleLight.Design(), light, "0000", stream);
        using var pdf = PdfDocument.Open(stream.ToArray());
        return [.. pdf.GetPages().Select(p => Packed(p.Text))];
    }

    private static string Packed(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
