using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Json;
using Lampwright.Metal;
using Lampwright.Metal.Bending;
using Lampwright.Tests.Files.Fixtures;
using Lampwright.Tests.Metal;
using Lampwright.Tests.Metal.Bending;

namespace Lampwright.Tests.Files.Json;

public sealed partial class EvaluationJsonTests
{
    private static readonly FileProblem comma = new(
        "light.toml",
        12,
        9,
        "sheet.mild.thickness",
        "1,2 mm",
        "1.2 mm",
        "A decimal comma."
    );

    [Fact]
    public void No_predicted_number_stands_without_its_band()
    {
        foreach (var (path, number) in Leaves(Written()).Where(l => l.Element.ValueKind == JsonValueKind.Number))
        {
            var isBand =
                path.EndsWith(".value", StringComparison.Ordinal)
                || path.EndsWith(".low", StringComparison.Ordinal)
                || path.EndsWith(".high", StringComparison.Ordinal);
            Assert.True(
                isBand || EvaluationJson.PlainNumbers.ContainsKey(path),
                $"{path} = {number} stands without a band."
            );
        }
    }

    [Fact]
    public void Every_plain_number_that_is_declared_is_written()
    {
        var paths = Leaves(Written()).Select(l => l.Path).ToHashSet();
        Assert.Empty(EvaluationJson.PlainNumbers.Keys.Where(k => !paths.Contains(k)));
    }

    [Fact]
    public void Bands_hold_their_numbers()
    {
        foreach (var (path, band) in Bands(Written()))
        {
            var (value, low, high) = (
                band.GetProperty("value").GetDouble(),
                band.GetProperty("low").GetDouble(),
                band.GetProperty("high").GetDouble()
            );
            Assert.True(low <= value && value <= high, $"{path}: {low} {value} {high}");
            Assert.Equal(["value", "low", "high"], band.EnumerateObject().Select(p => p.Name));
        }
    }

    [Fact]
    public void Document_and_output_name_the_same_fields()
    {
        var documented = Field()
            .Matches(File.ReadAllText(Repository("docs/evaluation-json.md")))
            .ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
        var written = Leaves(Written())
            .Select(l => l.Path)
            .Concat(Bands(Written()).Select(b => b.Path))
            .Where(p => !Part().IsMatch(p))
            .ToHashSet();

        // A list or an object that is absent is null and stands in the document as what it would hold.
        written.RemoveWhere(p => written.Contains(p + "[]"));
        written.RemoveWhere(p => written.Any(w => w.StartsWith(p + ".", StringComparison.Ordinal)));
        Assert.Equal(written.Order(StringComparer.Ordinal), documented.Keys.Order(StringComparer.Ordinal));
        foreach (var (path, kind) in documented)
        {
            Assert.True(
                (kind == "plain") == EvaluationJson.PlainNumbers.ContainsKey(path),
                $"{path} is documented as {kind}."
            );
        }
    }

