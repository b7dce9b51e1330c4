using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Drawings;
using Lampwright.Files.Json;
using Lampwright.Files.Packet.Templates;

namespace Lampwright.Files.Packet;

/// <summary>How far the packet is.</summary>
/// <param name="Done">Files that are finished.</param>
/// <param name="Total">Files in all.</param>
/// <param name="Name">The file that was finished last.</param>
public readonly record struct PacketProgress(int Done, int Total, string Name);

/// <summary>Writes the whole packet: papers, templates, blanks, folds, lists, numbers.</summary>
/// <remarks>
/// A folder is first filled beside its place and then put there in one move, so that a crash leaves the old packet or the new one. The
/// folders <c>blanks</c> and <c>folded</c> belong to the packet; whatever else the maker laid there by hand stays.
/// </remarks>
public static class PacketWriter
{
    /// <summary>Writes the packet into a folder, which is made if it is missing.</summary>
    /// <param name="design">What the maker gave.</param>
    /// <param name="evaluation">What is known of it.</param>
    /// <param name="problems">Problems of the design file.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="place">Line and column of a path in the design file; null where nothing is known of places.</param>
    /// <param name="progress">Told after each file; may be null.</param>
    /// <param name="cancel">Ends the writing between two files and leaves the folder as it was.</param>
    /// <returns>Names of the files, relative to the folder, in the order they were written.</returns>
    public static IReadOnlyList<string> Write(
        LightDesign design,
        LightEvaluation evaluation,
        IReadOnlyList<FileProblem> problems,
        string folder,
        Func<string, (int Line, int Column)?>? place = null,
        IProgress<PacketProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        var target = Path.GetFullPath(folder);
        var parent = Path.GetDirectoryName(target) ?? target;
        Directory.CreateDirectory(parent);
        var fresh = Path.Combine(parent, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}");
        var names = new List<string>();
        try
        {
            foreach (var (name, content) in Contents(design, evaluation, problems, place, progress, cancel))
            {
                var file = Path.Combine(fresh, name);
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                File.WriteAllBytes(file, content);
                names.Add(name);
            }

            PutInPlace(fresh, target, names);
        }
        finally
        {
            if (Directory.Exists(fresh))
            {
                Directory.Delete(fresh, recursive: true);
            }
        }

        return names;
    }

    /// <summary>The whole packet as one zip in memory.</summary>
    /// <param name="design">What the maker gave.</param>
    /// <param name="evaluation">What is known of it.</param>
    /// <param name="problems">Problems of the design file.</param>
    /// <param name="place">Line and column of a path in the design file; null where nothing is known of places.</param>
    /// <param name="progress">Told after each file; may be null.</param>
    /// <param name="cancel">Ends the writing between two files.</param>
    public static byte[] Zip(
        LightDesign design,
        LightEvaluation evaluation,
        IReadOnlyList<FileProblem> problems,
        Func<string, (int Line, int Column)?>? place = null,
        IProgress<PacketProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in Contents(design, evaluation, problems, place, progress, cancel))
            {
                var entry = zip.CreateEntry(name, CompressionLevel.Fastest);

                // A fixed time, so that the same light gives the same entries.
                entry.LastWriteTime = new DateTimeOffset(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
                using var stream = entry.Open();
                stream.Write(content);
            }
        }

        return bytes.ToArray();
    }

    /// <summary>Short code of an evaluation, the same for the same numbers: it stands on every sheet.</summary>
    public static string StateOf(ReadOnlySpan<byte> evaluationJson)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(evaluationJson));
        return $"{hash[..4]}-{hash[4..8]}";
    }

    private static IEnumerable<(string Name, byte[] Content)> Contents(
        LightDesign design,
        LightEvaluation evaluation,
        IReadOnlyList<FileProblem> problems,
        Func<string, (int Line, int Column)?>? place,
        IProgress<PacketProgress>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(evaluation);
        var json = Bytes(s => EvaluationJson.Write(evaluation, problems, s, place));
        var parts = evaluation.Metal?.Parts ?? [];
        var safe = SafeName.Of([.. parts.Select(p => p.Name)]);
        var files = new List<(string Name, Func<byte[]> Content)>
        {
            ("evaluation.json", () => json),
            ("cut-list.csv", () => Text(w => CutListCsv.Write(evaluation, w))),
            ("marking-out.csv", () => Text(w => MarkingOutCsv.Write(evaluation, w))),
            ("packet.pdf", () => Bytes(s => PacketPdf.Write(design, evaluation, StateOf(json), s))),
            ("templates.pdf", () => Bytes(s => TemplatesPdf.Write(evaluation, TemplateOptions.Of(design.Show), s))),
        };
        for (var i = 0; i < parts.Count; i++)
        {
            var (part, name) = (parts[i], safe[i]);
            files.Add(($"blanks/{name}.dxf", () => Encoding.ASCII.GetBytes(DxfBlank.File(part.Blank))));
            files.Add(
                (
                    $"blanks/{name}.svg",
                    () => Utf8(SvgDrawing.File(BlankDrawing.Of(part.Blank, new() { Findings = evaluation.Findings })))
                )
            );
            files.Add(($"folded/{name}.glb", () => GlbFold.File(part.Solid.Value)));
        }

        for (var i = 0; i < files.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            yield return (files[i].Name, files[i].Content());
            progress?.Report(new(i + 1, files.Count, files[i].Name));
        }
    }

    /// <summary>Moves the files of a packet into the folder; a folder that is not there yet is put in place as a whole.</summary>
    private static void PutInPlace(string fresh, string target, List<string> names)
    {
        if (!Directory.Exists(target))
        {
            Directory.Move(fresh, target);
            return;
        }

        foreach (var folder in new[] { "blanks", "folded" })
        {
            RemoveStale(target, folder, names);
        }

        foreach (var name in names)
        {
            var file = Path.Combine(target, name);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.Move(Path.Combine(fresh, name), file, overwrite: true);
        }
    }

    /// <summary>Takes away the blanks and folds of parts that are no longer in the design.</summary>
    private static void RemoveStale(string target, string folder, List<string> names)
    {
        var path = Path.Combine(target, folder);
        if (!Directory.Exists(path))
        {
            return;
        }

        var kept = names.Select(n => Path.GetFullPath(Path.Combine(target, n))).ToHashSet(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(path))
        {
            if (!kept.Contains(Path.GetFullPath(file)) && Path.GetExtension(file) is ".dxf" or ".svg" or ".glb")
            {
                File.Delete(file);
            }
        }
    }

    private static byte[] Bytes(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }

    private static byte[] Text(Action<TextWriter> write)
    {
        using var writer = new StringWriter(System.Globalization.CultureInfo.InvariantCulture);
        write(writer);
        return Utf8(writer.ToString());
    }

    private static byte[] Utf8(string text) => new UTF8Encoding(false).GetBytes(text);
}
