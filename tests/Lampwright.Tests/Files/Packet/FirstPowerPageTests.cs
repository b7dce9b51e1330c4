using Lampwright.Files.Packet;
using Lampwright.Steps.Faults;
using Lampwright.Tests.Files.Fixtures;
using UglyToad.PdfPig;

namespace Lampwright.Tests.Files.Packet;

/// <summary>The lines to tick before the first power: no trial of a lead that is not known to be borne.</summary>
public sealed class FirstPowerPageTests
{
    private static readonly string Pull = "Pulleachleadofthechainonce";
    private static readonly string Tug = "Tugateachleadofthechain";

    [Theory]
    [InlineData(Survival.Yes, true)]
    [InlineData(Survival.Unknown, false)]
    [InlineData(Survival.No, false)]
    public void A_lead_is_only_pulled_for_a_trial_where_everything_bears_it(Survival driver, bool pulls)
    {
        var page = Page(faults =>
            [
                .. faults.Select(f =>
                    f with
                    {
                        Emitter = Survival.Yes,
                        Driver = f.Fault.Kind == FaultKind.LeadBroken ? driver : f.Driver,
                        Resistors = Survival.Yes,
                    }
                ),
            ]
        );
        Assert.Equal(pulls, page.Contains(Pull, StringComparison.Ordinal));
        Assert.Equal(!pulls, page.Contains(Tug, StringComparison.Ordinal));
    }

    [Fact]
    public void Where_no_loose_lead_was_played_none_is_pulled_for_a_trial()
    {
        var page = Page(_ => []);
        Assert.DoesNotContain(Pull, page, StringComparison.Ordinal);
        Assert.Contains(Tug, page, StringComparison.Ordinal);
    }

    private static string Page(Func<IReadOnlyList<FaultResult>, IReadOnlyList<FaultResult>> change)
    {
        var light = SampleLight.Evaluation();
        var steps = light.Steps!;
        using var stream = new MemoryStream();
        PacketPdf.Write(
            SampleLight.Design(),
            light with
            {
                Board = null,
                Steps = steps with { Faults = change(steps.Faults) },
            },
            "0000",
            stream
        );
        using var pdf = PdfDocument.Open(stream.ToArray());
        return Assert.Single(
            pdf.GetPages().Select(p => p.Text.Replace(" ", "", StringComparison.Ordinal)),
            p => p.Contains("Dummyloadbeforetheemitter", StringComparison.Ordinal)
        );
    }
}