    [Fact]
    public void What_is_not_finite_is_null_and_never_a_word()
    {
        var light = SampleLight.Evaluation();
        var broken = light with
        {
            Light = light.Light! with
            {
                Efficiency = new(double.NaN, 0, 1),
                AxisCd = new(1, double.NegativeInfinity, double.PositiveInfinity),
                ExitM = (double.NaN, double.PositiveInfinity),
            },
        };
        var text = Text(broken);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, Parsed(text).GetProperty("light").GetProperty("efficiency").ValueKind);
    }

    [Fact]
    public void Same_evaluation_same_bytes() =>
        Assert.Equal(Text(SampleLight.Evaluation()), Text(SampleLight.Evaluation()));

    [Fact]
    public void Finding_carries_the_line_of_the_nearest_table_that_the_file_has()
    {
        using var stream = new MemoryStream();
        EvaluationJson.Write(SampleLight.Evaluation(), [], stream, path => path == "driver.main" ? (40, 1) : null);
        var findings = Parsed(Encoding.UTF8.GetString(stream.ToArray())).GetProperty("findings");
        Assert.Equal(40, findings[0].GetProperty("line").GetInt32());
        Assert.Equal("stop", findings[0].GetProperty("severity").GetString());
        Assert.Equal(JsonValueKind.Null, findings[1].GetProperty("line").ValueKind);
    }

    [Fact]
    public void Problems_are_told_even_when_nothing_could_be_evaluated()
    {
        using var stream = new MemoryStream();
        EvaluationJson.Write(null, [comma], stream);
        var json = Parsed(Encoding.UTF8.GetString(stream.ToArray()));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("steps").ValueKind);
        var problem = json.GetProperty("problems")[0];
        Assert.Equal((12, 9), (problem.GetProperty("line").GetInt32(), problem.GetProperty("column").GetInt32()));
        Assert.Equal("1,2 mm", problem.GetProperty("found").GetString());
        Assert.Equal("1.2 mm", problem.GetProperty("accepted").GetString());
    }

    [Fact]
    public void Ways_stand_beside_the_chain_and_are_there_without_it()
    {
        using var stream = new MemoryStream();
        EvaluationJson.WriteStation("steps", SampleLight.Evaluation() with { Steps = null }, [], stream);
        var json = Parsed(Encoding.UTF8.GetString(stream.ToArray()));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("steps").ValueKind);
        var (chain, behind) = (json.GetProperty("ways")[0], json.GetProperty("ways")[1]);
        Assert.Equal("stepped chain", chain.GetProperty("kind").GetString());
        Assert.True(chain.GetProperty("chosen").GetBoolean());
        Assert.Equal(0.2, chain.GetProperty("range").GetProperty("least").GetProperty("value").GetDouble());
        Assert.Equal(JsonValueKind.Null, chain.GetProperty("hiccupHz").ValueKind);
        Assert.Equal("does not work", behind.GetProperty("verdict").GetString());
        Assert.Equal("no", behind.GetProperty("regulates").GetString());
        Assert.Equal(2.4, behind.GetProperty("hiccupHz").GetProperty("most").GetDouble());
        Assert.Equal(JsonValueKind.Null, behind.GetProperty("range").ValueKind);
        Assert.Equal(JsonValueKind.Null, behind.GetProperty("efficiencyAtHalf").ValueKind);
    }

    [Fact]
    public void The_board_tells_its_threshold_its_stops_and_what_is_open()
    {
        using var stream = new MemoryStream();
        EvaluationJson.WriteStation("steps", SampleLight.Evaluation() with { Steps = null }, [], stream);
        var board = Parsed(Encoding.UTF8.GetString(stream.ToArray())).GetProperty("board");
        Assert.Equal(0.287, board.GetProperty("thresholdV").GetProperty("value").GetDouble(), 1e-9);
        Assert.True(board.GetProperty("plausible").GetBoolean());
        Assert.Equal(["STP001"], board.GetProperty("stops").EnumerateArray().Select(s => s.GetString()));
        Assert.Equal(0.33, board.GetProperty("marks")[1].GetProperty("ohm").GetDouble());
        var side = board.GetProperty("questions")[0];
        Assert.Equal("driver.main.sense.side", side.GetProperty("key").GetString());
        Assert.True(side.GetProperty("open").GetBoolean());
        Assert.Equal("STP001", side.GetProperty("stop").GetString());
    }

    [Fact]
    public void Other_stations_alone_carry_neither_ways_nor_board()
    {
        using var stream = new MemoryStream();
        EvaluationJson.WriteStation("heat", SampleLight.Evaluation(), [], stream);
        var json = Parsed(Encoding.UTF8.GetString(stream.ToArray()));
        Assert.Equal(0, json.GetProperty("ways").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, json.GetProperty("board").ValueKind);
    }

    [Fact]
    public void One_station_alone_leaves_the_others_out()
    {
        using var stream = new MemoryStream();
        EvaluationJson.WriteStation("metal", SampleLight.Evaluation(), [], stream);
        var json = Parsed(Encoding.UTF8.GetString(stream.ToArray()));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("steps").ValueKind);
        Assert.Equal("tray", json.GetProperty("metal").GetProperty("parts")[0].GetProperty("name").GetString());
    }

    private static JsonElement Written() => Parsed(Text(WithBends(WithTube(SampleLight.Evaluation()))));

    /// <summary>The same light with a box that has an order of bending and one that has none.</summary>
    private static LightEvaluation WithBends(LightEvaluation light)
    {
        var brake = Brakes.Of();
        PartBending Bent(PartSpec spec, params string[] pressed)
        {
            var made = SheetPart.Of(spec);
            var plan = BendOrder.Of(made.Folded!, brake, new HashSet<string>(pressed, StringComparer.Ordinal));
            return new(spec.Name, "part." + spec.Name, brake, plan, made.Folded!, made.Blank!);
        }

        var steep = new PartSpec("steep", Parts.Mild, FaceSpec.Rectangle(0.12, 0.1))
        {
            Flanges = [new("lip", "face.top", 0.02), new("back", "face.left", 0.02, 2.5)],
        };
        var bending = new BendingAnswer(brake, true, [Bent(Parts.Box(120, 100, 30), "wall_l"), Bent(steep)], []);
        return light with { Metal = light.Metal! with { Bending = new(bending) } };
    }

    [Fact]
    public void The_order_of_bending_is_told_stroke_by_stroke_or_with_what_stands_against_it()
    {
        var parts = Written().GetProperty("metal").GetProperty("bending").GetProperty("parts");
        Assert.Equal("order", parts[0].GetProperty("verdict").GetString());
        Assert.Equal(3, parts[0].GetProperty("strokes").GetArrayLength());
        Assert.Equal(90, parts[0].GetProperty("strokes")[0].GetProperty("swingToDeg").GetDouble(), 6);
        Assert.Equal("wall_l", parts[0].GetProperty("pressed")[0].GetString());
        Assert.Equal("none", parts[1].GetProperty("verdict").GetString());
        Assert.Equal("lip", parts[1].GetProperty("made")[0].GetString());
        var blocked = Assert.Single(parts[1].GetProperty("blocked").EnumerateArray());
        Assert.Equal("back", blocked.GetProperty("bend").GetString());
        Assert.Contains("closes", blocked.GetProperty("why").GetString(), StringComparison.Ordinal);
    }

    /// <summary>The same light, the blank of its first part the wrap of a tube, so that what a tube has is written too.</summary>
    private static LightEvaluation WithTube(LightEvaluation light)
    {
        WrapSide[] sides =
        [
            new("top", 0, 0.03, 0.002, default, default),
            new("right", 0.03, 0.02, 0.002, default, default),
        ];
        var first = light.Metal!.Parts[0];
        var tube = first with { Blank = first.Blank with { Wrap = new(0.2, sides) } };
        return light with { Metal = light.Metal with { Parts = [tube, .. light.Metal.Parts.Skip(1)] } };
    }

    private static JsonElement Parsed(string text) => JsonDocument.Parse(text).RootElement;

    private static string Text(LightEvaluation light)
    {
        using var stream = new MemoryStream();
        EvaluationJson.Write(light, [comma], stream, _ => (3, 1));
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static IEnumerable<(string Path, JsonElement Element)> Bands(JsonElement root) =>
        Nodes(root, "")
            .Where(n => n.Element.ValueKind == JsonValueKind.Object && n.Element.TryGetProperty("value", out _));

    private static IEnumerable<(string Path, JsonElement Element)> Leaves(JsonElement root) =>
        Nodes(root, "").Where(n => n.Element.ValueKind is not (JsonValueKind.Object or JsonValueKind.Array));

    private static IEnumerable<(string Path, JsonElement Element)> Nodes(JsonElement element, string path)
    {
        yield return (path, element);
        var inner = element.ValueKind switch
        {
            JsonValueKind.Object => element
                .EnumerateObject()
                .SelectMany(p => Nodes(p.Value, path.Length == 0 ? p.Name : $"{path}.{p.Name}")),
            JsonValueKind.Array => element.EnumerateArray().SelectMany(e => Nodes(e, path + "[]")),
            _ => [],
        };
        foreach (var node in inner)
        {
            yield return node;
        }
    }

    private static string Repository(string path, [CallerFilePath] string here = "")
    {
        // From tests/Lampwright.Tests/Files/Json.
        return Path.Combine(Path.GetDirectoryName(here)!, "../../../..", path);
    }

    [GeneratedRegex(@"^\| `([^`]+)` \| (\w+) \|", RegexOptions.Multiline)]
    private static partial Regex Field();

    [GeneratedRegex(@"\.(value|low|high)$|\]\.(value|low|high)$")]
    private static partial Regex Part();
}
