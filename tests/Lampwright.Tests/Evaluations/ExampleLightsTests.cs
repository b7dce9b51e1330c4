using System.IO.Compression;
using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Files.Packet;
using Lampwright.Findings;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>What holds for every light in <c>examples/</c>: complete, buildable on paper, printed.</summary>
public class ExampleLightsTests
{
    private static readonly Dictionary<string, Lazy<(OpenedLight Opened, LightEvaluation Light)>> Lights = Directory
        .EnumerateFiles(Path.Combine(Repository.Root, "examples"), "*.toml", SearchOption.AllDirectories)
        .Where(f => Path.GetFileName(f) != "shop.toml")
        .ToDictionary(
            f => Path.GetFileNameWithoutExtension(f),
            f => new Lazy<(OpenedLight, LightEvaluation)>(() =>
            {
                var opened = OpenedLight.At(f);
                return (opened, opened.Prepare().WithBands(64));
            })
        );

    public static TheoryData<string> Names => [.. Lights.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_has_no_problem_and_no_stop(string name)
    {
        var (opened, light) = Lights[name].Value;
        Assert.Empty(opened.Problems.Select(p => p.ToString()));
        Assert.Empty(light.Findings.Where(f => f.Severity == Severity.Stop).Select(f => $"{f.Code} {f.Message}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_station_has_an_answer(string name)
    {
        var light = Lights[name].Value.Light;
        Assert.NotNull(light.Steps);
        Assert.NotNull(light.Heat);
        Assert.NotNull(light.Light);
        Assert.NotNull(light.Balance);
        Assert.NotNull(light.Readings);
        Assert.NotEmpty(light.Balance!.Tilts);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_part_is_folded_and_everything_is_placed_with_holes_that_meet(string name)
    {
        var (opened, light) = Lights[name].Value;
        var made = light.Metal!.Parts.Select(p => p.Path).Distinct().ToList();
        Assert.True(made.Count >= 4, $"{made.Count} parts");
        Assert.Equal(opened.Loaded.Design.Parts.Select(p => "part." + p.Name).Order(), made.Order());
        Assert.Empty(light.FitUp!.Unplaced);
        Assert.All(
            light.FitUp.Joints.SelectMany(j => j.Holes),
            h =>
                Assert.True(
                    h.MissMm.Value <= h.AllowsMm.Value + 1e-9,
                    $"{string.Join(" and ", h.Ids)}: {h.MissMm.Value} mm"
                )
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Light_leaves_level_or_downward_and_never_into_the_ceiling(string name)
    {
        var (opened, light) = Lights[name].Value;
        var sink = light.FitUp!.Placements.Single(p => p.Id.StartsWith("sink.", StringComparison.Ordinal)).Frame;
        var up = opened.Loaded.Design.Assembly!.Gravity switch
        {
            "+z" => -sink.Z.Z,
            "-z" => sink.Z.Z,
            "+y" => -sink.Z.Y,
            _ => sink.Z.Y,
        };
        Assert.True(up > -1e-9, $"the fins' way out points {up} upward");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_readings_are_read_and_all_have_a_prediction(string name)
    {
        var rows = Lights[name].Value.Light.Readings!.Rows;
        Assert.True(rows.Count >= 8, $"{rows.Count} readings");
        Assert.All(rows, r => Assert.NotNull(r.Predicted));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_packet_is_written(string name)
    {
        var (opened, light) = Lights[name].Value;
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
        foreach (var file in new[] { "packet.pdf", "templates.pdf", "cut-list.csv", "evaluation.json" })
        {
            Assert.True(zip.GetEntry(file)?.Length > 100, file);
        }
    }
}
