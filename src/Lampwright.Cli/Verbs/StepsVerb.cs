using System.ComponentModel;
using System.Globalization;
using Lampwright.Cli.Show;
using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Steps.ChainProof;
using Spectre.Console.Cli;

namespace Lampwright.Cli.Verbs;

/// <summary>The station steps: what the light's own chain does, and the best chain that the stock gives.</summary>
internal sealed class StepsVerb : Command<StepsVerb.Settings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (terminal, station) = (VerbTask)context.Data!;
        OpenedLight opened;
        LightEvaluation light;
        using (var wait = new Wait(terminal, "Evaluating " + Path.GetFileName(settings.File)))
        {
            opened = OpenedLight.At(settings.File);
            var prepared = opened.Prepare();
            light = settings.Evaluate(prepared, cancellationToken);
            light = light.WithChain(
                prepared.Chain(settings.Prove, true, new Told(p => wait.At(Far(p))), cancellationToken)
            );
        }

        LightVerb.Show(terminal, station, settings, opened, light);
        return LightVerb.Ending(opened, light);
    }

    private static string Far(ChainProgress p) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Searching{(p.Of.Length > 0 ? " " + p.Of : "")}, {p.Boxes} cases, {p.Share:0 %}{Best(p)}"
        );

    private static string Best(ChainProgress p) =>
        double.IsFinite(p.BestError)
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"; worst error {p.BestError:0.## %}, at most {Math.Max(0, p.Gap):0.## %} better"
            )
            : "";

    // The progress of the base library hands over to other threads; here the last word counts.
    private sealed class Told(Action<ChainProgress> tell) : IProgress<ChainProgress>
    {
        public void Report(ChainProgress value) => tell(value);
    }

    /// <summary>What it is told.</summary>
    internal sealed class Settings : LightSettings
    {
        [CommandOption("--prove")]
        [Description("Search on until the best chain is proven; Ctrl+C ends it with the best so far")]
        public bool Prove { get; init; }
    }
}
