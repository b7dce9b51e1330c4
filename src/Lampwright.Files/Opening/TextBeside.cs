namespace Lampwright.Files.Opening;

/// <summary>Reads a file that a design file names; never from outside of its folder.</summary>
public static class TextBeside
{
    private static readonly long MostBytes = 16_000_000;

    /// <summary>The text of a file beside the design file; null when it is not there, too large, or lies outside the folder.</summary>
    /// <param name="folder">Folder of the design file.</param>
    /// <param name="name">Name as the design file gives it.</param>
    public static string? Read(string folder, string name)
    {
        try
        {
            var root = Path.GetFullPath(folder);
            var path = Path.GetFullPath(Path.Combine(root, name));
            var info = new FileInfo(path);
            return
                path.StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal)
                && info.Exists
                && info.Length <= MostBytes
                ? File.ReadAllText(path)
                : null;
        }
        catch (Exception e)
            when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }
}
