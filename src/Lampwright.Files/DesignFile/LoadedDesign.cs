using Lampwright.Design;
using Lampwright.Findings;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile;

/// <summary>What came of a design file.</summary>
/// <param name="Design">All of it that could be bound.</param>
/// <param name="Problems">Everything that could not be taken as it stands, in the order of files and lines.</param>
/// <param name="Notes">Defaults that stand in, overrides, and what else the reading has to say.</param>
/// <param name="Positions">Where everything stands.</param>
/// <param name="Text">The text it came from.</param>
/// <param name="Shop">The text of the shop file, or null.</param>
public sealed record LoadedDesign(
    LightDesign Design,
    IReadOnlyList<FileProblem> Problems,
    IReadOnlyList<Finding> Notes,
    Positions Positions,
    DesignText Text,
    DesignText? Shop
)
{
    /// <summary>What is written at a path, without quotes; null where nothing is.</summary>
    /// <param name="path">The path, for example <c>emitter.main.current_max</c>.</param>
    public string? Written(string path) =>
        (Text.Find(path) ?? Shop?.Find(path)) switch
        {
            Document.DocScalar scalar => scalar.Text,
            { } node => node.Raw,
            null => null,
        };

    /// <summary>The named values of this reading, for what an expression comes to.</summary>
    internal NamedValues? Values { get; init; }

    /// <summary>What the value or expression at a path comes to, with its unit, for a person to read; empty where it comes to nothing.</summary>
    /// <param name="path">The path, for example <c>part.sink_tray.face.inside[0]</c>.</param>
    public string ComesTo(string path)
    {
        if (Values is null || Written(path) is not { } text)
        {
            return "";
        }

        lock (Values)
        {
            return Values.Resolve(new NamedText(path, text)).Value is { } value
                ? ShowAs.Metric.Show(value.Nominal.Si, value.Nominal.Dimension, 4)
                : "";
        }
    }
}

/// <summary>A place in a file.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
public readonly record struct FilePlace(string File, int Line, int Column);

/// <summary>Where the paths of a design stand in its files.</summary>
public sealed class Positions
{
    private readonly DesignText _text;
    private readonly DesignText? _shop;

    internal Positions(DesignText text, DesignText? shop)
    {
        _text = text;
        _shop = shop;
    }

    /// <summary>The place of a path; of one that is not written, the nearest table above it; the top of the file at last.</summary>
    /// <param name="path">A path of the file (<c>part.sink_tray.hole.vents</c>); a part's id (<c>sink_tray.vents</c>) is understood too.</param>
    public FilePlace Find(string path)
    {
        // A member of a pattern (vents[3,2]) stands where the pattern stands.
        if (path.EndsWith(']') && path.LastIndexOf('[') is var open and > 0 && path.AsSpan(open).Contains(','))
        {
            path = path[..open];
        }

        for (var at = path; at.Length > 0; at = Document.DocPath.Parent(at))
        {
            if (Exact(at) is { } place)
            {
                return place;
            }
        }

        var parts = Document.DocPath.Split(path);
        if (parts is { Count: > 0 } && parts[0] != "part" && Exact(Document.DocPath.Join("part", parts[0])) is not null)
        {
            var inner = parts.Count > 1 ? parts[1] : "";
            foreach (var kind in new[] { "hole", "flange", "seam" })
            {
                if (inner.Length > 0 && Exact(Document.DocPath.Whole(["part", parts[0], kind, inner])) is { } place)
                {
                    return place;
                }
            }

            return Find(Document.DocPath.Join("part", parts[0]));
        }

        return new FilePlace(_text.FileName, 1, 1);
    }

    private FilePlace? Exact(string path)
    {
        foreach (var text in new[] { _text, _shop })
        {
            if (text is not null && Document.DocPath.Find(text.Root, path) is { } found)
            {
                var (line, column) = text.At(found.Entry?.KeyStart ?? found.Value.Start);
                return new FilePlace(text.FileName, line, column);
            }
        }

        return null;
    }
}
