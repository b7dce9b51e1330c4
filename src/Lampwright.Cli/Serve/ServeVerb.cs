using System.ComponentModel;
using System.Text.Json;
using Lampwright.Files.DesignFile;
using Lampwright.Web.Desk;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Lampwright.Cli.Serve;

/// <summary>Opens the board over a design file until it is told to end.</summary>
internal sealed class ServeVerb : AsyncCommand<ServeVerb.Settings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(
        CommandContext context,
        Settings settings,
        CancellationToken cancellationToken
    )
    {
        var terminal = (Terminal)context.Data!;
        if (Workspace.Open(settings.File, out var problem) is not { } workspace)
        {
            if (problem is not null)
            {
                Show.Foreman.Show(terminal.Screen, [problem]);
            }

            return ExitCode.Problems;
        }

        using var desk = new BoardDesk(workspace);
        try
        {
            await BoardHost.ServeAsync(
                desk,
                settings.Port,
                address => Listening(terminal, settings, address),
                cancellationToken
            );
        }
        catch (OperationCanceledException) when (cancellationToken.IsCancellationRequested)
        {
            // Ctrl-C is how a board is closed.
        }
        catch (IOException e)
        {
            await terminal.Error.WriteLineAsync(
                $"The board cannot open on port {settings.Port} ({e.Message.TrimEnd('.')}); --port 0 takes a free one."
            );
            return ExitCode.Problems;
        }

        return ExitCode.Evaluated;
    }

    private static void Listening(Terminal terminal, Settings settings, string address)
    {
        if (settings.Json)
        {
            terminal.Json((Utf8JsonWriter json) => json.WriteString("address", address));
        }
        else
        {
            terminal.Screen.WriteLine(settings.Quiet ? address : $"The board is open at {address} (Ctrl-C ends it)");
        }
    }

    /// <summary>What it is told.</summary>
    internal sealed class Settings : CommandSettings
    {
        private static readonly int MostPort = 65_535;

        [CommandArgument(0, "<FILE>")]
        [Description("The design file of the light")]
        public string File { get; init; } = "";

        [CommandOption("--port <PORT>")]
        [Description("Port on this machine; a free one where nothing is said")]
        public int Port { get; init; }

        [CommandOption("--quiet")]
        [Description("Print the bare address and nothing else")]
        public bool Quiet { get; init; }

        [CommandOption("--json")]
        [Description("Say the address in JSON")]
        public bool Json { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            Port < 0 || Port > MostPort
                ? ValidationResult.Error($"--port takes 0 to {MostPort}, not {Port}")
                : ValidationResult.Success();
    }
}
