using System.IO.Compression;
using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Files.Packet;
using Lampwright.Tests.House;
using UglyToad.PdfPig;

namespace Lampwright.Tests.Files.Packet;

/// <summary>What the shop reads of each example: nothing of a fan that is not there, no screw cut short.</summary>
public class EveryExamplePacketTests
{
    [Theory]
    [InlineData("boatshed")]
    [InlineData("puppet-theatre")]
    [InlineData("herbarium")]
    public void Screws_are_told_whole_and_fans_only_where_there_are_any(string name)
    {
        var opened = OpenedLight.At(Path.Combine(Repository.Root, "examples", name, name + ".toml"));
        var light = opened.Prepare().WithBands(32);
        using var zip = new ZipArchive(
            new MemoryStream(
                PacketWriter.Zip(
                    opened.Loaded.Design,
                    light,
                    opened.Problems,
                    cancel: TestContext.Current.CancellationToken
                )
            )
        );
        using var memory = new MemoryStream();
        using (var packed = zip.GetEntry("packet.pdf")!.Open())
        {
            packed.CopyTo(memory);
        }

        using var pdf = PdfDocument.Open(memory.ToArray());
        var pages = pdf.GetPages().Select(p => Squeezed(p.Text)).ToList();
        var joints = string.Concat(
            pages.Where(p => p.Contains(Squeezed("stacked in the order"), StringComparison.Ordinal))
        );
        Assert.All(
            light.FitUp!.Joints.Where(j => j.Screw.Length > 0),
            j => Assert.Contains(Squeezed(j.Screw), joints, StringComparison.Ordinal)
        );
        var hasFan = opened.Loaded.Design.Fans.Count > 0;
        Assert.Equal(hasFan, pages[0].Contains(Squeezed("fan stopped"), StringComparison.Ordinal));
        Assert.Equal(hasFan, pages[^1].Contains(Squeezed("without the fan"), StringComparison.Ordinal));
    }

    private static string Squeezed(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
