using System.Security.Cryptography;
using System.Text;

namespace Lampwright.Files.DesignFile;

/// <summary>Writes a file so that a crash at any moment leaves the old one or the new one, never a broken one.</summary>
/// <remarks>
/// A new file in the same folder is written and flushed to the disk, then renamed over the old one, which file systems do in one step.
/// The mode of the old file is kept on Unix. A link is followed, so that the file it points to is replaced and not the link.
/// </remarks>
public static class AtomicFile
{
    /// <summary>Writes a text as UTF-8; a byte order mark is in the text or nowhere.</summary>
    /// <param name="path">The file.</param>
    /// <param name="text">Its whole text.</param>
    /// <exception cref="IOException">The folder or the disk refuses.</exception>
    public static void Write(string path, string text) => Write(path, new UTF8Encoding(false).GetBytes(text));

    /// <summary>Writes bytes.</summary>
    /// <param name="path">The file.</param>
    /// <param name="bytes">Its whole content.</param>
    /// <exception cref="IOException">The folder or the disk refuses.</exception>
    public static void Write(string path, byte[] bytes)
    {
        var target = new FileInfo(path).ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? Path.GetFullPath(path);
        var folder = Path.GetDirectoryName(target)!;
        var temporary = Path.Combine(folder, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}.tmp");
        try
        {
            var options = new FileStreamOptions
            {
                Mode = FileMode.CreateNew,
                Access = FileAccess.Write,
                Options = FileOptions.WriteThrough,
            };
            if (!OperatingSystem.IsWindows() && File.Exists(target))
            {
                options.UnixCreateMode = File.GetUnixFileMode(target);
            }

            using (var stream = new FileStream(temporary, options))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            if (!OperatingSystem.IsWindows() && File.Exists(target))
            {
                // The mode at creation is cut by the process's mask; it is set again in full.
                File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
            }

            File.Move(temporary, target, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    /// <summary>A fingerprint of a file's content.</summary>
    internal static string Fingerprint(ReadOnlySpan<byte> bytes) => Convert.ToHexString(SHA256.HashData(bytes));
}
