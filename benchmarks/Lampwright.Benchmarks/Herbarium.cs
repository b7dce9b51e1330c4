using System.Runtime.CompilerServices;

namespace Lampwright.Benchmarks;

/// <summary>The example that is measured, and where the repository lies.</summary>
internal static class Herbarium
{
    public static string Root { get; } = Up(Path.GetDirectoryName(Here())!);

    public static string File { get; } = Path.Combine(Root, "examples", "herbarium", "herbarium.toml");

    private static string Up(string folder) =>
        System.IO.File.Exists(Path.Combine(folder, "Lampwright.slnx")) ? folder : Up(Path.GetDirectoryName(folder)!);

    private static string Here([CallerFilePath] string path = "") =>
        System.IO.File.Exists(path) ? path : Path.Combine(AppContext.BaseDirectory, "x");
}
