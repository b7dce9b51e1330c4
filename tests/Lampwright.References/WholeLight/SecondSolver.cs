using System.Diagnostics;
using System.Text.Json;

namespace Lampwright.References.WholeLight;

/// <summary>Runs the script beside this file on inputs, or skips the test with the name of what is missing.</summary>
internal static class SecondSolver
{
    /// <summary>Debian's own Python, the one that its packages install modules for.</summary>
    private static readonly string Python = "/usr/bin/python3";

    public static Task<JsonElement> SolveAsync(object inputs) => SolveAsync(inputs, "WholeLight", "whole_light.py");

    /// <summary>Runs another script of this project on inputs.</summary>
    public static async Task<JsonElement> SolveAsync(object inputs, params string[] scriptPath)
    {
        Assert.SkipUnless(File.Exists(Python), $"{Python} is not installed (Debian: python3).");
        foreach (var module in new[] { "numpy", "scipy" })
        {
            var (missing, _, _) = await RunAsync("", "-c", $"import {module}");
            Assert.SkipUnless(missing == 0, $"Python module {module} is not installed (Debian: python3-{module}).");
        }

        var script = Path.Combine([AppContext.BaseDirectory, .. scriptPath]);
        var (code, output, errors) = await RunAsync(JsonSerializer.Serialize(inputs), script);
        Assert.True(code == 0, errors);
        using var read = JsonDocument.Parse(output);
        return read.RootElement.Clone();
    }

    private static async Task<(int Code, string Output, string Errors)> RunAsync(
        string standardInput,
        params string[] arguments
    )
    {
        var cancel = TestContext.Current.CancellationToken;
        var start = new ProcessStartInfo(Python, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(cancel);
        var errors = process.StandardError.ReadToEndAsync(cancel);
        await process.StandardInput.WriteAsync(standardInput.AsMemory(), cancel);
        process.StandardInput.Close();
        await process.WaitForExitAsync(cancel);
        return (process.ExitCode, await output, await errors);
    }
}
