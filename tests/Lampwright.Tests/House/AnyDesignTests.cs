using System.Collections;
using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Json;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Lampwright.Metal;

namespace Lampwright.Tests.House;

/// <summary>
/// Designs that nobody would draw, made from the example with a fixed seed: tables taken out, values blown up or shrunk, words put in
/// for others. Whatever comes, there is an answer or a problem, no exception, and no number that is none.
/// </summary>
public sealed partial class AnyDesignTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "examples/herbarium");
    private static readonly string Text = File.ReadAllText(Path.Combine(Folder, "herbarium.toml"));

    private static readonly double[] Factors = [-1, 0, 1e-9, 1e-3, 0.1, 0.5, 2, 10, 1e3, 1e9, 1e30];

    public static TheoryData<int> Seeds => new(Enumerable.Range(1, 10));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Values_gone_wild_are_answered(int seed)
    {
        var random = new Random(seed);
        for (var i = 0; i < 5; i++)
        {
            var share = random.NextDouble() * 0.15;
            Hold(
                Number()
                    .Replace(
                        Text,
                        m =>
                            random.NextDouble() < share
                                ? (
                                    double.Parse(m.Value, CultureInfo.InvariantCulture)
                                    * Factors[random.Next(Factors.Length)]
                                ).ToString("R", CultureInfo.InvariantCulture)
                                : m.Value
                    ),
                $"seed {seed}, light {i}"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Lights_with_tables_missing_are_answered(int seed)
    {
        var random = new Random(1000 + seed);
        var tables = Table().Split(Text);
        for (var i = 0; i < 5; i++)
        {
            var share = random.NextDouble();
            Hold(
                string.Concat(tables.Where(t => !t.StartsWith('[') || random.NextDouble() >= share)),
                $"seed {seed}, light {i}"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Lights_with_keys_missing_are_answered(int seed)
    {
        var random = new Random(2000 + seed);
        var lines = Text.Split('\n');
        for (var i = 0; i < 5; i++)
        {
            var share = random.NextDouble() * 0.3;
            Hold(
                string.Join('\n', lines.Where(l => !l.Contains('=') || random.NextDouble() >= share)),
                $"seed {seed}, light {i}"
            );
        }
    }

    /// <summary>Every form of sink and every loss of the air, each with values gone wild.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Sinks_and_fans_of_any_form_are_answered(int seed)
    {
        const string Fins = "fins        = { count = 16, height = \"48 mm\", thickness = \"1.0 mm\" }";
        const string Air = "air         = [";
        Assert.Contains(Fins, Text, StringComparison.Ordinal);
        Assert.Contains(Air, Text, StringComparison.Ordinal);
        var random = new Random(3000 + seed);
        string Wild(string text, double share) =>
            Number()
                .Replace(
                    text,
                    m =>
                        random.NextDouble() < share
                            ? Math.Ceiling(
                                    double.Parse(m.Value, CultureInfo.InvariantCulture)
                                        * Math.Exp(6 * (random.NextDouble() - 0.5))
                                )
                                .ToString("R", CultureInfo.InvariantCulture)
                            : m.Value
                );
        string[] forms =
        [
            "pins = { across = 10, along = 14, diameter = \"3 mm\", height = \"45 mm\", rows = \"staggered\" }",
            "pins = { across = 12, along = 12, diameter = \"2 mm\", height = \"30 mm\" }",
            "pipes = { count = 6, diameter = \"6 mm\", carries = \"35 W\" }\nstack = { count = 40, across = \"90 mm\", along = \"50 mm\", thickness = \"1 mm\", gap = \"2 mm\" }",
            "trials = [{ power = \"20 W\", rise = \"9 K\" }, { power = \"10 W\", rise = \"22 K\", fan = \"stopped\" }]\nwanted = \"50 degC\"",
            "wanted = \"60 degC\"",
        ];
        const string Losses =
            "starts_at = \"5 V\"\nlosses = [{ kind = \"filter\", pressure = \"20 Pa\", flow = \"40 m3/h\" }, { kind = \"slots\", size = [\"60 mm\", \"30 mm\"], open = 0.4, slot = \"3 mm\" }, { kind = \"turn\" }, { kind = \"guard\", open = 0.8 }]\nbeside = [\"tray.air_in\", \"tray.air_out\"]\n";
        for (var i = 0; i < forms.Length; i++)
        {
            var text = Text.Replace(Fins, Wild(forms[i], 0.5), StringComparison.Ordinal)
                .Replace(Air, Wild(Losses, 0.3) + Air, StringComparison.Ordinal);
            Hold(text, $"seed {seed}, form {i}");
        }
    }

    /// <summary>One value at a time, each of the file, at both ends of what a person could type.</summary>
    [Theory]
    [InlineData(1e-3)]
    [InlineData(0)]
    [InlineData(1e3)]
    public void Every_single_value_can_be_absurd(double factor)
    {
        var numbers = Number().Matches(Text).Where(m => m.Value != "0").ToList();
        for (var i = 0; i < numbers.Count; i += 5)
        {
            var m = numbers[i];
            var absurd = double.Parse(m.Value, CultureInfo.InvariantCulture) * factor;
            Hold(
                Text[..m.Index] + absurd.ToString("R", CultureInfo.InvariantCulture) + Text[(m.Index + m.Length)..],
                $"line {Text[..m.Index].Count(c => c == '\n') + 1}, {m.Value} times {factor}"
            );
        }
    }

    private static void Hold(string text, string which)
    {
        try
        {
            var opened = OpenedLight.Of(DesignLoader.Parse(text, "any.toml", Beside), Beside);
            var light = opened.Prepare().WithBands(16);
            foreach (var finding in light.Findings)
            {
                HoldFinding(finding);
            }

            using var stream = new MemoryStream();
            EvaluationJson.Write(light, opened.Problems, stream, opened.Place);
            using var document = JsonDocument.Parse(stream.ToArray());
            HoldNumbers(light, "");
        }
        catch (Exception e) when (e is not Xunit.Sdk.XunitException)
        {
            Assert.Fail($"{which}: {e}");
        }
        catch (Xunit.Sdk.XunitException e)
        {
            Assert.Fail($"{which}: {e.Message}");
        }
    }

    private static void HoldFinding(Finding finding)
    {
        Assert.False(string.IsNullOrWhiteSpace(finding.Path), $"{finding.Code} has no place: {finding.Message}");
        Assert.True(
            finding.Message.Length > 10 && (finding.Message[^1] is '.' or '?'),
            $"{finding.Code}: {finding.Message}"
        );
        foreach (var said in new[] { finding.Message, finding.Observed, finding.Limit })
        {
            Assert.False(
                said.Contains("NaN", StringComparison.Ordinal)
                    || said.Contains("Infinity", StringComparison.Ordinal)
                    || said.Contains('∞', StringComparison.Ordinal),
                $"{finding.Code}: {said}"
            );
        }
    }

    /// <summary>Every predicted number of an answer is a number and lies in its band.</summary>
    private static void HoldNumbers(object? answer, string path)
    {
        switch (answer)
        {
            case null or string or Blank or FoldedPart or Finding:
                break;
            case Predicted p:
                Assert.True(
                    double.IsFinite(p.Low) && double.IsFinite(p.High) && p.Low <= p.Value && p.Value <= p.High,
                    $"{path}: {p}"
                );
                break;
            case double d:
                Assert.True(double.IsFinite(d), $"{path}: {d}");
                break;
            case Lazy<AirAnswer?> later:
                HoldNumbers(later.Value, path);
                break;
            case IEnumerable list:
                foreach (var item in list)
                {
                    HoldNumbers(item, path + "[]");
                }

                break;
            default:
                if (answer.GetType().Namespace is "Lampwright.Evaluation" or "Lampwright.Evaluation.Answers")
                {
                    foreach (
                        var property in answer.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0)
                    )
                    {
                        HoldNumbers(property.GetValue(answer), path + "." + property.Name);
                    }
                }

                break;
        }
    }

    private static string? Beside(string name)
    {
        var path = Path.Combine(Folder, Path.GetFileName(name));
        return File.Exists(path) ? File.ReadAllText(path) : null;
    }

    // A number of a value, not the digit of a name such as M4 or of a hex code.
    [GeneratedRegex(@"(?<![\w.#])\d+(\.\d+)?(?![\w.])")]
    private static partial Regex Number();

    [GeneratedRegex(@"^(?=\[)", RegexOptions.Multiline)]
    private static partial Regex Table();
}
