namespace Lampwright.Files.DesignFile;

/// <summary>Something in a file that cannot be taken as it stands.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1, counted in characters as an editor does.</param>
/// <param name="Path">Path of the key, for example <c>driver.main.current.rated</c>; empty where it belongs to none.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Accepted">What would be accepted.</param>
/// <param name="Message">All of it in a sentence.</param>
public sealed record FileProblem(
    string File,
    int Line,
    int Column,
    string Path,
    string Found,
    string Accepted,
    string Message
)
{
    /// <summary>The problem on one line, for a terminal: <c>light.toml:12:9: message</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Message}";
}
