using System.Diagnostics;

namespace Lampwright.Browser;

/// <summary>The program serving the board on a copy of an example, as a user would start it.</summary>
public sealed class BoardProgram : IAsyncDisposable
{
    private readonly Process _process;

    private BoardProgram(Process process, string address, string file) =>
        (_process, Address, File) = (process, address, file);

    /// <summary>Address of the board, without the closing slash.</summary>
    public string Address { get; }

    /// <summary>The copy of the design file that it works on.</summary>
    public string File { get; }

    /// <summary>Starts the program on a fresh copy of the herbarium example and reads its address.</summary>
    /// <param name="change">Changes the copy's text before it starts.</param>
    public static async Task<BoardProgram> StartAsync(Func<string, string>? change = null)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        var folder = Directory.CreateTempSubdirectory("lampwright-board-").FullName;
        foreach (var source in Directory.GetFiles(Path.Combine(Repository, "examples", "herbarium")))
        {
            System.IO.File.Copy(source, Path.Combine(folder, Path.GetFileName(source)));
        }

        var file = Path.Combine(folder, "herbarium.toml");
        if (change is not null)
        {
            await System.IO.File.WriteAllTextAsync(
                file,
                change(await System.IO.File.ReadAllTextAsync(file, patience.Token)),
                patience.Token
            );
        }

        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in new[] { Executable, "serve", file, "--port", "0" })
        {
            start.ArgumentList.Add(word);
        }

        var process = Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
        var said = new List<string>();
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            said.Add(line);
            if (line.IndexOf("http://", StringComparison.Ordinal) is var at and >= 0)
            {
                _ = process.StandardOutput.ReadToEndAsync(CancellationToken.None);
                _ = process.StandardError.ReadToEndAsync(CancellationToken.None);
                return new(process, line[at..].Split(' ')[0].TrimEnd('/', '.'), file);
            }
        }

        throw new InvalidOperationException(
            $"The program ended without an address:\n{string.Join('\n', said)}\n{await process.StandardError.ReadToEndAsync(CancellationToken.None)}"
        );
    }

    /// <summary>Root of the repository, found from where the tests run.</summary>
    public static string Repository
    {
        get
        {
            var at = new DirectoryInfo(AppContext.BaseDirectory);
            while (at is not null && !System.IO.File.Exists(Path.Combine(at.FullName, "Lampwright.slnx")))
            {
                at = at.Parent;
            }

            return at?.FullName ?? throw new InvalidOperationException("The tests run outside the repository.");
        }
    }

    /// <summary>Ends the program and takes its copy away.</summary>
    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync(CancellationToken.None);
        }

        _process.Dispose();
        Directory.Delete(Path.GetDirectoryName(File)!, recursive: true);
    }

    // The program beside its own files, in the configuration the tests were built in, or the one that LAMPWRIGHT_PROGRAM names.
    private static string Executable
    {
        get
        {
            if (Environment.GetEnvironmentVariable("LAMPWRIGHT_PROGRAM") is { Length: > 0 } other)
            {
                return other;
            }

            var configuration = AppContext.BaseDirectory.Contains(
                $"{Path.DirectorySeparatorChar}Release{Path.DirectorySeparatorChar}",
                StringComparison.Ordinal
            )
                ? "Release"
                : "Debug";
            return Path.Combine(
                Repository,
                "src",
                "Lampwright.Cli",
                "bin",
                configuration,
                "net10.0",
                "Lampwright.Cli.dll"
            );
        }
    }
}
