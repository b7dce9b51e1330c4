using System.Diagnostics;

namespace Lampwright.Tests.Files.Drawings;

/// <summary>Runs an independent program on a file that was written, or skips the test with the name of what is missing.</summary>
internal static class Reader
{
    /// <summary>Debian's own Python, the one that its packages install modules for.</summary>
    private const string Python = "/usr/bin/python3";

    /// <summary>Output of a Python program over a file; skips when Python or one of the modules is missing.</summary>
    public static async Task<string> PythonAsync(byte[] file, string extension, string program, params string[] modules)
    {
        Assert.SkipUnless(File.Exists(Python), $"{Python} is not installed (Debian: python3).");
        foreach (var module in modules)
        {
            var (code, _, _) = await RunAsync(Python, ["-c", $"import {module}"]);
            Assert.SkipUnless(code == 0, $"Python module {module} is not installed (Debian: python3-{module}).");
        }

        return await OverAsync(file, extension, path => RunAsync(Python, ["-c", program, path]));
    }

    /// <summary>Output of a command over a file; skips when the command is missing.</summary>
    public static async Task<string> CommandAsync(
        byte[] file,
        string extension,
        string command,
        string package,
        params string[] arguments
    )
    {
        var found = (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Any(folder => File.Exists(Path.Combine(folder, command)));
        Assert.SkipUnless(found, $"{command} is not installed (Debian: {package}).");
        return await OverAsync(file, extension, path => RunAsync(command, [.. arguments, path]));
    }

    private static async Task<string> OverAsync(
        byte[] file,
        string extension,
        Func<string, Task<(int Code, string Output, string Errors)>> run
    )
    {
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + extension);
        try
        {
            await File.WriteAllBytesAsync(path, file, TestContext.Current.CancellationToken);
            var (code, output, errors) = await run(path);
            Assert.True(code == 0, $"The reader refused the file ({code}): {output}{errors}");
            return output;
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static async Task<(int Code, string Output, string Errors)> RunAsync(
        string command,
        IEnumerable<string> arguments
    )
    {
        var start = new ProcessStartInfo(command, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await output, await errors);
    }
}
