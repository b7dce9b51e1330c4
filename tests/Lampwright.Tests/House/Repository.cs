using System.Runtime.CompilerServices;

namespace Lampwright.Tests.House;

/// <summary>The repository as files, found from where its tests were compiled.</summary>
internal static class Repository
{
    private static readonly string[] Made = ["bin", "obj", "out", ".git", "TestResults", "BenchmarkDotNet.Artifacts"];

    public static string Root { get; } = FindRoot();

    public static string Text(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>Files under a folder that are ours, with slashes and relative to the root, in one order.</summary>
    public static IEnumerable<string> Files(string folder, params string[] endings)
    {
        var within = Path.Combine(Root, folder);
        return Walk(within)
            .Select(p => Path.GetRelativePath(Root, p).Replace('\\', '/'))
            .Where(p => endings.Length == 0 || endings.Any(e => p.EndsWith(e, StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal);
    }

    /// <summary>Fails with all of what should not be there.</summary>
    public static void None(IEnumerable<string> wrong, string what)
    {
        var all = wrong.Distinct().Order(StringComparer.Ordinal).ToList();
        Assert.True(all.Count == 0, $"{what} ({all.Count}):\n{string.Join('\n', all)}");
    }

    private static IEnumerable<string> Walk(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(folder))
        {
            yield return file;
        }

        foreach (var inner in Directory.EnumerateDirectories(folder))
        {
            if (!Made.Contains(Path.GetFileName(inner)))
            {
                foreach (var file in Walk(inner))
                {
                    yield return file;
                }
            }
        }
    }

    private static string FindRoot([CallerFilePath] string here = "")
    {
        for (
            var at = File.Exists(here) ? Path.GetDirectoryName(here) : AppContext.BaseDirectory;
            at is not null;
            at = Path.GetDirectoryName(at)
        )
        {
            if (File.Exists(Path.Combine(at, "Lampwright.slnx")))
            {
                return at;
            }
        }

        throw new InvalidOperationException("The tests do not stand in the repository.");
    }
}
