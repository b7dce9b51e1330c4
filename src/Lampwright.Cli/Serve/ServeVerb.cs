using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Lampwright.Cli.Serve;

/// <summary>Opens the board in the browser on a light.</summary>
internal sealed class ServeVerb : AsyncCommand<ServeVerb.Settings>
{
    /// <inheritdoc/>
    public override Task<int> ExecuteAsync(
        CommandContext context,
        Settings settings,
        CancellationToken cancellationToken
    ) => BoardHost.RunAsync(settings.File, settings.Port, settings.Quiet, cancellationToken);

    /// <summary>What it is told.</summary>
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<FILE>")]
        [Description("The design file of the light")]
        public string File { get; init; } = "";

        [CommandOption("--port <PORT>")]
        [Description("Port on this machine; any free one where nothing is said")]
        public int Port { get; init; }

        [CommandOption("--quiet")]
        [Description("Print the bare address and nothing else")]
        public bool Quiet { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            Port is >= 0 and <= 65535
                ? ValidationResult.Success()
                : ValidationResult.Error($"--port takes 0 to 65535, not {Port}");
    }
}
