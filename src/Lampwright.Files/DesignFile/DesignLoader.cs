using System.Text;
using Lampwright.Design;
using Lampwright.Files.DesignFile.Binding;

namespace Lampwright.Files.DesignFile;

/// <summary>The way in: a file or a text becomes a design with all its problems, never an exception.</summary>
public static class DesignLoader
{
    private static readonly long MostBytes = 16_000_000;

    /// <summary>Reads a design file and its shop file.</summary>
    /// <param name="path">Path of the design file.</param>
    /// <returns>The design; a file that is missing, too large or no text gives an empty one and a problem.</returns>
    public static LoadedDesign Load(string path)
    {
        var name = Path.GetFileName(path);
        var folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".";
        return ReadFile(path, out var problem) is { } text
            ? Parse(text, name, beside => ReadFile(Path.Combine(folder, beside), out _))
            : Empty(name, problem!);
    }

    /// <summary>Reads a design from a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">Name of the file, for problems.</param>
    /// <param name="readBeside">Gives the text of a file beside it, or null where there is none.</param>
    public static LoadedDesign Parse(string text, string fileName, Func<string, string?> readBeside) =>
        Parse(DesignText.Parse(text, fileName), readBeside);

    /// <summary>Reads a design from a text that was parsed already.</summary>
    /// <param name="text">The text.</param>
    /// <param name="readBeside">Gives the text of a file beside it, or null where there is none.</param>
    public static LoadedDesign Parse(DesignText text, Func<string, string?> readBeside) =>
        Parse(text, readBeside, out _);

    internal static LoadedDesign Parse(DesignText text, Func<string, string?> readBeside, out LoadContext context)
    {
        var (shop, shopProblem) = ShopFile.Read(text, readBeside);
        var twice = new List<Findings.Finding>();
        context = new LoadContext(shop is null ? text.Root : ShopFile.Merge(text, shop, twice));
        var design = DesignBinder.Bind(context);
        var notes = context.Notes.Concat(twice).Concat(Remarks.Of(context)).ToList();
        var problems = text
            .Problems.Concat(shop?.Problems ?? [])
            .Concat(shopProblem is null ? [] : [shopProblem])
            .Concat(context.Problems)
            .OrderBy(p => p.File == text.FileName ? 0 : 1)
            .ThenBy(p => p.Line)
            .ThenBy(p => p.Column)
            .ToList();
        if (Refused(text))
        {
            // Of a file that is no design at all, only that is worth telling.
            problems = [.. text.Problems];
            notes = [];
        }

        return new LoadedDesign(design, problems, notes, new Positions(text, shop), text, shop)
        {
            Values = context.Values,
        };
    }

    /// <summary>The text of a file, or null and the problem.</summary>
    internal static string? ReadFile(string path, out FileProblem? problem)
    {
        var name = Path.GetFileName(path);
        problem = null;
        try
        {
            if (Directory.Exists(path))
            {
                problem = Problem(
                    name,
                    "a folder",
                    "the path of a design file",
                    $"{(name.Length > 0 ? name : path)} is a folder"
                );
                return null;
            }

            if (!File.Exists(path))
            {
                problem = Problem(name, "no file", "the path of a design file", $"There is no file {name}");
                return null;
            }

            // Read by piece and never past the limit: not everything that opens like a file has an end.
            using var file = File.OpenRead(path);
            var bytes = new MemoryStream();
            var piece = new byte[1 << 16];
            while (file.Read(piece) is var read and > 0)
            {
                bytes.Write(piece, 0, read);
                if (bytes.Length > MostBytes)
                {
                    problem = Problem(
                        name,
                        $"more than {MostBytes} bytes",
                        $"at most {MostBytes} bytes",
                        "The file is too large to be a design"
                    );
                    return null;
                }
            }

            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(
                bytes.GetBuffer(),
                0,
                (int)bytes.Length
            );
        }
        catch (DecoderFallbackException)
        {
            problem = Problem(name, "bytes that are no text", "a text in UTF-8", "The file is not a text in UTF-8");
        }
        catch (Exception e)
            when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            problem = Problem(
                name,
                "an unreadable file",
                "a file that may be read",
                $"The file cannot be read ({e.Message.TrimEnd('.')})"
            );
        }

        return null;
    }

    private static bool Refused(DesignText text) => text.Root.Entries.Count == 0 && text.Problems.Count > 0;

    private static LoadedDesign Empty(string name, FileProblem problem)
    {
        var text = DesignText.Parse("", name);
        return new LoadedDesign(new LightDesign(), [problem], [], new Positions(text, null), text, null);
    }

    private static FileProblem Problem(string name, string found, string accepted, string why) =>
        new(name, 1, 1, "", found, accepted, $"{why}. Accepted: {accepted}.");
}
