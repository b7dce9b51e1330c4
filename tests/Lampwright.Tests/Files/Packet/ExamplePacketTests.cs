using System.IO.Compression;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Json;
using Lampwright.Files.Packet;
using UglyToad.PdfPig;

namespace Lampwright.Tests.Files.Packet;

/// <summary>The packet of a whole light, from its design file.</summary>
public sealed class ExamplePacketTests
{
    // Shared by all tests of this class, so no single test may cancel it.
    private static readonly Lazy<(LightEvaluation Light, ZipArchive Zip)> herbarium = new(() =>
    {
        var loaded = DesignLoader.Load(Example());
        var light = Evaluator.Evaluate(loaded.Design, draws: 32, cancel: CancellationToken.None);
        return (
            light,
            new ZipArchive(
                new MemoryStream(
                    PacketWriter.Zip(loaded.Design, light, loaded.Problems, cancel: CancellationToken.None)
                )
            )
        );
    });

    [Fact]
    public void Every_part_has_its_blank_its_fold_its_sheet_and_its_template()
    {
        var (light, zip) = herbarium.Value;
        Assert.NotEmpty(light.Metal!.Parts);
        var packet = Text(zip, "packet.pdf");
        var templates = Text(zip, "templates.pdf");
        foreach (var part in light.Metal.Parts)
        {
            Assert.Contains(part.Name, packet, StringComparison.Ordinal);
            Assert.Contains(part.Name, templates, StringComparison.Ordinal);
        }

        foreach (var (folder, kind) in new[] { ("blanks/", ".dxf"), ("blanks/", ".svg"), ("folded/", ".glb") })
        {
            var count = zip.Entries.Count(e =>
                e.FullName.StartsWith(folder, StringComparison.Ordinal)
                && e.FullName.EndsWith(kind, StringComparison.Ordinal)
            );
            Assert.Equal(light.Metal.Parts.Count, count);
        }
    }

    [Fact]
    public void No_predicted_number_of_a_real_light_stands_without_its_band()
    {
        using var stream = herbarium.Value.Zip.GetEntry("evaluation.json")!.Open();
        using var json = JsonDocument.Parse(stream);
        Walk(json.RootElement, "");
    }

    private static void Walk(JsonElement element, string path)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Number:
                Assert.True(
                    EvaluationJson.PlainNumbers.ContainsKey(path),
                    $"{path} = {element} stands without a band."
                );
                break;
            case JsonValueKind.Array:
                foreach (var item in element.EnumerateArray())
                {
                    Walk(item, path + "[]");
                }

                break;
            case JsonValueKind.Object when element.TryGetProperty("value", out var value):
                var (low, high) = (element.GetProperty("low").GetDouble(), element.GetProperty("high").GetDouble());
                Assert.True(low <= high, $"{path}: {low} {value} {high}");
                break;
            case JsonValueKind.Object:
                foreach (var property in element.EnumerateObject())
                {
                    Walk(property.Value, path.Length == 0 ? property.Name : $"{path}.{property.Name}");
                }

                break;
        }
    }

    private static string Text(ZipArchive zip, string name)
    {
        using var stream = zip.GetEntry(name)!.Open();
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        using var pdf = PdfDocument.Open(bytes.ToArray());
        return string.Concat(pdf.GetPages().Select(p => p.Text));
    }

    private static string Example([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "../../../../examples/herbarium/herbarium.toml");
}
