using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.ReadingsFile;
using Lampwright.Readings;

namespace Lampwright.Files.Opening;

/// <summary>A design file with all that belongs to it, ready to be evaluated. Command line, board and packet all take this road.</summary>
/// <param name="Loaded">The design with its problems and places.</param>
/// <param name="Readings">Readings beside it.</param>
/// <param name="Problems">Problems of design file, shop file and readings.</param>
public sealed record OpenedLight(
    LoadedDesign Loaded,
    IReadOnlyList<Reading> Readings,
    IReadOnlyList<FileProblem> Problems
)
{
    /// <summary>Opens a design file and what stands beside it. Bad files become problems.</summary>
    /// <param name="path">Path of the design file.</param>
    public static OpenedLight At(string path)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".";
        return Of(DesignLoader.Load(path), beside => TextBeside.Read(folder, beside));
    }

    /// <summary>Adds what stands beside a design that has been loaded.</summary>
    /// <param name="loaded">The loaded design.</param>
    /// <param name="readBeside">Reads a file beside the design file; null when it is not there.</param>
    public static OpenedLight Of(LoadedDesign loaded, Func<string, string?> readBeside)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        ArgumentNullException.ThrowIfNull(readBeside);
        if (loaded.Design.Readings?.File is not { Length: > 0 } file)
        {
            return new(loaded, [], loaded.Problems);
        }

        if (readBeside(file) is not { } text)
        {
            var place = loaded.Positions.Find("readings.file");
            var problem = new FileProblem(
                place.File,
                place.Line,
                place.Column,
                "readings.file",
                file,
                "the name of a readings file beside the design file",
                $"There is no file {file} beside the design file"
            );
            return new(loaded, [], [.. loaded.Problems, problem]);
        }

        var (readings, problems) = ReadingsCsv.Parse(text, file);
        return new(loaded, readings, [.. loaded.Problems, .. problems]);
    }

    /// <summary>Lets the stations look at the design.</summary>
    public PreparedEvaluation Prepare() => Evaluator.Prepare(Loaded.Design, Readings, Loaded.Notes);

    /// <summary>Line and column of a path of the design, for findings; null for a path of nothing.</summary>
    public (int Line, int Column)? Place(string path)
    {
        var place = Loaded.Positions.Find(path);
        return (place.Line, place.Column);
    }
}
