using System.Text.Json;
using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;

namespace Lampwright.Benchmarks.Problems;

/// <summary>A light to be timed: a design file, or a JSON with <c>light</c> (one, seen from there) and <c>replace</c> (pairs of texts).</summary>
internal static class LightFile
{
    /// <summary>The light, evaluated at nominal values.</summary>
    /// <exception cref="BadProblemException">A text to be replaced is not there, or the light comes to no rest.</exception>
    public static PreparedEvaluation Read(string file)
    {
        var (path, pairs) = (file, new List<(string Old, string New)>());
        if (Path.GetExtension(file) == ".json")
        {
            using var text = JsonDocument.Parse(File.ReadAllText(file));
            var root = text.RootElement;
            path = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, root.GetProperty("light").GetString()!);
            pairs.AddRange(
                root.GetProperty("replace").EnumerateArray().Select(p => (p[0].GetString()!, p[1].GetString()!))
            );
        }

        var design = File.ReadAllText(path);
        foreach (var (old, then) in pairs)
        {
            var at = design.IndexOf(old, StringComparison.Ordinal);
            design =
                at >= 0
                    ? design[..at] + then + design[(at + old.Length)..]
                    : throw new BadProblemException($"'{old}' is not in {Path.GetFileName(path)}");
        }

        string? Beside(string name) =>
            Path.Combine(Path.GetDirectoryName(path)!, name) is var there && File.Exists(there)
                ? File.ReadAllText(there)
                : null;
        var opened = OpenedLight.Of(DesignLoader.Parse(design, Path.GetFileName(path), Beside), Beside);
        var prepared = opened.Prepare();
        return prepared.Coupled is { HasSink: true }
            ? prepared
            : throw new BadProblemException($"{Path.GetFileName(path)} has no sink or comes to no rest");
    }
}
