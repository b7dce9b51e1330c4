using System.Diagnostics;
using System.Text.Json;

namespace Lampwright.Benchmarks.Peers;

/// <summary>Runs a peer's script with Debian's python, which prints one line of JSON with its own milliseconds.</summary>
internal static class Python
{
    private static readonly string Program = "/usr/bin/python3";

    /// <summary>Whether the modules are installed.</summary>
    public static bool Has(string module)
    {
        if (!File.Exists(Program))
        {
            return false;
        }

        using var process = Process.Start(
            new ProcessStartInfo(Program, ["-c", "import " + module]) { RedirectStandardError = true }
        )!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }

    /// <summary>What a script prints.</summary>
    public static JsonElement Run(string script, params string[] words)
    {
        var start = new ProcessStartInfo(Program) { RedirectStandardOutput = true };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "Peers", script));
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? JsonDocument.Parse(text).RootElement
            : throw new InvalidOperationException($"{script} ended with {process.ExitCode}");
    }
}
