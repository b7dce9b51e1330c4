using System.ComponentModel;
using Lampwright.Evaluation;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Lampwright.Cli.Verbs;

/// <summary>What every verb that evaluates a light is told.</summary>
internal class LightSettings : CommandSettings
{
    private static readonly int LeastDraws = 16;
    private static readonly int MostDraws = 20_000;

    [CommandArgument(0, "<FILE>")]
    [Description("The design file of the light")]
    public string File { get; init; } = "";

    [CommandOption("--json")]
    [Description("Write JSON instead of tables (docs/evaluation-json.md)")]
    public bool Json { get; init; }

    [CommandOption("--draws <COUNT>")]
    [Description("Draws behind the bands; 512 where nothing is said")]
    public int? Draws { get; init; }

    [CommandOption("--nominal")]
    [Description("Without bands")]
    public bool Nominal { get; init; }

    /// <inheritdoc/>
    public override ValidationResult Validate() =>
        string.IsNullOrWhiteSpace(File) ? ValidationResult.Error("FILE is the path of a design file, not nothing")
        : Draws is { } draws && (draws < LeastDraws || draws > MostDraws)
            ? ValidationResult.Error($"--draws takes {LeastDraws} to {MostDraws}, not {draws}")
        : Nominal && Draws is not null ? ValidationResult.Error("--nominal and --draws exclude each other")
        : ValidationResult.Success();

    /// <summary>The evaluation that was asked for.</summary>
    public LightEvaluation Evaluate(PreparedEvaluation prepared, CancellationToken cancellation) =>
        Nominal ? prepared.Nominal() : prepared.WithBands(Draws ?? Evaluator.DefaultDraws, cancellation);
}
